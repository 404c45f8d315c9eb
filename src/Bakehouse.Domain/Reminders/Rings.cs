namespace Bakehouse.Domain.Reminders;

using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;

/// <summary>
/// Which steps call for a ring, and when. Only three do (leave the fridge, out of the oven, hand over), and a cake that passes a food
/// limit; starts and waits are silent, because an alarm that rings for everything is heard by nobody (common practice, no source).
/// </summary>
public static class Rings
{
    /// <summary>The operation that takes a cake out of the fridge.</summary>
    private const string LeaveFridge = "leavefridge";

    /// <summary>Taken out and handed over within so many minutes is one way and rings once.</summary>
    private const int OneWay = 10;

    private const string Deliver = "deliver";

    /// <summary>
    /// Every ring that is still open, earliest due first, so that late ones stand before the others. Pure: the same book gives
    /// the same rings. A step that is done, or that the plan no longer holds, has none.
    /// Due: leaving the fridge at the start of that step; the oven at the end of each bake, one ring for the pans of a load that end
    /// together, small pans first; handing over at the agreed time, a delivery when loading must begin, unless the cake leaves
    /// the fridge just before (for a delivery: by the same hands); a food limit when it is passed. In the shop's quiet hours what may wait is held to their end.
    /// </summary>
    /// <param name="week">The week compiled from the orders, shop and ticks given here.</param>
    /// <param name="wall">The plan on the wall.</param>
    /// <param name="answers">Answers that stand, oldest first.</param>
    public static IReadOnlyList<Ring> Of(
        Week week, Wall wall, IReadOnlyList<Order> orders, Shop shop, IReadOnlyList<Tick> ticks, IReadOnlyList<RingAnswer> answers)
    {
        var plan = new OpenPlan(week, wall, ticks);
        var known = orders.ToDictionary(o => o.Id.ToString("N"));
        var maker = new RingMaker(plan, known, shop, answers);
        var calls = plan.Rows.Where(r => known.ContainsKey(plan.Step(r.Step).Order)).ToList();
        return
        [
            .. Calls(plan, calls, new FoodEnds(plan, known))
                .Select(maker.Make)
                .OfType<Ring>()
                .OrderBy(r => r.Due).ThenBy(r => r.Id, StringComparer.Ordinal),
        ];
    }

    private static IEnumerable<Call> Calls(OpenPlan plan, IReadOnlyList<StepRow> rows, FoodEnds limits)
    {
        var last = plan.Week.Orders.Select(o => o.Out).ToHashSet();
        foreach (var row in rows)
        {
            if (plan.Step(row.Step).Name == LeaveFridge)
            {
                yield return new Call(RingKind.LeaveFridge, [row], row.Start, FirstOf(row));
            }
            else if (last.Contains(row.Step))
            {
                var ends = limits.Of(row);
                if (!IsOneWay(plan, row))
                {
                    yield return new Call(RingKind.Handover, [row], row.Start, FirstOf(row)) { Limit = ends };
                }

                if (ends is { } limit)
                {
                    yield return new Call(RingKind.FoodLimit, [row], limit.Minute, FirstOf(row)) { Limit = ends };
                }
            }
        }

        foreach (var pans in plan.PansOut(rows))
        {
            yield return new Call(RingKind.OvenOut, pans, plan.End(pans[0]), plan.WhoTakesOut(pans[0].Step));
        }
    }

    private static string? FirstOf(StepRow row) => row.People.Count > 0 ? row.People[0] : null;

    private static bool IsOneWay(OpenPlan plan, StepRow handover) => plan.Before[handover.Step].Any(h =>
        plan.Row(h.From) is { } before && plan.Step(h.From).Name == LeaveFridge
        && handover.Start - before.Start is >= 0 and <= OneWay
        && (plan.Step(handover.Step).Name != Deliver || FirstOf(before) == FirstOf(handover)));
}
