using Bakehouse.Domain.Planning;
using Bakehouse.Planner.Quick;
using Bakehouse.Testing;
using Bakehouse.Testing.Planning;

namespace Bakehouse.Planner.Tests;

/// <summary>The project's own weeks, with the figures of two plain planners measured by the project on 25 Nov 2026, two cores.</summary>
public class PublicWeeksTests(ITestOutputHelper output)
{
    private static readonly string[] Shops = ["tiny", "home", "small"];

    public static TheoryData<string> Names => [.. Shops.SelectMany(WeekFiles.Names)];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_plan_that_breaks_no_rule_comes_within_five_seconds(string name)
    {
        var week = WeekFiles.Week(name);
        using var cap = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        cap.CancelAfter(TimeSpan.FromSeconds(4));
        var work = ThreadTime.Start();
        var outcome = new QuickPlanner().Plan(week, cap.Token);
        var seconds = work.Seconds;

        Assert.True(outcome.Plan is not null, string.Join('\n', outcome.Reasons));
        var verdict = Judge.Examine(week, outcome.Plan);
        var l = verdict.Levels;
        Say($"{name} quick {seconds:0.00} s{(cap.IsCancellationRequested ? " (stopped)" : "")}: {l.Late} / {l.Stale} / {l.Overtime} / {l.Fresh}");
        Say(string.Join('\n', Peers.Of(name).Select(p => $"   {p.Planner} {p.Limit} s: {p.Late} / {p.Stale} / {p.Overtime} / {p.Fresh}, feasible {p.Feasible}")));
        Assert.Empty(verdict.Breaches);
        Assert.Equal(Judge.MinutesLate(week, outcome.Plan).Where(m => m.Value > 0).OrderBy(m => m.Key), outcome.Late.OrderBy(m => m.Key));
        Assert.InRange(seconds, 0, 5);
        if (name.StartsWith("tiny", StringComparison.Ordinal))
        {
            Assert.InRange(l.Late, 0, Peers.Of(name).Where(p => p.Planner == "rule" && p.Feasible).Select(p => p.Late).DefaultIfEmpty(long.MaxValue).Min());
        }
    }

    private void Say(string line) => output.WriteLine(line);
}
