namespace Bakehouse.Domain.Planning;

using System.Globalization;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;

/// <summary>A food limit that a cake has passed, or will have passed when it is handed over as planned.</summary>
/// <param name="UseBy">True for a use-by, false for time out of the cold.</param>
/// <param name="Minutes">Minutes by the handover.</param>
/// <param name="Limit">Minutes allowed.</param>
/// <param name="Sentence">For people, with figures.</param>
/// <param name="Try">What to do.</param>
public sealed record PassedLimit(Guid Order, Guid Tier, bool UseBy, int Minutes, int Limit, string Sentence, string Try);

/// <summary>
/// Food limits of cakes that are filled already, counted from the plan on the wall, whose rows of done work are what happened.
/// The limits are the shop's own figures; the rules of the place and a trained person decide.
/// </summary>
public static class FoodLimits
{
    private const string AskFirst = "Don't hand it over before the owner has decided. The rules of your place come first.";

    /// <summary>Every limit that is passed; empty if none is. Pure.</summary>
    /// <param name="orders">Newest versions; those that are not planned are left out.</param>
    public static IReadOnlyList<PassedLimit> Passed(IReadOnlyList<Order> orders, Shop shop, Wall wall, Instant now)
    {
        var minute = (int)Math.Floor((now - wall.Epoch).TotalMinutes);
        var rows = wall.Plan.Steps.ToDictionary(r => r.Step, r => r.Start);
        var stores = wall.Plan.Holds.ToDictionary(h => h.Hold, h => h.Store);
        return [.. orders.Where(o => Stages.IsPlanned(o.Stage)).SelectMany(o => new FoodLimitsOfCake(o, shop, rows, stores, minute).Passed())];
    }

    /// <summary>Ids of the stores where time does not count.</summary>
    internal static HashSet<string> Cold(IEnumerable<Store> stores) => [.. stores.Where(s => s.Cold).Select(s => s.Id)];

    /// <summary>True if a hold can't stand cold.</summary>
    internal static bool AlwaysWarm(Hold hold, HashSet<string> cold) => !hold.In.Any(i => cold.Contains(i.Store));

    /// <summary>Minutes that a past hold stood out of the cold, when nobody wrote down where: where it may have been warm, it was.</summary>
    internal static int WarmMinutes(Hold hold, int length, HashSet<string> cold) =>
        AlwaysWarm(hold, cold) || hold.In.Any(i => !cold.Contains(i.Store) && length <= i.Most) ? Math.Max(0, length) : 0;

    internal static PassedLimit UseBy(Order order, CakeTier tier, Shop shop, int minutes, int limit) => new(
        order.Id, tier.Id, true, minutes, limit,
        $"{What(tier, shop)} will be {Days(minutes)} old at the handover; its use-by is {Days(limit)}.", AskFirst);

    internal static PassedLimit Clock(Order order, CakeTier tier, Shop shop, int minutes, int limit) => new(
        order.Id, tier.Id, false, minutes, limit,
        $"{What(tier, shop)} will have been out of the cold for {Text(minutes)} min at the handover; the shop's limit is {Text(limit)} min.", AskFirst);

    private static string What(CakeTier tier, Shop shop) => $"{Filling.Of(tier.Filling)?.Name ?? tier.Filling} in the {StepWords.Size([tier], shop)} tier";

    private static string Days(int minutes) => $"{(minutes / 1440m).ToString("0.#", CultureInfo.InvariantCulture)} days";

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}

/// <summary>Counts one cake.</summary>
internal sealed class FoodLimitsOfCake(Order order, Shop shop, IReadOnlyDictionary<string, int> rows, IReadOnlyDictionary<string, string> stores, int now)
{
    private readonly CakeSteps cake = CakeSteps.Of(order, shop);
    private readonly HashSet<string> cold = FoodLimits.Cold(Places.Of(shop));

    public IEnumerable<PassedLimit> Passed() =>
    [
        .. cake.Ages.Where(a => a.Hard && Filled(a.From)).Select(a => (a.From, Minutes: HandedOver - End(a.From), a.Most))
            .Where(a => a.Minutes > a.Most).Select(a => FoodLimits.UseBy(order, TierOf(a.From), shop, a.Minutes, a.Most)),
        .. cake.Clocks.Where(c => Filled(c.Steps[0])).Select(c => (From: c.Steps[0], Minutes: OutOfTheCold(c), c.Limit))
            .Where(c => c.Minutes > c.Limit).Select(c => FoodLimits.Clock(order, TierOf(c.From), shop, c.Minutes, c.Limit)),
    ];

    /// <summary>When it goes out: as planned, but not before now, since it has not gone yet.</summary>
    private int HandedOver => Math.Max(now, rows.GetValueOrDefault(cake.Out, now));

    private bool Filled(string fill) => rows.ContainsKey(fill) && End(fill) <= now;

    private int End(string step) => rows[step] + Minutes(step);

    private int Minutes(string step) => cake.Steps.First(s => s.Id == step).Minutes;

    private CakeTier TierOf(string step) => order.Tiers.First(t => t.Id == StepKey.Parse(step)!.Value.Tier);

    private int OutOfTheCold(FoodClock clock) =>
        clock.Steps.Sum(Minutes) + cake.Holds.Where(h => clock.Holds.Contains(h.Id) && rows.ContainsKey(h.From) && rows.ContainsKey(h.To)).Sum(Warm);

    private int Warm(Hold hold)
    {
        var length = (hold.To == cake.Out ? HandedOver : rows[hold.To]) - End(hold.From);
        return stores.TryGetValue(hold.Id, out var store) ? (cold.Contains(store) ? 0 : Math.Max(0, length)) : FoodLimits.WarmMinutes(hold, length, cold);
    }
}
