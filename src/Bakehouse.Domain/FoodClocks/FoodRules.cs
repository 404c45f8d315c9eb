namespace Bakehouse.Domain.FoodClocks;

/// <summary>What happens to a cake over a stretch of time.</summary>
public enum SpellKind
{
    /// <summary>Somebody works on it.</summary>
    Preparation,

    /// <summary>It stands cold.</summary>
    Cold,

    /// <summary>It stands out for show or service.</summary>
    Display,

    /// <summary>It is carried or driven.</summary>
    Transport,

    /// <summary>It is with whoever ordered it.</summary>
    Handed,

    /// <summary>It stands in a fridge that got warm.</summary>
    Outage,
}

/// <summary>How the spells are counted.</summary>
public enum ClockCount
{
    /// <summary>From the first on, whatever happens later: chilling again stops nothing.</summary>
    FromTheFirst,

    /// <summary>All added up; cold between them does not count.</summary>
    AddedUp,

    /// <summary>One period only: whatever went back into the cold may not come out again for it.</summary>
    OnePeriod,
}

/// <summary>Cooling what was hot: down to a temperature within minutes, from the start of the first stage or of its own.</summary>
/// <param name="From">°C.</param>
/// <param name="To">°C.</param>
/// <param name="Minutes">At most.</param>
/// <param name="IsTotal">True if the minutes count from the first stage's start.</param>
public sealed record CoolingStage(double From, double To, int Minutes, bool IsTotal);

/// <summary>
/// The rules of a place as data. They say what a rule says, never that a cake may be eaten: local rules and licensed practice decide.
/// </summary>
/// <param name="Id">Short, lower case; kept with the shop.</param>
/// <param name="ColdLine">°C: at or under it nothing counts.</param>
/// <param name="HotLine">°C: at or above it nothing counts.</param>
/// <param name="LimitMinutes">Out of the cold, at most.</param>
/// <param name="IsLimitOut">True if the limit itself is too long already.</param>
/// <param name="Counts">Spells that count while it is over the cold line. What stands in a fridge that is over it always does.</param>
/// <param name="Source">Where it is written.</param>
public sealed record FoodRules(
    string Id, string Name, double ColdLine, double HotLine, int LimitMinutes, bool IsLimitOut, ClockCount Count, IReadOnlyList<SpellKind> Counts, string Source)
{
    /// <summary>Minutes allowed instead if it is watched and its warmest part never gets above <see cref="LongNeverAbove"/>; null for none.</summary>
    public int? LongLimitMinutes { get; init; }

    /// <summary>°C.</summary>
    public double LongNeverAbove { get; init; }

    /// <summary>°C that it may have when it leaves the cold; null if the rule does not say.</summary>
    public double? StartAtMost { get; init; }

    /// <summary>°C that it may have if it was cut or opened just then and never gets above it; null for no such exception.</summary>
    public double? JustCutAtMost { get; init; }

    /// <summary>From so many minutes on it does not go back into the cold; null if the rule does not say.</summary>
    public int? NoReturnFrom { get; init; }

    /// <summary>°C of the fridge that is advised, if it is under the line; null if not.</summary>
    public double? AdvisedFridge { get; init; }

    /// <summary>Minutes that what is kept hot may be under the hot line, once; null if the rule does not say.</summary>
    public int? HotMinutes { get; init; }

    /// <summary>Cooling of what was cooked; empty where the rule gives no figures.</summary>
    public IReadOnlyList<CoolingStage> Cooling { get; init; } = [];

    /// <summary>Minutes for what was made from ingredients at room temperature to come to the cold line; null if the rule does not say.</summary>
    public int? FromRoomMinutes { get; init; }

    /// <summary>Days that it keeps cold, the day it is made being the first; null if the rule does not say.</summary>
    public int? DateMarkDays { get; init; }

    /// <summary>True if a spell counts while it is over the cold line.</summary>
    public bool Includes(SpellKind kind) => kind is SpellKind.Cold or SpellKind.Outage || Counts.Contains(kind);

    /// <summary>Stands beside every figure.</summary>
    public const string Caution = "Local rules and licensed practice decide.";

    /// <summary>
    /// FDA Food Code 2022 (read in adopted state codes): 3-501.14 cooling, .16 holding, .17 date marking, .19 time instead of temperature.
    /// Preparation is excepted.
    /// </summary>
    public static FoodRules UnitedStates { get; } = new(
        "us", "US Food Code", 5, 57, 240, false, ClockCount.FromTheFirst, [SpellKind.Display, SpellKind.Transport, SpellKind.Handed], "FDA Food Code 2022, 3-501.14 to .19")
    {
        LongLimitMinutes = 360, LongNeverAbove = 21, StartAtMost = 5, JustCutAtMost = 21,
        Cooling = [new(57, 21, 120, true), new(57, 5, 360, true)], FromRoomMinutes = 240, DateMarkDays = 7,
    };

    /// <summary>
    /// Food Safety and Hygiene (England) Regulations 2013, schedule 4 (wording of paragraph 5 read in the Northern Ireland instrument of 2006):
    /// 8 °C, one period for service or display of less than 4 h. Carrying and handling are excused as long as food safety allows.
    /// </summary>
    public static FoodRules UnitedKingdom { get; } = new(
        "uk", "UK 8 °C", 8, 63, 240, true, ClockCount.OnePeriod, [SpellKind.Display, SpellKind.Handed], "Food Safety and Hygiene (England) Regulations 2013, schedule 4")
    {
        AdvisedFridge = 5, HotMinutes = 120,
    };

    /// <summary>Food Standards Australia New Zealand, the 2-hour/4-hour rule and standard 3.2.2 (in part from memory): all time between 5 and 60 °C adds up.</summary>
    public static FoodRules AustraliaNewZealand { get; } = new(
        "au", "Australia and New Zealand 2 h / 4 h", 5, 60, 240, false, ClockCount.AddedUp,
        [SpellKind.Preparation, SpellKind.Display, SpellKind.Transport, SpellKind.Handed], "FSANZ 2-hour/4-hour rule; standard 3.2.2")
    {
        NoReturnFrom = 120, Cooling = [new(60, 21, 120, true), new(21, 5, 240, false)],
    };

    /// <summary>Ontario health units: 4 to 60 °C, two hours at most; cooling in two stages (second stage from memory).</summary>
    public static FoodRules Canada { get; } = new(
        "ca", "Canada 4 to 60 °C", 4, 60, 120, false, ClockCount.AddedUp,
        [SpellKind.Preparation, SpellKind.Display, SpellKind.Transport, SpellKind.Handed], "Eastern Ontario Health Unit; Chatham-Kent Public Health")
    {
        Cooling = [new(60, 20, 120, true), new(20, 4, 240, false)],
    };

    /// <summary>All of them: a shop chooses one.</summary>
    public static IReadOnlyList<FoodRules> All { get; } = [UnitedStates, UnitedKingdom, AustraliaNewZealand, Canada];

    /// <summary>The rules of that id, or null.</summary>
    public static FoodRules? Of(string id) => All.FirstOrDefault(r => r.Id == id);
}
