namespace Bakehouse.Domain.Tests.Cakes.Checks;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Structure;
using static Bakehouse.Domain.Tests.Cakes.Checks.ShapeRows;

/// <summary>D: materials, columns, plates, crumb, supports.</summary>
internal static class StructureRows
{
    private static readonly Plate Timoshenko = new(40, 1, 30e6, 0.3);
    private static readonly Plate Roark = new(150, 1.5, 200e3, 0.29);

    public static IReadOnlyList<(string, Action<CheckRow>)> All { get; } =
    [
        ("D-W-birch-paper", r => Wood(r, Material.PaperBirch)),
        ("D-W-birch-yellow", r => Wood(r, Material.YellowBirch)),
        ("D-W-birch-sweet", r => Wood(r, Material.SweetBirch)),
        ("D-W-basswood", r => Wood(r, Material.Basswood)),
        ("D-W-beech-American", r => Wood(r, Material.Beech)),
        ("D-P-pp", r => r.Exactly(Material.Polypropylene.Stiffness / 1000, Material.Polypropylene.Tensile!.Value, Material.Polypropylene.GramsPerMillilitre * 1000)),
        ("D-P-ppcomp", r => r.Holds(Material.Polypropylene.Crushing, Material.Polypropylene.CrushingMost)),
        ("D-P-pmmacomp", r => r.Holds(Material.Acrylic.Crushing, Material.Acrylic.CrushingMost)),
        ("D-EU-1", r => r.Holds(Column.Diameter(r.In("P") * 1000, r.In("n"), r.In("l") * 1000, r.In("E") * 1000, r.In("C")))),
        ("D-EU-2", r => r.Holds(Column.Changeover(r.In("E") * 1000, r.In("Sy"), r.In("C")))),
        ("D-EU-G1", r => r.Holds(Tube(r, EndHold.Pinned))),
        ("D-EU-G3", r => r.Holds(Tube(r, EndHold.FixedPinned))),
        ("D-EU-G4", r => r.Holds(Tube(r, EndHold.Fixed))),
        ("D-DOW-6.35x150", r => r.Holds(Column.Carries(r.In("d"), r.In("L"), Material.PaperBirch))),
        ("D-BEAR", r => r.Holds(SupportKind.Dowel.Punches(TierBoard.Card))),
        ("D-PL-1", r => r.Holds(Timoshenko.ClampedSag(r.In("q")))),
        ("D-PL-2", r => r.Holds(Timoshenko.ClampedRimStress(6))),
        ("D-PL-4", r => r.Holds(Timoshenko.ClampedSagOfPoint(r.In("P")))),
        ("D-PL-5", r => r.Holds(Timoshenko.ClampedRimStressOfPoint(7539.82))),
        ("D-PL-6", r => r.Holds(Roark.RestingSagOfPoint(r.In("W")))),
        ("D-PL-7", r => r.Holds(Roark.ClampedSagOfPoint(314.159))),
        ("D-PL-8", r => r.Holds(Timoshenko.RestingSag(Math.PI * 40 * 40) / Timoshenko.ClampedSag(1))),
        .. new[] { 3, 4, 5, 6, 8 }.Select(n => ($"D-PL-pt{n}", (Action<CheckRow>)(r => r.Holds(Plate.OnPoints((int)r.In("n"), r.In("nu")))))),
        ("D-PL-pt3c", r => r.Holds(Plate.PointOnPoints(3, r.In("nu")))),
        ("D-PL-board", r => r.Holds(new Plate(6 * 25.4, r.In("t"), Material.Fibreboard.Stiffness, r.In("nu")).RestingSag(Crumb.Newtons(Mass.FromKilograms(5))))),
        ("D-MDF", r => r.Exactly(Material.Fibreboard.Stiffness / 1000, Material.Fibreboard.Poisson!.Value, Material.Fibreboard.GramsPerMillilitre * 1000, Material.Fibreboard.Crushing)),
        ("D-CAKE-E", r => r.Holds(Crumb.Stiffness.Least / 1000, Crumb.Stiffness.Most / 1000)),
        ("D-CAKE-RHO", r => r.Holds(CakeFigures.Usual.Sponge("genoise").GramsPerMillilitre)),
        ("D-CAKE-SG", Rises),
        ("D-CAKE-STR", Unsupported),
        .. new[] { 6, 8, 10, 12 }.Select(d => ($"D-N-{d}", (Action<CheckRow>)(r => r.Holds(Supports.For(In(d), In(d - 2), In(4)).Count)))),
        ("D-RINGSPACE", r => r.Is((Supports.For(In(10), In(10), In(4)) with { Count = (int)r.In("n") }).Apart.Inches)),
    ];

    private static void Wood(CheckRow r, Material wood) => r.Holds(wood.Stiffness / 1000, wood.Crushing, wood.Across!.Value, wood.GramsPerMillilitre);

    private static double Tube(CheckRow r, double hold)
    {
        Assert.Equal(r.In("I"), Column.SecondMoment(r.In("d2"), r.In("d1")), 5.0);
        return Column.Euler(r.In("E") * 1000, Column.SecondMoment(r.In("d2"), r.In("d1")), r.In("L") * 1000, hold) / 1000;
    }

    // Batter of those gravities, less a tenth lost in the oven (from memory) and baked to 0.33 g/mL, rises as the figures say.
    private static void Rises(CheckRow r) =>
        Assert.InRange(CakeFigures.Usual.Rise, r.Numbers[0] * 0.9 / 0.33, r.Numbers[1] * 0.9 / 0.33);

    private static void Unsupported(CheckRow r)
    {
        var pressure = Crumb.Pressure(Mass.FromKilograms(2), new Round(In(8)).Area);
        var (least, most) = Crumb.Gives(pressure);
        r.Holds(pressure, least * 100, most * 100);
    }
}
