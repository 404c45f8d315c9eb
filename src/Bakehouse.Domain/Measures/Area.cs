namespace Bakehouse.Domain.Measures;

/// <summary>A computed area: double square millimetres. Zero or more, finite.</summary>
public readonly record struct Area : IComparable<Area>
{
    private Area(double squareMillimetres)
    {
        SquareMillimetres = double.IsFinite(squareMillimetres) && squareMillimetres >= 0
            ? squareMillimetres
            : throw new ArgumentOutOfRangeException(
                nameof(squareMillimetres), squareMillimetres, "An area is zero or more and finite.");
    }

    /// <summary>Square millimetres.</summary>
    public double SquareMillimetres { get; }

    /// <summary>Square centimetres.</summary>
    public double SquareCentimetres => SquareMillimetres / 100;

    /// <summary>Square inches (25.4 mm exactly, squared).</summary>
    public double SquareInches => SquareMillimetres / (25.4 * 25.4);

    /// <summary>An area of so many square millimetres.</summary>
    public static Area FromSquareMillimetres(double squareMillimetres) => new(squareMillimetres);

    /// <summary>Sum.</summary>
    public static Area operator +(Area a, Area b) => new(a.SquareMillimetres + b.SquareMillimetres);

    /// <summary>Difference; throws if it would be below zero.</summary>
    public static Area operator -(Area a, Area b) => new(a.SquareMillimetres - b.SquareMillimetres);

    /// <summary>A multiple.</summary>
    public static Area operator *(Area a, double times) => new(a.SquareMillimetres * times);

    /// <summary>The volume of a straight-sided body on this area.</summary>
    public static Volume operator *(Area foot, Length height) =>
        Volume.FromMillilitres(foot.SquareMillimetres * (double)height.Millimetres / 1000);

    /// <summary>Comparison.</summary>
    public static bool operator <(Area a, Area b) => a.SquareMillimetres < b.SquareMillimetres;

    /// <summary>Comparison.</summary>
    public static bool operator >(Area a, Area b) => a.SquareMillimetres > b.SquareMillimetres;

    /// <summary>Comparison.</summary>
    public static bool operator <=(Area a, Area b) => a.SquareMillimetres <= b.SquareMillimetres;

    /// <summary>Comparison.</summary>
    public static bool operator >=(Area a, Area b) => a.SquareMillimetres >= b.SquareMillimetres;

    /// <inheritdoc/>
    public int CompareTo(Area other) => SquareMillimetres.CompareTo(other.SquareMillimetres);
}
