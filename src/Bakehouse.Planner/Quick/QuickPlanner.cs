using Bakehouse.Domain.Planning;

namespace Bakehouse.Planner.Quick;

/// <summary>
/// Plans by placing one order at a time backwards from its pickup, others standing still, and by rounds in which a few
/// orders are placed anew. The work is counted in places tried, so the same week gives the same plan on any machine;
/// a cancelled call returns the best plan so far.
/// </summary>
/// <param name="budget">Places that <see cref="Plan"/> may try in its rounds; the usual one takes about two seconds.</param>
public sealed class QuickPlanner(long budget = QuickPlanner.UsualBudget) : IPlanner
{
    /// <summary>Places tried in the rounds of a whole plan.</summary>
    public const long UsualBudget = 1_000_000;

    /// <inheritdoc/>
    public PlanOutcome Plan(Week week, CancellationToken cancel = default) => Make(week, budget, false, cancel);

    /// <inheritdoc/>
    public PlanOutcome Insert(Week week, CancellationToken cancel = default) => Make(week, 0, false, cancel);

    /// <inheritdoc/>
    public PlanOutcome Push(Week week, CancellationToken cancel = default) => Make(week, 0, true, cancel);

    /// <inheritdoc/>
    public PlanOutcome Repair(Week week, int calmUntil, CancellationToken cancel = default)
    {
        var shop = Reading.Read(week with { Repair = true });
        var reasons = Impossible.Reasons(shop);
        return reasons.Count > 0 ? Stuck(reasons) : new Repairs(shop, calmUntil / week.Grain, cancel).Run();
    }

    private static PlanOutcome Stuck(IReadOnlyList<Reason> reasons) => new(null, new Dictionary<string, int>(StringComparer.Ordinal), reasons);

    private static PlanOutcome Make(Week week, long rounds, bool push, CancellationToken cancel)
    {
        var shop = Reading.Read(week);
        var reasons = Impossible.Reasons(shop);
        return reasons.Count > 0 ? Stuck(reasons) : new Session(shop, cancel).Run(rounds, push);
    }
}
