namespace Bakehouse.Web.TakeOrder;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;

/// <summary>Builds that are asked for most, top first, in inches and in centimetres (common practice, no source).</summary>
public static class Builds
{
    private static readonly Length Height = Length.FromCentimetres(10);

    /// <summary>The builds as diameters, top first.</summary>
    public static IReadOnlyList<IReadOnlyList<int>> Common(bool inches) => inches
        ? [[8], [12], [6, 10], [6, 8, 10]]
        : [[20], [30], [15, 25], [15, 20, 25]];

    /// <summary>Builds of one tier that is not round, by their words.</summary>
    public static IReadOnlyList<(string Name, TierForm Tier)> Others(bool inches) =>
    [
        ("Square", Other(OutlineKind.Square, inches ? "8" : "20")),
        ("Slab", Other(OutlineKind.Rectangle, inches ? "13" : "30", inches ? "9" : "20", low: true)),
        ("Hexagon", Other(OutlineKind.Hexagon, inches ? "9" : "24")),
        ("Heart", Other(OutlineKind.Heart, inches ? "8" : "20")),
        ("Petal", Other(OutlineKind.Petal, inches ? "9" : "24")),
        ("Number", Other(OutlineKind.Sign, inches ? "12" : "30", sign: "4", low: true)),
        ("Letter", Other(OutlineKind.Sign, inches ? "12" : "30", sign: "A", low: true)),
    ];

    // Slabs and signs lie low: two layers on 8 cm (common practice, no source).
    private static TierForm Other(OutlineKind kind, string size, string deep = "", string sign = "", bool low = false) =>
        new() { Outline = kind, Diameter = size, Deep = deep, Sign = sign, Height = low ? "8" : "10", Layers = low ? "2" : "3" };

    /// <summary>Names of colours that are mixed most, with their swatches.</summary>
    public static IReadOnlyList<(string Name, string Swatch)> Colours { get; } =
    [
        ("Ivory", "#F7F0E1"), ("White", "#FFFFFF"), ("Blush", "#E6CFCB"), ("Sage", "#C7D5BD"), ("Sky", "#BFD7E4"),
        ("Lemon", "#F6E9A6"), ("Peach", "#F3CDB0"), ("Lilac", "#D5C7E2"), ("Cocoa", "#7A4D38"), ("Navy", "#2B3F63"),
    ];

    /// <summary>A build of plain tiers 10 cm high, to draw it and to count its portions.</summary>
    /// <param name="build">Diameters, top first.</param>
    public static BuildSheet Sheet(IReadOnlyList<int> build, bool inches, CakeFigures figures) =>
        BuildSheet.Of(Tiers(build, inches), Finish.Smooth, figures);

    /// <summary>The smallest usual build for so many; null if none is large enough. Bottom first.</summary>
    public static IReadOnlyList<CakeTier>? For(Portions portions, bool inches, CakeFigures figures) => Common(inches)
        .Select(b => (Build: b, Portions: Sheet(b, inches, figures).Portions(portions.Cut)))
        .Where(b => b.Portions >= portions.Count)
        .OrderBy(b => b.Portions).Select(b => Tiers(b.Build, inches)).FirstOrDefault();

    /// <summary>Cutting cakes that serve what an order lacks, the better one first; empty if none can be made here.</summary>
    public static IReadOnlyList<CuttingCake> Beside(Order order, int missing, Shop shop) => order.Stack.Count == 0 || missing < 1 ? []
        : CuttingCake.For(missing, order.Portions.Cut, order.Stack[0], shop.Settings.Inches, CakeFigures.Of(shop), t => OrderChecks.OfTiers(order with { Tiers = [t] }, shop).Count == 0);

    /// <summary>Plain tiers of those diameters, bottom first.</summary>
    public static IReadOnlyList<CakeTier> Plain(IReadOnlyList<Length> diameters) => [.. diameters.Select((d, i) => Plain(i, d))];

    private static IReadOnlyList<CakeTier> Tiers(IReadOnlyList<int> build, bool inches) =>
        Plain([.. build.Reverse().Select(d => inches ? Length.FromInches(d) : Length.FromCentimetres(d))]);

    /// <summary>With an id of its own, the same each time: it stands for a tier that nobody has chosen yet.</summary>
    private static CakeTier Plain(int at, Length diameter) =>
        new(new Guid(at + 1, 0, 0, [0, 0, 0, 0, 0, 0, 0, 0]), diameter, Height, 3, "vanilla", "raspberry-jam", [new CoatColour(Colours[0].Name, Colours[0].Swatch, 1)]);
}
