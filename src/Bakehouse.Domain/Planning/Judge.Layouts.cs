namespace Bakehouse.Domain.Planning;

using Bakehouse.Domain.Cakes.Packing;

/// <content>
/// What stands on shelves and decks, by its real size. Where each piece goes is looked for by <see cref="Layouts"/>; that it lies inside and
/// overlaps nothing is looked at here, by plain distances.
/// </content>
public static partial class Judge
{
    // A hundredth of a millimetre.
    private const double Hair = 0.01;

    /// <summary>What stands on a shelf at once can be put down there. Where all of it is a fact already, it stands as it stands.</summary>
    private static IEnumerable<Breach> S7(WeekIndex at)
    {
        var given = at.Week.Fixed.Where(f => f.Start is not null).Select(f => f.Step).OfType<string>().ToHashSet(StringComparer.Ordinal);
        return from stretch in Shelving.Of(at)
               where !LieApart(stretch.Floor, stretch.Pieces, stretch.Layout) && !stretch.Holds.All(h => given.Contains(h.From) && given.Contains(h.To))
               select new Breach("S7", $"{string.Join(", ", stretch.Holds.Select(h => h.Id))} do not stand beside each other in {stretch.Store.Id}.", stretch.Holds[0].Id, stretch.Span.From);
    }

    /// <summary>The pans of a load on the levels, each level by its real size.</summary>
    private static bool StandOnDecks(Floor deck, int levels, List<int> pans) =>
        DeckLoad.Of(deck, levels, pans) is { } decks && decks.Count <= levels
        && decks.SelectMany(d => d).Select(d => d.Inches).Order().SequenceEqual(pans.Order())
        && decks.All(d => LieApart(deck, [.. d.Select(p => Room.Pan(p.Inches))], [.. d.Select(p => p.Laid)]));

    private static bool LieApart(Floor floor, IReadOnlyList<Piece> pieces, IReadOnlyList<Laid>? layout)
    {
        if (layout is null || layout.Count != pieces.Count)
        {
            return false;
        }

        for (var i = 0; i < layout.Count; i++)
        {
            var (piece, at) = layout[i];
            var inside = at.X >= (piece.Wide / 2) - Hair && at.Y >= (piece.Deep / 2) - Hair && floor.Wide - at.X >= (piece.Wide / 2) - Hair && floor.Deep - at.Y >= (piece.Deep / 2) - Hair;
            if (!inside || (piece != pieces[i] && piece != pieces[i].Turned) || layout.Take(i).Any(o => Gap(layout[i], o) < -Hair))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Millimetres between two, below 0 where they overlap: of a round one its middle counts, and its radius is taken off.</summary>
    private static double Gap(Laid a, Laid b)
    {
        var x = Math.Abs(a.At.X - b.At.X) - Straight(a.Piece, a.Piece.Wide) - Straight(b.Piece, b.Piece.Wide);
        var y = Math.Abs(a.At.Y - b.At.Y) - Straight(a.Piece, a.Piece.Deep) - Straight(b.Piece, b.Piece.Deep);
        var radii = (a.Piece.IsRound ? a.Piece.Wide / 2 : 0) + (b.Piece.IsRound ? b.Piece.Wide / 2 : 0);
        return (x > 0 && y > 0 ? Math.Sqrt((x * x) + (y * y)) : Math.Max(x, y)) - radii;
    }

    private static double Straight(Piece piece, double side) => piece.IsRound ? 0 : side / 2;
}
