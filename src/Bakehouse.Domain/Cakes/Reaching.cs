namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;

/// <summary>A build that reaches a number of portions.</summary>
/// <param name="Diameters">Of its round tiers, bottom first.</param>
/// <param name="Portions">To be cut: without the top tier if that is kept.</param>
/// <param name="WithTop">All of them.</param>
public sealed record Reached(IReadOnlyList<Length> Diameters, int Portions, int WithTop)
{
    /// <summary>More than was asked for.</summary>
    public int Over(int asked) => Portions - asked;
}

/// <summary>From a number of portions to builds.</summary>
public static class Reaching
{
    /// <summary>Sizes of pans in use, smallest first (common practice, no source).</summary>
    public static IReadOnlyList<Length> Sizes { get; } = [.. new[] { 4, 6, 8, 9, 10, 12, 14, 16 }.Select(i => Length.FromInches(i))];

    /// <summary>The same where pans are bought in centimetres (common practice, no source).</summary>
    public static IReadOnlyList<Length> MetricSizes { get; } = [.. new[] { 10, 15, 20, 25, 30, 35, 40 }.Select(c => Length.FromCentimetres(c))];

    /// <summary>A tier is narrower than the one below by 2 to 4 in, 5 to 10 cm; 3 in leaves a ledge of 1.5 in (common practice, no source).</summary>
    public static readonly (Length Least, Length Most) Step = (Length.FromCentimetres(5), Length.FromInches(4));

    /// <summary>
    /// The builds with the least over, one for each number of tiers, best first: up to three. The smaller bottom tier breaks a tie, then
    /// fewer tiers. Empty if no stack of these sizes and at most <see cref="OrderChecks.MostTiers"/> tiers reaches so many.
    /// </summary>
    /// <param name="asked">Portions to be cut, 1 and up.</param>
    /// <param name="keepsTop">The top tier is put by and not counted; then there are two tiers at least.</param>
    /// <param name="height">Of each bare tier.</param>
    /// <param name="sizes">Those of the shop, smallest first; null for <see cref="Sizes"/>.</param>
    public static IReadOnlyList<Reached> Three(int asked, Cut cut, bool keepsTop, Length height, CakeFigures figures, IReadOnlyList<Length>? sizes = null)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(asked, 1);
        sizes ??= Sizes;
        var portions = sizes.ToDictionary(s => s, s => PortionChart.Count(s, height, cut, figures));
        return
        [
            .. Stacks(sizes, OrderChecks.MostTiers)
                .Where(s => !keepsTop || s.Count > 1)
                .Select(s => Count(s, portions, keepsTop))
                .Where(r => r.Portions >= asked)
                .GroupBy(r => r.Diameters.Count)
                .Select(same => same.OrderBy(r => r.Portions).ThenBy(r => r.Diameters[0]).First())
                .OrderBy(r => r.Portions).ThenBy(r => r.Diameters[0]).ThenBy(r => r.Diameters.Count)
                .Take(3),
        ];
    }

    private static Reached Count(IReadOnlyList<Length> stack, Dictionary<Length, int> portions, bool keepsTop)
    {
        var all = stack.Sum(d => portions[d]);
        return new Reached(stack, keepsTop ? all - portions[stack[^1]] : all, all);
    }

    /// <summary>Every stack of the sizes whose tiers step back as they should, bottom first.</summary>
    private static IEnumerable<IReadOnlyList<Length>> Stacks(IReadOnlyList<Length> sizes, int most) => sizes.SelectMany(bottom => Upon([bottom], sizes, most));

    private static IEnumerable<IReadOnlyList<Length>> Upon(IReadOnlyList<Length> stack, IReadOnlyList<Length> sizes, int most)
    {
        yield return stack;
        if (stack.Count < most)
        {
            foreach (var higher in sizes.Where(s => s + Step.Least <= stack[^1] && s + Step.Most >= stack[^1]).SelectMany(s => Upon([.. stack, s], sizes, most)))
            {
                yield return higher;
            }
        }
    }
}
