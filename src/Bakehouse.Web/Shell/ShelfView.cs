namespace Bakehouse.Web.Shell;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Cakes.Packing;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.TheKitchen;

/// <summary>A shelf from above, to scale, with what stands there as it was worked out.</summary>
/// <param name="Level">Counted from below.</param>
/// <param name="Crowded">The sentence where no way was found to put everything down; else "".</param>
public sealed record ShelfView(int Level, decimal Width, decimal Depth, IReadOnlyList<ThingView> Things, string Crowded)
{
    /// <summary>True if nothing stands there.</summary>
    public bool IsFree => Things.Count == 0 && Crowded.Length == 0;

    /// <summary>What stands there in words.</summary>
    public string Says => Crowded.Length > 0 ? Crowded : Things.Count == 0 ? "free" : string.Join(", ", Things.Select(t => t.Name));

    /// <summary>The shelf in one stretch of the plan, or empty.</summary>
    public static ShelfView Of(Shelf shelf, ShelfStretch? stretch, ShelfWords words, IReadOnlyDictionary<Guid, Order> orders)
    {
        var layout = stretch?.Layout;
        return new ShelfView(
            shelf.Level, shelf.Width.Centimetres, shelf.Depth.Centimetres,
            stretch is null || layout is null ? [] : [.. stretch.Holds.Zip(layout, (hold, laid) => ThingView.Of(hold, laid, words.Thing(hold), orders))],
            stretch is null || layout is not null ? "" : words.Crowded(stretch));
    }
}

/// <summary>A thing on a shelf from above, cm from the left and from the front to its middle.</summary>
/// <param name="Wide">Of its board or box, without the gap around.</param>
/// <param name="Number">Of its order.</param>
/// <param name="Name">"409 8 in".</param>
/// <param name="Cake">Diameter of the widest tier; 0 where it is boxed or not known.</param>
public sealed record ThingView(decimal X, decimal Y, decimal Wide, decimal Deep, bool IsRound, string Number, string Name, decimal Cake, string Colour)
{
    /// <summary>A hold where it was laid.</summary>
    public static ThingView Of(Hold hold, Laid laid, string name, IReadOnlyDictionary<Guid, Order> orders)
    {
        var (piece, gap) = (laid.Piece, laid.Piece.IsRound ? Room.BetweenBoards.Centimetres : 0);
        var key = StepKey.Parse(hold.From);
        var tiers = key is { } from && orders.TryGetValue(from.Order, out var order) ? PictureView.Of(from.Operation, StepWords.TiersOf(hold.From, order)).Tiers : [];
        return new ThingView(
            (decimal)laid.At.X / 10, (decimal)laid.At.Y / 10, ((decimal)piece.Wide / 10) - gap, ((decimal)piece.Deep / 10) - gap, piece.IsRound,
            name.Split(' ')[0], name, piece.IsRound && tiers.Count > 0 ? tiers.Max(t => t.Width) : 0, tiers.Count > 0 ? tiers.MaxBy(t => t.Width).Colour : "var(--enamel)");
    }
}
