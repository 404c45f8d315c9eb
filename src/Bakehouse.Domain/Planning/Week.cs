namespace Bakehouse.Domain.Planning;

using Bakehouse.Domain.Cakes.Packing;

/// <summary>
/// One planning problem: everything that must be made, by whom, on what, where it may stand meanwhile and when it
/// is promised. Plain data; time is a whole number of elapsed minutes from <see cref="Epoch"/>, and every start,
/// length and gap is a multiple of <see cref="Grain"/>.
/// </summary>
/// <param name="Name">Name of the week; a plan names the week that it is for.</param>
/// <param name="Epoch">The instant of minute 0, UTC.</param>
/// <param name="Zone">IANA zone, for showing wall time only; no rule uses it.</param>
/// <param name="Grain">Minutes between possible starts (5).</param>
/// <param name="Horizon">Minutes covered: every end is at most this.</param>
/// <param name="Now">The present, in minutes.</param>
/// <param name="FreeFrom">Steps that are not fixed start at or after this minute (now and the frozen stretch).</param>
/// <param name="Reference">The plan on the wall, or null.</param>
/// <param name="Repair">True when promises come first and then as few changes as may be (a repair query).</param>
public sealed partial record Week(
    string Name,
    Instant Epoch,
    string Zone,
    int Grain,
    int Horizon,
    int Now,
    int FreeFrom,
    IReadOnlyList<WeekPerson> People,
    IReadOnlyList<Tool> Tools,
    IReadOnlyList<Machine> Machines,
    IReadOnlyList<Family> Families,
    IReadOnlyList<Air> Air,
    IReadOnlyList<Store> Stores,
    IReadOnlyList<Choice> Choices,
    IReadOnlyList<Step> Steps,
    IReadOnlyList<Hold> Holds,
    IReadOnlyList<FoodClock> Clocks,
    IReadOnlyList<Age> Ages,
    IReadOnlyList<WeekOrder> Orders,
    IReadOnlyList<Fixed> Fixed,
    Plan? Reference = null,
    bool Repair = false);

/// <summary>Minutes a &lt;= t &lt; b.</summary>
public readonly record struct Span(int From, int To)
{
    /// <summary>Length in minutes.</summary>
    public int Minutes => To - From;

    /// <summary>True if the two share at least one minute.</summary>
    public bool Meets(Span other) => From < other.To && other.From < To;

    /// <summary>True if <paramref name="inner"/> lies wholly inside.</summary>
    public bool Covers(Span inner) => From <= inner.From && inner.To <= To;
}

/// <summary>Somebody whose hands can be planned.</summary>
/// <param name="Shifts">Spans of work, sorted, apart; breaks are the gaps.</param>
/// <param name="Extra">Spans of possible overtime.</param>
/// <param name="Share">True if hands are to be spread evenly over this person (level 6).</param>
public sealed record WeekPerson(
    string Id, string Name, IReadOnlyList<string> Skills, IReadOnlyList<Span> Shifts, IReadOnlyList<Span> Extra, bool Share);

/// <summary>Identical pieces: turntables, benches, the van.</summary>
public sealed record Tool(string Id, int Count, IReadOnlyList<Span> Down);

/// <summary>What a machine is.</summary>
public enum MachineKind
{
    /// <summary>A mixer's bowl, or the stove top on which fillings are cooked by the pot.</summary>
    Bowl,

    /// <summary>An oven.</summary>
    Oven,
}

/// <summary>A bowl or an oven.</summary>
/// <param name="TurnSame">Minutes between two runs of the same family or heat.</param>
/// <param name="TurnOther">Minutes between two runs of different families or heats.</param>
/// <param name="Clean">The wet clean-down of a bowl, or null if it has none.</param>
/// <param name="Levels">Levels of an oven; 0 for a bowl.</param>
/// <param name="Fits">Pans on one level by their code (<see cref="Cakes.Packing.PanCode"/>: a round by its inches); missing or 0 does not fit.</param>
public sealed record Machine(
    string Id,
    MachineKind Kind,
    int TurnSame,
    int TurnOther,
    IReadOnlyList<Span> Down,
    CleanDown? Clean,
    int Levels,
    IReadOnlyDictionary<int, int> Fits)
{
    /// <summary>One level of an oven as the floor for pans with their air; null where pans are only counted.</summary>
    public Floor? Deck { get; init; }
}

/// <summary>How long a wet clean-down takes and who may do it.</summary>
public sealed record CleanDown(int Minutes, string Skill);

