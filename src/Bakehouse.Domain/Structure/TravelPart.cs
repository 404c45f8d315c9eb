namespace Bakehouse.Domain.Structure;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;

/// <summary>One part of a cake as it travels, on its board and in its own box; what stands on top is not counted.</summary>
/// <param name="Tiers">Bottom first, counted from 0.</param>
/// <param name="Board">What it stands on in its box: the drum, or the working board of its lowest tier.</param>
/// <param name="Mass">Its tiers with their boards and what they stand on.</param>
/// <param name="Height">From under its board to its top.</param>
public sealed record TravelPart(IReadOnlyList<int> Tiers, Board Board, Mass Mass, Length Height, Box Box)
{
    /// <summary>What one person may lift of it.</summary>
    public Carrying Carrying => Carrying.Of(Mass, Box);

    /// <summary>Every part of a cake, the lowest first; none of cupcakes alone.</summary>
    /// <param name="routeMinutes">On the road, 0 if it is collected.</param>
    public static IReadOnlyList<TravelPart> Of(BuildSheet sheet, int routeMinutes) => Of(sheet, Travelling.Of(sheet, routeMinutes));

    /// <summary>The same where it is known how it travels.</summary>
    public static IReadOnlyList<TravelPart> Of(BuildSheet sheet, Travelling travelling) => sheet is not { Drum: { } drum, Box: { } box } ? []
        : travelling.Parts.Count == 1 ? [new TravelPart(travelling.Parts[0], drum, sheet.Mass, sheet.Height, box)]
        : [.. travelling.Parts.Select(tiers => One(sheet, tiers, drum))];

    // The bottom tier stands on the drum alone, any other on its own board as well; what lay between two parts is packed beside them.
    private static TravelPart One(BuildSheet sheet, IReadOnlyList<int> tiers, Board drum)
    {
        var onDrum = tiers[0] == 0;
        var board = onDrum ? drum : sheet.Stack[tiers[0]].WorkingBoard;
        var (mass, height) = (sheet.Figures.BoardDensity * board.Volume, board.Thickness);
        foreach (var index in tiers)
        {
            var tier = sheet.Stack[index];
            var (own, thick) = index == 0 ? (default, default) : (sheet.Figures.BoardDensity * tier.Board.Volume, tier.Board.Thickness);
            mass += tier.Mass + own;
            height += tier.Finished.Height + thick + (index == tiers[0] ? default : tier.Separator);
        }

        return new TravelPart(tiers, board, mass, height, Box.For(board, height, sheet.Figures));
    }
}
