namespace Bakehouse.Domain.Methods;

using System.Globalization;
using Bakehouse.Domain.Cakes.Packing;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;

/// <content>Each tier from the bowl to its coat, and the creams and fillings that go on it.</content>
internal sealed partial class CakeStepsMaker
{
    private void Tier(TierPlan tier, bool onDrum)
    {
        var id = tier.Tier.Id;
        var f = Method.Outside(tier.Tier);
        var wrapped = tier.Loads.Select((pans, i) => BakeLoad(tier, pans, i + 1)).ToList();
        // Splitting and filling are one sitting: 4 min for two cuts, 10 for three fillings on the reference tier.
        if (tier.Tier.IsFalse)
        {
            Foam(tier, onDrum);
            return;
        }

        var cuts = tier.Tier.Layers - tier.Cakes;
        var fill = Add(id, "fill", (4 * Math.Sqrt(f) * cuts / 2) + (10 * Math.Pow(f, 0.7) * Math.Max(1, tier.Build.Fillings) / 3.0));
        var crumb = Add(id, "crumb", Method.OperationOf("crumb").Minutes * Math.Pow(f, 0.8));
        var piece = ShelfRoom.OnBoard(tier.Tier, onDrum);
        var height = ShelfRoom.HeightCm([tier.Tier]);
        foreach (var layers in wrapped)
        {
            Wait(layers, fill, "wrap", "fill", ShelfRoom.OnBoard(tier.Tier, false), height, of: tier);
        }

        Wait(fill, crumb, "fill", "crumb", piece, height, least: tier.Filling.SettleMinutes);
        Coat(tier, crumb, piece, height);
        if (tier.Filling.Cooked)
        {
            foreach (var pot in Cooked(tier))
            {
                Tubs(pot, fill, "filling", "fill");
            }
        }
    }

    /// <summary>A false tier is coated like the others and nothing else: it takes no bowl, no oven and no filling.</summary>
    private void Foam(TierPlan tier, bool onDrum) => Coat(
        tier,
        Add(tier.Tier.Id, "crumb", Method.OperationOf("crumb").Minutes * Math.Pow(Method.Outside(tier.Tier), 0.8)),
        ShelfRoom.OnBoard(tier.Tier, onDrum),
        ShelfRoom.HeightCm([tier.Tier]));

    /// <summary>After the crumb coat: the final one or sugar paste, then a drip, each where the tier has it.</summary>
    private void Coat(TierPlan tier, string crumb, Piece piece, int height)
    {
        var (from, before) = (crumb, "crumb");
        foreach (var next in new[] { CoatOf(tier.Tier), LastOf(tier.Tier) }.Distinct().Where(o => o != "crumb"))
        {
            var step = Add(tier.Tier.Id, next, Method.OperationOf(next).Minutes * Math.Pow(Method.Outside(tier.Tier), 0.8));
            Wait(from, step, before, next, piece, height, of: tier);
            (from, before) = (step, next);
        }
    }

    /// <summary>
    /// The pots in which that filling is cooked, for all tiers with it: as few as the stove allows. Their ordinals begin at a hundred for
    /// each filling of the cake by id, so that a bigger cake only adds pots.
    /// </summary>
    private List<string> Cooked(TierPlan tier)
    {
        var kind = tiers.Where(t => !t.Tier.IsFalse).Select(t => t.Filling.Id).Distinct().Order(StringComparer.Ordinal).ToList().IndexOf(tier.Filling.Id);
        var millilitres = tiers.Where(t => !t.Tier.IsFalse && t.Filling.Id == tier.Filling.Id).Sum(t => t.Build.Filling.Millilitres);
        var pots = (int)Math.Max(1, Math.Ceiling(millilitres / (double)Places.PotMillilitres));
        var keys = Enumerable.Range(1, pots).Select(i => Key(null, "filling", (100 * kind) + i)).ToList();
        if (steps.Exists(s => s.Id == keys[0]))
        {
            return keys;
        }

        return [.. keys.Select((_, i) => Add(null, "filling", Method.OperationOf("filling").Minutes, (100 * kind) + i + 1, mix: new Mix(tier.Filling.Id, Tens(millilitres / pots)), has: tier.Filling.Has))];
    }

    private string BakeLoad(TierPlan tier, int pans, int ordinal)
    {
        var id = tier.Tier.Id;
        var mix = Add(id, "mix", Method.OperationOf("mix").Minutes, ordinal, mix: new Mix(tier.Sponge.Id, tier.LoadGrams(ordinal - 1)), has: tier.Sponge.Has);
        var bake = Add(id, "bake", tier.BakeMinutes, ordinal, bake: new Bake(tier.Sponge.Heat.ToString(CultureInfo.InvariantCulture), [.. Enumerable.Repeat(tier.Pan, pans)]), has: tier.Sponge.Has);
        var turnout = Add(id, "turnout", 1.5 * pans, ordinal);
        var wrap = Add(id, "wrap", 2 * pans, ordinal);
        Wait(mix, bake, "mix", "bake", places: 1, most: tier.Sponge.BatterLife);
        Wait(bake, turnout, "bake", "turnout", places: pans);
        Wait(turnout, wrap, "turnout", "wrap", places: pans, least: CoolMinutes(tier));
        return wrap;
    }

    private int CoolMinutes(TierPlan tier) =>
        HeatedWaits.Minutes(shop, tier.Tier, tier.Build.Pans.BakedHeight, "turnout", "wrap", null) ?? Method.CoolMinutes(tier.Build.Pans.BakedHeight);

    private List<string> Cream()
    {
        var millilitres = sheet.Icing.Millilitres;
        var biggest = shop.Bowls.Count == 0 ? millilitres : shop.Bowls.Max(b => b.CreamMillilitres);
        var bowls = Math.Max(1, (int)Math.Ceiling(millilitres / Math.Max(10, biggest - 10)));
        return [.. Enumerable.Range(1, bowls).Select(i => Add(null, "buttercream", Method.OperationOf("buttercream").Minutes, i, mix: new Mix("buttercream", Tens(millilitres / bowls)), has: ["milk"]))];
    }

    private static int Tens(double millilitres) => (int)Math.Ceiling(millilitres / 10) * 10;

    private void CreamWaits(List<string> bowls)
    {
        var kind = Method.OperationOf("colour");
        var colour = Add(null, "colour", kind.Minutes + (kind.Each * sheet.Colours.Count));
        foreach (var bowl in bowls)
        {
            Tubs(bowl, colour, "buttercream", "colour");
        }

        foreach (var tier in tiers)
        {
            var first = tier.Tier.IsFalse ? "crumb" : "fill";
            Tubs(colour, Key(tier.Tier.Id, first), "colour", first);
        }

        foreach (var pipe in batches.SelectMany(b => b.Cupcakes!.EachTray.Select((_, i) => Key(b.Tier.Id, "pipe", i + 1))))
        {
            Tubs(colour, pipe, "colour", "pipe");
        }
    }

    /// <summary>The largest tier is filled and crumb coated first: a habit of order, not a wait.</summary>
    private void LargestFirst(string operation)
    {
        var ordered = tiers.Where(t => operation != "fill" || !t.Tier.IsFalse).OrderByDescending(t => t.Tier.Diameter).ThenBy(t => t.Tier.Id).Select(t => Key(t.Tier.Id, operation)).ToList();
        foreach (var (from, to) in ordered.Zip(ordered.Skip(1)))
        {
            holds.Add(new Hold($"{from}>{to}", from, to, 1, 0, [Places.Whenever], null));
        }
    }
}
