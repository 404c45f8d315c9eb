namespace Bakehouse.Domain.Tests.Cakes;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Structure;
using CsCheck;

public sealed class CoatTests
{
    private static readonly Length Quarter = Length.FromInches(0.25m);

    /// <summary>8 in wide, 4 in high, 1/4 in thick; computed: side π((R+t)²−R²)h, top π(R+t)²t, both ÷ 236.5882365 mL.</summary>
    [Fact]
    public void A_coat_is_an_exact_shell()
    {
        var coat = Coat.On(new Round(In(8)), In(4), Quarter);
        Assert.Equal(25.9181, coat.Side.CubicInches, 0.0005);
        Assert.Equal(14.1863, coat.Top.CubicInches, 0.0005);
        Assert.Equal(2.7778, coat.All / KitchenMeasures.UsCup, 0.0005);
    }

    /// <summary>The thin-shell shortcut gives 37.6991 in³ for the same coat ((π·D·h + π·D²/4)·t, computed): too little.</summary>
    [Fact]
    public void The_thin_shell_shortcut_would_be_short() =>
        Assert.True(Coat.On(new Round(In(8)), In(4), Quarter).All.CubicInches > 37.6991);

    /// <summary>Hexagon 9 in across corners, 4 in high, 1/4 in: 42.7604 in³ (A(t) = A + P·t + n·t²·tan(π/n), computed).</summary>
    [Fact]
    public void Corners_take_their_part() =>
        Assert.Equal(42.7604, Coat.On(new Hexagon(In(9)), In(4), Quarter).All.CubicInches, 0.0005);

    /// <summary>One filling of 1/4 in at 8 in: 205.93 mL; four layers have three fillings; computed.</summary>
    [Fact]
    public void There_is_one_filling_fewer_than_layers()
    {
        var sheet = BuildSheet.Of([Cake(8, 4)], Finish.Smooth, CakeFigures.Usual);
        Assert.Equal(3, sheet.Tiers[0].Fillings);
        Assert.Equal(3 * 205.93, sheet.Tiers[0].Filling.Millilitres, 0.03);
    }

    /// <summary>
    /// Two-layer charts, 4 in tall, turned back into thicknesses (common practice, no source): crumb 1.2 to 3, filling 6 to
    /// 10, final 3 to 6 mm.
    /// </summary>
    [Fact]
    public void The_usual_thicknesses_lie_in_the_charts_ranges()
    {
        Assert.InRange(CakeFigures.Usual.CrumbThickness.Millimetres, 1.2m, 3m);
        Assert.InRange(CakeFigures.Usual.FillingThickness.Millimetres, 6m, 10m);
        Assert.InRange(CakeFigures.Usual.CoatThickness.Millimetres, 3m, 6m);
    }

    /// <summary>2400 mL at 60/25/15 %, 8 % kept back and not under 60 mL each: 1555.2, 660, 420 mL (own rule, worked by hand).</summary>
    [Fact]
    public void Each_colour_keeps_back_its_share_or_the_least()
    {
        CoatColour[] colours = [new("White", "#FFFFFF", 0.60m), new("Sage", "#C7D5BD", 0.25m), new("Navy", "#2B3F63", 0.15m)];
        var batches = ColourBatch.Of(ColourBatch.Split(Volume.FromMillilitres(2400), colours), CakeFigures.Usual);
        Assert.Equal([1555.2, 660, 420], batches.Select(b => Math.Round(b.ToMix.Millilitres, 1)));
    }

    /// <summary>A bead of 6 mm around 6 in is π·152.4 · π·6²/4 mm³ = 13.5 mL; with 60 mL for repairs that is more than 8 % of 371.4 mL (worked by hand).</summary>
    [Fact]
    public void What_is_kept_back_of_a_colour_is_enough_for_its_seams_and_for_repairs()
    {
        var navy = Cake(6, 2) with { Colours = [new CoatColour("Navy", "#2B3F63", 1)] };
        var sheet = BuildSheet.Of([Cake(10, 2), navy], Finish.Smooth, CakeFigures.Usual);
        var (ivory, blue) = (sheet.Colours[0], sheet.Colours[1]);
        Assert.Equal((60.0, 73.5), (Math.Round(ivory.KeptBack.Millilitres, 1), Math.Round(blue.KeptBack.Millilitres, 1)));
        Assert.Equal(sheet.Tiers[1].Seam.Millilitres, blue.Seams.Millilitres, 6);
        Assert.Equal(13.5, blue.Seams.Millilitres, 0.1);
    }

