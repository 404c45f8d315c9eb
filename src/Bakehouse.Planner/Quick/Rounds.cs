using Bakehouse.Domain.Planning;

namespace Bakehouse.Planner.Quick;

/// <summary>
/// Round after round takes something off the board and puts it back otherwise. A round is kept if it makes no level worse, or none worse
/// than it was some hundred rounds before: so the search leaves a good plan for a better one, and the best is returned. A round is given up
/// as soon as it can't be kept any more. The budget is counted in places tried, never in seconds, so the same week gives the same plan.
/// </summary>
internal sealed partial class Rounds
{
    private const int Tries = 200;

    /// <summary>Rounds that the search looks back, in a large shop and in one of at most so many steps.</summary>
    private const int Memory = 100;
    private const int LongMemory = 500;
    private const int Small = 300;
    private static readonly uint[] Earlies = [0, 16, 40, 90];
    private static readonly int[] Freshes = [Terms.Any, Terms.Any, 4, 16, 64, 192];

    private readonly Shop shop;
    private readonly Job[] movable;
    private readonly IReadOnlySet<Clean> keep;
    private readonly Dice dice;
    private readonly Clearing clearing;
    private readonly Insertion insertion;
    private readonly Cleaning cleaning;
    private readonly Board spare;
    private readonly Board board;
    private readonly Build?[] next;
    private readonly Build?[] builds;
    private readonly Levels[] before;
    private Levels levels;
    private long rounds;
    private readonly Justifying justifying;

    /// <param name="keep">Clean-downs that stay.</param>
    public Rounds(Shop shop, Job[] movable, Draft start, IReadOnlySet<Clean> keep, uint seed)
    {
        (this.shop, this.movable, this.keep) = (shop, movable, keep);
        dice = new Dice(seed);
        before = new Levels[shop.Acts.Length <= Small ? LongMemory : Memory];
        (board, spare) = (new Board(shop), new Board(shop));
        builds = [.. start.Builds];
        next = [.. start.Builds];
        insertion = new Insertion(shop, spare);
        cleaning = new Cleaning(shop, spare);
        clearing = new Clearing(shop, movable, dice);
        justifying = new Justifying(shop, movable, spare, dice);
        Best = new Draft(new Board(shop), [.. start.Builds]);
        GoOnFrom(start, Score.Of(shop, start.Board, start.Builds));
    }

    /// <summary>The best plan so far.</summary>
    public Draft Best { get; }

    /// <summary>Its levels; changes are not counted.</summary>
    public Levels BestLevels { get; private set; }

    /// <summary>True if there is nothing to improve.</summary>
    public bool Done => movable.Length == 0 || BestLevels is { Broken: 0, Late: 0, Stale: 0, Overtime: 0, Fresh: 0 };

    /// <summary>Improves what stands until so many more places are tried.</summary>
    public void Run(long budget, CancellationToken cancel)
    {
        for (var work = 0L; work < budget && !cancel.IsCancellationRequested && !Done;)
        {
            work += Round();
        }
    }

    /// <summary>Goes on from the best plan of another.</summary>
    public void Follow(Rounds other) => GoOnFrom(other.Best, other.BestLevels);

    private void GoOnFrom(Draft draft, Levels known)
    {
        board.CopyFrom(draft.Board);
        draft.Builds.CopyTo(builds, 0);
        levels = known;
        Array.Fill(before, known);
        Keep();
    }

    /// <summary>Returns the places tried.</summary>
    private long Round()
    {
        Turn();
        spare.CopyFrom(board);
        builds.CopyTo(next, 0);
        var done = insertion.Work + justifying.Work;
        ref var old = ref before[rounds++ % before.Length];
        var most = Compare(old, levels) > 0 ? old : levels;
        if (dice.Below(50) == 0)
        {
            justifying.Go(next);
            cleaning.DropIdle(keep);
            Weigh(Score.Of(shop, spare, next), old);
        }
        else
        {
            var off = clearing.Clear(board, spare, next);
            cleaning.DropIdle(keep);
            insertion.Duty = levels is { Broken: 0, Late: 0, Stale: 0 } ? clearing.Duty(board, builds, off) : shop.Duty;
            if (PutBack(off, most))
            {
                Weigh(Score.Of(shop, spare, next), old);
            }
        }

        old = Compare(levels, old) < 0 ? levels : old;
        return insertion.Work + justifying.Work - done + 50;
    }

    private void Weigh(Levels now, Levels old)
    {
        if (Compare(now, levels) <= 0 || Compare(now, old) <= 0)
        {
            board.CopyFrom(spare);
            next.CopyTo(builds, 0);
            levels = now;
            if (levels.CompareTo(BestLevels) < 0)
            {
                Keep();
            }
        }
    }

    private void Keep()
    {
        Best.Board.CopyFrom(board);
        builds.CopyTo(Best.Builds, 0);
        BestLevels = levels;
    }

    /// <summary>False as soon as what stands can't be better than what is still of use.</summary>
    private bool PutBack(List<Job> off, Levels most)
    {
        var bound = most is { Broken: > 0 } or { Late: > 0 } or { Stale: > 0 } ? Bound.Anything : most.Overtime > 0 ? Bound.KeepingAges : Bound.InUsualHours;
        var room = Left(off, most, bound);
        foreach (var job in off)
        {
            if (!PutBack(job, MannerFor(job, room, bound)))
            {
                if (most.Broken == 0)
                {
                    return false;
                }

                continue;
            }

            var own = Score.OfJob(shop, spare, job, next[job.Index]!);
            room = room with { Late = room.Late - own.Late, Fresh = room.Fresh - (bound == Bound.InUsualHours ? own.Fresh : 0) };
            if (room.Late < 0 || room.Fresh < 0 || (bound == Bound.KeepingAges && Score.Overtime(shop, spare) > most.Overtime))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Minutes late and minutes of freshness that the jobs to be put back may take.</summary>
    private Levels Left(List<Job> off, Levels most, Bound bound)
    {
        var left = bound == Bound.InUsualHours ? most : most with { Fresh = long.MaxValue / 2 };
        if (most.Broken > 0)
        {
            return left with { Late = long.MaxValue / 2 };
        }

        foreach (var job in movable)
        {
            if (!off.Contains(job) && builds[job.Index] is { } build)
            {
                var own = Score.OfJob(shop, board, job, build);
                left = left with { Late = left.Late - own.Late, Fresh = left.Fresh - (bound == Bound.InUsualHours ? own.Fresh : 0) };
            }
        }

        return left;
    }

    private Manner MannerFor(Job job, Levels room, Bound bound)
    {
        var twist = dice.Below(2) == 0 ? 0 : dice.Next();
        var wished = Array.TrueForAll(job.Orders, o => o.Rank != 1);
        var late = Math.Clamp((wished ? room.Fresh : room.Late) / shop.Grain, 0, shop.Grains);
        var fresh = (int)Math.Min(Freshes[dice.Below(Freshes.Length)], Math.Clamp(room.Fresh / shop.Grain, 0, Terms.Any));
        return new Manner(Tries, twist, twist == 0 ? 0 : Earlies[dice.Below(Earlies.Length)], fresh)
        {
            Doubtful = Late(job) > 0,
            Rough = builds[job.Index] is not null,
            Nice = dice.Below(2) == 0,
            MostLate = (int)late,
            // Overtime weighs more than a wish for the day.
            Most = wished && dice.Below(5) < 3 ? Bound.InUsualHours : bound,
        };
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
}
