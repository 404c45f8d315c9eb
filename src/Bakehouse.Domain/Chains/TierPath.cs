namespace Bakehouse.Domain.Chains;

using Bakehouse.Domain.Heat;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;

/// <summary>
/// Follows a tier through the plan on the wall, from the rack to the handover: where it stands and how long. Rows of done work are what happened; what
/// has no row yet is left out.
/// </summary>
internal sealed class TierPath
{
    private readonly Order order;
    private readonly Shop shop;
    private readonly ColdChain cold;
    private readonly CakeSteps cake;
    private readonly Instant epoch;
    private readonly Instant now;
    private readonly Dictionary<string, int> rows;
    private readonly Dictionary<string, string> stores;
    private readonly Dictionary<string, int> minutes;

    public TierPath(Order order, Shop shop, ColdChain cold, Wall wall, Instant now)
    {
        (this.order, this.shop, this.cold, this.now, epoch) = (order, shop, cold, now, wall.Epoch);
        cake = CakeSteps.Of(order, shop);
        rows = wall.Plan.Steps.ToDictionary(r => r.Step, r => r.Start);
        stores = wall.Plan.Holds.ToDictionary(h => h.Hold, h => h.Store);
        minutes = cake.Steps.ToDictionary(s => s.Id, s => s.Minutes);
    }

    /// <summary>When it is handed over: as planned, but not before now, since it has not gone yet. Null while it has no row.</summary>
    public Instant? HandedOver => rows.TryGetValue(cake.Out, out var start) ? (order.Stage == Stage.HandedOver ? At(start) : Instant.Max(now, At(start))) : null;

    /// <summary>
    /// The stays of a tier in their order, from the end of its last turning out, or from its fill where its layers came out of a later oven or the freezer;
    /// empty if it was not planned.
    /// </summary>
    public IReadOnlyList<ChainStay> Of(CakeTier tier)
    {
        List<ChainStay> stays = [];
        var step = LastOf(tier, "turnout");
        if (step is null && (step = LastOf(tier, "fill")) is not null)
        {
            Work(stays, step);
        }

        while (step is not null && Next(step, tier) is { } hold)
        {
            Wait(stays, End(step), hold);
            Work(stays, step = hold.To);
        }

        return stays;
    }

    /// <summary>The last step of that kind that has a row, and through which the cake's waits lead on.</summary>
    private string? LastOf(CakeTier tier, string operation) => cake.Steps
        .Where(s => s.Name == operation && StepKey.Parse(s.Id)!.Value.Tier == tier.Id && rows.ContainsKey(s.Id) && Next(s.Id, tier) is not null).MaxBy(s => rows[s.Id])?.Id;

    // A cool cabin: at most 20 °C (common practice, no source).
    private static HeatPlace Van => new("the van", HeatPlaceKind.Car, 20);

    private Hold? Next(string step, CakeTier tier) => step == cake.Out ? null : cake.Holds
        .Where(h => h.From == step && !Places.IsWhenever(h) && rows.ContainsKey(h.To) && StepKey.Parse(h.To)!.Value is var to && (to.Tier is null || to.Tier == tier.Id))
        .MinBy(h => rows[h.To]);

    private void Work(List<ChainStay> stays, string step)
    {
        var road = StepKey.Parse(step)!.Value.Operation == "deliver";
        Add(stays, Start(step), End(step), road ? StayKind.Road : StayKind.Hands, step, "", road ? Van : cold.Room);
    }

    private void Wait(List<ChainStay> stays, Instant from, Hold hold)
    {
        var to = Start(hold.To);
        var store = StoreOf(hold, (int)(to - from).TotalMinutes);
        var shelf = shop.Shelves.FirstOrDefault(s => s.Id == store);
        Add(stays, from, to, StayKind.Waits, hold.To, shelf is null ? "" : store, shelf is null ? cold.Room : cold.PlaceOf(shelf));
    }

    private static void Add(List<ChainStay> stays, Instant from, Instant to, StayKind kind, string step, string store, HeatPlace place)
    {
        if (to > from)
        {
            stays.Add(new ChainStay(from, to, kind, step, store, place));
        }
    }

    /// <summary>Where it stood; where nobody wrote that down and it may have been warm, it was.</summary>
    private string StoreOf(Hold hold, int length) => stores.TryGetValue(hold.Id, out var store) ? store
        : hold.In.FirstOrDefault(i => !IsCold(i.Store) && length <= i.Most)?.Store ?? hold.In[0].Store;

    private bool IsCold(string store) => shop.Shelves.Any(s => s.Id == store && s.Kind != ShelfKind.CoolRoom);

    private Instant Start(string step) => step == cake.Out && HandedOver is { } handed ? handed : At(rows[step]);

    private Instant End(string step) => Start(step) + Duration.FromMinutes(minutes[step]);

    private Instant At(int minute) => epoch + Duration.FromMinutes(minute);
}
