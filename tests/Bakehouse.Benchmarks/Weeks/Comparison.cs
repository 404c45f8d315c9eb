using Bakehouse.Domain.Planning;

namespace Bakehouse.Benchmarks.Weeks;

/// <summary>How a plan stands against a peer's, level by level.</summary>
internal static class Comparison
{
    private static readonly string[] Names = ["L0", "L1", "L2", "L3", "L4", "L5", "L6"];

    /// <summary>The levels as a list, L0 to L6.</summary>
    public static long[] Cells(Levels l) => [l.Broken, l.Late, l.Stale, l.Overtime, l.Fresh, l.Changes, l.Uneven];

    /// <summary>1 better, 0 equal, -1 worse; a plan beats none.</summary>
    public static int Sign(Levels? mine, Levels? theirs, bool repair) => (mine, theirs) switch
    {
        ({ } m, { } t) => -Math.Sign(m.CompareTo(t, repair)),
        (null, null) => 0,
        _ => mine is null ? -1 : 1,
    };

    /// <summary>"better at L3", "equal", "worse at L1", or "alone" where only one has a plan.</summary>
    public static string Words(Levels? mine, Levels? theirs, bool repair)
    {
        var sign = Sign(mine, theirs, repair);
        var verdict = sign switch { > 0 => "better", 0 => "equal", _ => "worse" };
        return sign == 0 ? verdict : mine is { } m && theirs is { } t ? $"{verdict} at {FirstDifference(m, t, repair)}" : $"{verdict}: no plan";
    }

    private static string FirstDifference(Levels mine, Levels theirs, bool repair)
    {
        int[] order = repair ? [0, 1, 5, 2, 3, 4, 6] : [0, 1, 2, 3, 4, 5, 6];
        var (m, t) = (Cells(mine), Cells(theirs));
        return Names[order.First(i => m[i] != t[i])];
    }
}
