namespace Bakehouse.Domain.Cakes.Packing;

/// <summary>Middles in rows, at least a step apart: straight, or each second row moved by half a pitch.</summary>
internal static class Rows
{
    public static IEnumerable<IReadOnlyList<Spot>> Patterns(double wide, double deep, double step)
    {
        var most = Fit(wide, step);
        yield return Straight(most, Fit(deep, step), step);
        for (var inRow = 1; inRow <= most; inRow++)
        {
            // Second rows as long as the first, moved by half a pitch: the whole width is inRow - 1/2 pitches.
            yield return Staggered(inRow, inRow, wide / (inRow - 0.5), deep, step);
            if (inRow > 1)
            {
                // Second rows in the gaps of the first, one shorter.
                yield return Staggered(inRow, inRow - 1, wide / (inRow - 1), deep, step);
            }
        }
    }

    private static int Fit(double length, double step) => (int)((length + Rounds.Hair) / step) + 1;

    private static IReadOnlyList<Spot> Straight(int columns, int rows, double step) =>
        [.. from row in Enumerable.Range(0, rows) from column in Enumerable.Range(0, columns) select new Spot(column * step, row * step)];

    private static IReadOnlyList<Spot> Staggered(int first, int second, double pitch, double deep, double step)
    {
        if (first > 1 && pitch < step - Rounds.Hair)
        {
            return [];
        }

        // Rows lie so that neighbours are a step apart; each second row stands over the first, so two rows are a step, too.
        var rise = Math.Max(Math.Sqrt(Math.Max(0, (step * step) - (pitch * pitch / 4))), step / 2);
        return
        [
            .. from row in Enumerable.Range(0, Fit(deep, rise))
               let moved = row % 2 == 1
               from column in Enumerable.Range(0, moved ? second : first)
               select new Spot((column * pitch) + (moved ? pitch / 2 : 0), row * rise),
        ];
    }
}
