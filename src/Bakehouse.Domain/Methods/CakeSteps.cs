namespace Bakehouse.Domain.Methods;

using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;

/// <summary>The steps, waits, clocks and ages of one order: the method applied to its tiers.</summary>
/// <param name="Out">The step that hands the cake over.</param>
/// <param name="Ready">The step after which it is boxed.</param>
public sealed record CakeSteps(
    IReadOnlyList<Step> Steps,
    IReadOnlyList<Hold> Holds,
    IReadOnlyList<FoodClock> Clocks,
    IReadOnlyList<Age> Ages,
    IReadOnlyList<Fresh> Fresh,
    string Ready,
    string Out)
{
    /// <summary>All that must be done for an order in this shop. The order must be right by its checks; else throws.</summary>
    public static CakeSteps Of(Order order, Shop shop) => new CakeStepsMaker(order, shop).Make();
}
