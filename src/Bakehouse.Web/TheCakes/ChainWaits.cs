namespace Bakehouse.Web.TheCakes;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Chains;
using Bakehouse.Domain.Heat;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Shops;

/// <summary>The waits of a tier that heat decides, each with what it is for and its honest range, in the order of the plan.</summary>
internal static class ChainWaits
{
    /// <summary>"Until it is filled: 8 in, baked 4.8 cm: 1 h 15 in Fridge 1 (1 h to 1 h 30). Planned: 14 h."</summary>
    public static IEnumerable<string> Of(TierChain chain, Shop shop)
    {
        var baked = BuildSheet.Of([chain.Tier], Domain.Orders.Finish.Smooth, CakeFigures.Of(shop)).Tiers[0].Pans.BakedHeight;
        var before = "turnout";
        foreach (var stay in chain.Stays)
        {
            var operation = StepKey.Parse(stay.Step)!.Value.Operation;
            if (stay.Kind == StayKind.Hands)
            {
                before = operation;
            }
            else if (HeatedWaits.Of(shop, chain.Tier, baked, before, operation, shop.Shelves.FirstOrDefault(s => s.Id == stay.Store)) is { } wait)
            {
                yield return $"{Until(operation)}: {Said(wait)} Planned: {HeatWait.Said((int)stay.Minutes)}.";
            }
        }
    }

    private static string Said(HeatWait wait) => wait.Minutes is not { } range ? string.Join(" ", wait.Problems.Select(p => $"{p.Sentence} {p.Try}"))
        : range.High <= wait.AtLeast ? wait.Why
        : $"{wait.Why.TrimEnd('.')} ({HeatWait.Said(Math.Max(wait.AtLeast, Fives(range.Low)))} to {HeatWait.Said(Fives(range.High))}).";

    private static int Fives(double minutes) => (int)Math.Ceiling(minutes / 5) * 5;

    private static string Until(string operation) => operation switch
    {
        "wrap" => "Until it is wrapped",
        "fill" => "Until it is filled",
        "stack" => "Until it is stacked",
        "decorate" => "Until it is decorated",
        _ => "Until the next coat",
    };
}
