namespace Bakehouse.Web.IsAllWell;

using Bakehouse.Book.Reading;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Chains;
using Bakehouse.Domain.FoodClocks;
using Bakehouse.Domain.Heat;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.Shell;
using NodaTime;

/// <summary>The line of the food clocks of all cakes, and of fridges in which no cake ever gets firm.</summary>
internal static class WellCold
{
    private const string About = "Cold and warm";

    public static WellLine Of(BookState book, Shop shop, Instant now)
    {
        if (shop.Cold is not { } cold)
        {
            return new(About, MarkKind.Tight, "Nobody has said how warm kitchen and fridges are, so waits are usual ones and no food clock is drawn.", "Write it on the Shop page, under Cold and warm.");
        }

        if (TooWarm(shop, cold) is { } unit)
        {
            return new(About, MarkKind.Late, $"{unit.Name} is at {unit.Celsius.ToString("0.#", System.Globalization.CultureInfo.InvariantCulture)} °C: a coat never gets firm enough in it.", "Set it colder and hang a thermometer in it for a day.");
        }

        var counted = book.Wall is not { } wall ? [] : book.Orders.Where(o => Stages.IsPlanned(o.Stage))
            .Select(o => (Order: o, Clock: CakeChain.Clock(o, shop, wall, book.Slips, now))).Where(c => c.Clock is not null).ToList();
        var over = counted.Where(c => c.Clock!.AtHandover.Verdict == ClockVerdict.Discard).ToList();
        return over.Count == 0
            ? new(About, MarkKind.InTime, $"{cold.FoodRules.Name}: {(counted.Count == 0 ? "no cake in the plan is on the clock" : $"{counted.Count} of the cakes are on the clock, none is out too long by the plan")}. {FoodRules.Caution}")
            : new(About, MarkKind.Late, string.Join(" ", over.Select(c => $"{c.Order.Number} {c.Order.Customer.Name}: {c.Clock!.AtHandover.Sentence}")), "Open it among The cakes: it may not be handed over like that.");
    }

    /// <summary>A fridge in which the coat of an 8 in tier comes to no honest end; null if there is none.</summary>
    private static HeatPlace? TooWarm(Shop shop, ColdChain cold)
    {
        var tier = new CakeTier(Guid.Empty, Length.FromInches(8), Length.FromCentimetres(10), 2, "vanilla", "buttercream", []);
        var waits = new Waits(CakeFigures.Of(shop), cold.CakeTimes, shop.Settings.Inches);
        return shop.Shelves.Where(s => s.Kind == ShelfKind.Fridge).Select(cold.PlaceOf).FirstOrDefault(p => waits.FirmToStack(tier, p).Minutes is null);
    }
}
