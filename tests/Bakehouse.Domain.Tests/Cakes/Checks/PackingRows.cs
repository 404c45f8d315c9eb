namespace Bakehouse.Domain.Tests.Cakes.Checks;

using System.Globalization;
using Bakehouse.Domain.Cakes.Packing;

/// <summary>P: boards on shelves, against proved packings.</summary>
internal static class PackingRows
{
    // Where the patterns reach the proved optimum; elsewhere a clever hand finds room for one more.
    private static readonly int[] Reached = [2, 3, 4, 5, 6, 9, 12, 14, 18, 25, 27];

    public static IReadOnlyList<(string, Action<CheckRow>)> All { get; } =
    [
        ("P-CSQ*", Circles),
        .. new[] { 1, 2, 3, 4, 5, 9 }.Select(n => ($"P-BW1-20-{n}r", (Action<CheckRow>)Squares)),
        .. new[] { "20x20-P1", "60x30-P1", "60x30-P3" }.Select(n => ($"P-HT-{n}", (Action<CheckRow>)Strip)),
        ("P-SHELF-2", r => Assert.Equal((int)r.In("n") - 1, Rounds.Place(24, 24, 8, 0, 0).Count)),
        ("P-SHELF-3", r =>
        {
            var side = 5 * (4 + Math.Sqrt(3));
            r.Holds(side);
            Assert.Equal(7, Rounds.Place(side * 1.000001, side * 1.000001, 10, 0, 0).Count);
            Assert.True(Rounds.Place(side * 0.9999, side * 0.9999, 10, 0, 0).Count < 7);
        }),
    ];

    // A millionth larger nobody can place n, so we never do; a millionth smaller we place n where the patterns reach it.
    private static void Circles(CheckRow r)
    {
        var (n, radius) = ((int)r.In("n"), r.Numbers[0]);
        Assert.True(InSquare(radius * (1 + 1e-6)) < n);
        var placed = InSquare(radius * (1 - 1e-6));
        Assert.Equal(Reached.Contains(n), placed == n);
        Assert.True(placed <= n && placed >= n * 0.85, $"{placed} of {n}");
    }

    // Twenty rectangles into squares of ten, first fit by falling area as the layouts say what stands together: nobody needs fewer than the
    // optimum that is proved, so we never do; the rows and nests of the layouts need one more at most. Each laid rectangle is looked at.
    private static void Squares(CheckRow r)
    {
        var floor = new Floor(10, 10);
        List<List<Piece>> squares = [];
        foreach (var piece in Pieces((int)r.Given[0]).OrderByDescending(p => p.Area).ThenByDescending(p => Math.Max(p.Wide, p.Deep)))
        {
            if (squares.Find(s => Layouts.Fit(floor, [.. s, piece])) is { } square)
            {
                square.Add(piece);
            }
            else
            {
                squares.Add([piece]);
            }
        }

        Assert.InRange(squares.Count, r.Numbers[0], r.Numbers[0] + 1);
        Assert.All(squares, s => Stand(floor, s));
    }

    // The boards of a whole sheet back on a strip as wide: nobody needs less than the sheet, so we never say that they stand on less; our rows,
    // which let no board lie behind a shorter one, need half as much again at most.
    private static void Strip(CheckRow r)
    {
        var strip = r.Id["P-HT-".Length..];
        var wide = int.Parse(strip.Split('x')[0], CultureInfo.InvariantCulture);
        List<Piece> boards = [.. File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Cakes", "Checks", "strips.csv")).Skip(1).Select(l => l.Split(',')).Where(l => l[0] == strip)
            .Select(l => new Piece(int.Parse(l[1], CultureInfo.InvariantCulture), int.Parse(l[2], CultureInfo.InvariantCulture), IsRound: false))];
        Assert.Equal(r.Numbers[0] * wide, boards.Sum(b => b.Area), 1e-9);
        var least = Enumerable.Range(1, 2 * (int)r.Numbers[0]).First(h => Layouts.Fit(new Floor(wide, h), boards));
        Assert.InRange(least, r.Numbers[0], 1.5 * r.Numbers[0]);
        Stand(new Floor(wide, least), boards);
    }

    private static void Stand(Floor floor, List<Piece> pieces)
    {
        var laid = Layouts.Of(floor, pieces)!;
        Assert.All(laid, l => Assert.True(l.Piece.Inside(floor, l.At)));
        Assert.All(laid.SelectMany((a, i) => laid.Skip(i + 1).Select(b => (a, b))), two => Assert.True(two.a.Piece.Clears(two.a.At, two.b.Piece, two.b.At)));
    }

    private static IEnumerable<Piece> Pieces(int instance) => File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Cakes", "Checks", "rectangles.csv")).Skip(1)
        .Select(l => l.Split(',').Select(n => int.Parse(n, CultureInfo.InvariantCulture)).ToArray())
        .Where(n => n[0] == instance)
        .Select(n => new Piece(n[1], n[2], IsRound: false));

    private static int InSquare(double radius) => Rounds.Place(1000, 1000, 2000 * radius, 0, 0).Count;
}
