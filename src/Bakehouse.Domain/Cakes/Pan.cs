namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;

/// <summary>A straight-sided baking pan.</summary>
/// <param name="Shape">Its outline inside.</param>
/// <param name="Depth">Inside depth.</param>
public sealed record Pan(Shape Shape, Length Depth)
{
    /// <summary>Volume up to the brim.</summary>
    public Volume Brim => Shape.Area * Depth;

    /// <summary>Batter that fills it to that fraction of the brim, above 0 to 1.</summary>
    public Volume Batter(double fill) => fill is > 0 and <= 1
        ? Brim * fill
        : throw new ArgumentOutOfRangeException(nameof(fill), fill, "A pan is filled by more than 0 and at most 1 of its brim.");

    /// <summary>How much of this pan's recipe another pan takes: the ratio of the volumes to the brim.</summary>
    public double ScaleTo(Pan other) => other.Brim / Brim;
}
