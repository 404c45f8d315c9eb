namespace Bakehouse.Planner.Tests;

using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using Bakehouse.Planner.Quick;
using Bakehouse.Testing;
using NodaTime;

/// <summary>Cupcakes in the week of a shop: planned among the cakes, and looked at by the Judge.</summary>
public sealed class CupcakeWeekTests(ITestOutputHelper output)
{
    private static readonly Bakehouse.Domain.Shops.Shop Shop = SampleBakery.Shop;
    private static readonly LocalDate Today = new(2026, 10, 15);
    private static readonly Instant Morning = (Today + new LocalTime(6, 0)).InZoneStrictly(DateTimeZoneProviders.Tzdb["Europe/London"]).ToInstant();

    /// <summary>Two dozen alone, and a cake of two tiers with three dozen beside it, among the sample's own orders from Sunday on.</summary>
    [Fact]
    public void Cupcakes_find_their_places_among_the_cakes()
    {
        var cakes = SampleOrders.From(Today, Shop).Where(o => o.Handover.At.Date >= Today.PlusDays(3)).ToList();
        var alone = Cakes.Alone(801, 24) with { Number = 801, Handover = new Handover(Way.Collect, new LocalDateTime(2026, 10, 20, 12, 0), "", 0) };
        var both = Cakes.With(Cakes.Good(802, 9, 6), 36) with { Number = 802, Handover = new Handover(Way.Collect, new LocalDateTime(2026, 10, 21, 15, 0), "", 0) };
        var week = Week.From([.. cakes, alone, both], Shop, [], null, Morning);

        var outcome = new QuickPlanner().Insert(week, TestContext.Current.CancellationToken);

        output.WriteLine($"{week.Steps.Count} steps; {string.Join(", ", outcome.Late.Select(l => $"{l.Key} {l.Value} min"))}");
        Assert.Empty(outcome.Reasons);
        Assert.Empty(Judge.Examine(week, outcome.Plan!).Breaches);
        Assert.DoesNotContain(outcome.Late, l => l.Key == alone.Id.ToString("N") || l.Key == both.Id.ToString("N"));
        // The cake and what stands beside it are handed over once, together.
        Assert.Single(outcome.Plan!.Steps, r => r.Step.StartsWith(both.Id.ToString("N"), StringComparison.Ordinal) && StepKey.Parse(r.Step)!.Value.Operation == "handover");
        // A warm cupcake is never piped.
        var at = outcome.Plan.Steps.ToDictionary(r => r.Step, r => r.Start);
        var minutes = week.Steps.ToDictionary(s => s.Id, s => s.Minutes);
        Assert.All(week.Holds.Where(h => StepKey.Parse(h.To)!.Value.Operation == "pipe" && StepKey.Parse(h.From)!.Value.Operation == "turnout"), h => Assert.True(at[h.To] - at[h.From] - minutes[h.From] >= 60, h.Id));
    }

    /// <summary>More than the fridge holds: the plan says no or late, and nothing breaks.</summary>
    [Theory]
    [InlineData(120)]
    [InlineData(240)]
    public void Very_many_break_nothing(int count)
    {
        var many = Cakes.Alone(803, count) with { Number = 803, Handover = new Handover(Way.Collect, new LocalDateTime(2026, 10, 23, 15, 0), "", 0) };
        var week = Week.From([many], Shop, [], null, Morning);
        var outcome = new QuickPlanner().Insert(week, TestContext.Current.CancellationToken);
        output.WriteLine($"{week.Steps.Count} steps, plan {outcome.Plan is not null}, late {outcome.Late.Values.Sum()}");
        if (outcome.Plan is { } plan)
        {
            Assert.Empty(Judge.Examine(week, plan).Breaches);
        }
    }
}
