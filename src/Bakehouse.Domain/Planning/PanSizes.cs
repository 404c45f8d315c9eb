namespace Bakehouse.Domain.Planning;

using Bakehouse.Domain.Cakes.Packing;

/// <summary>Keeps the number of pan sizes in a week small: planning counts the pans of a load by size.</summary>
internal static class PanSizes
{
    /// <summary>Sizes that a week may hold.</summary>
    public const int Most = 8;

    /// <summary>
    /// The week with at most eight sizes of pan. Where there are more, a size counts as the next wider one that fits the same ovens, first
    /// the one that loses fewest places by it: a load may then be planned a little emptier than it could be, never too full.
    /// </summary>
    public static Week Few(Week week)
    {
        var ovens = week.Machines.Where(m => m.Kind == MachineKind.Oven).ToList();
        var sizes = week.Steps.SelectMany(s => s.Bake?.Pans ?? []).Distinct().Order().ToList();
        var counted = sizes.ToDictionary(s => s);
        while (sizes.Count > Most)
        {
            // Rounds by the next wider one; where there is a straight pan, it may also count as a larger one that covers it.
            var straight = sizes.Where(s => !PanCode.Bare(s).IsRound).SelectMany(s => sizes.Select(l => (First: s, Second: l)));
            var pairs = sizes.Zip(sizes.Skip(1)).Concat(straight).Where(p => p.First != p.Second && PanCode.Covers(p.Second, p.First)).ToList();
            if (pairs.Count == 0)
            {
                Rounded(sizes, counted);
                continue;
            }

            var (narrow, wide) = pairs.Where(p => ovens.TrueForAll(o => Fits(o, p.First) == 0 || Fits(o, p.Second) > 0)).DefaultIfEmpty(pairs[0])
                .MinBy(p => ovens.Sum(o => Fits(o, p.First) - Fits(o, p.Second)));
            sizes.Remove(narrow);
            foreach (var size in counted.Keys.Where(k => counted[k] == narrow).ToList())
            {
                counted[size] = wide;
            }
        }

        return counted.All(c => c.Key == c.Value) ? week : week with
        {
            Steps = [.. week.Steps.Select(s => s.Bake is { } bake ? s with { Bake = bake with { Pans = [.. bake.Pans.Select(p => counted[p])] } } : s)],
        };
    }

    /// <summary>No pan covers another: the straight ones count as rounds around them, which never overfills a deck.</summary>
    private static void Rounded(List<int> sizes, Dictionary<int, int> counted)
    {
        foreach (var pan in counted.Keys.ToList())
        {
            counted[pan] = PanCode.Around(counted[pan]);
        }

        sizes.Clear();
        sizes.AddRange(counted.Values.Distinct().Order());
    }

    private static int Fits(Machine oven, int size) => oven.Fits.GetValueOrDefault(size);
}
