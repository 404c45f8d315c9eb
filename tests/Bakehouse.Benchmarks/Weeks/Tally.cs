using System.Globalization;

namespace Bakehouse.Benchmarks.Weeks;

/// <summary>On how many weeks a plan is better, equal or worse, level by level, by kind of week.</summary>
internal sealed class Tally
{
    private readonly SortedDictionary<string, List<(int Rule, int Solver, bool OnTime)>> kinds = new(StringComparer.Ordinal);

    public void Count(WeekRun run, Peers peer)
    {
        var kind = run.Name.Split('-')[0];
        if (!kinds.TryGetValue(kind, out var rows))
        {
            kinds[kind] = rows = [];
        }

        var repair = run.Week.Repair;
        rows.Add((Comparison.Sign(run.Levels, peer.Rule, repair), Comparison.Sign(run.Levels, peer.Solver, repair), run.Levels is { Broken: 0, Late: 0 }));
    }

    public override string ToString() => string.Concat(kinds.Append(new("all", [.. kinds.Values.SelectMany(r => r)])).Select(k => Line(k.Key, k.Value)));

    private static string Line(string kind, List<(int Rule, int Solver, bool OnTime)> rows) => string.Create(
        CultureInfo.InvariantCulture,
        $"{kind}: {rows.Count} weeks, nobody late on {rows.Count(r => r.OnTime)}; better than both {rows.Count(r => r is { Rule: > 0, Solver: > 0 })}, as good as both or better {rows.Count(r => r is { Rule: >= 0, Solver: >= 0 })}; rule {Three(rows.Select(r => r.Rule))}, solver {Three(rows.Select(r => r.Solver))} (better/equal/worse)\n");

    private static string Three(IEnumerable<int> signs)
    {
        var all = signs.ToList();
        return string.Create(CultureInfo.InvariantCulture, $"{all.Count(s => s > 0)}/{all.Count(s => s == 0)}/{all.Count(s => s < 0)}");
    }
}
