namespace Bakehouse.Web.Shell;

using System.Globalization;
using Bakehouse.Domain.Cakes;

/// <summary>The pans of a tier in words.</summary>
internal static class PanWords
{
    /// <summary>"3 × 10 in", "2 × slab of 8 × 10 in, cut out", "4 × half-round of 16 in".</summary>
    public static string Of(TierBuild tier, Words words) => Of(tier, tier.Pans.Count, words);

    /// <summary>So many of a tier's pans.</summary>
    public static string Of(TierBuild tier, int count, Words words) => string.Create(CultureInfo.InvariantCulture, $"{count} × {Kind(tier, words)}");

    /// <summary>"pan", "slab" where the tier is cut out of it, "half" where two make a cake.</summary>
    public static string One(TierBuild tier) => tier.Shape is SignShape ? "slab" : tier.Pans.Halved ? "half" : "pan";

    /// <summary>
    /// Which layers come out of which pan, counted from the foot: "a layer each", "one split: layers 1+2, 3", "each split: layers 1+2, 3+4"; halves are put
    /// together first.
    /// </summary>
    public static string Layers(TierPans pans) => $"{(pans.Halved ? "two halves make a cake; " : "")}{(pans.Split == 0 ? "a layer each" : $"{Split(pans)} split: layers {From(pans)}")}";

    private static string Kind(TierBuild tier, Words words) => (tier.Shape, tier.Pan) switch
    {
        (SignShape, Slab slab) => $"slab of {words.Size(slab.Width)} × {words.Size(slab.Depth)}, cut out",
        (Round round, HalfRound) => $"half-round of {words.Size(round.Diameter)}",
        _ => words.Tier(tier.Tier),
    };

    private static string Split(TierPans pans) => (pans.Split, pans.Layers.Count) switch
    {
        (1, 1) => "the cake is",
        var (split, all) when split == all => "each",
        (1, _) => "one",
        var (split, _) => split.ToString(CultureInfo.InvariantCulture),
    };

    private static string From(TierPans pans) => string.Join(", ", pans.Layers.Select(l => string.Join('+', l)));
}
