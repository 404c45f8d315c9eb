namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;

/// <summary>What makes a tier other than a plain round one of equal layers. Everything left out is as usual.</summary>
public sealed record TierSpecial
{
    /// <summary>From above; null for a round of the tier's diameter. Its <see cref="Outline.Wide"/> is the tier's diameter.</summary>
    public Outline? Outline { get; init; }

    /// <summary>Each layer from the foot up; empty for equal ones. With the fillings they make the tier's height.</summary>
    public IReadOnlyList<Length> LayerHeights { get; init; } = [];

    /// <summary>A false tier: foam, coated like the others, nobody eats it.</summary>
    public bool IsFalse { get; init; }

    /// <summary>Free height below it, on pillars or a separator; zero if it stands on the tier below.</summary>
    public Length Separator { get; init; }

    /// <summary>Width of a ring of buttercream that holds soft filling in; zero for none. A third to half an inch is usual (common practice, no source).</summary>
    public Length Dam { get; init; }

    /// <summary>Thickness of rolled sugar paste instead of the final coat; null for none. 3 to 5 mm (common practice, no source).</summary>
    public Length? Paste { get; init; }

    /// <summary>Bead piped around the foot, across; zero for none.</summary>
    public Length FootBead { get; init; }

    /// <summary>Bead piped around the top edge, across; zero for none.</summary>
    public Length TopBead { get; init; }

    /// <summary>How far a drip runs down the side; zero for none.</summary>
    public Length Drip { get; init; }

    /// <summary>Not a tier at all, but a batch of cupcakes that stands beside the cake; null for a tier. Nothing else is special about it then.</summary>
    public Cupcakes? Cupcakes { get; init; }
}
