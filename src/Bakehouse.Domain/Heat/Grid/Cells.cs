namespace Bakehouse.Domain.Heat.Grid;

/// <summary>
/// A body cut into cells, and the lines along which heat moves between them. Both kinds of grid, discs and blocks, end in this: the solver
/// knows lines only.
/// </summary>
/// <param name="Mass">kg of each cell.</param>
/// <param name="Volume">m³ of each cell.</param>
/// <param name="Material">Index of each cell's material.</param>
/// <param name="IsCoat">True for cells of a coat.</param>
/// <param name="Sweeps">One for each direction.</param>
/// <param name="Spots">Where temperatures are read, each as cells with weights that add up to 1.</param>
internal sealed record Cells(
    HeatMaterial[] Materials, double[] Mass, double[] Volume, int[] Material, bool[] IsCoat, IReadOnlyList<Sweep> Sweeps, Spots Spots)
{
    public int Count => Mass.Length;
}

/// <summary>Where a curve is read.</summary>
/// <param name="Probes">Points inside.</param>
/// <param name="Top">End of a line: the middle of the top.</param>
/// <param name="Side">The middle of the side.</param>
/// <param name="Base">The middle underneath.</param>
internal sealed record Spots(IReadOnlyList<Weighted> Probes, End Top, End Side, End Base);

/// <summary>A temperature as a sum over cells.</summary>
internal readonly record struct Weighted(int[] Cells, double[] Weights)
{
    public double Of(double[] values)
    {
        var sum = 0.0;
        for (var i = 0; i < Cells.Length; i++)
        {
            sum += Weights[i] * values[Cells[i]];
        }

        return sum;
    }
}

/// <summary>An end of a line of cells where heat leaves or comes.</summary>
/// <param name="Cell">The last cell.</param>
/// <param name="Area">m² of the face; 0 where nothing passes (an axis, a plane of symmetry).</param>
/// <param name="Half">m from the middle of that cell to the face.</param>
/// <param name="Along">m along the surface, for still air.</param>
/// <param name="IsFoot">True for the lowest face of the body.</param>
internal sealed record End(int Cell, Facing Facing, double Area, double Half, double Along, bool IsFoot);

/// <summary>A line of cells, one after the other.</summary>
/// <param name="Cells">Their indices.</param>
/// <param name="Before">For each link between neighbours: half of the first cell over the area of the face, 1/m.</param>
/// <param name="After">The same of the second cell.</param>
internal sealed record Line(int[] Cells, double[] Before, double[] After, End First, End Last);

/// <summary>All lines of one direction.</summary>
internal sealed record Sweep(IReadOnlyList<Line> Lines);
