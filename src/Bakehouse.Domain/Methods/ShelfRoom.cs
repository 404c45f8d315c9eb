namespace Bakehouse.Domain.Methods;

using Bakehouse.Domain.Cakes;
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

    /// <summary>
    /// A tier on its working board (2.5 cm wider) or, built on it, on its drum (4 in wider), with 2 cm of gap: straight ones on a straight board, all
    /// others on a round one as wide as what goes around them.
    /// </summary>
    public static Piece OnBoard(CakeTier tier, bool onDrum) => Grown(tier, (onDrum ? Length.FromInches(4) : Length.FromCentimetres(2.5m)) + Room.BetweenBoards);

    /// <summary>A tray of cupcakes, as large as a tin, or two of them side by side, with 2 cm of gap.</summary>
    public static Piece OnTray(int cupcakes) => Straight(cupcakes > Cupcakes.InTin ? new Slab(Cupcakes.Tin.Width, Cupcakes.Tin.Depth * 2) : Cupcakes.Tin, Room.BetweenBoards);

    /// <summary>Boxes of cupcakes side by side, one or two of twelve, with 1 cm of card.</summary>
    public static Piece InBoxes(int cupcakes)
    {
        var boxes = CupcakeBox.For(Math.Min(cupcakes, Cupcakes.OnTray));
        return Straight(new Slab(boxes[0].Shape.Width, Length.FromMillimetres(boxes.Sum(b => b.Shape.Depth.Millimetres))), Length.FromCentimetres(1));
    }

    /// <summary>Height of a tray of piped cupcakes with 3 cm to lift it, whole cm.</summary>
    public static int TrayHeightCm => (int)Math.Ceiling(Cupcakes.Baked.Centimetres + Cupcakes.SwirlHeight.Centimetres + 1 + 3);

    /// <summary>Height of a box of cupcakes with 3 cm to lift it, whole cm.</summary>
    public static int CupcakeBoxHeightCm => (int)Math.Ceiling(CupcakeBox.Height.Centimetres + 3);

    private static Piece Straight(Slab slab, Length more) => new((double)(slab.Width + more).Millimetres, (double)(slab.Depth + more).Millimetres, false);

    /// <summary>A boxed cake: its drum and 4 cm of box, square by its wider way.</summary>
    public static Piece Boxed(CakeTier bottom)
    {
        var drum = Grown(bottom, Length.FromInches(4) + Length.FromCentimetres(4));
        return Piece.Square(Math.Max(drum.Wide, drum.Deep));
    }

    private static Piece Grown(CakeTier tier, Length more) => tier.Shape switch
    {
        Round round => Piece.Round((double)(round.Diameter + more).Millimetres),
        Slab slab => new Piece((double)(slab.Width + more).Millimetres, (double)(slab.Depth + more).Millimetres, false),
        var shape => Piece.Round(shape.Around + (double)more.Millimetres),
    };

    /// <summary>Height of a tier on its board with 3 cm to lift it, whole cm.</summary>
    public static int HeightCm(IEnumerable<CakeTier> tiers) => (int)Math.Ceiling(tiers.Sum(t => t.Height.Centimetres + (t.Special?.Separator.Centimetres ?? 0) + 1) + 3);
}
