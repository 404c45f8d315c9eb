namespace Bakehouse.Domain.Tests.Cakes;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using CsCheck;

public sealed class PortionTests
{
    private static readonly Slice Coffee = Slice.Of(Cut.Coffee);

    /// <summary>1 × 2 in by area; computed: floor(π·D²/4/2).</summary>
    [Theory]
    [InlineData(8, 25)]
    [InlineData(12, 56)]
    [InlineData(14, 76)]
    [InlineData(16, 100)]
    public void By_area(int inches, int slices) => Assert.Equal(slices, Coffee.ByArea(new Round(In(inches))));

    /// <summary>2 in rings cut at 1 in of mean arc; computed: Σ floor(π(D−2)) while D &gt; 4, then floor(π·D²/8).</summary>
    [Theory]
    [InlineData(4, 6)]
    [InlineData(6, 13)]
    [InlineData(8, 24)]
    [InlineData(9, 30)]
    [InlineData(12, 55)]
    [InlineData(14, 75)]
    [InlineData(16, 98)]
    public void By_rings(int inches, int slices) => Assert.Equal(slices, Coffee.ByRings(In(inches)));

    /// <summary>Whole cells with every corner within D/2, best of four centred grids; computed.</summary>
    [Theory]
    [InlineData(4, 1, 2, 3)]
    [InlineData(6, 1, 2, 8)]
    [InlineData(8, 1, 2, 17)]
    [InlineData(9, 1, 2, 24)]
    [InlineData(10, 1, 2, 28)]
    [InlineData(12, 1, 2, 42)]
    [InlineData(16, 1, 2, 78)]
    [InlineData(8, 1, 1, 37)]
    [InlineData(10, 1, 1, 61)]
    [InlineData(12, 1, 1, 89)]
    [InlineData(8, 1.5, 2, 11)]
    [InlineData(10, 1.5, 2, 20)]
    [InlineData(12, 1.5, 2, 26)]
    [InlineData(8, 2, 2, 6)]
    [InlineData(12, 2, 2, 21)]
    public void By_whole_cells(int inches, double width, double depth, int slices) =>
        Assert.Equal(slices, new Slice(In((decimal)width), In((decimal)depth)).ByWholeCells(In(inches)));

    /// <summary>Ranges printed in six charts for 1 × 2 in, 4 in tall (common practice, no source).</summary>
    [Theory]
    [InlineData(6, 10, 16)]
    [InlineData(8, 20, 29)]
    [InlineData(9, 32, 32)]
    [InlineData(10, 38, 48)]
    [InlineData(12, 50, 70)]
    [InlineData(14, 78, 90)]
    public void The_usual_chart_lies_in_the_printed_ranges(int inches, int least, int most) =>
        Assert.InRange(PortionChart.Usual.Of(In(inches), Cut.Coffee), least, most);

    /// <summary>Sums printed for 6+8+10 and 6+8+10+12 in: 74 and 130 (common practice, no source).</summary>
    [Fact]
    public void Stacks_add_up_as_printed()
    {
        Assert.Equal(74, new[] { 6, 8, 10 }.Sum(d => PortionChart.Usual.Of(In(d), Cut.Coffee)));
        Assert.Equal(130, new[] { 6, 8, 10, 12 }.Sum(d => PortionChart.Usual.Of(In(d), Cut.Coffee)));
    }

    /// <summary>6, 8, 9, 10, 12, 14 in: 12/20/24/28/40/63 dessert slices (common practice, no source).</summary>
    [Fact]
    public void Dessert_slices_as_printed() =>
        Assert.Equal([12, 20, 24, 28, 40, 63], new[] { 6, 8, 9, 10, 12, 14 }.Select(d => PortionChart.Usual.Of(In(d), Cut.Dessert)));

    /// <summary>Rings and area agree within 4 % from 8 in up (the charts' hidden rule; computed).</summary>
    [Theory]
    [InlineData(8)]
    [InlineData(10)]
    [InlineData(12)]
    [InlineData(14)]
    [InlineData(16)]
    public void Rings_and_area_agree_from_8_inches_up(int inches)
    {
        var (rings, area) = (Coffee.ByRings(In(inches)), Coffee.ByArea(new Round(In(inches))));
        Assert.InRange((double)rings / area, 0.96, 1.04);
    }

    /// <summary>1 × 2 × 4 in is 131.097 mL; exact.</summary>
    [Fact]
    public void A_coffee_slice_has_its_volume() =>
        Assert.Equal(131.097, (Slab.Square(In(1)).Area * 2 * In(4)).Millilitres, 0.001);

    [Fact]
    public void Between_printed_sizes_the_area_counts_within_its_neighbours()
    {
        // Area: 7 in 19.2, 11 in 47.5 coffee slices; 5.9 in 13.7 is more than 6 in prints, so 12.
        Assert.Equal(19, PortionChart.Usual.Of(In(7), Cut.Coffee));
        Assert.Equal(47, PortionChart.Usual.Of(In(11), Cut.Coffee));
        Assert.Equal(12, PortionChart.Usual.Of(In(5.9m), Cut.Coffee));
        Assert.Equal(6, PortionChart.Usual.Of(In(4), Cut.Coffee));
    }

    [Fact]
    public void A_low_tier_gives_half() => Assert.Equal(
        (12, 24),
        (PortionChart.Count(In(8), In(2), Cut.Coffee, CakeFigures.Usual), PortionChart.Count(In(8), In(4), Cut.Coffee, CakeFigures.Usual)));

    /// <summary>Rings are left out: a ring more shortens the core, so they may fall by a slice where a new ring begins.</summary>
    [Theory]
    [InlineData(PortionRule.Chart)]
    [InlineData(PortionRule.Area)]
    [InlineData(PortionRule.WholeCells)]
    public void Portions_never_fall_as_a_tier_grows(PortionRule rule)
    {
        var figures = CakeFigures.Usual with { PortionRule = rule };
        Gen.Select(Gen.Int[60, 460], Gen.Int[0, 60], Gen.Enum<Cut>()).Sample((across, more, cut) =>
            Assert.True(Count(across, cut) <= Count(across + more, cut)));

        int Count(int millimetres, Cut cut) => PortionChart.Count(Length.FromMillimetres(millimetres), In(4), cut, figures);
    }

    private static Length In(decimal inches) => Length.FromInches(inches);
}