    /// <summary>Under sugar paste no icing is seen, but the seams are: π·203.2 · π·6²/4 mm³ = 18.0 mL and 60 for repairs.</summary>
    [Fact]
    public void Seams_under_paste_are_made_too()
    {
        CakeTier Covered(int inches) => Cake(inches, 2) with { Special = new TierSpecial { Paste = PasteSheet.Usual }, Filling = "raspberry-jam" };
        var sheet = BuildSheet.Of([Covered(10), Covered(8)], Finish.Smooth, CakeFigures.Usual);
        var batch = Assert.Single(sheet.Colours);
        Assert.Equal((0.0, 78.0), (batch.Needed.Millilitres, Math.Round(batch.KeptBack.Millilitres, 1)));
        Assert.Equal(sheet.Tiers.Sum(t => t.Crumb.Millilitres) + batch.KeptBack.Millilitres, sheet.Icing.Millilitres, 6);
        Assert.Empty(BuildSheet.Of([Covered(10)], Finish.Smooth, CakeFigures.Usual).Colours);
    }

    [Fact]
    public void A_colour_has_a_bag_and_a_second_one_where_the_cake_is_put_together_elsewhere()
    {
        var sheet = BuildSheet.Of([Cake(10, 2), Cake(6, 2)], Finish.Smooth, CakeFigures.Usual);
        Assert.Equal((1, 2), (ColourBatch.Bags(Travelling.Of(sheet, 30)), ColourBatch.Bags(Travelling.Of(sheet, 120))));
    }

    [Fact]
    public void One_colour_on_two_tiers_is_one_batch()
    {
        var sheet = BuildSheet.Of([Cake(10, 4), Cake(6, 4)], Finish.Smooth, CakeFigures.Usual);
        var batch = Assert.Single(sheet.Colours);
        Assert.Equal(sheet.Tiers.Sum(t => t.Coat.Millilitres), batch.Needed.Millilitres, 6);
    }

    [Fact]
    public void Shares_that_are_no_whole_are_refused()
    {
        CoatColour[] colours = [new("White", "#FFFFFF", 0.6m)];
        Assert.Throws<ArgumentOutOfRangeException>(() => ColourBatch.Split(Volume.FromLitres(1), colours));
    }

    [Fact]
    public void Shared_colours_add_up_to_the_coat_and_nothing_kept_back_is_negative() =>
        Gen.Select(Gen.Int[1, 99].Array[1, 6], Gen.Double[0, 20_000]).Sample((weights, millilitres) =>
        {
            var batches = ColourBatch.Of(ColourBatch.Split(Volume.FromMillilitres(millilitres), Shares(weights)), CakeFigures.Usual);
            Assert.Equal(millilitres, batches.Sum(b => b.Needed.Millilitres), 6);
            Assert.All(batches, b => Assert.True(b.KeptBack >= CakeFigures.Usual.KeptBackLeast && b.ToMix >= b.Needed));
        });

    [Fact]
    public void Two_coats_are_as_much_as_one_of_both_thicknesses() =>
        Gen.Select(Gen.Int[76, 457], Gen.Int[30, 250], Gen.Int[1, 30], Gen.Int[0, 60]).Sample((across, high, first, second) =>
        {
            var shape = new Round(Length.FromMillimetres(across));
            var (height, a, b) = (Length.FromMillimetres(high), Length.FromMillimetres(first / 10m), Length.FromMillimetres(second / 10m));
            var apart = Coat.On(shape, height, a).All + Coat.Over(shape, height, a, b).All;
            Assert.Equal(Coat.On(shape, height, a + b).All.Millilitres, apart.Millilitres, 6);
        });

    // Whole per cent, the last one taking what is left.
    private static CoatColour[] Shares(int[] weights)
    {
        var total = weights.Sum();
        var shares = weights.Select(w => Math.Floor(100m * w / total) / 100).ToArray();
        shares[^1] += 1 - shares.Sum();
        return [.. shares.Select((s, i) => new CoatColour($"Colour {i}", $"#00000{i}", s))];
    }

    private static CakeTier Cake(int inches, int layers) =>
        new(new Guid(inches, 0, 0, new byte[8]), In(inches), In(4), layers, "vanilla", "buttercream", [new CoatColour("Ivory", "#F7F0E1", 1)]);

    private static Length In(decimal inches) => Length.FromInches(inches);
}
