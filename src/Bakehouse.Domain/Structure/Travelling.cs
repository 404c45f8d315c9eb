namespace Bakehouse.Domain.Structure;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;

/// <summary>How a stacked cake reaches its table.</summary>
public enum StackedWhere
{
    /// <summary>Stacked in the shop, in one piece.</summary>
    Shop,

    /// <summary>In two parts, put together there.</summary>
    Parts,

    /// <summary>Tier by tier there.</summary>
    Site,
}

/// <summary>In which parts a cake travels, and why.</summary>
/// <param name="Parts">Tiers of each part, bottom first, counted from 0.</param>
/// <param name="Why">In the shop's words; empty in one piece.</param>
public sealed record Travelling(StackedWhere Where, IReadOnlyList<IReadOnlyList<int>> Parts, IReadOnlyList<string> Why)
{
    /// <summary>In one piece up to three tiers, 90 minutes of road and 12 kg; on site from five tiers, free heights, over 25 kg (all common practice, no source).</summary>
    public static readonly (int Tiers, int Minutes, Mass Mass) InOnePiece = (3, 90, Mass.FromKilograms(12));

    /// <summary>From this on tier by tier.</summary>
    public static readonly (int Tiers, Mass Mass) OnSite = (5, Mass.FromKilograms(25));

    /// <summary>The parts of a cake; of cupcakes alone none.</summary>
    /// <param name="routeMinutes">On the road, 0 if it is collected.</param>
    public static Travelling Of(BuildSheet sheet, int routeMinutes)
    {
        var count = sheet.Stack.Count;
        List<string> site =
        [
            .. count >= OnSite.Tiers ? ["five tiers or more"] : Array.Empty<string>(),
            .. sheet.Stack.Skip(1).Any(t => t.Separator.Millimetres > 0) ? ["free height between tiers"] : Array.Empty<string>(),
            .. sheet.Mass > OnSite.Mass && count > 1 ? ["over 25 kg"] : Array.Empty<string>(),
            .. routeMinutes > InOnePiece.Minutes && count > 1 ? ["more than 90 minutes of road"] : Array.Empty<string>(),
        ];
        if (site.Count > 0)
        {
            return new Travelling(StackedWhere.Site, [.. Enumerable.Range(0, count).Select(i => (IReadOnlyList<int>)[i])], site);
        }

        List<string> parts =
        [
            .. count > InOnePiece.Tiers ? ["four tiers"] : Array.Empty<string>(),
            .. sheet.Mass > InOnePiece.Mass && count > 1 ? ["over 12 kg"] : Array.Empty<string>(),
        ];
        return count == 0 ? new Travelling(StackedWhere.Shop, [], [])
            : parts.Count == 0 ? new Travelling(StackedWhere.Shop, [[.. Enumerable.Range(0, count)]], [])
            : new Travelling(StackedWhere.Parts, [[.. Enumerable.Range(0, (count + 1) / 2)], [.. Enumerable.Range((count + 1) / 2, count / 2)]], parts);
    }
}
