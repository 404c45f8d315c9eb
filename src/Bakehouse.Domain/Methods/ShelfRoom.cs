namespace Bakehouse.Domain.Methods;

using Bakehouse.Domain.Cakes.Packing;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;

/// <summary>
/// Room on shelves. One place is a square decimetre; their count is a first cut that never says no to what can stand. Whether things stand
/// together is worked out by <see cref="Layouts"/>.
/// </summary>
public static class ShelfRoom
{
    private const decimal Place = 100;

    /// <summary>A work bench is counted as 60 by 60 cm (common practice, no source).</summary>
    private const int BenchCm = 60;

    /// <summary>Square metres of shelf that so many places are.</summary>
    public static decimal SquareMetres(int places) => places * Place / 10_000;

    /// <summary>Places of a shelf, up.</summary>
    public static int Places(Shelf shelf) => (int)Math.Ceiling(shelf.Width.Centimetres * shelf.Depth.Centimetres / Place);

    /// <summary>Places of one work bench.</summary>
    public static int BenchPlaces => BenchCm * BenchCm / (int)Place;

    /// <summary>So many benches side by side.</summary>
    public static Floor Bench(int benches) => new(benches * BenchCm * 10, BenchCm * 10);

    /// <summary>Places that it covers, down, at least one.</summary>
    public static int Needed(Piece piece) => Math.Max(1, (int)(piece.Area / (100 * (double)Place)));

    /// <summary>True if it can stand there at all.</summary>
    public static bool Holds(Shelf shelf, Piece piece, int heightCm) => Room.Of(shelf).Takes(piece) && heightCm <= shelf.Clear.Centimetres;

    /// <summary>Across, a tier on its working board (tier + 2.5 cm) or, built on it, on its drum (tier + 4 in), with 2 cm of gap.</summary>
    public static Length Footprint(CakeTier tier, bool onDrum) =>
        tier.Diameter + (onDrum ? Length.FromInches(4) : Length.FromCentimetres(2.5m)) + Room.BetweenBoards;

    /// <summary>A tier on its board, from above.</summary>
    public static Piece OnBoard(CakeTier tier, bool onDrum) => Piece.Round((double)Footprint(tier, onDrum).Millimetres);

    /// <summary>A boxed cake: its drum and 4 cm of box, square.</summary>
    public static Piece Boxed(CakeTier bottom) => Piece.Square((double)(bottom.Diameter + Length.FromInches(4) + Length.FromCentimetres(4)).Millimetres);

    /// <summary>Height of a tier on its board with 3 cm to lift it, whole cm.</summary>
    public static int HeightCm(IEnumerable<CakeTier> tiers) => (int)Math.Ceiling(tiers.Sum(t => t.Height.Centimetres + 1) + 3);
}
