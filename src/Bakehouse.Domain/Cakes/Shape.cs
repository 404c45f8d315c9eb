namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;

/// <summary>
/// The outline of a straight-sided tier or pan, seen from above. A convex outline grown by t on all sides has the area
/// A + P·t + K·t², where K is π for a circle and n·tan(π/n) for a regular polygon with sharp corners (Steiner's formula for
/// parallel curves). A new shape gives its area, its perimeter and K; coats, pans and portions by area follow.
/// </summary>
public abstract record Shape
{
    /// <summary>Area inside the outline.</summary>
    public abstract Area Area { get; }

    /// <summary>Length of the outline in millimetres.</summary>
    public abstract double PerimeterMillimetres { get; }

    /// <summary>K: what the corners add, times t².</summary>
    protected abstract double Corners { get; }

    /// <summary>The area inside the outline when it is moved outwards by so much on all sides.</summary>
    public Area GrownBy(Length outwards)
    {
        var t = (double)outwards.Millimetres;
        return Area + Area.FromSquareMillimetres((PerimeterMillimetres * t) + (Corners * t * t));
    }
}

/// <summary>A circle.</summary>
/// <param name="Diameter">Across.</param>
public sealed record Round(Length Diameter) : Shape
{
    private double Across => (double)Diameter.Millimetres;

    /// <summary>π·D²/4.</summary>
    public override Area Area => Area.FromSquareMillimetres(Math.PI * Across * Across / 4);

    /// <summary>π·D.</summary>
    public override double PerimeterMillimetres => Math.PI * Across;

    /// <inheritdoc/>
    protected override double Corners => Math.PI;
}
