namespace Bakehouse.Domain.Heat;

/// <summary>
/// Where air gives off water on something cold. Magnus's formula with 17.625 and 243.04 °C (Alduchov and Eskridge, J. Appl. Meteor. 35, 1996:
/// within 0.35 °C from -40 to 50 °C).
/// </summary>
public static class DewPoint
{
    private const double A = 17.625, B = 243.04;

    /// <summary>Minutes that a wet coat takes to dry once it is above the dew point: 30 to 90 (common practice, no source; a fan helps).</summary>
    public static readonly (int Least, int Most) Drying = (30, 90);

    /// <summary>°C.</summary>
    /// <param name="celsius">°C of the air.</param>
    /// <param name="humidity">Relative humidity, above 0 to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">The humidity is none.</exception>
    public static double Of(double celsius, double humidity)
    {
        if (!(humidity > 0 && humidity <= 100))
        {
            throw new ArgumentOutOfRangeException(nameof(humidity), humidity, "Relative humidity lies above 0 and is 100 % at most.");
        }

        var gamma = Math.Log(humidity / 100) + (A * celsius / (B + celsius));
        return B * gamma / (A - gamma);
    }
}

/// <summary>Whether a cold cake gets wet.</summary>
/// <param name="DewPoint">°C of the air there.</param>
/// <param name="WetMinutes">Until its coldest surface is a degree above the dew point; 0 if it never gets wet, null if it stays wet.</param>
public sealed record Dew(double DewPoint, double? WetMinutes)
{
    /// <summary>True if water comes down on it.</summary>
    public bool IsWet => WetMinutes is null or > 0;

    /// <summary>Minutes from leaving the cold until it is dry, low and high; null if it stays wet there.</summary>
    public (int Low, int High)? DryAfter => WetMinutes is not { } wet ? null
        : wet == 0 ? (0, 0) : (HeatWait.Up(wet + Heat.DewPoint.Drying.Least), HeatWait.Up(wet + Heat.DewPoint.Drying.Most));

    /// <summary>Of a body that warms up: the later of top and side counts.</summary>
    public static Dew Of(HeatCurve curve, double air, double humidity)
    {
        var point = Heat.DewPoint.Of(air, humidity);
        double? Until(HeatSpot spot) => curve.Celsius[(int)spot][0] > point + 1 ? 0 : curve.MinutesTo(spot, point + 1);
        return new Dew(point, Until(HeatSpot.Top) is { } top && Until(HeatSpot.Side) is { } side ? Math.Max(top, side) : null);
    }
}
