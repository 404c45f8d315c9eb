namespace Bakehouse.Domain.Heat.Grid;

/// <summary>
/// The heat in each cell as a function of its temperature: straight pieces, of which each cell is in one at a time.
/// Within its piece a cell holds capacity · °C + rest.
/// </summary>
internal sealed class CellHeat
{
    // Where two pieces meet, either will do: rounding must not send a cell to and fro.
    private const double Slip = 1e-9;
    private readonly double[] mass;
    private readonly double[] slope;
    private readonly double[] offset;
    private readonly double[] low;
    private readonly double[] high;
    private readonly int[] piece;

    public CellHeat(Cells cells, double[] celsius)
    {
        var all = cells.Materials.SelectMany((m, i) => Enumerable.Range(0, m.Points.Count - 1).Select(p => (Of: i, Material: m, Piece: p))).ToList();
        mass = cells.Mass;
        slope = [.. all.Select(p => p.Material.SlopeOf(p.Piece))];
        offset = [.. all.Select(p => p.Material.Points[p.Piece].Enthalpy - (p.Material.SlopeOf(p.Piece) * p.Material.Points[p.Piece].Celsius))];
        low = [.. all.Select(p => p.Piece == 0 ? double.NegativeInfinity : p.Material.Points[p.Piece].Celsius)];
        high = [.. all.Select(p => p.Piece == p.Material.Points.Count - 2 ? double.PositiveInfinity : p.Material.Points[p.Piece + 1].Celsius)];
        var first = cells.Materials.Select((_, i) => all.FindIndex(p => p.Of == i)).ToArray();
        piece = [.. cells.Material.Select((m, i) => PieceOf(first[m], celsius[i]))];
        (Capacity, Rest, Least, Most) = (new double[piece.Length], new double[piece.Length], new double[piece.Length], new double[piece.Length]);
        for (var i = 0; i < piece.Length; i++)
        {
            Set(i, piece[i]);
        }

        Joules = [.. Capacity.Select((c, i) => (c * celsius[i]) + Rest[i])];
    }

    /// <summary>J/K of each cell in its piece.</summary>
    public double[] Capacity { get; }

    /// <summary>J of each cell at 0 °C, if its piece went on so far.</summary>
    public double[] Rest { get; }

    /// <summary>J in each cell.</summary>
    public double[] Joules { get; }

    /// <summary>J in all.</summary>
    public double Sum => Joules.Sum();

    /// <summary>°C at which each cell leaves its piece downwards.</summary>
    public double[] Least { get; }

    /// <summary>°C at which each cell leaves its piece upwards.</summary>
    public double[] Most { get; }

    /// <summary>Changes the piece of a cell towards a temperature: all the way, or one piece only.</summary>
    public void Turn(int cell, double celsius, bool oneOnly)
    {
        var p = piece[cell];
        if (celsius > Most[cell] || celsius < Least[cell])
        {
            Set(cell, oneOnly ? p + (celsius > Most[cell] ? 1 : -1) : PieceOf(p, celsius));
        }
    }

    /// <summary>The temperature that belongs to the heat in a cell.</summary>
    public double CelsiusOf(int cell)
    {
        var celsius = (Joules[cell] - Rest[cell]) / Capacity[cell];
        for (var tries = 0; tries < slope.Length && (celsius > Most[cell] || celsius < Least[cell]); tries++)
        {
            Turn(cell, celsius, oneOnly: true);
            celsius = (Joules[cell] - Rest[cell]) / Capacity[cell];
        }

        return celsius;
    }

    private void Set(int cell, int to)
    {
        piece[cell] = to;
        (Capacity[cell], Rest[cell]) = (mass[cell] * slope[to], mass[cell] * offset[to]);
        (Least[cell], Most[cell]) = (low[to] - Slip, high[to] + Slip);
    }

    private int PieceOf(int from, double celsius)
    {
        while (celsius > high[from])
        {
            from++;
        }

        while (celsius < low[from])
        {
            from--;
        }

        return from;
    }
}
