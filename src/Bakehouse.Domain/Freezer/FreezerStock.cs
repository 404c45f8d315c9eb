namespace Bakehouse.Domain.Freezer;

/// <summary>What somebody counted in the freezer.</summary>
/// <param name="At">When.</param>
public sealed record CountedSpares(SpareSponges Spares, Instant At);

/// <summary>What a slip took from the freezer.</summary>
/// <param name="At">When it was told.</param>
public sealed record TakenSpares(SpareSponges Spares, Instant At);

/// <summary>What is left in the freezer, from what was counted and what was taken since. Counting anew settles what came before.</summary>
public static class FreezerStock
{
    /// <summary>What is left, oldest first; a baking of which nothing is left is not in it.</summary>
    /// <param name="counts">In the order in which they were written.</param>
    /// <param name="taken">Of slips that stand.</param>
    public static IReadOnlyList<SpareSponges> Left(IEnumerable<CountedSpares> counts, IEnumerable<TakenSpares> taken)
    {
        var newest = new Dictionary<SpareSponges, CountedSpares>();
        foreach (var counted in counts)
        {
            newest[counted.Spares with { Count = 0 }] = counted;
        }

        var gone = taken.ToLookup(t => t.Spares with { Count = 0 });
        return
        [
            .. newest.Select(n => n.Value.Spares with { Count = n.Value.Spares.Count - gone[n.Key].Where(t => t.At >= n.Value.At).Sum(t => t.Spares.Count) })
                .Where(s => s.Count > 0).OrderBy(s => s.Frozen).ThenBy(s => s.Sponge, StringComparer.Ordinal).ThenBy(s => s.Pan),
        ];
    }

    /// <summary>The oldest that will do, up to so many; fewer if fewer are there.</summary>
    /// <param name="stock">What is left.</param>
    public static IReadOnlyList<SpareSponges> Take(IReadOnlyList<SpareSponges> stock, string sponge, int pan, int count)
    {
        List<SpareSponges> taken = [];
        foreach (var spares in stock.Where(s => s.Sponge == sponge && s.Pan == pan).OrderBy(s => s.Frozen))
        {
            var some = Math.Min(spares.Count, count - taken.Sum(t => t.Count));
            if (some > 0)
            {
                taken.Add(spares with { Count = some });
            }
        }

        return taken;
    }
}
