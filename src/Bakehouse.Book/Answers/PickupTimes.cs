namespace Bakehouse.Book.Answers;

using Bakehouse.Domain.FarDates;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;
using NodaTime;

/// <summary>Half hours at which a cake may be handed over: while the shop is open, after the notice it asks for, as far ahead as orders are taken.</summary>
internal sealed class PickupTimes(Shop shop, Instant now)
{
    private const int Step = 30;

    private LocalDateTime Soonest => (now + Duration.FromHours(shop.Settings.NoticeHours)).InZone(DateTimeZoneProviders.Tzdb[shop.Zone]).LocalDateTime;

    private LocalDate Last => now.InZone(DateTimeZoneProviders.Tzdb[shop.Zone]).Date.PlusDays(PlanReach.MostDays);

    /// <summary>The first at all; null if the shop does not open.</summary>
    public LocalDateTime? First(Order order) => Next(order, Soonest);

    /// <summary>The first from a moment on.</summary>
    public LocalDateTime? Next(Order order, LocalDateTime from) => From(order, from).Select(at => (LocalDateTime?)at).FirstOrDefault();

    /// <summary>All of them day by day, soonest first; no day is without.</summary>
    public IEnumerable<IReadOnlyList<LocalDateTime>> Days(Order order)
    {
        List<LocalDateTime> day = [];
        foreach (var at in From(order, Soonest))
        {
            if (day.Count > 0 && day[0].Date != at.Date)
            {
                yield return day;
                day = [];
            }

            day.Add(at);
        }

        if (day.Count > 0)
        {
            yield return day;
        }
    }

    private IEnumerable<LocalDateTime> From(Order order, LocalDateTime from)
    {
        var soonest = LocalDateTime.Max(from, Soonest);
        for (var day = soonest.Date; day <= Last; day = day.PlusDays(1))
        {
            foreach (var at in On(day).Where(at => at >= soonest && Fits(order, at)))
            {
                yield return at;
            }
        }
    }

    /// <summary>The first on a later day.</summary>
    public LocalDateTime? NextDay(Order order, LocalDateTime from) => Next(order, from.Date.PlusDays(1).AtMidnight());

    /// <summary>The last half hour at which the shop is open that day; null when shut.</summary>
    public LocalDateTime? LastOn(LocalDate day) => On(day).Select(at => (LocalDateTime?)at).LastOrDefault();

    private IEnumerable<LocalDateTime> On(LocalDate day) =>
        from hours in shop.HoursOn(day).OrderBy(h => h.From)
        from half in Enumerable.Range(0, 48)
        let at = day.At(LocalTime.Midnight.PlusMinutes(half * Step))
        where at.TimeOfDay >= hours.From && at.TimeOfDay <= hours.To
        select at;

    /// <summary>What is said against the hour itself; the rest of an order may still be missing.</summary>
    private bool Fits(Order order, LocalDateTime at) =>
        !OrderChecks.Problems(order with { Version = 0, Cutting = null, Handover = order.Handover with { At = at } }, shop, now, owner: true).Any(p => p.Where == "When");
}
