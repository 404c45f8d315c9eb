namespace Bakehouse.Domain.Tests.Cakes;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;

/// <summary>A square: shows that a new shape needs three formulas and nothing else.</summary>
public sealed record Square(Length Side) : Shape
{
    private double Along => (double)Side.Millimetres;

    public override Area Area => Area.FromSquareMillimetres(Along * Along);

    public override double PerimeterMillimetres => 4 * Along;

    protected override double Corners => 4 * Math.Tan(Math.PI / 4);
}

/// <summary>A regular hexagon, named by its size from corner to corner.</summary>
public sealed record Hexagon(Length AcrossCorners) : Shape
{
    private double Across => (double)AcrossCorners.Millimetres;

    public override Area Area => Area.FromSquareMillimetres(3 * Math.Sqrt(3) / 8 * Across * Across);

    public override double PerimeterMillimetres => 3 * Across;

    protected override double Corners => 6 * Math.Tan(Math.PI / 6);
}
