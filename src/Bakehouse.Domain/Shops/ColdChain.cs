namespace Bakehouse.Domain.Shops;

using Bakehouse.Domain.FoodClocks;
using Bakehouse.Domain.Heat;

/// <summary>
/// How warm the kitchen and its cold places are, whose food rules count, and what the owner says of fillings. A shop that never said any of it waits by
/// the method's own minutes.
/// </summary>
/// <param name="Kitchen">°C of its air, typical.</param>
/// <param name="Humidity">Relative humidity of the kitchen, %; null if nobody measured it.</param>
/// <param name="Units">Fridges, freezers and cool rooms by name; one that has no row is taken as usual.</param>
/// <param name="Rules">Id of the <see cref="FoodRules"/> that the owner goes by.</param>
/// <param name="Families">Her answers for fillings and icings.</param>
public sealed record ColdChain(double Kitchen, double? Humidity, IReadOnlyList<ColdUnit> Units, string Rules, IReadOnlyList<FamilyAnswer> Families)
{
    /// <summary>°C of a cool dry room: 17 (16 to 18, common practice, no source).</summary>
    public const double CoolRoom = 17;

    /// <summary>How well the shop's cakes conduct, by so many times what is usual; learned from readings.</summary>
    public double CakeTimes { get; init; } = 1;

    /// <summary>Readings that the factors were learned from, oldest first.</summary>
    public IReadOnlyList<KeptReading> Readings { get; init; } = [];

    /// <summary>The food rules that count.</summary>
    public FoodRules FoodRules => FoodRules.Of(Rules) ?? throw new InvalidOperationException($"No food rules have the id {Rules}.");

    /// <summary>The kitchen as a place.</summary>
    public HeatPlace Room => new("the kitchen", HeatPlaceKind.Room, Kitchen) { Humidity = Humidity };

    /// <summary>A kitchen at 21 °C, fridges at 4, freezers at -18; the rules of the country, or the strictest that are known.</summary>
    /// <param name="country">ISO 3166 code.</param>
    public static ColdChain Usual(string country) => new(HeatPlace.UsualRoom.Celsius, null, [], RulesIn(country), []);

    /// <summary>Id of the rules usually gone by in a country; where none are known the strictest of all, until the owner chooses.</summary>
    public static string RulesIn(string country) => country switch
    {
        "US" => FoodRules.UnitedStates.Id,
        "GB" => FoodRules.UnitedKingdom.Id,
        "AU" or "NZ" => FoodRules.AustraliaNewZealand.Id,
        _ => FoodRules.Canada.Id,
    };

    /// <summary>What a unit of that kind has if nobody measured it, °C.</summary>
    public static double UsualOf(ShelfKind kind) => kind switch
    {
        ShelfKind.Fridge => HeatPlace.UsualFridge.Celsius,
        ShelfKind.Freezer => HeatPlace.UsualFreezer.Celsius,
        ShelfKind.CoolRoom => CoolRoom,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Unknown kind of shelf."),
    };

    /// <summary>The unit that a shelf is in, as a place.</summary>
    public HeatPlace PlaceOf(Shelf shelf)
    {
        var unit = Units.FirstOrDefault(u => u.Unit == shelf.Unit) ?? new ColdUnit(shelf.Unit, UsualOf(shelf.Kind));
        return new HeatPlace(shelf.Unit, KindOf(shelf.Kind, unit.HasFan), unit.Celsius) { Times = unit.Times };
    }

    /// <summary>Everything wrong with it in this shop, in one list.</summary>
    public IReadOnlyList<Problem> Problems(Shop shop) =>
    [
        .. Room.Problems(),
        .. shop.Shelves.DistinctBy(s => s.Unit, StringComparer.Ordinal).SelectMany(s => PlaceOf(s).Problems().Select(p => p with { Where = $"unit {s.Unit}" })),
        .. ShopChecks.Twice("unit", Units.Select(u => u.Unit)),
        .. FoodRules.Of(Rules) is not null ? [] : new[] { new Problem("food rules", Problem.Shown(Rules), "Nobody knows these rules.", $"Use one of {string.Join(", ", FoodRules.All.Select(r => r.Id))}.") },
        .. FillingFamily.Problems(Families),
        .. HeatChecks.Between("cakes, factor", CakeTimes, 0.2, 5, " times", "Clear the readings and measure again."),
    ];

    /// <summary>True if the time of a filling out of the cold is counted; one that belongs to no family that is known is.</summary>
    public bool IsOnClock(string filling) => FillingFamily.OfFilling(filling)?.IsOnClock(Families) ?? true;

    private static HeatPlaceKind KindOf(ShelfKind kind, bool hasFan) => kind switch
    {
        ShelfKind.Fridge => hasFan ? HeatPlaceKind.FanFridge : HeatPlaceKind.Fridge,
        ShelfKind.Freezer => hasFan ? HeatPlaceKind.FanFreezer : HeatPlaceKind.Freezer,
        ShelfKind.CoolRoom => HeatPlaceKind.CoolRoom,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Unknown kind of shelf."),
    };
}

/// <summary>A fridge, freezer or cool room.</summary>
/// <param name="Unit">As its shelves name it: "Fridge 1".</param>
/// <param name="Celsius">°C of its air, by a thermometer that hung in it for a day.</param>
/// <param name="HasFan">True if a fan moves its air.</param>
public sealed record ColdUnit(string Unit, double Celsius, bool HasFan = false)
{
    /// <summary>Its convection, by so many times what is usual; learned from readings.</summary>
    public double Times { get; init; } = 1;
}
