namespace Bakehouse.Domain.Cakes.Packing;

/// <summary>
/// Equal round things on a rectangle: the most that a few patterns give. Tried are straight rows, staggered rows both ways, and,
/// up to thirty, filling from a corner. What it returns can be put down as it stands; that no more fit is not proved, a clever hand may find
/// one more.
/// </summary>
public static class Rounds
{
    // A thing that touches its neighbour exactly must not be lost to a rounding error: a thousandth of a micrometre.
    internal const double Hair = 1e-6;

    // Filling from a corner takes time with the fourth power of the count, and wins only among few.
    private const int FewEnough = 30;

    /// <summary>The spots, all in millimetres; empty if not even one fits.</summary>
    /// <param name="width">Of the rectangle.</param>
    /// <param name="depth">Of the rectangle.</param>
    /// <param name="across">Diameter of each.</param>
    /// <param name="between">Least gap between two.</param>
    /// <param name="toWall">Least gap to the rectangle's edge.</param>
    public static IReadOnlyList<Spot> Place(double width, double depth, double across, double between, double toWall)
    {
        if (!(across > 0 && between >= 0 && toWall >= 0))
        {
            throw new ArgumentOutOfRangeException(nameof(across), (across, between, toWall), "A round thing has a size, and gaps are zero or more.");
        }

        // Only the middles count: they lie on a smaller rectangle, at least one step apart.
        var (wide, deep) = (width - (2 * toWall) - across, depth - (2 * toWall) - across);
        if (wide < -Hair || deep < -Hair)
        {
            return [];
        }

        var middles = Best(Math.Max(0, wide), Math.Max(0, deep), across + between);
        var edge = toWall + (across / 2);
        return [.. middles.Select(m => new Spot(m.X + edge, m.Y + edge))];
    }

    // The first of the patterns that gives the most, so that the same question has the same answer.
    private static IReadOnlyList<Spot> Best(double wide, double deep, double step)
    {
        var rows = Rows.Patterns(wide, deep, step).Concat(Rows.Patterns(deep, wide, step).Select(Turned)).MaxBy(p => p.Count)!;
        return rows.Count > FewEnough ? rows : CornerFill.Patterns(wide, deep, step).Prepend(rows).MaxBy(p => p.Count)!;
    }

    private static IReadOnlyList<Spot> Turned(IReadOnlyList<Spot> pattern) => [.. pattern.Select(s => new Spot(s.Y, s.X))];
}
