using Bakehouse.Domain.Planning;
using Bakehouse.Planner.Quick;
using Bakehouse.Testing.Planning;

namespace Bakehouse.Planner.Tests;

/// <summary>What the search promises whoever waits for it: the same plan whatever carries it, and always the best so far.</summary>
public class LanesTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("home-080-hands", 400_000)]
    [InlineData("small-050-fridge", 250_000)]
    public void One_thread_and_two_find_the_same_plan_byte_by_byte(string name, long budget)
    {
        var week = WeekFiles.Week(name);
        var alone = PlanFile.Write(new QuickPlanner(budget, 1).Plan(week, Cancel).Plan!);
        Assert.Equal(alone, PlanFile.Write(new QuickPlanner(budget, 2).Plan(week, Cancel).Plan!));
        Assert.Equal(alone, PlanFile.Write(new QuickPlanner(budget, 2).Plan(week, Cancel).Plan!));
    }

    [Fact]
    public void Each_plan_told_breaks_no_rule_and_is_better_than_the_one_before_and_the_last_is_returned()
    {
        var week = WeekFiles.Week("home-080-fridge");
        var told = new List<Plan>();
        var outcome = new QuickPlanner(3_000_000).Plan(week, better => told.Add(better.Plan!), Cancel);
        Assert.True(told.Count > 2, $"{told.Count} plans told.");
        Assert.All(told, plan => Assert.Empty(Judge.Examine(week, plan).Breaches));
        Assert.All(told.Zip(told.Skip(1)), pair => Assert.True(Judge.Examine(week, pair.Second).Levels.CompareTo(Judge.Examine(week, pair.First).Levels) < 0));
        Assert.Equal(PlanFile.Write(told[^1]), PlanFile.Write(outcome.Plan!));
    }

    [Fact]
    public void A_search_that_is_stopped_returns_the_best_plan_so_far()
    {
        var week = WeekFiles.Week("home-095-hands");
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(Cancel);
        var told = new List<Plan>();
        var outcome = new QuickPlanner(long.MaxValue).Plan(week, Hear, stop.Token);
        Assert.Equal(3, told.Count);
        Assert.Equal(PlanFile.Write(told[^1]), PlanFile.Write(outcome.Plan!));

        void Hear(PlanOutcome better)
        {
            told.Add(better.Plan!);
            if (told.Count == 3)
            {
                stop.Cancel();
            }
        }
    }

    [Fact]
    public void A_week_asked_for_with_a_stopped_token_still_has_its_first_plan()
    {
        using var stopped = new CancellationTokenSource();
        stopped.Cancel();
        var week = WeekFiles.Week("busy-105-hands");
        Assert.Empty(Judge.Examine(week, new QuickPlanner().Plan(week, stopped.Token).Plan!).Breaches);
    }
}
