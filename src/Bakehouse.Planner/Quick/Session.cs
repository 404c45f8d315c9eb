using Bakehouse.Domain.Planning;

namespace Bakehouse.Planner.Quick;

/// <summary>One call of the planner from an empty board to an outcome.</summary>
internal sealed class Session
{
    private const int Tries = 4000;
    private const uint MostTwists = 12;

    private readonly Shop shop;
    private readonly CancellationToken cancel;
    private readonly Board board;
    private readonly Build?[] builds;
    private readonly Standing standing;
    private readonly int threads;
    private readonly Action<PlanOutcome> better;

    /// <param name="threads">Threads that the rounds may use.</param>
    /// <param name="better">Hears of each better plan in the rounds.</param>
    public Session(Shop shop, CancellationToken cancel, int threads = 1, Action<PlanOutcome>? better = null)
    {
        (this.shop, this.cancel, this.threads, this.better) = (shop, cancel, threads, better ?? (_ => { }));
        board = new Board(shop);
        builds = new Build?[shop.Jobs.Length];
        standing = new Standing(shop, board);
    }

    public PlanOutcome Run(long rounds, bool push) => Outcome(Make(rounds, push));

    /// <summary>What stands after it: the board, and the build of each job or null.</summary>
    public Draft Make(long rounds, bool push)
    {
        standing.PutFixed();
        var free = push ? new Pushing(shop, board, standing).Push(builds) : KeepWall();
        var insertion = new Insertion(shop, board);
        foreach (var job in free.OrderBy(j => j.Due).ThenBy(j => j.Index))
        {
            builds[job.Index] = Insert(insertion, job);
        }

        // Placed one after the other, two batters may each have brought a clean-down where one serves both.
        new Cleaning(shop, board).DropIdle(standing.Cleans);
        var first = new Draft(board, builds);
        if (rounds > 0)
        {
            better(Outcome(first));
        }

        return rounds > 0 ? new Lanes(shop, free, first, standing.Cleans).Run(rounds, threads, d => better(Outcome(d)), cancel) : first;
    }

    /// <summary>A job that finds no place at all is tried again with other people and stores first.</summary>
    public static Build? Insert(Insertion insertion, Job job)
    {
        for (uint twist = 0; twist < MostTwists; twist++)
        {
            if (insertion.Insert(job, new Manner(Tries, twist)) is { } build)
            {
                return build;
            }
        }

        return null;
    }

    private Job[] KeepWall()
    {
        var keeping = new Keeping(shop, board, standing);
        foreach (var job in shop.Jobs)
        {
            builds[job.Index] = standing.OnWall(job) is { } build && keeping.Keep(job, build) ? build : null;
        }

        return [.. shop.Jobs.Where(j => builds[j.Index] is null)];
    }

    /// <summary>The plan of a draft with what is late, or why there is none.</summary>
    public PlanOutcome Outcome(Draft draft)
    {
        var (board, builds) = draft;
        Reason[] reasons = [.. shop.Jobs.Where(j => builds[j.Index] is null).Select(j => Impossible.NoRoom(shop, j))];
        var late = new Dictionary<string, int>(StringComparer.Ordinal);
        if (reasons.Length > 0)
        {
            return new PlanOutcome(null, late, reasons);
        }

        foreach (var order in shop.Jobs.SelectMany(j => j.Outs))
        {
            if (Score.MinutesLate(shop, board, order) is > 0 and var minutes)
            {
                late[order.Order.Id] = minutes;
            }
        }

        var plan = Writing.ToPlan(shop, board, builds);
        Examine(plan);
        return new PlanOutcome(plan, late, []);
    }

    /// <summary>
    /// The Judge looks before anybody else does. What people already did or pinned may itself break a rule (a step ticked after
    /// the shift; something that stood longer than planned): that is a fact, not a fault of the plan.
    /// </summary>
    private void Examine(Plan plan)
    {
        var facts = shop.Acts.Where(a => a.Standing).Select(a => a.Step.Id)
            .Concat(shop.Links.Where(l => shop.Acts[l.From].Standing && shop.Acts[l.To].Standing).Select(l => l.Hold.Id)).ToHashSet(StringComparer.Ordinal);
        var broken = Judge.Examine(shop.Week, plan).Breaches.FirstOrDefault(b => b.Step is null || !facts.Contains(b.Step));
        if (broken is not null)
        {
            throw new InvalidOperationException($"The plan breaks {broken.Rule} at {broken.Step}, minute {broken.Minute}.");
        }
    }
}

/// <summary>A plan on a board; a build is null if its job found no place.</summary>
internal sealed record Draft(Board Board, Build?[] Builds);
