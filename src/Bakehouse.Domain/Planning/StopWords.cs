namespace Bakehouse.Domain.Planning;

using System.Globalization;
using Bakehouse.Domain.Chores;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;

/// <summary>Says why a step can't stand earlier or later: who or what, the hour and the minutes.</summary>
public sealed class StopWords(Week week, Shop shop, IReadOnlyList<Order> orders, IReadOnlyList<Chore> chores)
{
    private readonly DateTimeZone zone = DateTimeZoneProviders.Tzdb[week.Zone];

    /// <summary>One sentence.</summary>
    /// <param name="earlier">True if the stop lies before the step, false if after it.</param>
    public string Say(Stop stop, bool earlier) => stop.Kind switch
    {
        StopKind.Past => $"It is {Hour(stop.Minute)} already.",
        StopKind.TooSoon => Soon(stop),
        StopKind.TooLate when stop.Wait > 0 => $"It must end by {Hour(stop.Minute)}: {Long(stop.Wait)}{In(stop.Place)} come before {Name(stop.Step!)}.",
        StopKind.TooLate => $"It must end by {Hour(stop.Minute)}, when {Name(stop.Step!)} must begin.",
        StopKind.TooOld => $"At most {Long(stop.Wait)} may lie between it and {Name(stop.Step!)}: {(earlier ? "not before" : "not after")} {Hour(stop.Minute)}.",
        StopKind.Agreed => $"The agreed time is {Hour(stop.Minute)}, not before.",
        StopKind.Promise => $"The cake must go out by {Hour(stop.Minute)}, or it is late.",
        StopKind.Nobody => $"Nobody who can do it is at work {(earlier ? "before" : "after")} {Hour(stop.Minute)}.",
        StopKind.Away => $"{Person(stop)} {Off(stop)} {Edge(stop, earlier)}.",
        StopKind.Busy => $"{Person(stop)} has {Name(stop.Step!)}, which stays, {Edge(stop, earlier)}.",
        StopKind.Shut => $"{Place(stop.Place!)} {Closed(stop)} {Edge(stop, earlier)}.",
        StopKind.Taken => $"{Place(stop.Place!)} has {Name(stop.Step!)}, which stays, {Edge(stop, earlier)}.",
        StopKind.End => "The plan ends there.",
        _ => throw new ArgumentOutOfRangeException(nameof(stop), stop.Kind, "No such stop."),
    };

    /// <summary>"“Wrap 8 in”, 409" as people call the step.</summary>
    public string Name(string step)
    {
        var order = StepKey.Parse(step) is { } key ? orders.FirstOrDefault(o => o.Id == key.Order) : null;
        return order is null
            ? $"“{week.Steps.FirstOrDefault(s => s.Id == step)?.Name ?? step}”"
            : $"“{StepWords.Big(StepKey.Parse(step)!.Value.Operation, StepWords.TiersOf(step, order), shop)}” of {order.Number.ToString(CultureInfo.InvariantCulture)}";
    }

    /// <summary>"Thu 14:10" on the shop's wall.</summary>
    public string Hour(int minute) =>
        (week.Epoch + Duration.FromMinutes(minute)).InZone(zone).ToString(shop.Settings.Clock24 ? "ddd HH:mm" : "ddd h:mm tt", CultureInfo.InvariantCulture);

    private string Soon(Stop stop)
    {
        var done = $"{Name(stop.Step!)} ends at {Hour(stop.Minute - stop.Wait)} at the soonest";
        return stop.Wait == 0 ? $"{done}." : $"{done}, then {Long(stop.Wait)}{In(stop.Place)}: {Ready(stop.Place)} at {Hour(stop.Minute)}.";
    }

    private static string Ready(string? place) => place switch { "fridge" or "freezer" => "cold", "rack" or "cool" => "cool", _ => "ready" };

    private static string In(string? place) => place switch
    {
        "fridge" => " in the fridge",
        "freezer" => " in the freezer",
        "cool" => " in the dry room",
        "rack" => " on the rack",
        "bench" => " on the bench",
        _ => "",
    };

    private string Person(Stop stop) => week.People.FirstOrDefault(p => p.Id == stop.Person)?.Name ?? stop.Person!;

    private string Off(Stop stop) => ChoreOf(stop, c => c.People.Contains(stop.Person!)) is { } chore ? $"has {chore.Name}" : "is away";

    private string Closed(Stop stop) => ChoreOf(stop, c => c.Machines.Contains(stop.Place!)) is { } chore ? $"has {chore.Name}" : "is out of use";

    /// <summary>The chore that fills that time, if one does.</summary>
    private Chore? ChoreOf(Stop stop, Func<Chore, bool> takes)
    {
        var time = WeekTime.Of(week, zone);
        return chores.FirstOrDefault(c => takes(c) && c.In(time).Any(s => s.From == stop.From && s.To == stop.To));
    }

    private string Place(string id) => shop.Ovens.FirstOrDefault(o => o.Id == id)?.Name ?? shop.Bowls.FirstOrDefault(b => b.Id == id)?.Name ?? $"The {id}";

    private string Edge(Stop stop, bool earlier) => earlier ? $"until {Hour(stop.To)}" : $"from {Hour(stop.From)}";

    private static string Long(int minutes) => (minutes / 60, minutes % 60) switch
    {
        (0, var m) => Text(m) + " min",
        (var h, 0) => Text(h) + " h",
        var (h, m) => $"{Text(h)} h {Text(m)} min",
    };

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
