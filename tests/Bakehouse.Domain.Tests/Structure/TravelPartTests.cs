namespace Bakehouse.Domain.Tests.Structure;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Prices;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Structure;
using Golden = Bakehouse.Domain.Tests.Cakes.Checks.Golden;

/// <summary>Parts on the road, each on its board and in its box. Four tiers of 12, 10, 8 and 6 in, each 108.6 mm with its coats, go in two (common practice, no source).</summary>
public sealed class TravelPartTests
{
    private static readonly BuildSheet Four = Of(12, 10, 8, 6);

    /// <summary>
    /// Worked by hand: 12 + 108.6 + 3 + 108.6 = 232.2 mm on a drum of 16 in; 12 + 2 × (3 + 108.6) = 235.2 mm on a working board of 203.2 + 25 mm, up to
    /// 9 in; with an inch over them both boxes are 11 in high.
    /// </summary>
    [Fact]
    public void Each_part_has_its_board_and_its_box()
    {
        var parts = TravelPart.Of(Four, 30);
        Assert.Equal(["0 1", "2 3"], parts.Select(p => string.Join(' ', p.Tiers)));
        Assert.Equal([232.2m, 235.2m], parts.Select(p => p.Height.Millimetres));
        Assert.Equal([new Box(In(16), In(11)), new Box(In(9), In(11))], parts.Select(p => p.Box));
        Assert.Equal((In(16), 228.2m), (parts[0].Board.Diameter, parts[1].Board.Diameter.Millimetres));
    }

    /// <summary>Nothing is lost: the parts weigh what the cake weighs, and one working board more for each but the lowest.</summary>
    [Theory]
    [InlineData(30, 2)]
    [InlineData(120, 4)]
    public void Together_they_weigh_the_cake_and_the_boards_under_them(int minutes, int count)
    {
        var parts = TravelPart.Of(Four, minutes);
        var under = parts.Skip(1).Sum(p => (Four.Figures.BoardDensity * p.Board.Volume).Grams);
        Assert.Equal(count, parts.Count);
        Assert.Equal((double)(Four.Mass.Grams + under), (double)parts.Sum(p => p.Mass.Grams), 0.01);
    }

    /// <summary>NIOSH 94-110: a box of 9 in, 22.86 cm, is held 20 + 11.43 cm away; 23 × 25/31.43 = 18.295 kg.</summary>
    [Fact]
    public void Each_part_has_its_own_lifting_index()
    {
        var upper = TravelPart.Of(Four, 30)[1];
        Assert.Equal(18.295, upper.Carrying.Recommended, 0.001);
        Assert.Equal((double)upper.Mass.Kilograms / 18.295, upper.Carrying.Index, 0.001);
        var own = Four with { Figures = Four.Figures with { TwoCarryFrom = upper.Mass } };
        Assert.Equal(["Carrying tiers 1 and 2", "Carrying tiers 3 and 4"], Carrying.Looks(own, 30).Select(l => l.Where).Where(w => w.StartsWith("Carrying", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_cake_in_one_piece_is_one_part_and_cupcakes_are_none()
    {
        var three = Of(10, 8, 6);
        var whole = Assert.Single(TravelPart.Of(three, 30));
        Assert.Equal((three.Mass, three.Height, three.Box!, three.Drum!), (whole.Mass, whole.Height, whole.Box, whole.Board));
        Assert.Empty(TravelPart.Of(BuildSheet.Of(Bakehouse.Testing.Cakes.Alone(1, 12)), 30));
    }

    /// <summary>Free height lies between two parts, so no box is higher for it.</summary>
    [Fact]
    public void Pillars_are_packed_beside_the_cake()
    {
        var lifted = BuildSheet.Of([Golden.Tier(10), Golden.Tier(6) with { Special = new TierSpecial { Separator = Length.FromCentimetres(10) } }], Finish.Smooth, CakeFigures.Usual);
        Assert.Equal([120.6m, 123.6m], TravelPart.Of(lifted, 30).Select(p => p.Height.Millimetres));
    }

    /// <summary>Two boxes of 3.10 instead of one.</summary>
    [Fact]
    public void Each_box_is_paid_for()
    {
        IReadOnlyList<SizePrice> one = [new(In(20), 3.10m)];
        var rates = new CostRates(0, 0, 1, 0, 0, 1, [], one, one, one, 0, 0);
        var good = Bakehouse.Testing.Cakes.Good();
        decimal Boxes(params int[] inches) => CakeCost.Of(good with { Tiers = Tiers(inches) }, Of(inches), Starter.Sample, 0, rates).Lines.Where(l => l.Name == "Box").Sum(l => l.Cost);
        Assert.Equal((3.10m, 6.20m), (Boxes(10, 8, 6), Boxes(12, 10, 8, 6)));
    }

    private static BuildSheet Of(params int[] inches) => BuildSheet.Of(Tiers(inches), Finish.Smooth, CakeFigures.Usual);

    private static List<CakeTier> Tiers(int[] inches) => [.. inches.Select(Golden.Tier)];

    private static Length In(decimal inches) => Length.FromInches(inches);
}
