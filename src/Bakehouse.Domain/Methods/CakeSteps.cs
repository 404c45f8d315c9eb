namespace Bakehouse.Domain.Methods;

using System.Globalization;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;

/// <summary>The steps, waits, clocks and ages of one order: the method applied to its tiers.</summary>
/// <param name="Out">The step that hands the cake over.</param>
/// <param name="Ready">The step after which it is boxed.</param>
public sealed record CakeSteps(
    IReadOnlyList<Step> Steps,
    IReadOnlyList<Hold> Holds,
    IReadOnlyList<FoodClock> Clocks,
    IReadOnlyList<Age> Ages,
    IReadOnlyList<Fresh> Fresh,
    string Ready,
    string Out)
{
    /// <summary>Minutes that a cake on the clock may be out of the cold from filling to handover: the shop's setting, local rules decide.</summary>
    public const int ClockMinutes = 240;

    /// <summary>All that must be done for an order in this shop.</summary>
    public static CakeSteps Of(Order order, Shop shop) => new CakeStepsMaker(order, shop).Make();
}

/// <summary>Builds the steps of one order; the waits come from the method's data.</summary>
internal sealed class CakeStepsMaker(Order order, Shop shop)
{
    private const double Reference = 1;
    private readonly List<Step> steps = [];
    private readonly List<Hold> holds = [];
    private readonly List<FoodClock> clocks = [];
    private readonly List<Age> ages = [];
    private readonly List<Fresh> fresh = [];
    private readonly List<TierPlan> tiers = [.. order.Tiers.Select(t => TierPlan.Of(t, shop))];

    private bool SeveralTiers => tiers.Count > 1;

    private decimal MassKg => tiers.Sum(t => 3.1416m * t.Tier.Diameter.Centimetres * t.Tier.Diameter.Centimetres / 4 * t.Tier.Height.Centimetres * 0.65m / 1000);

    public CakeSteps Make()
    {
        var cream = Cream();
        for (var i = 0; i < tiers.Count; i++)
        {
            Tier(tiers[i], i == 0);
        }

        CreamWaits(cream);
        LargestFirst();
        var decorated = Decorate();
        var (ready, handedOver) = HandOver(decorated);
        Keep(handedOver);
        return new CakeSteps(steps, holds, clocks, ages, fresh, ready, handedOver);
    }

    private string Key(Guid? tier, string operation, int ordinal = 1) => new StepKey(order.Id, tier, operation, ordinal).ToString();

    private string Add(Guid? tier, string operation, double minutes, int ordinal = 1, int count = 1, Mix? mix = null, Bake? bake = null, IReadOnlyList<string>? has = null)
    {
        var kind = Method.OperationOf(operation);
        var key = Key(tier, operation, ordinal);
        var avoid = mix is null && bake is null ? [] : order.Allergies.Avoid;
        steps.Add(new Step(key, order.Id.ToString("N"), tier?.ToString("N") ?? "", operation, Math.Max(5, Method.Sitting(minutes)), kind.Skill, count, kind.Tools, mix, bake, has ?? [], avoid, null));
        return key;
    }

