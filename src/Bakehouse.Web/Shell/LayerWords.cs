namespace Bakehouse.Web.Shell;

using Bakehouse.Domain.Cakes;

/// <summary>The layers of a tier in words.</summary>
internal static class LayerWords
{
    /// <summary>"2.0 cm" where all are equal, else each from the foot up: "2.0, 2.0, 3.1 cm"; "foam" for a false tier.</summary>
    public static string Of(TierBuild tier, Words words) => tier.Layers.Count == 0 ? "foam"
        : tier.Layers.Distinct().Count() == 1 ? words.CutTo(tier.Layers[0])
        : string.Join(", ", tier.Layers.Select(l => words.CutTo(l)[..^3])) + " cm";
}
