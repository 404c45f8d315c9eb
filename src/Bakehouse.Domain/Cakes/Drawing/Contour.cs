namespace Bakehouse.Domain.Cakes.Drawing;

using Bakehouse.Domain.Measures;

/// <summary>A point of a drawing, in millimetres.</summary>
public readonly record struct Dot(double X, double Y);

/// <summary>
/// The line around an outline seen from above, y away from the looker, around the middle of the circle in which supports stand. Arcs are drawn
/// by straight lines of at most three degrees. Outer loops run against the clock, those of holes with it.
/// </summary>
internal static class Contour
{
    private const double Step = 3 * Math.PI / 180;

    /// <summary>The loops of an outline moved outwards by so many millimetres, the outer one first.</summary>
    public static IReadOnlyList<IReadOnlyList<Dot>> Of(Shape shape, double grown = 0) => shape switch
    {
        Round round => [[.. Arc(0, 0, (Mm(round.Diameter) / 2) + grown, 0, 2 * Math.PI)]],
        Slab slab => [Box((Mm(slab.Width) / 2) + grown, (Mm(slab.Depth) / 2) + grown)],
        Hexagon hexagon => [[.. Enumerable.Range(0, 6).Select(i => At(0, 0, (Mm(hexagon.AcrossCorners) / 2) + (grown / Math.Cos(Math.PI / 6)), i * Math.PI / 3))]],
        Petal petal => [[.. Lobes(petal, grown)]],
        Heart heart => [[.. HeartOf(heart, grown)]],
        HalfRound half => [[.. HalfOf(half, grown)]],
        SignShape sign => [.. SignLoops(sign).Select(l => Moved(l, grown))],
        _ => throw new InvalidOperationException($"Unknown outline {shape}."),
    };

    /// <summary>
    /// Where a straight line from side to side through the middle lies inside the outline: from and to, left to right.
    /// </summary>
    public static IReadOnlyList<(double From, double To)> Across(Shape shape, double grown)
    {
        // A hair off the middle, where no corner lies.
        const double y = 0.013;
        var crossed = Of(shape, grown).SelectMany(Edges).Where(e => (e.From.Y > y) != (e.To.Y > y))
            .Select(e => e.From.X + ((e.To.X - e.From.X) * (y - e.From.Y) / (e.To.Y - e.From.Y))).Order().ToList();
        return [.. crossed.Chunk(2).Where(c => c.Length == 2).Select(c => (c[0], c[1]))];
    }

    /// <summary>The upright edges that somebody in front of it sees, from left to right; none of a round one.</summary>
    public static IReadOnlyList<double> Creases(Shape shape, double grown)
    {
        var edges = Of(shape, grown).SelectMany(Edges).ToList();
        bool Hidden(Dot at) => edges.Exists(e => (e.From.X < at.X - Hair) != (e.To.X < at.X - Hair) && Below(e, at.X - Hair) < at.Y - 1)
            && edges.Exists(e => (e.From.X < at.X + Hair) != (e.To.X < at.X + Hair) && Below(e, at.X + Hair) < at.Y - 1);
        return [.. Of(shape, grown).SelectMany(Corners).Where(c => !Hidden(c)).Select(c => Math.Round(c.X, 1)).Distinct().Order()];
    }

    private const double Hair = 0.01;

    private static double Below((Dot From, Dot To) e, double x) => e.From.Y + ((e.To.Y - e.From.Y) * (x - e.From.X) / (e.To.X - e.From.X));

    private static double Mm(Length length) => (double)length.Millimetres;

    private static Dot At(double x, double y, double radius, double angle) => new(x + (radius * Math.Cos(angle)), y + (radius * Math.Sin(angle)));

    /// <summary>From an angle to a larger one, both ends included; a whole circle ends one step before it begins again.</summary>
    private static IEnumerable<Dot> Arc(double x, double y, double radius, double from, double to)
    {
        var steps = Math.Max(1, (int)Math.Ceiling((to - from) / Step));
        var whole = to - from >= 2 * Math.PI - Hair;
        return Enumerable.Range(0, whole ? steps : steps + 1).Select(i => At(x, y, radius, from + ((to - from) * i / steps)));
    }

