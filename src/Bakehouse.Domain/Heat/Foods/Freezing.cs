namespace Bakehouse.Domain.Heat.Foods;

/// <summary>Ice and firm fat (ASHRAE Handbook, Refrigeration, chapter Thermal Properties of Foods; dairy journals).</summary>
public static class Freezing
{
    /// <summary>Heat to melt ice, J/kg (ASHRAE, equation 18).</summary>
    public const double OfIce = 333_600;

    /// <summary>Heat to melt milk fat, J/kg (Milchwissenschaft 53(2), 1998, by calorimetry).</summary>
    public const double OfMilkFat = 80_800;

    // At -40 °C what can freeze is frozen; enthalpies count from there.
    private const double Zero = -40;

    /// <summary>
    /// Share of milk fat that is firm: 50 % at 8.6 °C, none from 35.6 °C on (Milchwissenschaft 53(2), 1998); the points between, 15 to 30 °C by
    /// pulsed resonance, and those below from memory, ± 5 points. Fat that was warm firms up more slowly than this.
    /// </summary>
    public static IReadOnlyList<(double Celsius, double Firm)> MilkFat { get; } =
        [(-40, 1), (-20, 0.97), (-10, 0.85), (0, 0.66), (8.6, 0.50), (15, 0.31), (20, 0.19), (25, 0.11), (30, 0.05), (35.6, 0)];

    /// <summary>Share of firm fat at a temperature, 0 to 1.</summary>
    public static double FirmFat(double celsius)
    {
        var (first, last) = (MilkFat[0], MilkFat[^1]);
        if (celsius <= first.Celsius || celsius >= last.Celsius)
        {
            return celsius <= first.Celsius ? first.Firm : last.Firm;
        }

        var i = MilkFat.TakeWhile(p => p.Celsius <= celsius).Count() - 1;
        var (a, b) = (MilkFat[i], MilkFat[i + 1]);
        return a.Firm + ((b.Firm - a.Firm) * (celsius - a.Celsius) / (b.Celsius - a.Celsius));
    }

    /// <summary>Where ice begins, °C, by water activity: ln aw = -(L/R)(1/T - 1/273.15), L 6010 J/mol.</summary>
    public static double PointOf(double waterActivity) => (1 / ((1 / 273.15) - (Math.Log(waterActivity) * 8.314 / 6010))) - 273.15;

    /// <summary>Share of a food that is ice, 0 to 1 (Tchigeov, ASHRAE equation 5).</summary>
    /// <param name="water">Share of water.</param>
    /// <param name="freezesAt">°C.</param>
    public static double Ice(double water, double freezesAt, double celsius) =>
        celsius >= freezesAt ? 0 : 1.105 * water / (1 + (0.7138 / Math.Log(freezesAt - celsius + 1)));

    /// <summary>Enthalpy below the freezing point, J/kg from -40 °C (ASHRAE equation 18, after Schwartzberg): water bound to protein never freezes.</summary>
    /// <param name="solids">Share that is not water.</param>
    /// <param name="bound">Share of bound water: 0.4 of the protein.</param>
    public static double EnthalpyBelow(double solids, double water, double bound, double freezesAt, double celsius) =>
        (celsius - Zero) * (1550 + (1260 * solids) - ((water - bound) * OfIce * freezesAt / (Zero * celsius)));

    /// <summary>Specific heat above freezing, J/(kg·K), by solids alone (Chen 1985, in the same chapter).</summary>
    public static double SpecificHeat(double solids) => 4190 - (2300 * solids) - (628 * solids * solids * solids);
}
