namespace Bakehouse.Domain.Tests.Cakes;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Cakes.Drawing;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Testing;

/// <summary>
/// Outlines as they are drawn. Their areas, which are held against published values in <see cref="Checks.BuildCheckTests"/>, are found again
/// by the corners of the drawing (Gauss's formula), bare and coated.
/// </summary>
public sealed class ContourTests
{
    private static readonly Outline[] Others =
    [
        new(OutlineKind.Square, In(12)), new(OutlineKind.Rectangle, In(14), In(10)), new(OutlineKind.Hexagon, In(9)), new(OutlineKind.Petal, In(12)), new(OutlineKind.Petal, In(9), Lobes: 12),
        new(OutlineKind.Heart, In(8)), new(OutlineKind.HalfRound, In(12)), .. Signs.Known.Select(s => new Outline(OutlineKind.Sign, In(12), Sign: s)),
    ];

    [Fact]
    public void A_drawn_outline_has_its_area_and_size_bare_and_coated()
    {
        foreach (var (outline, coat) in Others.SelectMany(o => new[] { (o, 0), (o, 7) }))
        {
            var shape = outline.ToShape();
            var edge = Edge(outline, coat);
            var (area, wide, deep) = (edge.Loops.Sum(Twice) / 2, edge.Loops[0].Max(d => d.X) - edge.Loops[0].Min(d => d.X), edge.Loops[0].Max(d => d.Y) - edge.Loops[0].Min(d => d.Y));
            var exact = shape.GrownBy(Length.FromMillimetres(coat)).SquareMillimetres;
            Assert.True(Math.Abs(area - exact) < exact * 0.001, $"{shape}, coat {coat}: drawn {area:0}, exact {exact:0} mm²");
            if (coat == 0)
            {
                Assert.Equal((double)shape.Wide.Millimetres, wide, 0.2);
                Assert.Equal((double)shape.Deep.Millimetres, deep, 0.2);
            }
        }
    }

    /// <summary>By hand: a hexagon 9 in across stands on a corner left and right; two upright edges face the looker at a quarter of its width.</summary>
    [Fact]
    public void Upright_edges_that_face_the_looker_are_drawn()
    {
        Assert.Equal([-61.2, 61.2], Uprights(new(OutlineKind.Hexagon, In(9))).Select(x => Math.Round(x, 1)));
        Assert.Equal([0.0], Uprights(new(OutlineKind.Heart, In(8))).Select(x => Math.Round(x, 1)));
        Assert.Single(Uprights(new(OutlineKind.Square, In(8))));
        Assert.Equal(6, Uprights(null).Count);
    }

    /// <summary>By hand: an 8 is full across its middle, a 0 has a bar at each side: 2, then 2 open, then 2 of 6 units.</summary>
    [Fact]
    public void The_cut_meets_cake_only_where_there_is_some()
    {
        Assert.Equal([(0.0, 91.4)], Cut("8"));
        Assert.Equal([(30.5, 91.4)], Cut("0"));
    }

    [Fact]
    public void Free_height_lifts_a_tier_onto_pillars_and_foam_has_no_layers()
    {
        var order = Cakes.Good();
        var sheet = BuildSheet.Of(order with
        {
            Tiers = [order.Tiers[0], order.Tiers[1] with { Special = new TierSpecial { Separator = Length.FromMillimetres(60) } }, order.Tiers[2] with { Special = new TierSpecial { IsFalse = true } }],
        });
        var lines = CakeDrawing.HalfCut(sheet, true).Lines.OfType<Rectangle>().ToList();
        Assert.Equal((double)sheet.Height.Millimetres, lines.Where(r => r.Part == Part.Edge).Max(r => r.Y + r.Height), 6);
        Assert.Equal(8, lines.Count(r => r.Part == Part.Sponge));
        Assert.Single(lines, r => r.Part == Part.Foam);
        Assert.Contains(CakeDrawing.Outside(sheet, true).Lines.OfType<Rectangle>(), r => r.Part == Part.Dowel && Math.Abs(r.Height - 60) < 1e-6);
    }

    private static Length In(int inches) => Length.FromInches(inches);

    private static BuildSheet Sheet(Outline? outline, int coat = 7) => BuildSheet.Of(
        [Cakes.Tier(1, 1, 12) with { Diameter = outline?.Wide ?? In(12), Special = outline is null ? null : new TierSpecial { Outline = outline } }],
        Finish.Smooth,
        CakeFigures.Usual with { CrumbThickness = Length.FromMillimetres(coat * 0.3m), CoatThickness = Length.FromMillimetres(coat * 0.7m) });

    private static Patch Edge(Outline outline, int coat) => CakeDrawing.FromAbove(Sheet(outline, coat), true).Lines.OfType<Patch>().Single(p => p.Part == Part.Edge);

    private static List<double> Uprights(Outline? outline) => [.. CakeDrawing.Outside(Sheet(outline), true).Lines.OfType<Segment>().Where(s => s.Part == Part.Roundness).Select(s => s.X1)];

    private static IEnumerable<(double, double)> Cut(string sign) => CakeDrawing.HalfCut(Sheet(new(OutlineKind.Sign, In(12), Sign: sign)), true).Lines.OfType<Rectangle>()
        .Where(r => r.Part == Part.Sponge).Select(r => (Math.Round(r.X, 1), Math.Round(r.X + r.Width, 1))).Distinct();

    private static double Twice(IReadOnlyList<Dot> loop) => loop.Select((d, i) => (d, to: loop[(i + 1) % loop.Count])).Sum(e => (e.d.X * e.to.Y) - (e.to.X * e.d.Y));
}
