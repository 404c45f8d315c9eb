namespace Bakehouse.Domain.Heat.Grid;

/// <summary>A round body as rings: rows of one height, columns of one radius. A stack with a step has shorter rows above.</summary>
internal sealed class DiscGrid
{
    private readonly HeatBody body;
    private readonly double[] radii;
    private readonly double[] heights;
    private readonly int[] slabs;
    private readonly Dictionary<(int Row, int Ring), int> index = [];
    private readonly List<HeatMaterial> materials = [];
    private readonly List<int> material = [];
    private readonly List<double> volume = [];
    private readonly List<bool> isCoat = [];

    private DiscGrid(HeatBody body, double cell, double level)
    {
        this.body = body;
        radii = Cuts.Edges(body.Slabs.SelectMany(s => s.Coat is null ? [s.HalfWidth] : new[] { s.HalfWidth - s.CoatThickness, s.HalfWidth }), level);
        (heights, slabs) = Rows(body, cell);
        for (var row = 0; row < slabs.Length; row++)
        {
            for (var ring = 0; ring < radii.Length - 1 && radii[ring + 1] <= Of(row).HalfWidth + 1e-4; ring++)
            {
                Add(row, ring);
            }
        }
    }

    /// <param name="cell">Most height of a cell, m.</param>
    /// <param name="level">Most width of a ring, m.</param>
    /// <param name="probes">Points inside: m from the axis and m from below.</param>
    public static Cells Of(HeatBody body, double cell, double level, IReadOnlyList<HeatProbe> probes) => new DiscGrid(body, cell, level).Cut(probes);

    /// <summary>Edges of the rows, and the slab of each row.</summary>
    internal static (double[] Edges, int[] Slabs) Rows(HeatBody body, double cell)
    {
        List<double> edges = [0];
        List<int> of = [];
        for (var i = 0; i < body.Slabs.Count; i++)
        {
            var own = Cuts.Edges([body.Slabs[i].Thickness], cell);
            var from = edges[^1];
            edges.AddRange(own.Skip(1).Select(e => from + e));
            of.AddRange(Enumerable.Repeat(i, own.Length - 1));
        }

        return ([.. edges], [.. of]);
    }

    private HeatSlab Of(int row) => body.Slabs[slabs[row]];

    private void Add(int row, int ring)
    {
        var slab = Of(row);
        var coated = slab.Coat is not null && (radii[ring] + radii[ring + 1]) / 2 > slab.HalfWidth - slab.CoatThickness;
        index[(row, ring)] = material.Count;
        material.Add(Number(coated ? slab.Coat! : slab.Inside));
        isCoat.Add(coated || slab.Inside.IsCoat);
        volume.Add(Disc(ring) * (heights[row + 1] - heights[row]));
    }

    private int Number(HeatMaterial made)
    {
        if (materials.IndexOf(made) is var at and >= 0)
        {
            return at;
        }

        materials.Add(made);
        return materials.Count - 1;
    }

    private double Disc(int ring) => Math.PI * ((radii[ring + 1] * radii[ring + 1]) - (radii[ring] * radii[ring]));

    private Cells Cut(IReadOnlyList<HeatProbe> probes)
    {
        var rows = Enumerable.Range(0, slabs.Length).Select(Outwards).ToList();
        var columns = Enumerable.Range(0, radii.Length - 1).SelectMany(Upwards).ToList();
        var mass = volume.Select((v, i) => v * materials[material[i]].Density).ToArray();
        var side = Math.Clamp(Array.FindLastIndex(heights, h => h <= body.Height / 2), 0, slabs.Length - 1);
        var spots = new Spots([.. probes.Select(Probe)], columns[0].Last, rows[side].Last, columns[0].First);
        return new Cells([.. materials], mass, [.. volume], [.. material], [.. isCoat], [new Sweep(rows), new Sweep(columns)], spots);
    }

    private Line Outwards(int row)
    {
        var high = heights[row + 1] - heights[row];
        var rings = Enumerable.Range(0, radii.Length - 1).Count(r => index.ContainsKey((row, r)));
        int[] cells = [.. Enumerable.Range(0, rings).Select(r => index[(row, r)])];
        double Half(int ring) => (radii[ring + 1] - radii[ring]) / 2;
        double Face(int edge) => 2 * Math.PI * radii[edge] * high;
        return new Line(
            cells,
            [.. Enumerable.Range(0, rings - 1).Select(r => Half(r) / Face(r + 1))],
            [.. Enumerable.Range(0, rings - 1).Select(r => Half(r + 1) / Face(r + 1))],
            new End(cells[0], Facing.Side, 0, 0, 1, false),
            new End(cells[^1], Facing.Side, Face(rings), Half(rings - 1), body.Height, false));
    }

    private IEnumerable<Line> Upwards(int ring)
    {
        double Half(int row) => (heights[row + 1] - heights[row]) / 2;
        foreach (var (from, to) in Cuts.Runs(slabs.Length, row => index.ContainsKey((row, ring))))
        {
            int[] cells = [.. Enumerable.Range(from, to - from + 1).Select(row => index[(row, ring)])];
            yield return new Line(
                cells,
                [.. Enumerable.Range(from, to - from).Select(row => Half(row) / Disc(ring))],
                [.. Enumerable.Range(from, to - from).Select(row => Half(row + 1) / Disc(ring))],
                new End(cells[0], Facing.Down, Disc(ring), Half(from), Of(from).HalfWidth / 2, from == 0),
                new End(cells[^1], Facing.Up, Disc(ring), Half(to), Of(to).HalfWidth / 2, false));
        }
    }

    private Weighted Probe(HeatProbe probe)
    {
        var row = RowAt(probe.Height);
        var (inner, outer, share) = Cuts.Between(radii, probe.FromAxis, r => index.TryGetValue((row, r), out var i) ? Conductivity(i) : 1);
        var nearest = Column(inner, probe.Height);
        if (outer != inner && index.ContainsKey((row, outer)))
        {
            return Sum((nearest, 1 - share), (Column(outer, probe.Height), share));
        }

        return inner > 0 || !index.ContainsKey((row, 1)) ? nearest : OnAxis(nearest, probe);
    }

    /// <summary>On the axis the two inner rings give a parabola with no slope at the middle.</summary>
    private Weighted OnAxis(Weighted nearest, HeatProbe probe)
    {
        var (a, b) = ((radii[0] + radii[1]) / 2, (radii[1] + radii[2]) / 2);
        var ofNext = ((probe.FromAxis * probe.FromAxis) - (a * a)) / ((b * b) - (a * a));
        return Sum((nearest, 1 - ofNext), (Column(1, probe.Height), ofNext));
    }

    private int RowAt(double height) => Math.Clamp(Array.FindLastIndex(heights, h => h <= height), 0, slabs.Length - 1);

    private Weighted Column(int ring, double height)
    {
        var (low, high, share) = Cuts.Between(heights, height, row => index.TryGetValue((row, ring), out var i) ? Conductivity(i) : 1);
        return index.TryGetValue((low, ring), out var below) && index.TryGetValue((high, ring), out var above)
            ? new Weighted([below, above], [1 - share, share])
            : new Weighted([index[(RowAt(height), ring)]], [1]);
    }

    private double Conductivity(int cell) => materials[material[cell]].ConductivityAt(20);

    private static Weighted Sum(params (Weighted Of, double Times)[] parts) =>
        new([.. parts.SelectMany(p => p.Of.Cells)], [.. parts.SelectMany(p => p.Of.Weights.Select(w => w * p.Times))]);
}
