namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;

/// <summary>What is put on a coated tier: beads, a drip, a sheet of paste.</summary>
public static class Trim
{
    /// <summary>A drip covers half of the side that it runs down (common practice, no source).</summary>
    public const double DripShare = 0.5;

    /// <summary>A drip is 3 mm thick (common practice, no source).</summary>
    public static Length DripThickness { get; } = Length.FromMillimetres(3);

    /// <summary>A round bead around an outline: its length times π·d²/4.</summary>
    public static Volume Bead(Shape around, Length across) => Millilitres(around.PerimeterMillimetres * Math.PI * Mm(across) * Mm(across) / 4);

    /// <summary>A drip around the edge: the share of a band as high as it runs, as thick as it is.</summary>
    public static Volume Drip(Shape around, Length reach) => Millilitres(around.PerimeterMillimetres * Mm(reach) * DripShare * Mm(DripThickness));

    /// <summary>A bead into the seam where an upper tier stands: 6 mm across (common practice, no source), of the part kept back.</summary>
    public static Volume Seam(Shape upper) => Bead(upper, Length.FromMillimetres(6));

    private static Volume Millilitres(double cubicMillimetres) => Volume.FromMillilitres(cubicMillimetres / 1000);

    private static double Mm(Length length) => (double)length.Millimetres;
}

/// <summary>A sheet of sugar paste rolled out to cover a tier.</summary>
/// <param name="Wide">From side to side; a round sheet is as wide as deep.</param>
/// <param name="Deep">From front to back.</param>
/// <param name="IsRound">True for a round tier.</param>
/// <param name="Rolled">Mass of the whole sheet.</param>
/// <param name="OnCake">Mass of what stays on the cake; the rest is cut off and kneaded again.</param>
public sealed record PasteSheet(Length Wide, Length Deep, bool IsRound, Length Thickness, Mass Rolled, Mass OnCake)
{
    /// <summary>Over the foot on each side, to be cut off: 1 in (common practice, no source).</summary>
    public static Length Margin { get; } = Length.FromInches(1);

    /// <summary>Usual thickness: 4 mm (3 to 5; common practice, no source).</summary>
    public static Length Usual { get; } = Length.FromMillimetres(4);

    /// <summary>Sugar paste: 1.40 g/mL (1.35 to 1.5, from memory).</summary>
    public static Density Paste { get; } = Density.FromGramsPerMillilitre(1.40);

    /// <summary>The sheet for a tier: its size and twice its height and margin, each way. Its gathers at corners are not counted.</summary>
    /// <param name="shape">What is covered: with the crumb coat on it.</param>
    public static PasteSheet For(Shape shape, Length height, Length thickness)
    {
        var more = (height + Margin) * 2;
        var (wide, deep, round) = (shape.Wide + more, shape.Deep + more, shape is Round);
        Shape sheet = round ? new Round(wide) : new Slab(wide, deep);
        return new PasteSheet(wide, deep, round, thickness, Paste * (sheet.Area * thickness), Paste * (shape.Outside(height) * thickness));
    }
}

/// <summary>One colour of the sugar paste of a tier or a cake, coloured in one piece.</summary>
/// <param name="Rolled">Of the sheets before they are trimmed.</param>
/// <param name="OnCake">Of it what stays on the cake.</param>
public sealed record PasteColour(string Name, string Swatch, Mass Rolled, Mass OnCake)
{
    /// <summary>A sheet shared out by the shares of the colours, which add up to 1.</summary>
    public static IReadOnlyList<PasteColour> Split(PasteSheet sheet, IReadOnlyList<CoatColour> colours) =>
        [.. colours.Where(c => c.Share > 0).Select(c => new PasteColour(c.Name, c.Swatch, sheet.Rolled * c.Share, sheet.OnCake * c.Share))];

    /// <summary>The same colours of several tiers together; the same name and swatch is the same colour.</summary>
    public static IReadOnlyList<PasteColour> Together(IEnumerable<PasteColour> colours) =>
    [
        .. colours.GroupBy(c => (c.Name, Swatch: c.Swatch.ToUpperInvariant())).Select(g => g.First() with
        {
            Rolled = Mass.FromGrams(g.Sum(c => c.Rolled.Grams)), OnCake = Mass.FromGrams(g.Sum(c => c.OnCake.Grams)),
        }),
    ];
}
