namespace Bakehouse.Web.TheWeek;

using NodaTime;

/// <content>What stands on the shelves at one hour.</content>
public partial class WeekPage
{
    private Instant? shelvesAt;

    private ShelvesThen? Then => shelvesAt is { } at ? ShelvesThen.Of(Book.State, at) : null;

    /// <summary>When the fridges are fullest in the days shown.</summary>
    private Instant? Fullest => Picture?.Areas.FirstOrDefault(a => a.Area.Kind == "fridge")?.Area.Fullest?.From;

    /// <summary>At the fullest hour first, or else now; the same tap closes it.</summary>
    private void ShowShelves() => shelvesAt = shelvesAt is null ? Fullest ?? Clock.GetCurrentInstant() : null;
}
