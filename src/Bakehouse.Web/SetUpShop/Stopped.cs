namespace Bakehouse.Web.SetUpShop;

using Bakehouse.Book.Reading;
using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;

/// <summary>Planned cakes that a changed shop would stop: other allergens must be known, or are refused.</summary>
internal static class Stopped
{
    /// <summary>"404 Okafor stops at the next step: …", for each that nothing stops as the shop is.</summary>
    public static IEnumerable<string> By(Shop changed, BookState state) =>
        from order in state.Orders
        where Stages.IsPlanned(order.Stage) && state.StopsOf(order).Count == 0
        let stops = BeforeWork.Stops(order, state.CookbookOf(order), state.Cookbook, changed)
        where stops.Count > 0
        select $"{order.Number} {order.Customer.Name} stops at its next step. {stops[0].Sentence} {stops[0].Try}";
}
