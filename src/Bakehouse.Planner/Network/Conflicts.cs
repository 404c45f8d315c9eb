using Bakehouse.Planner.Quick;

namespace Bakehouse.Planner.Network;

/// <summary>Where starts ask more of a resource than there is. Capacity is the same at all times.</summary>
internal sealed class Conflicts(Chart chart)
{
    private const int Draws = 3;

    private readonly List<int> running = [];
    private readonly int[] most = [.. chart.Net.Resources.Select(r => r.Capacity)];
    private int resource;

    /// <summary>Pairs that together always ask too much of some resource.</summary>
    public IEnumerable<(int, int)> Apart() =>
        from a in Enumerable.Range(0, chart.Count)
        from b in Enumerable.Range(a + 1, chart.Count - a - 1)
        where chart.Length[a] > 0 && chart.Length[b] > 0 && most.Where((m, r) => chart.Demand(a, r) + chart.Demand(b, r) > m).Any()
        select (a, b);

    /// <summary>Finds the earliest; false if there is none.</summary>
    public bool Find(int[] starts)
    {
        var found = int.MaxValue;
        for (var a = 0; a < chart.Count; a++)
        {
            if (chart.Length[a] > 0 && starts[a] < found && Over(starts, starts[a]) is >= 0 and var over)
            {
                (found, resource) = (starts[a], over);
            }
        }

        if (found == int.MaxValue)
        {
            return false;
        }

        Running(starts, found);
        running.RemoveAll(a => chart.Demand(a, resource) == 0);
        return true;
    }

    /// <summary>A few sets of those found, each of which asks too much but would not without any one of it.</summary>
    public IEnumerable<int[]> Least(Dice dice)
    {
        yield return Lessened([.. running.OrderByDescending(a => chart.Demand(a, resource)).ThenBy(a => a)]);
        for (var n = 0; n < Draws; n++)
        {
            yield return Lessened([.. running.Select(a => (Activity: a, Ticket: dice.Next())).OrderBy(t => t.Ticket).Select(t => t.Activity)]);
        }
    }

    private int[] Lessened(List<int> set)
    {
        var (all, count) = (0, 0);
        while (all <= most[resource])
        {
            all += chart.Demand(set[count++], resource);
        }

        set.RemoveRange(count, set.Count - count);
        for (var n = set.Count - 1; n >= 0; n--)
        {
            if (all - chart.Demand(set[n], resource) > most[resource])
            {
                all -= chart.Demand(set[n], resource);
                set.RemoveAt(n);
            }
        }

        return [.. set];
    }

    private void Running(int[] starts, int grain)
    {
        running.Clear();
        for (var a = 0; a < chart.Count; a++)
        {
            if (starts[a] <= grain && grain < starts[a] + chart.Length[a])
            {
                running.Add(a);
            }
        }
    }

    private int Over(int[] starts, int grain)
    {
        Running(starts, grain);
        for (var r = 0; r < most.Length; r++)
        {
            var all = 0;
            foreach (var a in running)
            {
                all += chart.Demand(a, r);
            }

            if (all > most[r])
            {
                return r;
            }
        }

        return -1;
    }
}
