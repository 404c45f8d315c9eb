namespace Bakehouse.Domain.Planning;

using Bakehouse.Domain.Shops;
using NodaTime.TimeZones;

/// <summary>Local times of a shop as minutes of a week. Durations are elapsed: a clock change moves the wall, not the minutes.</summary>
/// <param name="Now">Minutes from the epoch to now, rounded down.</param>
public sealed record WeekTime(DateTimeZone Zone, LocalDate Monday, Instant Epoch, int Now, int Horizon)
{
    /// <summary>Minutes between possible starts.</summary>
    public const int Grain = 5;

    /// <summary>From the Monday before now's week to seven days past what may be planned.</summary>
    public static WeekTime Of(DateTimeZone zone, Instant now, int planDays)
    {
        var today = now.InZone(zone).Date;
        var monday = today.Previous(IsoDayOfWeek.Monday).PlusDays(today.DayOfWeek == IsoDayOfWeek.Monday ? 0 : -7);
        var epoch = zone.AtStartOfDay(monday).ToInstant();
        var end = zone.AtStartOfDay(today.PlusDays(planDays + 8)).ToInstant();
        return new WeekTime(zone, monday, epoch, (int)(now - epoch).TotalMinutes, Up((int)(end - epoch).TotalMinutes));
    }

    /// <summary>The times of a week that was made already; its minute 0 is a Monday's midnight.</summary>
    public static WeekTime Of(Week week, DateTimeZone zone) =>
        new(zone, week.Epoch.InZone(zone).Date, week.Epoch, week.Now, week.Horizon);

    /// <summary>Rounded up to the grain.</summary>
    public static int Up(int minute) => (minute + Grain - 1) / Grain * Grain;

    /// <summary>Twice a year: of two the first, of none the first after the gap (not so much later as the gap is long).</summary>
    private static readonly ZoneLocalMappingResolver ClockChange =
        Resolvers.CreateMappingResolver(Resolvers.ReturnEarlier, Resolvers.ReturnStartOfIntervalAfter);

    /// <summary>Minute of a local time; one that does not exist counts as the next that does, one that comes twice as the first.</summary>
    public int Minute(LocalDateTime local) => (int)(local.InZone(Zone, ClockChange).ToInstant() - Epoch).TotalMinutes;

    /// <summary>Minute of an instant, rounded down.</summary>
    public int Minute(Instant instant) => (int)Math.Floor((instant - Epoch).TotalMinutes);

    /// <summary>The instant of a minute.</summary>
    public Instant At(int minute) => Epoch + Duration.FromMinutes(minute);

    /// <summary>Weekly shifts as sorted spans from the epoch to the horizon, without the shop's closed days and what lies after its last hour of hands.</summary>
    public IReadOnlyList<Span> Spans(IReadOnlyList<Shift> shifts, Shop shop)
    {
        var spans = new List<Span>();
        for (var day = Monday; Minute(day.AtMidnight()) < Horizon; day = day.PlusDays(1))
        {
            if (shop.Closed.Contains(day))
            {
                continue;
            }

            foreach (var shift in shop.Worked(shifts).Where(s => s.Day == day.DayOfWeek).OrderBy(s => s.From))
            {
                var span = new Span(Up(Minute(day + shift.From)), Minute(day + shift.To) / Grain * Grain);
                if (span.From < span.To && span.To <= Horizon)
                {
                    spans.Add(span);
                }
            }
        }

        return spans;
    }
}
