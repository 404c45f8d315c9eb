namespace Bakehouse.Book.Answers;

using Bakehouse.Book.Entries;
using Bakehouse.Domain.Answers;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;

/// <summary>
/// What a wish fails on: the shop is asked again with twice the hands, twice the cold, twice the machines. Whatever makes it hold, or
/// comes nearest, decides; and what of the doubled the plan then uses says who or what is missing, when and how much.
/// </summary>
internal sealed class Deciding(Desk desk)
{
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
            : Seen(tried[0].What, wished.Order, tried[0].Fitted.Wall!, tried[0].Late);
    }

    private Shop Doubled(Scarce what) => what switch
    {
        Scarce.Hands => desk.Shop with { People = [.. desk.Shop.People, .. desk.Shop.People.Select(p => p with { Id = p.Id + Missing.Second })] },
        Scarce.Cold => desk.Shop with { Shelves = [.. desk.Shop.Shelves, .. desk.Shop.Shelves.Select(s => s with { Id = s.Id + Missing.Second, Unit = s.Unit + Missing.Second })] },
        Scarce.Machines => desk.Shop with
        {
            Ovens = [.. desk.Shop.Ovens, .. desk.Shop.Ovens.Select(o => o with { Id = o.Id + Missing.Second })],
            Bowls = [.. desk.Shop.Bowls, .. desk.Shop.Bowls.Select(b => b with { Id = b.Id + Missing.Second })],
            Turntables = desk.Shop.Turntables * 2,
            RackPlaces = desk.Shop.RackPlaces * 2,
        },
        _ => throw new ArgumentOutOfRangeException(nameof(what), what, "That can't be doubled."),
    };

    private Decides Seen(Scarce what, Order order, Wall wall, int late)
    {
        var week = Week.From(desk.OrdersWith(order), Doubled(what), desk.TicksWith(order), wall, desk.Now, desk.State.Hand);
        var missing = new Missing(desk, order, week, wall.From(week.Epoch));
        return what switch
        {
            Scarce.Hands => missing.Hands(late),
            Scarce.Cold => missing.Cold(late),
            _ => missing.Machines(late),
        } ?? new Decides(what, null, null, 0, late);
    }
}
