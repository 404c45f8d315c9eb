namespace Bakehouse.Domain.Cakes.Packing;

using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Shops;

/// <summary>Where pans stand on one level of an oven, and boards on a shelf, with the gaps between.</summary>
public static class Room
{
    /// <summary>Between two pans, for the air: 2 cm (common practice, no source).</summary>
    public static Length BetweenPans { get; } = Length.FromCentimetres(2);

    /// <summary>Between pan and oven wall: 1.5 cm (common practice, no source).</summary>
    public static Length PanToWall { get; } = Length.FromCentimetres(1.5m);

    /// <summary>A pan's rim makes it 8 mm wider in all than its name (common practice, no source).</summary>
    public static Length Rim { get; } = Length.FromMillimetres(8);

    /// <summary>Between two boards on a shelf: 2 cm, so that hands find room (common practice, no source).</summary>
    public static Length BetweenBoards { get; } = Length.FromCentimetres(2);

    /// <summary>Round pans of that diameter on one level.</summary>
    public static IReadOnlyList<Spot> Pans(Oven oven, Length diameter) =>
        Rounds.Place(Mm(oven.Width), Mm(oven.Depth), Mm(diameter + Rim), Mm(BetweenPans), Mm(PanToWall));

    /// <summary>Boards of one size on a shelf, if what stands on them is low enough; each has half the gap on every side.</summary>
    public static IReadOnlyList<Spot> Boards(Shelf shelf, Board board, Length height) => height > shelf.Clear
        ? []
        : Rounds.Place(Mm(shelf.Width), Mm(shelf.Depth), Mm(Footprint(board)), 0, 0);

    /// <summary>What a board takes on a shelf, across: itself and the gap.</summary>
    public static Length Footprint(Board board) => board.Diameter + BetweenBoards;

    /// <summary>A shelf as a floor: what stands there brings its gap with it.</summary>
    public static Floor Of(Shelf shelf) => new(Mm(shelf.Width), Mm(shelf.Depth));

    /// <summary>One level of an oven as a floor for <see cref="Pan"/>: the gap to the wall off, the half gap around each pan on.</summary>
    public static Floor Of(Oven oven) => new(
        Mm(oven.Width) - (2 * Mm(PanToWall)) + Mm(BetweenPans), Mm(oven.Depth) - (2 * Mm(PanToWall)) + Mm(BetweenPans));

    /// <summary>A pan by its code (<see cref="PanCode"/>), with its rim and half the air between pans around it.</summary>
    public static Piece Pan(int code)
    {
        var (pan, more) = (PanCode.Bare(code), Mm(Rim + BetweenPans));
        return pan with { Wide = pan.Wide + more, Deep = pan.Deep + more };
    }

    private static double Mm(Length length) => (double)length.Millimetres;
}
