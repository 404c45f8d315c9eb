namespace Bakehouse.Domain.Heat.Grid;

/// <summary>
/// The heat of every cell, moved on in time. A step goes through each direction by itself, and in each all cells of a line at once,
/// implicitly: no step is too long to be stable, no cell gets warmer than the warmest or colder than the coldest around, and what leaves one
/// cell arrives in the next, so heat is kept to rounding. The error falls with the step and with the square of the cell.
/// </summary>
internal sealed class Field
{
    private readonly Cells cells;
    private readonly CellHeat heat;
    private readonly LineSolver solver;
    private readonly double[] conductivity;
    private readonly double[][][] links;
    private readonly double[][] firsts;
    private readonly double[][] lasts;
    private readonly bool varies;
    private bool turn;

    public Field(Cells cells, HeatStart start)
    {
        this.cells = cells;
        Celsius = [.. cells.IsCoat.Select(c => c ? start.Coat : start.Inside)];
        heat = new CellHeat(cells, Celsius);
        solver = new LineSolver(heat, Celsius, cells.Sweeps.Max(s => s.Lines.Max(l => l.Cells.Length)));
        conductivity = [.. cells.Material.Select((m, i) => cells.Materials[m].ConductivityAt(Celsius[i]))];
        varies = cells.Materials.Any(m => m.Points.Any(p => p.Conductivity != m.Points[0].Conductivity));
        links = [.. cells.Sweeps.Select(s => s.Lines.Select(l => new double[l.Before.Length]).ToArray())];
        firsts = [.. cells.Sweeps.Select(s => s.Lines.Select(l => Celsius[l.First.Cell]).ToArray())];
        lasts = [.. cells.Sweeps.Select(s => s.Lines.Select(l => Celsius[l.Last.Cell]).ToArray())];
        Join();
    }

    /// <summary>°C of every cell.</summary>
    public double[] Celsius { get; }

    /// <summary>Heat that came in since the beginning, J; below zero if it went out.</summary>
    public double CameIn { get; private set; }

    /// <summary>Heat in it, J, from the materials' own zero.</summary>
    public double Heat => heat.Sum;

    /// <summary>Moves on by so many seconds.</summary>
    public void Step(double seconds, Surroundings around, double air)
    {
        if (varies)
        {
            Conduct();
            Join();
        }

        // Every other step in the other order: what the order favours evens out.
        turn = !turn;
        for (var n = 0; n < cells.Sweeps.Count; n++)
        {
            Sweep(turn ? n : cells.Sweeps.Count - 1 - n, seconds, around, air);
        }
    }

    /// <summary>°C of the surface at an end of a line.</summary>
    public double Surface(End end, Surroundings around, double air)
    {
        var surface = Celsius[end.Cell];
        if (end.Area == 0 || (end.IsFoot && around.IsBaseShut))
        {
            return surface;
        }

        for (var again = 0; again < 3; again++)
        {
            surface = Between(end, around.Coefficient(end.Facing, surface, air, end.Along), air);
        }

        return surface;
    }

    private void Sweep(int direction, double seconds, Surroundings around, double air)
    {
        var lines = cells.Sweeps[direction].Lines;
        for (var i = 0; i < lines.Count; i++)
        {
            var line = lines[i];
            var outerFirst = Outer(line.First, firsts[direction][i], around, air);
            var outerLast = Outer(line.Last, lasts[direction][i], around, air);
            CameIn += solver.Solve(line, links[direction][i], seconds, Through(line.First, outerFirst), Through(line.Last, outerLast), air);
            firsts[direction][i] = outerFirst == 0 ? Celsius[line.First.Cell] : Between(line.First, outerFirst, air);
            lasts[direction][i] = outerLast == 0 ? Celsius[line.Last.Cell] : Between(line.Last, outerLast, air);
        }
    }

    /// <summary>W/(m²K) outside an end, by the surface as it was a step ago.</summary>
    private static double Outer(End end, double surface, Surroundings around, double air) =>
        end.Area == 0 || (end.IsFoot && around.IsBaseShut) ? 0 : around.Coefficient(end.Facing, surface, air, end.Along);

    private double Through(End end, double outer) => outer == 0 ? 0 : end.Area / ((1 / outer) + (end.Half / conductivity[end.Cell]));

    private double Between(End end, double outer, double air)
    {
        var inner = conductivity[end.Cell] / end.Half;
        return ((inner * Celsius[end.Cell]) + (outer * air)) / (inner + outer);
    }

    private void Conduct()
    {
        for (var i = 0; i < conductivity.Length; i++)
        {
            conductivity[i] = cells.Materials[cells.Material[i]].ConductivityAt(Celsius[i]);
        }
    }

    private void Join()
    {
        for (var d = 0; d < links.Length; d++)
        {
            for (var l = 0; l < links[d].Length; l++)
            {
                var line = cells.Sweeps[d].Lines[l];
                for (var i = 0; i < line.Before.Length; i++)
                {
                    links[d][l][i] = 1 / ((line.Before[i] / conductivity[line.Cells[i]]) + (line.After[i] / conductivity[line.Cells[i + 1]]));
                }
            }
        }
    }
}