    private void Tier(TierPlan tier, bool bottom)
    {
        var id = tier.Tier.Id;
        var f = Method.Outside(tier.Tier);
        var wrapped = tier.Loads.Select((pans, i) => BakeLoad(tier, pans, i + 1)).ToList();
        var fillings = tier.Tier.Layers - 1;
        // Splitting and filling are one sitting: 4 min for two cuts, 10 for three fillings on the reference tier.
        var cuts = tier.Tier.Layers - tier.Pans;
        var fill = Add(id, "fill", (4 * Math.Sqrt(f) * cuts / 2) + (10 * Math.Pow(f, 0.7) * Math.Max(1, fillings) / 3.0));
        var crumb = Add(id, "crumb", Method.OperationOf("crumb").Minutes * Math.Pow(f, 0.8));
        var onDrum = bottom && (shop.Settings.OnDrum || !SeveralTiers);
        var footprint = ShelfRoom.Footprint(tier.Tier, onDrum);
        var height = ShelfRoom.HeightCm([tier.Tier]);
        foreach (var layers in wrapped)
        {
            Wait(layers, fill, "wrap", "fill", ShelfRoom.Footprint(tier.Tier, false), height);
        }

        Wait(fill, crumb, "fill", "crumb", footprint, height, least: tier.Filling.SettleMinutes);
        if (order.Finish != Finish.SemiNaked)
        {
            var coat = Add(id, "coat", Method.OperationOf("coat").Minutes * Math.Pow(f, 0.8));
            Wait(crumb, coat, "crumb", "coat", footprint, height);
        }

        if (tier.Filling.Cooked && !steps.Exists(s => s.Id == FillingKey(tier)))
        {
            Cook(tier);
        }

        if (tier.Filling.Cooked)
        {
            Tubs(FillingKey(tier), fill, "filling", "fill");
        }
    }

    private string FillingKey(TierPlan tier) =>
        Key(null, "filling", 1 + tiers.Select(t => t.Filling.Id).Distinct().Order(StringComparer.Ordinal).ToList().IndexOf(tier.Filling.Id));

    private void Cook(TierPlan tier)
    {
        var same = tiers.Where(t => t.Filling.Id == tier.Filling.Id).ToList();
        var millilitres = (int)Math.Ceiling(same.Sum(FillingMillilitres) / 10) * 10;
        var ordinal = StepKey.Parse(FillingKey(tier))!.Value.Ordinal;
        Add(null, "filling", Method.OperationOf("filling").Minutes, ordinal, mix: new Mix(tier.Filling.Id, millilitres), has: tier.Filling.Has);
    }

    private static double FillingMillilitres(TierPlan t)
    {
        var r = (double)t.Tier.Diameter.Centimetres / 2;
        return Math.PI * r * r * 0.635 * (t.Tier.Layers - 1);
    }

    private string BakeLoad(TierPlan tier, int pans, int ordinal)
    {
        var id = tier.Tier.Id;
        var mix = Add(id, "mix", Method.OperationOf("mix").Minutes, ordinal, mix: new Mix(tier.Sponge.Id, tier.BatterGrams * pans), has: tier.Sponge.Has);
        var bake = Add(id, "bake", Sponge.BakeMinutes(tier.Inches), ordinal, bake: new Bake(tier.Sponge.Heat.ToString(CultureInfo.InvariantCulture), [.. Enumerable.Repeat(tier.Inches, pans)]), has: tier.Sponge.Has);
        var turnout = Add(id, "turnout", 1.5 * pans, ordinal);
        var wrap = Add(id, "wrap", 2 * pans, ordinal);
        Wait(mix, bake, "mix", "bake", places: 1, most: tier.Sponge.BatterLife);
        Wait(bake, turnout, "bake", "turnout", places: pans);
        var deep = (double)tier.Tier.Height.Centimetres / tier.Pans;
        Wait(turnout, wrap, "turnout", "wrap", places: pans, least: deep >= 4.5 ? 150 : deep >= 3 ? 120 : 80);
        return wrap;
    }

    private List<string> Cream()
    {
        var millilitres = tiers.Sum(CreamMillilitres);
        var biggest = shop.Bowls.Count == 0 ? millilitres : shop.Bowls.Max(b => b.CreamMillilitres);
        var bowls = Math.Max(1, (int)Math.Ceiling(millilitres / Math.Max(1, biggest)));
        var each = (int)Math.Ceiling(millilitres / bowls / 10) * 10;
        return [.. Enumerable.Range(1, bowls).Select(i => Add(null, "buttercream", Method.OperationOf("buttercream").Minutes, i, mix: new Mix("buttercream", each), has: ["milk"]))];
    }

