namespace Bakehouse.Planner.Tests;

using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Reminders;
using Bakehouse.Domain.Shops;
using Bakehouse.Planner.Quick;
using NodaTime;

/// <summary>
/// How often hands in flour must touch the screen on the sample bakery's fortnight: at most 20 taps a person and day, in at most six
/// blocks (common practice, no source).
/// </summary>
public sealed class TapCountTests(ITestOutputHelper output)
{
    private const int MostTaps = 20;
    private const int MostBlocks = 6;

    /// <summary>
    /// As opened on each day of a week. Whoever ticks everything taps each stint once, rings among them, and is asked nothing; whoever
    /// ticks only what may not be guessed answers at most one question before each of those.
    /// </summary>
    [Theory]
    [InlineData(12)]
    [InlineData(13)]
    [InlineData(14)]
    [InlineData(15)]
    [InlineData(16)]
    [InlineData(17)]
    [InlineData(18)]
    public void Nobody_taps_more_than_twenty_times_a_day_and_a_day_is_at_most_six_blocks(int october)
    {
        var days = Days(Instant.FromUtc(2026, 10, october, 6, 30));
        output.WriteLine($"{days.Count} days of people: most taps {days.Max(d => d.Taps)}, questions {days.Max(d => d.Questions)}, blocks {days.Max(d => d.Blocks)}; pieces {days.Max(d => d.Pieces)}");
        Assert.InRange(days.Count, 20, int.MaxValue);
        Assert.All(days, d => Assert.True(Math.Max(d.Taps, d.Asked + d.Questions) <= MostTaps, $"{d.Who}: {d.Taps} taps, or {d.Asked} and {d.Questions} questions: {d.All}"));
        Assert.All(days, d => Assert.InRange(d.Blocks, 1, MostBlocks));
    }

    /// <summary>The least that must be tapped, if everything else is left to be assumed: only what may not be guessed.</summary>
    [Fact]
    public void Who_ticks_only_what_is_asked_taps_less_than_half_of_the_pieces()
    {
        var days = Days(Instant.FromUtc(2026, 10, 15, 6, 30));
        var (asked, pieces) = (days.Sum(d => d.Asked), days.Sum(d => d.Pieces));
        output.WriteLine($"{asked} of {pieces} pieces must be tapped");
        Assert.True(asked * 2 < pieces + days.Count, $"{asked} of {pieces}");
    }

    private sealed record Day(string Who, int Taps, int Questions, int Blocks, int Pieces, int Asked, string All);

    private static List<Day> Days(Instant now)
    {
        var sample = OpenedSample.At(now, new QuickPlanner(), TestContext.Current.CancellationToken);
        var zone = DateTimeZoneProviders.Tzdb[sample.Shop.Zone];
        var week = Week.From(sample.Orders, sample.Shop, sample.Ticks, sample.Wall, now);
        return
        [
            .. from person in WorkList.Of(week, sample.Wall, sample.Ticks, now)
               from day in person.Stints.GroupBy(s => s.Start.InZone(zone).Date)
               let asked = day.Where(s => Assumed.IsAsked(s.Operation)).ToList()
               select new Day(
                   $"{person.Person} {day.Key:uuuu-MM-dd}", day.Count(), asked.Count(s => s.Operation is "fill" or "box"), person.Blocks(s => s.Start.InZone(zone).Date == day.Key).Count,
                   day.Sum(s => s.Works.Count), asked.Count, string.Join(" ", day.Select(s => $"{s.Start.InZone(zone):HH:mm}{s.Operation}"))),
        ];
    }
}
