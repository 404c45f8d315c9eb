namespace Bakehouse.Domain.Planning;

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
            var pairs = sizes.Zip(sizes.Skip(1)).ToList();
            var (narrow, wide) = pairs.Where(p => ovens.TrueForAll(o => Fits(o, p.First) == 0 || Fits(o, p.Second) > 0)).DefaultIfEmpty(pairs[0])
                .MinBy(p => ovens.Sum(o => Fits(o, p.First) - Fits(o, p.Second)));
            sizes.Remove(narrow);
            foreach (var size in counted.Keys.Where(k => counted[k] == narrow).ToList())
            {
                counted[size] = wide;
            }
        }

        return sizes.Count == counted.Count ? week : week with
        {
            Steps = [.. week.Steps.Select(s => s.Bake is { } bake ? s with { Bake = bake with { Pans = [.. bake.Pans.Select(p => counted[p])] } } : s)],
        };
    }

    private static int Fits(Machine oven, int size) => oven.Fits.GetValueOrDefault(size);
}
