namespace Bakehouse.Domain.Measures;

/// <summary>
/// A computed volume: double millilitres (1 mL = 1 cm³). Zero or more, finite.
/// One cubic inch is 16.387064 mL exactly (25.4 mm cubed).
/// </summary>
public readonly record struct Volume : IComparable<Volume>
{
    private const double MillilitresInCubicInch = 16.387064;

    private Volume(double millilitres)
    {
        Millilitres = double.IsFinite(millilitres) && millilitres >= 0
            ? millilitres
            : throw new ArgumentOutOfRangeException(
                nameof(millilitres), millilitres, "A volume is zero or more and finite.");
    }

    /// <summary>Nothing at all.</summary>
    public static Volume Zero => default;

    /// <summary>Millilitres.</summary>
    public double Millilitres { get; }

    /// <summary>Litres.</summary>
    public double Litres => Millilitres / 1000;

    /// <summary>Cubic inches.</summary>
    public double CubicInches => Millilitres / MillilitresInCubicInch;

    /// <summary>A volume of so many millilitres.</summary>
    public static Volume FromMillilitres(double millilitres) => new(millilitres);

    /// <summary>A volume of so many litres.</summary>
    public static Volume FromLitres(double litres) => new(litres * 1000);

    /// <summary>A volume of so many cubic inches.</summary>
    public static Volume FromCubicInches(double cubicInches) => new(cubicInches * MillilitresInCubicInch);

    /// <summary>The volumes together.</summary>
    public static Volume Sum(IEnumerable<Volume> volumes) => volumes.Aggregate(Zero, (sum, next) => sum + next);

    /// <summary>Sum.</summary>
    public static Volume operator +(Volume a, Volume b) => new(a.Millilitres + b.Millilitres);

    /// <summary>Difference; throws if it would be below zero.</summary>
    public static Volume operator -(Volume a, Volume b) => new(a.Millilitres - b.Millilitres);

    /// <summary>A multiple.</summary>
    public static Volume operator *(Volume a, double times) => new(a.Millilitres * times);

    /// <summary>How many times <paramref name="b"/> goes into <paramref name="a"/>.</summary>
    public static double operator /(Volume a, Volume b) => a.Millilitres / b.Millilitres;

    /// <summary>Comparison.</summary>
    public static bool operator <(Volume a, Volume b) => a.Millilitres < b.Millilitres;

    /// <summary>Comparison.</summary>
    public static bool operator >(Volume a, Volume b) => a.Millilitres > b.Millilitres;

    /// <summary>Comparison.</summary>
    public static bool operator <=(Volume a, Volume b) => a.Millilitres <= b.Millilitres;

    /// <summary>Comparison.</summary>
    public static bool operator >=(Volume a, Volume b) => a.Millilitres >= b.Millilitres;

    /// <inheritdoc/>
    public int CompareTo(Volume other) => Millilitres.CompareTo(other.Millilitres);
}
