namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;

/// <summary>All that is needed to build one tier, or a batch of cupcakes: then the final coat is their swirls.</summary>
/// <param name="Fillings">Layers less one.</param>
/// <param name="FillingHeight">Of one filling.</param>
/// <param name="Filling">In all of them.</param>
/// <param name="Crumb">First coat, on the bare tier.</param>
/// <param name="Colours">The coat that is seen, by colour; for a semi-naked cake that is the first coat.</param>
/// <param name="Icing">Both coats, and the filling if it is buttercream; nothing kept back.</param>
/// <param name="Finished">Coated size: diameter and height.</param>
/// <param name="Board">Its own; the bottom tier stands on the drum.</param>
/// <param name="Mass">With coats, without board.</param>
/// <param name="Supports">Null if it carries nothing.</param>
public sealed record TierBuild(
    CakeTier Tier,
    TierPans Pans,
    int Fillings,
    Length FillingHeight,
    Volume Sponge,
    Volume Filling,
    Volume Crumb,
    Volume Coat,
    IReadOnlyList<ColourVolume> Colours,
    Volume Icing,
    FinishedSize Finished,
    Board Board,
    Board WorkingBoard,
    Mass Mass,
    int Dessert,
    int Coffee,
    Supports? Supports)
{
    /// <summary>Its outline without coats.</summary>
    public Shape Shape => Tier.Shape;

    /// <summary>Each layer of sponge from the foot up; none in a false tier.</summary>
    public IReadOnlyList<Length> Layers => Tier.IsFalse ? []
        : Tier.Special is { LayerHeights: { Count: > 0 } own } ? own : [.. Enumerable.Repeat(LayerHeight, Tier.Layers)];

    /// <summary>The outline of its pans.</summary>
    public Shape Pan => Pans.Halved ? new HalfRound(Shape.Wide) : Shape.BakedIn();

    /// <summary>True if its pans need a heating core: the narrower way counts.</summary>
    public bool HeatingCore => Pans.Count > 0 && Pan.Wide >= TierPans.CoreFrom && Pan.Deep >= TierPans.CoreFrom;

    /// <summary>Portions for a cut.</summary>
    public int Portions(Cut cut) => cut == Cut.Coffee ? Coffee : Dessert;

    /// <summary>Baked sponge that is cut off the slab and in no part of the cake: only of figures and letters.</summary>
    public Volume LeftOver { get; init; }

    /// <summary>Buttercream in the rings that hold the fillings in; the fillings are so much less.</summary>
    public Volume Dam { get; init; }

    /// <summary>Beads around foot and top edge; of the icing.</summary>
    public Volume Beads { get; init; }

    /// <summary>What runs down from the edge: its own mix, ganache as a rule.</summary>
    public Volume Drip { get; init; }

    /// <summary>Icing for the seam at its foot, taken from the part kept back; nothing for the bottom tier.</summary>
    public Volume Seam { get; init; }

    /// <summary>The sheet of sugar paste instead of the final coat; null if it has none.</summary>
    public PasteSheet? Paste { get; init; }

    /// <summary>Its sugar paste by colour; none without paste.</summary>
    public IReadOnlyList<PasteColour> PasteColours => Paste is { } sheet ? PasteColour.Split(sheet, Tier.Colours) : [];

    /// <summary>Free height below it, on pillars or a separator.</summary>
    public Length Separator => Tier.Special?.Separator ?? default;

    /// <summary>True for cupcakes.</summary>
    public bool StandsBeside => Tier.StandsBeside;

    /// <summary>One layer of sponge: the bare height less the fillings, shared out.</summary>
    public Length LayerHeight => (Tier.Height - (FillingHeight * Fillings)) * (1m / Tier.Layers);
}

/// <summary>A coated tier.</summary>
public sealed record FinishedSize(Length Diameter, Length Height);

