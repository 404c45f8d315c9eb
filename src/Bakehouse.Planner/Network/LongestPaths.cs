namespace Bakehouse.Planner.Network;

/// <summary>
/// What the lags alone say: earliest and latest starts by longest paths (Bartusch, Mohring and Radermacher 1988). Lags that run in a
/// circle of positive length can't be kept by any schedule.
/// </summary>
internal static class LongestPaths
{
    /// <summary>Stands for "no path"; small enough to be added to.</summary>
    public const int None = int.MinValue / 4;

    /// <summary>Earliest starts by activity, or the activities of a circle that no schedule can keep.</summary>
    public static (int[]? Starts, int[] Circle) Earliest(Chart chart) => Earliest(chart, chart.From);

    /// <summary>The same where none starts before its grain of <paramref name="from"/>.</summary>
    public static (int[]? Starts, int[] Circle) Earliest(Chart chart, int[] from)
    {
        var starts = (int[])from.Clone();
        var by = Enumerable.Repeat(-1, chart.Count).ToArray();
        foreach (var a in chart.Order)
        {
            Relax(chart.After, a, starts, by);
        }

        for (var round = 0; round <= chart.Count; round++)
        {
            var changed = -1;
            for (var a = 0; a < chart.Count; a++)
            {
                changed = Relax(chart.After, a, starts, by) is >= 0 and var last ? last : changed;
            }

            if (changed < 0)
            {
                return (starts, []);
            }

            if (Circle(by, changed) is { Length: > 0 } circle)
            {
                return (null, circle);
            }
        }

        throw new InvalidOperationException($"Lags of {chart.Count} activities neither settle nor show a circle.");
    }

    /// <summary>Latest starts by activity if all end at or before <paramref name="deadline"/>. Only for lags that can be kept.</summary>
    public static int[] Latest(Chart chart, int deadline)
    {
        var back = new int[chart.Count];
        for (var a = 0; a < chart.Count; a++)
        {
            back[a] = chart.Length[a] - deadline;
        }

        var by = new int[chart.Count];
        int[] inTurn = [.. Enumerable.Range(0, chart.Count).Except(chart.Order), .. chart.Order.Reverse()];
        for (var changed = true; changed;)
        {
            changed = false;
            foreach (var a in inTurn)
            {
                changed |= Relax(chart.Before, a, back, by) >= 0;
            }
        }

        return [.. back.Select(b => -b)];
    }

    /// <summary>
    /// Longest path from each activity to each, row by row, with one more at the end: the origin at 0, which has a lag to every
    /// activity and <paramref name="deadline"/> as a lag from each. Null if no schedule keeps it.
    /// </summary>
    public static int[]? Matrix(Chart chart, int deadline)
    {
        var side = chart.Count + 1;
        var paths = new int[side * side];
        Array.Fill(paths, None);
        for (var a = 0; a < chart.Count; a++)
        {
            paths[a * side + a] = 0;
            paths[chart.Count * side + a] = chart.From[a];
            paths[a * side + chart.Count] = chart.Length[a] - deadline;
            for (var k = chart.After.At[a]; k < chart.After.At[a + 1]; k++)
            {
                ref var path = ref paths[a * side + chart.After.Other[k]];
                path = Math.Max(path, chart.After.Least[k]);
            }
        }

        paths[^1] = 0;
        return Close(paths, side) ? paths : null;
    }

    private static bool Close(int[] paths, int side)
    {
        for (var over = 0; over < side; over++)
        {
            for (var a = 0; a < side; a++)
            {
                var first = paths[a * side + over];
                for (var b = 0; first > None / 2 && b < side; b++)
                {
                    paths[a * side + b] = Math.Max(paths[a * side + b], first + paths[over * side + b]);
                }
            }
        }

        for (var a = 0; a < side; a++)
        {
            if (paths[a * side + a] > 0)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Pushes what a has lags to; the last one pushed, or -1.</summary>
    private static int Relax(Sides sides, int a, int[] values, int[] by)
    {
        var changed = -1;
        for (var k = sides.At[a]; k < sides.At[a + 1]; k++)
        {
            var other = sides.Other[k];
            if (values[a] + sides.Least[k] > values[other])
            {
                values[other] = values[a] + sides.Least[k];
                (by[other], changed) = (a, other);
            }
        }

        return changed;
    }

    /// <summary>Walks back along who pushed whom; a circle in it has a positive length.</summary>
    private static int[] Circle(int[] by, int from)
    {
        var at = from;
        for (var steps = 0; steps < by.Length && at >= 0; steps++)
        {
            at = by[at];
        }

        if (at < 0)
        {
            return [];
        }

        var circle = new List<int> { at };
        for (var next = by[at]; next != at; next = by[next])
        {
            circle.Add(next);
        }

        circle.Reverse();
        return [.. circle];
    }
}
