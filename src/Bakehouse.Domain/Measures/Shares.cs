namespace Bakehouse.Domain.Measures;

/// <summary>Shares a whole out so that the parts add up to it exactly (largest remainder).</summary>
public static class Shares
{
    /// <summary>
    /// Parts in whole steps, in the ratio of the weights as near as steps allow. What is less than a step goes to the largest part.
    /// Equal remainders: the earlier part gets the step.
    /// </summary>
    /// <param name="whole">Zero or more.</param>
    /// <param name="weights">Zero or more each, at least one above zero.</param>
    /// <param name="step">More than zero.</param>
    public static IReadOnlyList<decimal> Split(decimal whole, IReadOnlyList<decimal> weights, decimal step)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(whole);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(step);
        var sum = weights.Sum();
        if (sum <= 0 || weights.Any(w => w < 0))
        {
            throw new ArgumentOutOfRangeException(nameof(weights), sum, "Weights are zero or more, and not all zero.");
        }

        var steps = decimal.Floor(whole / step);
        var exact = weights.Select(w => steps * w / sum).ToList();
        var parts = exact.Select(decimal.Floor).ToList();
        Hand(steps - parts.Sum(), exact, parts);
        var shares = parts.Select(p => p * step).ToList();
        shares[shares.IndexOf(shares.Max())] += whole - (steps * step);
        return shares;
    }

    /// <summary>Steps that are over go to the largest remainders. A step too many (decimals end after 28 digits) comes off the smallest.</summary>
    private static void Hand(decimal over, List<decimal> exact, List<decimal> parts)
    {
        var byRemainder = Enumerable.Range(0, parts.Count).OrderByDescending(i => exact[i] - parts[i]).ToList();
        for (var n = 0; n < over; n++)
        {
            parts[byRemainder[n]]++;
        }

        foreach (var i in byRemainder.AsEnumerable().Reverse().Where(i => parts[i] >= 1).Take((int)Math.Max(0, -over)))
        {
            parts[i]--;
        }
    }
}
