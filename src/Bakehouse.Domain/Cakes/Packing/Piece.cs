namespace Bakehouse.Domain.Cakes.Packing;

/// <summary>What stands on a shelf or deck, seen from above, with the gap that it keeps: a round one, or a rectangle.</summary>
/// <param name="Wide">Millimetres from left to right.</param>
/// <param name="Deep">Millimetres from front to back; of a round piece the same.</param>
public readonly record struct Piece(double Wide, double Deep, bool IsRound) : IComparable<Piece>
{
    /// <summary>A round piece of so many millimetres.</summary>
    public static Piece Round(double across) => new(across, across, true);

    /// <summary>A square one.</summary>
    public static Piece Square(double side) => new(side, side, false);

    /// <summary>The same a quarter turned.</summary>
    public Piece Turned => new(Deep, Wide, IsRound);

    /// <summary>Square millimetres that it covers.</summary>
    public double Area => Wide * Deep * (IsRound ? Math.PI / 4 : 1);

    /// <summary>True if the two, with their middles there, don't overlap; touching is allowed.</summary>
    public bool Clears(Spot here, Piece other, Spot there)
    {
        var (x, y) = (Math.Abs(here.X - there.X), Math.Abs(here.Y - there.Y));
        if (IsRound && other.IsRound)
        {
            var apart = ((Wide + other.Wide) / 2) - Rounds.Hair;
            return (x * x) + (y * y) >= apart * apart;
        }

        if (!IsRound && !other.IsRound)
        {
            return x >= ((Wide + other.Wide) / 2) - Rounds.Hair || y >= ((Deep + other.Deep) / 2) - Rounds.Hair;
        }

        // Of a round and a straight one: the nearest point of the straight one is a radius away or more.
        var (round, straight) = IsRound ? (this, other) : (other, this);
        var (beside, behind) = (Math.Max(0, x - (straight.Wide / 2)), Math.Max(0, y - (straight.Deep / 2)));
        var radius = (round.Wide / 2) - Rounds.Hair;
        return (beside * beside) + (behind * behind) >= radius * radius;
    }

    /// <summary>True if it lies inside the floor with its middle there.</summary>
    public bool Inside(Floor floor, Spot at) =>
        at.X >= (Wide / 2) - Rounds.Hair && at.X <= floor.Wide - (Wide / 2) + Rounds.Hair
        && at.Y >= (Deep / 2) - Rounds.Hair && at.Y <= floor.Deep - (Deep / 2) + Rounds.Hair;

    /// <summary>The larger first; of equal area the deeper, then round before straight.</summary>
    public int CompareTo(Piece other) =>
        (other.Area, other.Deep, other.Wide, other.IsRound).CompareTo((Area, Deep, Wide, IsRound));

    /// <summary>The larger first.</summary>
    public static bool operator <(Piece a, Piece b) => a.CompareTo(b) < 0;

    /// <summary>The larger first.</summary>
    public static bool operator >(Piece a, Piece b) => a.CompareTo(b) > 0;

    /// <summary>The larger first.</summary>
    public static bool operator <=(Piece a, Piece b) => a.CompareTo(b) <= 0;

    /// <summary>The larger first.</summary>
    public static bool operator >=(Piece a, Piece b) => a.CompareTo(b) >= 0;
}

/// <summary>The rectangle on which pieces stand, millimetres.</summary>
public readonly record struct Floor(double Wide, double Deep)
{
    /// <summary>The same a quarter turned.</summary>
    public Floor Turned => new(Deep, Wide);

    /// <summary>Square millimetres.</summary>
    public double Area => Wide * Deep;

    /// <summary>True if that piece can stand there alone, as it is or a quarter turned.</summary>
    public bool Takes(Piece piece) =>
        Math.Max(piece.Wide, piece.Deep) <= Math.Max(Wide, Deep) + Rounds.Hair && Math.Min(piece.Wide, piece.Deep) <= Math.Min(Wide, Deep) + Rounds.Hair;
}

/// <summary>A piece, turned as it lies, and where its middle is.</summary>
public readonly record struct Laid(Piece Piece, Spot At);
