namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;

/// <summary>Half of a round: two of such pans bake a tier that no level of the oven takes whole.</summary>
/// <param name="Diameter">Of the whole round; the straight side.</param>
public sealed record HalfRound(Length Diameter) : Shape
{
    private double Radius => Mm(Diameter) / 2;

    /// <summary>π·D²/8.</summary>
    public override Area Area => Area.FromSquareMillimetres(Math.PI * Radius * Radius / 2);

    /// <summary>D + π·D/2.</summary>
    public override double PerimeterMillimetres => Radius * (2 + Math.PI);

    /// <inheritdoc/>
    public override Length Wide => Diameter;

    /// <inheritdoc/>
    public override Length Deep => Diameter * 0.5m;

    /// <inheritdoc/>
    public override double Around => Mm(Diameter);

    /// <inheritdoc/>
    public override double Inside => Radius;

    /// <summary>Only for a ring inside it, where a circle's is near enough: how it grows is worked out exactly.</summary>
    protected override double Corners => Math.PI;

    /// <summary>The disc grown, cut off by the straight side moved out: half a disc and the strip up to that side.</summary>
    public override Area GrownBy(Length outwards)
    {
        var (r, t) = (Radius + Mm(outwards), Mm(outwards));
        return Area.FromSquareMillimetres((Math.PI * r * r / 2) + (t * Math.Sqrt((r * r) - (t * t))) + (r * r * Math.Asin(t / r)));
    }
}
