using Bakehouse.Domain.Planning;

namespace Bakehouse.Planner.Solver;

/// <summary>
/// Two searches side by side, which meet after every so many units; who is behind goes on from the better plan. What they find depends on
/// the units alone, not on how many threads carry them.
/// </summary>
/// <param name="better">Hears of each better plan.</param>
internal sealed class Pair(Week week, Plan start, uint seed, Action<Plan> better)
{
    /// <summary>Units between two meetings.</summary>
    private const double Stretch = 0.05;

    private readonly Search[] searches = [new(week, start, seed), new(week, start, seed + 1)];

    /// <summary>The best plan of both.</summary>
    public Plan Best => Ahead.Best;

    private Search Ahead => searches[1].Levels.CompareTo(searches[0].Levels, week.Repair) < 0 ? searches[1] : searches[0];

    /// <summary>Searches until each has used so many units, or nothing is left to do. True if it is proved that nothing is better.</summary>
    public bool Run(double units)
    {
        if (searches[0].Small)
        {
            AtOnce(units);
            return searches[0].Proved;
        }

        for (var left = units; left > 0 && !Array.Exists(searches, s => s.Done); left -= Stretch)
        {
            var before = searches[0].Levels;
            Parallel.ForEach(searches, s => s.Run(Math.Min(left, Stretch)));
            var ahead = Ahead;
            searches[ahead == searches[0] ? 1 : 0].Follow(ahead);
            if (ahead.Levels.CompareTo(before, week.Repair) < 0)
            {
                better(ahead.Best);
            }
        }

        return false;
    }

    /// <summary>One solves all at once, the other goes by windows meanwhile, until a proof makes it needless.</summary>
    private void AtOnce(double units)
    {
        using var proved = new CancellationTokenSource();
        var telling = new Lock();
        void Tell(Search search)
        {
            lock (telling)
            {
                better(search.Best);
            }
        }

        Parallel.Invoke(
            () =>
            {
                searches[0].Exactly(units, () => Tell(searches[0]));
                if (searches[0].Proved)
                {
                    proved.Cancel();
                }
            },
            () =>
            {
                for (var left = units; left > 0 && !searches[1].Done && !proved.IsCancellationRequested; left -= Stretch)
                {
                    searches[1].Run(Math.Min(left, Stretch), proved.Token);
                    Tell(searches[1]);
                }
            });
    }
}
