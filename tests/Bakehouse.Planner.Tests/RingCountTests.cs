namespace Bakehouse.Planner.Tests;

using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Reminders;
using Bakehouse.Domain.Shops;
using Bakehouse.Planner.Quick;
using NodaTime;

/// <summary>How often the sample bakery rings. An alarm that rings for everything is heard by nobody (common practice, no source).</summary>
public sealed class RingCountTests(ITestOutputHelper output)
{
    private const int MostADay = 6;

    /// <summary>The fortnight as it is opened on each day of a week, so also with three days of pickups on one.</summary>
    [Theory]
    [InlineData(12)]
    [InlineData(13)]
    [InlineData(14)]
    [InlineData(15)]
    [InlineData(16)]
    [InlineData(17)]
    [InlineData(18)]
    public void Nobody_hears_more_than_six_rings_a_day_over_the_fortnight(int october)
    {
        var now = Instant.FromUtc(2026, 10, october, 6, 30);
        var sample = OpenedSample.At(now, new QuickPlanner(), TestContext.Current.CancellationToken);
        var zone = DateTimeZoneProviders.Tzdb[sample.Shop.Zone];
        var week = Week.From(sample.Orders, sample.Shop, sample.Ticks, sample.Wall, now);
        var rings = Rings.Of(week, sample.Wall, sample.Orders, sample.Shop, sample.Ticks, []).Where(r => r.ComesByItself).ToList();
        var days = rings.GroupBy(r => (r.Person, r.Due.InZone(zone).Date)).OrderByDescending(g => g.Count()).ToList();
        output.WriteLine($"{rings.Count} rings, at most {days[0].Count()} a person and day");
        Assert.InRange(rings.Count, 20, int.MaxValue);
        Assert.All(days, d => Assert.True(d.Count() <= MostADay, $"{d.Key}: {string.Join(", ", d.Select(r => $"{r.Kind} {r.Due.InZone(zone).TimeOfDay}"))}"));
    }

    /// <summary>Everything that the plan has steps for, but only three kinds of them ring.</summary>
    [Fact]
    public void Starts_and_waits_are_silent()
    {
        var now = Instant.FromUtc(2026, 10, 14, 6, 30);
        var sample = OpenedSample.At(now, new QuickPlanner(), TestContext.Current.CancellationToken);
        var week = Week.From(sample.Orders, sample.Shop, sample.Ticks, sample.Wall, now);
        var rings = Rings.Of(week, sample.Wall, sample.Orders, sample.Shop, sample.Ticks, []);
        var names = week.Steps.ToDictionary(s => s.Id, s => s.Name);
        Assert.Subset(new HashSet<string>(["bake", "deliver", "handover", "leavefridge"]), rings.Select(r => names[r.Step]).ToHashSet());
        Assert.True(rings.Count * 4 < sample.Wall.Plan.Steps.Count, $"{rings.Count} rings for {sample.Wall.Plan.Steps.Count} steps.");
    }
}
