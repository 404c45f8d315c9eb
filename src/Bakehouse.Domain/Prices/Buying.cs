namespace Bakehouse.Domain.Prices;

using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Recipes;

/// <summary>Whole packs for a need.</summary>
/// <param name="Over">What is left of the last one: to stock.</param>
public sealed record Bought(int Packs, Mass Over);

/// <summary>Whole eggs and boxes for a need.</summary>
/// <param name="Over">Eggs that are left.</param>
public sealed record BoughtEggs(int Eggs, int Boxes, int Over);

/// <summary>What is bought comes in packs.</summary>
public static class Buying
{
    /// <summary>Packs for a need, rounded up.</summary>
    /// <param name="pack">More than zero.</param>
    public static Bought Packs(Mass need, Mass pack)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(pack, default);
        var packs = (int)decimal.Ceiling(need.Grams / pack.Grams);
        return new Bought(packs, (pack * packs) - need);
    }

    /// <summary>Eggs of a size for so much whole egg, and the boxes that hold them.</summary>
    /// <param name="inBox">1 and up.</param>
    public static BoughtEggs Eggs(Mass edible, string size, int inBox)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(inBox, 1);
        var eggs = Recipes.Eggs.For(edible, size);
        var boxes = (eggs + inBox - 1) / inBox;
        return new BoughtEggs(eggs, boxes, (boxes * inBox) - eggs);
    }
}
