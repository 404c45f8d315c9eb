namespace Bakehouse.Domain.Tests.Cakes;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using CsCheck;

/// <summary>Laws of a whole sheet: nothing is lost or made by scaling, splitting or putting together.</summary>
public sealed class BuildLawTests
{
    private static readonly CakeFigures Usual = CakeFigures.Usual;

    private static readonly Gen<Outline> Outlines = Gen.Select(
        Gen.Enum<OutlineKind>(), Gen.Int[160, 300], Gen.Int[160, 300], (kind, wide, deep) => new Outline(kind, Mm(wide), Mm(deep), 8, "4"));

    [Fact]
    public void Twice_as_wide_takes_four_times_the_cake_and_batter() => Gen.Select(Outlines, Gen.Int[40, 200], Gen.Int[1, 4]).Sample((outline, high, layers) =>
    {
        var (one, two) = (Build(outline, high, layers), Build(outline with { Wide = outline.Wide * 2, Deep = outline.Deep * 2 }, high, layers));
        Near(4 * (one.Sponge + one.Filling).Millilitres, (two.Sponge + two.Filling).Millilitres);
        Near(4 * one.Pans.AllBatter.Millilitres, two.Pans.AllBatter.Millilitres);
    });

    [Fact]
    public void Two_low_tiers_hold_as_much_cake_as_a_high_one() => Gen.Select(Outlines, Gen.Int[30, 120], Gen.Int[30, 120]).Sample((outline, a, b) =>
        Near(Build(outline, a + b, 1).Sponge.Millilitres, Build(outline, a, 1).Sponge.Millilitres + Build(outline, b, 1).Sponge.Millilitres));

    [Fact]
    public void A_sheet_weighs_what_its_parts_weigh() => Gen.Select(Outlines.Array[1, 5], Gen.Int[40, 150], Gen.Enum<Finish>()).Sample((outlines, high, finish) =>
    {
        var sheet = BuildSheet.Of([.. outlines.Select(o => Tier(o, high, 2))], finish, Usual);
        var parts = sheet.Tiers.Sum(t => (0.40 * t.Sponge.Millilitres) + t.Filling.Millilitres + t.Crumb.Millilitres + t.Coat.Millilitres);
        Assert.Equal(parts, (double)sheet.Cake.Grams, 0.01);
        var boards = sheet.Tiers.Skip(1).Select(t => t.Board).Append(sheet.Drum!).Sum(b => 0.75 * b.Volume.Millilitres);
        Assert.Equal(boards, (double)sheet.BoardsAndDrum.Grams, 0.01);
        Near(sheet.Icing.Millilitres, sheet.Tiers.Sum(t => t.Icing.Millilitres) + sheet.Colours.Sum(c => c.KeptBack.Millilitres));
    });

    /// <summary>Colours of two cakes mixed together need what they need apart; what is kept back together is never more.</summary>
    [Fact]
    public void Batches_put_together_need_the_sum_and_keep_back_no_more() => Gen.Select(Gen.Double[0, 5000], Gen.Double[0, 5000]).Sample((one, other) =>
    {
        ColourVolume Need(double ml) => new("Sage", "#C7D5BD", Volume.FromMillilitres(ml));
        var together = Assert.Single(ColourBatch.Of([Need(one), Need(other)], Usual));
        var (a, b) = (ColourBatch.For(Need(one), Usual), ColourBatch.For(Need(other), Usual));
        Near(a.Needed.Millilitres + b.Needed.Millilitres, together.Needed.Millilitres);
        Assert.True(together.KeptBack.Millilitres <= a.KeptBack.Millilitres + b.KeptBack.Millilitres + 1e-9);
    });

    [Fact]
    public void A_larger_tier_of_the_same_outline_never_gives_fewer_portions() => Gen.Select(Outlines, Gen.Int[0, 60], Gen.Enum<Cut>()).Sample((outline, more, cut) =>
    {
        var larger = outline with { Wide = outline.Wide + Mm(more), Deep = outline.Deep + Mm(more) };
        Assert.True(TierPortions.Count(outline.ToShape(), Mm(100), cut, Usual) <= TierPortions.Count(larger.ToShape(), Mm(100), cut, Usual));
    });

    [Fact]
    public void A_drum_is_wider_than_what_stands_on_it_and_the_box_than_the_drum() => Gen.Select(Outlines, Outlines).Sample((bottom, top) =>
    {
        var sheet = BuildSheet.Of([Tier(bottom, 100, 2), Tier(top, 100, 2)], Finish.Smooth, Usual);
        Assert.True(sheet.Drum!.Shape.Wide >= sheet.Tiers[0].Shape.Wide + Usual.DrumMargin);
        Assert.True(sheet.Box!.Width >= sheet.Drum!.Shape.Wide && sheet.Box!.Width >= sheet.Drum!.Shape.Deep && sheet.Box!.Height >= sheet.Height + Usual.BoxClearance);
        Assert.All(Footprint.Of(sheet), f => Assert.True(f.Height > sheet.Tiers[0].Tier.Height));
        Assert.Equal(4, Footprint.Of(sheet).Count);
    });

    /// <summary>Boards are sold in even inches from 4 to 20 (common practice, no source): a 7 in one is cut from 8, a petal by its pan.</summary>
    [Fact]
    public void Boards_are_bought_in_even_inches_and_trimmed()
    {
        var (seven, eight, petal) = (Board.Under(new Round(In(7)), Usual), Board.Under(new Round(In(8)), Usual), Board.Under(new Petal(In(8)), Usual));
        Assert.Equal((In(8), true), (seven.BoughtAs, seven.IsTrimmed));
        Assert.Equal((In(8), false), (eight.BoughtAs, eight.IsTrimmed));
        Assert.True(petal.IsTrimmed);
        Assert.Null(Board.Under(new Round(In(21)), Usual).BoughtAs);
    }

    /// <summary>On its drum 10 in of three tiers takes 37.6 cm, an 8 in tier on its working board 24.8 cm; boxed the drum and 4 cm (common practice, no source).</summary>
    [Fact]
    public void Each_state_takes_its_room()
    {
        var rooms = Footprint.Of(Checks.Golden.Sheet);
        Assert.Equal(37.56m, rooms.Single(f => f.As == StandsAs.OnDrum).Wide.Centimetres);
        Assert.Equal(24.82m, rooms.Single(f => f.As == StandsAs.InWork && f.Tier == 1).Wide.Centimetres);
        Assert.Equal(39.56m, rooms.Single(f => f.As == StandsAs.Boxed).Deep.Centimetres);
    }

    private static TierBuild Build(Outline outline, int high, int layers) => BuildSheet.Of([Tier(outline, high, layers)], Finish.Smooth, Usual).Tiers[0];

    private static CakeTier Tier(Outline outline, int high, int layers) =>
        new(Guid.Empty, outline.Wide, Mm(high), layers, "vanilla", "buttercream", [new CoatColour("Ivory", "#F7F0E1", 1)]) { Special = new TierSpecial { Outline = outline } };

    private static void Near(double expected, double actual) => Assert.Equal(expected, actual, Math.Max(1e-6, 1e-9 * expected));

    private static Length Mm(int mm) => Length.FromMillimetres(mm);

    private static Length In(int inches) => Length.FromInches(inches);
}
