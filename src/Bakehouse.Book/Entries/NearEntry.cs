namespace Bakehouse.Book.Entries;

using Bakehouse.Domain;
using Bakehouse.Domain.Orders;

/// <summary>Plans what came near: each cake among the others, which stand still. Whoever is late so, is late; nobody is moved unasked.</summary>
internal static class NearEntry
{
    private const string Subject = "near";

    public static Outcome Decide(PlanNear command, Desk desk)
    {
        var waiting = desk.State.WithoutPlan(desk.Now);
        var (wall, late, reasons) = (desk.State.Wall, new Dictionary<string, int>(), new List<Problem>());
        var orders = desk.State.Orders.Except(waiting).ToList();
        foreach (var order in waiting)
        {
            var fitted = desk.Fitting.Place([.. orders, order], desk.State.Ticks, wall, order, afresh: true).OrOurBug();
            reasons.AddRange(fitted.Reasons.Select(r => new Problem("plan", order.SizeInInches, r.Sentence, r.Try)));
            if (fitted.IsPlan)
            {
                wall = fitted.Wall;
                orders.Add(order);
                late[Key(order)] = fitted.Late.GetValueOrDefault(Key(order));
            }
        }

        return late.Count > 0
            ? Outcome.Accepted(Subject, new Change(wall, _ => { }), late: late.Where(l => l.Value > 0).ToDictionary(StringComparer.Ordinal))
            : Outcome.Refused(Subject, waiting.Count == 0 ? "Every cake that is near has its plan." : "There is no plan that makes what came near.", reasons);
    }

    private static string Key(Order order) => order.Id.ToString("N");
}
