namespace Bakehouse.Web.TheKitchen;

using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Reminders;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.Bell;
using Bakehouse.Web.Shell;
using NodaTime;

/// <summary>Reads one ring as a screen shows it, with the fridge that the thing stands in.</summary>
internal sealed class RingReader(WhatRings state, Shop shop, IReadOnlyDictionary<string, Order> orders)
{
    private readonly Words words = Words.Of(shop);

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
            PictureView.Of(operation, [.. ring.Steps.SelectMany(s => StepWords.TiersOf(s, orders[StepKey.Parse(s)!.Value.Order.ToString("N")])).OrderByDescending(t => t.Diameter)]));
    }

    private string? Late(Ring ring)
    {
        if (ring.At(state.Now) != RingState.Late)
        {
            return null;
        }

        var due = words.Local(ring.Due);
        var at = due.Date == words.Local(state.Now).Date ? words.Time(due.TimeOfDay) : words.DayAndTime(due);
        return $"due {at}, {Words.Minutes((long)(state.Now - ring.Due).TotalMinutes)} ago";
    }

    private string OutAt(Order order) => order.Handover.At.Date == words.Local(state.Now).Date
        ? $"out at {words.Time(order.Handover.At.TimeOfDay)}"
        : $"out {words.DayAndTime(order.Handover.At)}";

    private FridgeView? Fridge(Ring ring)
    {
        if (shop.Shelves.FirstOrDefault(s => s.Id == ring.PlaceId) is not { } shelf || state.Book is not { Week: { } week, Wall: { } wall })
        {
            return null;
        }

        var there = StandsNow.Of(week, wall, state.Book.Ticks, state.Now).ToLookup(s => s.Store);
        var levels = shop.Shelves.Where(s => s.Unit == shelf.Unit).OrderBy(s => s.Level).Select(s => new LevelView(
            s.Level, s.Width.Centimetres, s.Clear.Centimetres, s.Id == shelf.Id,
            [.. there[s.Id].OrderBy(t => t.To == ring.Step ? 0 : 1).Select(Thing).Where(t => t.Count > 0)]));
        return new FridgeView(shelf.Unit, [.. levels]);
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
