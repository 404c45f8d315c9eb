namespace Bakehouse.Domain.Structure;

using Bakehouse.Domain.Measures;

/// <summary>A board as it lies on supports.</summary>
/// <param name="Name">As it is called in the shop.</param>
/// <param name="Thickness">Least and most in use (common practice, no source).</param>
/// <param name="Punching">Stress under the end of a support at which it gives way, MPa.</param>
/// <param name="Material">For its sag; null where nothing is published.</param>
/// <param name="Source">Of the stress.</param>
public sealed record TierBoard(string Name, (Length Least, Length Most) Thickness, double Punching, Material? Material, string Source)
{
    /// <summary>Single card, corrugated: 1.5 to 2 mm; its flat crush 0.25 MPa is from memory.</summary>
    public static TierBoard Card { get; } = new("Card", Mm(1.5m, 2), FlatCrush, null, Remembered);

    /// <summary>Double card: 2.5 to 5 mm.</summary>
    public static TierBoard DoubleCard { get; } = new("Double card", Mm(2.5m, 5), FlatCrush, null, Remembered);

    /// <summary>Hardboard: 4 to 6 mm; it is crushed at what fibreboard bears.</summary>
    public static TierBoard Hardboard { get; } = new("Hardboard", Mm(4, 6), 10, Material.Hardboard, Material.Fibreboard.Source);

    /// <summary>Plywood: 9 mm; across the grain of birch.</summary>
    public static TierBoard Plywood { get; } = new("Plywood", Mm(9, 9), Material.PaperBirch.Across!.Value, null, Material.PaperBirch.Source);

    /// <summary>Drum: 12 mm (thickness from memory); layers of card.</summary>
    public static TierBoard Drum { get; } = new("Drum", Mm(12, 12), FlatCrush, null, Remembered);

    /// <summary>All of them, the thinnest first.</summary>
    public static IReadOnlyList<TierBoard> All { get; } = [Card, DoubleCard, Hardboard, Plywood, Drum];

    /// <summary>Flat crush of corrugated card, MPa: 0.25 (0.2 to 0.3, from memory).</summary>
    public const double FlatCrush = 0.25;

    private const string Remembered = "Flat crush of corrugated card, from memory";

    private static (Length, Length) Mm(decimal least, decimal most) => (Length.FromMillimetres(least), Length.FromMillimetres(most));
}
