namespace Bakehouse.Domain.Tests.Cakes;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using CsCheck;

/// <summary>Laws of every outline: what must hold whatever its formulas are.</summary>
public sealed class ShapeLawTests
{
    private static readonly Gen<Shape> Any = Gen.Select(Gen.Int[100, 400], Gen.Int[0, 1000], (mm, which) => All(mm)[which % All(mm).Count]);

    private static IReadOnlyList<Shape> All(int mm) =>
    [
        new Round(Mm(mm)), Slab.Square(Mm(mm)), new Slab(Mm(mm), Mm(mm / 2m)), new Hexagon(Mm(mm)), new Petal(Mm(mm)), new Petal(Mm(mm), 6),
        new Heart(Mm(mm)), new HalfRound(Mm(mm)), .. Signs.Known.Select(s => new SignShape(s, Mm(mm))),
    ];

    /// <summary>Grown by a hair, the area grows by the perimeter: this joins the two formulas of each outline.</summary>
    [Fact]
    public void The_area_grows_by_the_perimeter_at_first() => Any.Sample(shape =>
    {
        var grown = shape.GrownBy(Mm(0.001m)).SquareMillimetres - shape.Area.SquareMillimetres;
        Assert.Equal(shape.PerimeterMillimetres, grown / 0.001, shape.PerimeterMillimetres * 1e-4);
    });

    [Fact]
    public void Two_coats_are_as_much_as_one_of_both_thicknesses() => Gen.Select(Any, Gen.Int[1, 30], Gen.Int[0, 40]).Sample((shape, first, second) =>
    {
        var (height, a, b) = (Mm(100), Mm(first / 10m), Mm(second / 10m));
        var apart = Coat.On(shape, height, a).All + Coat.Over(shape, height, a, b).All;
        Assert.Equal(Coat.On(shape, height, a + b).All.Millilitres, apart.Millilitres, 6);
    });

    /// <summary>An outline of twice the size has four times the area and twice the perimeter.</summary>
    [Fact]
    public void Twice_the_size_is_four_times_the_area() => Gen.Select(Gen.Enum<OutlineKind>(), Gen.Int[60, 300]).Sample((kind, mm) =>
    {
        var (one, two) = (Named(kind, mm), Named(kind, 2 * mm));
        Assert.Equal(4 * one.Area.SquareMillimetres, two.Area.SquareMillimetres, 1e-6 * two.Area.SquareMillimetres);
        Assert.Equal(2 * one.PerimeterMillimetres, two.PerimeterMillimetres, 1e-6 * two.PerimeterMillimetres);
        Assert.Equal((double)(one.Deep * 2).Millimetres, (double)two.Deep.Millimetres, 0.002);
    });

    /// <summary>The circle around covers more, the one inside less; the box around it, too (area of a circle: π·D²/4).</summary>
    [Fact]
    public void The_circles_around_and_inside_hold_the_area_between_them() => Any.Where(s => s is not SignShape).Sample(shape =>
    {
        var hair = 1 + 1e-9;
        Assert.True(Math.PI * shape.Inside * shape.Inside / 4 <= shape.Area.SquareMillimetres * hair);
        Assert.True(shape.Area.SquareMillimetres <= Math.PI * shape.Around * shape.Around / 4 * hair);
        Assert.True(shape.Area.SquareMillimetres <= (double)(shape.Wide.Millimetres * shape.Deep.Millimetres) * hair);
    });

    /// <summary>
    /// Area of petal and heart counted on a raster of points, grown by 6 mm with round corners: a point counts if a disc of that size around
    /// it meets the outline. The heart's tip is sharp in the product, so a square less a quarter disc is added (t²·(1 − π/4)).
    /// </summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Notches_fill_as_a_raster_counts_them(bool petal)
    {
        const decimal thick = 6;
        const double t = 6;
        Shape shape = petal ? new Petal(Mm(200)) : new Heart(Mm(200));
        var counted = Raster(petal ? (x, y) => ToPetal(x, y, 200) : (x, y) => ToHeart(x, y, 200), t) + (petal ? 0 : t * t * (1 - (Math.PI / 4)));
        Assert.Equal(counted, shape.GrownBy(Mm(thick)).SquareMillimetres, counted * 0.0005);
    }

    /// <summary>Area of the template by hand: 8 and 0 in a box of 6 x 10 units, 8 with two holes of 2 x 2, 0 with one of 2 x 6; 1 a bar of 2 x 10.</summary>
    [Theory]
    [InlineData("8", 52)]
    [InlineData("0", 48)]
    [InlineData("1", 20)]
    [InlineData("L", 28)]
    [InlineData("T", 28)]
    public void A_sign_has_the_area_of_its_bars(string sign, double units)
    {
        var shape = new SignShape(sign, Mm(300));
        Assert.Equal(units * 30 * 30, shape.Area.SquareMillimetres, 1e-6);
        Assert.Equal(1 - (units * 900 / shape.Slab.Area.SquareMillimetres), shape.LeftOver, 1e-12);
    }

