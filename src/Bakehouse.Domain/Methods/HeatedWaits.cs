namespace Bakehouse.Domain.Methods;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Heat;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;

/// <summary>The waits of the method that heat decides: cooling on the rack, firming before the fill, setting, firming before it carries anything.</summary>
public static class HeatedWaits
{
    /// <summary>A crumb coat is never hurried more than so, whatever the freezer does to its outside: 15 minutes (common practice, no source).</summary>
    public const int SetAtLeast = 15;

    /// <summary>The wait as it is worked out; null where heat does not decide it, or where the shop never said how warm its places are.</summary>
    /// <param name="baked">How high the tier's layers baked.</param>
    /// <param name="shelf">Where it stands; null on the rack.</param>
    public static HeatWait? Of(Shop shop, CakeTier tier, Length baked, string from, string to, Shelf? shelf)
    {
        if (shop.Cold is not { } cold || tier.IsFalse || tier.StandsBeside)
        {
            return null;
        }

        var waits = new Waits(CakeFigures.Of(shop), cold.CakeTimes, shop.Settings.Inches);
        var place = shelf is null ? cold.Room : cold.PlaceOf(shelf);
        return (from, to, place.IsCold) switch
        {
            ("turnout", "wrap", false) => waits.Cool(tier, place, baked),
            ("wrap", "fill", true) => waits.FirmToFillIn(tier, place, baked),
            ("crumb", "coat" or "cover" or "drip", true) => waits.SetCrumb(tier, place, SetAtLeast),
            ("crumb" or "coat" or "drip", "stack" or "decorate", true) => waits.FirmToStack(tier, place),
            _ => null,
        };
    }

    /// <summary>
    /// A wait of frozen spare layers in place of that of fresh ones: still wrapped, in a fridge or on the bench; the same where the shop never said how
    /// warm its places are.
    /// </summary>
    public static Hold Thawing(Shop shop, TierPlan tier, Hold hold)
    {
        if (shop.Cold is not { } cold || tier.Tier.StandsBeside)
        {
            return hold;
        }

        var waits = new Waits(CakeFigures.Of(shop), cold.CakeTimes, shop.Settings.Inches);
        int? Thaw(HeatPlace place) => waits.Thaw(tier.Tier, place, tier.Build.Pans.BakedHeight) is { Minutes: not null } wait ? wait.Planned : null;
        var cool = hold.In.Select(i => (i.Store, i.Most, Minutes: shop.Shelves.FirstOrDefault(s => s.Id == i.Store) is { Kind: ShelfKind.Fridge } shelf ? Thaw(cold.PlaceOf(shelf)) : null));
        Standing[] thaws =
        [
            .. cool.Where(c => c.Minutes is not null).Select(c => new Standing(c.Store, c.Minutes!.Value, c.Most)),
            .. Thaw(cold.Room) is { } minutes ? [new Standing("bench", minutes, minutes + ThawedStands)] : Array.Empty<Standing>(),
        ];
        return thaws.Length == 0 ? hold : hold with { In = thaws };
    }

    /// <summary>Thawed layers stand in the room, still wrapped, at most a day from the freezer: 20 h more (common practice, no source).</summary>
    private const int ThawedStands = 20 * 60;

    /// <summary>Minutes of it, whole fives; null where the method's own count.</summary>
    public static int? Minutes(Shop shop, CakeTier tier, Length baked, string from, string to, Shelf? shelf) =>
        Of(shop, tier, baked, from, to, shelf) is { Minutes: not null } wait ? wait.Planned : null;
}
