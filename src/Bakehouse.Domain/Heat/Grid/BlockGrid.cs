namespace Bakehouse.Domain.Heat.Grid;

/// <summary>A block as bricks: a quarter of it, since it is alike on both sides of two planes.</summary>
internal sealed class BlockGrid
{
    private readonly HeatBody body;
    private readonly double[] wide;
    private readonly double[] deep;
    private readonly double[] heights;
    private readonly int[] slabs;
    private readonly List<HeatMaterial> materials = [];

    private BlockGrid(HeatBody body, double cell, double level)
    {
        this.body = body;
        var (half, depth) = (body.Slabs.Max(s => s.HalfWidth), body.Slabs.Max(s => s.HalfDepth!.Value));
        var coats = body.Slabs.Where(s => s.Coat is not null).Select(s => s.CoatThickness).Distinct().ToList();
        wide = Cuts.Edges([half, .. coats.Select(c => half - c)], level);
        deep = Cuts.Edges([depth, .. coats.Select(c => depth - c)], level);
        (heights, slabs) = DiscGrid.Rows(body, cell);
        materials.AddRange(body.Slabs.SelectMany(s => s.Coat is null ? [s.Inside] : new[] { s.Inside, s.Coat }).Distinct());
    }

    /// <param name="cell">Most height of a cell, m.</param>
    /// <param name="level">Most width and depth of a cell, m.</param>
    /// <param name="probes">Points inside; those away from the axis lie along the width.</param>
    public static Cells Of(HeatBody body, double cell, double level, IReadOnlyList<HeatProbe> probes) =>
        new BlockGrid(body, cell, level).Cut(probes);

    private int Xs => wide.Length - 1;

    private int Ys => deep.Length - 1;

    private int At(int x, int y, int row) => (((row * Ys) + y) * Xs) + x;

    private Cells Cut(IReadOnlyList<HeatProbe> probes)
    {
        var all = from row in Enumerable.Range(0, slabs.Length) from y in Enumerable.Range(0, Ys) from x in Enumerable.Range(0, Xs) select (x, y, row);
        var made = all.Select(c => Made(c.x, c.y, c.row)).ToArray();
        // Four quarters: every volume and every area counts fourfold.
        var volume = all.Select(c => 4 * Size(wide, c.x) * Size(deep, c.y) * Size(heights, c.row)).ToArray();
        var across = Lines(Xs, Ys, slabs.Length, (i, y, row) => At(i, y, row), wide, (y, row) => 4 * Size(deep, y) * Size(heights, row), false);
        var back = Lines(Ys, Xs, slabs.Length, (i, x, row) => At(x, i, row), deep, (x, row) => 4 * Size(wide, x) * Size(heights, row), false);
        var up = Lines(slabs.Length, Xs, Ys, (i, x, y) => At(x, y, i), heights, (x, y) => 4 * Size(wide, x) * Size(deep, y), true);
        var side = across[Math.Clamp(slabs.Length / 2, 0, slabs.Length - 1)].Last;
        var spots = new Spots([.. probes.Select(Probe)], up[0].Last, side, up[0].First);
        return new Cells(
            [.. materials], [.. volume.Select((v, i) => v * made[i].Of.Density)], volume, [.. made.Select(m => materials.IndexOf(m.Of))],
            [.. made.Select(m => m.IsCoat)], [new Sweep(across), new Sweep(back), new Sweep(up)], spots);
    }

    private (HeatMaterial Of, bool IsCoat) Made(int x, int y, int row)
    {
        var slab = body.Slabs[slabs[row]];
        var coated = slab.Coat is not null && (Middle(wide, x) > slab.HalfWidth - slab.CoatThickness || Middle(deep, y) > slab.HalfDepth - slab.CoatThickness);
        return coated ? (slab.Coat!, true) : (slab.Inside, slab.Inside.IsCoat);
    }

    private List<Line> Lines(int length, int firsts, int seconds, Func<int, int, int, int> at, double[] edges, Func<int, int, double> area, bool isUp) =>
    [
        .. from second in Enumerable.Range(0, seconds)
           from first in Enumerable.Range(0, firsts)
           select Line([.. Enumerable.Range(0, length).Select(i => at(i, first, second))], edges, area(first, second), isUp),
    ];

    private Line Line(int[] cells, double[] edges, double area, bool isUp)
    {
        double Half(int i) => Size(edges, i) / 2;
        var (half, depth) = (wide[^1], deep[^1]);
        var along = isUp ? half * depth / (half + depth) : body.Height;
        return new Line(
            cells,
            [.. Enumerable.Range(0, cells.Length - 1).Select(i => Half(i) / area)],
            [.. Enumerable.Range(0, cells.Length - 1).Select(i => Half(i + 1) / area)],
            new End(cells[0], isUp ? Facing.Down : Facing.Side, isUp ? area : 0, isUp ? Half(0) : 0, along, isUp),
            new End(cells[^1], isUp ? Facing.Up : Facing.Side, area, Half(cells.Length - 1), along, false));
    }

    private Weighted Probe(HeatProbe probe)
    {
        var row = Math.Clamp(Array.FindLastIndex(heights, h => h <= probe.Height), 0, slabs.Length - 1);
        var (low, high, share) = Cuts.Between(heights, probe.Height, r => Made(0, 0, r).Of.ConductivityAt(20));
        var (inner, outer, outwards) = Cuts.Between(wide, probe.FromAxis, x => Made(x, 0, row).Of.ConductivityAt(20));
        // In the middle the next cell gives a parabola with no slope: 9/8 and -1/8.
        var (x, dx) = probe.FromAxis < Middle(wide, 0) && Xs > 1 ? (1, -0.125) : (outer, outwards);
        List<(int Cell, double Weight)> parts = [];
        foreach (var (r, weight) in new[] { (low, 1 - share), (high, share) })
        {
            var y = Ys > 1 ? -0.125 : 0;
            parts.Add((At(inner, 0, r), weight * (1 - dx - y)));
            parts.Add((At(x, 0, r), weight * dx));
            parts.Add((At(inner, Math.Min(1, Ys - 1), r), weight * y));
        }

        return new Weighted([.. parts.Select(p => p.Cell)], [.. parts.Select(p => p.Weight)]);
    }

    private static double Size(double[] edges, int i) => edges[i + 1] - edges[i];

    private static double Middle(double[] edges, int i) => (edges[i] + edges[i + 1]) / 2;
}