    /// <summary>Coat around an 8: outer sides 2·(6+10), holes 2·4·2 units; corners: four out, eight in.</summary>
    [Fact]
    public void Holes_are_coated_inside()
    {
        var eight = new SignShape("8", Mm(300));
        Assert.Equal(48 * 30, eight.PerimeterMillimetres, 1e-9);
        Assert.Equal((52 * 900) + (48 * 30 * 7) + ((4 - 8) * 49), eight.GrownBy(Mm(7)).SquareMillimetres, 1e-6);
    }

    [Fact]
    public void Every_template_runs_the_right_way_and_is_inside_its_slab() => Assert.All(Signs.Known, sign =>
    {
        var shape = new SignShape(sign, Mm(300));
        Assert.InRange(shape.LeftOver, 0, 0.65);
        Assert.True(shape.GrownBy(Mm(5)).SquareMillimetres > shape.Area.SquareMillimetres);
        Assert.All(Signs.Of(sign)!.SelectMany(l => l), c => Assert.True(c.X >= 0 && c.Y is >= 0 and <= Signs.High));
    });

    [Fact]
    public void Outlines_that_are_no_cake_are_named_with_what_to_do()
    {
        Assert.Equal(2, OutlineChecks.Of(new Outline(OutlineKind.Petal, Mm(10), Lobes: 7), "Tier 1").Count());
        Assert.Contains("depth", Assert.Single(OutlineChecks.Of(new Outline(OutlineKind.Rectangle, Mm(200)), "Tier 1")).Sentence, StringComparison.Ordinal);
        Assert.Contains("template", Assert.Single(OutlineChecks.Of(new Outline(OutlineKind.Sign, Mm(200), Sign: "é"), "Tier 1")).Sentence, StringComparison.Ordinal);
        Assert.Single(OutlineChecks.Of(new Outline(OutlineKind.Round, Mm(2000)), "Tier 1"));
        Assert.Empty(Enum.GetValues<OutlineKind>().SelectMany(k => OutlineChecks.Of(new Outline(k, Mm(200), Mm(300), 8, "7"), "Tier 1")));
    }

    private static Shape Named(OutlineKind kind, decimal mm) => new Outline(kind, Mm(mm), Mm(mm * 1.5m), 8, "R").ToShape();

    private static Length Mm(decimal mm) => Length.FromMillimetres(mm);

    private static double Raster(Func<double, double, double> distance, double t)
    {
        const double step = 0.25;
        var count = 0;
        for (var x = -130.0; x < 130; x += step)
        {
            for (var y = -130.0; y < 130; y += step)
            {
                count += distance(x, y) <= t ? 1 : 0;
            }
        }

        return count * step * step;
    }

    // Distance to a petal: the nearest of its polygon and its discs.
    private static double ToPetal(double x, double y, double across)
    {
        const int n = 8;
        var side = across / (1 + (1 / Math.Tan(Math.PI / n)));
        var apothem = side / (2 * Math.Tan(Math.PI / n));
        var toDiscs = Enumerable.Range(0, n).Min(k => Distance(x, y, apothem * Math.Cos(2 * Math.PI * k / n), apothem * Math.Sin(2 * Math.PI * k / n)) - (side / 2));
        var beyondPolygon = Enumerable.Range(0, n).Max(k => (x * Math.Cos(2 * Math.PI * k / n)) + (y * Math.Sin(2 * Math.PI * k / n)) - apothem);
        return Math.Min(toDiscs, beyondPolygon <= 0 ? 0 : double.MaxValue);
    }

    // Distance to a heart: a square with its cleft corner near the middle, and two discs.
    private static double ToHeart(double x, double y, double width)
    {
        var a = width / (1 + (1 / Math.Sqrt(2)));
        var (u, v) = (x + (a / 3), y + (a / 3));
        var (outX, outY) = (Math.Max(0, Math.Max(-u, u - a)), Math.Max(0, Math.Max(-v, v - a)));
        return Math.Min(Math.Sqrt((outX * outX) + (outY * outY)), Math.Min(Distance(u, v, a / 2, 0), Distance(u, v, 0, a / 2)) - (a / 2));
    }

    private static double Distance(double x, double y, double toX, double toY) => Math.Sqrt(((x - toX) * (x - toX)) + ((y - toY) * (y - toY)));
}
