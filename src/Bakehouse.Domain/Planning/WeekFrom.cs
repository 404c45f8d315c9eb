namespace Bakehouse.Domain.Planning;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Cakes.Packing;
using Bakehouse.Domain.Chores;
using Bakehouse.Domain.FarDates;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;
using Bakehouse.Domain.Slips;

/// <content>The seam between the book and the planner.</content>
public sealed partial record Week
{
    /// <summary>
    /// The planning problem of the planned orders: their steps by the method, the shop's people and places, what is done and
    /// what is running. Pure. Minute 0 is local midnight of the Monday before the week of <paramref name="now"/>; the last minute lies
    /// a week after the last pickup that may be planned. A step that nobody ticked is assumed where its planned time has passed
    /// (<see cref="Assumed"/>); one that may not be guessed is free from now on, wherever the wall has it. That near work stays calm is
    /// the planner's part (it keeps the rows of the reference).
    /// </summary>
    /// <param name="orders">Newest versions; those that are not planned, or too far away to be, are left out.</param>
    /// <param name="done">Ticks that stand.</param>
    /// <param name="wall">The plan on the wall, or null.</param>
    /// <param name="hand">Pins that stand, chores, what went wrong, and what somebody said is not done; null for none.</param>
    public static Week From(IReadOnlyList<Order> orders, Shop shop, IReadOnlyList<Tick> done, Wall? wall, Instant now, ByHand? hand = null)
    {
        var zone = DateTimeZoneProviders.Tzdb[shop.Zone];
        var today = now.InZone(zone).Date;
        var planned = orders.Where(o => PlanReach.IsIn(o, shop, today, done)).OrderBy(o => o.Handover.At).ThenBy(o => o.Id).ToList();
        var time = WeekTime.Of(zone, now, Math.Max(shop.Settings.PlanDays, DaysTo(planned, today)));
        // A cake that is with its customer asks for nothing any more, even if its stage was not moved yet.
        var ticked = done.Select(t => t.Step).ToHashSet();
        var cakes = planned.Select(o => (Order: o, Cake: CakeSteps.Of(o, shop))).Where(c => !ticked.Contains(c.Cake.Out)).ToList();
        var into = new GoesIn(planned, shop.Allergens, hand ?? ByHand.Nothing);
        var empty = Empty(shop, time).With(hand?.Chores ?? [], time);
        var week = empty with
        {
            Steps = [.. cakes.SelectMany(c => into.Of(c.Order, c.Cake.Steps))],
            Air = into.Dust(empty.Air),
            Holds = [.. cakes.SelectMany(c => c.Cake.Holds)],
            Clocks = [.. cakes.SelectMany(c => c.Cake.Clocks)],
            Ages = [.. cakes.SelectMany(c => c.Cake.Ages)],
            Orders = [.. cakes.Select(c => OrderOf(c.Order, c.Cake, shop, time))],
        };
        week = week with { Machines = WithPans(week, shop) };
        var hung = wall?.From(time.Epoch);
        var (slipped, known) = SlippedWeek.Of(PanSizes.Few(week), done, hand?.Slips ?? [], hung, time, h => Thawing(h, planned, shop));
        return WeekFacts.Apply(slipped, known, hung, time, hand ?? ByHand.Nothing);
    }

    private static Hold Thawing(Hold hold, List<Order> orders, Shop shop)
    {
        var key = StepKey.Parse(hold.From)!.Value;
        var order = orders.First(o => o.Id == key.Order);
        var tier = BuildSheet.Of(order.Tiers, order.Finish, CakeFigures.Of(shop)).Tiers.First(t => t.Tier.Id == key.Tier);
        return HeatedWaits.Thawing(shop, TierPlan.Of(tier, shop), hold);
    }

    /// <summary>Days to the last pickup: an order that was begun stays in the week, however far its day is put.</summary>
    private static int DaysTo(List<Order> planned, LocalDate today) =>
        planned.Count == 0 ? 0 : Period.DaysBetween(today, planned[^1].Handover.At.Date);

