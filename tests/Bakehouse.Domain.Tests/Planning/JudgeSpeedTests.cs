namespace Bakehouse.Domain.Tests.Planning;

using System.Diagnostics;
using Bakehouse.Domain.Planning;
using Bakehouse.Testing.Planning;

/// <summary>
/// The Judge looks at every plan before it is shown, so it must not be felt. In processor time, since other tests keep the
/// machine busy; the best of several rounds.
/// </summary>
[CollectionDefinition(nameof(JudgeSpeedTests), DisableParallelization = true)]
[Collection(nameof(JudgeSpeedTests))]
public sealed class JudgeSpeedTests
{
    private const int Rounds = 5, Each = 20, MostMilliseconds = 20;

    [Fact]
    public void A_busy_week_is_judged_in_under_20_milliseconds()
    {
        var (week, plan) = (WeekFiles.Week("busy-050-fridge"), WeekFiles.Plan("busy-050-fridge.rule"));
        Assert.True(Judge.Examine(week, plan).Feasible);

        var best = Enumerable.Range(0, Rounds).Min(_ => Round(week, plan));

        TestContext.Current.TestOutputHelper?.WriteLine($"{plan.Steps.Count} steps in {best:0.0} ms of processor time");
        Assert.InRange(best, 0, MostMilliseconds);
    }

    private static double Round(Week week, Plan plan)
    {
        using var process = Process.GetCurrentProcess();
        var before = process.TotalProcessorTime;
        for (var i = 0; i < Each; i++)
        {
            Judge.Examine(week, plan);
        }

        process.Refresh();
        return (process.TotalProcessorTime - before).TotalMilliseconds / Each;
    }
}
