namespace Bakehouse.Book.Figures;

using Bakehouse.Domain.Planning;

/// <summary>The planner, timed.</summary>
internal sealed class TimedPlanner(IPlanner planner, BookFigures figures) : IPlanner
{
    public PlanOutcome Plan(Week week, CancellationToken cancel = default) => figures.Time("plan", () => planner.Plan(week, cancel));

    public PlanOutcome Insert(Week week, CancellationToken cancel = default) => figures.Time("insert", () => planner.Insert(week, cancel));

    public PlanOutcome Push(Week week, CancellationToken cancel = default) => figures.Time("push", () => planner.Push(week, cancel));

    public PlanOutcome Repair(Week week, int calmUntil, CancellationToken cancel = default) => figures.Time("repair", () => planner.Repair(week, calmUntil, cancel));
}
