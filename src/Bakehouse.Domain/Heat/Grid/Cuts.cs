namespace Bakehouse.Domain.Heat.Grid;

/// <summary>Where a length is cut into cells: at given marks, and evenly between them.</summary>
internal static class Cuts
{
    /// <summary>Edges from 0 up. No cell is longer than asked; each stretch between marks has one cell at least.</summary>
    /// <param name="marks">m, any order; those closer together than a tenth of a millimetre count once.</param>
    /// <param name="cell">Longest cell, m.</param>
    public static double[] Edges(IEnumerable<double> marks, double cell)
    {
        List<double> edges = [0];
        foreach (var mark in marks.Order().Where(m => m > 0))
        {
            if (mark - edges[^1] < 1e-4)
            {
                continue;
            }

            var from = edges[^1];
            var parts = Math.Max(1, (int)Math.Ceiling(((mark - from) / cell) - 1e-9));
            edges.AddRange(Enumerable.Range(1, parts).Select(i => i == parts ? mark : from + ((mark - from) * i / parts)));
        }

        return [.. edges];
    }

    /// <summary>The middles of cells.</summary>
    public static double[] Middles(double[] edges) => [.. Enumerable.Range(0, edges.Length - 1).Select(i => (edges[i] + edges[i + 1]) / 2)];

    /// <summary>Stretches of rows that belong together: first and last index of each.</summary>
    public static IEnumerable<(int From, int To)> Runs(int count, Func<int, bool> isIn)
    {
        for (var i = 0; i < count; i++)
        {
            if (!isIn(i))
            {
                continue;
            }

            var from = i;
            while (i + 1 < count && isIn(i + 1))
            {
                i++;
            }

            yield return (from, i);
        }
    }

    /// <summary>
    /// The height of a point between two middles: shares of both cells, by the resistance on the way, so that a joint of two materials is met.
    /// </summary>
    public static (int Low, int High, double ShareOfHigh) Between(double[] edges, double at, Func<int, double> conductivity)
    {
        var middles = Middles(edges);
        var low = Math.Clamp(Array.FindLastIndex(middles, m => m <= at), 0, middles.Length - 1);
        if (low == middles.Length - 1 || at <= middles[0])
        {
            return (low, low, 0);
        }

        var joint = edges[low + 1];
        double To(double z) => ((Math.Min(z, joint) - middles[low]) / conductivity(low)) + (Math.Max(0, z - joint) / conductivity(low + 1));
        return (low, low + 1, To(at) / To(middles[low + 1]));
    }
}
