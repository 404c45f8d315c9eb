namespace Bakehouse.Domain.Tests.Cakes.Checks;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Structure;
using static Bakehouse.Domain.Tests.Cakes.Checks.ShapeRows;

/// <summary>
/// Z: the golden order. Round 10, 8, 6 in; each bare 4 in of two layers and one filling of 1/4 in; crumb 2 mm, final 5 mm over it; cake 0.40,
/// buttercream 1.00 g/mL; half full. Masses and balance leave boards out, so they are added up from the tiers.
/// </summary>
internal static class Golden
{
    public static BuildSheet Sheet { get; } = BuildSheet.Of([Tier(10), Tier(8), Tier(6)], Finish.Smooth, CakeFigures.Usual);

    public static IReadOnlyList<(string, Action<CheckRow>)> All { get; } =
    [
        ("Z-*-vol", r => { var t = Of(r); r.Holds(t.Sponge.Millilitres, t.Filling.Millilitres, t.Crumb.Millilitres, t.Coat.Millilitres); }),
        .. new[] { 10, 8, 6 }.Select(d => ($"Z-{d}-mass", (Action<CheckRow>)(r => r.Is(Of(r).Mass.Grams)))),
        ("Z-*-batter", r => r.Holds(Of(r).Pans.AllBatter.Millilitres)),
        ("Z-bc", r => r.Holds(Icing.Millilitres)),
        ("Z-bc-res", r => r.Holds(ColourBatch.For(new ColourVolume("Ivory", "#F7F0E1", Icing), CakeFigures.Usual).ToMix.Millilitres)),
        ("Z-mass", r => r.Is(Sheet.Cake.Grams)),
        ("Z-cg", r => r.Is(Centre.Inches)),
        ("Z-tip", r => r.Holds(Balance.TipsAt(In(2 * r.Given[0]), Centre))),
        ("Z-serv-area", r => r.Holds(Counted(PortionRule.Area))),
        ("Z-serv-ring", r => r.Holds(Counted(PortionRule.Rings))),
        ("Z-load", r => r.Holds(Newtons)),
        ("Z-per", r => r.Holds(Newtons / Sheet.Tiers[0].Supports!.Count)),
        ("Z-sf", r => r.Holds(SupportKind.Dowel.Carries(Length.FromMillimetres(101.6m)) / (Newtons / Sheet.Tiers[0].Supports!.Count))),
        ("Z-drum", r => r.Is(Sheet.Drum!.Diameter.Inches)),
        ("Z-lift", r => r.Holds(Lifting.Index((double)Sheet.Cake.Kilograms, Lift.FromBench(r.In("W"))))),
    ];

    private static Volume Icing => Volume.Sum(Sheet.Tiers.Select(t => t.Icing));

    private static Length Centre => Balance.CentreOfGravity([.. Sheet.Tiers.Select((t, i) => new StackPart(t.Mass, In(4 * i), In(4)))]);

    private static double Newtons => Sheet.Tiers.Skip(1).Sum(t => Crumb.Newtons(t.Mass));

    public static CakeTier Tier(int inches) =>
        new(new Guid(inches, 0, 0, new byte[8]), In(inches), In(4), 2, "vanilla", "buttercream", [new CoatColour("Ivory", "#F7F0E1", 1)]);

    private static TierBuild Of(CheckRow r) => Sheet.Tiers.Single(t => r.Id.StartsWith($"Z-{t.Tier.Diameter.Inches:0}-", StringComparison.Ordinal));

    private static int Counted(PortionRule rule) =>
        BuildSheet.Of([Tier(10), Tier(8), Tier(6)], Finish.Smooth, CakeFigures.Usual with { PortionRule = rule }).Portions(Cut.Coffee);
}
