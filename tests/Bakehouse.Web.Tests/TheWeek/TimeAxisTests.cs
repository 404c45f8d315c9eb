namespace Bakehouse.Web.Tests.TheWeek;

using Bakehouse.Web.TheWeek;
using NodaTime;

/// <summary>Where instants lie on the axis; worked out by hand in the comments.</summary>
public sealed class TimeAxisTests
{
    private static readonly DateTimeZone London = DateTimeZoneProviders.Tzdb["Europe/London"];

    // Two days of 14 open hours and two folds of 0.9 hour are 29.8 hours: at 20 px an hour 596 px.
    private static readonly TimeAxis Two = TimeAxis.Of([new(2026, 10, 14), new(2026, 10, 15)], 6, 20, London, 596, 1);

    [Theory]
    [InlineData(14, 6, 0, 0)]
    [InlineData(14, 10, 0, 80)] // four hours
    [InlineData(14, 20, 0, 280)] // the whole day
    [InlineData(15, 1, 0, 289)] // half of the night, which is 18 px wide
    [InlineData(15, 6, 0, 298)]
    [InlineData(15, 10, 42, 392)] // 4.7 hours into the second day
    [InlineData(15, 20, 0, 578)]
    [InlineData(13, 12, 0, 0)] // before the picture
    [InlineData(17, 12, 0, 596)] // after it
    public void An_instant_lies_where_a_ruler_would_put_it(int day, int hour, int minute, double x)
    {
        Assert.Equal(20, Two.PxPerHour, 9);
        Assert.Equal(x, Two.X(London.AtStrictly(new LocalDateTime(2026, 10, day, hour, minute)).ToInstant()), 6);
    }

    [Fact]
    public void Every_open_hour_is_equally_wide_and_every_fold_is_nine_tenths_of_it_also_when_the_clocks_change()
    {
        // Clocks go back on Sunday 25 October 2026 at 02:00; Sunday and Monday are closed and folded with their nights.
        var axis = TimeAxis.Of([new(2026, 10, 23), new(2026, 10, 24), new(2026, 10, 27), new(2026, 10, 28)], 6, 20, London, 1120, 1);

        Assert.Equal(8, axis.Stretches.Count);
        Assert.All(axis.Stretches.Where(s => s.Day is not null), s => Assert.Equal(axis.PxPerHour, s.Width / 14, 9));
        Assert.All(axis.Stretches.Where(s => s.Day is null), s => Assert.Equal(0.9 * axis.PxPerHour, s.Width, 9));
        Assert.All(axis.Stretches.Zip(axis.Stretches.Skip(1)), p => Assert.Equal(p.First.X + p.First.Width, p.Second.X, 9));
        Assert.All(axis.Stretches.Zip(axis.Stretches.Skip(1)), p => Assert.Equal(p.First.To, p.Second.From));
        Assert.Equal(1120, axis.Width, 6);
    }

    [Fact]
    public void An_hour_is_never_narrower_than_asked()
    {
        var axis = TimeAxis.Of([new(2026, 10, 14), new(2026, 10, 15)], 6, 20, London, 100, 14);

        Assert.Equal(14, axis.PxPerHour, 9);
        Assert.Equal(29.8 * 14, axis.Width, 6);
    }

    [Fact]
    public void Four_open_days_are_drawn_from_the_one_before_today_and_windows_follow_each_other()
    {
        // The sample bakery is shut on Sunday and Monday. Thursday 15 October 2026.
        var facts = PlanFacts.Of(new(1, Bakehouse.Domain.Shops.SampleBakery.Shop, [], [], null, null, []), WeeksInHand.Thursday)!;

        Assert.Equal([new(2026, 10, 14), new(2026, 10, 15), new(2026, 10, 16), new(2026, 10, 17)], WeekWindow.Of(facts).Open);
        Assert.Equal([new(2026, 10, 20), new(2026, 10, 21), new(2026, 10, 22), new(2026, 10, 23)], WeekWindow.Of(facts, 1).Open);
        Assert.Equal([new(2026, 10, 8), new(2026, 10, 9), new(2026, 10, 10), new(2026, 10, 13)], WeekWindow.Of(facts, -1).Open);
    }
}
