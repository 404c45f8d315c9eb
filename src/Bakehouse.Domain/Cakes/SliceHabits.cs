namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;

/// <summary>A size of slice that goes by a name.</summary>
/// <param name="Name">In the trade's words.</param>
public sealed record SliceHabit(string Name, Slice Slice)
{
    /// <summary>Sizes in use, smallest first (common practice, no source): seen from above, whatever the height.</summary>
    public static IReadOnlyList<SliceHabit> All { get; } =
    [
        new("Fruit cake, finger", In(1, 1)), new("Small finger", In(1, 1.25m)), new("With coffee, wedding", In(1, 2)),
        new("Dessert, party", In(1.5m, 2)), new("Large party", In(2, 2)),
    ];

    private static Slice In(decimal width, decimal depth) => new(Length.FromInches(width), Length.FromInches(depth));
}

/// <summary>Cupcakes: no tier, one portion each.</summary>
/// <param name="Count">1 and up.</param>
public sealed record Cupcakes(int Count)
{
    /// <summary>Batter in one case, two thirds full: 45 mL (common practice, no source).</summary>
    public static Volume BatterEach { get; } = Volume.FromMillilitres(45);

    /// <summary>Icing piped on one: 30 mL (common practice, no source).</summary>
    public static Volume SwirlEach { get; } = Volume.FromMillilitres(30);

    /// <summary>Cases on one tray: 12 (common practice, no source).</summary>
    public const int OnTray = 12;

    /// <summary>All batter.</summary>
    public Volume Batter => BatterEach * Count;

    /// <summary>All icing, nothing kept back.</summary>
    public Volume Icing => SwirlEach * Count;

    /// <summary>Trays in the oven, the last one not full perhaps.</summary>
    public int Trays => (Count + OnTray - 1) / OnTray;

    /// <summary>Mass of all of them, as baked and iced.</summary>
    /// <param name="sponge">Its id; with the figures' share left after baking.</param>
    public Mass Mass(string sponge, CakeFigures figures) =>
        (figures.Sponge(sponge) * (Batter * figures.Rise)) + (figures.IcingDensity * Icing);
}
