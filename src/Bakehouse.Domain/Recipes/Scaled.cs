namespace Bakehouse.Domain.Recipes;

using Bakehouse.Domain.Measures;

/// <summary>A recipe weighed out for a mass.</summary>
/// <param name="Lines">Each line with its grams; they add up to the total exactly.</param>
public sealed record Scaled(Recipe Recipe, Mass Total, IReadOnlyList<ScaledLine> Lines)
{
    /// <summary>From here on a kitchen's scales show whole grams; below, tenths (common practice, no source).</summary>
    private const decimal WholeFrom = 20;

    /// <summary>
    /// Weighs a recipe out: whole grams from 20 g, tenths below, rounded by largest remainder so that nothing is lost or added.
    /// </summary>
    /// <param name="total">Of all that goes in, more than zero.</param>
    public static Scaled To(Recipe recipe, Cookbook book, Mass total)
    {
        if (total.Grams <= 0)
        {
            throw new ArgumentOutOfRangeException(nameof(total), total.Grams, "A recipe is weighed out for more than nothing.");
        }

        var weights = recipe.Lines.Select(book.Grams).ToList();
        var sum = weights.Sum();
        var fine = weights.Select(w => total.Grams * w / sum < WholeFrom).ToList();
        var grams = Shares.Split(total.Grams, weights, 0.1m).ToList();
        if (fine.Contains(false))
        {
            var rest = total.Grams - grams.Where((_, i) => fine[i]).Sum();
            var whole = Shares.Split(rest, [.. weights.Where((_, i) => !fine[i])], 1);
            var next = 0;
            grams = [.. grams.Select((g, i) => fine[i] ? g : whole[next++])];
        }

        return new Scaled(recipe, total, [.. recipe.Lines.Select((line, i) => new ScaledLine(line, Mass.FromGrams(grams[i])))]);
    }
}

/// <summary>A line and what is weighed for it.</summary>
public sealed record ScaledLine(RecipeLine Line, Mass Mass);

/// <summary>A batter shared out over bowls.</summary>
public static class BowlLoads
{
    /// <summary>As few loads as the bowl's limit allows, as even as tenths of grams allow; they add up to the mass, none is over the limit.</summary>
    /// <param name="limit">Most that the bowl mixes at once, 0.1 g or more.</param>
    public static IReadOnlyList<Mass> Of(Mass mass, Mass limit)
    {
        const decimal step = 0.1m;
        var most = decimal.Floor(limit.Grams / step);
        ArgumentOutOfRangeException.ThrowIfLessThan(most, 1, nameof(limit));
        var loads = (int)decimal.Ceiling(mass.Grams / (most * step));
        if (loads == 0)
        {
            return [];
        }

        var steps = decimal.Floor(mass.Grams / step);
        var parts = Shares.Split(steps, [.. Enumerable.Repeat(1m, loads)], 1).Select(s => s * step).ToList();
        // The last is one of the smallest: what is less than a step never lifts it over the limit.
        parts[^1] += mass.Grams - (steps * step);
        return [.. parts.Select(Mass.FromGrams)];
    }
}
