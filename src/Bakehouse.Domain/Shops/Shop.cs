namespace Bakehouse.Domain.Shops;

using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Prices;

/// <summary>The bakery itself: where it is, when it opens, who works there and on what. Edited as a whole, kept by version.</summary>
/// <param name="Version">1 and up; each saved change adds one.</param>
/// <param name="Zone">IANA zone name, e.g. Europe/London. All promises are local times here.</param>
/// <param name="Hours">When customers may collect; a weekday without a row is shut.</param>
/// <param name="Closed">Single days on which the shop is shut.</param>
/// <param name="RackPlaces">Places on cooling racks, one layer each.</param>
/// <param name="BenchPlaces">Places to work or set down a cake.</param>
/// <param name="Settings">The shop's own habits.</param>
/// <param name="IsSample">True for the invented sample bakery; the bar then says so.</param>
public sealed record Shop(
    int Version,
    string Name,
    string Zone,
    IReadOnlyList<OpeningHours> Hours,
    IReadOnlyList<LocalDate> Closed,
    IReadOnlyList<Person> People,
    IReadOnlyList<Oven> Ovens,
    IReadOnlyList<Bowl> Bowls,
    IReadOnlyList<Shelf> Shelves,
    int RackPlaces,
    int BenchPlaces,
    int Turntables,
    ShopSettings Settings,
    bool IsSample = false)
{
    /// <summary>Cakes that it sells by name; the counter takes one in a tap.</summary>
    public IReadOnlyList<HouseCake> HouseCakes { get; init; } = [];

    /// <summary>Which law counts, the owner's rules about allergens, and what is said about the kitchen.</summary>
    public AllergenRules Allergens { get; init; } = AllergenRules.Usual;

    /// <summary>What its hours, things and cakes cost; null as long as nobody has said anything.</summary>
    public ShopPrices? Prices { get; init; }

    /// <summary>Limits that the owner has set herself; null for none.</summary>
    public OwnLimits? Limits { get; init; }

    /// <summary>What it stacks its cakes with; null for the usual.</summary>
    public Stacking? Stacking { get; init; }

    /// <summary>How warm its places are, and whose food rules count; null as long as nobody has said anything.</summary>
    public ColdChain? Cold { get; init; }

    /// <summary>True if the time of that filling out of the cold is counted here.</summary>
    public bool IsOnClock(Methods.Filling filling) => Cold?.IsOnClock(filling.Id) ?? filling.OnClock;

    /// <summary>Most minutes out of the cold, from filling to handover: the shop's own figure, and never more than its food rules give.</summary>
    public int MostOut => Math.Min(Settings.FoodClockMinutes, Cold?.FoodRules.LimitMinutes ?? Settings.FoodClockMinutes);

    /// <summary>Its own figures for the build; null for the usual.</summary>
    public ShopFigures? Figures { get; init; }

    /// <summary>The rows of opening hours of that day; empty when shut.</summary>
    public IReadOnlyList<OpeningHours> HoursOn(LocalDate day) =>
        Closed.Contains(day) ? [] : [.. Hours.Where(h => h.Day == day.DayOfWeek)];

    /// <summary>True if somebody is at work then, by the shifts and the last hour of hands.</summary>
    public bool WorksAt(LocalDateTime at) => !Closed.Contains(at.Date)
        && People.Any(p => Worked(p.Shifts).Any(s => s.Day == at.DayOfWeek && s.From <= at.TimeOfDay && at.TimeOfDay < s.To));

    /// <summary>Those hours of somebody's week, without what lies after the hour that nobody works past.</summary>
    public IEnumerable<Shift> Worked(IEnumerable<Shift> hours) => Settings.LastHands is not { } last
        ? hours
        : hours.Where(s => s.From < last).Select(s => s.To > last ? s with { To = last } : s);

    /// <summary>The person, or null.</summary>
    public Person? PersonOf(string id) => People.FirstOrDefault(p => p.Id == id);
}

/// <summary>Open on a weekday, local time, both ends included.</summary>
public sealed record OpeningHours(IsoDayOfWeek Day, LocalTime From, LocalTime To);

/// <summary>What somebody is in the shop; it decides what they may do here.</summary>
public enum Role
{
    /// <summary>May do everything.</summary>
    Owner,

    /// <summary>Bakes, fills, boxes.</summary>
    Baker,

    /// <summary>Coats and decorates.</summary>
    Decorator,

    /// <summary>Takes orders and hands over.</summary>
    Counter,

    /// <summary>Delivers.</summary>
    Driver,
}

/// <summary>What hands can do. The words are the trade's and the planner's.</summary>
public static class Skills
{
    /// <summary>Weigh, mix, bake, turn out, cook fillings.</summary>
    public const string Bake = "bake";

    /// <summary>Fill, crumb coat, final coat, dowel, stack.</summary>
    public const string Coat = "coat";

    /// <summary>Decorate.</summary>
    public const string Decorate = "decorate";

    /// <summary>Wrap, label, box.</summary>
    public const string Box = "box";

    /// <summary>Talk with customers, hand over.</summary>
    public const string Counter = "counter";

    /// <summary>Wet clean-down.</summary>
    public const string Clean = "clean";

    /// <summary>Drive.</summary>
    public const string Drive = "drive";

    /// <summary>All of them, in the order in which a cake meets them.</summary>
    public static IReadOnlyList<string> All { get; } = [Bake, Coat, Decorate, Box, Counter, Clean, Drive];
}

