namespace Bakehouse.Domain.Cakes.Packing;

/// <summary>
/// Middles put down one after the other from a corner, each touching two of what is there (walls, or others at one step), always
/// the foremost such spot, or always the one farthest from the first corner.
/// </summary>
internal static class CornerFill
{
    public static IEnumerable<IReadOnlyList<Spot>> Patterns(double wide, double deep, double step) =>
    [
        Fill(wide, deep, step, s => s.Y),
        Fill(wide, deep, step, s => -((s.X * s.X) + (s.Y * s.Y))),
    ];

    private static List<Spot> Fill(double wide, double deep, double step, Func<Spot, double> first)
    {
        List<Spot> placed = [new(0, 0)];
        Spot[] corners = [new(wide, 0), new(0, deep), new(wide, deep)];
        while (true)
        {
            var open = corners
                .Concat(placed.SelectMany(p => AlongWalls(p, wide, deep, step)))
                .Concat(placed.SelectMany((p, i) => placed.Take(i).SelectMany(q => BesideTwo(p, q, step))))
                .Where(s => s.X >= -Rounds.Hair && s.X <= wide + Rounds.Hair && s.Y >= -Rounds.Hair && s.Y <= deep + Rounds.Hair)
                .Where(s => placed.TrueForAll(p => p.To(s) >= step - Rounds.Hair))
                .ToList();
            if (open.Count == 0)
            {
                return placed;
            }

            // Rounded, so that spots which are equal but for the last digit are told apart the same way everywhere.
            placed.Add(open.OrderBy(s => Math.Round(first(s), 6)).ThenBy(s => Math.Round(s.X, 6)).ThenBy(s => Math.Round(s.Y, 6)).First());
        }
    }

    private static IEnumerable<Spot> AlongWalls(Spot p, double wide, double deep, double step)
    {
        foreach (var x in new[] { 0, wide })
        {
            if (Leg(step, x - p.X) is { } up)
            {
                yield return new Spot(x, p.Y + up);
                yield return new Spot(x, p.Y - up);
            }
        }

        foreach (var y in new[] { 0, deep })
        {
            if (Leg(step, y - p.Y) is { } along)
            {
                yield return new Spot(p.X + along, y);
                yield return new Spot(p.X - along, y);
            }
        }
    }

    private static IEnumerable<Spot> BesideTwo(Spot p, Spot q, double step)
    {
        var apart = p.To(q);
        if (Leg(step, apart / 2) is { } off)
        {
            var (x, y) = ((p.X + q.X) / 2, (p.Y + q.Y) / 2);
            var (dx, dy) = (off * (p.Y - q.Y) / apart, off * (q.X - p.X) / apart);
            yield return new Spot(x + dx, y + dy);
            yield return new Spot(x - dx, y - dy);
        }
    }

    // The other leg of a right triangle with that hypotenuse; null if the first is already longer.
    private static double? Leg(double hypotenuse, double leg)
    {
        var square = (hypotenuse * hypotenuse) - (leg * leg);
        return square >= -Rounds.Hair ? Math.Sqrt(Math.Max(0, square)) : null;
    }
}
