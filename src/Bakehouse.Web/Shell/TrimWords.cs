namespace Bakehouse.Web.Shell;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;

/// <summary>Rings and beads of a tier in words.</summary>
internal static class TrimWords
{
    /// <summary>What holds a soft filling in.</summary>
    public const string Ring = "Ring around the filling";

    /// <summary>"1.2 cm wide, 0.05 L icing".</summary>
    public static string Dam(TierBuild tier, Words words) => $"{words.Centimetres(tier.Tier.Special!.Dam)} wide, {words.VolumeOf(tier.Dam)} icing";

    /// <summary>Name and figure; none without beads.</summary>
    public static IEnumerable<(string Name, string Figure)> Beads(TierBuild tier, Words words)
    {
        var (foot, top) = (tier.Tier.Special?.FootBead ?? default, tier.Tier.Special?.TopBead ?? default);
        string[] where = [.. foot > default(Length) ? [$"foot {words.Centimetres(foot)}"] : Array.Empty<string>(), .. top > default(Length) ? [$"top {words.Centimetres(top)}"] : Array.Empty<string>()];
        return where.Length == 0 ? [] : [("Beads", $"{string.Join(", ", where)}, {words.VolumeOf(tier.Beads)}")];
    }
}
