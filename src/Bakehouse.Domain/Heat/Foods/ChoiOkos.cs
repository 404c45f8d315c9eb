namespace Bakehouse.Domain.Heat.Foods;

/// <summary>
/// Properties of the parts of foods over the temperature, -40 to 150 °C (Choi and Okos 1986, as in the ASHRAE Handbook, Refrigeration, chapter
/// Thermal Properties of Foods, tables 1 and 2), and of what is mixed from them (same chapter, from memory). The specific heat of water uses 4.1762
/// as Choi and Okos give it: 4.1289, in some printings, is 1.3 % under the steam tables. The linear term of the conductivity of fat is e-4.
/// </summary>
public static class ChoiOkos
{
    /// <summary>Conductivity of still air, W/(m·K) (handbooks, at 20 °C).</summary>
    public const double Air = 0.025;

    /// <summary>W/(m·K).</summary>
    public static double Conductivity(FoodPart part, double t) => part switch
    {
        FoodPart.Water => Square(5.7109e-1, 1.7625e-3, -6.7036e-6, t),
        FoodPart.Protein => Square(1.7881e-1, 1.1958e-3, -2.7178e-6, t),
        FoodPart.Fat => Square(1.8071e-1, -2.7604e-4, -1.7749e-7, t),
        FoodPart.Carbohydrate => Square(2.0141e-1, 1.3874e-3, -4.3312e-6, t),
        FoodPart.Fibre => Square(1.8331e-1, 1.2497e-3, -3.1683e-6, t),
        FoodPart.Ash => Square(3.2962e-1, 1.4011e-3, -2.9069e-6, t),
        FoodPart.Ice => Square(2.2196, -6.2489e-3, 1.0154e-4, t),
        _ => throw Unknown(part),
    };

    /// <summary>kg/m³.</summary>
    public static double Density(FoodPart part, double t) => part switch
    {
        FoodPart.Water => Square(997.18, 3.1439e-3, -3.7574e-3, t),
        FoodPart.Protein => 1329.9 - (0.51840 * t),
        FoodPart.Fat => 925.59 - (0.41757 * t),
        FoodPart.Carbohydrate => 1599.1 - (0.31046 * t),
        FoodPart.Fibre => 1311.5 - (0.36589 * t),
        FoodPart.Ash => 2423.8 - (0.28063 * t),
        FoodPart.Ice => 916.89 - (0.13071 * t),
        _ => throw Unknown(part),
    };

    /// <summary>J/(kg·K); of fat without melting.</summary>
    public static double SpecificHeat(FoodPart part, double t) => 1000 * part switch
    {
        FoodPart.Water => t < 0 ? Square(4.0817, -5.3062e-3, 9.9516e-4, t) : Square(4.1762, -9.0864e-5, 5.4731e-6, t),
        FoodPart.Protein => Square(2.0082, 1.2089e-3, -1.3129e-6, t),
        FoodPart.Fat => Square(1.9842, 1.4733e-3, -4.8008e-6, t),
        FoodPart.Carbohydrate => Square(1.5488, 1.9625e-3, -5.9399e-6, t),
        FoodPart.Fibre => Square(1.8459, 1.8306e-3, -4.6509e-6, t),
        FoodPart.Ash => Square(1.0926, 1.8896e-3, -3.6817e-6, t),
        FoodPart.Ice => 2.0623 + (6.0769e-3 * t),
        _ => throw Unknown(part),
    };

    /// <summary>Specific heat of a food, J/(kg·K): parts by mass, without melting and freezing.</summary>
    public static double SpecificHeat(Composition of, double t) => of.Parts.Sum(p => p.Share * SpecificHeat(p.Part, t));

    /// <summary>Density of a food without air, kg/m³: volumes of its parts added.</summary>
    public static double Density(Composition of, double t) => of.Parts.Sum(p => p.Share) / of.Parts.Sum(p => p.Share / Density(p.Part, t));

    /// <summary>Conductivity, parts side by side: the highest it can be, W/(m·K). Crumb comes near it.</summary>
    public static double Parallel(Composition of, double t) => Volumes(of, t).Sum(v => v.Share * Conductivity(v.Part, t));

    /// <summary>Conductivity, one part behind the other: the lowest it can be, W/(m·K). Butter comes near it (0.197 measured and worked out).</summary>
    public static double Perpendicular(Composition of, double t) => 1 / Volumes(of, t).Sum(v => v.Share / Conductivity(v.Part, t));

    /// <summary>Share of air in a food of an apparent density, 0 to 1.</summary>
    public static double Porosity(Composition of, double apparent, double t) => 1 - (apparent / Density(of, t));

    /// <summary>Conductivity with air in it: solid and air side by side, W/(m·K).</summary>
    public static double Aired(double conductivity, double porosity) => ((1 - porosity) * conductivity) + (porosity * Air);

    private static IEnumerable<(FoodPart Part, double Share)> Volumes(Composition of, double t)
    {
        var all = of.Parts.Select(p => (p.Part, Volume: p.Share / Density(p.Part, t))).ToList();
        var sum = all.Sum(v => v.Volume);
        return all.Select(v => (v.Part, v.Volume / sum));
    }

    private static double Square(double a, double b, double c, double t) => a + (b * t) + (c * t * t);

    private static ArgumentOutOfRangeException Unknown(FoodPart part) => new(nameof(part), part, "Unknown part of a food.");
}
