namespace Bakehouse.Domain.Tests.Planning;

using System.Diagnostics;
using Bakehouse.Domain.Planning;
using Bakehouse.Testing.Planning;

/// <summary>The Judge looks at every plan before it is shown, so it must not be felt. Measured while no other test runs.</summary>
[CollectionDefinition(nameof(JudgeSpeedTests), DisableParallelization = true)]
[Collection(nameof(JudgeSpeedTests))]
public sealed class JudgeSpeedTests
{
    private const int MostRuns = 300;

    [Fact]
    public void A_busy_week_is_judged_in_under_20_milliseconds()
    {
        var (week, plan) = (WeekFiles.Week("busy-050-fridge"), WeekFiles.Plan("busy-050-fridge.rule"));
        var (best, runs) = (double.MaxValue, 0);

        // Whatever else the machine does can only lengthen a run, so the shortest is the Judge's own time.
        while (runs < 30 || (best >= 20 && runs < MostRuns))
        {
            var since = Stopwatch.GetTimestamp();
            Assert.True(Judge.Examine(week, plan).Feasible);
            (best, runs) = (Math.Min(best, Stopwatch.GetElapsedTime(since).TotalMilliseconds), runs + 1);
        }

        TestContext.Current.TestOutputHelper?.WriteLine($"{plan.Steps.Count} steps in {best:0.0} ms, the best of {runs}");
        Assert.InRange(best, 0, 20);
    }
}
