namespace Bakehouse.Domain.Cakes.Packing;

using System.Collections.Concurrent;

/// <summary>
/// Puts pieces down on a rectangle. What it returns can be put down as it stands; where it returns null, a clever hand may still find
/// a way. Its word is steady: what stands together stands with less, too, and turning the rectangle changes nothing. For that, a way in rows
/// counts by itself (next-fit rows by falling depth can only get shorter when a piece is left out), and any other way counts only if every
/// smaller set has one, too.
/// </summary>
public static class Layouts
{
    // A set has so many smaller ones at most; beyond, only rows are tried. Nine on a fridge shelf, thirteen of a kind in an oven.
    private const int MostSmaller = 400;

    private const int MostKnown = 60_000;

    // No more of a plane is covered by equal circles than pi over the root of 12 (Thue 1910; Fejes Toth 1940).
    private const double Densest = 0.9069;

    private static readonly ConcurrentDictionary<Stand, Laid[]?> Known = new();

    /// <summary>True if they can stand there together.</summary>
    public static bool Fit(Floor floor, IReadOnlyCollection<Piece> pieces) => Canonical(floor, pieces, out _) is not null;

    /// <summary>Where each stands, in the order of <paramref name="pieces"/>; null if no way was found.</summary>
    public static IReadOnlyList<Laid>? Of(Floor floor, IReadOnlyList<Piece> pieces)
    {
        if (Canonical(floor, pieces, out var turned) is not { } found)
        {
            return null;
        }

        // Pieces that are alike are interchangeable, so sorting both sides the same way gives each its own.
        var order = Enumerable.Range(0, pieces.Count).OrderBy(i => Long(pieces[i])).ToArray();
        var laid = new Laid[pieces.Count];
        for (var i = 0; i < order.Length; i++)
        {
            laid[order[i]] = turned ? new Laid(found[i].Piece.Turned, new Spot(found[i].At.Y, found[i].At.X)) : found[i];
        }

        return laid;
    }

    /// <summary>
    /// Centimetres, whole, that the floor would have to be wider (or deeper, if one is too deep for it alone) for all of them to stand; 0 if they
    /// do. At most 400.
    /// </summary>
    public static int MissingCm(Floor floor, IReadOnlyCollection<Piece> pieces)
    {
        if (Fit(floor, pieces))
        {
            return 0;
        }

        Floor Grown(int cm) => pieces.All(floor.Takes) ? floor with { Wide = floor.Wide + (10 * cm) } : new Floor(floor.Wide + (10 * cm), floor.Deep + (10 * cm));
        var (no, yes) = (0, 1);
        while (yes < 400 && !Fit(Grown(yes), pieces))
        {
            (no, yes) = (yes, Math.Min(400, yes * 2));
        }

        while (yes - no > 1)
        {
            var middle = (no + yes) / 2;
            (no, yes) = Fit(Grown(middle), pieces) ? (no, middle) : (middle, yes);
        }

        return yes;
    }

    /// <summary>By falling size on the floor with its long side in front.</summary>
    private static Laid[]? Canonical(Floor floor, IReadOnlyCollection<Piece> pieces, out bool turned)
    {
        turned = floor.Deep > floor.Wide;
        Piece[] sorted = [.. pieces.Select(Long)];
        Array.Sort(sorted);
        return Of(new Stand(turned ? floor.Turned : floor, sorted));
    }

    private static Piece Long(Piece piece) => piece.Deep > piece.Wide ? piece.Turned : piece;

    private static Laid[]? Of(Stand stand)
    {
        if (Known.TryGetValue(stand, out var known))
        {
            return known;
        }

        if (Known.Count > MostKnown)
        {
            Known.Clear();
        }

        return Known[stand] = Found(stand);
    }

    private static Laid[]? Found(Stand stand)
    {
        var (floor, pieces) = (stand.Floor, stand.Pieces);
        if (!Array.TrueForAll(pieces, floor.Takes) || pieces.Sum(p => p.IsRound ? p.Area / Densest : p.Area) > floor.Area)
        {
            return null;
        }

        if (NextFitRows.Of(floor, pieces) is { } rows)
        {
            return rows;
        }

        return Smaller(pieces) <= MostSmaller && (Alike(floor, pieces) ?? Nesting.Find(floor, pieces)) is { } found && AllSmaller(stand) ? found : null;
    }

    private static Laid[]? Alike(Floor floor, Piece[] pieces)
    {
        if (!pieces[0].IsRound || pieces[0] != pieces[^1])
        {
            return null;
        }

        var spots = Rounds.Place(floor.Wide, floor.Deep, pieces[0].Wide, 0, 0);
        return spots.Count >= pieces.Length ? [.. pieces.Select((p, i) => new Laid(p, spots[i]))] : null;
    }

    /// <summary>How many different sets are left by leaving out pieces.</summary>
    private static double Smaller(Piece[] pieces) => pieces.GroupBy(p => p).Aggregate(1.0, (all, same) => all * (same.Count() + 1));

    private static bool AllSmaller(Stand stand)
    {
        for (var i = 0; i < stand.Pieces.Length && stand.Pieces.Length > 1; i++)
        {
            if ((i == 0 || stand.Pieces[i] != stand.Pieces[i - 1]) && Of(stand.Without(i)) is null)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>A set of pieces on a floor, to be looked up.</summary>
    private readonly struct Stand : IEquatable<Stand>
    {
        private readonly int hash;

        public Stand(Floor floor, Piece[] pieces)
        {
            (Floor, Pieces) = (floor, pieces);
            var code = default(HashCode);
            code.Add(floor);
            foreach (var piece in pieces)
            {
                code.Add(piece);
            }

            hash = code.ToHashCode();
        }

        public Floor Floor { get; }

        public Piece[] Pieces { get; }

        public Stand Without(int index) => new(Floor, [.. Pieces[..index], .. Pieces[(index + 1)..]]);

        public bool Equals(Stand other) => hash == other.hash && Floor == other.Floor && Pieces.AsSpan().SequenceEqual(other.Pieces);

        public override bool Equals(object? obj) => obj is Stand other && Equals(other);

        public override int GetHashCode() => hash;
    }
}
