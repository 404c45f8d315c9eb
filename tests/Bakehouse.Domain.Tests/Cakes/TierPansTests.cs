namespace Bakehouse.Domain.Tests.Cakes;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;
using CsCheck;
using static Bakehouse.Testing.Cakes;

/// <summary>Which pan bakes which layer, and tiers that no oven takes whole. Areas and volumes are worked by hand; an inch is 2.54 cm, a cubic inch 16.387064 mL.</summary>
public sealed class TierPansTests
{
    private static readonly CakeFigures Own = CakeFigures.Of(SampleBakery.Shop);

    [Theory]
    [InlineData(10, 3, "1|2|3", 0)]
    [InlineData(10, 4, "1+2|3+4", 2)]
    [InlineData(8, 3, "1+2|3", 1)]
    [InlineData(10, 5, "1+2|3+4|5", 2)]
    [InlineData(5, 2, "1+2", 1)]
    public void Thin_layers_are_split_two_from_one_cake(int high, int layers, string from, int split)
    {
        var pans = TierPans.Of(new Round(In(8)), Cm(high), layers, CakeFigures.Usual);
        Assert.Equal(from, string.Join('|', pans.Layers.Select(l => string.Join('+', l))));
        Assert.Equal((pans.Layers.Count, split), (pans.Count, pans.Split));
    }

    /// <summary>Three layers of 8 cm: two thirds of the height from the cake that is split, one from the other. Half of π·4²·8/2.54 in³ is 79.2 in³, 1297.2 mL.</summary>
    [Fact]
    public void A_cake_that_is_split_bakes_as_high_as_both_its_layers()
    {
        var pans = TierPans.Of(new Round(In(8)), Cm(8), 3, CakeFigures.Usual);
        Assert.Equal(1297.2, pans.AllBatter.Millilitres, 0.1);
        Assert.Equal([864.8, 432.4], pans.Own.Select(v => Math.Round(v.Millilitres, 1)));
        Assert.Equal(In(3), pans.Depth);
        var tier = Tier(1, 1, 8) with { Height = Cm(8), Layers = 3 };
        var plan = TierPlan.Of(BuildSheet.Of([tier], Finish.Smooth, Own).Tiers[0], SampleBakery.Shop);
        // 864.8 and 432.4 mL at 0.95 g/mL, up to whole fives.
        Assert.Equal((825 + 415, 825), (plan.LoadGrams(0), plan.BatterGrams));
    }

    /// <summary>An oven of 60 × 40 cm takes 14 in with its rim and the gaps. Half of π·8²·10/2.54 in³ over four half-rounds is 98.9 in³, 1621.5 mL, 1545 g each.</summary>
    [Fact]
    public void A_round_that_no_oven_takes_is_baked_in_two_halves()
    {
        Assert.Equal(In(14), Own.WidestPan);
        var order = Good(1, 16);
        var pans = BuildSheet.Of(order, Own).Tiers[0].Pans;
        Assert.Equal((true, 4, 2), (pans.Halved, pans.Count, pans.Layers.Count));
        Assert.Equal(1621.5, pans.Batter.Millilitres, 0.1);
        Assert.DoesNotContain(OrderChecks.OfTiers(order, SampleBakery.Shop), p => p.Sentence.StartsWith("No oven", StringComparison.Ordinal));
        var steps = CakeSteps.Of(order, SampleBakery.Shop).Steps;
        Assert.Equal(Enumerable.Repeat(16008, 4), steps.SelectMany(s => s.Bake?.Pans ?? []));
        Assert.Equal(4 * 1545, steps.Where(s => s.Name == "mix").Sum(s => s.Mix!.Size));
    }

    [Fact]
    public void A_round_that_some_oven_takes_stays_whole()
    {
        Assert.False(BuildSheet.Of(Good(1, 14), Own).Tiers[0].Pans.Halved);
        Assert.False(BuildSheet.Of(Good(1, 16)).Tiers[0].Pans.Halved);
        Assert.Null(DeckFit.Widest([]));
        Assert.Null(DeckFit.Widest([new Oven("deck", "Deck", OvenKind.Deck, 1, Cm(100), Cm(100))]));
    }

    /// <summary>Whatever the oven and however thin the layers: as much batter as a whole pan would take, and each layer comes out of one cake.</summary>
    [Fact]
    public void No_pan_changes_how_much_batter_there_is() =>
        Gen.Select(Gen.Int[6, 18], Gen.Int[4, 20], Gen.Int[1, 8], Gen.Int[5, 18]).Sample((inches, high, layers, widest) =>
        {
            var shape = new Round(In(inches));
            var pans = TierPans.Of(shape, Cm(high), layers, CakeFigures.Usual with { WidestPan = In(widest) });
            Assert.Equal((shape.Area * Cm(high) * CakeFigures.Usual.Fill).Millilitres, pans.AllBatter.Millilitres, 1e-6 * pans.AllBatter.Millilitres);
            Assert.Equal(Enumerable.Range(1, layers), pans.Layers.SelectMany(l => l));
            Assert.Equal(pans.Layers.Count * (inches > widest ? 2 : 1), pans.Count);
        });

    private static Length In(decimal inches) => Length.FromInches(inches);

    private static Length Cm(decimal cm) => Length.FromCentimetres(cm);
}
