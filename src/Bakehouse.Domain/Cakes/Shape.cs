namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;

/// <summary>
/// The outline of a straight-sided tier or pan, seen from above. An outline of straight sides and arcs, moved outwards by t on all sides
/// with sharp corners, has the area A + P·t + K·t², where K adds up tan(turn/2) over the corners and turn/2 over the arcs (π for a circle,
/// n·tan(π/n) for a regular polygon; Steiner's formula for parallel curves). Where arcs meet in a notch the outline says its own.
/// A new shape gives its area, its perimeter and K; coats, pans and portions by area follow.
/// </summary>
public abstract record Shape
{
    /// <summary>Area inside the outline.</summary>
    public abstract Area Area { get; }

    /// <summary>Length of the outline in millimetres.</summary>
    public abstract double PerimeterMillimetres { get; }

    /// <summary>From side to side where it is widest: a square box and a round board go by <see cref="Around"/>.</summary>
    public abstract Length Wide { get; }

    /// <summary>From front to back where it is deepest.</summary>
    public virtual Length Deep => Wide;

    /// <summary>Diameter of the smallest circle around it, in millimetres, or a little more; for a round board beneath.</summary>
    public abstract double Around { get; }

    /// <summary>Diameter of the largest circle inside it, in millimetres, or a little less; supports stand in it.</summary>
    public abstract double Inside { get; }

    /// <summary>K: what the corners add, times t².</summary>
    protected abstract double Corners { get; }

    /// <summary>The area inside the outline when it is moved outwards by so much on all sides.</summary>
    public virtual Area GrownBy(Length outwards)
    {
        var t = (double)outwards.Millimetres;
        return Area + Area.FromSquareMillimetres((PerimeterMillimetres * t) + (Corners * t * t));
    }

    /// <summary>Sides and top of a tier of that height: what is coated and decorated, without thickness.</summary>
    public Area Outside(Length height) => Area + Area.FromSquareMillimetres(PerimeterMillimetres * (double)height.Millimetres);

    /// <summary>
    /// A ring of that width along the inside of the outline: P·w − K·w², all of the area if it is wider. Exact for rounds and straight sides;
    /// in the notches of petals, hearts and signs a little of it runs together.
    /// </summary>
    public Area RingInside(Length width)
    {
        var w = Math.Min(Mm(width), Inside / 2);
        return Area.FromSquareMillimetres(Math.Clamp((PerimeterMillimetres * w) - (Corners * w * w), 0, Area.SquareMillimetres));
    }

    /// <summary>The outline of the pan: its own as a rule; larger where it is cut out afterwards.</summary>
    public virtual Shape BakedIn() => this;

    /// <summary>A declared length as a double, in millimetres.</summary>
    protected static double Mm(Length length) => (double)length.Millimetres;
}

/// <summary>A circle.</summary>
/// <param name="Diameter">Across.</param>
public sealed record Round(Length Diameter) : Shape
{
    private double Across => Mm(Diameter);

    /// <summary>π·D²/4.</summary>
    public override Area Area => Area.FromSquareMillimetres(Math.PI * Across * Across / 4);

    /// <summary>π·D.</summary>
    public override double PerimeterMillimetres => Math.PI * Across;

    /// <inheritdoc/>
    public override Length Wide => Diameter;

    /// <inheritdoc/>
    public override double Around => Across;

    /// <inheritdoc/>
    public override double Inside => Across;

    /// <inheritdoc/>
    protected override double Corners => Math.PI;
}
