namespace Bakehouse.Domain.Tests.Cakes.Checks;

using System.Globalization;
using System.Text.RegularExpressions;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using static Bakehouse.Domain.Tests.Cakes.Checks.ShapeRows;

/// <summary>S: portions by area, rings, cells, grids and charts.</summary>
internal static class PortionRows
{
    private static readonly Slice Coffee = Slice.Of(Cut.Coffee);

    public static IReadOnlyList<(string, Action<CheckRow>)> All { get; } =
    [
        ("S-R*-ring", r => r.Holds(Coffee.ByRings(In(r.Given[0])))),
        ("S-R*-area", r => r.Holds(Coffee.ByArea(new Round(In(r.Given[0]))))),
        ("S-R*-grid", r => r.Holds(Coffee.ByWholeCells(In(r.Given[0])))),
        ("S-R*-chart", r => r.Holds(PortionChart.Usual.Of(In(r.Given[0]), Cut.Coffee))),
        .. new[] { "1x1", "1.5x2", "2x2" }.Select(s => ($"S-R*-grid{s}", (Action<CheckRow>)(r => r.Holds(SliceOf(r).ByWholeCells(In(r.Given[0])))))),
        .. new[] { "1x2", "1.5x2" }.Select(s => ($"S-S*-{s}", (Action<CheckRow>)(r => r.Holds(SliceOf(r).ByGrid(Slab.Square(In(r.Given[0]))))))),
        ("S-REC*-1x2", r => r.Holds(SliceOf(r).ByGrid(new Slab(In(r.Given[0]), In(r.Given[1]))))),
        ("S-VOL-1x2x4", r => r.Holds((new Slab(Coffee.Width, Coffee.Depth).Area * In(4)).Millilitres)),
        ("S-TIERS-6-8-10", r => r.Holds(Charted(r))),
        ("S-TIERS-6-8-10-12", r => r.Holds(Charted(r))),
    ];

    private static Slice SliceOf(CheckRow r)
    {
        var size = Regex.Match(r.Id, @"([\d.]+)x([\d.]+)$");
        return new Slice(In(double.Parse(size.Groups[1].Value, CultureInfo.InvariantCulture)), In(double.Parse(size.Groups[2].Value, CultureInfo.InvariantCulture)));
    }

    // As a sheet counts them: whole tiers 4 in high, cut with coffee.
    private static double Charted(CheckRow r) => r.Given.Sum(d => TierPortions.Count(new Round(In(d)), In(4), Cut.Coffee, CakeFigures.Usual));
}
