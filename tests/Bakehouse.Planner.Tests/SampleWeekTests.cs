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
    [Theory]
    [InlineData(12)]
    [InlineData(13)]
    [InlineData(14)]
    [InlineData(15)]
    [InlineData(16)]
    [InlineData(17)]
    [InlineData(18)]
    public void The_sample_fortnight_has_a_plan_without_late_cakes_on_whatever_weekday_it_is_opened(int day)
    {
        var today = new LocalDate(2026, 10, day);
        var orders = SampleOrders.From(today, SampleBakery.Shop);
        Assert.Contains(orders, o => o.Handover.Way == Way.Deliver && o.Handover.At.DayOfWeek == IsoDayOfWeek.Saturday);
        Assert.Contains(orders, o => o.Allergies.Kind == AllergyKind.Avoid);
        Assert.Equal(Enum.GetValues<Finish>().Length, orders.Select(o => o.Finish).Distinct().Count());
        var morning = (today.PlusDays(-7) + new LocalTime(6, 0)).InZoneStrictly(DateTimeZoneProviders.Tzdb["Europe/London"]).ToInstant();
        Assert.All(orders, o => Assert.Empty(OrderChecks.Problems(o, SampleBakery.Shop, morning, owner: false)));
        var week = Week.From(orders, SampleBakery.Shop, [], null, morning);
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