    /// <summary>Coats on all sides 7 mm thick in all (2 mm crumb, 5 mm final), a filling of it where chosen, and 8 % kept back.</summary>
    private double CreamMillilitres(TierPlan t)
    {
        var (r, h) = ((double)t.Tier.Diameter.Centimetres / 2, (double)t.Tier.Height.Centimetres);
        var thick = order.Finish == Finish.SemiNaked ? 0.2 : 0.7;
        var coats = (Math.PI * (((r + thick) * (r + thick)) - (r * r)) * h) + (Math.PI * (r + thick) * (r + thick) * thick);
        return (coats + (t.Filling.Id == "buttercream" ? FillingMillilitres(t) : 0)) * 1.08;
    }

    private void CreamWaits(List<string> bowls)
    {
        var colours = tiers.SelectMany(t => t.Tier.Colours.Select(c => c.Swatch)).Distinct(StringComparer.OrdinalIgnoreCase).Count();
        var kind = Method.OperationOf("colour");
        var colour = Add(null, "colour", kind.Minutes + (kind.Each * colours));
        foreach (var bowl in bowls)
        {
            Tubs(bowl, colour, "buttercream", "colour");
        }

        foreach (var tier in tiers)
        {
            Tubs(colour, Key(tier.Tier.Id, "fill"), "colour", "fill");
        }
    }

    private void LargestFirst()
    {
        var ordered = tiers.OrderByDescending(t => t.Tier.Diameter).ThenBy(t => t.Tier.Id).ToList();
        for (var i = 1; i < ordered.Count; i++)
        {
            var (from, to) = (Key(ordered[i - 1].Tier.Id, "fill"), Key(ordered[i].Tier.Id, "fill"));
            holds.Add(new Hold($"{from}>{to}", from, to, 1, 0, [new Standing(Places.None, 0, Places.Endless)], null));
        }
    }

    private string Decorate()
    {
        var kind = SeveralTiers ? "stack" : "coat";
        var coated = tiers.Select(t => Key(t.Tier.Id, order.Finish == Finish.SemiNaked ? "crumb" : "coat")).ToList();
        string? stacked = null;
        if (SeveralTiers)
        {
            var carry = tiers.Count - 1;
            // Dowels and board 8, joint 6, seams 6 for each tier above: one sitting.
            stacked = Add(null, "stack", Method.OperationOf("stack").Each * carry, count: Heavy ? 2 : 1);
        }

        var minutes = Method.DecorMinutes(order.Decoration) * tiers.Sum(t => Math.Pow(Method.Outside(t.Tier), 0.8)) / Reference;
        var sittings = Math.Max(1, (int)Math.Ceiling(minutes / 120));
        var decor = Enumerable.Range(1, sittings).Select(i => Add(null, "decorate", minutes / sittings, i)).ToList();
        for (var i = 0; i < tiers.Count; i++)
        {
            var footprint = ShelfRoom.Footprint(tiers[i].Tier, i == 0 && (shop.Settings.OnDrum || !SeveralTiers));
            Wait(coated[i], stacked ?? decor[0], "coat", stacked is null ? "decorate" : "stack", footprint, ShelfRoom.HeightCm([tiers[i].Tier]));
        }

        if (stacked is not null)
        {
            Stacked(stacked, decor[0], kind, "decorate");
        }

        for (var i = 1; i < decor.Count; i++)
        {
            Stacked(decor[i - 1], decor[i], "decorate", "decorate");
        }

        return decor[^1];
    }

    private bool Heavy => MassKg >= shop.Settings.TwoPeopleFromKg;

    private void Stacked(string from, string to, string operation, string next) =>
        Wait(from, to, operation, next, ShelfRoom.Footprint(order.Tiers[0], true), ShelfRoom.HeightCm(order.Tiers));

