namespace Bakehouse.Domain.Structure;

/// <summary>What supports and boards are made of. Averages of clear, dry stuff; a piece at hand may be weaker.</summary>
/// <param name="Stiffness">Young's modulus, MPa.</param>
/// <param name="Crushing">Stress along its length at which it is crushed, MPa; the least that is published.</param>
/// <param name="CrushingMost">The most that is published; the same where one value is.</param>
/// <param name="Across">Stress across the grain at its limit, MPa; null where it has no grain.</param>
/// <param name="Tensile">Tensile strength, MPa; null where nothing is published with it.</param>
/// <param name="Poisson">Poisson's ratio; null where none is published with it.</param>
/// <param name="GramsPerMillilitre">Density.</param>
/// <param name="Source">Of all of these.</param>
public sealed record Material(
    string Name, double Stiffness, double Crushing, double CrushingMost, double? Across, double? Tensile, double? Poisson, double GramsPerMillilitre, string Source)
{
    /// <summary>A pound-force on a square inch in megapascal: 4.4482216152605 N on 645.16 mm² (international pound and inch, standard gravity).</summary>
    public const double MegapascalInPsi = 4.4482216152605 / 645.16;

    private const string Handbook = "USDA Wood Handbook, clear wood at 12 % moisture";

    /// <summary>Paper birch: the usual dowel.</summary>
    public static Material PaperBirch { get; } = Wood("Paper birch", 1.59e6, 5690, 600, 0.55);

    /// <summary>Yellow birch.</summary>
    public static Material YellowBirch { get; } = Wood("Yellow birch", 2.01e6, 8170, 970, 0.62);

    /// <summary>Sweet birch.</summary>
    public static Material SweetBirch { get; } = Wood("Sweet birch", 2.17e6, 8540, 1080, 0.65);

    /// <summary>Basswood.</summary>
    public static Material Basswood { get; } = Wood("Basswood", 1.46e6, 4730, 370, 0.37);

    /// <summary>American beech.</summary>
    public static Material Beech { get; } = Wood("Beech", 1.72e6, 7300, 1010, 0.64);

    /// <summary>Polypropylene: plastic tubes and straws.</summary>
    public static Material Polypropylene { get; } = new(
        "Polypropylene", 1300, 5500 * MegapascalInPsi, 8000 * MegapascalInPsi, null, 27, null, 0.900, "Engineering ToolBox; crushing: ACS Omega 2022 7:13403, table 1");

    /// <summary>Acrylic: clear rods and plates.</summary>
    public static Material Acrylic { get; } = new(
        "Acrylic", 2760, 10_500 * MegapascalInPsi, 18_000 * MegapascalInPsi, null, 74, null, 1.190, "Engineering ToolBox; crushing: ACS Omega 2022 7:13403, table 1");

    /// <summary>Fibreboard of medium density.</summary>
    public static Material Fibreboard { get; } = new("Fibreboard", 4000, 10, 10, null, null, 0.25, 0.750, "MakeItFrom, from the USDA Wood Handbook 1999; another list has 2.4 GPa");

    /// <summary>Hardboard. Its Poisson's ratio is taken as fibreboard's.</summary>
    public static Material Hardboard { get; } = new("Hardboard", 3100, 10, 10, null, null, 0.25, 0.900, "From memory: 3.1 to 5.5 GPa, the least taken");

    private static Material Wood(string name, double stiffness, double crushing, double across, double density) => new(
        name, stiffness * MegapascalInPsi, crushing * MegapascalInPsi, crushing * MegapascalInPsi, across * MegapascalInPsi, null, null, density, Handbook);
}
