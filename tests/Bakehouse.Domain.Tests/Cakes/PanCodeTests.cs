namespace Bakehouse.Domain.Tests.Cakes;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Cakes.Packing;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using Bakehouse.Testing;

/// <summary>Pans, boards and steps of tiers that are not round, by their real outline. Figures in the tests are worked by hand.</summary>
public sealed class PanCodeTests
{
    private static readonly Shop Shop = SampleBakery.Shop;

    /// <summary>9 in from corner to corner is 7.8 in from flat to flat; a 4 is 7 of 10 units wide.</summary>
    [Fact]
    public void A_pan_is_a_number_by_its_size_or_its_rectangle()
    {
        Assert.Equal(8, PanCode.Of(new Round(In(7.5m))));
        Assert.Equal(14010, PanCode.Of(new Slab(In(10), In(14))));
        Assert.Equal(9008, PanCode.Of(new Hexagon(In(9))));
        Assert.Equal(12012, PanCode.Of(new Petal(In(12))));
        Assert.Equal((12, 8), (PanCode.Of(new SignShape("0", In(12))) / 1000, PanCode.Of(new SignShape("0", In(12))) % 1000));
        Assert.True(PanCode.Covers(14010, 10) && PanCode.Covers(14010, 12009) && PanCode.Covers(18, 14010) && PanCode.Covers(10, 8));
        Assert.False(PanCode.Covers(14010, 11) || PanCode.Covers(17, 14010) || PanCode.Covers(14010, 12012));
        Assert.Equal((18, 8), (PanCode.Around(14010), PanCode.Around(8)));
    }

    /// <summary>
    /// 13 × 9 in with its rim is 338 × 237 mm. Oven 1 leaves 430 × 300 mm between its gaps: one. Oven 2 leaves 570 × 370: two, turned, with 2 cm
    /// between. A round of the same diagonal would fit neither.
    /// </summary>
    [Fact]
    public void A_slab_stands_in_an_oven_by_its_sides()
    {
        Assert.Equal([1, 2], Shop.Ovens.Select(o => DeckFit.Pans(o, 13009)));
        Assert.All(Shop.Ovens, o => Assert.Equal(0, DeckFit.Pans(o, PanCode.Around(13009))));
        Assert.Equal([2, 2], Shop.Ovens.Select(o => DeckFit.Pans(o, 8)).Select(n => Math.Min(n, 2)));
    }

    /// <summary>A slab of 13 × 9 in on its drum: 4 in more each way and 2 cm of gap. A heart of 8 in stands on a round board.</summary>
    [Fact]
    public void A_slab_stands_on_a_shelf_by_its_sides()
    {
        var drum = ShelfRoom.OnBoard(Tier(13, new(OutlineKind.Rectangle, In(13), In(9))), true);
        Assert.Equal((false, 451.8, 350.2), (drum.IsRound, Math.Round(drum.Wide, 6), Math.Round(drum.Deep, 6)));
        Assert.True(ShelfRoom.OnBoard(Tier(8, new(OutlineKind.Heart, In(8))), false).IsRound);
        Assert.Equal((17 * 25.4) + 40, ShelfRoom.Boxed(Tier(13, new(OutlineKind.Rectangle, In(13), In(9)))).Wide, 6);
        Assert.Equal((double)Piece.Round((10 * 25.4) + 25 + 20).Wide, ShelfRoom.OnBoard(Tier(10, null), false).Wide, 6);
    }

    /// <summary>A square of 8 in has 4/π times the top and 4/π times the side of a round of 8 in.</summary>
    [Fact]
    public void More_outside_takes_more_hands()
    {
        Assert.Equal(4 / Math.PI, Method.Outside(Tier(8, new(OutlineKind.Square, In(8)))) / Method.Outside(Tier(8, null)), 6);
        Assert.Equal(1, Method.Outside(Tier(8, null)), 6);
    }

    [Fact]
    public void What_no_oven_takes_is_named_by_its_rectangle()
    {
        var order = Cakes.Good() with { Tiers = [Tier(24, new(OutlineKind.Rectangle, In(24), In(18)))] };
        var told = OrderChecks.OfTiers(order, Shop);
        Assert.Contains(told, p => p.Value == "24 × 18 in" && p.Sentence == "No oven takes a pan of 24 × 18 in.");
        Assert.Contains(OrderChecks.OfTiers(order with { Tiers = [Tier(9, new(OutlineKind.Petal, In(9), Lobes: 7))] }, Shop), p => p.Sentence.Contains("even number", StringComparison.Ordinal));
        Assert.Empty(OrderChecks.OfTiers(order with { Tiers = [Tier(13, new(OutlineKind.Rectangle, In(13), In(9)))] }, Shop));
    }

    [Fact]
    public void A_wider_tier_above_is_seen_by_its_sides()
    {
        Assert.True(OrderChecks.IsWider(Tier(9, new(OutlineKind.Square, In(9))), Tier(13, new(OutlineKind.Rectangle, In(13), In(8)))));
        Assert.False(OrderChecks.IsWider(Tier(8, new(OutlineKind.Square, In(8))), Tier(13, new(OutlineKind.Rectangle, In(13), In(8)))));
        Assert.True(OrderChecks.IsWider(Tier(9, null), Tier(8, null)));
    }

    private static Length In(decimal inches) => Length.FromInches(inches);

    private static CakeTier Tier(int inches, Outline? outline) => Cakes.Tier(1, 1, inches) with { Special = outline is null ? null : new TierSpecial { Outline = outline } };
}
