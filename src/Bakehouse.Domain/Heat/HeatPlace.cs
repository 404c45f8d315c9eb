namespace Bakehouse.Domain.Heat;

using static System.FormattableString;

/// <summary>How the air is where a cake stands.</summary>
public enum HeatPlaceKind
{
    /// <summary>A kitchen or a hall.</summary>
    Room,

    /// <summary>A fridge whose air moves by itself.</summary>
    Fridge,

    /// <summary>A fridge with a fan.</summary>
    FanFridge,

    /// <summary>A freezer whose air moves by itself.</summary>
    Freezer,

    /// <summary>A freezer with a fan.</summary>
    FanFreezer,

    /// <summary>A cool dry room.</summary>
    CoolRoom,

    /// <summary>A car or van.</summary>
    Car,
}

/// <summary>Which end of the ranges of everything that is not known for certain.</summary>
public enum HeatSide
{
    /// <summary>All so that it goes soonest.</summary>
    Fast,

    /// <summary>Typical.</summary>
    Typical,

    /// <summary>All so that it goes latest.</summary>
    Slow,
}

/// <summary>
/// A place with its air. Least convection of air that seems still: room and car 3, fridge 3, freezer 4 W/(m²K); moved by a fan: 10 (fan fridges
/// and walk-ins 10 to 20 with radiation, still fridges 5 to 10; from memory, a handbook's apple in a refrigerator has 6). The ends of the ranges take
/// 0.8 and 1.3 of it, and the air off by 0.7 °C. Wire and glass shelves and tables let heat through about as still air does; a bench under something
/// wrapped counts as shut.
/// </summary>
/// <param name="Name">As people call it: "fridge 1".</param>
/// <param name="Celsius">°C of its air, typical.</param>
public sealed record HeatPlace(string Name, HeatPlaceKind Kind, double Celsius)
{
    /// <summary>Relative humidity, %; null if nobody measured it.</summary>
    public double? Humidity { get; init; }

    /// <summary>The shop's own factor on its convection, learned from readings; 1 if there are none.</summary>
    public double Times { get; init; } = 1;

    /// <summary>K that the air may be off either way.</summary>
    public double Off { get; init; } = 0.7;

    /// <summary>A fridge at 4 °C (food agencies advise 0 to 5).</summary>
    public static HeatPlace UsualFridge { get; } = new("fridge 1", HeatPlaceKind.Fridge, 4);

    /// <summary>A freezer at -18 °C.</summary>
    public static HeatPlace UsualFreezer { get; } = new("freezer", HeatPlaceKind.Freezer, -18);

    /// <summary>A kitchen at 21 °C.</summary>
    public static HeatPlace UsualRoom { get; } = new("kitchen", HeatPlaceKind.Room, 21);

    /// <summary>A hall or a kitchen in a month when nobody knows its air: 20 °C in the three cold months, 24 in the three hot ones, 22 between (from memory).</summary>
    /// <param name="month">1 to 12.</param>
    /// <param name="isSouthern">True south of the equator.</param>
    /// <exception cref="ArgumentOutOfRangeException">No such month.</exception>
    public static HeatPlace HallIn(int month, bool isSouthern = false) => month is < 1 or > 12
        ? throw new ArgumentOutOfRangeException(nameof(month), month, "Months are 1 to 12.")
        : new("the hall", HeatPlaceKind.Room, ((month + (isSouthern ? 6 : 0)) % 12) switch { 0 or 1 or 2 => 20, 6 or 7 or 8 => 24, _ => 22 });

    /// <summary>A stay here for <see cref="Conduction"/>, as it typically is: to follow a cake through the places of a plan.</summary>
    public Stay For(double minutes, bool isBoxed = false) =>
        new(minutes, Around(HeatSide.Typical, false, false, isBoxed ? Foods.BoardMaterials.Carton : 0));

    /// <summary>True if a cake there gets cold.</summary>
    public bool IsCold => Kind is HeatPlaceKind.Fridge or HeatPlaceKind.FanFridge or HeatPlaceKind.Freezer or HeatPlaceKind.FanFreezer;

    /// <summary>Everything wrong with it, in one list. A figure that would fit in Fahrenheit is asked about, never turned.</summary>
    public IReadOnlyList<Problem> Problems()
    {
        var (least, most) = Limits(Kind);
        return
        [
            .. Degrees(Name, Celsius, least, most),
            .. Humidity is { } h ? HeatChecks.Between($"{Name}, humidity", h, 0, 100, " %", "Give the relative humidity, 0 to 100 %.") : [],
            .. HeatChecks.Between($"{Name}, factor", Times, 0.2, 5, " times", "Clear its readings and measure again."),
            .. HeatChecks.Between($"{Name}, off by", Off, 0, 5, " °C", "Hang a thermometer in it for a day."),
        ];
    }

    /// <summary>A problem if a temperature lies outside of limits; asks whether Fahrenheit was meant if that would lie inside.</summary>
    internal static IEnumerable<Problem> Degrees(string where, double celsius, double least, double most)
    {
        if (celsius >= least && celsius <= most)
        {
            return [];
        }

        var turned = (celsius - 32) * 5 / 9;
        var fix = turned >= least && turned <= most
            ? Invariant($"Say if you mean Fahrenheit: {celsius:0.#} °F are {turned:0.#} °C.")
            : "Read the thermometer again.";
        return [new Problem(where, Invariant($"{celsius:0.#} °C"), Invariant($"It lies between {least:0.#} and {most:0.#} °C."), fix)];
    }

    /// <summary>What is around a body there.</summary>
    /// <param name="warms">True if the body gets warmer there.</param>
    /// <param name="baseShut">True on a board or a full shelf, false on a rack.</param>
    /// <param name="cover">Resistance of a box, m²K/W.</param>
    internal Surroundings Around(HeatSide side, bool warms, bool baseShut, double cover = 0)
    {
        var (times, off) = side switch
        {
            HeatSide.Fast => (1.3, warms ? Off : -Off),
            HeatSide.Slow => (0.8, warms ? -Off : Off),
            _ => (1.0, 0.0),
        };
        var still = Kind is HeatPlaceKind.Freezer ? 4 : 3;
        return new Surroundings(Celsius + off)
        {
            Blown = Kind is HeatPlaceKind.FanFridge or HeatPlaceKind.FanFreezer ? 10 : null,
            Stirred = still,
            Times = Times * times,
            IsBaseShut = baseShut,
            Cover = cover,
        };
    }

    private static (double Least, double Most) Limits(HeatPlaceKind kind) => kind switch
    {
        HeatPlaceKind.Room => (5, 45),
        HeatPlaceKind.Fridge or HeatPlaceKind.FanFridge => (-2, 15),
        HeatPlaceKind.Freezer or HeatPlaceKind.FanFreezer => (-45, -5),
        HeatPlaceKind.CoolRoom => (5, 22),
        HeatPlaceKind.Car => (-20, 60),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Unknown kind of place."),
    };
}
