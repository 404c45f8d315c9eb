namespace Bakehouse.Domain.Cakes.Packing;

/// <summary>
/// Pieces of different sizes put down one after the other, each where it touches two of what is there (walls or pieces), with going back where
/// the next finds no spot; so many looks for each order, so that it ends.
/// </summary>
internal sealed class Nesting
{
    private const int MostLooks = 150;

    private static readonly Func<Floor, Spot, double>[] Firsts =
    [
        (_, s) => s.Y,
        (f, s) => -(Math.Abs(s.X - (f.Wide / 2)) + Math.Abs(s.Y - (f.Deep / 2))),
        (_, s) => s.X,
        (_, s) => -((s.X * s.X) + (s.Y * s.Y)),
    ];

    private readonly Floor floor;
    private readonly Piece[] pieces;
    private readonly Func<Floor, Spot, double> wish;
    private readonly Laid[] laid;
    private int looks = MostLooks;

    private Nesting(Floor floor, Piece[] pieces, Func<Floor, Spot, double> wish)
    {
        (this.floor, this.pieces, this.wish) = (floor, pieces, wish);
        laid = new Laid[pieces.Length];
    }

    /// <summary>A way in which they stand, in their order, or null.</summary>
    public static Laid[]? Find(Floor floor, Piece[] pieces)
    {
        Piece[] backwards = [.. pieces.Reverse()];
        foreach (var one in Firsts)
        {
            if (new Nesting(floor, pieces, one).Found() is { } found)
            {
                return found;
            }

            if (new Nesting(floor, backwards, one).Found() is { } other)
            {
                return [.. other.Reverse()];
            }
        }

        return null;
    }

    private Laid[]? Found() => Put(0) ? laid : null;

    private bool Put(int next)
    {
        if (next == pieces.Length)
        {
            return true;
        }

        if (looks-- <= 0)
        {
            return false;
        }

        // Rounded, so that spots which are equal but for the last digit are told apart the same way everywhere.
        var open = Spots(next).ToLookup(l => (First: Math.Round(wish(floor, l.At), 6), X: Math.Round(l.At.X, 6), Y: Math.Round(l.At.Y, 6), l.Piece.Wide));
        foreach (var spot in open.OrderBy(l => l.Key))
        {
            laid[next] = spot.First();
            if (Put(next + 1))
            {
                return true;
            }

            if (looks <= 0)
            {
                return false;
            }
        }

        return false;
    }

    private List<Laid> Spots(int next)
    {
        var piece = pieces[next];
        var open = new List<Laid>();
        // Mirrored, the first can always be in the first corner.
        Look(piece, next, open);
        if (!piece.IsRound && piece.Wide != piece.Deep)
        {
            Look(piece.Turned, next, open);
        }

        return next > 0 ? open : open.FindAll(l => l.At.X <= (l.Piece.Wide / 2) + Rounds.Hair && l.At.Y <= (l.Piece.Deep / 2) + Rounds.Hair);
    }

    private void Look(Piece piece, int next, List<Laid> open)
    {
        var (across, along) = (Lines(next, piece.IsRound, piece.Wide, floor.Wide, l => (l.At.X, l.Piece.Wide)), Lines(next, piece.IsRound, piece.Deep, floor.Deep, l => (l.At.Y, l.Piece.Deep)));
        foreach (var x in across)
        {
            foreach (var y in along)
            {
                Add(piece, next, new Spot(x, y), open);
            }
        }

        for (var i = 0; i < next && piece.IsRound; i++)
        {
            if (laid[i].Piece.IsRound)
            {
                BesideRound(piece, next, i, across, along, open);
            }
        }
    }

    /// <summary>Touching a round one and a line, or that and another round one.</summary>
    private void BesideRound(Piece piece, int next, int i, List<double> across, List<double> along, List<Laid> open)
    {
        var (at, step) = (laid[i].At, (laid[i].Piece.Wide + piece.Wide) / 2);
        foreach (var x in across)
        {
            if (Leg(step, x - at.X) is { } up)
            {
                Add(piece, next, new Spot(x, at.Y + up), open);
                Add(piece, next, new Spot(x, at.Y - up), open);
            }
        }

        foreach (var y in along)
        {
            if (Leg(step, y - at.Y) is { } off)
            {
                Add(piece, next, new Spot(at.X + off, y), open);
                Add(piece, next, new Spot(at.X - off, y), open);
            }
        }

        for (var j = 0; j < i; j++)
        {
            if (laid[j].Piece.IsRound)
            {
                BesideTwo(piece, next, (at, step), (laid[j].At, (laid[j].Piece.Wide + piece.Wide) / 2), open);
            }
        }
    }

    /// <summary>The two points that are so far from one and so far from the other.</summary>
    private void BesideTwo(Piece piece, int next, (Spot At, double Step) a, (Spot At, double Step) b, List<Laid> open)
    {
        var apart = a.At.To(b.At);
        var along = ((apart * apart) + (a.Step * a.Step) - (b.Step * b.Step)) / (2 * apart);
        if (Leg(a.Step, along) is { } off)
        {
            var (dx, dy) = ((b.At.X - a.At.X) / apart, (b.At.Y - a.At.Y) / apart);
            var (x, y) = (a.At.X + (along * dx), a.At.Y + (along * dy));
            Add(piece, next, new Spot(x - (off * dy), y + (off * dx)), open);
            Add(piece, next, new Spot(x + (off * dy), y - (off * dx)), open);
        }
    }

    private void Add(Piece piece, int next, Spot at, List<Laid> open)
    {
        if (!piece.Inside(floor, at))
        {
            return;
        }

        for (var i = 0; i < next; i++)
        {
            if (!piece.Clears(at, laid[i].Piece, laid[i].At))
            {
                return;
            }
        }

        open.Add(new Laid(piece, at));
    }

    /// <summary>Middles that touch a wall, or the side of what stands there.</summary>
    private List<double> Lines(int next, bool round, double size, double room, Func<Laid, (double At, double Size)> side)
    {
        List<double> lines = [size / 2, room - (size / 2)];
        for (var i = 0; i < next; i++)
        {
            // Two round ones touch by their distance, not by their sides.
            if (round && laid[i].Piece.IsRound)
            {
                continue;
            }

            var (at, other) = side(laid[i]);
            lines.Add(at + ((other + size) / 2));
            lines.Add(at - ((other + size) / 2));
        }

        return lines;
    }

    // The other leg of a right triangle with that hypotenuse; null if the first is already longer.
    private static double? Leg(double hypotenuse, double leg)
    {
        var square = (hypotenuse * hypotenuse) - (leg * leg);
        return square >= -Rounds.Hair ? Math.Sqrt(Math.Max(0, square)) : null;
    }
}
