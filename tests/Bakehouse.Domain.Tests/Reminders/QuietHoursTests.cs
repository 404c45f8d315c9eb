namespace Bakehouse.Domain.Tests.Reminders;

using Bakehouse.Domain.Reminders;
using Bakehouse.Domain.Shops;
using Bakehouse.Testing;
using static SmallPlan;

/// <summary>Quiet hours by the wall, in every zone of the tz database and on the nights on which the clock changes there.</summary>
public sealed class QuietHoursTests(ITestOutputHelper output)
{
    private static readonly Duration Minute = Duration.FromMinutes(1);

    private static int Cases => Seeds.Whole ? 10_000 : 1_200;

    /// <summary>
    /// The truth is found by walking: quiet begins at the first minute at which the wall shows its beginning or more, and ends at the first
    /// at which it shows its end or more. No resolver of local times has a part in it.
    /// </summary>
    [Fact]
    public void What_may_wait_is_held_to_the_first_minute_at_which_the_wall_shows_the_end()
    {
        var seed = Seeds.Of();
        output.WriteLine($"seed {seed}, {Cases} cases");
        var dice = new Random(seed);
        var zones = DateTimeZoneProviders.Tzdb.Ids.ToList();
        for (var i = 0; i < Cases; i++)
        {
            var zone = DateTimeZoneProviders.Tzdb[zones[i % zones.Count]];
            var quiet = new QuietHours(Time(dice), Time(dice), zone);
            var moment = Near(zone, dice);
            if (quiet.From != quiet.To)
            {
                Assert.True(quiet.EndOr(moment) == Walked(quiet, moment), $"{zone.Id} {quiet.From}-{quiet.To} at {moment}: {quiet.EndOr(moment)}, walked {Walked(quiet, moment)}");
                Assert.Equal(quiet.EndOr(moment), quiet.EndOr(quiet.EndOr(moment)));
            }
        }
    }

    /// <summary>
    /// London, quiet from 22:00 to 01:30 (tz database): on 25 October 2026 the first 01:30, 00:30 UTC, ends it; on 29 March 2026 01:30 does
    /// not come, and 02:00 summer time, 01:00 UTC, does.
    /// </summary>
    [Theory]
    [InlineData(2026, 10, 25, 0, 30)]
    [InlineData(2026, 3, 29, 1, 0)]
    public void On_a_clock_change_night_quiet_ends_once(int year, int month, int day, int hour, int minute)
    {
        var quiet = new QuietHours(new LocalTime(22, 0), new LocalTime(1, 30), London);
        var end = Instant.FromUtc(year, month, day, hour, minute);
        Assert.Equal(end, quiet.EndOr(end - Duration.FromHours(1)));
        Assert.Equal(end + Duration.FromMinutes(45), quiet.EndOr(end + Duration.FromMinutes(45)));
    }

    [Fact]
    public void Only_the_fridge_the_oven_and_the_handover_pass() => Assert.Equal(
        [RingKind.LeaveFridge, RingKind.OvenOut, RingKind.Handover], Enum.GetValues<RingKind>().Where(QuietHours.Passes));

    /// <summary>Cream cheese whose use-by comes at night waits for six in the morning and says since when; the fridge does not wait.</summary>
    [Fact]
    public void A_ring_that_was_held_says_since_when()
    {
        var cake = Moss() with { Tiers = [Moss().Tiers[0] with { Filling = "cream-cheese" }] };
        var filled = At(23, 0) - Duration.FromDays(4);
        var plan = new SmallPlan(cake) { Now = filled - Duration.FromHours(1), Quiet = (new LocalTime(20, 0), new LocalTime(6, 0)) };
        plan.LastHour(cake, At(5, 0)).Row(Key(cake, "fill", 0), filled, "petra");
        var limit = plan.Ring(RingKind.FoodLimit);
        Assert.Equal(At(6, 0), limit.Due);
        Assert.Equal(At(23, 0) - Duration.FromDays(1), limit.HeldSince!.Value - Duration.FromMinutes(plan.Week.Steps.Single(s => s.Name == "fill").Minutes));
        Assert.Equal((At(5, 0), (Instant?)null), (plan.Ring(RingKind.LeaveFridge).Due, plan.Ring(RingKind.LeaveFridge).HeldSince));
    }

    [Theory]
    [InlineData(null, 6)]
    [InlineData(20, null)]
    [InlineData(6, 6)]
    public void Half_a_quiet_is_refused_with_what_to_do(int? from, int? to)
    {
        static LocalTime? Hour(int? hour) => hour is { } h ? new LocalTime(h, 0) : null;
        var shop = SampleBakery.Shop with { Settings = new ShopSettings(QuietFrom: Hour(from), QuietTo: Hour(to)) };
        Assert.Equal("quiet", Assert.Single(ShopChecks.Problems(shop)).Where);
    }

    private static LocalTime Time(Random dice) => LocalTime.Midnight.PlusMinutes(15 * dice.Next(96));

    /// <summary>Half of them within a day of a clock change of this century, half anywhere in it; on a whole minute.</summary>
    private static Instant Near(DateTimeZone zone, Random dice)
    {
        var from = Instant.FromUtc(2000, 1, 1, 0, 0);
        var changes = zone.GetZoneIntervals(from, Instant.FromUtc(2040, 1, 1, 0, 0)).Where(z => z.HasStart && z.Start > from).ToList();
        return changes.Count > 0 && dice.Next(2) == 0
            ? changes[dice.Next(changes.Count)].Start + Duration.FromMinutes(dice.Next(-1440, 1440))
            : from + Duration.FromMinutes(dice.Next(40 * 365 * 1440));
    }

    /// <summary>Walks each night that can reach the moment from the noon before it began.</summary>
    private static Instant Walked(QuietHours quiet, Instant moment)
    {
        var today = moment.InZone(quiet.Zone).Date;
        foreach (var day in Enumerable.Range(-2, 4).Select(n => today.PlusDays(n)))
        {
            var (from, to) = (day + quiet.From, (quiet.From < quiet.To ? day : day.PlusDays(1)) + quiet.To);
            var begins = FirstShown(from, quiet.Zone);
            var ends = FirstShown(to, quiet.Zone);
            if (begins <= moment && moment < ends)
            {
                return ends;
            }
        }

        return moment;
    }

    private static Instant FirstShown(LocalDateTime wall, DateTimeZone zone)
    {
        var at = wall.InUtc().ToInstant() - Duration.FromHours(16);
        while (at.InZone(zone).LocalDateTime < wall)
        {
            at += Minute;
        }

        return at;
    }
}
