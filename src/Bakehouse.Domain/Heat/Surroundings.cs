namespace Bakehouse.Domain.Heat;

/// <summary>Where a surface looks.</summary>
public enum Facing
{
    /// <summary>The top.</summary>
    Up,

    /// <summary>The side.</summary>
    Side,

    /// <summary>Underneath.</summary>
    Down,
}

/// <summary>
/// What is around a body: air, how it moves, walls as warm as the air, and what it stands in. Radiation is εσ(T² + Tₐ²)(T + Tₐ), absolute
/// temperatures, σ = 5.670374·10⁻⁸ W/(m²K⁴) (SI, exact by definition since 2019, rounded).
/// </summary>
/// <param name="Celsius">°C of air and walls.</param>
public sealed record Surroundings(double Celsius)
{
    private const double StefanBoltzmann = 5.670374e-8, Zero = 273.15;

    /// <summary>W/(m²K) of moved air on every face; null for still air, which moves by itself past what is warmer or colder.</summary>
    public double? Blown { get; init; }

    /// <summary>Least W/(m²K) of still air: no kitchen's air stands quite still.</summary>
    public double Stirred { get; init; }

    /// <summary>How well the surface radiates, 0 to 1: 0.95 for food, card and glazes (from memory).</summary>
    public double Emissivity { get; init; } = 0.95;

    /// <summary>Resistance of a box around it, m²K/W: wall and the air inside it; 0 for none.</summary>
    public double Cover { get; init; }

    /// <summary>True if nothing goes through the bottom: it stands on something that does not conduct.</summary>
    public bool IsBaseShut { get; init; }

    /// <summary>All convection by so many times: the shop's own place.</summary>
    public double Times { get; init; } = 1;

    /// <summary>°C at the end of a stay if it changes evenly; null if it does not.</summary>
    public double? CelsiusAtEnd { get; init; }

    /// <summary>Air that never meets a surface with radiation: one coefficient for all, W/(m²K).</summary>
    public static Surroundings Plain(double celsius, double coefficient, bool baseShut = false) =>
        new(celsius) { Blown = coefficient, Emissivity = 0, IsBaseShut = baseShut };

    /// <summary>W/(m²K) from a surface to these surroundings, through the box if there is one.</summary>
    /// <param name="surface">°C of the surface.</param>
    /// <param name="air">°C of the air just now.</param>
    /// <param name="along">m: height of a side, half of the radius of a round face.</param>
    internal double Coefficient(Facing facing, double surface, double air, double along)
    {
        var convection = Times * (Blown ?? Math.Max(Stirred, StillAir.Coefficient(facing, surface, air, along)));
        var outside = convection + (Emissivity == 0 ? 0 : Radiation(Emissivity, surface, air));
        return Cover == 0 ? outside : 1 / ((1 / outside) + Cover);
    }

    /// <summary>Radiation as a coefficient, W/(m²K).</summary>
    public static double Radiation(double emissivity, double surface, double walls)
    {
        var (s, w) = (surface + Zero, walls + Zero);
        return emissivity * StefanBoltzmann * ((s * s) + (w * w)) * (s + w);
    }
}

/// <summary>A body is in these surroundings for so many minutes.</summary>
public sealed record Stay(double Minutes, Surroundings In);

/// <summary>
/// Still air past a surface: Nu = c·Ra^¼, laminar; c 0.59 at a side, 0.54 on a warm face looking up or a cold one looking down, 0.27 on the
/// other two (Incropera and others, Fundamentals of Heat and Mass Transfer, equations 9.26 form, 9.30 and 9.32, from memory).
/// </summary>
public static class StillAir
{
    // k (g / (300 K · ν · α))^¼ of dry air at 300 K: k 0.0263 W/(m·K), ν 15.89·10⁻⁶, α 22.5·10⁻⁶ m²/s (the same, table A.4, from memory).
    private const double AirAt300 = 2.572;

    /// <summary>W/(m²K).</summary>
    /// <param name="surface">°C.</param>
    /// <param name="air">°C.</param>
    /// <param name="along">m along the surface: height of a side, area over outline of a level face.</param>
    public static double Coefficient(Facing facing, double surface, double air, double along)
    {
        // Air's k goes with T^0.85, ν and α with T^1.75: together T^-0.275 (from memory), here as its tangent at 300 K.
        var film = 273.15 + ((surface + air) / 2);
        return Share(facing, surface > air) * AirAt300 * (1.275 - (0.275 * film / 300)) * Math.Sqrt(Math.Sqrt(Math.Abs(surface - air) / along));
    }

    private static double Share(Facing facing, bool isWarm) => facing switch
    {
        Facing.Side => 0.59,
        Facing.Up => isWarm ? 0.54 : 0.27,
        Facing.Down => isWarm ? 0.27 : 0.54,
        _ => throw new ArgumentOutOfRangeException(nameof(facing), facing, "Unknown facing."),
    };
}
