namespace Bakehouse.Domain.Allergens;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Shops;

/// <summary>What stops an order because of what must be avoided.</summary>
public static class AllergyChecks
{
    /// <summary>
    /// Why it can't be taken: what must be avoided is in it, the owner refuses it, or nobody knows. While it is an enquiry, quoted or
    /// only kept nothing stops it: what is to do stands in <see cref="ToDo"/>.
    /// </summary>
    public static IEnumerable<Problem> Problems(Order order, Cookbook recipes, Shop shop) => order.Stage is Stage.Booked or Stage.InWork or Stage.Ready
        ? Weighed(order, recipes, shop).Where(w => w.Verdict >= Verdict.NotKnown).Select(w => new Problem("Allergies", w.Told, w.Reason, w.Try))
        : [];

    /// <summary>What must be known or changed before it can be taken.</summary>
    public static IReadOnlyList<Weighed> ToDo(Order order, Cookbook recipes, Shop shop) => [.. Weighed(order, recipes, shop).Where(w => w.Verdict >= Verdict.NotKnown)];

    private static IReadOnlyList<Weighed> Weighed(Order order, Cookbook recipes, Shop shop) =>
        CakeContents.Of(order, recipes, shop.Allergens, CakeFigures.Of(shop)) is { } cake ? Weighing.Of(order.Allergies, cake, shop.Allergens) : [];
}
