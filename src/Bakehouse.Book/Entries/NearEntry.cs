namespace Bakehouse.Book.Entries;

using Bakehouse.Book.Reading;
using Bakehouse.Domain;
using Bakehouse.Domain.FarDates;
using Bakehouse.Domain.Orders;
using NodaTime;

/// <summary>Plans what came near: each cake among the others as they stand, and if it is late so, with one that makes way.</summary>
public static class NearEntry
{
    private const string Subject = "near";

    /// <summary>Orders that should have a plan by now and hang on no wall, by handover.</summary>
    public static IReadOnlyList<Order> Waiting(BookState state, Instant now)
    {
        if (state.Shop is not { } shop)
        {
            return [];
        }

        var today = now.InZone(DateTimeZoneProviders.Tzdb[shop.Zone]).Date;
        var hung = state.Wall?.Plan.Steps.Select(r => r.Step[..32]).ToHashSet(StringComparer.Ordinal) ?? [];
        return [.. state.Orders.Where(o => PlanReach.IsIn(o, shop, today, state.Ticks) && !hung.Contains(o.Id.ToString("N"))).OrderBy(o => o.Handover.At).ThenBy(o => o.Number)];
    }

    internal static Outcome Decide(PlanNear command, Desk desk)
    {
        var waiting = Waiting(desk.State, desk.Now);
        var (wall, late, reasons) = (desk.State.Wall, new Dictionary<string, int>(), new List<Problem>());
        foreach (var order in waiting)
        {
            var orders = desk.State.Orders.Where(o => o.Id == order.Id || !waiting.Contains(o) || late.ContainsKey(Key(o))).ToList();
            var fitted = desk.Fitting.Place(orders, desk.State.Ticks, wall, order, afresh: true).OrOurBug();
            if (fitted.Late.ContainsKey(Key(order)) && wall is not null)
            {
                fitted = desk.Fitting.MakeRoom(orders, desk.State.Ticks, wall, order, fitted.Late)?.OrOurBug() ?? fitted;
            }

            if (fitted.IsPlan)
            {
                (wall, late[Key(order)]) = (fitted.Wall, fitted.Late.GetValueOrDefault(Key(order)));
            }

            reasons.AddRange(fitted.Reasons.Select(r => new Problem("plan", order.SizeInInches, r.Sentence, r.Try)));
        }

        return late.Count > 0
            ? Outcome.Accepted(Subject, new Change(wall, _ => { }), late: late.Where(l => l.Value > 0).ToDictionary(StringComparer.Ordinal))
            : Outcome.Refused(Subject, waiting.Count == 0 ? "Every cake that is near has its plan." : "There is no plan that makes what came near.", reasons);
    }

    private static string Key(Order order) => order.Id.ToString("N");
}
