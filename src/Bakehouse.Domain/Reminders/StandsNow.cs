namespace Bakehouse.Domain.Reminders;

using Bakehouse.Domain.Planning;

/// <summary>Something that stands in a place now, as far as plan and ticks say.</summary>
/// <param name="Store">Shelf, rack, bench or tubs.</param>
/// <param name="From">The step after which it was put there.</param>
/// <param name="To">The step that takes it away, not done yet.</param>
public sealed record StandsNow(string Store, string From, string To)
{
    /// <summary>
    /// What stands where: put there by a step that is done or whose time has passed, and not taken away. A thing whose step is overdue
    /// is still there.
    /// </summary>
    public static IReadOnlyList<StandsNow> Of(Week week, Wall wall, IReadOnlyList<Tick> ticks, Instant now)
    {
        var plan = new OpenPlan(week, wall, ticks);
        return
        [
            .. from row in plan.Rows
               from hold in plan.Before[row.Step]
               where plan.Stores.ContainsKey(hold.Id) && plan.Row(hold.From) is { } first
                   && (plan.IsDone(hold.From) || plan.At(plan.End(first)) <= now)
               select new StandsNow(plan.Stores[hold.Id], hold.From, hold.To),
        ];
    }
}
