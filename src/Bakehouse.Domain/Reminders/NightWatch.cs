namespace Bakehouse.Domain.Reminders;

using Bakehouse.Domain.Shops;

/// <summary>
/// From nine in the evening on it is said which ring comes first, because a machine that falls asleep over night does not ring. Whether
/// it sleeps can't be known from here; twelve hours reach over the night (common practice, no source).
/// </summary>
public static class NightWatch
{
    private const int Evening = 21;
    private static readonly Duration Reach = Duration.FromHours(12);

    /// <summary>The first ring that comes by itself within twelve hours, from 21:00 to the first hour of the day; else null. Pure.</summary>
    /// <param name="open">Open rings, earliest due first.</param>
    public static Ring? First(IReadOnlyList<Ring> open, Shop shop, Instant now)
    {
        var hour = now.InZone(DateTimeZoneProviders.Tzdb[shop.Zone]).Hour;
        return hour >= Evening || hour < shop.Settings.DayStarts
            ? open.FirstOrDefault(r => r.ComesByItself && r.Due > now && r.Due - now <= Reach)
            : null;
    }
}