    private (string Ready, string Out) HandOver(string decorated)
    {
        var box = Add(null, "box", Method.OperationOf("box").Minutes, count: Heavy ? 2 : 1);
        var leave = Add(null, "leavefridge", Method.OperationOf("leavefridge").Minutes);
        Stacked(decorated, box, "decorate", "box");
        Wait(box, leave, "box", "leavefridge", ShelfRoom.Boxed(order.Tiers[0]), ShelfRoom.HeightCm(order.Tiers));
        var deliver = order.Handover.Way == Way.Deliver;
        var route = order.Handover.RouteMinutes * 1.25;
        var handedOver = deliver ? Add(null, "deliver", Method.OperationOf("deliver").Minutes + route) : Add(null, "handover", Method.OperationOf("handover").Minutes);
        Wait(leave, handedOver, "leavefridge", deliver ? "deliver" : "handover", ShelfRoom.Boxed(order.Tiers[0]), ShelfRoom.HeightCm(order.Tiers));
        if (deliver)
        {
            Wait(handedOver, Add(null, "return", route), "deliver", "return", places: 1);
        }

        return (box, handedOver);
    }

    /// <summary>Ages and clocks: a sponge keeps so long (a wish); a filling with a use-by is hard; a clock counts from filling on.</summary>
    private void Keep(string handedOver)
    {
        foreach (var tier in tiers)
        {
            var fill = Key(tier.Tier.Id, "fill");
            fresh.Add(new Fresh(fill, 2160));
            for (var i = 1; i <= tier.Loads.Count; i++)
            {
                var bake = Key(tier.Tier.Id, "bake", i);
                ages.Add(new Age($"{bake}.keeps", bake, handedOver, tier.Sponge.KeepsDays * 1440, false));
            }

            if (tier.Filling.UseByDays is { } days)
            {
                ages.Add(new Age($"{fill}.useby", fill, handedOver, days * 1440, true));
            }

            if (tier.Filling.OnClock)
            {
                var after = After(fill);
                clocks.Add(new FoodClock($"{fill}.clock", [.. steps.Select(s => s.Id).Where(after.Contains)], [.. holds.Where(h => after.Contains(h.From) && after.Contains(h.To) && h.In[0].Store != Places.None).Select(h => h.Id)], CakeSteps.ClockMinutes));
            }
        }
    }

    /// <summary>The step and what follows it in its own tier and in the whole cake, up to the handover.</summary>
    private HashSet<string> After(string step)
    {
        var tier = StepKey.Parse(step)!.Value.Tier;
        var reached = new HashSet<string> { step };
        var grew = true;
        while (grew)
        {
            grew = holds.Where(h => reached.Contains(h.From) && !h.To.Contains(".return.", StringComparison.Ordinal))
                .Select(h => h.To)
                .Where(t => StepKey.Parse(t)!.Value.Tier is not { } other || other == tier)
                .ToList()
                .Aggregate(false, (any, t) => reached.Add(t) || any);
        }

        return reached;
    }

    private void Tubs(string from, string to, string operation, string next) => Wait(from, to, operation, next, places: 1);

    private void Wait(string from, string to, string operation, string next, Length footprint, int height, int? least = null)
    {
        var wait = Method.Waits.Single(w => w.From == operation && w.To == next);
        var standings = wait.In.SelectMany(i => Places.OnShelves(shop, i, footprint, height, least)).ToList();
        // Where no shelf takes it the wait still stands, in the first shelf of its kind, so that the planner can say which shelf is too small.
        if (standings.Count == 0)
        {
            standings.AddRange(wait.In.SelectMany(i => Places.AnyShelf(shop, i, least)).Take(1));
        }

        if (standings.Count > 0)
        {
            holds.Add(new Hold($"{from}>{to}", from, to, ShelfRoom.Needed(footprint), height, standings, null));
        }
    }

    private void Wait(string from, string to, string operation, string next, int places, int? least = null, int? most = null)
    {
        var wait = Method.Waits.Single(w => w.From == operation && w.To == next);
        holds.Add(new Hold($"{from}>{to}", from, to, places, 0, [.. wait.In.Select(i => new Standing(i.Kind, least ?? i.Least, most ?? i.Most))], null));
    }
}
