namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;
using static System.FormattableString;

/// <summary>What is wrong with a shop's own figures, so that no sheet can be worked out by them.</summary>
public static class FigureChecks
{
    /// <summary>The lightest and the heaviest that anything on a cake is, g/mL: foam 0.01, sugar syrup 1.5 (from memory).</summary>
    public static readonly (double Least, double Most) Densities = (0.01, 1.5);

    /// <summary>Every problem; empty if sheets can be worked out.</summary>
    public static IReadOnlyList<Problem> Of(CakeFigures figures) =>
    [
        .. Share(figures.Fill, "Fill", zero: false, "0.5 is usual."),
        .. Share(figures.KeptBackShare, "Kept back", zero: true, "0.05 to 0.10 is usual."),
        .. Share(figures.PetalShare, "Petals", zero: false, "0.65 to 0.83 is in charts."),
        .. figures.PanDepths.Count > 0 && figures.PanDepths.All(d => d.Millimetres > 0) ? [] : new[] { new Problem("Pans", Invariant($"{figures.PanDepths.Count} depths"), "A shop has pans, each deeper than nothing.", "Give the depth of your pans.") },
        .. Thickness(figures.FillingThickness, "Filling", 30, "6 to 10 mm is usual."),
        .. Thickness(figures.CrumbThickness, "Crumb coat", 10, "1.2 to 3 mm is usual."),
        .. Thickness(figures.CoatThickness, "Final coat", 30, "3 to 6 mm is usual."),
        .. Thickness(figures.CutShort, "Supports cut short", 2, "0 to 2 mm is usual."),
    ];

    /// <summary>
    /// A density as somebody typed it, before it becomes a <see cref="Density"/>: null if it may stand. Zero, less, and what is no number or
    /// heavier than anything on a cake are named.
    /// </summary>
    /// <param name="where">The field, as it is called on screen.</param>
    public static Problem? OfDensity(double gramsPerMillilitre, string where) => gramsPerMillilitre >= Densities.Least && gramsPerMillilitre <= Densities.Most ? null
        : new Problem(where, Invariant($"{gramsPerMillilitre:0.###} g/mL"), Invariant($"Between {Densities.Least} and {Densities.Most} g in a millilitre is what cakes are made of."), "Weigh a level cup of it, in grams, and divide by 237.");

    private static IEnumerable<Problem> Share(double share, string where, bool zero, string fix) => share <= 1 && (zero ? share >= 0 : share > 0) ? []
        : [new Problem(where, Invariant($"{share:0.###}"), zero ? "This is a share from 0 to 1." : "This is a share above 0 and at most 1.", fix)];

    private static IEnumerable<Problem> Thickness(Length thickness, string where, int most, string fix) => thickness.Millimetres <= most ? []
        : [new Problem(where, Invariant($"{thickness.Millimetres:0.#} mm"), Invariant($"It is {most} mm at most."), fix)];
}
