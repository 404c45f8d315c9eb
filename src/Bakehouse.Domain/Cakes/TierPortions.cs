namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;

/// <summary>Portions of a tier of any outline.</summary>
public static class TierPortions
{
    /// <summary>
    /// Portions by the rule of the figures. Rounds go by it. Rectangles go by their grid under every rule but the area, as their charts do.
    /// Petals give a share of what their area would (<see cref="CakeFigures.PetalShare"/>), every other outline its area; petals and hexagons
    /// what charts print, where the figures go by charts. A low tier gives half, rounded down (<see cref="PortionChart.FullHeight"/>).
    /// </summary>
    public static int Count(Shape shape, Length height, Cut cut, CakeFigures figures) => shape is Round round
        ? PortionChart.Count(round.Diameter, height, cut, figures)
        : Count(shape, height, figures.OwnSlice(cut) ?? Slice.Of(cut), figures);

    /// <summary>The same for any size of slice (<see cref="SliceHabit"/>); a round's chart prints two, so others count by area there.</summary>
    public static int Count(Shape shape, Length height, Slice slice, CakeFigures figures) => shape is Round round
        ? PortionChart.Count(round.Diameter, height, slice, figures)
        : PortionChart.Halved(Full(shape, slice, figures), height);

    private static int Full(Shape shape, Slice slice, CakeFigures figures)
    {
        if (shape is Slab slab && figures.PortionRule != PortionRule.Area)
        {
            return slice.ByGrid(slab);
        }

        var byArea = shape is Petal ? (int)(slice.ByArea(shape) * figures.PetalShare) : slice.ByArea(shape);
        return figures.PortionRule == PortionRule.Chart ? OutlineChart.Of(shape, slice, byArea) ?? byArea : byArea;
    }
}