/// <summary>A batter, cream or filling, and how much of it each bowl holds (grams of batter, millilitres of cream).</summary>
public sealed record Family(string Id, IReadOnlyDictionary<string, int> Limit);

/// <summary>Minutes until the air is clear after a mix with this allergen (flour).</summary>
public sealed record Air(string Allergen, int Settle);

/// <summary>Somewhere a tier may stand.</summary>
/// <param name="Kind">fridge, freezer, cool, rack, bench, van, tubs or none.</param>
/// <param name="Cold">True if time here does not count on a food clock.</param>
/// <param name="Clear">Clear height in cm.</param>
public sealed record Store(string Id, string Kind, bool Cold, int Clear, int Places, IReadOnlyList<Span> Down)
{
    /// <summary>The rectangle on which things stand; null where they are only counted.</summary>
    public Floor? Floor { get; init; }
}

/// <summary>A choice that the plan makes once, such as where an order is stacked.</summary>
public sealed record Choice(string Id, IReadOnlyList<string> Options);

/// <summary>The step or hold exists only if the plan takes this option of this choice.</summary>
public sealed record Taken(string Choice, string Option);

/// <summary>A mix: a family and its size in the family's unit.</summary>
public sealed record Mix(string Family, int Size);

/// <summary>A bake: a temperature group and the diameters of its pans in inches.</summary>
public sealed record Bake(string Heat, IReadOnlyList<int> Pans);

/// <summary>One piece of work that is never interrupted.</summary>
/// <param name="Tier">"" for the whole cake.</param>
/// <param name="Skill">Null if it needs no hands.</param>
/// <param name="Count">Different people at once, each with the skill.</param>
/// <param name="Has">Allergens in it.</param>
/// <param name="Avoid">Allergens that the order must be kept from.</param>
/// <param name="If">Null if the step is always present.</param>
public sealed record Step(
    string Id,
    string Order,
    string Tier,
    string Name,
    int Minutes,
    string? Skill,
    int Count,
    IReadOnlyList<string> Tools,
    Mix? Mix,
    Bake? Bake,
    IReadOnlyList<string> Has,
    IReadOnlyList<string> Avoid,
    Taken? If);

/// <summary>Between two steps a thing stands somewhere, from the end of one to the start of the next.</summary>
/// <param name="Height">cm, 0 if it does not matter.</param>
/// <param name="In">Where it may stand, each with its own least and most minutes.</param>
public sealed record Hold(string Id, string From, string To, int Places, int Height, IReadOnlyList<Standing> In, Taken? If)
{
    /// <summary>What stands there, from above, with its gap; null where it is only counted.</summary>
    public Piece? Piece { get; init; }
}

/// <summary>A store in which a hold may stand, with the least and most minutes there.</summary>
public sealed record Standing(string Store, int Least, int Most);

/// <summary>Food safety: minutes out of the cold, summed over steps and holds, never reset by chilling again.</summary>
public sealed record FoodClock(string Id, IReadOnlyList<string> Steps, IReadOnlyList<string> Holds, int Limit);

/// <summary>Age from the end of one step to the start of another; hard is a use-by, soft a wish.</summary>
public sealed record Age(string Id, string From, string To, int Most, bool Hard);

/// <summary>An order: ready when boxed, out when handed over or delivered.</summary>
/// <param name="EdgeIsEnd">True if the end of <paramref name="Out"/> is what is promised, false for its start.</param>
/// <param name="Rank">1 promised, 2 wished.</param>
/// <param name="Buffer">Minutes wanted between ready and out.</param>
public sealed record WeekOrder(
    string Id,
    string Name,
    string Ready,
    string Out,
    bool EdgeIsEnd,
    int From,
    int To,
    int Rank,
    int Buffer,
    IReadOnlyList<Fresh> Fresh)
{
    /// <summary>Its id: the name is a customer's.</summary>
    public override string ToString() => Id;
}

/// <summary>Freshness: at most so many minutes from the end of the step until the cake goes out.</summary>
public sealed record Fresh(string Step, int Most);

/// <summary>What is done, started or pinned: the plan must agree with each field that is given.</summary>
/// <param name="Step">A step, or null if a hold is fixed.</param>
/// <param name="Why">done, started, pinned, assumed or calm.</param>
public sealed record Fixed(
    string? Step, int? Start, IReadOnlyList<string>? People, string? Machine, string? Hold, string? Store, string Why);
