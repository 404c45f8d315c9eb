using Bakehouse.Planner.Quick;

namespace Bakehouse.Planner.Network;

/// <summary>
/// Draws lists and schedules at random, in favour of what is urgent, by <see cref="Regret"/>.
/// </summary>
internal sealed class Sampling
{
    private readonly Chart chart;
    private readonly Dice dice;
    private readonly Profile profile;
    private readonly int[] open;
    private readonly List<int> next = [];
    private readonly List<int> fitting = [];

    public Sampling(Chart chart, Dice dice)
    {
        (this.chart, this.dice, profile) = (chart, dice, new Profile(chart));
        open = new int[chart.Count];
    }

    /// <summary>A list in which each activity stands after those it has lags from.</summary>
    /// <param name="keys">Less is more urgent.</param>
    /// <param name="list">Filled.</param>
    public void List(int[] keys, int[] list)
    {
        Begin(chart.Before, next);
        for (var n = 0; n < list.Length; n++)
        {
            var drawn = Regret.Draw(dice, keys, next);
            list[n] = drawn;
            next.Remove(drawn);
            Open(chart.After, drawn, next);
        }
    }

    /// <summary>
    /// Parallel generation: at each moment whatever can start is started, drawn by urgency. False if one does not end before the
    /// horizon.
    /// </summary>
    public bool Parallel(int[] keys, int[] starts)
    {
        profile.Clear();
        Begin(chart.Before, next);
        var now = 0;
        for (var left = chart.Count; left > 0; left--)
        {
            var fits = Fitting(now, starts);
            while (fits.Count == 0)
            {
                now = Moment(now, starts);
                if (now >= chart.Horizon)
                {
                    return false;
                }

                fits = Fitting(now, starts);
            }

            var drawn = Regret.Draw(dice, keys, fits);
            starts[drawn] = now;
            profile.Take(drawn, now);
            next.Remove(drawn);
            Open(chart.After, drawn, next);
        }

        return true;
    }

    private List<int> Fitting(int now, int[] starts)
    {
        fitting.Clear();
        foreach (var a in next)
        {
            if (Ready(a, starts) <= now && profile.FitsAt(a, now))
            {
                fitting.Add(a);
            }
        }

        return fitting;
    }

    /// <summary>When something waiting can start next, others standing still.</summary>
    private int Moment(int now, int[] starts)
    {
        var moment = chart.Horizon;
        foreach (var a in next)
        {
            var from = Math.Max(now + 1, Ready(a, starts));
            if (from < moment && profile.Earliest(a, from) is >= 0 and var fit)
            {
                moment = Math.Min(moment, fit);
            }
        }

        return moment;
    }

    private int Ready(int a, int[] starts)
    {
        var from = chart.From[a];
        for (var k = chart.Before.At[a]; k < chart.Before.At[a + 1]; k++)
        {
            from = Math.Max(from, starts[chart.Before.Other[k]] + chart.Before.Least[k]);
        }

        return from;
    }

    private void Begin(Sides sides, List<int> ready)
    {
        ready.Clear();
        for (var a = 0; a < chart.Count; a++)
        {
            open[a] = sides.At[a + 1] - sides.At[a];
            if (open[a] == 0)
            {
                ready.Add(a);
            }
        }
    }

    private void Open(Sides sides, int done, List<int> ready)
    {
        for (var k = sides.At[done]; k < sides.At[done + 1]; k++)
        {
            if (--open[sides.Other[k]] == 0)
            {
                ready.Add(sides.Other[k]);
            }
        }
    }
}
