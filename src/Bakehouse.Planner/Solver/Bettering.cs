using Bakehouse.Domain.Planning;

namespace Bakehouse.Planner.Solver;

/// <summary>The best of the plans that were told; each is judged before it counts.</summary>
internal sealed class Bettering(Week week, Plan start, Action<Plan> better)
{
    private readonly HashSet<(string Rule, string? Step)> facts = [.. Judge.Examine(week, start).Breaches.Select(b => (b.Rule, b.Step))];
    private Plan best = start;
    private Levels levels = Judge.Examine(week, start).Levels;
    private bool proved;

    /// <summary>Takes a plan if it is better and breaks no rule that the first did not.</summary>
    public void Hear(SolverTold told)
    {
        proved |= told.Proved;
        if (PlanFile.Read(told.Plan).Plan is not { } plan)
        {
            return;
        }

        var verdict = Judge.Examine(week, plan);
        if (verdict.Levels.CompareTo(levels, week.Repair) < (told.Last ? 1 : 0) && verdict.Breaches.All(b => facts.Contains((b.Rule, b.Step))))
        {
            (best, levels) = (plan, verdict.Levels);
            better(plan);
        }
    }

    public Improved Now(string? trouble) => new(best, levels, proved, trouble);
}

/// <summary>What became of a plan.</summary>
/// <param name="Plan">The best known plan.</param>
/// <param name="Levels">The Judge's levels of it.</param>
/// <param name="Proved">True if it is proved that no plan is better.</param>
/// <param name="Trouble">What went wrong with the solving process, for the log; null if nothing.</param>
public sealed record Improved(Plan Plan, Levels Levels, bool Proved, string? Trouble);
