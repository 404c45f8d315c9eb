namespace Bakehouse.Domain.Methods;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;

/// <content>The whole cake: stacked, decorated, boxed, handed over; how long it keeps.</content>
internal sealed partial class CakeStepsMaker
{
    private string Decorate()
    {
        var last = tiers.Select(t => LastOf(t.Tier)).ToList();
        var stacked = SeveralTiers ? Stack() : null;
        var minutes = Method.DecorMinutes(order.Decoration) * tiers.Sum(t => Math.Pow(Method.Outside(t.Tier), 0.8));
        var sittings = Math.Max(1, (int)Math.Ceiling(minutes / Method.LongestDecor));
        var decor = Enumerable.Range(1, sittings).Select(i => Add(null, "decorate", minutes / sittings, i)).ToList();
        for (var i = 0; i < tiers.Count; i++)
        {
            var piece = ShelfRoom.OnBoard(tiers[i].Tier, OnDrum(i));
            // A thin coat firms up like a full one.
            Wait(Key(tiers[i].Tier.Id, last[i]), stacked ?? decor[0], last[i] == "crumb" ? "coat" : last[i], stacked is null ? "decorate" : "stack", piece, ShelfRoom.HeightCm([tiers[i].Tier]), of: tiers[i]);
        }

        if (stacked is not null)
        {
            Stands(stacked, decor[0], "stack", "decorate");
        }

        foreach (var (from, to) in decor.Zip(decor.Skip(1)))
        {
            Stands(from, to, "decorate", "decorate");
        }

        return decor[^1];
    }

    /// <summary>Dowels and board 8, joint 6, seams 6 for each tier above, and 4 for a rod: one sitting. Two lower a heavy part.</summary>
    private string Stack() => Add(null, "stack", (Method.OperationOf("stack").Each * (tiers.Count - 1)) + (4 * sheet.Rods), count: sheet.TwoLower ? 2 : 1);

    private void Stands(string from, string to, string operation, string next) =>
        Wait(from, to, operation, next, ShelfRoom.OnBoard(tiers[0].Tier, true), ShelfRoom.HeightCm(order.Stack));

    /// <summary>The stack in its box, and the boxes of cupcakes, leave together.</summary>
    /// <param name="decorated">The stack's last step before its box; null if there is no stack.</param>
    private (string Ready, string Out) HandOver(string? decorated, List<string> cupcakes)
    {
        var heavy = sheet.Mass.Kilograms >= shop.Settings.TwoPeopleFromKg;
        var box = decorated is null ? null : Add(null, "box", Method.OperationOf("box").Minutes, count: heavy ? 2 : 1);
        var leave = Add(null, "leavefridge", Method.OperationOf("leavefridge").Minutes);
        var way = order.Handover.Way == Way.Deliver ? "deliver" : "handover";
        var handedOver = Add(null, way, way == "deliver" ? Method.DeliverMinutes(order) : Method.OperationOf(way).Minutes);
        if (decorated is not null && box is not null)
        {
            Stands(decorated, box, "decorate", "box");
            Wait(box, leave, "box", "leavefridge", ShelfRoom.Boxed(tiers[0].Tier), ShelfRoom.HeightCm(order.Stack));
        }

        Leave(cupcakes, leave, box ?? cupcakes[^1]);
        var (stands, height) = tiers.Count == 0 ? (ShelfRoom.InBoxes(Cupcakes.OnTray), ShelfRoom.CupcakeBoxHeightCm) : (ShelfRoom.Boxed(tiers[0].Tier), ShelfRoom.HeightCm(order.Stack));
        Wait(leave, handedOver, "leavefridge", way, stands, height);
        if (way == "deliver")
        {
            Wait(handedOver, Add(null, "return", Method.RoadMinutes(order)), "deliver", "return", places: 1);
        }

        return (box ?? cupcakes[^1], handedOver);
    }

    /// <summary>Ages and clocks: sponge and coat keep so long (wishes); a filling with a use-by is hard; a clock counts from filling on.</summary>
    private void Keep(string handedOver)
    {
        foreach (var tier in tiers)
        {
            var (fill, coat) = (Key(tier.Tier.Id, "fill"), Key(tier.Tier.Id, CoatOf(tier.Tier)));
            ages.Add(new Age($"{coat}.keeps", coat, handedOver, CoatOf(tier.Tier) switch { "crumb" => Method.SemiNakedKeeps, "cover" => Method.PasteKeeps, _ => Method.CoatKeeps }, false));
            if (tier.Tier.IsFalse)
            {
                continue;
            }

            fresh.Add(new Fresh(fill, Method.FreshFromFilling));
            for (var i = 1; i <= tier.Loads.Count; i++)
            {
                var bake = Key(tier.Tier.Id, "bake", i);
                ages.Add(new Age($"{bake}.keeps", bake, handedOver, tier.Sponge.KeepsDays * 1440, false));
            }

            if (tier.Filling.UseByDays is { } days)
            {
                ages.Add(new Age($"{fill}.useby", fill, handedOver, days * 1440, true));
            }

            if (shop.IsOnClock(tier.Filling))
            {
                var after = After(fill);
                clocks.Add(new FoodClock($"{fill}.clock", [.. steps.Select(s => s.Id).Where(after.Contains)], [.. holds.Where(h => after.Contains(h.From) && after.Contains(h.To) && !Places.IsWhenever(h)).Select(h => h.Id)], shop.MostOut));
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
            grew = holds.Where(h => reached.Contains(h.From) && StepKey.Parse(h.To)!.Value.Operation != "return")
                .Select(h => h.To)
                .Where(t => StepKey.Parse(t)!.Value.Tier is not { } other || other == tier)
                .ToList()
                .Aggregate(false, (any, t) => reached.Add(t) || any);
        }

        return reached;
    }
}
