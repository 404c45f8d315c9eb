namespace Bakehouse.Domain.Tests.Cakes.Checks;

using Bakehouse.Domain.Cakes.Packing;

/// <summary>P: boards on shelves, against proved packings.</summary>
internal static class PackingRows
{
    // Where the patterns reach the proved optimum; elsewhere a clever hand finds room for one more.
    private static readonly int[] Reached = [2, 3, 4, 5, 6, 9, 12, 14, 18, 25, 27];

    public static IReadOnlyList<(string, Action<CheckRow>)> All { get; } =
    [
        ("P-CSQ*", Circles),
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

    private static int InSquare(double radius) => Rounds.Place(1000, 1000, 2000 * radius, 0, 0).Count;
}
