using System.Globalization;
using Bakehouse.Domain.Planning;
using Bakehouse.Testing.Planning;

namespace Bakehouse.Benchmarks.Weeks;

/// <summary>
/// The best that two plain planners reached on a week, whatever time they took (peers.csv, measured by the project on two cores,
/// judged by a judge written apart). A peer without a plan has no levels.
/// </summary>
/// <param name="Rule">The baker's rule: earliest pickup first, each order backwards; one round, or rounds for 5 s.</param>
/// <param name="Solver">A plain solver model, 5 s to 120 s, also with a plan as its hint.</param>
internal sealed record Peers(Levels? Rule, Levels? Solver)
{
    /// <summary>All peers by week.</summary>
    public static IReadOnlyDictionary<string, Peers> Read() => WeekFiles.Table("peers.csv")
        .GroupBy(r => r["week"], StringComparer.Ordinal)
        .ToDictionary(g => g.Key, g => new Peers(Best(g, false), Best(g, true)), StringComparer.Ordinal);

    private static Levels? Best(IGrouping<string, IReadOnlyDictionary<string, string>> rows, bool solver)
    {
        var repair = rows.Key.StartsWith("repair", StringComparison.Ordinal);
        return rows.Where(r => r["planner"].Contains("cpsat", StringComparison.Ordinal) == solver && r["feasible"] == "yes")
            .Select(Of)
            .Order(Comparer<Levels>.Create((a, b) => a.CompareTo(b, repair)))
            .Select(l => (Levels?)l)
            .FirstOrDefault();
    }

    private static Levels Of(IReadOnlyDictionary<string, string> row)
    {
        long At(string level) => long.Parse(row[level], CultureInfo.InvariantCulture);
        return new Levels(At("L0"), At("L1"), At("L2"), At("L3"), At("L4"), At("L5"), At("L6"));
    }
}
