namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;

/// <summary>A regular hexagon, named by its size from corner to corner, as the charts of its portions are (common practice, no source).</summary>
/// <param name="AcrossCorners">From corner to corner.</param>
public sealed record Hexagon(Length AcrossCorners) : Shape
{
    private double Across => Mm(AcrossCorners);

    /// <summary>3·√3/8·C².</summary>
    public override Area Area => Area.FromSquareMillimetres(3 * Math.Sqrt(3) / 8 * Across * Across);

    /// <summary>3·C.</summary>
    public override double PerimeterMillimetres => 3 * Across;

    /// <inheritdoc/>
    public override Length Wide => AcrossCorners;

    /// <summary>From flat to flat, to the thousandth of a millimetre.</summary>
    public override Length Deep => Length.FromMillimetres(Math.Round((decimal)Inside, 3));

    /// <inheritdoc/>
    public override double Around => Across;

    /// <summary>From flat to flat: √3/2·C.</summary>
    public override double Inside => Math.Sqrt(3) / 2 * Across;

    /// <inheritdoc/>
    protected override double Corners => 6 * Math.Tan(Math.PI / 6);
}
