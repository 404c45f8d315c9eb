namespace Bakehouse.Web.TheKitchen;

using System.Globalization;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using Bakehouse.Domain.Structure;
using Bakehouse.Web.Bell;
using Bakehouse.Web.Shell;
using NodaTime;

/// <summary>A step card as the screen shows it.</summary>
/// <param name="Big">Verb and size.</param>
/// <param name="Order">"405 Lindqvist, for Sat 17 Oct, 10:00".</param>
/// <param name="When">Planned time, or when it was done and by whom.</param>
/// <param name="Build">What this step takes of the tier's build, as name and figure.</param>
/// <param name="From">Where the thing stands before; "" if nowhere.</param>
/// <param name="To">Where it goes; "" if nowhere.</param>
/// <param name="Stops">Why nobody works on, what to avoid, what the tier contains, and what else can hurt.</param>
/// <param name="Waits">Why it waited, and how long at least; null if it did not.</param>
public sealed record CardView(
    string Big,
    string Order,
    int Number,
    string When,
    PictureView Picture,
    IReadOnlyList<(string Name, string Figure)> Build,
    string From,
    string To,
    string? Waits,
    StepCard Card,
    IReadOnlyList<string> Stops,
    string? Lift)
{
    /// <summary>All of it, each once: what is true of this cake, then what holds for any.</summary>
    public IReadOnlyList<string> Cautions => [.. Stops, .. Lift is { } lift ? [lift] : (string[])[], .. Card.OfAnyCake];
}

/// <summary>Reads the card of one step from the book; null for a step that no open order has.</summary>
internal sealed class CardReader(WhatRings state, Shop shop)
{
    private readonly Words words = Words.Of(shop);

    public CardView? Read(string step)
    {
        if (StepKey.Parse(step) is not { } key || state.Book.Orders.FirstOrDefault(o => o.Id == key.Order) is not { } order
            || Method.Operations.All(o => o.Id != key.Operation))
        {
            return null;
        }

        var tiers = StepWords.TiersOf(step, order);
        return new CardView(
            StepWords.Big(key.Operation, tiers, shop), $"{order.Number} {order.Customer.Name}, for {words.DayAndTime(order.Handover.At)}", order.Number, When(step),
            PictureView.Of(key.Operation, [.. tiers.OrderByDescending(t => t.Diameter)]), Build(key, tiers, order), Place(h => h.To == step), Place(h => h.From == step),
            Waits(key.Operation, step), StepCard.Of(key.Operation), [.. ChainWords.Clock(state.Book, order, key.Operation, state.Now), .. DangerWords.Stops(state.Book, order, key.Operation), .. DangerWords.Signs(state.Book, order, tiers), .. Clean(step), .. ChainWords.Warm(state.Book, step, shop), .. DangerWords.Told(state.Book, order, key.Operation, shop)], DangerWords.Lift(key.Operation, order, shop));
    }

    /// <summary>The clean-down before it; without one in the plan the bowl is washed all the same, since the plan knows only its own cakes.</summary>
    private IEnumerable<string> Clean(string step)
    {
        if (DangerWords.Clean(state.Book, [step]) is { } words)
        {
            yield return words;
        }
        else if (state.Book.Week?.Steps.Any(s => s.Id == step && s is { Mix: not null, Avoid.Count: > 0 }) == true)
        {
            yield return "Begin with bowl and tools washed wet, whatever was in them";
        }
    }

    private string When(string step)
    {
        if (state.Book.Ticks.FirstOrDefault(t => t.Step == step) is { } tick)
        {
            return $"Done {words.DayAndTime(words.Local(tick.Done))}, {shop.PersonOf(tick.Person)?.Name ?? tick.Person}";
        }

        return state.Book is { Week: { } week, Wall: { } wall } && wall.From(week.Epoch).Steps.FirstOrDefault(r => r.Step == step) is { } row
            ? $"{words.DayAndTime(words.Local(week.Epoch + Duration.FromMinutes(row.Start)))}{string.Concat(row.People.Select(p => $", {shop.PersonOf(p)?.Name ?? p}"))}"
            : "Not in the plan";
    }

    private string Place(Func<Hold, bool> which)
    {
        var stores = state.Book is { Week: { } week, Wall: { } wall }
            ? week.Holds.Where(which).Select(h => wall.Plan.Holds.FirstOrDefault(r => r.Hold == h.Id)?.Store ?? "").Select(s => PlaceWords.Of(s, shop))
            : [];
        return string.Join(", ", stores.Where(s => s.Length > 0).Distinct(StringComparer.Ordinal));
    }

    /// <summary>The wait that ends at this step.</summary>
    private string? Waits(string operation, string step)
    {
        var before = state.Book.Week?.Holds.Where(h => h.To == step).Select(h => StepKey.Parse(h.From)?.Operation).ToHashSet() ?? [];
        return Method.Waits.FirstOrDefault(w => w.To == operation && before.Contains(w.From)) is { } wait ? $"{wait.Why} {ChainWords.Wait(state.Book, step, shop)}".TrimEnd() : null;
    }

