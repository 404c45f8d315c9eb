namespace Bakehouse.Domain.Sheets;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;
using Bakehouse.Domain.Structure;

/// <summary>
/// A build sheet as plain figures, to be shown on a page or written to a file: only numbers, words and lists. Lengths are millimetres,
/// volumes millilitres, masses grams, forces newtons, angles degrees, each rounded to a tenth; pulls are multiples of gravity and shares
/// 0 to 1, rounded to a thousandth. A field may be added in the same format; none is renamed or taken away. Tiers count from the bottom, 1 and up. It holds no price: those who build don't see it.
/// </summary>
/// <param name="Format">Of this record. A change that an older reader could not read gets the next number.</param>
/// <param name="Number">The order's number.</param>
/// <param name="Version">The order's version.</param>
/// <param name="Tiers">Those that stand on each other, bottom first; empty if there are only cupcakes.</param>
/// <param name="Colours">Each mixed in one batch.</param>
/// <param name="Packed">Drum, box, rods, and the room that it takes in each state; null if there are only cupcakes.</param>
/// <param name="Totals">Portions, batter and icing of all; masses, height and balance of the stack, 0 if there is none.</param>
/// <param name="Travels">In which parts, and why; null if there are only cupcakes.</param>
/// <param name="Looks">What a baker should look at; none of it stops anything.</param>
/// <param name="Cautions">Stand beside every sheet.</param>
public sealed record WrittenSheet(
    int Format,
    int Number,
    int Version,
    IReadOnlyList<WrittenTier> Tiers,
    IReadOnlyList<WrittenColour> Colours,
    WrittenPacking? Packed,
    WrittenTotals Totals,
    WrittenTravel? Travels,
    IReadOnlyList<WrittenLook> Looks,
    IReadOnlyList<string> Cautions)
{
    /// <summary>What stands beside the tiers; empty if there are none.</summary>
    public IReadOnlyList<WrittenCupcakes> Cupcakes { get; init; } = [];

    /// <summary>The format that is written now.</summary>
    public const int CurrentFormat = 1;

    /// <summary>The sheet of an order. The order must be right by <see cref="BuildProblems"/>; else throws, naming each problem.</summary>
    public static WrittenSheet Of(Order order, CakeFigures figures, SheetChoices choices) => new SheetWriter(order, BuildSheet.Of(order, figures), choices).Write();
}

/// <summary>What a shop takes for supports, boards and on the road.</summary>
/// <param name="Supports">Cut to length.</param>
/// <param name="Board">Under upper tiers.</param>
/// <param name="Underlay">Under the box in the van.</param>
public sealed record SheetChoices(SupportKind Supports, TierBoard Board, Underlay Underlay)
{
    /// <summary>Wooden dowels, double card, bare floor.</summary>
    public static SheetChoices Usual { get; } = new(SupportKind.Dowel, TierBoard.DoubleCard, Underlay.Card);

    /// <summary>What the shop has set. Its names must be known (<see cref="Stacking.Problems"/>); else throws, naming the one that is not.</summary>
    public static SheetChoices Of(Shop shop) => shop.Stacking is not { } own ? Usual : new SheetChoices(
        Named(SupportKind.All, s => s.Name, own.Supports), Named(TierBoard.All, b => b.Name, own.Board), Named(Underlay.All, u => u.Name, own.Underlay));

    private static T Named<T>(IReadOnlyList<T> all, Func<T, string> name, string wanted) =>
        all.FirstOrDefault(a => name(a) == wanted) ?? throw new ArgumentOutOfRangeException(nameof(wanted), wanted, $"No {typeof(T).Name} is called so.");
}

/// <summary>A batch of cupcakes, millilitres and grams.</summary>
/// <param name="Tins">Of twelve, the last one perhaps not full.</param>
/// <param name="Batter">In one case.</param>
/// <param name="Swirl">On one.</param>
/// <param name="Mass">Of all with their swirls, without boxes.</param>
public sealed record WrittenCupcakes(
    int Count, string Sponge, IReadOnlyList<WrittenSwirl> Colours, int Tins, decimal Batter, decimal AllBatter, decimal Swirl, decimal AllSwirls, decimal Mass, IReadOnlyList<WrittenCupcakeBox> Boxes);

