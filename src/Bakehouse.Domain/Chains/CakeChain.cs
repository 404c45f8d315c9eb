namespace Bakehouse.Domain.Chains;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Dangers;
using Bakehouse.Domain.FoodClocks;
using Bakehouse.Domain.Heat;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using Bakehouse.Domain.Slips;

/// <summary>A tier on its way.</summary>
public sealed record TierChain(CakeTier Tier, IReadOnlyList<ChainStay> Stays, IReadOnlyList<ChainPoint> Points, IReadOnlyList<ChainBreach> Breaches);

/// <summary>A cake's food clock by the plan.</summary>
/// <param name="Rules">By whose rules.</param>
/// <param name="Now">As it is now.</param>
/// <param name="AtHandover">As it will be when it is handed over.</param>
/// <param name="Spells">What was counted, of the tier that was out longest.</param>
public sealed record ChainClock(FoodRules Rules, CakeClock Now, CakeClock AtHandover, Instant HandedOver, IReadOnlyList<Spell> Spells);

/// <summary>
/// The cold chain of a cake: where its tiers stand by the plan on the wall, how warm they get there, and what the food clock says. It is a check of
/// a plan that is found and never changes it.
/// </summary>
public static class CakeChain
{
    /// <summary>Every tier of cake that is planned, bottom first; empty where the shop never said how warm its places are.</summary>
    public static IReadOnlyList<TierChain> Of(Order order, Shop shop, Wall wall, Instant now)
    {
        if (shop.Cold is not { } cold || BuildSheet.Try(order.Tiers, order.Finish, CakeFigures.Of(shop)) is not { } sheet)
        {
            return [];
        }

        var path = new TierPath(order, shop, cold, wall, now);
        return
        [
            .. from build in sheet.Stack
               where !build.Tier.IsFalse && CakeBodies.Problems(build.Tier, CakeFigures.Of(shop)).Count == 0
               let stays = path.Of(build.Tier)
               where stays.Count > 0
               let heat = new TierHeat(TierPlan.Of(build, shop), shop, cold).Through(stays)
               select new TierChain(build.Tier, stays, heat.Points, heat.Breaches),
        ];
    }

    /// <summary>The food clock of the tier that is out longest; null if nothing in the cake is on the clock, or it is not planned yet.</summary>
    public static ChainClock? Clock(Order order, Shop shop, Wall wall, IReadOnlyList<Slip> slips, Instant now)
    {
        if (shop.Cold is not { } cold || BuildProblems.Of(order.Tiers, CakeFigures.Of(shop)).Count > 0 || !order.Stack.Any(t => IsOnClock(t, order, shop)))
        {
            return null;
        }

        var (path, rules) = (new TierPath(order, shop, cold, wall, now), cold.FoodRules);
        return path.HandedOver is not { } handed ? null : order.Stack.Where(t => IsOnClock(t, order, shop))
            .Select(t => ChainSpells.Of(path.Of(t), slips, rules)).Where(s => s.Count > 0)
            .Select(s => new ChainClock(rules, CakeClock.Of(rules, s, now), CakeClock.Of(rules, s, s[^1].To), handed, s))
            .MaxBy(c => (c.AtHandover.Verdict, c.AtHandover.Used));
    }

    /// <summary>When it leaves the fridge, and what is told to whoever takes it; null where that can't be said.</summary>
    /// <param name="cutting">When it is cut, not before the handover.</param>
    public static LeaveAnswer? Leaving(Order order, Shop shop, Instant handed, Instant cutting, ChainClock? clock)
    {
        var tiers = order.Stack.Where(t => !t.IsFalse).ToList();
        if (shop.Cold is not { } cold || tiers.Count == 0 || tiers.SelectMany(t => CakeBodies.Problems(t, CakeFigures.Of(shop))).Any())
        {
            return null;
        }

        var zone = DateTimeZoneProviders.Tzdb[shop.Zone];
        var fridge = shop.Shelves.Where(s => s.Kind == ShelfKind.Fridge).Select(cold.PlaceOf).FirstOrDefault() ?? HeatPlace.UsualFridge;
        var coat = tiers.TrueForAll(t => t.Special?.Paste is not null) ? CoatState.Paste : CoatState.Cream;
        var hall = HeatPlace.HallIn(cutting.InZone(zone).Month, shop.Settings.Country is "AU" or "NZ") with { Humidity = cold.Humidity };
        var left = clock is null ? (int?)null : Math.Max(1, clock.Rules.LimitMinutes - (int)Math.Ceiling(clock.AtHandover.Used.TotalMinutes));
        return LeaveFridge.Of(new LeaveQuestion(tiers, coat, fridge, hall, handed, cutting) { MostOut = left, IsBoxed = true, CakeTimes = cold.CakeTimes }, CakeFigures.Of(shop));
    }

    /// <summary>True if something of the tier is on the clock: its filling, or what lies on the cake.</summary>
    private static bool IsOnClock(CakeTier tier, Order order, Shop shop) => !tier.IsFalse && ((tier.Layers > 1 && Filling.Of(tier.Filling) is { } filling && shop.IsOnClock(filling))
        || order.OnTop?.Toppings.Any(t => Topping.Of(t.Topping)?.NeedsFridge == true) == true);
}
