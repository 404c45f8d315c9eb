namespace Bakehouse.Domain.Tests.Cakes;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using CsCheck;

public sealed class PanTests
{
    /// <summary>Source of each: computed, π·D²/4·h with inches exact; cubic inches.</summary>
    [Theory]
    [InlineData(6, 2, 56.5487)]
    [InlineData(8, 2, 100.531)]
    [InlineData(9, 2, 127.2345)]
    [InlineData(10, 2, 157.0796)]
    [InlineData(12, 2, 226.1947)]
    [InlineData(16, 2, 402.1239)]
    [InlineData(8, 3, 150.7964)]
    [InlineData(10, 3, 235.6194)]
    public void A_round_pan_holds_its_cylinder(int across, int deep, double cubicInches) =>
        Assert.Equal(cubicInches, Round(across, deep).Brim.CubicInches, 0.0005);

    /// <summary>8 × 2 in: 1647.41 mL (1 in³ = 16.387064 mL exactly) and 6.9632 US cups of 236.5882365 mL; computed.</summary>
    [Fact]
    public void The_same_in_millilitres_and_cups()
    {
        Assert.Equal(1647.41, Round(8, 2).Brim.Millilitres, 0.01);
        Assert.Equal(6.9632, Round(8, 2).Brim / KitchenMeasures.UsCup, 0.0005);
    }

    /// <summary>Square 8 × 2 in 128 in³ (a·a·h); hexagon of 9 in across corners 52.611 in² (3√3/8·C²); computed.</summary>
    [Fact]
    public void Other_shapes_need_only_their_own_formulas()
    {
        Assert.Equal(128, new Pan(Slab.Square(In(8)), In(2)).Brim.CubicInches, 1e-9);
        Assert.Equal(52.611, new Hexagon(In(9)).Area.SquareInches, 0.0005);
    }

    /// <summary>Scale factors, computed: (D2/D1)²·h2/h1; round to square of the same size 4/π.</summary>
    [Fact]
    public void A_recipe_scales_by_the_volumes_of_the_pans()
    {
        Assert.Equal(1.5625, Round(8, 2).ScaleTo(Round(10, 2)), 1e-9);
        Assert.Equal(0.5625, Round(8, 2).ScaleTo(Round(6, 2)), 1e-9);
        Assert.Equal(1.27324, Round(8, 2).ScaleTo(new Pan(Slab.Square(In(8)), In(2))), 1e-6);
        var small = new Pan(new Round(Length.FromCentimetres(20)), Length.FromCentimetres(5));
        Assert.Equal(2.34375, small.ScaleTo(new Pan(new Round(Length.FromCentimetres(25)), Length.FromCentimetres(7.5m))), 1e-9);
    }

    /// <summary>
    /// A chart labelled "two thirds full" (common practice, no source): 3 US cups in 8 × 2 in is 0.4308 of the brim, 5.5 cups in
    /// 9 × 2 in 0.6241. The default fill lies between.
    /// </summary>
    [Fact]
    public void The_usual_fill_lies_within_a_printed_chart()
    {
        var least = KitchenMeasures.UsCup * 3 / Round(8, 2).Brim;
        var most = KitchenMeasures.UsCup * 5.5 / Round(9, 2).Brim;
        Assert.Equal(0.4308, least, 0.0005);
        Assert.Equal(0.6241, most, 0.0005);
        Assert.InRange(CakeFigures.Usual.Fill, least, most);
    }

    /// <summary>Half of a round 8 × 2 in: 823.7 mL; computed.</summary>
    [Fact]
    public void Half_full_is_half_the_brim() => Assert.Equal(823.7, Round(8, 2).Batter(0.5).Millilitres, 0.01);

    [Theory]
    [InlineData(0)]
    [InlineData(1.01)]
    [InlineData(double.NaN)]
    public void A_pan_is_not_filled_past_its_brim(double fill) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Round(8, 2).Batter(fill));

    [Fact]
    public void Thin_layers_are_split_from_thicker_cakes()
    {
        // 10 cm: four layers of 2.5 cm come from two cakes of 5 cm, three of 3.3 cm from three cakes.
        Assert.Equal((2, In(2)), Pans(4));
        Assert.Equal((3, In(2)), Pans(3));
        Assert.Equal((2, In(2)), Pans(2));
        Assert.Equal((1, In(3)), Pans(1));
    }

    [Fact]
    public void However_a_tier_is_cut_it_takes_the_same_batter() =>
        Gen.Select(Gen.Int[1, 8], Gen.Int[30, 250], Gen.Int[76, 457]).Sample((layers, high, across) =>
        {
            var shape = new Round(Length.FromMillimetres(across));
            var height = Length.FromMillimetres(high);
            var pans = TierPans.Of(shape, height, layers, CakeFigures.Usual);
            Assert.Equal((shape.Area * height * 0.5).Millilitres, pans.AllBatter.Millilitres, 6);
            Assert.InRange(pans.Count, (layers + 1) / 2, layers);
        });

    private static (int, Length) Pans(int layers)
    {
        var pans = TierPans.Of(new Round(In(8)), Length.FromCentimetres(10), layers, CakeFigures.Usual);
        return (pans.Count, pans.Depth);
    }

    private static Pan Round(int across, int deep) => new(new Round(In(across)), In(deep));

    private static Length In(decimal inches) => Length.FromInches(inches);
}