    private static Week Empty(Shop shop, WeekTime time) => new(
        $"{shop.Name} from {time.Monday:yyyy-MM-dd}",
        time.Epoch,
        shop.Zone,
        WeekTime.Grain,
        time.Horizon,
        time.Now,
        WeekTime.Up(time.Now),
        [.. shop.People.Select(p => new WeekPerson(p.Id, p.Name, p.Skills, time.Spans(p.Shifts, shop), time.Spans(p.Overtime, shop), p.Role != Role.Owner))],
        [new Tool("turntable", shop.Turntables, []), new Tool("bench", shop.BenchPlaces, []), new Tool("van", 1, [])],
        MachinesOf(shop),
        FamiliesOf(shop),
        [new Air("wheat", 480)],
        Places.Of(shop),
        [], [], [], [], [], [], []);

    // 5 min to wash a bowl between like mixes, 10 between unlike; a wet clean-down is 30 min; an oven recovers in 5 or 15
    // (common practice, no source). Flour dust settles in the rest of the day: 8 h stands for "first run of the day".
    private static List<Machine> MachinesOf(Shop shop) =>
    [
        .. shop.Bowls.Select(b => new Machine(b.Id, MachineKind.Bowl, 5, 10, [], new CleanDown(30, Skills.Clean), 0, new Dictionary<int, int>())),
        .. shop.Ovens.Select(o => new Machine(o.Id, MachineKind.Oven, 5, 15, [], null, o.Levels,
            Enumerable.Range(3, 16).ToDictionary(d => d, d => DeckFit.Pans(o, d))) { Deck = Room.Of(o) }),
        new Machine("stove", MachineKind.Bowl, 0, 5, [], null, 0, new Dictionary<int, int>()),
    ];

    /// <summary>Ovens know the round pans; of others those that stand in this week.</summary>
    private static IReadOnlyList<Machine> WithPans(Week week, Shop shop)
    {
        var others = week.Steps.SelectMany(s => s.Bake?.Pans ?? []).Where(p => !PanCode.Bare(p).IsRound).Distinct().Order().ToList();
        return others.Count == 0 ? week.Machines : [.. week.Machines.Select(m => shop.Ovens.FirstOrDefault(o => o.Id == m.Id) is { } oven && m.Kind == MachineKind.Oven
            ? m with { Fits = m.Fits.Concat(others.Select(p => new KeyValuePair<int, int>(p, DeckFit.Pans(oven, p)))).ToDictionary(f => f.Key, f => f.Value) }
            : m)];
    }

    private static List<Family> FamiliesOf(Shop shop) =>
    [
        .. Sponge.All.Select(s => new Family(s.Id, shop.Bowls.ToDictionary(b => b.Id, b => (int)b.Batter.Grams))),
        new Family("buttercream", shop.Bowls.ToDictionary(b => b.Id, b => b.CreamMillilitres)),
        .. Filling.All.Where(f => f.Cooked).Select(f => new Family(f.Id, new Dictionary<string, int> { ["stove"] = Places.PotMillilitres })),
    ];

    private static WeekOrder OrderOf(Order order, CakeSteps cake, Shop shop, WeekTime time)
    {
        // The promise is a moment. The cake is brought to the counter at it or a little before, so that two who come at once are
        // both served and nothing is planned after the hour that was agreed.
        var at = WeekTime.Up(time.Minute(order.Handover.At));
        return new WeekOrder(order.Id.ToString("N"), $"{order.Number} {order.Customer.Name}", cake.Ready, cake.Out,
            order.Handover.Way == Way.Deliver, order.Handover.Way == Way.Deliver ? at - 30 : at - 15, at, 1,
            WeekTime.Up(shop.Settings.BufferMinutes), cake.Fresh);
    }
}
