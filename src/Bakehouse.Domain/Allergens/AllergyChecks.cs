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
    public static IEnumerable<Problem> Problems(Order order, Cookbook recipes, Shop shop) => Stages.IsTaken(order.Stage) ? ToDo(order, recipes, shop).Select(Of) : [];

    /// <summary>
    /// Why nobody may promise it, whatever was told: of something in it nobody knows what that contains. It may be kept, not taken.
    /// </summary>
    public static IEnumerable<Problem> NotKnown(Order order, Cookbook recipes, Shop shop)
    {
        if (Stages.IsTaken(order.Stage) && Contents(order, recipes, shop)?.NotKnown(shop.Allergens) is { Count: > 0 } unknown)
        {
            var where = string.Join(", ", unknown.SelectMany(u => u.In).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));
            yield return new Problem("Contains", Problem.Shown(where), "Nobody has said yet what that contains.", "Read the pack or write the recipe, under Recipes. Until then the day can be kept.");
        }
    }

    /// <summary>The customer's own words that nobody has judged, in a shop that keeps no recipes yet.</summary>
    public static IEnumerable<Problem> Words(Order order) => Stages.IsTaken(order.Stage) && order.Allergies.MustBeJudged ? [Of(Weighing.NotJudged(order.Allergies.Words.Trim()))] : [];

    /// <summary>What must be known or changed before it can be taken. That nothing was said at all, the order's own checks tell.</summary>
    public static IReadOnlyList<Weighed> ToDo(Order order, Cookbook recipes, Shop shop) => [.. Weighed(order, recipes, shop).Where(w => w.Verdict >= Verdict.NotKnown && w.Told.Length > 0)];

    private static Problem Of(Weighed weighed) => new("Allergies", weighed.Told, weighed.Reason, weighed.Try);

    private static IReadOnlyList<Weighed> Weighed(Order order, Cookbook recipes, Shop shop) =>
        Contents(order, recipes, shop) is { } cake ? Weighing.Of(order.Allergies, cake, shop.Allergens) : [];

    private static CakeContents? Contents(Order order, Cookbook recipes, Shop shop) => CakeContents.Of(order, recipes, shop.Allergens, CakeFigures.Of(shop));
}
