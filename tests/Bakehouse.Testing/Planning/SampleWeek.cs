using Bakehouse.Domain.Planning;
using NodaTime;

namespace Bakehouse.Testing.Planning;

/// <summary>A cake to plan: pickup day (0 is Monday) and hour, tiers in inches, what it has and is kept from.</summary>
public sealed record SampleCake(int Day, int Hour, IReadOnlyList<int> Tiers, bool Custard = false, bool Nuts = false, bool KeptFromNuts = false, bool KeptFromWheat = false);

/// <summary>A small invented bakery and its week: minutes are common practice, no source. Days are 8:00 to 12:00 and 12:30 to 17:00.</summary>
public static class SampleWeek
{
    private const int Days = 14;

    /// <summary>The week with these cakes, o1, o2 and so on.</summary>
    public static Week Of(IReadOnlyList<SampleCake> cakes, int people = 2, int fridge = 6, int freeFrom = 0)
    {
        var steps = new List<Step>();
        var holds = new List<Hold>();
        var clocks = new List<FoodClock>();
        var ages = new List<Age>();
        var orders = new List<WeekOrder>();
        for (var i = 0; i < cakes.Count; i++)
        {
            var build = new SampleBuild($"o{i + 1}", cakes[i]);
            steps.AddRange(build.Steps);
            holds.AddRange(build.Holds);
            clocks.AddRange(build.Clocks);
            ages.AddRange(build.Ages);
            orders.Add(build.Order);
        }

        return new Week(
            "sample", Instant.FromUtc(2026, 11, 30, 0, 0), "Europe/London", 5, Days * 1440, freeFrom, freeFrom,
            [.. Enumerable.Range(0, people).Select(Person)],
            [new Tool("turntable", people, []), new Tool("bench", 1, [])],
            Machines, Families(), [new Air("wheat", 480)], Stores(fridge), [], steps, holds, clocks, ages, orders, []);
    }

    private static Machine[] Machines =>
    [
        new("bowl", MachineKind.Bowl, 5, 10, [], new CleanDown(45, "clean"), 0, new Dictionary<int, int>()),
        new("oven", MachineKind.Oven, 5, 15, [], null, 2, new Dictionary<int, int> { [6] = 3, [8] = 2, [10] = 1 }),
    ];

    private static Family[] Families() =>
    [
        new("vanilla", new Dictionary<string, int>(StringComparer.Ordinal) { ["bowl"] = 3000 }),
        new("rice", new Dictionary<string, int>(StringComparer.Ordinal) { ["bowl"] = 3000 }),
        new("cream", new Dictionary<string, int>(StringComparer.Ordinal) { ["bowl"] = 2400 }),
    ];

    private static Store[] Stores(int fridge) =>
    [
        new("fridge", "fridge", true, 18, fridge, []),
        new("tall", "fridge", true, 45, 3, []),
        new("rack", "rack", false, 12, 12, []),
        new("bench", "bench", false, 60, 3, []),
        new("tubs", "tubs", true, 30, 12, []),
        new("none", "none", false, 999, 9999, []),
    ];

    private static WeekPerson Person(int index)
    {
        string[] skills = index == 0 ? ["bake", "coat", "decorate", "box", "counter", "clean"] : ["coat", "box", "counter", "clean"];
        var days = Enumerable.Range(0, Days).Where(d => d % 7 != 6).ToList();
        return new WeekPerson(
            $"p{index + 1}",
            index == 0 ? "Ada" : $"Hand {index + 1}",
            skills,
            [.. days.SelectMany(d => new[] { new Span((d * 1440) + 480, (d * 1440) + 720), new Span((d * 1440) + 750, (d * 1440) + 1020) })],
            [.. days.Select(d => new Span((d * 1440) + 1020, (d * 1440) + 1140))],
            true);
    }
}
