namespace Bakehouse.Domain.Methods;

using Bakehouse.Domain.Measures;

/// <summary>Minutes in the oven up to that height baked and that diameter.</summary>
public sealed record BakeTime(decimal ToCentimetres, int ToInches, int Minutes);

/// <summary>A cake's crumb, as far as baking and planning need it.</summary>
/// <param name="Id">Short, lower case; stands in orders.</param>
/// <param name="Food">Its colour and pattern in drawings: vanilla, lemon, carrot, chocolate, fruit.</param>
/// <param name="Heat">Oven temperature in degrees Celsius.</param>
/// <param name="BatterDensity">Grams per millilitre of batter.</param>
/// <param name="BatterLife">Minutes from mixed to in the oven, at most.</param>
/// <param name="KeepsDays">Days that it stays good, wrapped and cold: a wish, no safety limit.</param>
/// <param name="Bakes">Minutes in the oven, thin before deep, small before wide.</param>
/// <param name="Has">What the planner must keep apart from cakes that avoid it. Not a list of allergens: those come from the recipes and the labels of the packs.</param>
public sealed record Sponge(
    string Id, string Name, string Food, int Heat, decimal BatterDensity, int BatterLife, int KeepsDays, IReadOnlyList<BakeTime> Bakes, IReadOnlyList<string> Has)
{
    /// <summary>
    /// Butter cake at 177 degrees: the upper of the usual minutes, so that nobody opens the oven too early. Pans of 2 in: 6 in 35-40, 8 in
    /// 37-42, 9 to 12 in 40-45, 14 in 50-55, 16 in 55-60; of 3 in: 6 in 35-40, 8 in 55-60, 9 and 10 in 65-75, 12 in 60-85, 14 and 16 in
    /// 75-85 (a pan maker's published guide). Thin layers, any size: 18-25 (common practice, no source).
    /// </summary>
    private static readonly BakeTime[] Butter =
    [
        new(3.2m, 18, 25),
        new(5.2m, 6, 40), new(5.2m, 8, 42), new(5.2m, 12, 45), new(5.2m, 14, 55), new(5.2m, 18, 60),
        new(25, 6, 40), new(25, 8, 60), new(25, 10, 75), new(25, 18, 85),
    ];

    /// <summary>A foam: 25-40 (common practice, no source).</summary>
    private static readonly BakeTime[] Foam = [new(25, 18, 40)];

    /// <summary>
    /// Sponges that a new shop starts with. Minutes between mixing and baking: baking powder 30, a foam 5; keeping days
    /// and densities: common practice, no source.
    /// </summary>
    public static IReadOnlyList<Sponge> All { get; } =
    [
        new("vanilla", "Vanilla butter cake", "vanilla", 177, 0.95m, 30, 4, Butter, ["wheat", "egg", "milk"]),
        new("lemon", "Lemon butter cake", "lemon", 177, 0.95m, 30, 4, Butter, ["wheat", "egg", "milk"]),
        new("chocolate", "Chocolate butter cake", "chocolate", 177, 1.0m, 30, 4, Butter, ["wheat", "egg", "milk"]),
        new("carrot", "Carrot and walnut", "carrot", 177, 1.0m, 30, 4, Butter, ["wheat", "egg", "nuts"]),
        new("genoise", "Genoise", "vanilla", 177, 0.55m, 5, 2, Foam, ["wheat", "egg"]),
    ];

    /// <summary>The sponge of that id, or null.</summary>
    public static Sponge? Of(string id) => All.FirstOrDefault(s => s.Id == id);

    /// <summary>Minutes in the oven for a pan of that diameter that bakes so high: the first row that is deep and wide enough.</summary>
    public int BakeMinutes(int inches, Length height) =>
        (Bakes.FirstOrDefault(b => height.Centimetres <= b.ToCentimetres && inches <= b.ToInches) ?? Bakes[^1]).Minutes;
}

/// <summary>What stands between the layers.</summary>
/// <param name="Cooked">True if it is cooked in the shop (a pot on the stove) before it is used.</param>
/// <param name="SettleMinutes">Least minutes cold between filling and the crumb coat.</param>
/// <param name="OnClock">True if its time out of the cold is counted. Local rules and the owner's tests decide.</param>
/// <param name="UseByDays">Days from filling to handover, at most; null without a limit of its own.</param>
/// <param name="Has">What the planner must keep apart from cakes that avoid it.</param>
public sealed record Filling(
    string Id, string Name, bool Cooked, int SettleMinutes, bool OnClock, int? UseByDays, IReadOnlyList<string> Has)
{
    /// <summary>
    /// Fillings that a new shop starts with. Settling: 30 min for buttercream on cold layers, 120 for soft fillings; lives:
    /// curd 4 days, ganache 7, cream cheese 3 (common practice, no source). Curd and cream cheese are always counted, ganache until
    /// the owner has answered.
    /// </summary>
    public static IReadOnlyList<Filling> All { get; } =
    [
        new("buttercream", "Buttercream", false, 30, false, null, ["milk"]),
        new("raspberry-jam", "Raspberry jam", false, 30, false, null, []),
        new("lemon-curd", "Lemon curd", true, 120, true, 4, ["egg", "milk"]),
        new("ganache", "Chocolate ganache", true, 120, true, 7, ["milk"]),
        new("cream-cheese", "Cream cheese", false, 120, true, 3, ["milk"]),
    ];

    /// <summary>The filling of that id, or null.</summary>
    public static Filling? Of(string id) => All.FirstOrDefault(f => f.Id == id);
}
