namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Structure;

/// <summary>One colour of coat.</summary>
/// <param name="Name">As it stands in the order.</param>
/// <param name="Swatch">#RRGGBB.</param>
/// <param name="Needed">On the cake.</param>
public sealed record ColourVolume(string Name, string Swatch, Volume Needed)
{
    /// <summary>For the seams after stacking; it is taken from what is kept back.</summary>
    public Volume Seams { get; init; }
}

/// <summary>
/// One colour, mixed in one batch for the whole cake, because a second batch can't be matched. Part of it is kept back, before
/// coating, for seams after stacking and for repairs.
/// </summary>
/// <param name="Needed">On the cake.</param>
/// <param name="KeptBack">Kept in a bag of its own, closed.</param>
public sealed record ColourBatch(string Name, string Swatch, Volume Needed, Volume KeptBack)
{
    /// <summary>What the seams of that colour take of the part kept back; the rest is for repairs.</summary>
    public Volume Seams { get; init; }

    /// <summary>To be coloured at once.</summary>
    public Volume ToMix => Needed + KeptBack;

    /// <summary>Bags of what is kept back: one, and a second one that goes along where the cake is put together elsewhere (common practice, no source).</summary>
    public static int Bags(Travelling travelling) => travelling.Parts.Count > 1 ? 2 : 1;

    /// <summary>
    /// The batch for a need: the part kept back is the share of it, but not less than the seams take and, for repairs, the least (both from the figures).
    /// </summary>
    public static ColourBatch For(ColourVolume need, CakeFigures figures)
    {
        var share = need.Needed * figures.KeptBackShare;
        var least = figures.KeptBackLeast + need.Seams;
        return new ColourBatch(need.Name, need.Swatch, need.Needed, share > least ? share : least) { Seams = need.Seams };
    }

    /// <summary>One batch for each colour of several tiers; the same name and swatch is the same colour.</summary>
    public static IReadOnlyList<ColourBatch> Of(IEnumerable<ColourVolume> needs, CakeFigures figures) =>
    [
        .. needs
            .GroupBy(n => (n.Name, Swatch: n.Swatch.ToUpperInvariant()))
            .Select(g => For(g.First() with { Needed = Volume.Sum(g.Select(n => n.Needed)), Seams = Volume.Sum(g.Select(n => n.Seams)) }, figures)),
    ];

    /// <summary>True if it is of this colour: the same name and swatch.</summary>
    public bool Is(ColourVolume colour) => colour.Name == Name && string.Equals(colour.Swatch, Swatch, StringComparison.OrdinalIgnoreCase);

    /// <summary>A coat and the seam at its foot shared out. The shares must add up to 1; anything else is our bug, since the order was checked.</summary>
    public static IReadOnlyList<ColourVolume> Split(Volume coat, IReadOnlyList<CoatColour> colours, Volume seam = default)
    {
        var sum = colours.Sum(c => c.Share);
        if (sum != 1 || colours.Any(c => c.Share < 0))
        {
            throw new ArgumentOutOfRangeException(nameof(colours), sum, "The shares of a coat are zero or more and add up to 1.");
        }

        return [.. colours.Select(c => new ColourVolume(c.Name, c.Swatch, coat * (double)c.Share) { Seams = seam * (double)c.Share })];
    }
}
