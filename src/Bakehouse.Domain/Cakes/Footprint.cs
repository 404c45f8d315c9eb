namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;

/// <summary>In which state a cake or a part of it stands somewhere.</summary>
public enum StandsAs
{
    /// <summary>A tier on its working board.</summary>
    InWork,

    /// <summary>Alone or stacked on the drum.</summary>
    OnDrum,

    /// <summary>In its box.</summary>
    Boxed,
}

/// <summary>The room that something takes on a shelf, with the gap that hands need.</summary>
/// <param name="Tier">Counted from the bottom, 0 and up; null for the whole cake.</param>
/// <param name="Wide">From side to side.</param>
/// <param name="Deep">From front to back.</param>
/// <param name="Height">With board and room to lift it.</param>
public sealed record Footprint(StandsAs As, int? Tier, Length Wide, Length Deep, Length Height, bool IsRound)
{
    /// <summary>Between two boards: 2 cm (common practice, no source).</summary>
    public static Length Gap { get; } = Length.FromCentimetres(2);

    /// <summary>Over it, to lift it out: 3 cm (common practice, no source).</summary>
    public static Length ToLift { get; } = Length.FromCentimetres(3);

    /// <summary>The walls of a box and the gap around it: 4 cm (common practice, no source).</summary>
    public static Length BoxWalls { get; } = Length.FromCentimetres(4);

    /// <summary>Every state of a cake: each tier in work, the whole on its drum, the whole in its box; nothing if nothing is stacked.</summary>
    public static IReadOnlyList<Footprint> Of(BuildSheet sheet) =>
    [
        .. sheet.Stack.Select((t, i) => On(StandsAs.InWork, i, t.WorkingBoard, t.Finished.Height + t.WorkingBoard.Thickness)),
        .. sheet is { Drum: { } drum, Box: { } box }
            ? [On(StandsAs.OnDrum, null, drum, sheet.Height), new(StandsAs.Boxed, null, drum.Shape.Wide + BoxWalls, drum.Shape.Deep + BoxWalls, box.Height, false)]
            : Array.Empty<Footprint>(),
    ];

    private static Footprint On(StandsAs state, int? tier, Board board, Length height) =>
        new(state, tier, board.Shape.Wide + Gap, board.Shape.Deep + Gap, height + ToLift, board.Shape is Round);
}
