using Bakehouse.Domain.Planning;

namespace Bakehouse.Planner.Quick;

/// <summary>
/// Two searches with dice of their own go on side by side and meet after every so many places tried; at every eighth meeting who is behind
/// goes on from the better plan. What they find depends on the budget alone, not on how many threads carry them.
/// </summary>
internal sealed class Lanes
{
    /// <summary>Places that each tries between two meetings, about a tenth of a second.</summary>
    private const long Stretch = 100_000;

    /// <summary>Meetings after which who is behind follows.</summary>
    private const int Apart = 8;

    private static readonly Comparer<Levels> ByLevels = Comparer<Levels>.Create((a, b) => a.CompareTo(b));
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
        var best = lanes[0];
        var told = best.BestLevels;
        var left = budget / lanes.Length;
        for (var met = 1; left > 0 && !cancel.IsCancellationRequested && !Array.Exists(lanes, l => l.Done); met++, left -= Stretch)
        {
            var share = Math.Min(Stretch, left);
            Parallel.For(0, lanes.Length, new ParallelOptions { MaxDegreeOfParallelism = threads }, i => lanes[i].Run(share, cancel));
            // Who has only drawn level is not ahead: what was told stays what is returned.
            var ahead = lanes.MinBy(l => l.BestLevels, ByLevels)!;
            best = ahead.BestLevels.CompareTo(told) < 0 ? ahead : best;
            foreach (var lane in lanes.Where(l => met % Apart == 0 && l.BestLevels.CompareTo(best.BestLevels) > 0))
            {
                lane.Follow(best);
            }

            if (best.BestLevels.CompareTo(told) < 0)
            {
                told = best.BestLevels;
                better(best.Best);
            }
        }

        return best.Best;
    }
}
