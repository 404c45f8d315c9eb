namespace Bakehouse.Domain.Structure;

using Bakehouse.Domain.Measures;

/// <summary>A kind of support that is cut to length.</summary>
/// <param name="Across">Outside diameter.</param>
/// <param name="Wall">Of a tube; null for a solid one.</param>
public sealed record SupportKind(string Name, Length Across, Length? Wall, Material Material)
{
    /// <summary>Wooden dowel of 1/4 in.</summary>
    public static SupportKind Dowel { get; } = new("Wooden dowel", Length.FromInches(0.25m), null, Material.PaperBirch);

    /// <summary>Wide plastic tube of 3/4 in with a wall of 1 mm (wall from memory).</summary>
    public static SupportKind WideTube { get; } = new("Wide plastic tube", Length.FromInches(0.75m), Length.FromMillimetres(1), Material.Polypropylene);

    /// <summary>Thick straw of 12 mm with a wall of 0.3 mm: only for light stacks, 6 on 8 in (common practice, no source).</summary>
    public static SupportKind Straw { get; } = new("Thick straw", Length.FromMillimetres(12), Length.FromMillimetres(0.3m), Material.Polypropylene);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<SupportKind> All { get; } = [Dowel, WideTube, Straw];

    /// <summary>How one is called among others: "dowel", "tube", "straw".</summary>
    public string Word => Name[(Name.LastIndexOf(' ') + 1)..];

    private double Outside => (double)Across.Millimetres;

    private double Inside => Wall is { } wall ? (double)(Across.Millimetres - (2 * wall.Millimetres)) : 0;

    /// <summary>The load at which one of that length buckles or is crushed, newtons; a tube may dent before.</summary>
    public double Carries(Length length) => Column.Carries(Outside, Inside, (double)length.Millimetres, Material, EndHold.Pinned);

    /// <summary>True if it would buckle before it is crushed.</summary>
    public bool IsSlender(Length length) => Column.IsSlender(Outside, Inside, (double)length.Millimetres, Material, EndHold.Pinned);

    /// <summary>The load at which one punches a board, newtons. A tube is taken by its whole end: its rim cuts earlier into soft card.</summary>
    public double Punches(TierBoard board) => Column.Punches(Outside, board.Punching);
}
