using Bakehouse.Planner.Quick;

namespace Bakehouse.Planner.Network;

/// <summary>
/// Looks for schedules by setting orders: where the starts by longest paths ask too much of a resource at once, one of those activities
/// must wait for the end of another; each such pair is tried in turn, the one that leaves most room first (after De Reyck and
/// Herroelen 1998). Searched to its end, it proves the best end or that there is none. Only for charts that are
/// <see cref="Chart.Steady"/>.
/// </summary>
internal sealed class Ordering
{
    private readonly Chart chart;
    private readonly Budget budget;
    private readonly Dice dice;
    private readonly int bound;
    private readonly int side;
    private readonly Conflicts conflicts;
    private readonly (int, int)[] apart;
    private readonly List<int[]> floors = [];
    private int deadline;
    private int nodes;

    public Ordering(Chart chart, int bound, Dice dice, Budget budget)
    {
        (this.chart, this.bound, this.dice, this.budget, side) = (chart, bound, dice, budget, chart.Count + 1);
        conflicts = new Conflicts(chart);
        apart = [.. conflicts.Apart()];
    }

    /// <summary>Searches for ends before the best one so far.</summary>
    /// <param name="most">Nodes; each makes a schedule and is counted on the budget.</param>
    /// <returns>True if nothing is left to search: the best so far is the best there is.</returns>
    public bool Search(int most)
    {
        deadline = Most;
        nodes = most;
        return LongestPaths.Matrix(chart, deadline) is not { } root || Branch(root, 0);
    }

    private int Most => budget.Best == int.MaxValue ? chart.Horizon : budget.Best - 1;

    private bool Branch(int[] paths, int depth)
    {
        if (budget.Best <= bound)
        {
            return true;
        }

        if (!budget.Left || nodes <= 0)
        {
            return false;
        }

        nodes--;
        budget.Count();
        if (!Settle(paths))
        {
            return true;
        }

        var starts = paths[(chart.Count * side)..(chart.Count * side + chart.Count)];
        if (!conflicts.Find(starts))
        {
            budget.Tell(starts, chart.End(starts));
            return true;
        }

        return Each(paths, Ways(paths, starts), depth);
    }

    private bool Each(int[] paths, (int Before, int After)[] ways, int depth)
    {
        while (floors.Count <= depth)
        {
            floors.Add(new int[side * side]);
        }

        foreach (var (before, after) in ways)
        {
            if (Can(paths, before, after))
            {
                paths.CopyTo(floors[depth], 0);
                Post(floors[depth], before, after);
                if (!Branch(floors[depth], depth + 1))
                {
                    return false;
                }
            }
        }

        return true;
    }

    /// <summary>Pairs of the conflict with the fewest, those first that leave most room.</summary>
    private (int Before, int After)[] Ways(int[] paths, int[] starts)
    {
        (int Before, int After)[]? fewest = null;
        foreach (var set in conflicts.Least(dice))
        {
            var ways = set.SelectMany(b => set, (b, a) => (Before: b, After: a)).Where(w => w.Before != w.After && Can(paths, w.Before, w.After)).ToArray();
            fewest = fewest is null || ways.Length < fewest.Length ? ways : fewest;
        }

        return [.. fewest!.OrderBy(w => Math.Max(0, starts[w.Before] + chart.Length[w.Before] - starts[w.After]) + dice.Below(2)).ThenByDescending(w => Room(paths, w.Before, w.After)).ThenBy(w => w)];
    }

    /// <summary>Grains by which the order could be stretched, by gaps and by the deadline.</summary>
    private int Room(int[] paths, int before, int after) => Math.Min(
        -paths[after * side + before] - chart.Length[before],
        Most - deadline - paths[chart.Count * side + before] - chart.Length[before] - paths[after * side + chart.Count]);

    private bool Can(int[] paths, int before, int after) => Room(paths, before, after) >= 0;

    /// <summary>Two that never run at once, and can stand in one order only, stand so. False if in neither.</summary>
    private bool Settle(int[] paths)
    {
        for (var changed = true; changed;)
        {
            changed = false;
            foreach (var (a, b) in apart)
            {
                if (paths[a * side + b] >= chart.Length[a] || paths[b * side + a] >= chart.Length[b])
                {
                    continue;
                }

                var (one, other) = (Can(paths, a, b), Can(paths, b, a));
                if (!one && !other)
                {
                    return false;
                }

                if (one != other)
                {
                    Post(paths, one ? a : b, one ? b : a);
                    changed = true;
                }
            }
        }

        return InTime(paths);
    }

    private bool InTime(int[] paths)
    {
        for (var a = 0; a < chart.Count; a++)
        {
            if (paths[chart.Count * side + a] + chart.Length[a] > Most)
            {
                return false;
            }
        }

        return true;
    }

    private void Post(int[] paths, int before, int after)
    {
        for (var a = 0; a < side; a++)
        {
            var first = paths[a * side + before];
            if (first > LongestPaths.None / 2)
            {
                first += chart.Length[before];
                for (var b = 0; b < side; b++)
                {
                    paths[a * side + b] = Math.Max(paths[a * side + b], first + paths[after * side + b]);
                }
            }
        }
    }
}
