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
/// <param name="BatterGrams">Grams of batter for one pan, whole fives; of unequal ones for the fullest.</param>
public sealed record TierPlan(TierBuild Build, Sponge Sponge, Filling Filling, IReadOnlyList<int> Loads, int BatterGrams)
{
    /// <summary>The tier as ordered.</summary>
    public CakeTier Tier => Build.Tier;

    /// <summary>Set if it is no tier but cupcakes; then its pans are tins, and <see cref="BatterGrams"/> is what a full tin takes.</summary>
    public Cupcakes? Cupcakes => Tier.Special?.Cupcakes;

    /// <summary>Pans in all; layers thinner than 3 cm are split from thicker ones.</summary>
    public int Pans => Build.Pans.Count;

    /// <summary>Its pan as a deck takes it.</summary>
    public int Pan => PanCode.Of(Build.Pan);

    /// <summary>Whole cakes that are baked, two half-rounds counted as one.</summary>
    public int Cakes => Build.Pans.Halved ? Pans / 2 : Pans;

    /// <summary>Grams of batter of a load: of each of its pans what that one takes, whole fives.</summary>
    /// <param name="load">Counted from 0.</param>
    public int LoadGrams(int load) => Build.Pans.Own.Count == 0 ? BatterGrams * Loads[load]
        : Build.Pans.Own.Skip(Loads.Take(load).Sum()).Take(Loads[load]).Sum(own => Grams(own, Sponge));

    /// <summary>Batter of that volume in whole fives of grams, up.</summary>
    private static int Grams(Volume batter, Sponge sponge) => (int)Math.Ceiling(batter.Millilitres * (double)sponge.BatterDensity / 5) * 5;

    /// <summary>Minutes in the oven: the heat reaches the middle by the narrower way.</summary>
    public int BakeMinutes => Cupcakes is not null ? Method.CupcakeBakeMinutes : Sponge.BakeMinutes((int)Math.Ceiling(Math.Min(Build.Pan.Wide.Inches, Build.Pan.Deep.Inches)), Build.Pans.BakedHeight);

    /// <summary>Shares the pans out for this shop. The ids must be known.</summary>
    public static TierPlan Of(TierBuild build, Shop shop)
    {
        var tier = build.Tier;
        var sponge = Sponge.Of(tier.Sponge) ?? throw new ArgumentOutOfRangeException(nameof(build), tier.Sponge, "Unknown sponge.");
        var filling = Filling.Of(tier.Filling) ?? throw new ArgumentOutOfRangeException(nameof(build), tier.Filling, "Unknown filling.");
        var pans = build.Pans.Count;
        if (pans == 0)
        {
            return new TierPlan(build, sponge, filling, [], 0);
        }

        var grams = Grams(build.Pans.Batter, sponge);
        var byBowl = shop.Bowls.Count == 0 ? pans : (int)(shop.Bowls.Max(b => b.Batter.Grams) / grams);
        var byOven = shop.Ovens.Count == 0 ? pans : shop.Ovens.Max(o => o.Levels * DeckFit.Pans(o, PanCode.Of(build.Pan)));
        return new TierPlan(build, sponge, filling, Split(pans, Math.Max(1, Math.Min(byBowl, byOven))), grams);
    }

    private static List<int> Split(int pans, int most)
    {
        var loads = (pans + most - 1) / most;
        return [.. Enumerable.Range(0, loads).Select(i => (pans / loads) + (i < pans % loads ? 1 : 0))];
    }
}

/// <summary>How many pans of a kind stand on one level of an oven. Packed once for each oven and size, since every plan asks.</summary>
public static class DeckFit
{
    private static readonly ConcurrentDictionary<(Length Width, Length Depth, int Pan), int> Packed = new();

    /// <summary>Pans of that code (<see cref="PanCode"/>) on one level, 0 if none fits; gaps and rim as <see cref="Room"/> says.</summary>
    public static int Pans(Oven oven, int pan) =>
        Packed.GetOrAdd((oven.Width, oven.Depth, pan), _ => PanCode.Bare(pan).IsRound ? Room.Pans(oven, Length.FromInches(pan)).Count : Straight(oven, pan));

    /// <summary>The widest round pan, in whole inches up to 18, that one of the ovens takes; null where each fits, and where there are none.</summary>
    public static Length? Widest(IReadOnlyList<Oven> ovens)
    {
        const int Least = 3, Most = 18;
        var widest = Enumerable.Range(Least, Most - Least + 1).LastOrDefault(inches => ovens.Any(o => Pans(o, inches) > 0));
        return ovens.Count == 0 || widest == Most ? null : Length.FromInches(widest);
    }

    private static int Straight(Oven oven, int pan)
    {
        var count = 0;
        while (Layouts.Fit(Room.Of(oven), [.. Enumerable.Repeat(Room.Pan(pan), count + 1)]))
        {
            count++;
        }

        return count;
    }
}
