namespace Bakehouse.Domain.Slips;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Freezer;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;

/// <summary>What spare sponges would take the place of what was lost.</summary>
/// <param name="Needed">Sponges that were lost, each as it came from its pan.</param>
/// <param name="Taken">Those counted in the freezer that are taken, oldest first; fewer than needed where fewer are counted.</param>
public sealed record FromFreezer(int Needed, IReadOnlyList<SpareSponges> Taken)
{
    /// <summary>How many of those that are taken are counted.</summary>
    public int Counted => Taken.Sum(t => t.Count);

    /// <summary>Of the same sponge and pan, for every load that the slip names.</summary>
    /// <param name="stock">What is left in the freezer.</param>
    public static FromFreezer For(Slip slip, IReadOnlyList<Order> orders, Shop shop, IReadOnlyList<SpareSponges> stock)
    {
        var (needed, taken) = (0, new List<SpareSponges>());
        foreach (var (tier, lost) in slip.About.Select(bake => Load(bake, orders, shop)).OfType<(TierPlan, int)>())
        {
            var left = stock.Select(s => s with { Count = s.Count - taken.Where(s.IsSameAs).Sum(t => t.Count) }).ToList();
            taken.AddRange(FreezerStock.Take(left, tier.Sponge.Id, tier.Pan, lost));
            needed += lost;
        }

        return new FromFreezer(needed, taken);
    }

    /// <summary>A cake of that slip that must avoid something: it gets none, since the book does not know what spare sponges contain. Null if there is none.</summary>
    public static Order? Avoiding(Slip slip, IReadOnlyList<Order> orders) =>
        slip.About.Select(bake => StepKey.Parse(bake) is { } key ? orders.FirstOrDefault(o => o.Id == key.Order) : null).OfType<Order>().FirstOrDefault(o => o.Allergies.Kind == AllergyKind.Avoid);

    /// <summary>The tier of a load and the pans in it; null if its order or tier is gone, and for cupcakes, of which no spares are kept.</summary>
    private static (TierPlan Tier, int Pans)? Load(string bake, IReadOnlyList<Order> orders, Shop shop)
    {
        if (StepKey.Parse(bake) is not { } key || orders.FirstOrDefault(o => o.Id == key.Order) is not { } order
            || BuildSheet.Of(order, CakeFigures.Of(shop)).Tiers.FirstOrDefault(t => t.Tier.Id == key.Tier) is not { StandsBeside: false } build)
        {
            return null;
        }

        var tier = TierPlan.Of(build, shop);
        var load = Slip.LoadOf(key);
        return load < tier.Loads.Count ? (tier, tier.Loads[load]) : null;
    }
}