    private static IReadOnlyList<Dot> Box(double x, double y) => [new(-x, -y), new(x, -y), new(x, y), new(-x, y)];

    // Each lobe's circle around the middle of its side, up to where it meets its neighbours'.
    private static IEnumerable<Dot> Lobes(Petal petal, double grown)
    {
        var half = Math.PI / petal.Lobes;
        var side = Mm(petal.TipToTip) / (1 + (1 / Math.Tan(half)));
        var (toSide, radius) = (side / (2 * Math.Tan(half)), (side / 2) + grown);
        var notch = (toSide * Math.Cos(half)) + Math.Sqrt((radius * radius) - (toSide * toSide * Math.Sin(half) * Math.Sin(half)));
        var open = Math.Atan2(notch * Math.Sin(half), (notch * Math.Cos(half)) - toSide);
        return Enumerable.Range(0, petal.Lobes).SelectMany(i =>
        {
            var axis = 2 * half * i;
            var middle = At(0, 0, toSide, axis);
            // The notch belongs to the next lobe.
            return Arc(middle.X, middle.Y, radius, axis - open, axis + open).SkipLast(1);
        });
    }

    // The tip towards the looker; both lobes end where they meet over the middle.
    private static IEnumerable<Dot> HeartOf(Heart heart, double grown)
    {
        var side = Mm(heart.Width) / (1 + (1 / Math.Sqrt(2)));
        var (off, radius) = (side / (2 * Math.Sqrt(2)), (side / 2) + grown);
        var meets = Math.Acos(-off / radius);
        var right = Arc(off, off, radius, -Math.PI / 4, meets).ToList();
        return [new Dot(0, -(side / Math.Sqrt(2)) - (grown * Math.Sqrt(2))), .. right, .. Enumerable.Reverse(right).Skip(1).Select(d => new Dot(-d.X, d.Y))];
    }

    // The straight side towards the looker.
    private static IEnumerable<Dot> HalfOf(HalfRound half, double grown)
    {
        var bare = Mm(half.Diameter) / 2;
        var open = Math.Asin(grown / (bare + grown));
        return Arc(0, -bare / 2, bare + grown, -open, Math.PI + open);
    }

    private static IEnumerable<IReadOnlyList<Dot>> SignLoops(SignShape sign)
    {
        var unit = Mm(sign.Height) / Signs.High;
        return Signs.Of(sign.Sign)!.Select(l => (IReadOnlyList<Dot>)[.. l.Select(c => new Dot((c.X * unit) - (Mm(sign.Wide) / 2), (c.Y * unit) - (Mm(sign.Height) / 2)))]);
    }

    /// <summary>Straight sides moved to their right, which lies outside, with sharp corners.</summary>
    private static IReadOnlyList<Dot> Moved(IReadOnlyList<Dot> loop, double grown) => [.. loop.Select((at, i) =>
    {
        var (before, after) = (loop[(i + loop.Count - 1) % loop.Count], loop[(i + 1) % loop.Count]);
        var (a, b) = (Outwards(before, at), Outwards(at, after));
        var share = grown / (1 + (a.X * b.X) + (a.Y * b.Y));
        return new Dot(at.X + ((a.X + b.X) * share), at.Y + ((a.Y + b.Y) * share));
    })];

    private static Dot Outwards(Dot from, Dot to)
    {
        var (x, y) = (to.X - from.X, to.Y - from.Y);
        var length = Math.Sqrt((x * x) + (y * y));
        return new Dot(y / length, -x / length);
    }

    private static IEnumerable<(Dot From, Dot To)> Edges(IReadOnlyList<Dot> loop) => loop.Select((d, i) => (d, loop[(i + 1) % loop.Count]));

    // Arcs turn by a few degrees at each of their points, real corners by more.
    private static IEnumerable<Dot> Corners(IReadOnlyList<Dot> loop) => loop.Where((at, i) =>
    {
        var (a, b) = (Outwards(loop[(i + loop.Count - 1) % loop.Count], at), Outwards(at, loop[(i + 1) % loop.Count]));
        return (a.X * b.X) + (a.Y * b.Y) < Math.Cos(12 * Math.PI / 180);
    });
}
