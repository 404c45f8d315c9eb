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
    private static readonly HashSet<string> Making = new(StringComparer.Ordinal) { "mix", "filling", "buttercream", "colour", "fill", "crumb", "coat", "stack", "decorate", "box" };

    /// <summary>True for a step that waits until everything here is answered.</summary>
    public static bool IsMaking(string operation) => Making.Contains(operation);

    /// <summary>Every reason; empty if work may go on.</summary>
    /// <param name="own">The recipes that it is made from, its packs in use.</param>
    /// <param name="newest">The recipes as they stand.</param>
    public static IReadOnlyList<Problem> Stops(Order order, Cookbook own, Cookbook newest, Shop shop) =>
    [
        .. IsHit(order, own, newest, shop) ? [Changed(order)] : (Problem[])[],
        .. newest.Version > 0 ? Unknown(order, own, shop) : [],
        .. newest.Version > 0 ? AllergyChecks.Problems(order, own, shop) : [],
        .. MustBeReadBack(order) && order.Statement?.ReadBack is null ? [NotReadBack] : (Problem[])[],
    ];

    /// <summary>
    /// True if what it is made from has changed since somebody looked: its contents or its list of ingredients differ. A changed name or
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

    private static bool Same(CakeContents? a, CakeContents? b) => (a is null) == (b is null) && (a is null || a.Tiers.Zip(b!.Tiers).All(t =>
        t.First.Contents.Findings.ToHashSet().SetEquals(t.Second.Contents.Findings) && t.First.Label.SequenceEqual(t.Second.Label)));

    private static IEnumerable<Problem> Unknown(Order order, Cookbook own, Shop shop)
    {
        if (Of(order, own, shop)?.NotKnown(shop.Allergens) is { Count: > 0 } unknown)
        {
            var where = string.Join(", ", unknown.SelectMany(u => u.In).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));
            yield return new Problem("Contains", Said.Short(where), "Nobody has said yet what that contains.", "Read the pack or write the recipe, under Recipes.");
        }
    }

    private static Problem Changed(Order order) =>
        new("Recipes", $"order {order.Number}", "What it is made from has changed since it was taken.", "The owner looks at it on the cake's page: keep the old recipes, or take the new ones.");

    private static Problem NotReadBack { get; } =
        new("Allergies", "", "What must be avoided has not been read back.", "Somebody else than who wrote it reads it back to the customer, on the cake's page.");
}