/// <summary>One colour of the swirls of a batch, millilitres, nothing kept back.</summary>
public sealed record WrittenSwirl(string Name, string Swatch, decimal Needed);

/// <summary>So many boxes of one kind; sizes inside.</summary>
public sealed record WrittenCupcakeBox(int Count, int Holds, decimal Wide, decimal Deep, decimal High);

/// <summary>One tier.</summary>
/// <param name="Outline">"round", "slab", "hexagon", "petal", "heart", "half-round" or "sign".</param>
/// <param name="Wide">Bare, from side to side.</param>
/// <param name="Deep">Bare, from front to back.</param>
/// <param name="High">Bare.</param>
/// <param name="Eaten">False for a false tier.</param>
/// <param name="Layers">Thickness of each layer, from the foot up.</param>
/// <param name="FinishedWide">With coats.</param>
/// <param name="FinishedHigh">With coats.</param>
/// <param name="Portions">Dessert, and with coffee.</param>
/// <param name="Board">Its board: from side to side, thickness, size that is bought (null if none is sold so large), whether it is trimmed.</param>
/// <param name="WorkingBoard">From side to side.</param>
/// <param name="Carries">Null if nothing stands on it.</param>
public sealed record WrittenTier(
    int Tier,
    string Outline,
    decimal Wide,
    decimal Deep,
    decimal High,
    bool Eaten,
    string Sponge,
    string Filling,
    IReadOnlyList<decimal> Layers,
    WrittenPans Pans,
    WrittenVolumes Volumes,
    decimal FinishedWide,
    decimal FinishedHigh,
    decimal Mass,
    WrittenPortions Portions,
    WrittenBoard Board,
    decimal WorkingBoard,
    WrittenSupports? Carries,
    WrittenPaste? Paste);

/// <summary>Pans of a tier.</summary>
/// <param name="Batter">In each, of equal ones; else of the highest.</param>
/// <param name="All">Batter in all of them.</param>
/// <param name="HeatingCore">True if each gets one in its middle.</param>
public sealed record WrittenPans(int Count, decimal Depth, decimal Batter, decimal All, bool HeatingCore)
{
    /// <summary>True if each cake is baked as two half-rounds: then two pans make a cake.</summary>
    public bool Halved { get; init; }

    /// <summary>The layers that come out of each cake, from the foot up, 1 and up.</summary>
    public IReadOnlyList<IReadOnlyList<int>> Layers { get; init; } = [];
}

/// <summary>What goes into and onto a tier, millilitres.</summary>
/// <param name="Icing">Buttercream in all, nothing kept back.</param>
/// <param name="Seam">For the joint at its foot, of the part kept back.</param>
public sealed record WrittenVolumes(decimal Sponge, decimal Filling, decimal Ring, decimal Crumb, decimal Coat, decimal Beads, decimal Drip, decimal Icing, decimal Seam);

/// <summary>Portions.</summary>
public sealed record WrittenPortions(int Dessert, int Coffee);

/// <summary>A board or drum.</summary>
public sealed record WrittenBoard(decimal Wide, decimal Deep, decimal Thick, decimal? BoughtAs, bool Trimmed);

/// <summary>Supports in a tier and what they bear.</summary>
/// <param name="Kind">What is cut.</param>
/// <param name="Length">Of all of them, cut from one mark.</param>
/// <param name="Ring">Diameter of the circle on which they stand.</param>
/// <param name="Apart">From one to the next.</param>
/// <param name="Mass">All above, with boards.</param>
/// <param name="Load">All above.</param>
/// <param name="Each">On one support.</param>
/// <param name="Fails">Load at which one support fails.</param>
/// <param name="Punches">Load at which one punches the board above.</param>
/// <param name="Sag">Of the board above; null where nothing is published for it.</param>
/// <param name="LeanOfOne">Degrees of tilt for each millimetre that one side is shorter.</param>
public sealed record WrittenSupports(
    string Kind, int Count, decimal Length, decimal Ring, decimal Apart, decimal Mass, decimal Load, decimal Each, decimal Fails, decimal Punches, decimal? Sag, decimal LeanOfOne);

