namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;

/// <summary>
/// A petal: half-discs on the sides of a regular polygon, named by its size from tip to opposite tip. Side of the polygon
/// s = D ÷ (1 + cot(π/n)).
/// </summary>
/// <param name="TipToTip">From the middle of a lobe's rim to the one opposite.</param>
/// <param name="Lobes">Even, 4 to 16 (<see cref="OutlineChecks"/>).</param>
public sealed record Petal(Length TipToTip, int Lobes = Petal.UsualLobes) : Shape
{
    /// <summary>Lobes of the pans in use: 8 (common practice, no source).</summary>
    public const int UsualLobes = 8;

    private double Half => Math.PI / Lobes;

    private double Side => Mm(TipToTip) / (1 + (1 / Math.Tan(Half)));

    /// <summary>From the middle of the petal to the middle of a side.</summary>
    private double ToSide => Side / (2 * Math.Tan(Half));

    /// <summary>n·s²/(4·tan(π/n)) + n·π·s²/8.</summary>
    public override Area Area => Area.FromSquareMillimetres((Lobes * Side * Side / (4 * Math.Tan(Half))) + (Lobes * Math.PI * Side * Side / 8));

    /// <summary>n·π·s/2.</summary>
    public override double PerimeterMillimetres => Lobes * Math.PI * Side / 2;

    /// <inheritdoc/>
    public override Length Wide => TipToTip;

    /// <inheritdoc/>
    public override double Around => Mm(TipToTip);

    /// <summary>From notch to opposite notch.</summary>
    public override double Inside => Side / Math.Sin(Half);

    /// <summary>Only for a ring inside it, where a circle's is near enough: how it grows is worked out exactly.</summary>
    protected override double Corners => Math.PI;

    /// <summary>Discs around the middles of the sides, grown; two neighbours meet on the ray through the notch between them.</summary>
    public override Area GrownBy(Length outwards)
    {
        var radius = (Side / 2) + Mm(outwards);
        var across = ToSide * Math.Sin(Half);
        var notch = (ToSide * Math.Cos(Half)) + Math.Sqrt((radius * radius) - (across * across));
        var open = Math.Atan2(notch * Math.Sin(Half), (notch * Math.Cos(Half)) - ToSide);
        return Area.FromSquareMillimetres(Lobes * ((ToSide * notch * Math.Sin(Half)) + (open * radius * radius)));
    }
}
