using Bakehouse.Domain.Planning;

namespace Bakehouse.Planner.Quick;

/// <summary>
/// Plans by placing one order at a time backwards from its pickup, others standing still, and by rounds in which a few
/// orders are placed anew. The work is counted in places tried, so the same week gives the same plan on any machine;
/// a cancelled call returns the best plan so far.
/// </summary>
/// <param name="budget">Places that <see cref="Plan(Week, CancellationToken)"/> may try in its rounds; the usual one takes about a second of one processor.</param>
/// <param name="threads">Threads for the rounds, 1 or more; 0 means two where the machine has them. The plan is the same for any number.</param>
public sealed class QuickPlanner(long budget = QuickPlanner.UsualBudget, int threads = 0) : IPlanner
{
    /// <summary>Places tried in the rounds of a whole plan.</summary>
    public const long UsualBudget = 1_000_000;

    /// <inheritdoc/>
    public PlanOutcome Plan(Week week, CancellationToken cancel = default) => Plan(week, _ => { }, cancel);

    /// <summary>The same, and tells of the first plan and of each better one as they are found, each judged; the last one told is returned.</summary>
    public PlanOutcome Plan(Week week, Action<PlanOutcome> better, CancellationToken cancel = default)
        => Make(week, budget, false, cancel, better);

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

    private int Threads => threads > 0 ? threads : Math.Min(2, Environment.ProcessorCount);

    private PlanOutcome Make(Week week, long rounds, bool push, CancellationToken cancel, Action<PlanOutcome>? better = null)
    {
        var shop = Reading.Read(week);
        var reasons = Impossible.Reasons(shop);
        return reasons.Count > 0 ? Stuck(reasons) : new Session(shop, cancel, Threads, better).Run(rounds, push);
    }
}
