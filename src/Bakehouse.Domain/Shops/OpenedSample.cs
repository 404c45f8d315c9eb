namespace Bakehouse.Domain.Shops;

using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Recipes;

/// <summary>The sample bakery on the morning that it is opened: its orders, the plan on the wall and what is done already.</summary>
public sealed record OpenedSample(Shop Shop, IReadOnlyList<Order> Orders, Wall Wall, IReadOnlyList<Tick> Ticks)
{
    private static readonly Duration Before = Duration.FromDays(7);

    /// <summary>
    /// Plans the fortnight as of a week ago and ticks what that plan has finished by now, each by whoever was planned for it; so
    /// there is something to do this morning.
    /// </summary>
    public static OpenedSample At(Instant now, IPlanner planner, CancellationToken cancel = default)
    {
        var shop = SampleBakery.Shop;
        var zone = DateTimeZoneProviders.Tzdb[shop.Zone];
        var orders = SampleOrders.From(now.InZone(zone).Date, shop);
        var then = now - Before;
        var week = Week.From(orders, shop, [], null, then);
        var plan = planner.Insert(week, cancel).Plan
            ?? throw new InvalidOperationException($"The sample bakery has no plan as of {then}.");
        var wall = new Wall(week.Epoch, plan);
        var steps = week.Steps.ToDictionary(s => s.Id);
        var minute = (int)(now - week.Epoch).TotalMinutes;
        var ticks = plan.Steps
            .Where(r => r.Start + steps[r.Step].Minutes <= minute)
            .OrderBy(r => r.Start)
            .Select(r => new Tick(r.Step, week.Epoch + Duration.FromMinutes(r.Start + steps[r.Step].Minutes), r.People.Count > 0 ? r.People[0] : "petra"))
            .ToList();
        var boxes = week.Steps.Where(s => s.Name == "box").ToLookup(s => s.Order, s => s.Id);
        return new OpenedSample(shop, [.. orders.Select(o => o with { Stage = StageOf(o, ticks, boxes[o.Id.ToString("N")]), MadeFrom = MadeFrom.Of(Starter.Sample), Statement = o.Allergies.Kind == AllergyKind.Avoid ? new Statement("wren", then, "ines", then) : null })], wall, ticks);
    }

    private static Stage StageOf(Order order, List<Tick> ticks, IEnumerable<string> boxes)
    {
        var done = ticks.Select(t => t.Step).Where(s => Methods.StepKey.Parse(s)!.Value.Order == order.Id).ToHashSet();
        return boxes.All(done.Contains) ? Stage.Ready : done.Count > 0 ? Stage.InWork : order.Stage;
    }
}
