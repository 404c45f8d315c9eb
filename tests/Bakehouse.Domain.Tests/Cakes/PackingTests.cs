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
    /// Largest radius of n equal circles in the unit square (E. Specht's Packomania, csq; for n ≤ 24 it agrees with E. Friedman's
    /// survey; n ≤ 30 are proved optimal). Here: at a radius a millionth larger we never place n, which nobody can; at a
    /// millionth smaller we place n, where <paramref name="reached"/> says so. What is not reached shows what the patterns miss.
    /// </summary>
    [Theory]
    [InlineData(2, 0.292893218813, true)]
    [InlineData(3, 0.254333095030, true)]
    [InlineData(4, 0.250000000000, true)]
    [InlineData(5, 0.207106781187, true)]
    [InlineData(6, 0.187680601147, true)]
    [InlineData(8, 0.170540688701, false)]
    [InlineData(9, 0.166666666667, true)]
    [InlineData(10, 0.148204322565, false)]
    [InlineData(12, 0.139958844038, true)]
    [InlineData(14, 0.129331793710, true)]
    [InlineData(15, 0.127166547515, false)]
    [InlineData(17, 0.117196742783, false)]
    [InlineData(18, 0.115521432464, true)]
    [InlineData(20, 0.111382347512, false)]
    [InlineData(21, 0.106860212352, false)]
    [InlineData(23, 0.102802323380, false)]
    [InlineData(24, 0.101381800432, false)]
    [InlineData(25, 0.100000000000, true)]
    [InlineData(26, 0.096362339010, false)]
    [InlineData(27, 0.095420001748, true)]
    [InlineData(30, 0.091671057986, false)]
    public void Circles_in_a_square_never_beat_the_proved_optimum(int n, double radius, bool reached)
    {
        Assert.True(InSquare(radius * (1 + 1e-6)) < n);
        var placed = InSquare(radius * (1 - 1e-6));
        Assert.Equal(reached, placed == n);
        Assert.True(placed <= n && placed >= n * 0.85, $"{placed} of {n}");
    }

    /// <summary>A shelf of 24 × 24 in takes nine boards of 8 in without gaps; ten do not fit (24 × 0.148204 = 3.557 &lt; 4 in; proved).</summary>
    [Fact]
    public void Nine_boards_fit_where_ten_cannot() => Assert.Equal(9, Rounds.Place(24, 24, 8, 0, 0).Count);

    /// <summary>The smallest square shelf for seven drums of 10 in: 28.6603 in, 5·(4 + √3) (proved optimal).</summary>
    [Fact]
    public void Seven_drums_need_their_smallest_square()
    {
        var side = 5 * (4 + Math.Sqrt(3));
        Assert.Equal(28.6603, side, 0.0005);
        Assert.Equal(7, Rounds.Place(side * 1.000001, side * 1.000001, 10, 0, 0).Count);
        Assert.True(Rounds.Place(side * 0.9999, side * 0.9999, 10, 0, 0).Count < 7);
    }

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

    private static int InSquare(double radius) => Rounds.Place(1000, 1000, 2000 * radius, 0, 0).Count;

    private static Oven Level(int wide, int deep) =>
        new("o1", "Oven", OvenKind.Fan, 1, Length.FromCentimetres(wide), Length.FromCentimetres(deep));
}
