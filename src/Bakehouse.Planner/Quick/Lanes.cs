using Bakehouse.Domain.Planning;

namespace Bakehouse.Planner.Quick;

/// <summary>
/// Two searches with dice of their own go on side by side and meet after every so many places tried; who is behind goes on from the better
/// plan. What they find depends on the budget alone, not on how many threads carry them.
/// </summary>
internal sealed class Lanes
{
    /// <summary>Places that each tries between two meetings, about a tenth of a second.</summary>
    private const long Stretch = 100_000;

    private static readonly uint[] Seeds = [20261125, 20261127];
    private readonly Rounds[] lanes;

    public Lanes(Shop shop, Job[] movable, Draft first, IReadOnlySet<Clean> keep)
    {
        lanes = [.. Seeds.Select(s => new Rounds(shop, movable, first, keep, s))];
    }

    /// <summary>Improves the first plan until the budget is used; the best is returned, also when cancelled.</summary>
    /// <param name="budget">Places tried by both together.</param>
    /// <param name="threads">1 or more.</param>
    /// <param name="better">Hears of each better plan at the meetings.</param>
    public Draft Run(long budget, int threads, Action<Draft> better, CancellationToken cancel)
    {
        var best = lanes[0].BestLevels;
        for (var left = budget / lanes.Length; left > 0 && !cancel.IsCancellationRequested && !Array.Exists(lanes, l => l.Done); left -= Stretch)
        {
            var share = Math.Min(Stretch, left);
            Parallel.For(0, lanes.Length, new ParallelOptions { MaxDegreeOfParallelism = threads }, i => lanes[i].Run(share, cancel));
            var ahead = lanes.MinBy(l => l.BestLevels, Comparer<Levels>.Create((a, b) => a.CompareTo(b)))!;
            foreach (var lane in lanes.Where(l => l.BestLevels.CompareTo(ahead.BestLevels) > 0))
            {
                lane.Follow(ahead);
            }

            if (ahead.BestLevels.CompareTo(best) < 0)
            {
                best = ahead.BestLevels;
                better(ahead.Best);
            }
        }

        return lanes[0].Best;
    }
}
