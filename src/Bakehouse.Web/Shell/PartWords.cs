namespace Bakehouse.Web.Shell;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Structure;

/// <summary>A part of a cake on the road, in words.</summary>
internal static class PartWords
{
    /// <summary>"12+14": its tiers, top first.</summary>
    public static string Name(TravelPart part, BuildSheet sheet, Words words) => words.Build(part.Tiers.Select(t => sheet.Stack[t].Tier));

    /// <summary>"the drum, 18 in, 12 mm thick" or "a working board of 27.9 cm".</summary>
    public static string Board(TravelPart part, Words words) => part.Tiers[0] == 0
        ? $"the drum, {words.Drum(part.Board)}, {words.Thickness(part.Board.Thickness)} thick"
        : $"a working board of {Working(part.Board, words)}";

    /// <summary>"14 in square, 15 in high", and that it must be made where none is sold.</summary>
    public static string Box(Box box, Words words) =>
        $"{words.Room(box.Width)} square, {words.Room(box.Height)} high{(box.AsSold is null ? ", none is sold so wide and high: make one" : "")}";

    /// <summary>"one person" or "two people or a trolley", from the shop's mass on.</summary>
    public static string Carried(TravelPart part, BuildSheet sheet) => part.Mass >= sheet.Figures.TwoCarryFrom ? "two people or a trolley" : "one person";

    /// <summary>What two people lift: the whole cake, or each heavy part of one that travels in parts; empty if one person carries it.</summary>
    public static IReadOnlyList<string> Heavy(BuildSheet sheet, Order order, Words words)
    {
        var parts = TravelPart.Of(sheet, order.Handover.RouteMinutes);
        List<string> heavy = [.. parts.Where(p => parts.Count > 1 && p.Mass >= sheet.Figures.TwoCarryFrom).Select(p => $"{Name(p, sheet, words)} {words.Weight(p.Mass)}")];
        return heavy.Count > 0 || !sheet.TwoCarry ? heavy : [$"{words.Weight(sheet.Mass)}{(parts.Count > 1 ? " put together," : "")}"];
    }

    /// <summary>"27.9 cm", "30.5 × 40.6 cm": cut to measure, so in centimetres.</summary>
    public static string Working(Board board, Words words) => board.Shape is Slab slab && slab.Width != slab.Depth
        ? $"{words.CutTo(slab.Width)[..^3]} × {words.CutTo(slab.Depth)}"
        : words.CutTo(board.Diameter);
}
