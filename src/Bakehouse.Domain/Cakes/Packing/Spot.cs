namespace Bakehouse.Domain.Cakes.Packing;

/// <summary>Where the middle of a round thing stands: millimetres from the left and from the front.</summary>
public readonly record struct Spot(double X, double Y)
{
    /// <summary>Millimetres to another.</summary>
    public double To(Spot other) => Math.Sqrt(((X - other.X) * (X - other.X)) + ((Y - other.Y) * (Y - other.Y)));
}
