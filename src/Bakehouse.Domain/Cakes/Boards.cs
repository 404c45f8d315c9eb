namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;

/// <summary>A board or drum.</summary>
/// <param name="Diameter">From side to side; of one that is not round where it is widest.</param>
public sealed record Board(Length Diameter, Length Thickness)
{
    /// <summary>Its outline if it is not round.</summary>
    public Shape? Cut { get; init; }

    /// <summary>Its outline.</summary>
    public Shape Shape => Cut ?? new Round(Diameter);

    /// <summary>Its volume.</summary>
    public Volume Volume => Shape.Area * Thickness;

    /// <summary>Under an upper tier of any outline: the tier's own, cut by its pan where no board is sold in it.</summary>
    public static Board Under(Shape tier, CakeFigures figures) =>
        new(tier.Wide, figures.BoardThickness) { Cut = tier is Round ? null : tier };

    /// <summary>
    /// Under a whole cake on a bottom tier of any outline: straight ones get a straight drum, all others a round one as wide as what goes
    /// around them; wider by the margin for one tier or a stack.
    /// </summary>
    public static Board Drum(Shape bottom, int tiers, CakeFigures figures) => bottom is Slab slab
        ? Straight(slab, tiers > 1 ? figures.DrumMargin : figures.SingleBoardMargin, figures.DrumThickness)
        : Drum(Length.FromMillimetres(Math.Round((decimal)bottom.Around, 3)), tiers, figures);

    /// <summary>A larger one to carry a tier of any outline on while it is coated.</summary>
    public static Board Working(Shape tier, CakeFigures figures) => tier is Slab slab
        ? Straight(slab, figures.WorkingBoardMargin, figures.DrumThickness)
        : Working(Length.FromMillimetres(Math.Round((decimal)tier.Around, 3)), figures);

    /// <summary>Sizes in which round and square boards are sold: even inches, 4 to 20 (common practice, no source).</summary>
    public static IReadOnlyList<Length> Sold { get; } = [.. Enumerable.Range(2, 9).Select(i => Length.FromInches(2 * i))];

    /// <summary>The smallest size that is sold and takes this one; it is trimmed down to it where it is larger. Null if none is so large.</summary>
    public Length? BoughtAs => Sold.Where(s => s >= Diameter && s >= Shape.Deep).Select(s => (Length?)s).FirstOrDefault();

    /// <summary>True if the board that is sold must be cut down to this one.</summary>
    public bool IsTrimmed => Cut is not null and not Slab || (BoughtAs is { } bought && bought > Diameter);

    private static Board Straight(Slab on, Length margin, Length thickness) =>
        new(on.Width + margin, thickness) { Cut = new Slab(on.Width + margin, on.Depth + margin) };

    /// <summary>Under an upper tier: the tier's own diameter.</summary>
    public static Board Under(Length tier, CakeFigures figures) => new(tier, figures.BoardThickness);

    /// <summary>Under the whole cake: wider than the bottom tier by the margin for one tier or for a stack.</summary>
    public static Board Drum(Length bottom, int tiers, CakeFigures figures) =>
        new(bottom + (tiers > 1 ? figures.DrumMargin : figures.SingleBoardMargin), figures.DrumThickness);

    /// <summary>A larger one to carry a tier on while it is coated.</summary>
    public static Board Working(Length tier, CakeFigures figures) => new(tier + figures.WorkingBoardMargin, figures.DrumThickness);
}

/// <summary>The smallest box: square inside, whole inches.</summary>
/// <param name="Width">Inside, both ways.</param>
/// <param name="Height">Inside.</param>
public sealed record Box(Length Width, Length Height)
{
    /// <summary>A box as wide as the board below and clear over the highest point by the figures' clearance.</summary>
    public static Box For(Length board, Length highestPoint, CakeFigures figures) =>
        new(WholeInches(board), WholeInches(highestPoint + figures.BoxClearance));

    /// <summary>The same for a board of any outline: square inside by its wider way.</summary>
    public static Box For(Board board, Length highestPoint, CakeFigures figures) =>
        For(board.Shape.Deep > board.Shape.Wide ? board.Shape.Deep : board.Shape.Wide, highestPoint, figures);

    /// <summary>Boxes that are sold for one cake, inside, by width (common practice, no source).</summary>
    public static IReadOnlyList<Box> Sold { get; } = [In(8, 4), In(10, 5), In(11, 5), In(12, 6), In(14, 6)];

    /// <summary>The smallest box that is sold and takes as much; null if a larger one must be made or bought tall.</summary>
    public Box? AsSold => Sold.FirstOrDefault(b => b.Width >= Width && b.Height >= Height);

    private static Box In(int wide, int high) => new(Length.FromInches(wide), Length.FromInches(high));

    private static Length WholeInches(Length length) => Length.FromInches(Math.Ceiling(length.Inches));
}
