namespace Bakehouse.Book.Answers;

using Bakehouse.Book.Entries;
using Bakehouse.Domain.Answers;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using NodaTime;

/// <summary>
/// What a wish fails on: the shop is asked again with twice the hands, twice the cold, twice the machines. Whatever makes it hold, or
/// comes nearest, decides; and what of the doubled the plan then uses says when and how long it is missing.
/// </summary>
internal sealed class Deciding(Desk desk)
{
    private const string Second = "~2";

    public Decides Of(Fit wished)
    {
        var id = wished.Order.Id.ToString("N");
        var tried = new[] { Scarce.Hands, Scarce.Cold, Scarce.Machines }
            .Select(what => (What: what, Fitted: OrderEntry.Placed(desk, wished.Order, desk.FittingIn(Doubled(what)))))
            .Where(t => t.Fitted is { IsPlan: true, Wall: not null })
            .Select(t => (t.What, t.Fitted, Late: t.Fitted.Late.GetValueOrDefault(id)))
            .OrderBy(t => t.Late).ToList();
        return tried.Count == 0 || tried[0].Late >= wished.Late
            ? new Decides(Scarce.Time, null, null, 0, wished.Late)
            : Missing(tried[0].What, wished.Order, tried[0].Fitted.Wall!, tried[0].Late);
    }

    private Shop Doubled(Scarce what) => what switch
    {
        Scarce.Hands => desk.Shop with { People = [.. desk.Shop.People, .. desk.Shop.People.Select(p => p with { Id = p.Id + Second })] },
        Scarce.Cold => desk.Shop with { Shelves = [.. desk.Shop.Shelves, .. desk.Shop.Shelves.Select(s => s with { Id = s.Id + Second, Unit = s.Unit + Second })] },
        Scarce.Machines => desk.Shop with
        {
            Ovens = [.. desk.Shop.Ovens, .. desk.Shop.Ovens.Select(o => o with { Id = o.Id + Second })],
            Bowls = [.. desk.Shop.Bowls, .. desk.Shop.Bowls.Select(b => b with { Id = b.Id + Second })],
            Turntables = desk.Shop.Turntables * 2,
            RackPlaces = desk.Shop.RackPlaces * 2,
        },
        _ => throw new ArgumentOutOfRangeException(nameof(what), what, "That can't be doubled."),
    };

    private Decides Missing(Scarce what, Order order, Wall wall, int late)
    {
        var week = Week.From(desk.OrdersWith(order), Doubled(what), desk.TicksWith(order), wall, desk.Now, desk.State.Hand);
        var plan = wall.From(week.Epoch);
        var minutes = week.Steps.ToDictionary(s => s.Id, s => s.Minutes, StringComparer.Ordinal);
        var rows = plan.Steps.Where(r => minutes.ContainsKey(r.Step)).ToDictionary(r => r.Step, StringComparer.Ordinal);
        var ends = week.Holds.ToDictionary(h => h.Id, StringComparer.Ordinal);
        List<(int From, int To)> used = what == Scarce.Cold
            ? [.. plan.Holds.Where(h => h.Store.Contains(Second, StringComparison.Ordinal) && ends.TryGetValue(h.Hold, out var hold) && rows.ContainsKey(hold.From) && rows.ContainsKey(hold.To))
                .Select(h => (rows[ends[h.Hold].From].Start + minutes[ends[h.Hold].From], rows[ends[h.Hold].To].Start))]
            : [.. rows.Values.Where(r => r.People.Concat([r.Machine ?? ""]).Any(u => u.EndsWith(Second, StringComparison.Ordinal))).Select(r => (r.Start, r.Start + minutes[r.Step]))];
        return used.Count == 0
            ? new Decides(what, null, null, 0, late)
            : new Decides(
                what, week.Epoch + Duration.FromMinutes(used.Min(u => u.From)), week.Epoch + Duration.FromMinutes(used.Max(u => u.To)),
                what == Scarce.Cold ? used.Max(u => u.To) - used.Min(u => u.From) : used.Sum(u => u.To - u.From), late);
    }
}
