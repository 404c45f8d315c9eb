namespace Bakehouse.Domain.Methods;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Cakes.Packing;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;

/// <summary>Builds the steps of one order. Amounts and masses come from its build sheet, minutes and waits from the method's data.</summary>
internal sealed partial class CakeStepsMaker
{
    private readonly Order order;
    private readonly Shop shop;
    private readonly BuildSheet sheet;
    private readonly List<TierPlan> tiers;
    private readonly List<TierPlan> batches;
    private readonly List<Step> steps = [];
    private readonly List<Hold> holds = [];
    private readonly List<FoodClock> clocks = [];
    private readonly List<Age> ages = [];
    private readonly List<Fresh> fresh = [];

    public CakeStepsMaker(Order order, Shop shop)
    {
        (this.order, this.shop) = (order, shop);
        sheet = BuildSheet.Of(order, CakeFigures.Of(shop));
        tiers = [.. sheet.Stack.Select(t => TierPlan.Of(t, shop))];
        batches = [.. sheet.Beside.Select(t => TierPlan.Of(t, shop))];
    }

    private bool SeveralTiers => tiers.Count > 1;

    /// <summary>The operation that gives a tier its last coat.</summary>
    private string CoatOf(CakeTier tier) => tier.Special?.Paste is not null ? "cover" : order.Finish == Finish.SemiNaked ? "crumb" : "coat";

    /// <summary>The last thing that is done to a tier by itself.</summary>
    private string LastOf(CakeTier tier) => tier.Special is { Drip.Millimetres: > 0 } ? "drip" : CoatOf(tier);

    public CakeSteps Make()
    {
        var cream = Cream();
        for (var i = 0; i < tiers.Count; i++)
        {
            Tier(tiers[i], OnDrum(i));
        }

        List<string> cupcakes = [.. batches.SelectMany(Batch)];
        CreamWaits(cream);
        LargestFirst("fill");
        LargestFirst("crumb");
        var (ready, handedOver) = HandOver(tiers.Count == 0 ? null : Decorate(), cupcakes);
        Keep(handedOver);
        batches.ForEach(b => KeepCupcakes(b, handedOver));
        return new CakeSteps(steps, holds, clocks, ages, fresh, ready, handedOver);
    }

    /// <summary>
    /// What a bowlful or load is kept apart from. Not from what it holds itself: such a cake can only be kept for the day, its work is stopped
    /// elsewhere until it is another one. What is only not liked is noted and asks for nothing.
    /// </summary>
    private IReadOnlyList<string> KeptFrom(IReadOnlyList<string> has) => order.Allergies.Told == CustomersWord.Dislike ? []
        : has.Count == 0 ? order.Allergies.Avoid
        : [.. order.Allergies.Avoid.Except(has, StringComparer.Ordinal)];

    private bool OnDrum(int tier) => tier == 0 && (shop.Settings.OnDrum || !SeveralTiers);

    private string Key(Guid? tier, string operation, int ordinal = 1) => new StepKey(order.Id, tier, operation, ordinal).ToString();

    private string Add(Guid? tier, string operation, double minutes, int ordinal = 1, int count = 1, Mix? mix = null, Bake? bake = null, IReadOnlyList<string>? has = null)
    {
        var kind = Method.OperationOf(operation);
        var key = Key(tier, operation, ordinal);
        var avoid = mix is null && bake is null ? [] : KeptFrom(has ?? []);
        steps.Add(new Step(key, order.Id.ToString("N"), tier?.ToString("N") ?? "", operation, Math.Max(5, Method.Sitting(minutes)), kind.Skill, count, kind.Tools, mix, bake, has ?? [], avoid, null));
        return key;
    }

    /// <summary>On a shelf, by its shape from above and its height.</summary>
    /// <param name="least">Minutes instead of the method's, outside of a freezer.</param>
    /// <param name="of">The tier that waits, where heat decides how long.</param>
    private void Wait(string from, string to, string operation, string next, Piece piece, int height, int? least = null, TierPlan? of = null)
    {
        var wait = Method.WaitOf(operation, next);
        int? Heated(Shelf shelf) => of is null ? null : HeatedWaits.Minutes(shop, of.Tier, of.Build.Pans.BakedHeight, operation, next, shelf);
        var standings = wait.In.SelectMany(i => Places.OnShelves(shop, i, piece, height, least, Heated)).ToList();
        // Where no shelf takes it the wait still stands, in the tallest shelf of its kind, so that the planner can say which shelf is too small.
        if (standings.Count == 0)
        {
            standings.AddRange(wait.In.SelectMany(i => Places.AnyShelf(shop, i, least, Heated)).Take(1));
        }

        if (standings.Count > 0)
        {
            holds.Add(new Hold($"{from}>{to}", from, to, ShelfRoom.Needed(piece), height, standings, null) { Piece = piece });
        }
    }

    /// <summary>By count: rack places, tubs, or nowhere.</summary>
    private void Wait(string from, string to, string operation, string next, int places, int? least = null, int? most = null) =>
        holds.Add(new Hold($"{from}>{to}", from, to, places, 0, [.. Method.WaitOf(operation, next).In.Select(i => new Standing(i.Kind, least ?? i.Least, most ?? i.Most))], null));

    private void Tubs(string from, string to, string operation, string next) => Wait(from, to, operation, next, places: 1);
}
