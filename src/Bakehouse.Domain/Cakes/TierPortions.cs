namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;

/// <summary>Portions of a tier of any outline.</summary>
public static class TierPortions
{
    /// <summary>
    /// Portions by the rule of the figures. Rounds go by it. Rectangles go by their grid under every rule but the area, as their charts do.
    /// Petals give a share of what their area would (<see cref="CakeFigures.PetalShare"/>); every other outline goes by its area. A low tier
    /// gives half, rounded down (<see cref="PortionChart.FullHeight"/>).
    /// </summary>
    public static int Count(Shape shape, Length height, Cut cut, CakeFigures figures) => shape is Round round
        ? PortionChart.Count(round.Diameter, height, cut, figures)
        : Halved(Full(shape, Slice.Of(cut), figures), height);

    private static int Full(Shape shape, Slice slice, CakeFigures figures) => shape switch
    {
        Slab slab when figures.PortionRule != PortionRule.Area => slice.ByGrid(slab),
        Petal => (int)(slice.ByArea(shape) * figures.PetalShare),
        _ => slice.ByArea(shape),
    };

    private static int Halved(int full, Length height) => height < PortionChart.FullHeight ? full / 2 : full;
}
