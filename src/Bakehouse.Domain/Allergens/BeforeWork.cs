namespace Bakehouse.Domain.Allergens;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Shops;

/// <summary>
/// What stops the next making step of an order. What is in the oven still comes out, and a cake still leaves the fridge: those are
/// no making.
/// </summary>
public static class BeforeWork
{
    private static readonly HashSet<string> Making = new(StringComparer.Ordinal) { "mix", "filling", "buttercream", "colour", "fill", "crumb", "coat", "cover", "drip", "stack", "decorate", "pipe", "box" };

    /// <summary>True for a step after which nothing is made any more: the cake is boxed, taken out or gone.</summary>
    public static bool Leaves(string operation) => operation is "box" or "leavefridge" or "handover" or "deliver";

    /// <summary>True for a step that waits until everything here is answered.</summary>
    public static bool IsMaking(string operation) => Making.Contains(operation);

    /// <summary>Every reason; empty if work may go on.</summary>
    /// <param name="own">The recipes that it is made from, its packs in use.</param>
    /// <param name="newest">The recipes as they stand.</param>
    public static IReadOnlyList<Problem> Stops(Order order, Cookbook own, Cookbook newest, Shop shop) =>
    [
        .. IsHit(order, own, newest, shop) ? [Changed(order)] : (Problem[])[],
        .. newest.Version > 0 ? Taken(order with { Stage = Stage.Booked }, own, shop) : [],
        .. MustBeReadBack(order) && order.Statement?.ReadBack is null ? [NotReadBack] : (Problem[])[],
    ];

    /// <summary>
    /// True if what it is made from has changed since somebody looked: its contents, its list of ingredients, its alcohol or raw egg differ. A changed name or
    /// keeping time of a recipe stops nobody.
    /// </summary>
    public static bool IsHit(Order order, Cookbook own, Cookbook newest, Shop shop)
    {
        var lookedAt = order.MadeFrom?.LookedAt ?? 0;
        var locked = order.MadeFrom?.Packs.Where(p => newest.Ingredient(p.Ingredient)?.Packs.Any(k => k.Lot == p.Lot) == true) ?? [];
        return newest.Version > lookedAt && Stages.IsPlanned(order.Stage) && !Same(Of(order, own, shop), Of(order, newest.Using(locked), shop));
    }

    /// <summary>True if a second person reads back what must be avoided before work begins.</summary>
    public static bool MustBeReadBack(Order order) => order.Allergies is { Kind: AllergyKind.Avoid, Told: not CustomersWord.Dislike };

    private static CakeContents? Of(Order order, Cookbook book, Shop shop) => CakeContents.Of(order, book, shop.Allergens, CakeFigures.Of(shop));

    private static bool Same(CakeContents? a, CakeContents? b) => (a is null) == (b is null) && (a is null || a.Tiers.Zip(b!.Tiers).All(t => Same(t.First, t.Second)));

    private static bool Same(TierContents a, TierContents b) =>
        a.Contents.Findings.ToHashSet().SetEquals(b.Contents.Findings) && a.Label.ListsTheSame(b.Label)
        && a.Alcohol.SequenceEqual(b.Alcohol, StringComparer.Ordinal) && a.RawEgg.SequenceEqual(b.RawEgg, StringComparer.Ordinal);

    /// <summary>Whoever makes a cake has taken it, even if its day is only kept.</summary>
    private static IEnumerable<Problem> Taken(Order order, Cookbook own, Shop shop) => AllergyChecks.NotKnown(order, own, shop).Concat(AllergyChecks.Problems(order, own, shop));

    private static Problem Changed(Order order) =>
        new("Recipes", $"order {order.Number}", "What it is made from has changed since it was taken.", "The owner looks at it under Contains on the cake's page: keep its recipes, or make it from the new ones.");

    private static Problem NotReadBack { get; } =
        new("Allergies", "", "What must be avoided has not been read back.", "Somebody else than who wrote it reads it back to the customer, under Contains on the cake's page.");
}
