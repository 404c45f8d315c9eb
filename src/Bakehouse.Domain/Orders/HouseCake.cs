namespace Bakehouse.Domain.Orders;

/// <summary>A cake that the shop sells by name: its build is taken at the counter in one tap.</summary>
/// <param name="Tiers">Bottom first; an order that takes it gets tiers with ids of its own.</param>
public sealed record HouseCake(string Name, IReadOnlyList<CakeTier> Tiers, Finish Finish, Decoration Decoration)
{
    /// <summary>So many at most: more are not found again at a glance (common practice, no source).</summary>
    public const int Most = 12;

    /// <summary>The build of an order under a name.</summary>
    public static HouseCake Of(string name, Order order) => new(name.Trim(), order.Tiers, order.Finish, order.Decoration);
}
