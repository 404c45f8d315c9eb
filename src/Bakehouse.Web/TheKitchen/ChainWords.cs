namespace Bakehouse.Web.TheKitchen;

using Bakehouse.Book.Reading;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Chains;
using Bakehouse.Domain.FoodClocks;
using Bakehouse.Domain.Heat;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.Shell;
using NodaTime;

/// <summary>What the kitchen reads of a cake's cold chain: one sentence of the wait, one of the food clock, one for whoever takes it.</summary>
internal static class ChainWords
{
    /// <summary>"8 in, baked 4.8 cm: 1 h 15 in Fridge 1."; "" where heat does not decide the wait before that step.</summary>
    public static string Wait(BookState book, string step, Shop shop)
    {
        var hold = book.Week?.Holds.FirstOrDefault(h => h.To == step && StepKey.Parse(h.From)?.Tier is not null && !Places.IsWhenever(h));
        if (hold is null || book.Wall is not { } wall || StepKey.Parse(hold.From) is not { } from || book.Orders.FirstOrDefault(o => o.Id == from.Order) is not { } order
            || BuildSheet.Try(order.Tiers, order.Finish, CakeFigures.Of(shop))?.Tiers.FirstOrDefault(t => t.Tier.Id == from.Tier) is not { Tier.IsFalse: false } build)
        {
            return "";
        }

        var store = wall.Plan.Holds.FirstOrDefault(r => r.Hold == hold.Id)?.Store;
        var shelf = shop.Shelves.FirstOrDefault(s => s.Id == store);
        return HeatedWaits.Of(shop, build.Tier, build.Pans.BakedHeight, from.Operation, StepKey.Parse(step)!.Value.Operation, shelf)?.Why ?? "";
    }

    /// <summary>Layers that are too much warm cake for the fridge that they go into; nothing where they are not.</summary>
    public static IEnumerable<string> Warm(BookState book, string step, Shop shop)
    {
        if (StepKey.Parse(step) is not { Operation: "wrap" } key || shop.Cold is not { } cold || book is not { Week: { } week, Wall: { } wall } || book.Orders.FirstOrDefault(o => o.Id == key.Order) is not { } order
            || BuildSheet.Try(order.Tiers, order.Finish, CakeFigures.Of(shop))?.Tiers.FirstOrDefault(t => t.Tier.Id == key.Tier) is not { Tier.IsFalse: false, StandsBeside: false } build)
        {
            return [];
        }

        var store = week.Holds.Where(h => h.From == step).Select(h => wall.Plan.Holds.FirstOrDefault(r => r.Hold == h.Id)?.Store).FirstOrDefault();
        var pans = week.Steps.Where(s => s.Bake is not null && s.Id == (key with { Operation = "bake" }).ToString()).Sum(s => s.Bake!.Pans.Count);
        if (pans == 0 || shop.Shelves.FirstOrDefault(s => s.Id == store) is not { Kind: ShelfKind.Fridge } shelf || CakeBodies.Problems(build.Tier, CakeFigures.Of(shop)).Count > 0)
        {
            return [];
        }

        var layer = CakeBodies.Layer(build.Tier, CakeFigures.Of(shop), build.Pans.BakedHeight);
        var load = WarmLoad.Of([.. Enumerable.Repeat((layer, Waits.Wrapped), pans)], cold.PlaceOf(shelf));
        return load.IsTooMuch ? [$"{load.Why} Let them get colder on the rack, or share them out."] : [];
    }

    /// <summary>The food clock of a cake that is filled and not boxed for good yet; nothing where none runs.</summary>
    public static IEnumerable<string> Clock(BookState book, Order order, string operation, Instant now) =>
        operation is "crumb" or "coat" or "stack" or "decorate" or "box" or "leavefridge" or "handover" or "deliver" && book is { Wall: { } wall, Shop: { } shop }
        && CakeChain.Clock(order, shop, wall, book.Slips, now) is { } clock
            ? [clock.Now.Used > Duration.Zero ? clock.Now.Sentence : $"Planned: {clock.AtHandover.Sentence}"]
            : [];

    /// <summary>"Tell: out of their fridge" with the hour; nothing where it stands out already or nobody said when it is cut.</summary>
    public static IEnumerable<(string Name, string Figure)> TakeOut(BookState book, Order order, Shop shop, Words words)
    {
        if (book.Wall is not { } wall || order.Cutting is not { } cut)
        {
            return [];
        }

        var handed = order.Handover.At.InZoneLeniently(words.Zone).ToInstant();
        var clock = CakeChain.Clock(order, shop, wall, book.Slips, handed);
        var answer = CakeChain.Leaving(order, shop, handed, Instant.Max(handed, cut.InZoneLeniently(words.Zone).ToInstant()), clock);
        return answer is { Problems.Count: 0, CustomerTakesOut: { } takes } ? [("Tell: out of their fridge", words.DayAndTime(words.Local(takes)))] : [];
    }
}
