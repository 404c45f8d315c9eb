namespace Bakehouse.Planner.Tests;

using System.Diagnostics;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using Bakehouse.Planner.Quick;
using NodaTime;

/// <summary>The sample bakery's own orders, from the book's facts to a plan.</summary>
public sealed class SampleWeekTests(ITestOutputHelper output)
{
    private static readonly LocalDate Today = new(2026, 10, 14);
    private static readonly Instant Morning = Instant.FromUtc(2026, 10, 7, 5, 0);

    [Fact]
    public void The_sample_fortnight_has_a_plan_without_late_cakes()
    {
        var orders = SampleOrders.From(Today, SampleBakery.Shop);
        var week = Week.From(orders, SampleBakery.Shop, [], null, Morning);
        var watch = Stopwatch.StartNew();

        var outcome = new QuickPlanner().Insert(week, TestContext.Current.CancellationToken);

        output.WriteLine($"{orders.Count} orders, {week.Steps.Count} steps, {watch.ElapsedMilliseconds} ms");
        Assert.Empty(outcome.Reasons);
        var verdict = Judge.Examine(week, outcome.Plan!);
        output.WriteLine(verdict.Levels.ToString());
        output.WriteLine(string.Join(", ", outcome.Late.Select(l => $"{week.Orders.First(o => o.Id == l.Key).Name} {l.Value} min")));
        Assert.Empty(verdict.Breaches);
        Assert.Equal(0, verdict.Levels.Late);
    }
}
