namespace Bakehouse.Domain.Measures;

/// <summary>
/// A declared length: decimal millimetres, exact, equal when equal (8 in and 203.2 mm are the same length).
/// Zero or more. One inch is 25.4 mm exactly (international yard and pound agreement, 1959).
/// </summary>
public readonly record struct Length : IComparable<Length>
{
    private Length(decimal millimetres)
    {
        if (millimetres < 0)
        {
            throw new ArgumentOutOfRangeException(nameof(millimetres), millimetres, "A length is zero or more.");
        }

        Millimetres = millimetres;
    }

    /// <summary>Millimetres.</summary>
    public decimal Millimetres { get; }

    /// <summary>Centimetres.</summary>
    public decimal Centimetres => Millimetres / 10;

    /// <summary>Inches.</summary>
    public decimal Inches => Millimetres / 25.4m;

    /// <summary>A length of so many millimetres.</summary>
    public static Length FromMillimetres(decimal millimetres) => new(millimetres);

    /// <summary>A length of so many centimetres.</summary>
    public static Length FromCentimetres(decimal centimetres) => new(centimetres * 10);

    /// <summary>A length of so many inches.</summary>
    public static Length FromInches(decimal inches) => new(inches * 25.4m);

    /// <summary>Sum.</summary>
    public static Length operator +(Length a, Length b) => new(a.Millimetres + b.Millimetres);

    /// <summary>Difference; throws if it would be below zero.</summary>
    public static Length operator -(Length a, Length b) => new(a.Millimetres - b.Millimetres);

    /// <summary>A multiple.</summary>
    public static Length operator *(Length a, decimal times) => new(a.Millimetres * times);

    /// <summary>Comparison.</summary>
    public static bool operator <(Length a, Length b) => a.Millimetres < b.Millimetres;

    /// <summary>Comparison.</summary>
    public static bool operator >(Length a, Length b) => a.Millimetres > b.Millimetres;

    /// <summary>Comparison.</summary>
    public static bool operator <=(Length a, Length b) => a.Millimetres <= b.Millimetres;

    /// <summary>Comparison.</summary>
    public static bool operator >=(Length a, Length b) => a.Millimetres >= b.Millimetres;

    /// <inheritdoc/>
    public int CompareTo(Length other) => Millimetres.CompareTo(other.Millimetres);
}
