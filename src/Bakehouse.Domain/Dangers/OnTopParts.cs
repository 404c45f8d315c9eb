namespace Bakehouse.Domain.Dangers;

using System.Globalization;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Orders;

/// <summary>So many parts of one kind: "11 dowels".</summary>
public sealed record PartCount(int Count, string Word)
{
    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Count} {Word}");
}

/// <summary>What goes into a cake and must come out of it again. Whoever stacks counts these in; whoever cuts is told the same count.</summary>
/// <param name="Parts">Without those of which there are none.</param>
public sealed record HiddenParts(IReadOnlyList<PartCount> Parts)
{
    /// <summary>All of them together.</summary>
    public int Total => Parts.Sum(p => p.Count);

    /// <summary>"11 dowels, 2 boards, 1 rod"; "" for a cake that hides nothing.</summary>
    public override string ToString() => string.Join(", ", Parts);

    /// <summary>Dowels, boards and rods of the build; picks, wires and board discs of what is put on top.</summary>
    public static HiddenParts Of(Order order, BuildSheet sheet)
    {
        var flowers = order.OnTop?.Flowers?.Kinds ?? [];
        var things = (order.OnTop?.Toppings ?? []).Select(t => (t.Count, Is: Topping.Of(t.Topping))).Where(t => t.Is is not null).ToList();
        return new HiddenParts([.. new[]
        {
            Many(sheet.Supports, sheet.Figures.SupportWord),
            Many(sheet.Stack.Count - 1, "board"),
            Many(sheet.Rods, "rod"),
            Many(flowers.Where(f => f.Put == FlowerPut.Pick).Sum(f => f.Stems) + things.Sum(t => t.Count * t.Is!.Picks), "pick"),
            Many(things.Sum(t => t.Count * t.Is!.Wires), "wire"),
            Many(flowers.Where(f => f.Put == FlowerPut.Disc).Sum(f => f.Stems), "disc"),
        }.Where(p => p.Count > 0)]);
    }

    private static PartCount Many(int count, string word) => new(count, count == 1 ? word : word + "s");
}

/// <summary>What must be off the cake before anybody cuts it.</summary>
public static class TakeOff
{
    /// <summary>"5 stems of foxglove", "1 acrylic or wooden topper"; empty if everything on it is eaten.</summary>
    public static IReadOnlyList<string> Of(Order order) => Of(order.OnTop);

    /// <summary>The same of what is put on top; null for nothing.</summary>
    public static IReadOnlyList<string> Of(OnTop? top) =>
    [
        .. (top?.Flowers?.Kinds ?? []).Where(k => k.ComesOff).Select(k => $"{Counted(k.Stems)} {(k.Stems == 1 ? "stem" : "stems")} of {Lower(Flower.Named(k.Species)?.Name ?? k.Species.Trim())}"),
        .. (top?.Toppings ?? []).Where(t => Topping.Of(t.Topping)?.Use == ToppingUse.ContactOnly).Select(t => $"{Lower(Topping.Of(t.Topping)!.Name)}{(t.Count == 1 ? "" : $" ({Counted(t.Count)})")}"),
    ];

    internal static string Lower(string name) => name.Length == 0 ? name : char.ToLowerInvariant(name[0]) + name[1..];

    private static string Counted(int count) => count.ToString(CultureInfo.InvariantCulture);
}
