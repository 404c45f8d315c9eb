namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Orders;
using static System.FormattableString;

/// <summary>What keeps what is special about a tier from fitting it.</summary>
internal static class SpecialProblems
{
    /// <summary>Free height on pillars, cm: higher ones are furniture (common practice, no source).</summary>
    private const int MostApart = 30;

    public static IEnumerable<Problem> Of(CakeTier tier, TierSpecial special, string where, CakeFigures figures)
    {
        var outline = special.Outline is { } o ? OutlineChecks.Of(o, where).ToList() : [];
        foreach (var problem in outline.Concat(Layers(tier, special, where, figures)).Concat(Coats(special, where)))
        {
            yield return problem;
        }

        if (outline.Count > 0)
        {
            yield break;
        }

        if (special.Outline is { } named && named.Wide != tier.Diameter)
        {
            yield return new Problem(where, Invariant($"{named.Wide.Inches:0.##} in"), Invariant($"The outline is not as wide as the tier ({tier.Diameter.Inches:0.##} in)."), "Give both the same size.");
        }

        if (special.Dam.Millimetres > 0 && (double)special.Dam.Millimetres >= tier.Shape.Inside / 2)
        {
            yield return new Problem(where, Invariant($"{special.Dam.Millimetres:0.#} mm"), "The ring around the filling leaves no room for it.", "Make the ring narrower.");
        }

        if (tier.Shape is SignShape sign && figures.CrumbThickness + figures.CoatThickness >= sign.ThickestCoat)
        {
            yield return new Problem(where, sign.Sign, Invariant($"Coats of {(figures.CrumbThickness + figures.CoatThickness).Millimetres:0.#} mm would close its openings."), "Make the sign higher.");
        }
    }

    private static IEnumerable<Problem> Layers(CakeTier tier, TierSpecial special, string where, CakeFigures figures)
    {
        if (special.LayerHeights.Count == 0)
        {
            yield break;
        }

        if (special.LayerHeights.Count != tier.Layers)
        {
            yield return new Problem(where, Invariant($"{special.LayerHeights.Count} heights"), Invariant($"There are {tier.Layers} layers."), "Give one height for each layer.");
        }

        if (special.LayerHeights.Any(l => l < BuildProblems.ThinnestLayer))
        {
            yield return new Problem(where, Invariant($"{special.LayerHeights.Min().Millimetres:0.#} mm"), Invariant($"A layer is {BuildProblems.ThinnestLayer.Millimetres:0} mm at least."), "Make it thicker.");
        }

        var made = special.LayerHeights.Aggregate(figures.FillingThickness * (special.LayerHeights.Count - 1), (sum, l) => sum + l);
        if (Math.Abs(made.Millimetres - tier.Height.Millimetres) > 0.01m)
        {
            yield return new Problem(where, Invariant($"{made.Centimetres:0.##} cm"), Invariant($"The layers and their fillings don't make the tier's {tier.Height.Centimetres:0.##} cm."), "Change the layers or the height.");
        }
    }

    private static IEnumerable<Problem> Coats(TierSpecial special, string where)
    {
        if (special.Paste is { } paste && paste.Millimetres is < 1 or > 10)
        {
            yield return new Problem(where, Invariant($"{special.Paste!.Value.Millimetres:0.#} mm"), "Sugar paste is rolled 1 to 10 mm thick; 3 to 5 are usual.", "Choose a thickness between.");
        }

        if (special.Separator.Centimetres > MostApart)
        {
            yield return new Problem(where, Invariant($"{special.Separator.Centimetres:0.#} cm"), Invariant($"Pillars are at most {MostApart} cm high."), "Make them shorter.");
        }

        if (special.FootBead.Centimetres > 5 || special.TopBead.Centimetres > 5)
        {
            yield return new Problem(where, Invariant($"{Math.Max(special.FootBead.Centimetres, special.TopBead.Centimetres):0.#} cm"), "A bead is at most 5 cm across.", "Make it thinner.");
        }
    }
}
