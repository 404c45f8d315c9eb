namespace Bakehouse.Testing.Planning;

using Bakehouse.Domain.Planning;
using NodaTime;

/// <summary>Tiny weeks for one rule at a time: grain 5 min, minutes 0 to 1000, empty until something is added.</summary>
public sealed class WeekBuilder
{
    private Week week = new(
        "tiny", Instant.FromUtc(2026, 6, 1, 0, 0), "Europe/London", 5, 1000, 0, 0,
        [], [], [], [], [], [], [], [], [], [], [], [], []);

    /// <summary>Works minutes 0 to 1000 with the skills "hand" and "clean" unless told otherwise.</summary>
    public WeekBuilder Person(string id, string skills = "hand clean", Span[]? shifts = null, Span[]? extra = null, bool share = false) =>
        With(w => w with { People = [.. w.People, new WeekPerson(id, id, skills.Split(' '), shifts ?? [new Span(0, 1000)], extra ?? [], share)] });

    /// <summary>So many alike pieces.</summary>
    public WeekBuilder Tool(string id, int count, params Span[] down) => With(w => w with { Tools = [.. w.Tools, new Tool(id, count, down)] });

    /// <summary>A bowl with its turn times; <paramref name="clean"/> minutes of clean-down, 0 for none.</summary>
    public WeekBuilder Bowl(string id, int same = 0, int other = 0, int clean = 0, params Span[] down) =>
        With(w => w with { Machines = [.. w.Machines, new Machine(id, MachineKind.Bowl, same, other, down, clean > 0 ? new CleanDown(clean, "clean") : null, 0, new Dictionary<int, int>())] });

    /// <summary>An oven and how many pans of each diameter one level takes.</summary>
    public WeekBuilder Oven(string id, int levels, (int Pan, int Count)[] fits, int same = 0, int other = 0, params Span[] down) =>
        With(w => w with { Machines = [.. w.Machines, new Machine(id, MachineKind.Oven, same, other, down, null, levels, fits.ToDictionary(f => f.Pan, f => f.Count))] });

    /// <summary>A family and how much of it one bowl holds.</summary>
    public WeekBuilder Family(string id, string bowl, int limit) =>
        With(w => w with { Families = [.. w.Families, new Family(id, new Dictionary<string, int> { [bowl] = limit })] });

    /// <summary>Minutes until the air is clear.</summary>
    public WeekBuilder Air(string allergen, int settle) => With(w => w with { Air = [.. w.Air, new Air(allergen, settle)] });

    /// <summary>A store, not cold and 99 cm clear unless told otherwise.</summary>
    public WeekBuilder Store(string id, int places = 9, bool cold = false, int clear = 99, params Span[] down) =>
        With(w => w with { Stores = [.. w.Stores, new Store(id, cold ? "fridge" : "rack", cold, clear, places, down)] });

    /// <summary>A choice and its options.</summary>
    public WeekBuilder Choice(string id, params string[] options) => With(w => w with { Choices = [.. w.Choices, new Choice(id, options)] });

    /// <summary>Work by hand; no skill means no hands.</summary>
    public WeekBuilder Step(string id, int minutes, string? skill = "hand", int count = 1, string? tool = null, Taken? taken = null) =>
        With(w => w with { Steps = [.. w.Steps, new Step(id, "o", "", id, minutes, skill, count, tool is null ? [] : [tool], null, null, [], [], taken)] });

    /// <summary>A mix by one person; allergens as words apart by blanks.</summary>
    public WeekBuilder Mix(string id, int minutes, string family, int size, string has = "", string avoid = "") =>
        With(w => w with { Steps = [.. w.Steps, new Step(id, "o", "", id, minutes, "hand", 1, [], new Mix(family, size), null, Words(has), Words(avoid), null)] });

    /// <summary>A bake without hands.</summary>
    public WeekBuilder Bake(string id, int minutes, string heat, params int[] pans) =>
        With(w => w with { Steps = [.. w.Steps, new Step(id, "o", "", id, minutes, null, 1, [], null, new Bake(heat, pans), [], [], null)] });

    /// <summary>Between two steps something stands in one of the stores.</summary>
    public WeekBuilder Hold(string id, string from, string to, int places = 1, int height = 0, Taken? taken = null, params Standing[] stores) =>
        With(w => w with { Holds = [.. w.Holds, new Hold(id, from, to, places, height, stores, taken)] });

    /// <summary>Minutes out of the cold that these steps and holds have together.</summary>
    public WeekBuilder Clock(string id, string[] steps, string[] holds, int limit) =>
        With(w => w with { Clocks = [.. w.Clocks, new FoodClock(id, steps, holds, limit)] });

    /// <summary>Age from the end of one step to the start of another.</summary>
    public WeekBuilder Age(string id, string from, string to, int most, bool hard) => With(w => w with { Ages = [.. w.Ages, new Age(id, from, to, most, hard)] });

    /// <summary>An order whose start of <paramref name="goesOut"/> is promised, unless the end is.</summary>
    public WeekBuilder Order(string id, string ready, string goesOut, int from, int to, int rank = 1, int buffer = 0, bool end = false, params Fresh[] fresh) =>
        With(w => w with { Orders = [.. w.Orders, new WeekOrder(id, id, ready, goesOut, end, from, to, rank, buffer, fresh)] });

    /// <summary>A step that is done, started or pinned.</summary>
    public WeekBuilder Fixed(string step, int? start = null, string[]? people = null, string? machine = null) =>
        With(w => w with { Fixed = [.. w.Fixed, new Fixed(step, start, people, machine, null, null, "pinned")] });

    /// <summary>A hold whose place is pinned.</summary>
    public WeekBuilder FixedPlace(string hold, string store) =>
        With(w => w with { Fixed = [.. w.Fixed, new Fixed(null, null, null, null, hold, store, "pinned")] });

    /// <summary>Nothing new before this minute.</summary>
    public WeekBuilder FreeFrom(int minute) => With(w => w with { Now = minute, FreeFrom = minute });

    /// <summary>The plan on the wall.</summary>
    public WeekBuilder Wall(Plan plan) => With(w => w with { Reference = plan });

    /// <summary>The week so far.</summary>
    public Week Build() => week;

    private static string[] Words(string text) => text.Split(' ', StringSplitOptions.RemoveEmptyEntries);

    private WeekBuilder With(Func<Week, Week> more)
    {
        week = more(week);
        return this;
    }
}
