namespace Bakehouse.Domain.Tests.Cakes;

using Bakehouse.Domain.Cakes.Packing;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Shops;
using Bakehouse.Testing;
using CsCheck;

/// <summary>Pieces of different sizes on one rectangle.</summary>
public sealed class LayoutTests
{
    private static readonly double[] Sizes = [197.4, 248.2, 273.6, 299, 324.8, 349.8, 376, 426.8];

    private static readonly Gen<Piece> OnePiece = Gen.Select(Gen.Int[0, Sizes.Length - 1], Gen.Int[0, 5]).Select((i, kind) => kind switch
    {
        0 => Piece.Square(Sizes[i]),
        1 => new Piece(Sizes[i], Sizes[(i + 3) % Sizes.Length], false),
        _ => Piece.Round(Sizes[i]),
    });

    private static readonly Gen<(Floor Floor, Piece[] Pieces)> Sets =
        Gen.Select(Gen.Double[300, 1300], Gen.Double[300, 700], OnePiece.Array[1, 7]).Select((wide, deep, pieces) => (new Floor(wide, deep), pieces));

    /// <summary>
    /// Largest radius of n equal circles in the unit square (E. Specht's Packomania, csq; n up to 30 proved optimal): a millionth larger
    /// never goes in, whatever is tried; up to six, a millionth smaller always does.
    /// </summary>
    [Theory]
    [InlineData(1, 0.5)]
    [InlineData(2, 0.292893218813)]
    [InlineData(3, 0.254333095030)]
    [InlineData(4, 0.250000000000)]
    [InlineData(5, 0.207106781187)]
    [InlineData(6, 0.187680601147)]
    public void Few_circles_reach_the_proved_optimum(int n, double radius)
    {
        Assert.True(InSquare(n, radius * (1 - 1e-6)));
        Assert.False(InSquare(n, radius * (1 + 1e-6)));
    }

    /// <summary>Seven to twelve (same source): never beaten, and reached with a tenth less at the most.</summary>
    [Theory]
    [InlineData(7, 0.174457630187)]
    [InlineData(8, 0.170540688701)]
    [InlineData(9, 0.166666666667)]
    [InlineData(10, 0.148204322565)]
    [InlineData(11, 0.142399237696)]
    [InlineData(12, 0.139958844038)]
    public void More_circles_never_beat_it_and_come_near(int n, double radius)
    {
        Assert.True(InSquare(n, radius * 0.9));
        Assert.False(InSquare(n, radius * (1 + 1e-6)));
    }

    /// <summary>
    /// Two round ones in opposite corners: they need (W - r1 - r2)² + (D - r1 - r2)² ≥ (r1 + r2)² (Pythagoras). A 12 in and a 6 in tier on
    /// their working boards, 350 and 197.4 mm with their gaps: on a shelf 500 mm wide they need 427.6 mm of depth.
    /// </summary>
    [Fact]
    public void Two_stand_diagonally_where_side_by_side_is_too_wide()
    {
        Piece[] two = [Piece.Round(350), Piece.Round(197.4)];
        var both = (350 + 197.4) / 2;
        var deep = both + Math.Sqrt((both * both) - ((500 - both) * (500 - both)));
        Assert.Equal(427.6, deep, 0.1);
        Assert.True(Layouts.Fit(new Floor(500, deep + 0.01), two));
        Assert.False(Layouts.Fit(new Floor(500, deep - 0.01), two));
    }

    /// <summary>The case that a count of places refuses: a 10 in and a 6 in tier on their working boards, 29.9 and 19.74 cm, share a shelf of 50 cm.</summary>
    [Fact]
    public void A_ten_and_a_six_inch_tier_share_a_shelf_of_fifty_centimetres()
    {
        var shelf = Shelf(50, 32);
        Assert.True(Layouts.Fit(Room.Of(shelf), [OnBoard(10), OnBoard(6)]));
        Assert.False(Layouts.Fit(Room.Of(shelf), [OnBoard(10), OnBoard(8)]));
        Assert.Equal(5, Layouts.MissingCm(Room.Of(Shelf(50, 30)), [OnBoard(10), OnBoard(8)]));
    }

