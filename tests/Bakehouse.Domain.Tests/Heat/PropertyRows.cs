namespace Bakehouse.Domain.Tests.Heat;

using Bakehouse.Domain.Heat;
using Bakehouse.Domain.Heat.Foods;
using static Bakehouse.Domain.Heat.Foods.FoodPart;

/// <summary>Rows of surfaces, foods, boards and freezing, worked out by the product.</summary>
internal static class PropertyRows
{
    private static readonly Composition Lamb = new(0.7342, 0.2029, 0.0525, 0, 0, 0.0106);
    private static readonly Composition Butter = new(0.159, 0.0085, 0.811, 0.0006, 0, 0.0209);
    private static readonly Composition Crumb = new(0.25, 0.055, 0.15, 0.53, 0, 0.015);

    public static IEnumerable<(string Id, Func<double> Found)> All =>
    [
        ("HT-1", () => Surroundings.Radiation(0.95, 22, 4)),
        ("HT-2", () => Surroundings.Radiation(0.95, 95, 22)),
        ("HT-4", () => StillAir.Coefficient(Facing.Side, 60, 20, 0.05)),
        ("HT-5", () => StillAir.Coefficient(Facing.Down, 60, 20, 0.2032 / 4)),
        .. Parts, .. Mixed, .. Measured, .. Frozen,
    ];

    private static IEnumerable<(string, Func<double>)> Parts =>
    [
        ("FP-k-protein-20", () => ChoiOkos.Conductivity(Protein, 20)), ("FP-rho-protein-20", () => ChoiOkos.Density(Protein, 20)),
        ("FP-cp-protein-20", () => ChoiOkos.SpecificHeat(Protein, 20) / 1000), ("FP-k-fat-20", () => ChoiOkos.Conductivity(Fat, 20)),
        ("FP-k-carbohydrate-20", () => ChoiOkos.Conductivity(Carbohydrate, 20)), ("FP-cp-carbohydrate-20", () => ChoiOkos.SpecificHeat(Carbohydrate, 20) / 1000),
        ("FP-k-fibre-20", () => ChoiOkos.Conductivity(Fibre, 20)), ("FP-rho-fibre-20", () => ChoiOkos.Density(Fibre, 20)),
        ("FP-k-ash-20", () => ChoiOkos.Conductivity(Ash, 20)), ("FP-cp-ash-20", () => ChoiOkos.SpecificHeat(Ash, 20) / 1000),
        ("FP-k-water-20", () => ChoiOkos.Conductivity(Water, 20)), ("FP-rho-water-20", () => ChoiOkos.Density(Water, 20)),
        ("FP-cp-water-20", () => ChoiOkos.SpecificHeat(Water, 20) / 1000), ("FP-cp-water-true-20", () => ChoiOkos.SpecificHeat(Water, 20) / 1000),
        ("FP-k-fat-sign", () => ChoiOkos.Conductivity(Fat, 60)), ("FP-k-ice--18", () => ChoiOkos.Conductivity(Ice, -18)), ("FP-rho-ice--18", () => ChoiOkos.Density(Ice, -18)),
    ];

    private static IEnumerable<(string, Func<double>)> Mixed =>
    [
        ("FP-lamb-cp", () => ChoiOkos.SpecificHeat(Lamb, 5) / 1000),
        ("FP-lamb-Q", () => 150 * 10 * ChoiOkos.SpecificHeat(Lamb, 5) / 1000),
        ("FP-Chen", () => Freezing.SpecificHeat(0.2658) / 1000),
        ("FP-butter-k-par", () => ChoiOkos.Parallel(Butter, 20)),
        ("FP-butter-rho", () => ChoiOkos.Density(Butter, 5)),
        ("FP-butter-cp-co", () => ChoiOkos.SpecificHeat(Butter, 5) / 1000),
        ("FP-cake-par", () => ChoiOkos.Aired(ChoiOkos.Parallel(Crumb, 20), ChoiOkos.Porosity(Crumb, 300, 20))),
        ("FP-cake-eps", () => ChoiOkos.Porosity(Crumb, 300, 20)),
    ];

    private static IEnumerable<(string, Func<double>)> Measured =>
    [
        .. CakeMaterials.Measured.Where(m => m.Name != "yellow").Select(m => ($"MP-k-{m.Name}", (Func<double>)(() => m.Conductivity))),
        ("MP-AMF-H", () => Freezing.OfMilkFat / 1000),
        ("MP-AMF-50", () => Series.Moment(Freezing.FirmFat, 0.5, 30)),
        ("MP-wood-soft", () => BoardMaterials.Softwood.ConductivityAt(20)),
        ("MP-wood-hard", () => BoardMaterials.Hardwood.ConductivityAt(20)),
        ("MP-PU", () => BoardMaterials.Polyurethane.ConductivityAt(20)),
        ("MP-EPS", () => BoardMaterials.Polystyrene.ConductivityAt(20)),
        .. new[] { 400, 600, 800 }.Select(d => ($"MP-MDF-{d}", (Func<double>)(() => BoardMaterials.Fibreboard(d).ConductivityAt(20)))),
    ];

    private static IEnumerable<(string, Func<double>)> Frozen =>
    [
        ("FP-xice", () => Freezing.Ice(0.58, -1.7, -20)),
        ("FP-H-20", () => Beef(-20) / 1000),
        ("FP-H-tf", () => Beef(-1.7) / 1000),
        ("FP-H-Q", () => 150 * (Beef(-1.7) + (Freezing.SpecificHeat(0.42) * 11.7) - Beef(-20)) / 1000),
        ("FZ-1", () => Plank(1057 * 0.75 * 335_000 / (270.4 - 244.3), 0.5 * 0.0635 / 17, 0.0635 * 0.0635 / 8 / 1.038)),
        ("FZ-2", () => Plank(1000 * 250_000 / 38.75, 0.07 / 6 / 50, 0.07 * 0.07 / 24 / 1.2)),
        ("FZ-13", () => Freezing.PointOf(0.95)), ("FZ-14", () => Freezing.PointOf(0.90)), ("FZ-15", () => Freezing.PointOf(0.98)),
        ("FZ-16", () => Freezing.OfIce / 1000),
    ];

    private static double Beef(double celsius) => Freezing.EnthalpyBelow(0.42, 0.58, 0.4 * 0.173, -1.7, celsius);

    /// <summary>Plank's equation, the judge of freezing on the grid: latent heat over the span, times surface and depth.</summary>
    internal static double Plank(double latentOverSpan, double surface, double depth) => latentOverSpan * (surface + depth);
}
