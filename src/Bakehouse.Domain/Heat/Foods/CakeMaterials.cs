namespace Bakehouse.Domain.Heat.Foods;

using Bakehouse.Domain.Cakes;

/// <summary>A conductivity that somebody measured.</summary>
/// <param name="Conductivity">W/(m·K).</param>
/// <param name="Density">kg/m³.</param>
public sealed record MeasuredCake(string Name, double Conductivity, double Density, string Source);

/// <summary>
/// Materials of a cake: crumbs by measured conductivity, the rest by composition. Compositions are typical recipes (from memory, each ± 20 % in
/// what follows from it); densities are the shop's own (<see cref="CakeFigures"/>).
/// </summary>
public static class CakeMaterials
{
    private const string Ashrae = "ASHRAE Handbook, Refrigeration, Thermal Properties of Foods, after Sweat 1985 (from memory)";
    private const string Incropera = "Incropera and others, table A.3, after Sweat 1973 (from memory)";

    /// <summary>Measured cakes at 23 to 27 °C.</summary>
    public static IReadOnlyList<MeasuredCake> Measured { get; } =
    [
        new("yellow", 0.110, 300, Ashrae), new("chocolate", 0.106, 340, Ashrae), new("pound", 0.131, 480, Ashrae), new("white", 0.082, 446, Ashrae),
        new("angelfood", 0.099, 147, Ashrae), new("carrot", 0.084, 320, Ashrae), new("applesauce", 0.079, 300, Ashrae),
        new("batter", 0.223, 720, Incropera), new("baked", 0.121, 280, Incropera),
    ];

    // A quarter water, aw about 0.90, so ice begins at about -10.5 °C (Clausius and Clapeyron). Butter is most of the fat.
    private static readonly Composition Butter = new(0.25, 0.055, 0.15, 0.53, 0, 0.015, Melts: 0.7, FreezesAt: -10.5);
    private static readonly Composition Moist = new(0.32, 0.055, 0.15, 0.455, 0.005, 0.015, Melts: 0.7, FreezesAt: -8.3);
    private static readonly Composition Foam = new(0.36, 0.07, 0.05, 0.51, 0, 0.01, Melts: 0.5, FreezesAt: -8.3);
    private static readonly Composition Cream = new(0.06, 0.005, 0.28, 0.65, 0, 0.005, Melts: 1);

    private static readonly Dictionary<string, Composition> Fillings = new(StringComparer.Ordinal)
    {
        ["buttercream"] = Cream,
        ["raspberry-jam"] = new(0.33, 0.005, 0, 0.655, 0.01, 0, FreezesAt: -12),
        ["lemon-curd"] = new(0.45, 0.04, 0.12, 0.38, 0, 0.01, Melts: 0.7, FreezesAt: -8),
        ["ganache"] = new(0.19, 0.05, 0.38, 0.36, 0, 0.02, Melts: 1, FreezesAt: -10),
        ["cream-cheese"] = new(0.35, 0.04, 0.30, 0.30, 0, 0.01, Melts: 1, FreezesAt: -6),
    };

    /// <summary>Baked crumb of a sponge; one that is not known is taken as butter cake.</summary>
    public static HeatMaterial Crumb(string sponge, CakeFigures figures)
    {
        var (of, measured) = sponge switch
        {
            "chocolate" => (Moist, "chocolate"),
            "carrot" => (Moist, "carrot"),
            "genoise" => (Foam, "angelfood"),
            _ => (Butter, "yellow"),
        };
        var found = Measured.First(m => m.Name == measured);
        return Mixing.Of($"{sponge} crumb", of, KilogramsInCubic(figures.Sponge(sponge)), $"conductivity of {measured} cake: {found.Source}", found.Conductivity);
    }

    /// <summary>A filling; one that is not known is taken as buttercream.</summary>
    public static HeatMaterial Filling(string filling, CakeFigures figures) => Mixing.Of(
        filling, Fillings.GetValueOrDefault(filling, Cream), KilogramsInCubic(figures.Filling(filling)), "Choi and Okos 1986 by a typical recipe (from memory)");

    /// <summary>A coat of buttercream, or of paste 3 to 5 mm over it: 8 % water, the rest sugar, 1.35 g/mL (from memory).</summary>
    public static HeatMaterial Coat(bool isPaste, CakeFigures figures) => (isPaste
        ? Mixing.Of("paste coat", new(0.08, 0, 0.01, 0.91), 1350, "Choi and Okos 1986 by a typical recipe (from memory)")
        : Mixing.Of("coat", Cream, KilogramsInCubic(figures.IcingDensity), "Choi and Okos 1986 by a typical recipe (from memory)")) with { IsCoat = true };

    /// <summary>Water as it is in a pot, for what is cooked: curd and custard before they set.</summary>
    public static HeatMaterial Custard { get; } = HeatMaterial.Steady("custard", 0.55, 1080, 3500, "close to water (a reference case, not measured)");

    private static double KilogramsInCubic(Measures.Density density) => density.GramsPerMillilitre * 1000;
}

/// <summary>Boards and boxes.</summary>
public static class BoardMaterials
{
    /// <summary>Softwood (EN ISO 10456, tables).</summary>
    public static HeatMaterial Softwood { get; } = Board("softwood", 0.13, 500, 1600, "EN ISO 10456");

    /// <summary>Hardwood (the same).</summary>
    public static HeatMaterial Hardwood { get; } = Board("hardwood", 0.18, 700, 1600, "EN ISO 10456");

    /// <summary>Expanded polystyrene, also of false tiers (EN ISO 10456, from memory).</summary>
    public static HeatMaterial Polystyrene { get; } = Board("polystyrene", 0.035, 25, 1450, "EN ISO 10456 (from memory)");

    /// <summary>Polyurethane foam (CIBSE Guide A, table 3.37).</summary>
    public static HeatMaterial Polyurethane { get; } = Board("polyurethane", 0.028, 30, 1470, "CIBSE Guide A, table 3.37");

    /// <summary>Fibreboard and card by density, 250 to 800 kg/m³: 0.07 to 0.18 W/(m·K) (EN ISO 10456, table 3, from memory).</summary>
    public static HeatMaterial Fibreboard(double density)
    {
        (double Density, double K)[] table = [(250, 0.07), (400, 0.10), (600, 0.14), (800, 0.18)];
        var i = Math.Clamp(Array.FindLastIndex(table, r => r.Density <= density), 0, table.Length - 2);
        var (a, b) = (table[i], table[i + 1]);
        var k = a.K + ((b.K - a.K) * Math.Clamp((density - a.Density) / (b.Density - a.Density), 0, 1));
        return Board("fibreboard", k, density, 1700, "EN ISO 10456, table 3 (from memory)");
    }

    /// <summary>Resistance of a carton: 3 mm of corrugated board at 0.055 W/(m·K) and 0.08 m²K/W of air inside with its radiation (from memory); 9 W/(m²K) become 4.</summary>
    public const double Carton = (0.003 / 0.055) + 0.08;

    /// <summary>Resistance of an insulated box: 30 mm of polystyrene and the still air inside.</summary>
    public const double Insulated = (0.030 / 0.035) + 0.08;

    private static HeatMaterial Board(string name, double k, double density, double heat, string source) =>
        HeatMaterial.Steady(name, k, density, heat, source) with { IsEaten = false };
}
