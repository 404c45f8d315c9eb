namespace Bakehouse.Domain.Methods;

/// <summary>A cake's crumb, as far as baking and planning need it.</summary>
/// <param name="Id">Short, lower case; stands in orders.</param>
/// <param name="Food">Its colour and pattern in drawings: vanilla, lemon, carrot, chocolate, fruit.</param>
/// <param name="Heat">Oven temperature in degrees Celsius.</param>
/// <param name="BatterDensity">Grams per millilitre of batter.</param>
/// <param name="BatterLife">Minutes from mixed to in the oven, at most.</param>
/// <param name="KeepsDays">Days that it stays good, wrapped and cold: a wish, no safety limit.</param>
/// <param name="Has">What the planner must keep apart from cakes that avoid it. Not a list of allergens: those are not worked out yet.</param>
public sealed record Sponge(
    string Id, string Name, string Food, int Heat, decimal BatterDensity, int BatterLife, int KeepsDays, IReadOnlyList<string> Has)
{
    /// <summary>
    /// Sponges that a new shop starts with. Minutes between mixing and baking: baking powder 30, a foam 5; keeping days
    /// and densities: common practice, no source.
    /// </summary>
    public static IReadOnlyList<Sponge> All { get; } =
    [
        new("vanilla", "Vanilla butter cake", "vanilla", 177, 0.95m, 30, 4, ["wheat", "egg", "milk"]),
        new("lemon", "Lemon butter cake", "lemon", 177, 0.95m, 30, 4, ["wheat", "egg", "milk"]),
        new("chocolate", "Chocolate butter cake", "chocolate", 177, 1.0m, 30, 4, ["wheat", "egg", "milk"]),
        new("carrot", "Carrot and walnut", "carrot", 177, 1.0m, 30, 4, ["wheat", "egg", "nuts"]),
        new("genoise", "Genoise", "vanilla", 177, 0.55m, 5, 2, ["wheat", "egg"]),
    ];

    /// <summary>The sponge of that id, or null.</summary>
    public static Sponge? Of(string id) => All.FirstOrDefault(s => s.Id == id);

    /// <summary>
    /// Minutes in the oven for a pan of that diameter and 5 cm depth: the upper of the usual minutes for butter cake at 177
    /// degrees (6 in 35-40, 8 in 37-42, 9 to 12 in 40-45, 14 in 50-55, 16 in 55-60: a pan maker's published guide), so that
    /// nobody opens the oven too late. Rounded up to 5.
    /// </summary>
    public static int BakeMinutes(int inches) => inches switch
    {
        <= 6 => 40,
        <= 12 => 45,
        <= 14 => 55,
        _ => 60,
    };
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
