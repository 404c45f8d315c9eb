namespace Bakehouse.Domain.Methods;

using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;

/// <summary>How one tier is baked and where it stands: pans, bowl and oven loads, room on a shelf.</summary>
/// <param name="Pans">Pans in all; layers thinner than 3 cm are split from thicker ones.</param>
/// <param name="Loads">Pans of each mix and bake, in order: as few loads as bowl and oven allow.</param>
/// <param name="BatterGrams">Grams of batter for one pan.</param>
public sealed record TierPlan(CakeTier Tier, Sponge Sponge, Filling Filling, int Pans, IReadOnlyList<int> Loads, int BatterGrams)
{
    /// <summary>Whole inches of the pan, up.</summary>
    public int Inches => (int)Math.Ceiling(Tier.Diameter.Inches);

    /// <summary>Works out pans and loads for this shop. The ids must be known.</summary>
    public static TierPlan Of(CakeTier tier, Shop shop)
    {
        var sponge = Sponge.Of(tier.Sponge) ?? throw new ArgumentOutOfRangeException(nameof(tier), tier.Sponge, "Unknown sponge.");
        var filling = Filling.Of(tier.Filling) ?? throw new ArgumentOutOfRangeException(nameof(tier), tier.Filling, "Unknown filling.");
        var layer = (double)tier.Height.Centimetres / tier.Layers;
        var pans = layer < 3 ? (tier.Layers + 1) / 2 : tier.Layers;
        var radius = (double)tier.Diameter.Centimetres / 2;
        // Half a pan of batter rises to a full one: the volume of the baked pan, filled by half, at the batter's density.
        var deep = (double)tier.Height.Centimetres / pans;
        var grams = (int)Math.Ceiling(Math.PI * radius * radius * deep * 0.5 * (double)sponge.BatterDensity / 5) * 5;
        var inches = (int)Math.Ceiling(tier.Diameter.Inches);
        var byBowl = shop.Bowls.Count == 0 ? pans : (int)(shop.Bowls.Max(b => b.Batter.Grams) / grams);
        var byOven = shop.Ovens.Count == 0 ? pans : shop.Ovens.Max(o => o.Decks * DeckFit.Pans(o, inches));
        var most = Math.Max(1, Math.Min(byBowl, byOven));
        return new TierPlan(tier, sponge, filling, pans, Split(pans, most), grams);
    }

    private static List<int> Split(int pans, int most)
    {
        var loads = (pans + most - 1) / most;
        return [.. Enumerable.Range(0, loads).Select(i => (pans / loads) + (i < pans % loads ? 1 : 0))];
    }
}

/// <summary>How many round pans stand on one level of an oven: a first cut by rows; real packing comes later.</summary>
public static class DeckFit
{
    private const decimal BetweenPans = 20, ToWall = 15, Rims = 16;

    /// <summary>
    /// Pans of that diameter on one level: 2 cm between pans, 1.5 cm to the wall, a rim of 8 mm (common practice, no
    /// source). Rows and columns, and two on the diagonal where they fit.
    /// </summary>
    public static int Pans(Oven oven, int inches)
    {
        var (width, depth) = (oven.Width.Millimetres - (2 * ToWall), oven.Depth.Millimetres - (2 * ToWall));
        var pan = Length.FromInches(inches).Millimetres + Rims;
        if (width < pan || depth < pan)
        {
            return 0;
        }

        var rows = (int)((width + BetweenPans) / (pan + BetweenPans)) * (int)((depth + BetweenPans) / (pan + BetweenPans));
        var (dx, dy) = ((double)(width - pan), (double)(depth - pan));
        var diagonal = Math.Sqrt((dx * dx) + (dy * dy)) >= (double)(pan + BetweenPans) ? 2 : 1;
        return Math.Max(rows, diagonal);
    }
}

/// <summary>
/// Room on shelves. One place is 5 cm of a run that is 30 cm deep: shelves of 60 cm and deeper have two runs, others one. What is
/// deeper than a run takes both. A count is a first cut; it may say no where a clever hand still finds room.
/// </summary>
public static class ShelfRoom
{
    private const decimal Run = 30, Place = 5;

    /// <summary>Places of a shelf.</summary>
    public static int Places(Shelf shelf) => (int)(shelf.Width.Centimetres / Place) * Math.Max(1, (int)(shelf.Depth.Centimetres / (2 * Run)) * 2);

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
