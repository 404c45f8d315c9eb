namespace Bakehouse.Domain.Shops;

using Bakehouse.Domain.Cakes.Packing;
using Bakehouse.Domain.Measures;
using static System.FormattableString;

/// <summary>A shelf pulled out, so that what stands on the one below it has the height of both.</summary>
/// <param name="Out">What is pulled out; it must stand empty.</param>
/// <param name="Below">Where the thing then stands.</param>
public sealed record PulledShelf(Shelf Out, Shelf Below)
{
    /// <summary>Clear height then: at least that of both; the shelf's own thickness comes to it and is not counted.</summary>
    public Length Clear => Out.Clear + Below.Clear;

    /// <summary>What the baker does: "Pull out level 3 of Fridge 1: level 2 then has 42 cm of height."</summary>
    public string Sentence => Invariant($"Pull out level {Out.Level} of {Out.Unit}: level {Below.Level} then has {Clear.Centimetres:0.#} cm of height.");

    /// <summary>
    /// The shelf to pull out for something that is too tall for every shelf of its kind as they are: the one that gives least height too much.
    /// Null if none helps.
    /// </summary>
    /// <param name="heightCm">With the room to lift it.</param>
    /// <param name="allowed">True for shelves that the owner said can be pulled out, false for those that were not asked about.</param>
    public static PulledShelf? For(Shop shop, ShelfKind kind, Piece piece, int heightCm, bool allowed = true) => (
        from below in shop.Shelves
        where below.Kind == kind && Room.Of(below).Takes(piece)
        from above in shop.Shelves
        where above.Kind == kind && above.Unit == below.Unit && above.Level == below.Level + 1 && above.PullsOut == allowed
        let pulled = new PulledShelf(above, below)
        where pulled.Clear.Centimetres >= heightCm
        orderby pulled.Clear, below.Unit, below.Level
        select pulled).FirstOrDefault();
}
