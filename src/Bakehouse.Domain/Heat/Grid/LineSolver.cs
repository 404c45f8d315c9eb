namespace Bakehouse.Domain.Heat.Grid;

/// <summary>
/// One line of cells over one step, implicitly: three diagonals, solved forwards and back. Where a cell leaves its piece of enthalpy, the
/// line is solved again with the new piece.
/// </summary>
internal sealed class LineSolver(CellHeat heat, double[] celsius, int longest)
{
    // So often pieces change freely, then one at a time; a line that finds no rest by then keeps the heat that the last solution moved.
    private const int FreeTries = 8, MostTries = 60;
    private readonly double[] inverse = new double[longest];
    private readonly double[] right = new double[longest];
    private readonly double[] after = new double[longest];

    /// <summary>Moves the line on; gives the heat that came in through both ends, J.</summary>
    /// <param name="link">W/K between neighbours.</param>
    /// <param name="first">W/K through the first end.</param>
    /// <param name="last">W/K through the last end.</param>
    public double Solve(Line line, double[] link, double seconds, double first, double last, double air)
    {
        var own = line.Cells;
        (first, last) = (first * seconds, last * seconds);
        var settled = false;
        for (var tries = 1; !settled; tries++)
        {
            Forwards(own, link, seconds, first, last, air);
            settled = Keep(own, Back(own), tries);
        }

        return (first * (air - right[0])) + (last * (air - right[own.Length - 1]));
    }

    private void Forwards(int[] own, double[] link, double seconds, double first, double last, double air)
    {
        var (capacity, joules, rest) = (heat.Capacity, heat.Joules, heat.Rest);
        var (before, carried, factor) = (first, first * air, 0.0);
        for (var i = 0; i < own.Length; i++)
        {
            var next = i < link.Length ? seconds * link[i] : last;
            var cell = own[i];
            var inverted = 1 / (capacity[cell] + before + next - factor);
            var known = joules[cell] - rest[cell] + carried + (i < link.Length ? 0 : last * air);
            (inverse[i], right[i], after[i]) = (inverted, known, next);
            factor = next * next * inverted;
            carried = next * inverted * known;
            before = next;
        }
    }

    /// <summary>Leaves the temperatures in the right side. True if each lies in the piece of its cell.</summary>
    private bool Back(int[] own)
    {
        var (least, most) = (heat.Least, heat.Most);
        var (further, fits) = (0.0, true);
        for (var i = own.Length - 1; i >= 0; i--)
        {
            // What is after the last cell is the air, and counted already.
            further = (right[i] + (i < own.Length - 1 ? after[i] * further : 0)) * inverse[i];
            right[i] = further;
            fits &= further <= most[own[i]] && further >= least[own[i]];
        }

        return fits;
    }

    /// <summary>Takes the temperatures if each lies in its piece; else changes pieces, and false.</summary>
    private bool Keep(int[] own, bool fits, int tries)
    {
        var (capacity, joules, rest) = (heat.Capacity, heat.Joules, heat.Rest);
        if (!fits && tries < MostTries)
        {
            for (var i = 0; i < own.Length; i++)
            {
                heat.Turn(own[i], right[i], tries > FreeTries);
            }

            return false;
        }

        for (var i = 0; i < own.Length; i++)
        {
            var cell = own[i];
            joules[cell] = (capacity[cell] * right[i]) + rest[cell];
            celsius[cell] = fits ? right[i] : heat.CelsiusOf(cell);
        }

        return true;
    }
}
