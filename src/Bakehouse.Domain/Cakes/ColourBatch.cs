namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;

/// <summary>One colour of coat.</summary>
/// <param name="Name">As it stands in the order.</param>
/// <param name="Swatch">#RRGGBB.</param>
/// <param name="Needed">On the cake.</param>
public sealed record ColourVolume(string Name, string Swatch, Volume Needed);

/// <summary>
/// One colour, mixed in one batch for the whole cake, because a second batch can't be matched. Part of it is kept back, before
/// coating, for seams after stacking and for repairs.
/// </summary>
/// <param name="Needed">On the cake.</param>
/// <param name="KeptBack">Kept in a covered bowl.</param>
public sealed record ColourBatch(string Name, string Swatch, Volume Needed, Volume KeptBack)
{
    /// <summary>To be coloured at once.</summary>
    public Volume ToMix => Needed + KeptBack;

    /// <summary>The batch for a need: the part kept back is the share of it, but not less than the least (both from the figures).</summary>
    public static ColourBatch For(ColourVolume need, CakeFigures figures)
    {
        var share = need.Needed * figures.KeptBackShare;
        return new ColourBatch(need.Name, need.Swatch, need.Needed, share > figures.KeptBackLeast ? share : figures.KeptBackLeast);
    }

    /// <summary>One batch for each colour of several tiers; the same name and swatch is the same colour.</summary>
    public static IReadOnlyList<ColourBatch> Of(IEnumerable<ColourVolume> needs, CakeFigures figures) =>
    [
        .. needs
            .GroupBy(n => (n.Name, Swatch: n.Swatch.ToUpperInvariant()))
            .Select(g => For(g.First() with { Needed = Volume.Sum(g.Select(n => n.Needed)) }, figures)),
    ];

    /// <summary>A coat shared out. The shares must add up to 1; anything else is our bug, since the order was checked.</summary>
    public static IReadOnlyList<ColourVolume> Split(Volume coat, IReadOnlyList<CoatColour> colours)
    {
        var sum = colours.Sum(c => c.Share);
        if (sum != 1 || colours.Any(c => c.Share < 0))
        {
            throw new ArgumentOutOfRangeException(nameof(colours), sum, "The shares of a coat are zero or more and add up to 1.");
        }

        return [.. colours.Select(c => new ColourVolume(c.Name, c.Swatch, coat * (double)c.Share))];
    }
}
