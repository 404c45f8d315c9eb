namespace Bakehouse.Domain.Reminders;

using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;

/// <summary>
/// Which steps call for a ring, and when. Only three do (leave the fridge, out of the oven, hand over); starts and waits are
/// silent, because an alarm that rings for everything is heard by nobody (common practice, no source).
/// </summary>
public static class Rings
{
    /// <summary>The operation that takes a cake out of the fridge.</summary>
    private const string LeaveFridge = "leavefridge";

    /// <summary>
    /// Every ring that is still open, earliest due first, so that late ones stand before the others. Pure: the same book gives
    /// the same rings. A step that is done, or that the plan no longer holds, has none.
    /// Due: leaving the fridge at the start of that step; the oven at the end of each bake, one ring for the pans of a load that end
    /// together, small pans first; handing over at the agreed time, a delivery when loading must begin. What a handover needs
    /// before it, taking the cake out, has a ring of its own.
    /// </summary>
    /// <param name="week">The week compiled from the orders, shop and ticks given here.</param>
    /// <param name="wall">The plan on the wall.</param>
    /// <param name="answers">Answers that stand, oldest first.</param>
    public static IReadOnlyList<Ring> Of(
        Week week, Wall wall, IReadOnlyList<Order> orders, Shop shop, IReadOnlyList<Tick> ticks, IReadOnlyList<RingAnswer> answers)
    {
        var plan = new OpenPlan(week, wall, ticks);
        var known = orders.ToDictionary(o => o.Id.ToString("N"));
        var given = answers.ToLookup(a => a.Ring);
        var last = week.Orders.Select(o => o.Out).ToHashSet();
        return
        [
            .. Calls(plan, last)
                .Where(c => known.ContainsKey(plan.Step(c.Rows[0].Step).Order))
                .Select(c => Make(c, plan, known, shop, given))
                .OfType<Ring>()
                .OrderBy(r => r.Due).ThenBy(r => r.Id, StringComparer.Ordinal),
        ];
    }

    private static IEnumerable<Call> Calls(OpenPlan plan, HashSet<string> last)
    {
        foreach (var row in plan.Rows)
        {
            if (plan.Step(row.Step).Name == LeaveFridge)
            {
                yield return new Call(RingKind.LeaveFridge, [row], row.Start, row.People.Count > 0 ? row.People[0] : null);
            }
            else if (last.Contains(row.Step))
            {
                yield return new Call(RingKind.Handover, [row], row.Start, row.People.Count > 0 ? row.People[0] : null);
            }
        }

        foreach (var pans in plan.PansOut())
        {
            yield return new Call(RingKind.OvenOut, pans, plan.End(pans[0]), plan.WhoTakesOut(pans[0].Step));
        }
    }

    private static Ring? Make(Call call, OpenPlan plan, Dictionary<string, Order> orders, Shop shop, ILookup<string, RingAnswer> answers)
    {
        var row = call.Rows[0];
        var id = $"{call.Kind}:{row.Step}";
        var planned = plan.At(call.Minute);
        var slack = call.Kind == RingKind.OvenOut ? null : Slack.Until(plan, row);
        if (answers[id].Any(a => a.Kind == RingAnswerKind.Cannot && a.At >= planned))
        {
            return null;
        }

        var words = new RingWords(plan, orders, shop);
        var (place, placeId) = words.Place(call.Kind, row);
        return new Ring(
            id, call.Kind, row.Step, Due(planned, slack, answers[id]), call.Person, words.Verb(call.Kind, row), place, placeId,
            words.What(call.Rows), words.Orders(call.Rows), words.Why(row), slack)
        {
            Steps = [.. call.Rows.Select(r => r.Step)],
        };
    }

    /// <summary>
    /// As planned, or as late as somebody said "later", but never beyond the slack that the plan leaves now. An answer to an earlier
    /// plan does not hold a later one back.
    /// </summary>
    private static Instant Due(Instant planned, Instant? slack, IEnumerable<RingAnswer> answers)
    {
        var until = answers.LastOrDefault(a => a.Kind == RingAnswerKind.Later)?.Until;
        return until is not { } later || later <= planned || slack is not { } most ? planned : Instant.Min(later, Instant.Max(planned, most));
    }

    private sealed record Call(RingKind Kind, IReadOnlyList<StepRow> Rows, int Minute, string? Person);
}