/// <summary>Somebody who works here.</summary>
/// <param name="Id">Short, lower case, letters and digits, never reused.</param>
/// <param name="Picture">A drawn sign beside the name: whisk, star, leaf, bell, spoon, cup, rose, key.</param>
/// <param name="Skills">From <see cref="Shops.Skills"/>.</param>
/// <param name="Shifts">Weekly hours; a break is the gap between two rows of a day.</param>
/// <param name="Overtime">Weekly hours in which this person may be asked to stay.</param>
public sealed record Person(
    string Id,
    string Name,
    string Picture,
    Role Role,
    IReadOnlyList<string> Skills,
    IReadOnlyList<Shift> Shifts,
    IReadOnlyList<Shift> Overtime);

/// <summary>A stretch of work on a weekday, local time, from before to.</summary>
public sealed record Shift(IsoDayOfWeek Day, LocalTime From, LocalTime To);

/// <summary>How an oven heats.</summary>
public enum OvenKind
{
    /// <summary>Fan: all levels at once.</summary>
    Fan,

    /// <summary>Static: one level at a time.</summary>
    Static,

    /// <summary>Deck: each deck by itself.</summary>
    Deck,
}

/// <summary>An oven.</summary>
/// <param name="Decks">Levels or decks in it.</param>
/// <param name="Width">Inside width of one level.</param>
/// <param name="Depth">Inside depth of one level.</param>
public sealed record Oven(string Id, string Name, OvenKind Kind, int Decks, Length Width, Length Depth)
{
    /// <summary>Levels baked on at once: a static oven bakes on one.</summary>
    public int Levels => Kind == OvenKind.Static ? 1 : Decks;
}

/// <summary>A mixer's bowl.</summary>
/// <param name="Litres">Size of the bowl, litres.</param>
/// <param name="Batter">Most batter it mixes at once.</param>
/// <param name="CreamMillilitres">Most buttercream it whips at once, mL.</param>
public sealed record Bowl(string Id, string Name, decimal Litres, Mass Batter, int CreamMillilitres);

/// <summary>What keeps a shelf cold.</summary>
public enum ShelfKind
{
    /// <summary>A fridge.</summary>
    Fridge,

    /// <summary>A freezer.</summary>
    Freezer,

    /// <summary>A cool dry room, 16 to 18 degrees.</summary>
    CoolRoom,
}

/// <summary>One shelf of a fridge, freezer or cool room.</summary>
/// <param name="Unit">The cupboard that it is in, as people call it: "Fridge 1".</param>
/// <param name="Level">Counted from below, 1 and up.</param>
/// <param name="Clear">Clear height above it.</param>
/// <param name="PullsOut">True if the owner says that it can be pulled out, so that the one below it has more height.</param>
public sealed record Shelf(string Id, ShelfKind Kind, string Unit, int Level, Length Width, Length Depth, Length Clear, bool PullsOut = false);

/// <summary>The shop's own habits, each with a default from common practice.</summary>
/// <param name="Inches">True if tiers are named in inches, false for centimetres.</param>
/// <param name="Clock24">True for 14:00, false for 2:00 pm.</param>
/// <param name="BufferMinutes">Wanted between boxed and handed over; under it a cake is tight (30).</param>
/// <param name="FrozenMinutes">Work that starts within this time never moves by itself (120).</param>
/// <param name="PlanDays">A minute plan is made for pickups up to so many days ahead (21).</param>
/// <param name="NoticeHours">Least time between taking an order and its handover (24).</param>
/// <param name="OnDrum">True if the bottom tier is built on its drum from the first layer.</param>
/// <param name="Country">ISO 3166 code, for reading telephone numbers without a prefix.</param>
/// <param name="TwoPeopleFromKg">From this mass a cake is carried by two (10).</param>
/// <param name="DayStarts">First hour drawn on the week.</param>
/// <param name="DayEnds">Last hour drawn on the week.</param>
/// <param name="FoodClockMinutes">
/// Most minutes out of the cold, from filling to handover, of a filling on the food clock (240, common practice, no source: the
/// rules of the place decide).
/// </param>
/// <param name="LastHands">Nobody's hands are planned after this hour of a day, whatever the shifts say; null for no such hour.</param>
/// <param name="Caps">At most so many tiered cakes on days of the week; null for none.</param>
/// <param name="SmallCakes">
/// Small cakes that usually come in a week, ordered late, January first, twelve numbers: beyond the planned days room is left for them.
/// Null for none.
/// </param>
/// <param name="KeepHours">A day that is only kept is let go after so many hours, 1 to 720 (48).</param>
public sealed record ShopSettings(
    bool Inches = true,
    bool Clock24 = true,
    int BufferMinutes = 30,
    int FrozenMinutes = 120,
    int PlanDays = 21,
    int NoticeHours = 24,
    bool OnDrum = true,
    string Country = "GB",
    decimal TwoPeopleFromKg = 10,
    int DayStarts = 6,
    int DayEnds = 20,
    int FoodClockMinutes = 240,
    LocalTime? QuietFrom = null,
    LocalTime? QuietTo = null,
    LocalTime? LastHands = null,
    IReadOnlyList<DayCap>? Caps = null,
    IReadOnlyList<int>? SmallCakes = null,
    int KeepHours = 48);

/// <summary>The owner's cap: cakes of two tiers and more that leave on a day of the week.</summary>
/// <param name="Most">0 and up.</param>
public sealed record DayCap(IsoDayOfWeek Day, int Most);
