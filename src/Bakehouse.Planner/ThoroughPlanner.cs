using System.Diagnostics;
using Bakehouse.Domain.Planning;
using Bakehouse.Planner.Quick;
using Bakehouse.Planner.Solver;

namespace Bakehouse.Planner;

/// <summary>
/// For whoever can wait some seconds: the quick plan, and then exact answers for as long as there is time. What the quick engine found
/// stands whatever becomes of the solving process.
/// </summary>
/// <param name="solver">The process that solves.</param>
/// <param name="budget">Places that the quick engine may try; in a small week, where exact answers gain more, half, and of one that is solved at once a fortieth; in a large one three times as many.</param>
public sealed class ThoroughPlanner(SolverProcess solver, long budget = 4 * QuickPlanner.UsualBudget)
{
    /// <summary>Most steps of a week that is solved at once, for which any plan will do to begin with.</summary>
    private const int Tiny = 70;

    /// <summary>Most steps of a week in which exact answers gain more than more places tried.</summary>
    private const int Small = 200;

    /// <summary>Steps of a week in which it is the other way round.</summary>
    private const int Large = 700;

    /// <summary>Plans the week, or mends it if it asks for a repair.</summary>
    /// <param name="week">The week.</param>
    /// <param name="units">Units of the solver, see <see cref="SolverProcess"/>; they and the budget decide what is found.</param>
    /// <param name="longest">Elapsed time after which the best plan is returned.</param>
    /// <param name="cancel">Ends the search; what was found stands.</param>
    public async Task<ThoroughOutcome> Plan(Week week, double units, TimeSpan longest, CancellationToken cancel = default)
    {
        var began = Stopwatch.GetTimestamp();
        using var over = CancellationTokenSource.CreateLinkedTokenSource(cancel);
        over.CancelAfter(longest);
        var quick = new QuickPlanner(Places(week.Steps.Count));
        var first = week.Repair ? quick.Repair(week, week.Now + Calm.Minutes, over.Token) : quick.Plan(week, over.Token);
        var left = longest - Stopwatch.GetElapsedTime(began);
        if (first.Plan is not { } plan || left <= TimeSpan.Zero)
        {
            return new ThoroughOutcome(first, false, over.IsCancellationRequested, null);
        }

        var improved = await solver.Improve(week, plan, units, left, cancel: over.Token);
        var outcome = new PlanOutcome(improved.Plan, Judge.MinutesLate(week, improved.Plan), []);
        return new ThoroughOutcome(outcome, improved.Proved, over.IsCancellationRequested, improved.Trouble);
    }

    private long Places(int steps) => steps switch
    {
        <= Tiny => budget / 40,
        <= Small => budget / 2,
        < Large => budget,
        _ => 3 * budget,
    };
}

/// <summary>What was found in the time.</summary>
/// <param name="Outcome">The plan, or why there is none.</param>
/// <param name="Proved">True if it is proved that no plan is better.</param>
/// <param name="Stopped">True if the time was up before the search was: on a quieter machine the plan may be better.</param>
/// <param name="Trouble">What went wrong with the solving process; null if nothing.</param>
public sealed record ThoroughOutcome(PlanOutcome Outcome, bool Proved, bool Stopped, string? Trouble);
