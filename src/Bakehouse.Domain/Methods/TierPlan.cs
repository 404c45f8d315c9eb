namespace Bakehouse.Domain.Methods;

using System.Collections.Concurrent;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Cakes.Packing;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;

/// <summary>How one tier is baked: its pans, shared out over bowls and oven loads.</summary>
/// <param name="Build">Its row of the build sheet.</param>
/// <param name="Loads">Pans of each mix and bake, in order: as few loads as bowl and oven allow.</param>
/// <param name="BatterGrams">Grams of batter for one pan, whole fives.</param>
public sealed record TierPlan(TierBuild Build, Sponge Sponge, Filling Filling, IReadOnlyList<int> Loads, int BatterGrams)
{
    /// <summary>The tier as ordered.</summary>
    public CakeTier Tier => Build.Tier;

    /// <summary>Pans in all; layers thinner than 3 cm are split from thicker ones.</summary>
    public int Pans => Build.Pans.Count;

    /// <summary>Whole inches of the pan, up.</summary>
    public int Inches => (int)Math.Ceiling(Tier.Diameter.Inches);

    /// <summary>Minutes in the oven.</summary>
    public int BakeMinutes => Sponge.BakeMinutes(Inches, Build.Pans.BakedHeight);

    /// <summary>Shares the pans out for this shop. The ids must be known.</summary>
    public static TierPlan Of(TierBuild build, Shop shop)
    {
        var tier = build.Tier;
        var sponge = Sponge.Of(tier.Sponge) ?? throw new ArgumentOutOfRangeException(nameof(build), tier.Sponge, "Unknown sponge.");
        var filling = Filling.Of(tier.Filling) ?? throw new ArgumentOutOfRangeException(nameof(build), tier.Filling, "Unknown filling.");
        var pans = build.Pans.Count;
        var grams = (int)Math.Ceiling(build.Pans.Batter.Millilitres * (double)sponge.BatterDensity / 5) * 5;
        var byBowl = shop.Bowls.Count == 0 ? pans : (int)(shop.Bowls.Max(b => b.Batter.Grams) / grams);
        var byOven = shop.Ovens.Count == 0 ? pans : shop.Ovens.Max(o => o.Levels * DeckFit.Pans(o, (int)Math.Ceiling(tier.Diameter.Inches)));
        return new TierPlan(build, sponge, filling, Split(pans, Math.Max(1, Math.Min(byBowl, byOven))), grams);
    }

    private static List<int> Split(int pans, int most)
    {
        var loads = (pans + most - 1) / most;
        return [.. Enumerable.Range(0, loads).Select(i => (pans / loads) + (i < pans % loads ? 1 : 0))];
    }
}

/// <summary>How many round pans stand on one level of an oven. Packed once for each oven and size, since every plan asks.</summary>
public static class DeckFit
{
    private static readonly ConcurrentDictionary<(Length Width, Length Depth, int Inches), int> Packed = new();

    /// <summary>Pans of that diameter on one level, 0 if none fits; gaps and rim as <see cref="Room"/> says.</summary>
    public static int Pans(Oven oven, int inches) =>
        Packed.GetOrAdd((oven.Width, oven.Depth, inches), _ => Room.Pans(oven, Length.FromInches(inches)).Count);
}

/// <summary>
/// Room on shelves. One place is 5 cm of a run that is 30 cm deep: shelves of 60 cm and deeper have two runs, others one. What is
/// deeper than a run takes both. A count is a first cut; it may say no where a clever hand still finds room.
/// </summary>
public static class ShelfRoom
{
    private const decimal Run = 30, Place = 5;

    /// <summary>Metres of shelf that so many places are.</summary>
    public static decimal Metres(int places) => places * Place / 100;

    /// <summary>Places of a shelf.</summary>
    public static int Places(Shelf shelf) => (int)(shelf.Width.Centimetres / Place) * Rows(shelf);

    /// <summary>Runs behind each other on a shelf: in pairs, since what is deeper than one takes two; a shallow shelf has one.</summary>
    public static int Rows(Shelf shelf) => Math.Max(1, (int)(shelf.Depth.Centimetres / (2 * Run)) * 2);

    /// <summary>Places of one work bench of 60 cm.</summary>
    public static int BenchPlaces => 12 * 2;

    /// <summary>Places that a square footprint of that side takes.</summary>
    public static int Needed(Length footprint) =>
        (int)Math.Ceiling(footprint.Centimetres / Place) * (footprint.Centimetres > Run ? 2 : 1);

    /// <summary>True if it can stand there at all.</summary>
    public static bool Holds(Shelf shelf, Length footprint, int heightCm) =>
        footprint <= shelf.Width && footprint <= shelf.Depth && heightCm <= shelf.Clear.Centimetres && Needed(footprint) <= Places(shelf);

    /// <summary>A tier on its working board (tier + 2.5 cm) or, built on it, on its drum (tier + 4 in), with 2 cm of gap.</summary>
    public static Length Footprint(CakeTier tier, bool onDrum) =>
        tier.Diameter + (onDrum ? Length.FromInches(4) : Length.FromCentimetres(2.5m)) + Length.FromCentimetres(2);

    /// <summary>A boxed cake: its drum and 4 cm of box.</summary>
    public static Length Boxed(CakeTier bottom) => bottom.Diameter + Length.FromInches(4) + Length.FromCentimetres(4);

    /// <summary>Height of a tier on its board with 3 cm to lift it, whole cm.</summary>
    public static int HeightCm(IEnumerable<CakeTier> tiers) => (int)Math.Ceiling(tiers.Sum(t => t.Height.Centimetres + 1) + 3);
}
