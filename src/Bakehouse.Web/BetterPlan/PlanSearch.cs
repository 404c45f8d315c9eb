namespace Bakehouse.Web.BetterPlan;

using Bakehouse.Book.Reading;
using Bakehouse.Domain.Planning;
using Bakehouse.Planner.Solver;
using NodaTime;

/// <summary>Makes a plan better for a while, beside the work.</summary>
public delegate Task<Improved> Improving(Week week, Plan plan, CancellationToken cancel);

/// <summary>What the last search found.</summary>
/// <param name="At">When it ended.</param>
/// <param name="Plan">A plan that is worth moving for, or null.</param>
/// <param name="Was">Levels of the plan on the wall then.</param>
/// <param name="Becomes">Levels of the plan found.</param>
public sealed record Sought(Instant At, Wall? Plan, Levels Was, Levels Becomes);

/// <summary>
/// Looks for a better plan of the whole book while everybody works on, once a day and when somebody asks. It changes nothing: what it finds
/// is offered, and what hangs on the wall moves only when somebody takes it.
/// </summary>
public sealed class PlanSearch(IBook book, IClock clock, Improving improve, ILogger<PlanSearch> log)
{
    /// <summary>An offer stands so long before the calm hours reach what it moves.</summary>
    private const int OfferMinutes = 60;

    /// <summary>Minutes of freshness or of buffer that each step moved must gain: people have to read the new hours (our own choice).</summary>
    private const int GainForEachMove = 10;

    /// <summary>Minutes of overtime that are worth a new plan (our own choice).</summary>
    private const int OvertimeGain = 15;

    private int looking;

    /// <summary>Raised when a search begins or ends, and when an offer is put aside.</summary>
    public event Action? Changed;

    /// <summary>True while it looks.</summary>
    public bool IsLooking => Volatile.Read(ref looking) == 1;

    /// <summary>What was found last; null if nobody has looked yet, or what was found is put aside.</summary>
    public Sought? Last { get; private set; }

    /// <summary>Looks once; if a search is under way already, that one goes on.</summary>
    public async Task Look(CancellationToken cancel = default)
    {
        if (Interlocked.Exchange(ref looking, 1) == 1)
        {
            return;
        }

        try
        {
            Changed?.Invoke();
            Last = await Search(book.State, cancel);
        }
        finally
        {
            Volatile.Write(ref looking, 0);
            Changed?.Invoke();
        }
    }

    /// <summary>The offer is taken, left, or fits no more.</summary>
    public void PutAside()
    {
        if (Last is { Plan: not null })
        {
            Last = null;
            Changed?.Invoke();
        }
    }

    private async Task<Sought> Search(BookState state, CancellationToken cancel)
    {
        var now = clock.GetCurrentInstant();
        if (state.Week is not { Reference: { } stands } week)
        {
            return new Sought(now, null, default, default);
        }

        var calm = Calm.Until(week, (int)(now - week.Epoch).TotalMinutes + Calm.Minutes + OfferMinutes);
        var found = await improve(calm, stands, cancel);
        if (found.Trouble is { } trouble)
        {
            log.LogWarning("The search for a better plan was cut short: {Problem}", trouble);
        }

        var was = Judge.Examine(calm, stands).Levels;
        return new Sought(clock.GetCurrentInstant(), IsWorthIt(was, found.Levels) ? new Wall(week.Epoch, found.Plan) : null, was, found.Levels);
    }

    /// <summary>A promise or an age is always worth it, overtime from a quarter of an hour, freshness by what it gains for each move.</summary>
    private static bool IsWorthIt(Levels was, Levels now) =>
        now.CompareTo(was) < 0
        && (now.Late < was.Late || now.Stale < was.Stale || now.Overtime <= was.Overtime - OvertimeGain
            || (now.Late, now.Stale) == (was.Late, was.Stale) && was.Fresh - now.Fresh >= (now.Changes - was.Changes) * GainForEachMove);
}
