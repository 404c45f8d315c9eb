namespace Bakehouse.Domain.Heat.Foods;

/// <summary>A material for the grid out of what a food is made of.</summary>
public static class Mixing
{
    private static readonly double[] Marks = [-40, -30, -20, -15, -10, -5, 0, 8.6, 15, 20, 25, 30, 35.6, 60, 100];

    /// <summary>A food with its enthalpy: warmth, melting fat, ice.</summary>
    /// <param name="density">As it is, with its air, kg/m³.</param>
    /// <param name="measured">Conductivity as somebody measured it, W/(m·K); else it is worked out at 10 °C, parts behind each other, with its air.</param>
    /// <param name="source">Of composition and measured value.</param>
    /// <exception cref="ArgumentException">The composition has problems.</exception>
    public static HeatMaterial Of(string name, Composition of, double density, string source, double? measured = null)
    {
        if (of.Problems(name) is { Count: > 0 } problems)
        {
            throw new ArgumentException(string.Join(" ", problems), nameof(of));
        }

        var air = Math.Max(0, ChoiOkos.Porosity(of, density, 10));
        var conductivity = measured ?? ChoiOkos.Aired(ChoiOkos.Perpendicular(of, 10), air);
        double[] marks = [.. Marks.Concat(of.FreezesAt is { } f ? [f, f - 1] : Array.Empty<double>()).Distinct().Order()];
        return new HeatMaterial(name, density, [.. marks.Select(t => new HeatPoint(t, Enthalpy(of, t), conductivity))], source);
    }

    /// <summary>Enthalpy of a food, J/kg from -40 °C.</summary>
    public static double Enthalpy(Composition of, double celsius)
    {
        var melted = of.Fat * of.Melts * Freezing.OfMilkFat * (1 - Freezing.FirmFat(celsius));
        if (of.FreezesAt is not { } freezes)
        {
            return Warmth(of, -40, celsius) + melted;
        }

        var (solids, bound) = (1 - of.Water, 0.4 * of.Protein);
        return melted + (celsius <= freezes
            ? Freezing.EnthalpyBelow(solids, of.Water, bound, freezes, celsius)
            : Freezing.EnthalpyBelow(solids, of.Water, bound, freezes, freezes) + Warmth(of, freezes, celsius));
    }

    // Straight polynomials of second order: Simpson's rule is exact on each side of 0 °C, where that of water breaks.
    private static double Warmth(Composition of, double from, double to) => from < 0 && to > 0 ? Warmth(of, from, -1e-9) + Warmth(of, 0, to)
        : (to - from) / 6 * (ChoiOkos.SpecificHeat(of, from) + (4 * ChoiOkos.SpecificHeat(of, (from + to) / 2)) + ChoiOkos.SpecificHeat(of, to));
}
