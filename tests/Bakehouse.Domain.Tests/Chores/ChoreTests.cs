namespace Bakehouse.Domain.Tests.Chores;

using Bakehouse.Domain.Chores;
using Bakehouse.Domain.Planning;
using CsCheck;
using NodaTime;

/// <summary>When a chore is: once or on days of the week, by the clock on the wall, also when clocks change.</summary>
public sealed class ChoreTests
{
    private static readonly DateTimeZone London = DateTimeZoneProviders.Tzdb["Europe/London"];

    /// <summary>
    /// The days of RFC 5545, 3.8.5.3, of the weekly rules with UNTIL and BYDAY: "DTSTART 2 September 1997 ... FREQ=WEEKLY;
    /// UNTIL=19971007T000000Z;WKST=SU;BYDAY=TU,TH" gives September 2, 4, 9, 11, 16, 18, 23, 25, 30 and October 2.
    /// </summary>
    [Fact]
    public void Its_days_are_those_of_the_standard_for_calendars()
    {
        var chore = Chore(new LocalDate(1997, 9, 2)) with { Days = [IsoDayOfWeek.Tuesday, IsoDayOfWeek.Thursday], Last = new LocalDate(1997, 10, 6) };

        var days = Enumerable.Range(0, 60).Select(new LocalDate(1997, 8, 20).PlusDays).Where(chore.IsOn).ToList();

        Assert.Equal([.. new[] { 2, 4, 9, 11, 16, 18, 23, 25, 30 }.Select(d => new LocalDate(1997, 9, d)), new LocalDate(1997, 10, 2)], days);
    }

    [Fact]
    public void Without_days_it_is_once_and_a_dropped_one_is_never()
    {
        var chore = Chore(new LocalDate(2026, 10, 14));

        Assert.Equal([new LocalDate(2026, 10, 14)], Enumerable.Range(0, 400).Select(new LocalDate(2026, 1, 1).PlusDays).Where(chore.IsOn));
        Assert.False((chore with { Dropped = true }).IsOn(new LocalDate(2026, 10, 14)));
    }

    /// <summary>In London clocks went forward on 28 March 2027 at 01:00 and go back on 31 October 2027 at 02:00 (tz database).</summary>
    [Theory]
    [InlineData(2027, 3, 27, 23)]
    [InlineData(2027, 10, 30, 25)]
    [InlineData(2027, 6, 5, 24)]
    public void On_the_night_of_a_clock_change_it_keeps_to_the_clock_on_the_wall(int year, int month, int day, int hours)
    {
        var saturday = new LocalDate(year, month, day);
        var time = WeekTime.Of(London, London.AtStartOfDay(saturday).ToInstant(), 7);
        var chore = Chore(saturday) with { Days = [IsoDayOfWeek.Saturday, IsoDayOfWeek.Sunday], Last = saturday.PlusDays(1) };

        var spans = chore.In(time);

        Assert.Equal(2, spans.Count);
        Assert.Equal(hours * 60, spans[1].From - spans[0].From);
        Assert.All(spans, s => Assert.Equal(new LocalTime(9, 0), time.At(s.From).InZone(London).TimeOfDay));
        Assert.All(spans, s => Assert.Equal(60, s.Minutes));
    }

    [Fact]
    public void An_hour_that_the_clock_jumps_over_takes_nobody_and_one_that_comes_twice_takes_both()
    {
        var (spring, autumn) = (new LocalDate(2027, 3, 28), new LocalDate(2027, 10, 31));
        var none = (Chore(spring) with { From = new LocalTime(1, 0), To = new LocalTime(1, 30) }).In(WeekTime.Of(London, London.AtStartOfDay(spring).ToInstant(), 7));
        var twice = (Chore(autumn) with { From = new LocalTime(0, 30), To = new LocalTime(2, 30) }).In(WeekTime.Of(London, London.AtStartOfDay(autumn).ToInstant(), 7));

        Assert.Empty(none);
        Assert.Equal(180, Assert.Single(twice).Minutes);
    }

    [Fact]
    public void Whatever_it_is_its_times_are_whole_grains_apart_and_inside_the_week() => Gen.Select(
        Gen.Int[0, 1439], Gen.Int[1, 600], Gen.Int[0, 400], Gen.Enum<IsoDayOfWeek>().Array[0, 5]).Sample(
        (from, minutes, day, days) =>
        {
            var now = Instant.FromUtc(2026, 10, 14, 7, 0);
            var time = WeekTime.Of(London, now, 21);
            var chore = Chore(new LocalDate(2026, 9, 1).PlusDays(day)) with
            {
                From = LocalTime.Midnight.PlusMinutes(from),
                To = LocalTime.Midnight.PlusMinutes(Math.Min(1439, from + minutes)),
                Days = [.. days.Where(d => d != IsoDayOfWeek.None).Distinct()],
            };

            var spans = chore.In(time);

            Assert.All(spans, s => Assert.True(s.From >= 0 && s.To <= time.Horizon && s.From < s.To && s.From % 5 == 0 && s.To % 5 == 0));
            Assert.All(spans.Zip(spans.Skip(1)), p => Assert.True(p.First.To < p.Second.From));
        },
        iter: 500);

    private static Chore Chore(LocalDate first) => new(
        Guid.NewGuid(), 1, ChoreKind.SchoolRun, "School run", first, new LocalTime(9, 0), new LocalTime(10, 0), [], null, ["ines"], [], []);
}
