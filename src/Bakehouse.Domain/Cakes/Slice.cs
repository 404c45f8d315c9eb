namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;

/// <summary>
/// One slice seen from above, and how many of them a round tier gives. Charts for rounds are no grid counts: they lie near
/// the count by area; whole cells are fewer, since the rim is lost.
/// </summary>
/// <param name="Width">Along the rim, more than zero.</param>
/// <param name="Depth">From the rim inwards; also the width of a ring.</param>
public sealed record Slice(Length Width, Length Depth)
{
    /// <summary>The slice of a cut: dessert 1.5 × 2 in, with coffee 1 × 2 in (common practice, no source).</summary>
    public static Slice Of(Cut cut) => cut switch
    {
        Cut.Dessert => new(Length.FromInches(1.5m), Length.FromInches(2)),
        Cut.Coffee => new(Length.FromInches(1), Length.FromInches(2)),
        _ => throw new ArgumentOutOfRangeException(nameof(cut), cut, "Unknown cut."),
    };

    private double Across => (double)Width.Millimetres;

    private double Inwards => (double)Depth.Millimetres;

    private double Ground => Across * Inwards;

    /// <summary>The area of the tier by the area of a slice, rounded down.</summary>
    public int ByArea(Shape shape) => (int)((shape.Area.SquareMillimetres / Ground) + Hair);

    /// <summary>
    /// Rings of one slice's depth cut from the rim inwards, each sliced by the arc at its middle; a core of two depths
    /// across or less counts by area.
    /// </summary>
    public int ByRings(Length diameter)
    {
        var slices = 0;
        var across = (double)diameter.Millimetres;
        for (; across > 2 * Inwards; across -= 2 * Inwards)
        {
            slices += (int)((Math.PI * (across - Inwards) / Across) + Hair);
        }

        return slices + (int)((Math.PI * across * across / 4 / Ground) + Hair);
    }

    /// <summary>Whole cells of a straight grid on a rectangle, the better way round; charts of squares print exactly this.</summary>
    public int ByGrid(Slab slab)
    {
        var (wide, deep) = ((double)slab.Width.Millimetres, (double)slab.Depth.Millimetres);
        return Math.Max(Cells(wide, Across) * Cells(deep, Inwards), Cells(wide, Inwards) * Cells(deep, Across));
    }

    /// <summary>
    /// Straight cuts right across a round, one slice's width apart, each strip then cut to the slice's depth along its middle; what is left at
    /// the ends of a strip is no slice. The better of a cut or a strip through the middle.
    /// </summary>
    public int ByStrips(Length diameter) => Phases.Max(phase => Strips((double)diameter.Millimetres / 2, phase));

    /// <summary>Wedges of a round: the rim by the arc that one takes there, rounded down.</summary>
    /// <param name="arc">Along the rim, more than zero.</param>
    public static int Wedges(Length diameter, Length arc)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(arc, default);
        return (int)((Math.PI * (double)(diameter.Millimetres / arc.Millimetres)) + Hair);
    }

    /// <summary>
    /// Whole cells of a straight grid inside the circle: the best of four grids, with a line or a cell over the centre in each
    /// direction.
    /// </summary>
    public int ByWholeCells(Length diameter) =>
        (from x in Phases from y in Phases select CellsInside((double)diameter.Millimetres / 2, x, y)).Max();

    // Counts sit on whole numbers for whole inches; a rounding error must not lose a slice.
    private const double Hair = 1e-9;

    private static double[] Phases => [0, 0.5];

    private static int Cells(double length, double cell) => (int)((length / cell) + Hair);

    // Strips by the middle of each; a strip whose middle lies outside is rim.
    private int Strips(double radius, double phase) => Enumerable.Range(-(int)(radius / Across) - 1, (2 * (int)(radius / Across)) + 3)
        .Select(i => (i + 0.5 + phase) * Across)
        .Where(middle => Math.Abs(middle) < radius)
        .Sum(middle => Cells(2 * Math.Sqrt((radius * radius) - (middle * middle)), Inwards));

    private int CellsInside(double radius, double phaseX, double phaseY)
    {
        var (columns, rows) = ((int)(radius / Across) + 1, (int)(radius / Inwards) + 1);
        return (from i in Enumerable.Range(-columns - 1, (2 * columns) + 2)
                from j in Enumerable.Range(-rows - 1, (2 * rows) + 2)
                let x = Farther(i + phaseX) * Across
                let y = Farther(j + phaseY) * Inwards
                where (x * x) + (y * y) <= (radius * radius) + Hair
                select 1).Sum();
    }

    // The farther edge of a cell from the centre line, in cells.
    private static double Farther(double start) => Math.Max(Math.Abs(start), Math.Abs(start + 1));
}