    private List<(string, string)> Build(StepKey key, IReadOnlyList<CakeTier> tiers, Order order)
    {
        var operation = key.Operation;
        if (BuildSheet.Try(order.Tiers, order.Finish, CakeFigures.Of(shop)) is not { } sheet)
        {
            return [];
        }

        var mine = sheet.Tiers.Where(t => tiers.Any(w => w.Id == t.Tier.Id)).ToList();
        return operation switch
        {
            "mix" or "bake" or "turnout" or "pipe" or "box" when mine is [{ StandsBeside: true } batch] => [.. CupcakeCard.Of(operation, batch, tiers[0].Special!.Cupcakes!, sheet.Figures, words)],
            "mix" or "bake" or "turnout" or "wrap" => [.. mine.SelectMany(t => new PanCard(t, shop, words).Of(key))],
            "fill" => [.. mine.SelectMany(Filled)],
            "crumb" => [.. mine.SelectMany(t => new[] { (words.Tier(t.Tier), $"{words.VolumeOf(t.Crumb)} first coat"), ("Working board", PartWords.Working(t.WorkingBoard, words)) })],
            "coat" => [.. mine.SelectMany(t => t.Colours.Select(c => ($"{words.Tier(t.Tier)} {c.Name}", words.VolumeOf(c.Needed))).Concat(TrimWords.Beads(t, words)))],
            "cover" => [.. mine.Where(t => t.Paste is not null).SelectMany(Covered)],
            "drip" => [.. mine.Where(t => t.Drip.Millilitres > 0).Select(t => (words.Tier(t.Tier), $"{words.VolumeOf(t.Drip)} of drip"))],
            "colour" or "buttercream" => [("In all", words.VolumeOf(sheet.Icing)), .. sheet.Colours.Select(c => (c.Name, $"{words.VolumeOf(c.ToMix)}, {words.VolumeOf(c.KeptBack)} of it kept back {BagWords.Of(sheet, order)}")), .. operation == "colour" ? sheet.Paste.Select(c => ($"{c.Name} sugar paste", $"{words.MassOf(c.Rolled)} in one piece")) : []],
            "filling" => [.. mine.Select(t => (Filling.Of(t.Tier.Filling)?.Name ?? t.Tier.Filling, words.VolumeOf(t.Filling)))],
            "stack" => [.. sheet.Stack.Where(t => t.Supports is not null).Select(t => ($"{words.Tier(t.Tier)} dowels", $"{t.Supports!.Count} × {words.CutTo(t.Supports.Length)}")), .. sheet.Stack.Skip(1).Select(t => ($"Seam under {words.Tier(t.Tier)}", $"{words.VolumeOf(t.Seam)} of what is kept back"))],
            "decorate" => order.Inscription.Length > 0 ? [("On the cake", $"“{order.Inscription}”"), ("Decoration", order.Decoration.ToString())] : [("Decoration", order.Decoration.ToString())],
            "handover" or "deliver" => [.. Leaves(sheet, order), .. ChainWords.TakeOut(state.Book, order, shop, words)],
            _ => [.. Leaves(sheet, order)],
        };
    }

    /// <summary>All boxes that leave together, each part of the cake in its own.</summary>
    private IEnumerable<(string, string)> Leaves(BuildSheet sheet, Order order)
    {
        var parts = TravelPart.Of(sheet, order.Handover.RouteMinutes);
        foreach (var part in parts)
        {
            yield return (parts.Count == 1 ? "Box" : $"Box for {PartWords.Name(part, sheet, words)}", PartWords.Box(part.Box, words));
            yield return (parts.Count == 1 ? "With its board" : $"On {PartWords.Board(part, words)}", words.Weight(part.Mass));
        }

        if (sheet.Beside.Count > 0)
        {
            yield return ("Boxes of cupcakes", CupcakeBox.Said(sheet.CupcakeBoxes));
        }
    }

    private IEnumerable<(string, string)> Covered(TierBuild tier) =>
    [
        (words.Tier(tier.Tier), $"{words.MassOf(tier.Paste!.Rolled)} rolled {PasteWords.Sheet(tier.Paste, words)}"),
        .. TrimWords.Beads(tier, words),
        .. tier.PasteColours.Count > 1 ? tier.PasteColours.Select(c => ($"of it {c.Name}", words.MassOf(c.Rolled))) : [],
    ];

    private IEnumerable<(string, string)> Filled(TierBuild tier)
    {
        yield return ($"{words.Tier(tier.Tier)}, {tier.Layers.Count} layers of", LayerWords.Of(tier, words));
        if (tier.LeftOver > Volume.Zero)
        {
            yield return ("Left over of the slab", $"{words.MassOf(CakeFigures.Of(shop).Sponge(tier.Tier.Sponge) * tier.LeftOver)} sponge");
        }

        if (tier.Fillings > 0)
        {
            yield return ($"{tier.Fillings} × {words.Thickness(tier.FillingHeight)} {Filling.Of(tier.Tier.Filling)?.Name ?? tier.Tier.Filling}", words.VolumeOf(tier.Filling));
        }

        if (tier.Dam > Volume.Zero)
        {
            yield return (TrimWords.Ring, TrimWords.Dam(tier, words));
        }

        yield return ("Board", words.Board(tier.Board));
    }
}
