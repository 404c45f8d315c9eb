namespace Bakehouse.Domain.Measures;

/// <summary>
/// A temperature: double degrees Celsius, from absolute zero (-273.15 °C) up, finite.
/// °F = °C × 9/5 + 32 exactly (NIST SP 811, appendix B.8).
/// </summary>
public readonly record struct Temperature : IComparable<Temperature>
{
    private const double AbsoluteZero = -273.15;

    private Temperature(double celsius)
    {
        Celsius = double.IsFinite(celsius) && celsius >= AbsoluteZero
            ? celsius
            : throw new ArgumentOutOfRangeException(
                nameof(celsius), celsius, "A temperature is -273.15 °C or more and finite.");
    }

    /// <summary>Degrees Celsius.</summary>
    public double Celsius { get; }

    /// <summary>Degrees Fahrenheit.</summary>
    public double Fahrenheit => (Celsius * 9 / 5) + 32;

    /// <summary>So many degrees Celsius.</summary>
    public static Temperature FromCelsius(double celsius) => new(celsius);

    /// <summary>So many degrees Fahrenheit.</summary>
    public static Temperature FromFahrenheit(double fahrenheit) => new((fahrenheit - 32) * 5 / 9);

    /// <summary>Comparison.</summary>
    public static bool operator <(Temperature a, Temperature b) => a.Celsius < b.Celsius;

    /// <summary>Comparison.</summary>
    public static bool operator >(Temperature a, Temperature b) => a.Celsius > b.Celsius;

    /// <summary>Comparison.</summary>
    public static bool operator <=(Temperature a, Temperature b) => a.Celsius <= b.Celsius;

    /// <summary>Comparison.</summary>
    public static bool operator >=(Temperature a, Temperature b) => a.Celsius >= b.Celsius;

    /// <inheritdoc/>
    public int CompareTo(Temperature other) => Celsius.CompareTo(other.Celsius);
}
