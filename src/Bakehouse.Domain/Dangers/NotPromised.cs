namespace Bakehouse.Domain.Dangers;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;

/// <summary>What nobody in the shop may promise of a cake, in a baker's words: what we count is no proof, and what we set is no law.</summary>
public static class NotPromised
{
    /// <summary>One sentence each; at least one, since no kitchen can speak for its traces.</summary>
    /// <param name="sheet">Its build; null if that can't be worked out.</param>
    public static IReadOnlyList<string> Of(Order order, BuildSheet? sheet) =>
    [
        .. sheet?.Supports > 0 ? ["That it will carry: the dowels are a usual number, nobody has proved their strength."] : Array.Empty<string>(),
        "That nothing else got in: what is used in this kitchen can leave traces.",
        .. order.Tiers.Any(t => !t.IsFalse && Filling.Of(t.Filling)?.OnClock == true) || order.OnTop?.Toppings.Any(t => Topping.Of(t.Topping)?.NeedsFridge == true) == true
            ? ["How long it may stand out of the cold: ours is a setting, the rules of your place come first."] : Array.Empty<string>(),
    ];
}
