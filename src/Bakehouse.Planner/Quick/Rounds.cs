using Bakehouse.Domain.Planning;

namespace Bakehouse.Planner.Quick;

/// <summary>
/// Places the jobs one by one and then, round after round, takes a few off the board and puts them back in another
/// order, late ones first. A round that makes no level worse is kept. The budget is counted in places tried, never in
/// seconds, so the same week gives the same plan.
/// </summary>
internal sealed class Rounds(Shop shop, Job[] movable, CancellationToken cancel)
{
    private const int Tries = 400;

    private readonly Dice dice = new(20261125);
    private readonly Board spare = new(shop);
    private long work;

    /// <summary>Improves what stands on the board until the budget is used. Builds is by job.</summary>
    public void Run(Board board, Build?[] builds, IReadOnlySet<Clean> keep, long budget)
    {
        var tried = new Insertion(shop, spare);
        var levels = Score.Of(shop, board, builds);
        var cleaning = new Cleaning(shop, spare);
        while (work < budget && !cancel.IsCancellationRequested && movable.Length > 0 && !Perfect(levels))
        {
            spare.CopyFrom(board);
            var next = (Build?[])builds.Clone();
            var before = tried.Work;
            foreach (var job in Pick(board, builds))
            {
                if (next[job.Index] is { } build)
                {
                    Placing.Remove(spare, job, build);
                    next[job.Index] = null;
                }
            }

            cleaning.DropIdle(keep);
            var back = movable.Where(j => next[j.Index] is null).OrderByDescending(j => Lateness(board, builds, j)).ThenBy(_ => dice.Next()).ToList();
            foreach (var job in back)
            {
                next[job.Index] = tried.Insert(job, Tries, dice.Below(2) == 0 ? 0 : dice.Next());
            }

            work += tried.Work - before + 50;
            var now = Score.Of(shop, spare, next);
            if (now.CompareTo(levels) <= 0)
            {
                board.CopyFrom(spare);
                next.CopyTo(builds, 0);
                levels = now;
            }
        }
    }

    private static bool Perfect(Levels levels) => levels is { Broken: 0, Late: 0, Stale: 0, Overtime: 0, Fresh: 0 };

    private long Lateness(Board board, Build?[] builds, Job job)
        => builds[job.Index] is { } build ? Score.OfJob(shop, board, job, build).Late : long.MaxValue;

    /// <summary>One job that has something to mend, and a few whose pickups are near.</summary>
    private List<Job> Pick(Board board, Build?[] builds)
    {
        var seed = Seed(board, builds);
        var near = movable.Where(j => j != seed).OrderBy(j => Math.Abs(j.Due - seed.Due)).ThenBy(j => j.Index).Take(8).ToList();
        var picked = new List<Job> { seed };
        for (var count = dice.Below(Math.Min(5, near.Count + 1)); count > 0; count--)
        {
            var at = dice.Below(near.Count);
            picked.Add(near[at]);
            near.RemoveAt(at);
        }

        return picked;
    }

    private Job Seed(Board board, Build?[] builds)
    {
        var poor = movable.Where(j => builds[j.Index] is null || Lateness(board, builds, j) > 0).ToList();
        if (poor.Count == 0)
        {
            poor = [.. movable.Where(j => Score.OfJob(shop, board, j, builds[j.Index]!) is { Stale: > 0 } or { Fresh: > 0 })];
        }

        return poor.Count > 0 && dice.Below(4) > 0 ? poor[dice.Below(poor.Count)] : movable[dice.Below(movable.Length)];
    }
}
