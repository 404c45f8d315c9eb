namespace Bakehouse.Domain.Cakes.Packing;

/// <summary>
/// Pieces in straight rows, the deepest first; a piece that the row has no room for opens the next one, and no row is gone back to. So
/// leaving a piece out never makes it longer: every piece after it comes to the same row or an earlier one (next fit is monotonic:
/// Murgolo 1988, from memory; the draws in the tests look at it again).
/// </summary>
internal static class NextFitRows
{
    /// <summary>Rows along the width, or else along the depth; null if neither goes in.</summary>
    public static Laid[]? Of(Floor floor, Piece[] pieces) =>
        Rows(floor, pieces) ?? Rows(floor.Turned, pieces)?.Select(l => new Laid(l.Piece.Turned, new Spot(l.At.Y, l.At.X))).ToArray();

    private static Laid[]? Rows(Floor floor, Piece[] pieces)
    {
        Piece[] lying = [.. pieces.Select(p => p.Wide > floor.Wide + Rounds.Hair ? p.Turned : p)];
        var laid = new Laid[pieces.Length];
        var (x, front, deep) = (0.0, 0.0, 0.0);
        foreach (var i in Enumerable.Range(0, lying.Length).OrderByDescending(i => lying[i].Deep).ThenByDescending(i => lying[i].Wide))
        {
            var piece = lying[i];
            if (x + piece.Wide > floor.Wide + Rounds.Hair)
            {
                (x, front, deep) = (0, front + deep, 0);
            }

            deep = Math.Max(deep, piece.Deep);
            laid[i] = new Laid(piece, new Spot(x + (piece.Wide / 2), front + (piece.Deep / 2)));
            x += piece.Wide;
            if (front + deep > floor.Deep + Rounds.Hair || piece.Wide > floor.Wide + Rounds.Hair)
            {
                return null;
            }
        }

        return laid;
    }
}
