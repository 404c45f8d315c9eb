namespace Bakehouse.Domain.Measures;

/// <summary>
/// A declared mass: decimal grams, exact, equal when equal. Zero or more.
/// One ounce is 28.349523125 g exactly (international yard and pound agreement, 1959).
/// </summary>
public readonly record struct Mass : IComparable<Mass>
{
    /// <summary>Grams in an ounce, exact.</summary>
    public const decimal GramsInOunce = 28.349523125m;

    private Mass(decimal grams)
    {
        if (grams < 0)
        {
            throw new ArgumentOutOfRangeException(nameof(grams), grams, "A mass is zero or more.");
        }

        Grams = grams;
    }

    /// <summary>Grams.</summary>
    public decimal Grams { get; }

    /// <summary>Kilograms.</summary>
    public decimal Kilograms => Grams / 1000;

    /// <summary>Avoirdupois ounces.</summary>
    public decimal Ounces => Grams / GramsInOunce;

    /// <summary>A mass of so many avoirdupois ounces.</summary>
    public static Mass FromOunces(decimal ounces) => new(ounces * GramsInOunce);

    /// <summary>A mass of so many grams.</summary>
    public static Mass FromGrams(decimal grams) => new(grams);

    /// <summary>A mass of so many kilograms.</summary>
    public static Mass FromKilograms(decimal kilograms) => new(kilograms * 1000);

    /// <summary>Sum.</summary>
    public static Mass operator +(Mass a, Mass b) => new(a.Grams + b.Grams);

    /// <summary>Difference; throws if it would be below zero.</summary>
    public static Mass operator -(Mass a, Mass b) => new(a.Grams - b.Grams);

    /// <summary>A multiple.</summary>
    public static Mass operator *(Mass a, decimal times) => new(a.Grams * times);

    /// <summary>Comparison.</summary>
    public static bool operator <(Mass a, Mass b) => a.Grams < b.Grams;

    /// <summary>Comparison.</summary>
    public static bool operator >(Mass a, Mass b) => a.Grams > b.Grams;

    /// <summary>Comparison.</summary>
    public static bool operator <=(Mass a, Mass b) => a.Grams <= b.Grams;

    /// <summary>Comparison.</summary>
    public static bool operator >=(Mass a, Mass b) => a.Grams >= b.Grams;

    /// <inheritdoc/>
    public int CompareTo(Mass other) => Grams.CompareTo(other.Grams);
}
