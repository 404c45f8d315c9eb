namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;

/// <summary>
/// Portions with coffee as charts print them for outlines that are not round: cautious ones, whose large sizes give less than their area
/// (common practice, no source). Between printed sizes the area counts, never fewer than the smaller nor more than the larger one.
/// </summary>
internal static class OutlineChart
{
    private static readonly (int Inches, int Portions)[] Petals = [(6, 8), (9, 18), (12, 40), (15, 64)];

    private static readonly (int Inches, int Portions)[] Hexagons = [(6, 12), (9, 26), (12, 40), (15, 70)];

    /// <summary>Portions by the chart, or null for an outline that no chart prints.</summary>
    /// <param name="byArea">What its area gives, with the figures' share for petals.</param>
    public static int? Of(Shape shape, Slice slice, int byArea) => shape switch
    {
        Petal => Within(Petals, shape.Wide, slice, byArea),
        Hexagon => Within(Hexagons, shape.Wide, slice, byArea),
        _ => null,
    };

    private static int Within((int Inches, int Portions)[] chart, Length size, Slice slice, int byArea)
    {
        // Printed for slices of 2 in²; a larger slice gives as many fewer.
        var share = 2 / (slice.Width.Inches * slice.Depth.Inches);
        var below = chart.LastOrDefault(r => r.Inches <= size.Inches);
        var above = chart.FirstOrDefault(r => r.Inches >= size.Inches);
        return Math.Clamp(byArea, (int)(below.Portions * share), above.Inches == 0 ? int.MaxValue : (int)(above.Portions * share));
    }
}