    /// <summary>The drum of a 10 in tier with its gap, 37.6 cm, stands on a shelf of 40 cm depth.</summary>
    [Fact]
    public void A_drum_stands_on_any_shelf_that_is_wide_and_deep_enough()
    {
        var drum = Piece.Round((double)(Length.FromInches(14) + Room.BetweenBoards).Millimetres);
        Assert.Equal(37.6, drum.Wide / 10, 0.05);
        Assert.True(ShelfRoom.Holds(Shelf(50, 40), drum, 14));
        Assert.False(ShelfRoom.Holds(Shelf(50, 37), drum, 14));
    }

    /// <summary>A box of 40 cm on a shelf of 55 × 60 cm leaves a strip behind for two 6 in tiers, and none for an 8 in.</summary>
    [Fact]
    public void Round_ones_stand_in_the_strip_that_a_box_leaves()
    {
        var box = Piece.Square(400);
        Assert.True(Layouts.Fit(new Floor(550, 600), [box, OnBoard(6), OnBoard(6)]));
        Assert.False(Layouts.Fit(new Floor(550, 600), [box, OnBoard(8)]));
    }

    [Fact]
    public void What_is_laid_lies_inside_and_overlaps_nothing() => Sets.Each(2_000, set =>
    {
        if (Layouts.Of(set.Floor, set.Pieces) is not { } laid)
        {
            return;
        }

        for (var i = 0; i < laid.Count; i++)
        {
            Assert.True(laid[i].Piece == set.Pieces[i] || laid[i].Piece == set.Pieces[i].Turned);
            Assert.True(laid[i].Piece.Inside(set.Floor, laid[i].At));
            Assert.All(laid.Take(i), o => Assert.True(o.Piece.Clears(o.At, laid[i].Piece, laid[i].At)));
        }
    });

    /// <summary>
    /// Two pieces don't overlap if a fine raster finds no point in both: the plain test by points beside the one by distances.
    /// </summary>
    [Fact]
    public void Clear_of_each_other_means_no_common_point() =>
        Gen.Select(OnePiece, OnePiece, Gen.Double[0, 500], Gen.Double[0, 500]).Each(300, drawn =>
        {
            var (a, b, x, y) = drawn;
            var there = new Spot(x, y);
            var common = Points(a).Any(p => Covers(b, there, p));
            Assert.True(!a.Clears(default, b, there) || !common);
        });

    [Fact]
    public void With_a_piece_less_the_rest_still_stands() => Sets.Each(2_000, set =>
    {
        for (var i = 0; Layouts.Fit(set.Floor, set.Pieces) && set.Pieces.Length > 1 && i < set.Pieces.Length; i++)
        {
            Assert.True(Layouts.Fit(set.Floor, [.. set.Pieces[..i], .. set.Pieces[(i + 1)..]]));
        }
    });

    [Fact]
    public void Many_pieces_in_rows_still_stand_with_one_less() =>
        Gen.Select(Gen.Double[600, 2000], Gen.Double[400, 1200], OnePiece.Array[8, 20]).Each(400, drawn =>
        {
            var (floor, pieces) = (new Floor(drawn.Item1, drawn.Item2), drawn.Item3);
            while (pieces.Length > 1 && !Layouts.Fit(floor, pieces))
            {
                pieces = pieces[1..];
            }

            for (var i = 0; pieces.Length > 1 && i < pieces.Length; i++)
            {
                Assert.True(Layouts.Fit(floor, [.. pieces[..i], .. pieces[(i + 1)..]]));
            }
        });

    [Fact]
    public void A_quarter_turn_of_shelf_and_pieces_changes_nothing() => Sets.Each(1_000, set =>
        Assert.Equal(Layouts.Fit(set.Floor, set.Pieces), Layouts.Fit(set.Floor.Turned, [.. set.Pieces.Reverse().Select(p => p.Turned)])));

    /// <summary>
    /// What stands together covers no more than there is: and where the shelf is wider by what is said to be missing, it stands.
    /// </summary>
    [Fact]
    public void The_missing_centimetres_are_enough_and_not_one_too_many() => Sets.Each(300, set =>
    {
        var cm = Layouts.MissingCm(set.Floor, set.Pieces);
        var deep = set.Pieces.All(set.Floor.Takes) ? 0 : 10;
        Floor Wider(int by) => new(set.Floor.Wide + (10 * by), set.Floor.Deep + (deep * by));
        Assert.True(Layouts.Fit(Wider(cm), set.Pieces));
        Assert.True(cm == 0 || !Layouts.Fit(Wider(cm - 1), set.Pieces));
    });

