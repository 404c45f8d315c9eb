namespace Bakehouse.Web.TheKitchen.Wrong;

using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using Bakehouse.Domain.Slips;
using Bakehouse.Web.Shell;
using NodaTime;

/// <summary>Steps, things and slips as people call them.</summary>
public sealed class WrongWords(Shop shop, IReadOnlyList<Order> orders, Instant now)
{
    private readonly Words words = Words.Of(shop);

    /// <summary>What went wrong, as its button says.</summary>
    public static string Of(SlipKind kind) => kind switch
    {
        SlipKind.Cracked => "Cracked or sunk",
        SlipKind.NotSet => "Not set",
        SlipKind.RanOut => "Ran out",
        SlipKind.Out => "Oven or fridge out",
        SlipKind.Behind => "I’m behind",
        SlipKind.Away => "Somebody is ill",
        SlipKind.Pickup => "Customer early or late",
        SlipKind.Anyway => "I’ll do it anyway",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such kind."),
    };

    /// <summary>"Final coat 8 in".</summary>
    public string Step(string step) => StepKey.Parse(step) is { } key && OrderOf(step) is { } order
        ? StepWords.Big(key.Operation, StepWords.TiersOf(step, order), shop)
        : "A step";

    /// <summary>"407 Hale".</summary>
    public string Cake(string step) => OrderOf(step) is { } order ? Cake(order) : "";

    /// <summary>"407 Hale".</summary>
    public static string Cake(Order order) => $"{order.Number} {order.Customer.Name}";

    /// <summary>"407 Hale, +44…": whom to call about an order; null if there is no such order.</summary>
    public string? Customer(string id) => OrderById(id) is { } order ? $"{Cake(order)}, {order.Customer.Phone}" : null;

    /// <summary>"Ines, Petra. Call 407 Hale, +44…": everybody of those ids who is known here.</summary>
    /// <param name="ids">Ids of people and orders with commas between.</param>
    public string Everybody(string? ids)
    {
        var all = (ids ?? "").Split(',').Distinct(StringComparer.Ordinal).ToList();
        var people = string.Join(", ", all.Select(id => shop.PersonOf(id)?.Name).OfType<string>());
        var customers = string.Join("; ", all.Select(Customer).OfType<string>());
        return customers.Length == 0 ? people : $"{people}{(people.Length > 0 ? ". Call " : "")}{customers}";
    }

    /// <summary>"14:10", with the day if it is not today.</summary>
    public string At(Instant at) => words.Local(at) is var local && local.Date == words.Local(now).Date ? words.Time(local.TimeOfDay) : words.DayAndTime(local);

    /// <summary>Name of a person, an oven, a bowl, a cupboard, a batter, cream or filling.</summary>
    public string Thing(string id) =>
        shop.PersonOf(id)?.Name
        ?? shop.Ovens.FirstOrDefault(o => o.Id == id)?.Name ?? shop.Bowls.FirstOrDefault(b => b.Id == id)?.Name ?? shop.Shelves.FirstOrDefault(s => s.Id == id)?.Unit
        ?? (id == "buttercream" ? "Buttercream" : Sponge.Of(id) is { } sponge ? $"{sponge.Name}, batter" : Filling.Of(id)?.Name) ?? (OrderById(id) is { } order ? Cake(order) : Step(id));

    /// <summary>One sentence: "Petra is not here until 14:00."</summary>
    public string Says(Slip slip)
    {
        var what = string.Join(" and ", slip.About.Select(Thing).Distinct(StringComparer.Ordinal));
        var cake = Cake(slip.About[0]);
        return slip.Kind switch
        {
            SlipKind.Cracked when slip.Spare => $"{Layers(slip.About[0])} of {cake} cracked or sank: spare layers take their place.",
            SlipKind.Cracked => $"{Layers(slip.About[0])} of {cake} cracked or sank: baked again.",
            SlipKind.NotSet => $"{what} of {cake} is not set before {At(slip.Until!.Value)}.",
            SlipKind.RanOut => $"{what} ran out until {At(slip.Until!.Value)}.",
            SlipKind.Out => $"{what} is out from {At(slip.From!.Value)} to {At(slip.Until!.Value)}.",
            SlipKind.Behind => $"{what} of {cake} takes until {At(slip.Until!.Value)}.",
            SlipKind.Away => $"{what} is not here from {At(slip.From!.Value)} to {At(slip.Until!.Value)}.",
            SlipKind.Pickup => $"{what} goes out {At(slip.Until!.Value)}{(slip.From is { } before ? $", not {At(before)}" : "")}.",
            SlipKind.Anyway => $"{what} of {cake} begins before its wait is over, on the owner’s word.",
            _ => throw new ArgumentOutOfRangeException(nameof(slip), slip.Kind, "No such kind."),
        };
    }

    /// <summary>"10:15 → 14:10 Final coat 8 in, 407 Hale: Petra, not Dov".</summary>
    public string Says(Moved moved)
    {
        var when = moved.From is null ? $"New {At(moved.To.At)}" : moved.From.At == moved.To.At ? At(moved.To.At) : $"{At(moved.From.At)} → {At(moved.To.At)}";
        return $"{when} {Step(moved.Step)}, {Cake(moved.Step)}{Who(moved)}{Where(moved)}";
    }

    private string Who(Moved moved)
    {
        var gone = (moved.From?.People ?? []).Except(moved.To.People, StringComparer.Ordinal).ToList();
        return moved.To.People.Count == 0 ? "" : $": {string.Join(" and ", moved.To.People.Select(Thing))}{(gone.Count > 0 ? $", not {string.Join(" or ", gone.Select(Thing))}" : "")}";
    }

    private string Where(Moved moved) =>
        moved.To.Machine is { } machine && moved.From is { } from && from.Machine != machine ? $", in {Thing(machine)}" : "";

    /// <summary>"8 in vanilla layers".</summary>
    public string Layers(string bake) => OrderOf(bake) is { } order && StepWords.TiersOf(bake, order) is { Count: > 0 } tiers
        ? $"{StepWords.Size(tiers, shop)} {Sponge.Of(tiers[0].Sponge)?.Food ?? tiers[0].Sponge} layers"
        : "Layers";

    /// <summary>The order of that id in a week.</summary>
    public Order? OrderById(string id) => Guid.TryParseExact(id, "N", out var order) ? orders.FirstOrDefault(o => o.Id == order) : null;

    private Order? OrderOf(string step) => StepKey.Parse(step) is { } key ? orders.FirstOrDefault(o => o.Id == key.Order) : null;
}