/// <summary>
/// The whole order: every tier, bottom first, what stands beside them, and the totals. Height, mass and balance are those of the stack; amounts and
/// portions are of all.
/// </summary>
/// <param name="Tiers">All that is made: the stack, bottom first, then what stands beside it.</param>
/// <param name="Drum">Under the stack; null if there is none.</param>
/// <param name="Box">Of the stack; null if there is none.</param>
/// <param name="Rods">Centre rods: one from three tiers up (common practice, no source).</param>
/// <param name="Cake">Mass of the stacked tiers with coats; no boards, supports or decoration.</param>
/// <param name="BoardsAndDrum">Mass of drum and boards.</param>
/// <param name="Height">From the table to the top, with drum and boards.</param>
/// <param name="CentreOfGravity">Above the table, of tiers, boards and drum.</param>
/// <param name="TipsAt">Sideways pull, in multiples of gravity, that tips it over the bottom tier's edge, stiff and unslipping.</param>
public sealed record BuildSheet(
    IReadOnlyList<TierBuild> Tiers,
    CakeFigures Figures,
    IReadOnlyList<ColourBatch> Colours,
    Board? Drum,
    Box? Box,
    int Rods,
    Mass Cake,
    Mass BoardsAndDrum,
    Length Height,
    Length CentreOfGravity,
    double TipsAt)
{
    /// <summary>The tiers that stand on each other, bottom first; empty if there are only cupcakes.</summary>
    public IReadOnlyList<TierBuild> Stack => [.. Tiers.Where(t => !t.StandsBeside)];

    /// <summary>Batches of cupcakes.</summary>
    public IReadOnlyList<TierBuild> Beside => [.. Tiers.Where(t => t.StandsBeside)];

    /// <summary>Boxes of all cupcakes, batch by batch: what differs is not mixed in a box.</summary>
    public IReadOnlyList<CupcakeBox> CupcakeBoxes => [.. Beside.SelectMany(t => CupcakeBox.For(t.Tier.Special!.Cupcakes!.Count))];

    /// <summary>Mass of all cupcakes with their swirls, without boxes.</summary>
    public Mass BesideMass => Beside.Aggregate(Mass.FromGrams(0), (sum, t) => sum + t.Mass);

    /// <summary>Batter of all tiers.</summary>
    public Volume Batter => Volume.Sum(Tiers.Select(t => t.Pans.AllBatter));

    /// <summary>Buttercream to make: both coats of all tiers, fillings of buttercream, and what is kept back of each colour.</summary>
    public Volume Icing => Volume.Sum(Tiers.Select(t => t.Icing)) + Volume.Sum(Colours.Select(c => c.KeptBack));

    /// <summary>Sugar paste of all tiers by colour.</summary>
    public IReadOnlyList<PasteColour> Paste => PasteColour.Together(Tiers.SelectMany(t => t.PasteColours));

    /// <summary>Dessert slices.</summary>
    public int Dessert => Tiers.Sum(t => t.Dessert);

    /// <summary>Slices with coffee.</summary>
    public int Coffee => Tiers.Sum(t => t.Coffee);

    /// <summary>Portions for a cut.</summary>
    public int Portions(Cut cut) => cut == Cut.Coffee ? Coffee : Dessert;

    /// <summary>Supports in all tiers.</summary>
    public int Supports => Tiers.Sum(t => t.Supports?.Count ?? 0);

    /// <summary>A centre rod: from the bottom tier's board to the middle of the top tier; null if there is none.</summary>
    public Length? RodLength => Rods == 0 ? null : Stack.Skip(1).Aggregate(
        Stack[0].Finished.Height - (Stack[^1].Finished.Height * 0.5m), (length, tier) => length + tier.Separator + tier.Board.Thickness + tier.Finished.Height);

    /// <summary>All that is lifted: tiers, boards and drum. Decoration and box come on top.</summary>
    public Mass Mass => Cake + BoardsAndDrum;

    /// <summary>True if two people or a trolley carry it.</summary>
    public bool TwoCarry => Mass >= Figures.TwoCarryFrom;

    /// <summary>True if some upper tier is so heavy that two people lower it onto its supports.</summary>
    public bool TwoLower => Stack.Skip(1).Any(t => t.Mass >= Figures.TwoLowerFrom);

    /// <summary>
    /// The build of an order. It must have a tier or cupcakes, and be right by <see cref="BuildProblems"/>; else throws, naming each problem.
    /// </summary>
    public static BuildSheet Of(Order order, CakeFigures? figures = null) => Of(order.Tiers, order.Finish, figures ?? CakeFigures.Usual);

    /// <summary>
    /// The build of tiers that may still be wrong, while somebody types: null as long as their number or sizes are beyond what an order
    /// may have, or no sheet can be worked out.
    /// </summary>
    public static BuildSheet? Try(IReadOnlyList<CakeTier> tiers, Finish finish, CakeFigures figures) =>
        OrderChecks.IsCounted(tiers) && tiers.All(OrderChecks.HasSize) && BuildProblems.Of(tiers, figures).Count == 0
            ? Of(tiers, finish, figures)
            : null;

    /// <summary>The build of tiers, bottom first, and of cupcakes after them.</summary>
    public static BuildSheet Of(IReadOnlyList<CakeTier> tiers, Finish finish, CakeFigures figures)
    {
        var problems = BuildProblems.Of(tiers, figures);
        return problems.Count == 0
            ? new Builder(tiers, finish, figures).Build()
            : throw new ArgumentException(string.Join(" ", problems), nameof(tiers));
    }
}