    /// <summary>The shares of a deck by counts (1/3 and 1/2 and so on) against its real size: on 60 × 40 cm two 10 in pans leave no room for a 6 in one, one does.</summary>
    [Fact]
    public void Pans_of_several_sizes_share_a_deck_by_their_real_size()
    {
        var deck = Room.Of(new Oven("o", "Oven", OvenKind.Fan, 1, Length.FromCentimetres(60), Length.FromCentimetres(40)));
        Assert.True(DeckLoad.Fit(deck, 1, [10, 6]));
        Assert.True(DeckLoad.Fit(deck, 1, [10, 10]));
        Assert.False(DeckLoad.Fit(deck, 1, [10, 10, 6]));
        Assert.True(DeckLoad.Fit(deck, 2, [10, 10, 6]));
        Assert.False(DeckLoad.Fit(deck, 1, [10, 10, 10]));
        Assert.Null(DeckLoad.Of(deck, 3, [16]));
    }

    /// <summary>Of one size, a load holds as many as the count says (the table in <see cref="PackingTests"/>).</summary>
    [Theory]
    [InlineData(44, 36)]
    [InlineData(46, 33)]
    [InlineData(60, 40)]
    [InlineData(66, 46)]
    [InlineData(80, 60)]
    public void Of_one_size_a_load_holds_what_the_count_says(int wide, int deep)
    {
        var oven = new Oven("o", "Oven", OvenKind.Fan, 2, Length.FromCentimetres(wide), Length.FromCentimetres(deep));
        foreach (var inches in new[] { 6, 8, 9, 10, 12, 14 })
        {
            var each = Room.Pans(oven, Length.FromInches(inches)).Count;
            Assert.True(DeckLoad.Fit(Room.Of(oven), 2, [.. Enumerable.Repeat(inches, 2 * each)]));
            Assert.False(DeckLoad.Fit(Room.Of(oven), 2, [.. Enumerable.Repeat(inches, (2 * each) + 1)]));
        }
    }

    [Fact]
    public void A_load_still_stands_with_a_pan_less_and_covers_no_more_than_its_levels() =>
        Gen.Select(Gen.Int[30, 80], Gen.Int[30, 60], Gen.Int[1, 3], Gen.Int[4, 14].Array[1, 9]).Each(300, drawn =>
        {
            var (wide, deep, levels, pans) = drawn;
            var deck = Room.Of(new Oven("o", "Oven", OvenKind.Fan, levels, Length.FromCentimetres(wide), Length.FromCentimetres(deep)));
            if (DeckLoad.Of(deck, levels, pans) is not { } load)
            {
                return;
            }

            Assert.True(load.Count <= levels);
            Assert.Equal(pans.Order(), load.SelectMany(l => l).Select(p => p.Inches).Order());
            Assert.All(load, level => Assert.True(level.Sum(p => p.Laid.Piece.Area) <= deck.Area));
            Assert.All(Enumerable.Range(0, pans.Length), i => Assert.True(DeckLoad.Fit(deck, levels, [.. pans[..i], .. pans[(i + 1)..]])));
        });

    private static bool InSquare(int n, double radius) => Layouts.Fit(new Floor(1000, 1000), [.. Enumerable.Repeat(Piece.Round(2000 * radius), n)]);

    private static Shelf Shelf(int wide, int deep) =>
        new("s", ShelfKind.Fridge, "Fridge 1", 1, Length.FromCentimetres(wide), Length.FromCentimetres(deep), Length.FromCentimetres(20));

    private static Piece OnBoard(int inches) => Piece.Round((double)(Length.FromInches(inches) + Length.FromCentimetres(4.5m)).Millimetres);

    private static IEnumerable<Spot> Points(Piece piece) =>
        from i in Enumerable.Range(-20, 41)
        from j in Enumerable.Range(-20, 41)
        let at = new Spot(piece.Wide / 41 * i, piece.Deep / 41 * j)
        where Covers(piece, default, at)
        select at;

    private static bool Covers(Piece piece, Spot middle, Spot point) => piece.IsRound
        ? middle.To(point) < (piece.Wide / 2) - 0.001
        : Math.Abs(middle.X - point.X) < (piece.Wide / 2) - 0.001 && Math.Abs(middle.Y - point.Y) < (piece.Deep / 2) - 0.001;
}
