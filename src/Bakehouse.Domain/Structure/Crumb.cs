namespace Bakehouse.Domain.Structure;

using Bakehouse.Domain.Measures;

/// <summary>What crumb bears: why a tier on a tier always gets supports.</summary>
public static class Crumb
{
    /// <summary>Standard gravity, m/s² (CGPM 1901).</summary>
    public const double Gravity = 9.80665;

    /// <summary>Young's modulus of sponge, pascal: 1 to 10 kPa (J. Home Econ. Jpn 38(12):1063, 1987: 10⁴ to 10⁵ dyn/cm²). Chilled butter cake is far stiffer.</summary>
    public static readonly (double Least, double Most) Stiffness = (1000, 10_000);

    /// <summary>Pressure of a tier that stands on crumb without supports, pascal.</summary>
    public static double Pressure(Mass tier, Area foot) => (double)tier.Kilograms * Gravity / (foot.SquareMillimetres * 1e-6);

    /// <summary>How far crumb gives under a pressure, as a share of its height: at its stiffest and at its softest; above 1 it is crushed flat.</summary>
    public static (double Least, double Most) Gives(double pressure) => (pressure / Stiffness.Most, pressure / Stiffness.Least);

    /// <summary>The weight of a mass, newtons.</summary>
    public static double Newtons(Mass mass) => (double)mass.Kilograms * Gravity;
}
