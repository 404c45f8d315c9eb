using Bakehouse.Planner.Quick;

namespace Bakehouse.Planner.Network;

/// <summary>
/// Serial generation for nets with most gaps (after Franck, Neumann and Schwindt 2001): where an activity fits only after its latest
/// start, those placed ones that hold it back are taken off again and may start only so much later.
/// </summary>
internal sealed class Unscheduling
{
    private readonly Chart chart;
    private readonly Dice dice;
    private readonly Profile profile;
    private readonly int[] paths;
    private readonly int side;
    private readonly int[] early;
    private readonly int[] late;
    private readonly int[] lifted;
    private readonly bool[] placed;
    private readonly List<int> ready = [];
    private int tail;

    /// <param name="chart">What is scheduled.</param>
    /// <param name="paths">Longest paths, see <see cref="LongestPaths.Matrix"/>, with the horizon as their deadline.</param>
    /// <param name="dice">What decides between urgent ones.</param>
    public Unscheduling(Chart chart, int[] paths, Dice dice)
    {
        (this.chart, this.paths, this.dice, profile, side) = (chart, paths, dice, new Profile(chart), chart.Count + 1);
        (early, late, lifted, placed) = (new int[chart.Count], new int[chart.Count], new int[chart.Count], new bool[chart.Count]);
    }

    /// <summary>One schedule that ends at or before the deadline; false if none came of it.</summary>
    /// <param name="deadline">At most the horizon.</param>
    /// <param name="keys">Less is more urgent.</param>
    /// <param name="starts">Filled.</param>
    public bool Build(int deadline, int[] keys, int[] starts)
    {
        profile.Clear();
        Array.Clear(placed);
        for (var a = 0; a < chart.Count; a++)
        {
            lifted[a] = paths[chart.Count * side + a];
        }

        tail = chart.Horizon - deadline;
        var liftings = 0;
        for (var left = Renew(starts); left >= 0; left = Renew(starts))
        {
            if (left == 0)
            {
                return true;
            }

            if (!Fill(keys, starts) && (++liftings > chart.Count || !Lift(starts)))
            {
                return false;
            }
        }

        return false;
    }

    private int stuck;
    private int stuckAt;

    /// <summary>Places until all stand, or one fits only too late: then it is the stuck one.</summary>
    private bool Fill(int[] keys, int[] starts)
    {
        while (Ready().Count > 0)
        {
            var a = Regret.Draw(dice, keys, ready);
            var at = profile.Earliest(a, early[a]);
            if (at < 0 || at > late[a])
            {
                (stuck, stuckAt) = (a, at);
                return false;
            }

            (starts[a], placed[a]) = (at, true);
            profile.Take(a, at);
            for (var b = 0; b < chart.Count; b++)
            {
                Narrow(b, a, at);
            }
        }

        return true;
    }

    private void Narrow(int b, int by, int at)
    {
        early[b] = Math.Max(early[b], at + paths[by * side + b]);
        late[b] = Math.Min(late[b], at - paths[b * side + by]);
    }

    /// <summary>Takes off what holds the stuck one back and all that started after it. False if nothing placed does.</summary>
    private bool Lift(int[] starts)
    {
        var (first, gap) = (int.MaxValue, stuckAt - late[stuck]);
        for (var b = 0; stuckAt >= 0 && b < chart.Count; b++)
        {
            if (placed[b] && starts[b] - paths[stuck * side + b] == late[stuck])
            {
                first = Math.Min(first, starts[b]);
                for (var c = 0; c < chart.Count; c++)
                {
                    lifted[c] = Math.Max(lifted[c], starts[b] + gap + paths[b * side + c]);
                }
            }
        }

        for (var b = 0; first < int.MaxValue && b < chart.Count; b++)
        {
            if (placed[b] && (starts[b] > first || lifted[b] > starts[b]))
            {
                placed[b] = false;
                profile.Give(b, starts[b]);
            }
        }

        return first < int.MaxValue;
    }

    /// <summary>Windows from what is placed and lifted; how many are not placed, or -1 if one of them has no start left.</summary>
    private int Renew(int[] starts)
    {
        var left = 0;
        for (var a = 0; a < chart.Count; a++)
        {
            (early[a], late[a]) = (lifted[a], -paths[a * side + chart.Count] - tail);
        }

        for (var a = 0; a < chart.Count; a++)
        {
            for (var b = 0; placed[a] && b < chart.Count; b++)
            {
                Narrow(b, a, starts[a]);
            }
        }

        for (var a = 0; a < chart.Count; a++)
        {
            if (early[a] > late[a])
            {
                return -1;
            }

            left += placed[a] ? 0 : 1;
        }

        return left;
    }

    /// <summary>Those not placed for which everything that must start before stands.</summary>
    private List<int> Ready()
    {
        ready.Clear();
        for (var a = 0; a < chart.Count; a++)
        {
            if (!placed[a] && !Waits(a))
            {
                ready.Add(a);
            }
        }

        return ready;
    }

    private bool Waits(int a)
    {
        for (var b = 0; b < chart.Count; b++)
        {
            if (!placed[b] && paths[b * side + a] is var lag && (lag > 0 || (lag == 0 && paths[a * side + b] < 0)))
            {
                return true;
            }
        }

        return false;
    }
}
