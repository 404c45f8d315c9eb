namespace Bakehouse.Domain.FarDates;

using Bakehouse.Domain.Chores;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;

/// <summary>
/// Whether an order beyond the planned days fits: hours of hands, tiers in the cold overnight, the van. It is a budget; no plan to the minute
/// stands behind it. Its no is meant to be true: what it refuses no plan could make with the slack that the shop keeps.
/// </summary>
/// <param name="Hands">The stretch of days in which hands are scarcest.</param>
/// <param name="Nights">The two nights before the handover.</param>
/// <param name="Van">What else is on the road then; null for a cake that is fetched, or if nothing is.</param>
/// <param name="PlannedFrom">The day on which it gets its plan.</param>
public sealed record FarBudget(FarHands Hands, IReadOnlyList<FarNight> Nights, FarVan? Van, LocalDate PlannedFrom)
{
    /// <summary>True if nothing is short.</summary>
    public bool Fits => Hands.Left >= 0 && Nights.All(n => n.Over == 0) && Van is null;

    /// <summary>Counts an order among all others of the book. It must be right by its checks.</summary>
    /// <param name="orders">Newest versions; one with the same id is the former version and does not count.</param>
    public static FarBudget Of(Order order, IReadOnlyList<Order> orders, Shop shop, IReadOnlyList<Chore> chores, LocalDate today)
    {
        var others = orders.Where(o => o.Id != order.Id && Stages.IsPlanned(o.Stage) && o.Handover.At.Date >= today).ToList();
        return new FarBudget(
            FarHands.Of(order, others, shop, chores, today),
            FarNight.Before(order, others, shop),
            FarVan.Of(order, others),
            PlanReach.PlannedFrom(order, shop));
    }
}
