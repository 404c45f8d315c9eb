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

    /// <summary>The one of that name, or null.</summary>
    public static SliceHabit? Named(string? name) => All.FirstOrDefault(s => s.Name == name);

    private static Slice In(decimal width, decimal depth) => new(Length.FromInches(width), Length.FromInches(depth));
}
