namespace Bakehouse.Domain.Orders;

using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Shops;
using NodaTime.TimeZones;

/// <content>The promise: a day and hour that the shop can keep.</content>
public static partial class OrderChecks
{
    private static IEnumerable<Problem> When(Order order, Shop shop, Instant now)
    {
        var zone = DateTimeZoneProviders.Tzdb[shop.Zone];
        var at = order.Handover.At;
        var mapping = zone.MapLocal(at);
        if (mapping.Count != 1)
        {
            yield return ClockChange(mapping, Say(at));
        }

        if (at.InZone(zone, Resolvers.LenientResolver).ToInstant() <= now)
        {
            yield return new Problem("When", Say(at), $"That has passed: it is {Say(now.InZone(zone).LocalDateTime)}.", "Choose a later day or hour.");
            yield break;
        }

        foreach (var problem in Promise(order, shop, now, zone).Concat(order.Handover.Way == Way.Deliver ? Delivery(order, shop) : Counter(order, shop)))
        {
            yield return problem;
        }

        if (order.Cutting is { } cutting && cutting < at)
        {
            yield return new Problem("Cutting", Say(cutting), $"The cake is cut before it is handed over ({Say(at)}).", "Choose a later cutting time.");
        }
    }

    private static IEnumerable<Problem> Promise(Order order, Shop shop, Instant now, DateTimeZone zone)
    {
        var at = order.Handover.At;
        var notice = Duration.FromHours(shop.Settings.NoticeHours);
        var last = now.InZone(zone).Date.PlusDays(FarDates.PlanReach.MostDays);
        if (Stages.IsPlanned(order.Stage) && order.Version == 0 && at.InZone(zone, Resolvers.LenientResolver).ToInstant() - now < notice)
        {
            yield return new Problem("When", Say(at), $"The shop asks for {shop.Settings.NoticeHours} h notice.", Earliest(order.Handover.Way, shop, (now + notice).InZone(zone).LocalDateTime));
        }

        if (at.Date > last)
        {
            yield return new Problem("When", Say(at), $"Orders are taken {FarDates.PlanReach.MostDays} days ahead, to {last.ToString("ddd d MMM uuuu", System.Globalization.CultureInfo.InvariantCulture)}.", "Choose an earlier day, or keep it as an enquiry and ask again later.");
        }
    }

    private static IEnumerable<Problem> Counter(Order order, Shop shop)
    {
        var at = order.Handover.At;
        var hours = shop.HoursOn(at.Date);
        if (!hours.Any(h => h.From <= at.TimeOfDay && at.TimeOfDay <= h.To))
        {
            var open = hours.Count == 0 ? "The shop is shut that day." : $"The shop is open {string.Join(" and ", hours.Select(h => $"{Say(h.From)} to {Say(h.To)}"))} that day.";
            yield return new Problem("When", Say(at), open, $"Choose an hour in the opening hours{NextOpen(shop, at.Date)}.");
        }
    }

    private static IEnumerable<Problem> Delivery(Order order, Shop shop)
    {
        if (order.Handover.Address.Trim().Length == 0)
        {
            yield return new Problem("Address", "", "A delivery needs an address.", "Write the address, or choose Collect.");
        }

        if (order.Handover.RouteMinutes is < 0 or > LongestRoute)
        {
            yield return new Problem("Route", Text(order.Handover.RouteMinutes), $"A route is 0 to {LongestRoute} minutes.", "Give the minutes on the road, one way.");
        }
        else if (!SomebodyDrives(order, shop))
        {
            yield return new Problem("When", Say(order.Handover.At), "Nobody who drives works long enough before then to load, drive and set up.", "Choose another day or hour, or give a driver a shift in Shop.");
        }
    }

    private static bool SomebodyDrives(Order order, Shop shop)
    {
        var at = order.Handover.At;
        var leaves = at.PlusMinutes(-Method.Sitting(Method.DeliverMinutes(order)));
        return !shop.Closed.Contains(at.Date) && shop.People.Where(p => p.Skills.Contains(Skills.Drive)).SelectMany(p => shop.Worked(p.Shifts.Concat(p.Overtime)))
            .Any(s => s.Day == at.DayOfWeek && at.Date + s.From <= leaves && at <= at.Date + s.To);
    }

    private static Problem ClockChange(ZoneLocalMapping mapping, string said) => mapping.Count == 0
        ? new Problem("When", said, "That hour does not exist: the clocks go forward.", $"Choose {Say(mapping.LateInterval.IsoLocalStart)} or later.")
        : new Problem("When", said, "That hour comes twice: the clocks go back.", "Choose an hour before or after it, so that both mean the same.");

    /// <summary>The first hour that keeps the notice, and for a customer who comes, one at which the shop is open.</summary>
    private static string Earliest(Way way, Shop shop, LocalDateTime from)
    {
        var hour = from.With(TimeAdjusters.TruncateToHour);
        var whole = hour < from ? hour.PlusHours(1) : hour;
        if (way == Way.Deliver)
        {
            return $"Choose {Say(whole)} or later.";
        }

        var open = Enumerable.Range(0, 15).Select(whole.Date.PlusDays)
            .SelectMany(day => shop.HoursOn(day).OrderBy(h => h.From).Select(h => (From: day + h.From, To: day + h.To)))
            .FirstOrDefault(h => h.To >= whole);
        return open == default ? "The shop is shut for the next fortnight." : $"Choose {Say(LocalDateTime.Max(open.From, whole))} or later, in the opening hours.";
    }

    private static string NextOpen(Shop shop, LocalDate day)
    {
        var next = Enumerable.Range(1, 14).Select(day.PlusDays).FirstOrDefault(d => shop.HoursOn(d).Count > 0);
        return next == default ? "" : $", or {Say(next)}";
    }
}
