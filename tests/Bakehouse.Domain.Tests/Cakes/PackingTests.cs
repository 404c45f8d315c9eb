namespace Bakehouse.Domain.Tests.Cakes;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Cakes.Packing;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Shops;
using CsCheck;

public sealed class PackingTests
{
    private static readonly int[] Sizes = [6, 8, 9, 10, 12, 14];

    /// <summary>
    /// Pans of 6, 8, 9, 10, 12, 14 in on one level (2 cm between pans, 1.5 cm to the wall, rim 8 mm; counted by brute force outside
    /// this project). One cell differs: 6 in on 80 × 60 cm was given as 8 to 12; thirteen fit, staggered 3-2-3-2-3, and the
    /// distances below are looked at one by one.
    /// </summary>
    [Theory]
    [InlineData(44, 36, "3-4 2 1 1 1 0")]
    [InlineData(46, 33, "3 2 1 1 0 0")]
    [InlineData(60, 40, "6 3 2 2 1 1")]
    [InlineData(66, 46, "6-7 4 3 2 2 1")]
    [InlineData(80, 60, "13 6-7 6 5 3 2")]
    public void Pans_on_a_level(int wide, int deep, string counts)
    {
        foreach (var (size, range) in Sizes.Zip(counts.Split(' ')))
        {
            var ends = range.Split('-').Select(int.Parse).ToList();
            Assert.InRange(Room.Pans(Level(wide, deep), Length.FromInches(size)).Count, ends[0], ends[^1]);
        }
    }

    /// <summary>
    /// Room on a shelf: 6, 8, 9, 10, 12 in on their working boards 19.7, 24.8, 27.4, 29.9, 35.0 cm; on a drum 8, 9, 10, 12 in 32.5, 35,
    /// 37.6, 42.6 cm (common practice, no source).
    /// </summary>
    [Theory]
    [InlineData(6, 19.7, null)]
    [InlineData(8, 24.8, 32.5)]
    [InlineData(9, 27.4, 35.0)]
    [InlineData(10, 29.9, 37.6)]
    [InlineData(12, 35.0, 42.6)]
    public void Footprints(int inches, double working, double? drum)
    {
        var tier = Length.FromInches(inches);
        Assert.Equal(working, (double)Room.Footprint(Board.Working(tier, CakeFigures.Usual)).Centimetres, 0.051);
        if (drum is { } expected)
        {
            Assert.Equal(expected, (double)Room.Footprint(Board.Drum(tier, 3, CakeFigures.Usual)).Centimetres, 0.051);
        }
    }

    [Fact]
    public void A_tier_higher_than_the_shelf_is_clear_does_not_stand_there()
    {
        var shelf = new Shelf("s1", ShelfKind.Fridge, "Fridge 1", 1, Length.FromCentimetres(55), Length.FromCentimetres(60), Length.FromCentimetres(18));
        var board = Board.Working(Length.FromInches(8), CakeFigures.Usual);
        Assert.Equal(4, Room.Boards(shelf, board, Length.FromCentimetres(18)).Count);
        Assert.Empty(Room.Boards(shelf, board, Length.FromCentimetres(18.1m)));
    }

    [Fact]
    public void Every_spot_keeps_its_gaps() =>
        Gen.Select(Gen.Double[50, 900], Gen.Double[50, 900], Gen.Double[70, 400], Gen.Double[0, 30], Gen.Double[0, 30])
            .Sample((wide, deep, across, between, toWall) =>
            {
                var spots = Rounds.Place(wide, deep, across, between, toWall);
                var edge = toWall + (across / 2) - 1e-5;
                Assert.All(spots, s => Assert.True(s.X >= edge && s.X <= wide - edge && s.Y >= edge && s.Y <= deep - edge));
                for (var i = 0; i < spots.Count; i++)
                {
                    Assert.All(spots.Take(i), s => Assert.True(s.To(spots[i]) >= across + between - 1e-5));
                }

                // The area of the discs with half their gap can't be more than that of the level with half a gap around.
                var disc = Math.PI * (across + between) * (across + between) / 4;
                Assert.True(spots.Count * disc <= (wide + between) * (deep + between));
                Assert.Equal(spots.Count > 0, Math.Min(wide, deep) >= across + (2 * toWall));
            });


    private static Oven Level(int wide, int deep) =>
        new("o1", "Oven", OvenKind.Fan, 1, Length.FromCentimetres(wide), Length.FromCentimetres(deep));
}
