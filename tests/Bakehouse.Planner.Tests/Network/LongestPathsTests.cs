using Bakehouse.Planner.Network;
using Bakehouse.Testing;

namespace Bakehouse.Planner.Tests.Network;

public class LongestPathsTests
{
    /// <summary>
    /// Worked by hand: b at least 5 after a; c at least 2 after b; c at most 9 after a (lag -9 back). Earliest 0, 5, 7. If all end by
    /// 12 and c takes 2: c by 10, b by 8, a by 3 (b at least 5 after it); the most gap says no more: a is at least 9 before c.
    /// </summary>
    [Fact]
    public void Earliest_and_latest_starts_worked_by_hand()
    {
        var chart = new Chart(Net([1, 1, 2], new Lag(0, 1, 5), new Lag(1, 2, 2), new Lag(2, 0, -9)), []);
        Assert.Equal([0, 5, 7], LongestPaths.Earliest(chart).Starts!);
        Assert.Equal([3, 8, 10], LongestPaths.Latest(chart, 12));
    }

    /// <summary>Worked by hand: b at least 6 after a, c at least 2 after b, but c at most 7 after a: 8 &gt; 7. d has nothing to do with it.</summary>
    [Fact]
    public void A_circle_that_no_schedule_can_keep_is_found_and_named()
    {
        var net = Net([1, 1, 1, 1], new Lag(0, 1, 6), new Lag(1, 2, 2), new Lag(2, 0, -7), new Lag(2, 3, 1));
        var (starts, circle) = LongestPaths.Earliest(new Chart(net, []));
        Assert.Null(starts);
        Assert.Equal([0, 1, 2], circle.Order());
        Assert.Null(LongestPaths.Matrix(new Chart(net, []), 50));
        var found = Scheduler.Run(net, 1, 100, cancel: TestContext.Current.CancellationToken);
        Assert.Equal(Ending.Impossible, found.Ending);
        Assert.Empty(found.Starts);
    }

    [Fact]
    public void Starts_by_longest_paths_are_the_least_that_keep_every_lag() => TinyNets.Gaps.Each(500, net =>
    {
        var chart = new Chart(net, []);
        var (starts, circle) = LongestPaths.Earliest(chart);
        var matrix = LongestPaths.Matrix(chart, 1000);
        Assert.Equal(starts is null, matrix is null);
        Assert.Equal(starts is null, circle.Length > 0);
        if (starts is not null)
        {
            var side = chart.Count + 1;
            Assert.Equal(starts, Enumerable.Range(0, chart.Count).Select(a => matrix![chart.Count * side + a]));
            Assert.All(net.Lags, l => Assert.True(starts[l.To] >= starts[l.From] + l.Least));
            Assert.All(Enumerable.Range(0, chart.Count), a => Assert.True(Tight(net, starts, a)));
        }
    });

    [Fact]
    public void The_latest_starts_keep_every_lag_and_none_can_be_later() => TinyNets.Gaps.Each(500, net =>
    {
        var chart = new Chart(net, []);
        if (LongestPaths.Earliest(chart).Starts is null)
        {
            return;
        }

        var (latest, side) = (LongestPaths.Latest(chart, 30), chart.Count + 1);
        var matrix = LongestPaths.Matrix(chart, 30)!;
        Assert.Equal(latest, Enumerable.Range(0, chart.Count).Select(a => -matrix[a * side + chart.Count]));
    });

    /// <summary>An activity can't be one earlier: it has reached its first start, or a lag holds it.</summary>
    private static bool Tight(Net net, int[] starts, int activity) =>
        starts[activity] == net.Activities[activity].From || net.Lags.Any(l => l.To == activity && starts[l.From] + l.Least == starts[activity]);

    private static Net Net(int[] lengths, params Lag[] lags) =>
        new([.. lengths.Select((l, a) => new Activity($"a{a}", [new Mode(l, [])]))], lags, [], 100);
}
