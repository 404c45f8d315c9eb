namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;

/// <summary>A round board.</summary>
public sealed record Board(Length Diameter, Length Thickness)
{
    /// <summary>Its volume.</summary>
    public Volume Volume => new Round(Diameter).Area * Thickness;

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

    private static Length WholeInches(Length length) => Length.FromInches(Math.Ceiling(length.Inches));
}
