namespace Bakehouse.Web.Bell;

using System.Globalization;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Reminders;
using Bakehouse.Domain.Shops;
using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;
using NodaTime;

/// <summary>
/// The rings of one person as an iCalendar (RFC 5545), each with an alarm of its own: so a phone rings also while the machine sleeps.
/// Orders stand in it by number alone: it may pass through servers of others.
/// </summary>
internal static class RingCalendar
{
    private const int Minutes = 5;

    /// <summary>Rings still to come of that person, and those that nobody is named for.</summary>
    public static string Write(WhatRings state, Shop shop, Domain.Shops.Person person)
    {
        var calendar = new Ical.Net.Calendar { ProductId = "-//Bakehouse//Rings//EN" };
        calendar.AddProperty("NAME", $"Rings, {person.Name}"); // RFC 7986, 5.1
        calendar.AddProperty("X-WR-CALNAME", $"Rings, {person.Name}");
        var orders = state.Book.Orders.ToDictionary(o => o.Id, o => o.Number);
        foreach (var ring in state.Open.Where(r => r.ComesByItself && r.Due > state.Now && (r.Person is null || r.Person == person.Id)))
        {
            calendar.Events.Add(Event(ring, orders, state));
        }

        return new CalendarSerializer().SerializeToString(calendar) ?? throw new InvalidOperationException("A calendar could not be written.");
    }

    /// <summary>The same step keeps its UID, so a plan that moves moves the entry; a later state of the book has a higher sequence.</summary>
    private static CalendarEvent Event(Ring ring, Dictionary<Guid, int> orders, WhatRings state)
    {
        var what = $"{ring.Verb}: {ring.What}";
        var entry = new CalendarEvent
        {
            Uid = $"{ring.Id.Replace(':', '-')}@bakehouse",
            Sequence = state.Book.Head,
            DtStamp = At(state.Book.ReadAt),
            Start = At(ring.Due),
            End = At(ring.Due + NodaTime.Duration.FromMinutes(Minutes)),
            Summary = what,
            Location = ring.Place,
            Description = $"{Numbers(ring, orders)}. {ring.Why}",
        };
        entry.Alarms.Add(new Alarm
        {
            Action = AlarmAction.Display,
            Description = $"{what}, {ring.Place}",
            Trigger = new Trigger(Ical.Net.DataTypes.Duration.Zero),
        });
        return entry;
    }

    private static string Numbers(Ring ring, Dictionary<Guid, int> orders)
    {
        var numbers = ring.Steps.Select(s => orders[StepKey.Parse(s)!.Value.Order]).Distinct().Order().Select(n => n.ToString(CultureInfo.InvariantCulture)).ToList();
        return $"{(numbers.Count == 1 ? "Order" : "Orders")} {string.Join(", ", numbers)}";
    }

    private static CalDateTime At(Instant instant) => new(instant.ToDateTimeUtc(), "UTC");
}
