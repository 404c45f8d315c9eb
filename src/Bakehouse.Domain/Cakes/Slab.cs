namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;

/// <summary>A rectangle with sharp corners: slabs, squares.</summary>
/// <param name="Width">From side to side.</param>
/// <param name="Depth">From front to back.</param>
public sealed record Slab(Length Width, Length Depth) : Shape
{
    /// <summary>A square of that side.</summary>
    public static Slab Square(Length side) => new(side, side);

    /// <summary>a·b.</summary>
    public override Area Area => Area.FromSquareMillimetres(Mm(Width) * Mm(Depth));

    /// <summary>2·(a + b).</summary>
    public override double PerimeterMillimetres => 2 * (Mm(Width) + Mm(Depth));

    /// <inheritdoc/>
    public override Length Wide => Width;

    /// <inheritdoc/>
    public override Length Deep => Depth;

    /// <summary>The diagonal.</summary>
    public override double Around => Math.Sqrt((Mm(Width) * Mm(Width)) + (Mm(Depth) * Mm(Depth)));

    /// <inheritdoc/>
    public override double Inside => Math.Min(Mm(Width), Mm(Depth));

    /// <summary>Four corners of a quarter turn.</summary>
    protected override double Corners => 4;
}
