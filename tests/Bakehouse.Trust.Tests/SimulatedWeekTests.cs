namespace Bakehouse.Trust.Tests;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Reminders;
using NodaTime;

/// <summary>Whole weeks of the simulated shop with faults: what was accepted stands, every plan keeps the rules, every ring that is due is seen.</summary>
public sealed class SimulatedWeekTests(ITestOutputHelper output)
{
    private static readonly bool Long = Environment.GetEnvironmentVariable("BAKEHOUSE_LONG") is not null;

    /// <summary>Weeks that found something once stay here by name, before the others.</summary>
    public static TheoryData<int> Seeds => [.. new[] { 14, 55, 108 }.Union(Enumerable.Range(1, Long ? 1_000 : 8))];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_week_with_faults_loses_nothing(int seed)
    {
        using var shop = new SimulatedShop(seed);
        var deeds = 0;
        for (var end = shop.Clock.GetCurrentInstant() + Duration.FromDays(7); shop.Clock.GetCurrentInstant() < end; deeds++)
        {
            Advance(shop);
            shop.SomethingGoesWrong();
            shop.SomebodyDoesSomething();
            if (RingsNotAsThePlanSays(shop) is { } wrong)
            {
                Assert.Fail($"seed {seed}, deed {deeds}: {wrong}");
            }

            if (deeds % 20 == 0)
            {
                AssertTheRulesHold(shop, seed, deeds);
            }
        }

        shop.EverybodyComesBack();
        AssertTheRulesHold(shop, seed, deeds);
        var broken = shop.Witness.BrokenIn(shop.Path);
        Assert.True(broken.Count == 0, string.Join('\n', broken.Take(10)));
        output.WriteLine($"seed {seed}: {deeds} deeds, {shop.Witness.Count} answered, {shop.Witness.Accepted} accepted; {string.Join(", ", shop.Faults.Select(f => $"{f.Key} {f.Value}"))}");
        output.WriteLine(string.Join(", ", shop.Witness.Summary));
    }

    [Fact]
    public void The_same_seed_is_the_same_week()
    {
        string Run()
        {
            using var shop = new SimulatedShop(4);
            for (var i = 0; i < 40; i++)
            {
                Advance(shop);
                shop.SomebodyDoesSomething();
            }

            return string.Join('\n', [.. shop.Book.State.Wall!.Plan.Steps.Select(s => $"{s}"), .. shop.Witness.Summary]);
        }

        Assert.Equal(Run(), Run());
    }

    /// <summary>By day a few minutes to an hour; the night is one step.</summary>
    private static void Advance(SimulatedShop shop)
    {
        var now = shop.Clock.GetCurrentInstant().InZone(DateTimeZoneProviders.Tzdb["Europe/London"]).LocalDateTime;
        shop.Clock.Advance(now.Hour is >= 21 or < 6 ? Duration.FromHours(9) : Duration.FromMinutes(shop.Between(2, 50)));
    }

    private static void AssertTheRulesHold(SimulatedShop shop, int seed, int deed)
    {
        if (shop.Book.State is { Week: { } week, Wall: { } wall })
        {
            var breaches = Rules.Broken(week, wall);
            Assert.True(breaches.Count == 0, $"seed {seed}, deed {deed}: {shop.Witness.Last} {string.Join('\n', breaches.Take(5))}");
        }
    }

    /// <summary>
    /// The plain rule, without the product's code for rings: a step "leave the fridge" whose time has come, which is not done and to
    /// which nobody answered, rings; and what rings is a step of the plan that is not done.
    /// </summary>
    private static string? RingsNotAsThePlanSays(SimulatedShop shop)
    {
        var (state, now, ringing) = (shop.Book.State, shop.Clock.GetCurrentInstant(), shop.Bell.Look().Ringing);
        if (state is not { Week: { } week, Wall: { } wall })
        {
            return ringing.Count == 0 ? null : "Rings without a plan.";
        }

        var done = state.Ticks.Select(t => t.Step).ToHashSet(StringComparer.Ordinal);
        var held = state.Answers.Where(a => a.Kind != RingAnswerKind.Done).Select(a => a.Ring[(a.Ring.IndexOf(':', StringComparison.Ordinal) + 1)..]).ToHashSet(StringComparer.Ordinal);
        var known = week.Steps.Select(s => s.Id).ToHashSet(StringComparer.Ordinal);
        var due = wall.Plan.Steps
            .Where(r => r.Step.Contains(".leavefridge.", StringComparison.Ordinal) && known.Contains(r.Step) && !done.Contains(r.Step) && !held.Contains(r.Step))
            .Where(r => wall.Epoch + Duration.FromMinutes(r.Start) <= now);
        var seen = ringing.Select(r => r.Step).ToHashSet(StringComparer.Ordinal);
        return due.FirstOrDefault(r => !seen.Contains(r.Step)) is { } missed ? $"{missed.Step} is due and does not ring."
            : ringing.Select(r => r.Id).Distinct().Count() < ringing.Count ? "A ring stands twice."
            : ringing.FirstOrDefault(r => done.Contains(r.Step) || wall.Plan.Steps.All(s => s.Step != r.Step)) is { } ghost ? $"{ghost.Id} rings, but it is done or not planned."
            : null;
    }
}

/// <summary>The simulated shop knows every command of the book.</summary>
public sealed class DeedsTests
{
    [Fact]
    public void Every_command_of_the_book_is_somebodys_deed() => Assert.Equal(
        typeof(Command).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(Command)) && !t.IsAbstract).Select(t => t.Name).Order(StringComparer.Ordinal),
        Deeds.All.Select(d => d.Command.Name).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));
}
