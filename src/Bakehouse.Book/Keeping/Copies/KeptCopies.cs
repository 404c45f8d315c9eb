namespace Bakehouse.Book.Keeping.Copies;

using NodaTime;

/// <summary>Which copies stay: of each the newest, for the last 48 hours, 30 days and 12 months that have a copy.</summary>
public static class KeptCopies
{
    /// <summary>Hours of 60 minutes since 1970, whatever the shop's clock did in a night of March or October.</summary>
    public const int Hours = 48;

    /// <summary>Dates of the shop's calendar.</summary>
    public const int Days = 30;

    /// <summary>Months of the shop's calendar.</summary>
    public const int Months = 12;

    /// <summary>
    /// The copies that stay, at most 90. Counted are the hours, days and months that have a copy, so a shop that was shut for a month
    /// keeps what it had. Taking copies away after each new one keeps the same as doing it once at the end.
    /// </summary>
    public static IReadOnlySet<Instant> Of(IEnumerable<Instant> times, DateTimeZone zone)
    {
        var newestFirst = times.Distinct().OrderDescending().ToList();
        return newestFirst.DistinctBy(t => t.ToUnixTimeSeconds() / 3600).Take(Hours)
            .Concat(newestFirst.DistinctBy(t => t.InZone(zone).Date).Take(Days))
            .Concat(newestFirst.DistinctBy(t => t.InZone(zone).Date.ToYearMonth()).Take(Months))
            .ToHashSet();
    }
}
