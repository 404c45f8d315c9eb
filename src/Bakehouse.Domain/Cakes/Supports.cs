namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;

/// <summary>
/// Supports in a tier that carries another: how many, where, how long. A plain default, common practice with no source; it is
/// no proof of strength. The baker decides by the cake at hand.
/// </summary>
/// <param name="Count">All cut from one mark to one length.</param>
/// <param name="Length">From the tier's board to the top of its coat.</param>
/// <param name="RingDiameter">Of the circle on which they stand, evenly.</param>
public sealed record Supports(int Count, Length Length, Length RingDiameter)
{
    /// <summary>Stands beside each count.</summary>
    public const string Caution =
        "A usual number, no proof of strength. Count what goes in and tell whoever cuts the cake. Your own judgement comes first.";

    /// <summary>
    /// Supports by the diameter of the carrying tier: to 6 in 4, to 8 in 5, to 10 in 6, wider 8. They stand 1.5 in inside
    /// the rim of the board above (or of the tier, if that is narrower), but not farther in than half its radius (common
    /// practice, no source).
    /// </summary>
    public static Supports For(Length carrying, Length carriedBoard, Length length)
    {
        var count = carrying.Inches switch { <= 6 => 4, <= 8 => 5, <= 10 => 6, _ => 8 };
        var narrower = Math.Min(carriedBoard.Inches, carrying.Inches);
        return new Supports(count, length, Measures.Length.FromInches(Math.Max(narrower - 3, narrower / 2)));
    }

    /// <summary>
    /// Supports in a tier of any outline under another: by the circles inside both outlines, long enough for the free height above it.
    /// </summary>
    /// <param name="height">Of the carrying tier with its coat.</param>
    internal static Supports For(CakeTier carrying, CakeTier carried, Length height) =>
        For(Circle(carrying), Circle(carried), height + (carried.Special?.Separator ?? default));

    private static Length Circle(CakeTier tier) => tier.Shape is Round round ? round.Diameter : Measures.Length.FromMillimetres(Math.Round((decimal)tier.Shape.Inside, 3));

    /// <summary>From one support to its neighbour, in a straight line: 2·r·sin(π/n), to the thousandth of a millimetre.</summary>
    public Length Apart => Measures.Length.FromMillimetres(Math.Round((decimal)((double)RingDiameter.Millimetres * Math.Sin(Math.PI / Count)), 3));

    /// <summary>Angles of the supports in degrees; the first lies in the plane of the half cut.</summary>
    public IEnumerable<double> Angles => Enumerable.Range(0, Count).Select(k => 360.0 * k / Count);
}
