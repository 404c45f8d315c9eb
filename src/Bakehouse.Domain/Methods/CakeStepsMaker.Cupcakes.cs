namespace Bakehouse.Domain.Methods;

using System.Globalization;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;

/// <content>
/// Cupcakes: baked in tins like layers, then piped and boxed tray by tray. They stand beside the cake, share its cream, and leave with it.
/// </content>
internal sealed partial class CakeStepsMaker
{
    /// <summary>From the bowl to the box. Returns the last step of each tray.</summary>
    private List<string> Batch(TierPlan batch)
    {
        var turnedOut = BakedTins(batch);
        var trays = batch.Cupcakes!.EachTray;
        var boxed = new List<string>();
        for (var tray = 0; tray < trays.Count; tray++)
        {
            var pipe = Add(batch.Tier.Id, "pipe", trays[tray] * Method.PipeMinutes(order.Decoration), tray + 1);
            foreach (var (turnout, tins) in turnedOut.Select(t => (t.Step, Shared(t.From, t.To, tray * Cupcakes.OnTray, trays[tray]))).Where(t => t.Item2 > 0))
            {
                Wait(turnout, pipe, "turnout", "pipe", places: tins);
            }

            boxed.Add(Box(batch.Tier.Id, pipe, trays[tray], tray + 1));
        }

        return boxed;
    }

    private string Box(Guid id, string pipe, int cupcakes, int ordinal)
    {
        var box = Add(id, "box", Method.BoxCupcakesMinutes * cupcakes / Cupcakes.InTin, ordinal);
        Wait(pipe, box, "pipe", "box", ShelfRoom.OnTray(cupcakes), ShelfRoom.TrayHeightCm);
        return box;
    }

    /// <summary>Each load of tins, mixed, baked and turned out, with the first and the last of its cupcakes, counted from 0, the last not included.</summary>
    private List<(string Step, int From, int To)> BakedTins(TierPlan batch)
    {
        var (id, count, from) = (batch.Tier.Id, batch.Cupcakes!.Count, 0);
        var loads = new List<(string, int, int)>();
        foreach (var (tins, ordinal) in batch.Loads.Select((tins, i) => (tins, i + 1)))
        {
            var to = Math.Min(count, from + (tins * Cupcakes.InTin));
            var grams = (int)Math.Ceiling(batch.BatterGrams / (double)Cupcakes.InTin * (to - from) / 5) * 5;
            var mix = Add(id, "mix", Method.OperationOf("mix").Minutes, ordinal, mix: new Mix(batch.Sponge.Id, grams), has: batch.Sponge.Has);
            var bake = Add(id, "bake", batch.BakeMinutes, ordinal, bake: new Bake(batch.Sponge.Heat.ToString(CultureInfo.InvariantCulture), [.. Enumerable.Repeat(batch.Pan, tins)]), has: batch.Sponge.Has);
            var turnout = Add(id, "turnout", 1.5 * tins, ordinal);
            Wait(mix, bake, "mix", "bake", places: 1, most: batch.Sponge.BatterLife);
            Wait(bake, turnout, "bake", "turnout", places: tins);
            loads.Add((turnout, from, to));
            from = to;
        }

        return loads;
    }

    /// <summary>Tins of a load that end on a tray, a part of one counted whole; 0 if they have nothing in common.</summary>
    private static int Shared(int from, int to, int tray, int onTray) =>
        (Math.Max(0, Math.Min(to, tray + onTray) - Math.Max(from, tray)) + Cupcakes.InTin - 1) / Cupcakes.InTin;

    /// <summary>Boxed cupcakes wait until all leaves together; the box that is closed last says when it is ready.</summary>
    private void Leave(List<string> boxed, string leave, string ready)
    {
        foreach (var box in boxed)
        {
            var cupcakes = StepWords.TiersOf(box, order)[0].Special!.Cupcakes!.Count;
            Wait(box, leave, "box", "leavefridge", ShelfRoom.InBoxes(cupcakes), ShelfRoom.CupcakeBoxHeightCm);
            if (box != ready)
            {
                holds.Add(new Hold($"{box}>{ready}", box, ready, 1, 0, [Places.Whenever], null));
            }
        }
    }

    /// <summary>How long cupcakes keep: the sponge as any, the swirl a day; both are wishes.</summary>
    private void KeepCupcakes(TierPlan batch, string handedOver)
    {
        for (var i = 1; i <= batch.Loads.Count; i++)
        {
            var bake = Key(batch.Tier.Id, "bake", i);
            ages.Add(new Age($"{bake}.keeps", bake, handedOver, batch.Sponge.KeepsDays * 1440, false));
        }

        for (var i = 1; i <= batch.Cupcakes!.EachTray.Count; i++)
        {
            var pipe = Key(batch.Tier.Id, "pipe", i);
            ages.Add(new Age($"{pipe}.keeps", pipe, handedOver, Method.PipedKeeps, false));
        }
    }
}
