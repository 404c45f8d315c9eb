namespace Bakehouse.Domain.Cakes;

using System.Globalization;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;

/// <summary>What tiers and boards are called, by size and outline, in the shop's own unit.</summary>
public static class TierNames
{
    /// <summary>"10 in", "9 in hexagon", "12 × 18 in", "7, 12 in high", "24 cupcakes".</summary>
    /// <param name="inches">False for centimetres.</param>
    public static string Of(CakeTier tier, bool inches) => tier.Special?.Cupcakes?.ToString() ?? tier.Special?.Outline switch
    {
        null or { Kind: OutlineKind.Round } => Size(tier.Diameter, inches),
        { Kind: OutlineKind.Rectangle, Deep: { } deep } outline => $"{Number(outline.Wide, inches)} × {Size(deep, inches)}",
        { Kind: OutlineKind.Sign } outline => $"{outline.Sign}, {Size(outline.Wide, inches)} high",
        { } outline => $"{Size(tier.Diameter, inches)} {Word(outline.Kind)}",
    };

    /// <summary>What its face leaves out: "hexagon", "12 in high"; empty for a round or a slab.</summary>
    public static string Beside(CakeTier tier, bool inches) => tier.Special?.Outline switch
    {
        null or { Kind: OutlineKind.Rectangle } => "",
        { Kind: OutlineKind.Sign } outline => $"{Size(outline.Wide, inches)} high",
        { } outline => Word(outline.Kind),
    };

    /// <summary>"10 in", "9 in", "12 × 18 in", "7": as short as it can be where the outline is seen.</summary>
    public static string Face(CakeTier tier, bool inches) => tier.Special?.Cupcakes?.ToString() ?? tier.Special?.Outline switch
    {
        { Kind: OutlineKind.Sign } outline => outline.Sign,
        { Kind: OutlineKind.Rectangle } => Of(tier, inches),
        _ => Size(tier.Diameter, inches),
    };

    /// <summary>"6+8+10", "6+9 hexagon", "12×18": top first, as it is said in the shop; "6+8 and 36 cupcakes" with all cupcakes together.</summary>
    /// <param name="tiers">Bottom first.</param>
    public static string Build(IEnumerable<CakeTier> tiers, bool inches) => Build(tiers, stack => string.Join('+', stack.Reverse().Select(t => Short(t, inches))));

    /// <summary>The same with other words for the stack; they are not asked for if there is none.</summary>
    public static string Build(IEnumerable<CakeTier> tiers, Func<IReadOnlyList<CakeTier>, string> words)
    {
        List<CakeTier> stack = [.. tiers.Where(t => !t.StandsBeside)];
        var count = tiers.Sum(t => t.Special?.Cupcakes?.Count ?? 0);
        string[] said = [.. stack.Count > 0 ? [words(stack)] : Array.Empty<string>(), .. count > 0 ? [new Cupcakes(count).ToString()] : Array.Empty<string>()];
        return string.Join(" and ", said);
    }

    /// <summary>"14 × 10 in": the rectangle that an outline takes, whole inches up.</summary>
    public static string Of(Shape shape) => string.Create(CultureInfo.InvariantCulture, $"{Math.Ceiling(shape.Wide.Inches)} × {Math.Ceiling(shape.Deep.Inches)} in");

    /// <summary>A board or drum: "14 in", or "16 × 22 in" if it is straight.</summary>
    public static string Of(Board board, bool inches) => board.Shape is Slab slab && slab.Width != slab.Depth
        ? $"{Number(slab.Width, inches)} × {Size(slab.Depth, inches)}"
        : Size(board.Diameter, inches);

    /// <summary>"square", "hexagon": the outline in a word; empty for a round.</summary>
    public static string Word(OutlineKind kind) => kind switch
    {
        OutlineKind.Round => "",
        OutlineKind.Square => "square",
        OutlineKind.Rectangle => "slab",
        OutlineKind.Hexagon => "hexagon",
        OutlineKind.Petal => "petal",
        OutlineKind.Heart => "heart",
        OutlineKind.HalfRound => "half-round",
        OutlineKind.Sign => "sign",
        _ => throw new InvalidOperationException($"Unknown outline {kind}."),
    };

    private static string Short(CakeTier tier, bool inches) => tier.Special?.Outline switch
    {
        null or { Kind: OutlineKind.Round } => Number(tier.Diameter, inches),
        { Kind: OutlineKind.Rectangle, Deep: { } deep } outline => $"{Number(outline.Wide, inches)}×{Number(deep, inches)}",
        { Kind: OutlineKind.Sign } outline => $"“{outline.Sign}”",
        { } outline => $"{Number(tier.Diameter, inches)} {Word(outline.Kind)}",
    };

    private static string Size(Length length, bool inches) => $"{Number(length, inches)} {(inches ? "in" : "cm")}";

    private static string Number(Length length, bool inches) => (inches ? length.Inches : length.Centimetres).ToString("0.##", CultureInfo.InvariantCulture);
}
