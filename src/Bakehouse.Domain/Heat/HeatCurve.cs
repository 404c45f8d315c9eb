namespace Bakehouse.Domain.Heat;

/// <summary>Where on or in a body.</summary>
public enum HeatSpot
{
    /// <summary>On the axis, half way up.</summary>
    Core,

    /// <summary>The mean over what is eaten, by volume.</summary>
    Mean,

    /// <summary>The middle of the top.</summary>
    Top,

    /// <summary>The middle of the side.</summary>
    Side,

    /// <summary>The middle underneath.</summary>
    Base,

    /// <summary>The coldest place of what is eaten.</summary>
    Coldest,

    /// <summary>The warmest place of what is eaten; its surface may be warmer.</summary>
    Warmest,
}

/// <summary>A point inside: m from the axis, m from below.</summary>
public readonly record struct HeatProbe(double FromAxis, double Height);

/// <summary>Temperatures of a body over time.</summary>
/// <param name="Minutes">From 0, rising.</param>
/// <param name="Celsius">One row for each spot, in their order, then one for each probe.</param>
/// <param name="HeatCameIn">Heat that came in by the end, J; below zero if it went out.</param>
/// <param name="HeatGained">Heat in it at the end less that at the beginning, J: the same but for rounding.</param>
public sealed record HeatCurve(IReadOnlyList<double> Minutes, IReadOnlyList<IReadOnlyList<double>> Celsius, double HeatCameIn, double HeatGained)
{
    /// <summary>Number of spots before the first probe.</summary>
    internal const int Spots = 7;

    /// <summary>°C at a moment; the first or last where it is outside of the curve.</summary>
    public double At(double minutes, HeatSpot spot) => At(minutes, Celsius[(int)spot]);

    /// <summary>°C of a probe at a moment.</summary>
    public double ProbeAt(double minutes, int probe = 0) => At(minutes, Celsius[Spots + probe]);

    /// <summary>Minutes until a spot first meets a temperature, from either side; null if it never does.</summary>
    public double? MinutesTo(HeatSpot spot, double celsius)
    {
        var row = Celsius[(int)spot];
        if (row[0] == celsius)
        {
            return 0;
        }

        for (var i = 1; i < row.Count; i++)
        {
            if ((row[i] >= celsius && row[i - 1] < celsius) || (row[i] <= celsius && row[i - 1] > celsius))
            {
                return Minutes[i - 1] + ((Minutes[i] - Minutes[i - 1]) * (celsius - row[i - 1]) / (row[i] - row[i - 1]));
            }
        }

        return null;
    }

    private double At(double minutes, IReadOnlyList<double> row)
    {
        var (low, high) = (0, Minutes.Count - 1);
        if (minutes <= 0 || minutes >= Minutes[high])
        {
            return minutes <= 0 ? row[0] : row[high];
        }

        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            (low, high) = Minutes[middle] <= minutes ? (middle, high) : (low, middle);
        }

        return row[low] + ((row[high] - row[low]) * (minutes - Minutes[low]) / (Minutes[high] - Minutes[low]));
    }
}