/// <summary>A sheet of sugar paste.</summary>
public sealed record WrittenPaste(decimal Wide, decimal Deep, decimal Thick, decimal Rolled, decimal OnCake)
{
    /// <summary>Each colour's part of it.</summary>
    public IReadOnlyList<WrittenPasteColour> Colours { get; init; } = [];
}

/// <summary>One colour of a sheet of sugar paste, grams.</summary>
public sealed record WrittenPasteColour(string Name, string Swatch, decimal Rolled, decimal OnCake);

/// <summary>A colour, millilitres; one pot is put by as kept back.</summary>
public sealed record WrittenColour(string Name, string Swatch, decimal Needed, decimal KeptBack, decimal ToMix);

/// <summary>What it stands on and goes into.</summary>
/// <param name="BoxWide">Square inside.</param>
/// <param name="SoldBox">True if such a box is sold for one cake.</param>
public sealed record WrittenPacking(WrittenBoard Drum, decimal BoxWide, decimal BoxHigh, bool SoldBox, int Rods, IReadOnlyList<WrittenRoom> Rooms);

/// <summary>Room on a shelf in one state.</summary>
/// <param name="State">"in work", "on its drum" or "boxed".</param>
/// <param name="Tier">0 for the whole cake.</param>
public sealed record WrittenRoom(string State, int Tier, decimal Wide, decimal Deep, decimal High);

/// <summary>Totals.</summary>
/// <param name="Portions">Of all tiers.</param>
/// <param name="WithoutTop">If the top tier is put by.</param>
/// <param name="Cake">Mass of the tiers.</param>
/// <param name="Mass">With boards and drum.</param>
/// <param name="CentreOfGravity">Above the table.</param>
/// <param name="TipsAt">Pull that tips it, stiff and unslipping.</param>
/// <param name="SlidesAt">Pull at which the box slides.</param>
/// <param name="LiftingIndex">For one person with the boxed cake, once from a bench; null where the box is too wide for the equation.</param>
public sealed record WrittenTotals(
    WrittenPortions Portions,
    WrittenPortions WithoutTop,
    decimal Batter,
    decimal Icing,
    decimal Cake,
    decimal Mass,
    decimal High,
    decimal CentreOfGravity,
    decimal TipsAt,
    decimal SlidesAt,
    decimal? LiftingIndex,
    int Supports,
    bool TwoCarry,
    bool TwoLower);

/// <summary>How it travels.</summary>
/// <param name="Stacked">"in the shop", "in two parts" or "on site".</param>
/// <param name="Parts">Tiers of each part, 1 and up.</param>
public sealed record WrittenTravel(string Stacked, IReadOnlyList<IReadOnlyList<int>> Parts, IReadOnlyList<string> Why)
{
    /// <summary>Each part on its board and in its box.</summary>
    public IReadOnlyList<WrittenPart> Packed { get; init; } = [];
}

/// <summary>A part as it travels.</summary>
/// <param name="Tiers">1 and up.</param>
/// <param name="Board">What it stands on, from side to side.</param>
/// <param name="Mass">With its boards.</param>
/// <param name="BoxWide">Square inside.</param>
/// <param name="SoldBox">True if such a box is sold for one cake.</param>
/// <param name="LiftingIndex">For one person, once from a bench; null where the box is too wide for the equation.</param>
public sealed record WrittenPart(IReadOnlyList<int> Tiers, decimal Board, decimal Mass, decimal High, decimal BoxWide, decimal BoxHigh, bool SoldBox, decimal? LiftingIndex);

/// <summary>Something to look at.</summary>
public sealed record WrittenLook(string Where, string Value, string Sentence, string Try, string Source);
