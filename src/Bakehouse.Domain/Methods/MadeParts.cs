namespace Bakehouse.Domain.Methods;

using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;

/// <summary>
/// Something that was made and belongs to no cake any more: its tier was taken away, its order is off, or the cake needs fewer
/// loads than it did. It stands in the shop all the same: spare layers, a coated tier, a bowl of cream.
/// </summary>
/// <param name="Order">The order for which it was made.</param>
/// <param name="Tier">Null for what was made for the whole cake.</param>
/// <param name="Ordinal">Which load or bowl of the tier or cake.</param>
/// <param name="Ticks">What was done to it, in the order of work.</param>
public sealed record MadePart(Guid Order, Guid? Tier, int Ordinal, IReadOnlyList<Tick> Ticks)
{
    /// <summary>The farthest that it came: a word of the method.</summary>
    public string Operation => StepKey.Parse(Ticks[^1].Step)!.Value.Operation;
}

/// <summary>Keeps the law that no tick is ever lost: each belongs to a step that is wanted, to a cake that has gone out, or to a made part.</summary>
public static class MadeParts
{
    /// <summary>The made parts, oldest first.</summary>
    /// <param name="orders">Newest versions of all orders of which ticks are given.</param>
    public static IReadOnlyList<MadePart> Of(IReadOnlyList<Order> orders, Shop shop, IReadOnlyList<Tick> ticks)
    {
        var gone = orders.Where(o => o.Stage == Stage.HandedOver).Select(o => o.Id).ToHashSet();
        var wanted = orders.Where(o => Stages.IsPlanned(o.Stage)).SelectMany(o => CakeSteps.Of(o, shop).Steps).Select(s => s.Id).ToHashSet();
        var work = Method.Operations.Select((o, i) => (o.Id, i)).ToDictionary(o => o.Id, o => o.i);
        return
        [
            .. ticks.Select(t => (Tick: t, Key: StepKey.Parse(t.Step)))
                .Where(t => t.Key is { } key && !gone.Contains(key.Order) && !wanted.Contains(t.Tick.Step) && work.ContainsKey(key.Operation))
                .GroupBy(t => (t.Key!.Value.Order, t.Key.Value.Tier, t.Key.Value.Ordinal))
                .Select(g => new MadePart(g.Key.Order, g.Key.Tier, g.Key.Ordinal, [.. g.OrderBy(t => work[t.Key!.Value.Operation]).Select(t => t.Tick)]))
                .OrderBy(p => p.Ticks[0].Done),
        ];
    }
}
