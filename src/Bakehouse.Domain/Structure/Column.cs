namespace Bakehouse.Domain.Structure;

/// <summary>How the ends of a column are held: what its length counts for.</summary>
public static class EndHold
{
    /// <summary>Both ends free to turn: as supports stand in a cake.</summary>
    public const double Pinned = 1;

    /// <summary>One end held fast, the other free.</summary>
    public const double FixedFree = 0.25;

    /// <summary>One end held fast, the other free to turn: 2.046, from tan x = x.</summary>
    public const double FixedPinned = 2.0457;

    /// <summary>Both ends held fast.</summary>
    public const double Fixed = 4;
}

/// <summary>
/// A straight column pressed along its length: Euler where it is slender, Johnson's parabola where it is stout (Budynas and Nisbett,
/// Shigley's Mechanical Engineering Design, 9th edition, chapter 4). Millimetres, newtons, megapascal. No factor for doubt is in it.
/// </summary>
public static class Column
{
    /// <summary>Second moment of area of a solid round, mm⁴: π·d⁴/64.</summary>
    public static double SecondMoment(double diameter) => Math.PI * Math.Pow(diameter, 4) / 64;

    /// <summary>Second moment of area of a tube, mm⁴.</summary>
    public static double SecondMoment(double outside, double inside) => SecondMoment(outside) - SecondMoment(inside);

    /// <summary>Euler's load: C·π²·E·I/L².</summary>
    public static double Euler(double stiffness, double secondMoment, double length, double hold) =>
        hold * Math.PI * Math.PI * stiffness * secondMoment / (length * length);

    /// <summary>The slenderness L/k above which Euler holds: √(2·C·π²·E/S).</summary>
    public static double Changeover(double stiffness, double crushing, double hold) => Math.Sqrt(2 * hold * Math.PI * Math.PI * stiffness / crushing);

    /// <summary>The load at which a solid round column fails, newtons.</summary>
    public static double Carries(double diameter, double length, Material material, double hold = EndHold.Pinned) => Carries(diameter, 0, length, material, hold);

    /// <summary>The same for a tube; one with a thin wall may dent before. k² is the second moment by the area.</summary>
    public static double Carries(double outside, double inside, double length, Material material, double hold)
    {
        var (area, second) = (Math.PI * ((outside * outside) - (inside * inside)) / 4, SecondMoment(outside, inside));
        var slenderness = length / Math.Sqrt(second / area);
        return IsSlender(outside, inside, length, material, hold)
            ? Euler(material.Stiffness, second, length, hold)
            : area * material.Crushing * (1 - (material.Crushing * slenderness * slenderness / (4 * hold * Math.PI * Math.PI * material.Stiffness)));
    }

    /// <summary>True if Euler's formula holds for it, false if Johnson's does.</summary>
    public static bool IsSlender(double outside, double inside, double length, Material material, double hold) =>
        length / Math.Sqrt(SecondMoment(outside, inside) / (Math.PI * ((outside * outside) - (inside * inside)) / 4)) >= Changeover(material.Stiffness, material.Crushing, hold);

    /// <summary>The diameter of a slender solid round column for a load and a factor: (64·n·P·L²/(π³·C·E))^¼.</summary>
    public static double Diameter(double load, double factor, double length, double stiffness, double hold) =>
        Math.Pow(64 * factor * load * length * length / (Math.Pow(Math.PI, 3) * hold * stiffness), 0.25);

    /// <summary>The load per support at which what lies on it is punched: strength times the area it stands on.</summary>
    /// <param name="diameter">Of the support's end.</param>
    /// <param name="strength">Of what lies on it, MPa.</param>
    public static double Punches(double diameter, double strength) => strength * Math.PI * diameter * diameter / 4;
}
