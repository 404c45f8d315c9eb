namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;

/// <summary>How the portions of a tier are counted.</summary>
public enum PortionRule
{
    /// <summary>By the shop's printed chart.</summary>
    Chart,

    /// <summary>By the area of a slice.</summary>
    Area,

    /// <summary>By rings cut from the rim inwards.</summary>
    Rings,

    /// <summary>By whole cells of a straight grid.</summary>
    WholeCells,

    /// <summary>By straight cuts right across, each strip cut up.</summary>
    Strips,
}

/// <summary>A printed size.</summary>
/// <param name="Diameter">Of the round tier.</param>
/// <param name="Dessert">Slices of 1.5 × 2 in.</param>
/// <param name="Coffee">Slices of 1 × 2 in.</param>
public sealed record ChartRow(Length Diameter, int Dessert, int Coffee);

/// <summary>
/// Portions of round tiers as a shop prints them. A size between two printed ones counts by area, never fewer than the
/// smaller nor more than the larger one prints; below and above the chart likewise. So portions never fall as a tier grows.
/// </summary>
/// <param name="Rows">Smallest first, portions never falling.</param>
public sealed record PortionChart(IReadOnlyList<ChartRow> Rows)
{
    /// <summary>A tier lower than this gives half: its slices are cut double (common practice, no source).</summary>
    public static Length FullHeight { get; } = Length.FromCentimetres(7.5m);

    /// <summary>The chart that most shops print for rounds of 3 to 6 in height (common practice, no source).</summary>
    public static PortionChart Usual { get; } = new(
    [
        Row(6, 12, 12), Row(8, 20, 24), Row(9, 24, 32), Row(10, 28, 38), Row(12, 40, 56), Row(14, 63, 78),
    ]);

    /// <summary>Portions of a round tier by this chart.</summary>
    public int Of(Length diameter, Cut cut)
    {
        var below = Rows.LastOrDefault(r => r.Diameter <= diameter);
        var above = Rows.FirstOrDefault(r => r.Diameter >= diameter);
        var byArea = Slice.Of(cut).ByArea(new Round(diameter));
        return Math.Clamp(byArea, below is null ? 0 : Printed(below, cut), above is null ? int.MaxValue : Printed(above, cut));
    }

    /// <summary>Portions of a round tier by the shop's own slice or the rule of the figures; half, rounded down, if it is low.</summary>
    public static int Count(Length diameter, Length height, Cut cut, CakeFigures figures) => figures.OwnSlice(cut) is { } own ? Count(diameter, height, own, figures)
        : figures.PortionRule == PortionRule.Chart
        ? Halved(figures.Chart.Of(diameter, cut), height)
        : Count(diameter, height, Slice.Of(cut), figures);

    /// <summary>The same for any size of slice; charts print two, so for others they count by area.</summary>
    public static int Count(Length diameter, Length height, Slice slice, CakeFigures figures) => Halved(
        figures.PortionRule switch
        {
            PortionRule.Chart or PortionRule.Area => slice.ByArea(new Round(diameter)),
            PortionRule.Rings => slice.ByRings(diameter),
            PortionRule.WholeCells => slice.ByWholeCells(diameter),
            PortionRule.Strips => slice.ByStrips(diameter),
            _ => throw new ArgumentOutOfRangeException(nameof(figures), figures.PortionRule, "Unknown rule for portions."),
        },
        height);

    /// <summary>Half, rounded down, of a tier lower than <see cref="FullHeight"/>.</summary>
    internal static int Halved(int full, Length height) => height < FullHeight ? full / 2 : full;

    private static ChartRow Row(int inches, int dessert, int coffee) => new(Length.FromInches(inches), dessert, coffee);

    private static int Printed(ChartRow row, Cut cut) => cut == Cut.Coffee ? row.Coffee : row.Dessert;
}
