namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;

/// <summary>A corner of a template, in its grid.</summary>
public readonly record struct Corner(int X, int Y);

/// <summary>
/// A figure or a letter cut from a slab by a template of straight lines: area by the corners (Gauss's formula), perimeter, and what the
/// corners add when it is coated. Holes count as outline, too: their sides are coated.
/// </summary>
/// <param name="Sign">One of <see cref="Signs.Known"/>.</param>
/// <param name="Height">From foot to top as it is read.</param>
public sealed record SignShape(string Sign, Length Height) : Shape
{
    private double Unit => Mm(Height) / Signs.High;

    private IReadOnlyList<IReadOnlyList<Corner>> Loops => Signs.Of(Sign) ?? throw new InvalidOperationException($"There is no template for the sign {Sign}.");

    /// <inheritdoc/>
    public override Area Area => Area.FromSquareMillimetres(Unit * Unit * Loops.Sum(Twice) / 2);

    /// <inheritdoc/>
    public override double PerimeterMillimetres => Unit * Loops.Sum(l => Sides(l).Sum(s => Distance(s.From, s.To)));

    /// <inheritdoc/>
    public override Length Wide => Height * Loops[0].Max(c => c.X) * (1m / Signs.High);

    /// <inheritdoc/>
    public override Length Deep => Height;

    /// <summary>The diagonal of the slab that it is cut from.</summary>
    public override double Around => Math.Sqrt((Mm(Wide) * Mm(Wide)) + (Mm(Height) * Mm(Height)));

    /// <summary>One bar of the template.</summary>
    public override double Inside => Unit * Signs.Bar;

    /// <summary>The slab that it is cut from at least.</summary>
    public Slab Slab => new(Wide, Height);

    /// <summary>It is cut from a slab, and all of the slab is baked.</summary>
    public override Shape BakedIn() => Slab;

    /// <summary>Share of the slab that is left over, 0 to 1.</summary>
    public double LeftOver => 1 - (Area.SquareMillimetres / Slab.Area.SquareMillimetres);

    /// <summary>Half of the narrowest opening: a coat this thick would close it.</summary>
    public Length ThickestCoat => Height * (1m / Signs.High) * 0.5m;

    /// <inheritdoc/>
    protected override double Corners => Loops.Sum(l => Turns(l).Sum(turn => Math.Tan(turn / 2)));

    private static double Twice(IReadOnlyList<Corner> loop) => Sides(loop).Sum(s => ((double)s.From.X * s.To.Y) - ((double)s.To.X * s.From.Y));

    private static IEnumerable<(Corner From, Corner To)> Sides(IReadOnlyList<Corner> loop) => loop.Select((c, i) => (c, loop[(i + 1) % loop.Count]));

    private static double Distance(Corner from, Corner to) => Math.Sqrt(((to.X - from.X) * (to.X - from.X)) + ((to.Y - from.Y) * (to.Y - from.Y)));

    // Left turns count above zero: the cake lies to the left of every outline, holes included.
    private static IEnumerable<double> Turns(IReadOnlyList<Corner> loop)
    {
        for (var i = 0; i < loop.Count; i++)
        {
            var (before, at, after) = (loop[(i + loop.Count - 1) % loop.Count], loop[i], loop[(i + 1) % loop.Count]);
            var (ax, ay, bx, by) = (at.X - before.X, at.Y - before.Y, after.X - at.X, after.Y - at.Y);
            yield return Math.Atan2((ax * by) - (ay * bx), (ax * bx) + (ay * by));
        }
    }
}

/// <summary>
/// Our own templates of figures and letters: bars two units wide, ten units high. Outer corners run against the clock, those of holes
/// with it; two digits a corner, across and up, the tenth unit is A.
/// </summary>
public static class Signs
{
    /// <summary>Units from foot to top.</summary>
    public const int High = 10;

    /// <summary>Units across a bar.</summary>
    public const int Bar = 2;

    private const string Upper = "|26 28 48 46";
    private const string Lower = "|22 24 44 42";
    private const string Middle = "|22 28 48 42";

    private static readonly Dictionary<string, string> Templates = new(StringComparer.Ordinal)
    {
        ["0"] = "00 60 6A 0A" + Middle, ["1"] = "00 20 2A 0A", ["2"] = "00 60 62 22 24 64 6A 0A 08 48 46 06",
        ["3"] = "00 60 6A 0A 08 48 46 06 04 44 42 02", ["4"] = "40 60 6A 4A 46 26 2A 0A 04 44", ["5"] = "00 60 66 26 28 68 6A 0A 04 44 42 02",
        ["6"] = "00 60 66 26 28 68 6A 0A" + Lower, ["7"] = "40 60 6A 0A 08 48", ["8"] = "00 60 6A 0A" + Lower + Upper, ["9"] = "00 60 6A 0A 04 44 42 02" + Upper,
        ["A"] = "00 20 24 44 40 60 6A 0A" + Upper, ["B"] = "00 50 61 64 55 66 69 5A 0A" + Lower + Upper, ["C"] = "00 60 62 22 28 68 6A 0A",
        ["D"] = "00 40 62 68 4A 0A|22 28 38 47 43 32", ["E"] = "00 60 62 22 24 54 56 26 28 68 6A 0A", ["F"] = "00 20 24 54 56 26 28 68 6A 0A",
        ["G"] = "00 60 66 36 34 44 42 22 28 68 6A 0A", ["H"] = "00 20 24 44 40 60 6A 4A 46 26 2A 0A", ["I"] = "00 20 2A 0A", ["J"] = "00 60 6A 4A 42 22 24 04",
        ["K"] = "00 20 23 40 60 35 6A 4A 27 2A 0A", ["L"] = "00 60 62 22 2A 0A", ["M"] = "00 20 26 43 66 60 80 8A 6A 46 2A 0A", ["N"] = "00 20 26 50 70 7A 5A 54 2A 0A",
        ["O"] = "00 60 6A 0A" + Middle, ["P"] = "00 20 24 64 6A 0A" + Upper, ["Q"] = "00 70 62 6A 0A" + Middle, ["R"] = "00 20 24 34 40 60 54 64 6A 0A" + Upper,
        ["S"] = "00 60 66 26 28 68 6A 0A 04 44 42 02", ["T"] = "20 40 48 68 6A 0A 08 28", ["U"] = "00 60 6A 4A 42 22 2A 0A", ["V"] = "20 40 6A 4A 34 2A 0A",
        ["W"] = "10 30 44 50 70 8A 6A 64 48 24 2A 0A", ["X"] = "00 20 33 40 60 45 6A 4A 37 2A 0A 25", ["Y"] = "20 40 45 6A 4A 37 2A 0A 25", ["Z"] = "00 60 62 32 68 6A 0A 08 38 02",
    };

    private static readonly Dictionary<string, IReadOnlyList<IReadOnlyList<Corner>>> Read = Templates.ToDictionary(
        t => t.Key, t => (IReadOnlyList<IReadOnlyList<Corner>>)[.. t.Value.Split('|').Select(Loop)], StringComparer.Ordinal);

    /// <summary>Every sign with a template: figures and capital letters.</summary>
    public static IReadOnlyCollection<string> Known => Templates.Keys;

    /// <summary>The outlines of a sign, the outer one first; null if there is no template.</summary>
    public static IReadOnlyList<IReadOnlyList<Corner>>? Of(string sign) => Read.GetValueOrDefault(sign);

    private static IReadOnlyList<Corner> Loop(string text) => [.. text.Split(' ').Select(c => new Corner(Unit(c[0]), Unit(c[1])))];

    private static int Unit(char c) => c == 'A' ? High : c - '0';
}
