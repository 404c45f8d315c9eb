namespace Bakehouse.Planner.Tests;

using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using Bakehouse.Planner.Quick;
using CsCheck;
using NodaTime;

/// <summary>Whatever was ticked, the week has a plan that breaks no rule.</summary>
public sealed class FactsTests(ITestOutputHelper output)
{
    private static readonly QuickPlanner Planner = new();

    /// <summary>One morning of each weekday, the clock change among them.</summary>
    [Theory]
    [InlineData(19)]
    [InlineData(20)]
    [InlineData(21)]
    [InlineData(22)]
    [InlineData(23)]
    [InlineData(24)]
    [InlineData(25)]
    public void On_any_morning_the_sample_opens_with_work_to_do_and_a_wall_that_can_stand(int day)
    {
        var now = Instant.FromUtc(2026, 10, day, 7, 30);
        var sample = OpenedSample.At(now, Planner, TestContext.Current.CancellationToken);
        var week = Week.From(sample.Orders, sample.Shop, sample.Ticks, sample.Wall, now);

        var outcome = Planner.Push(week, TestContext.Current.CancellationToken);

        Assert.Empty(outcome.Reasons);
        Assert.Empty(Judge.Examine(week, outcome.Plan!).Breaches);
        Assert.True(sample.Ticks.Count > 0 || day is 19 or 25, "On a working morning something is done already.");
        var end = week.Now + 2 * 1440;
        Assert.Contains(outcome.Plan!.Steps, r => r.Start >= week.Now && r.Start < end);
    }

    [Fact]
    public void Any_steps_may_be_ticked_at_any_time_and_the_week_still_has_a_plan()
    {
        var now = Instant.FromUtc(2026, 10, 22, 9, 0);
        var sample = OpenedSample.At(now, Planner, TestContext.Current.CancellationToken);
        // A filling with a use-by that was filled days too early really has no plan: those cakes are left out here.
        var lasting = sample.Orders.Where(o => o.Tiers.All(t => Filling.Of(t.Filling)!.UseByDays is null)).Select(o => o.Id.ToString("N")).ToHashSet();
        var steps = sample.Wall.Plan.Steps.Select(s => s.Step).Where(s => lasting.Contains(s[..32])).ToArray();
        var late = 0;
        Gen.Select(Gen.Int[0, steps.Length - 1].Select(i => steps[i]).Array[0, 8], Gen.Int[0, 600].Array[8]).Sample(
            (ticked, ago) =>
            {
                var ticks = sample.Ticks.Concat(ticked.Distinct().Select((s, i) => new Tick(s, now - Duration.FromMinutes(ago[i]), "petra"))).ToList();
                var week = Week.From(sample.Orders, sample.Shop, ticks, sample.Wall, now);
                var outcome = Planner.Push(week);
                Assert.True(outcome.Plan is not null, string.Join(' ', outcome.Reasons.Select(r => r.Sentence)));
                Assert.Empty(Judge.Examine(week, outcome.Plan).Breaches);
                late += outcome.Late.Count;
            },
            iter: 40,
            threads: 1,
            seed: "0000AnyTicks1");
        output.WriteLine($"orders late over all: {late}");
    }
}
