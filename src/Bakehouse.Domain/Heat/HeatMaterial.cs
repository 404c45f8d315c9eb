namespace Bakehouse.Domain.Heat;

/// <summary>A material at one temperature.</summary>
/// <param name="Celsius">°C.</param>
/// <param name="Enthalpy">Heat in it, J/kg, from any zero.</param>
/// <param name="Conductivity">W/(m·K).</param>
public readonly record struct HeatPoint(double Celsius, double Enthalpy, double Conductivity);

/// <summary>
/// What a part of a cake is made of, as far as heat is concerned. Between its points enthalpy and conductivity are straight lines;
/// beyond them the enthalpy goes on at the last slope and the conductivity stays. Melting and freezing are steep stretches of enthalpy.
/// </summary>
/// <param name="Name">As people call it.</param>
/// <param name="Density">kg/m³, above 0.</param>
/// <param name="Points">Two or more, temperature and enthalpy rising, conductivity above 0.</param>
/// <param name="Source">Where the figures come from.</param>
public sealed record HeatMaterial(string Name, double Density, IReadOnlyList<HeatPoint> Points, string Source)
{
    /// <summary>False for boards and boxes: they count for no mean and no clock.</summary>
    public bool IsEaten { get; init; } = true;

    /// <summary>True for what coats a cake: it may begin warmer than the rest.</summary>
    public bool IsCoat { get; init; }

    /// <summary>A material whose figures do not change with the temperature.</summary>
    /// <param name="conductivity">W/(m·K).</param>
    /// <param name="density">kg/m³.</param>
    /// <param name="specificHeat">J/(kg·K).</param>
    public static HeatMaterial Steady(string name, double conductivity, double density, double specificHeat, string source) =>
        new(name, density, [new(0, 0, conductivity), new(100, 100 * specificHeat, conductivity)], source);

    /// <summary>Conductivity at a temperature, W/(m·K).</summary>
    public double ConductivityAt(double celsius)
    {
        var i = PieceAt(celsius);
        var (a, b) = (Points[i], Points[i + 1]);
        return a.Conductivity + ((b.Conductivity - a.Conductivity) * Math.Clamp((celsius - a.Celsius) / (b.Celsius - a.Celsius), 0, 1));
    }

    /// <summary>Enthalpy at a temperature, J/kg.</summary>
    public double EnthalpyAt(double celsius)
    {
        var i = PieceAt(celsius);
        return Points[i].Enthalpy + (SlopeOf(i) * (celsius - Points[i].Celsius));
    }

    /// <summary>The same with another conductivity: so many times as much everywhere.</summary>
    public HeatMaterial Conducting(double times) =>
        times == 1 ? this : this with { Points = [.. Points.Select(p => p with { Conductivity = p.Conductivity * times })] };

    /// <summary>The same holding more or less heat: so many times as much everywhere.</summary>
    public HeatMaterial Holding(double times) => times == 1 ? this : this with { Density = Density * times };

    internal double SlopeOf(int piece) =>
        (Points[piece + 1].Enthalpy - Points[piece].Enthalpy) / (Points[piece + 1].Celsius - Points[piece].Celsius);

    private int PieceAt(double celsius)
    {
        var i = 0;
        while (i < Points.Count - 2 && celsius >= Points[i + 1].Celsius)
        {
            i++;
        }

        return i;
    }
}
