using Bakehouse.Domain.Planning;

namespace Bakehouse.Planner.Quick;

/// <summary>
/// Round after round takes something off the board and puts it back otherwise. A round is kept if it makes no level worse, or none worse
/// than it was a hundred rounds before: so the search leaves a good plan for a better one, and the best is returned. A round is given up
/// as soon as it can't be kept any more. The budget is counted in places tried, never in seconds, so the same week gives the same plan.
/// </summary>
internal sealed class Rounds
{
    private const int Tries = 200;
    private const int Memory = 100;
    private static readonly uint[] Earlies = [0, 16, 40, 90];
    private static readonly int[] Freshes = [Terms.Any, Terms.Any, 24, 96];

    private readonly Shop shop;
    private readonly Job[] movable;
    private readonly Dice dice;
    private readonly Clearing clearing;
    private readonly Insertion insertion;
    private readonly Cleaning cleaning;
    private readonly Board spare;
    private readonly Board board;
    private readonly Build?[] next;
    private readonly Build?[] builds;
    private readonly Levels[] before = new Levels[Memory];
    private Levels levels;
    private Draft best = null!;
    private Levels bestLevels;
    private long work;
    private long rounds;

    public Rounds(Shop shop, Job[] movable, Draft start, uint seed)
    {
        (this.shop, this.movable) = (shop, movable);
        dice = new Dice(seed);
        (board, spare) = (new Board(shop), new Board(shop));
        board.CopyFrom(start.Board);
        builds = [.. start.Builds];
        next = [.. start.Builds];
        insertion = new Insertion(shop, spare);
        cleaning = new Cleaning(shop, spare);
        clearing = new Clearing(shop, movable, dice);
        levels = Score.Of(shop, board, builds);
        Array.Fill(before, levels);
        Keep();
    }

    /// <summary>Improves what stands on the board until the budget is used. Builds is by job.</summary>
    public Draft Run(IReadOnlySet<Clean> keep, long budget, CancellationToken cancel)
    {
        while (work < budget && !cancel.IsCancellationRequested && movable.Length > 0 && !Perfect(bestLevels))
        {
            spare.CopyFrom(board);
            builds.CopyTo(next, 0);
            var done = insertion.Work;
            var stuck = clearing.Clear(board, spare, next);
            cleaning.DropIdle(keep);
            ref var old = ref before[rounds % before.Length];
            var whole = PutBack(stuck, old.CompareTo(levels) > 0 ? old : levels);
            work += insertion.Work - done + 50;
            rounds++;
            if (whole)
            {
                Judge(Score.Of(shop, spare, next));
            }

            old = levels.CompareTo(old) < 0 ? levels : old;
        }

        return best;
    }

    private void Judge(Levels now)
    {
        var old = before[(rounds - 1) % before.Length];
        if (now.CompareTo(levels) <= 0 || now.CompareTo(old) <= 0)
        {
            board.CopyFrom(spare);
            next.CopyTo(builds, 0);
            levels = now;
            if (levels.CompareTo(bestLevels) < 0)
            {
                Keep();
            }
        }
    }

    private void Keep()
    {
        best ??= new Draft(new Board(shop), new Build?[builds.Length]);
        best.Board.CopyFrom(board);
        builds.CopyTo(best.Builds, 0);
        bestLevels = levels;
    }

    /// <summary>False as soon as what stands can't be better than what is still of use.</summary>
    private bool PutBack(List<Job> off, Levels most)
    {
        var bound = most is { Broken: > 0 } or { Late: > 0 } or { Stale: > 0 } ? Bound.Anything : most.Overtime > 0 ? Bound.KeepingAges : Bound.InUsualHours;
        var room = most.Broken > 0 ? int.MaxValue : most.Late - movable.Where(j => !off.Contains(j)).Sum(Late);
        foreach (var job in off)
        {
            var twist = dice.Below(2) == 0 ? 0 : dice.Next();
            var wished = Array.TrueForAll(job.Orders, o => o.Rank != 1);
            var manner = new Manner(Tries, twist, twist == 0 ? 0 : Earlies[dice.Below(Earlies.Length)], Freshes[dice.Below(Freshes.Length)])
            {
                Doubtful = Late(job) > 0,
                Rough = builds[job.Index] is not null,
                MostLate = wished ? shop.Grains : (int)Math.Min(room / shop.Grain, shop.Grains),
                Most = bound,
            };
            if (!PutBack(job, manner) && most.Broken == 0)
            {
                return false;
            }

            room -= next[job.Index] is null ? 0 : job.Outs.Sum(o => o.Order.Rank == 1 ? Score.MinutesLate(shop, spare, o) : 0);
        }

        return true;
    }

    private long Late(Job job) => builds[job.Index] is null ? 0 : job.Outs.Sum(o => o.Order.Rank == 1 ? (long)Score.MinutesLate(shop, board, o) : 0);

    private bool PutBack(Job job, Manner manner)
    {
        if (next[job.Index] is { } part)
        {
            if (insertion.Complete(job, part, manner))
            {
                return true;
            }

            Placing.Remove(spare, part);
        }

        next[job.Index] = insertion.Insert(job, manner);
        return next[job.Index] is not null;
    }

    private static bool Perfect(Levels levels) => levels is { Broken: 0, Late: 0, Stale: 0, Overtime: 0, Fresh: 0 };
}
