namespace Bakehouse.Domain.Tests.Cakes.Checks;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;

/// <summary>G: areas, volumes, scaling.</summary>
internal static class ShapeRows
{
    public static IReadOnlyList<(string, Action<CheckRow>)> All { get; } =
    [
        .. new[] { "G-R6x2", "G-R8x2", "G-R9x2", "G-R10x2", "G-R12x2", "G-R16x2", "G-R8x3", "G-R10x3" }.Select(id => (id, (Action<CheckRow>)(r => r.Holds(Pan(r).Brim.CubicInches)))),
        ("G-R8x2-ml", r => r.Holds(Pan(r).Brim.Millilitres)),
        ("G-R8x2-cup", r => r.Holds(Pan(r).Brim / KitchenMeasures.UsCup)),
        ("G-S8x2", r => r.Holds(new Pan(Slab.Square(In(r.In("side"))), In(r.In("depth"))).Brim.CubicInches)),
        ("G-HEX9c", r => r.Holds(new Hexagon(In(r.In("C"))).Area.SquareInches)),
        ("G-PET9n8-A", r => r.Holds(Petal(r).Area.SquareInches)),
        ("G-PET9n8-P", r => r.Holds(Petal(r).PerimeterMillimetres / 25.4)),
        ("G-PET12n8-P", r => r.Holds(Petal(r).PerimeterMillimetres / 25.4)),
        ("G-SC-8to10", r => r.Holds(Scale(r))),
        ("G-SC-8to6", r => r.Holds(Scale(r))),
        ("G-SC-8Rto8S", r => r.Holds(new Pan(new Round(In(r.In("D"))), In(2)).ScaleTo(new Pan(Slab.Square(In(r.In("a"))), In(2))))),
        ("G-SC-20to25x7.5", r => r.Holds(Metric(20, 5).ScaleTo(Metric(25, 7.5m)))),
        ("G-FILL-chart-min", r => r.Holds(ChartFill(r))),
        ("G-FILL-chart-max", r => r.Holds(ChartFill(r))),
        ("G-FILL-8-half", r => r.Holds(new Pan(new Round(In(8)), In(2)).Batter(r.In("fill")).Millilitres)),
    ];

    public static Length In(double inches) => Length.FromInches((decimal)inches);

    private static Pan Pan(CheckRow r) => new(new Round(In(r.In("D"))), In(r.In("depth")));

    private static Petal Petal(CheckRow r) => new(In(r.In("D")), (int)r.In("n"));

    private static double Scale(CheckRow r) => new Pan(new Round(In(r.In("D1"))), In(2)).ScaleTo(new Pan(new Round(In(r.In("D2"))), In(2)));

    private static Pan Metric(decimal across, decimal deep) => new(new Round(Length.FromCentimetres(across)), Length.FromCentimetres(deep));

    // "8x2 in round; chart 3 US cups": how full that is. The usual fill lies between the least and the most of the chart.
    private static double ChartFill(CheckRow r)
    {
        var fill = KitchenMeasures.UsCup * r.Given[^1] / new Pan(new Round(In(r.Given[0])), In(r.Given[1])).Brim;
        Assert.InRange(CakeFigures.Usual.Fill, CheckRow.Of("G-FILL-chart-min").Numbers[0], CheckRow.Of("G-FILL-chart-max").Numbers[0]);
        return fill;
    }
}
