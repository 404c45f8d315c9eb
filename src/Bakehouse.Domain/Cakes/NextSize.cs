namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;

/// <summary>The same cake, larger: what serves so many where it does not.</summary>
public static class NextSize
{
    /// <summary>How often a size is tried.</summary>
    private const int Most = 12;

    /// <summary>
    /// Its tiers, each wider by the same steps, as soon as it serves what was asked; null if none does that can be built. Outlines, heights,
    /// layers, flavours and ids stay. Cupcakes beside a cake stay as many as they are; alone, the last batch gets as many more as are missing.
    /// </summary>
    /// <param name="step">One tier grows by it; several by twice as much, as pans of stacks come.</param>
    /// <param name="canBe">True for tiers that the shop can bake and stand.</param>
    public static IReadOnlyList<CakeTier>? For(Order order, Length step, CakeFigures figures, Func<IReadOnlyList<CakeTier>, bool> canBe)
    {
        if (order.Stack.Count == 0)
        {
            return More(order, figures) is { } more && canBe(more) ? more : null;
        }

        var by = order.Stack.Count > 1 ? step * 2 : step;
        return Enumerable.Range(1, Most)
            .Select(n => order.Tiers.Select(t => t.IsFalse || t.StandsBeside ? t : Wider(t, by * n)).ToList())
            .FirstOrDefault(tiers => Serves.Of(order with { Tiers = tiers }, figures) is { Missing: 0 } && canBe(tiers));
    }

    private static List<CakeTier>? More(Order order, CakeFigures figures) =>
        order.Tiers is [.., { Special: { Cupcakes: { } cupcakes } special } last] && Serves.Of(order, figures) is { Missing: var missing and > 0 }
            ? [.. order.Tiers.SkipLast(1), last with { Special = special with { Cupcakes = new Cupcakes(cupcakes.Count + missing) } }]
            : null;

    private static CakeTier Wider(CakeTier tier, Length by) => tier with
    {
        Diameter = tier.Diameter + by,
        Special = tier.Special is { Outline: { } outline } special ? special with { Outline = outline with { Wide = outline.Wide + by, Deep = outline.Deep + by } } : tier.Special,
    };
}
