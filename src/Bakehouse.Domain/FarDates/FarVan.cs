namespace Bakehouse.Domain.FarDates;

using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;

/// <summary>Deliveries that need the shop's van at the same time as another.</summary>
/// <param name="Numbers">Numbers of the orders that it is out with.</param>
/// <param name="Leaves">When it would have to leave with this one.</param>
/// <param name="Back">When it would be back.</param>
public sealed record FarVan(IReadOnlyList<int> Numbers, LocalDateTime Leaves, LocalDateTime Back)
{
    /// <summary>Null for a cake that is fetched, and if the van is free.</summary>
    internal static FarVan? Of(Order order, IReadOnlyList<Order> others)
    {
        if (order.Handover.Way != Way.Deliver)
        {
            return null;
        }

        var (leaves, back) = Out(order);
        var meets = others.Where(o => o.Handover.Way == Way.Deliver && Out(o) is var (from, to) && from < back && leaves < to).Select(o => o.Number).Order().ToList();
        return meets.Count == 0 ? null : new FarVan(meets, leaves, back);
    }

    private static (LocalDateTime Leaves, LocalDateTime Back) Out(Order order)
    {
        var at = order.Handover.At;
        return (at.PlusMinutes(-Method.Sitting(Method.DeliverMinutes(order))), at.PlusMinutes(Method.Sitting(Method.RoadMinutes(order))));
    }
}
