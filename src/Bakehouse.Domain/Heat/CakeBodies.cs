namespace Bakehouse.Domain.Heat;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Heat.Foods;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using static System.FormattableString;

/// <summary>What covers a tier.</summary>
public enum CoatState
{
    /// <summary>Nothing yet.</summary>
    Bare,

    /// <summary>The crumb coat.</summary>
    Crumb,

    /// <summary>The final coat of buttercream.</summary>
    Cream,

    /// <summary>A paste over the crumb coat.</summary>
    Paste,
}

/// <summary>
/// Tiers as bodies for <see cref="Conduction"/>. Rounds are discs, four-sided ones blocks, any other outline a disc of the same area: that has the
/// least outside, so it is never said to be cold or warm too soon.
/// </summary>
public static class CakeBodies
{
    /// <summary>Widest and highest tier that heat is worked out for: 80 cm across, 40 cm high.</summary>
    public static readonly (Length Across, Length High) Largest = (Length.FromCentimetres(80), Length.FromCentimetres(40));

    /// <summary>Everything about a tier that keeps heat from being worked out, in one list.</summary>
    public static IReadOnlyList<Problem> Problems(CakeTier tier, CakeFigures figures)
    {
        var built = BuildProblems.Of([tier], figures);
        return
        [
            .. built,
            .. built.Count > 0 ? Size("across", tier.Diameter, 5, Largest.Across)
                : new[] { tier.Shape.Wide, tier.Shape.Deep }.Distinct().SelectMany(l => Size("across", l, 5, Largest.Across)),
            .. Size("high", tier.Height, 2, Largest.High),
            .. tier.IsFalse ? [new Problem("tier", "foam", "Foam is never too warm: it is no cake.", "Ask for a tier of cake.")] : Array.Empty<Problem>(),
        ];
    }

    /// <summary>One bare layer of a tier, as it comes out of its pan.</summary>
    /// <param name="baked">How high it baked, where layers are split from it; null if each layer is baked by itself.</param>
    public static HeatBody Layer(CakeTier tier, CakeFigures figures, Length? baked = null)
    {
        var high = baked is { } whole ? Metres(whole) : Layers(tier, figures).Max();
        return new HeatBody([Slab(tier, high, 0, CakeMaterials.Crumb(tier.Sponge, figures))]);
    }

    /// <summary>A filled tier on its board.</summary>
    public static HeatBody Tier(CakeTier tier, CoatState coat, CakeFigures figures) => new(Slabs(tier, coat, figures)) { CoreAt = CoreOf(tier, figures) };

    /// <summary>Tiers on each other, the lowest first; its core is that of the lowest, which takes longest.</summary>
    /// <exception cref="ArgumentException">Not all of them are round.</exception>
    public static HeatBody Stack(IReadOnlyList<CakeTier> tiers, CoatState coat, CakeFigures figures) => tiers.Count > 1 && tiers.Any(t => t.Shape is not Round)
        ? throw new ArgumentException($"{tiers.Count} tiers, not all round: work out the largest by itself.", nameof(tiers))
        : new([.. tiers.SelectMany(t => Slabs(t, coat, figures))]) { CoreAt = CoreOf(tiers[0], figures) };

    /// <summary>m that a coat is thick.</summary>
    internal static double Thickness(CoatState coat, CakeFigures figures) => coat switch
    {
        CoatState.Bare => 0,
        CoatState.Crumb => Metres(figures.CrumbThickness),
        // A paste is rolled 4 mm thin (common practice, no source: 3 to 5 mm).
        CoatState.Paste => Metres(figures.CrumbThickness) + 0.004,
        _ => Metres(figures.CrumbThickness) + Metres(figures.CoatThickness),
    };

    private static IReadOnlyList<HeatSlab> Slabs(CakeTier tier, CoatState coat, CakeFigures figures)
    {
        var (thick, crumb) = (Thickness(coat, figures), CakeMaterials.Crumb(tier.Sponge, figures));
        var filling = CakeMaterials.Filling(tier.Filling, figures);
        var cover = coat == CoatState.Bare ? null : CakeMaterials.Coat(coat == CoatState.Paste, figures);
        HeatSlab Coated(double high, HeatMaterial of) => Slab(tier, high, thick, of) with { Coat = cover, CoatThickness = thick };
        List<HeatSlab> slabs = [Slab(tier, Metres(figures.BoardThickness), thick, BoardMaterials.Fibreboard(figures.BoardDensity.GramsPerMillilitre * 1000))];
        foreach (var layer in Layers(tier, figures))
        {
            if (slabs.Count > 1)
            {
                slabs.Add(Coated(Metres(figures.FillingThickness), filling));
            }

            slabs.Add(Coated(layer, crumb));
        }

        return cover is null ? slabs : [.. slabs, Slab(tier, thick, thick, cover)];
    }

    /// <summary>m of each layer of sponge.</summary>
    private static IReadOnlyList<double> Layers(CakeTier tier, CakeFigures figures)
    {
        if (tier.Special?.LayerHeights is { Count: > 0 } own)
        {
            return [.. own.Select(Metres)];
        }

        return [.. Enumerable.Repeat((Metres(tier.Height) - ((tier.Layers - 1) * Metres(figures.FillingThickness))) / tier.Layers, tier.Layers)];
    }

    private static double CoreOf(CakeTier tier, CakeFigures figures) => Metres(figures.BoardThickness) + (Metres(tier.Height) / 2);

    private static HeatSlab Slab(CakeTier tier, double high, double outwards, HeatMaterial of) => tier.Shape switch
    {
        Round round => new HeatSlab(high, (Metres(round.Diameter) / 2) + outwards, of),
        Cakes.Slab block => new HeatSlab(high, (Metres(block.Width) / 2) + outwards, of) { HalfDepth = (Metres(block.Depth) / 2) + outwards },
        var other => new HeatSlab(high, (Math.Sqrt(other.Area.SquareMillimetres / Math.PI) / 1000) + outwards, of),
    };

    private static IEnumerable<Problem> Size(string where, Length length, decimal leastCentimetres, Length most)
    {
        if (length.Centimetres < leastCentimetres || length > most)
        {
            yield return new Problem(
                where, Invariant($"{length.Centimetres:0.#} cm"), Invariant($"Heat is worked out for {leastCentimetres:0} to {most.Centimetres:0} cm."),
                "Look at the figure: inches and centimetres are easily mixed up.");
        }
    }

    private static double Metres(Length length) => (double)length.Millimetres / 1000;
}
