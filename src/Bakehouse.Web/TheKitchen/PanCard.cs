namespace Bakehouse.Web.TheKitchen;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Shops;
using Bakehouse.Domain.Slips;
using Bakehouse.Web.Shell;

/// <summary>What a load of a tier's pans takes, and which layers come out of them, as name and figure.</summary>
internal sealed class PanCard(TierBuild tier, Shop shop, Words words)
{
    private readonly IReadOnlyList<int> loads = TierPlan.Of(tier, shop).Loads;

    /// <param name="step">Of one load; a foam tier has none.</param>
    public IEnumerable<(string Name, string Figure)> Of(StepKey step)
    {
        var (operation, load) = (step.Operation, Slip.LoadOf(step));
        if (load >= loads.Count)
        {
            yield break;
        }

        var first = loads.Take(load).Sum();
        var mine = Enumerable.Range(first, loads[load]).ToList();
        var rest = loads.Count > 1 ? $", load {load + 1} of {loads.Count}" : "";
        yield return operation is "mix" or "bake"
            ? (PanWords.Of(tier, mine.Count, words) + rest, Batter(mine))
            : (words.Tier(tier.Tier) + rest, $"{mine.Count} {(tier.Pans.Halved ? mine.Count == 1 ? "half" : "halves" : mine.Count == 1 ? "sponge" : "sponges")}");
        if (operation is not "mix")
        {
            yield return ("Layers, from the foot", PanWords.Layers(tier.Pans));
        }
    }

    private string Batter(List<int> mine) => tier.Pans.Own.Count == 0
        ? $"{words.VolumeOf(tier.Pans.Batter)} batter each"
        : $"{string.Join(", ", mine.Select(pan => words.VolumeOf(tier.Pans.Own[pan])[..^2]))} L batter";
}
