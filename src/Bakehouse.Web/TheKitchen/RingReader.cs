namespace Bakehouse.Web.TheKitchen;

using Bakehouse.Domain.Cakes.Packing;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Reminders;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.Bell;
using Bakehouse.Web.Shell;
using NodaTime;

/// <summary>Reads one ring as a screen shows it, with the fridge that the thing stands in.</summary>
internal sealed class RingReader(WhatRings state, Shop shop, IReadOnlyDictionary<string, Order> orders)
{
    private readonly Words words = Words.Of(shop);
    private ILookup<string, StandsNow>? standing;

    public RingView Read(Ring ring)
    {
        var key = StepKey.Parse(ring.Step)!.Value;
        var order = orders[key.Order.ToString("N")];
        var operation = ring.Kind == RingKind.OvenOut ? "bake" : key.Operation;
        var due = words.Local(ring.Due);
        return new RingView(
            ring.Id, shop.PersonOf(ring.Person ?? "")?.Name ?? "Anybody", words.Time(due.TimeOfDay), words.Day(due.Date), Late(ring),
            ring.Verb, ring.Place, ring.What, ring.Order, OutAt(order), ring.Why,
            ring.MayWait(state.Now) ? $"until {words.Time(words.Local(ring.SlackUntil!.Value).TimeOfDay)}" : null,
            DangerWords.Avoid([order]), DangerWords.Lift(operation, order, shop), Fridge(ring),
            PictureView.Of(operation, [.. Calling(ring).SelectMany(s => StepWords.TiersOf(s, orders[StepKey.Parse(s)!.Value.Order.ToString("N")])).OrderByDescending(t => t.Diameter)]))
        {
            Delay = ring.At(state.Reached) == RingState.Late ? Delay(ring) : null,
            Held = ring.HeldSince is { } since ? $"held since {words.DayAndTime(words.Local(since))} over the quiet hours" : null,
        };
    }

    /// <summary>What the delay means for the food; figures are the shop's own.</summary>
    private string Delay(Ring ring) => ring.Kind switch
    {
        RingKind.OvenOut => "Longer in the heat than planned: look at it before it is used.",
        RingKind.LeaveFridge => "It has stayed cold; it has less time to come to the room.",
        RingKind.Handover when ring.FoodEnds is { } ends => $"Its food limit {(ends <= state.Reached ? "ended" : "ends")} {At(ends)}. The rules of your place come first.",
        RingKind.Handover => "Somebody may be waiting for it.",
        _ => ring.Why,
    };

    private string At(Instant instant) => words.Local(instant) is var local && local.Date == words.Local(state.Now).Date
        ? $"at {words.Time(local.TimeOfDay)}"
        : words.DayAndTime(local);

    private string? Late(Ring ring)
    {
        if (ring.At(state.Reached) != RingState.Late)
        {
            return null;
        }

        var due = words.Local(ring.Due);
        var at = due.Date == words.Local(state.Now).Date ? words.Time(due.TimeOfDay) : words.DayAndTime(due);
        return $"due {at}, {Words.Late((long)(state.Reached - ring.Due).TotalMinutes)} ago";
    }

    /// <summary>The steps that it is about, also where "done" ticks none.</summary>
    private static IReadOnlyList<string> Calling(Ring ring) => ring.Steps.Count > 0 ? ring.Steps : [ring.Step];

    private string OutAt(Order order) => order.Handover.At.Date == words.Local(state.Now).Date
        ? $"out at {words.Time(order.Handover.At.TimeOfDay)}"
        : $"out {words.DayAndTime(order.Handover.At)}";

    private FridgeView? Fridge(Ring ring)
    {
        if (shop.Shelves.FirstOrDefault(s => s.Id == ring.PlaceId) is not { } shelf || state.Book is not { Week: { } week, Wall: { } wall })
        {
            return null;
        }

        standing ??= StandsNow.Of(week, wall, state.Book.Ticks, state.Now).ToLookup(s => s.Store);
        var levels = shop.Shelves.Where(s => s.Unit == shelf.Unit).OrderBy(s => s.Level).Select(s => new LevelView(
            s.Level, s.Width.Centimetres, s.Clear.Centimetres, s.Id == shelf.Id,
            Things([.. standing[s.Id]], s, week, ring.Step)));
        return new FridgeView(shelf.Unit, [.. levels]);
    }

    /// <summary>What stands on a shelf, the farthest back first, each where it was worked out to stand.</summary>
    private List<StandingView> Things(IReadOnlyList<StandsNow> there, Shelf shelf, Week week, string step)
    {
        var pieces = there.Select(t => week.Holds.FirstOrDefault(h => h.From == t.From && h.To == t.To)?.Piece).ToList();
        var layout = pieces.TrueForAll(p => p is not null) ? Layouts.Of(Room.Of(shelf), [.. pieces.Select(p => p!.Value)]) : null;
        return [.. there.Select((t, i) => new StandingView(
            (decimal?)layout?[i].At.X / 10, (decimal)(layout?[i].At.Y ?? 0) / 10, t.To == step, Thing(t)))
            .Where(t => t.Tiers.Count > 0).OrderByDescending(t => t.Front).ThenByDescending(t => t.IsIt)];
    }

    private IReadOnlyList<(decimal Width, decimal Height, string Colour)> Thing(StandsNow there)
    {
        if (StepKey.Parse(there.From) is not { } from || !orders.TryGetValue(from.Order.ToString("N"), out var order))
        {
            return [];
        }

        return PictureView.Of(from.Operation, StepWords.TiersOf(there.From, order)).Tiers;
    }
}
