using Bakehouse.Domain.Planning;
using Bakehouse.Planner.Network;
using Bakehouse.Testing.Planning;

namespace Bakehouse.Planner.Tests.Network;

/// <summary>Plans that others made of the project's own weeks, each judged by a judge written apart (plans/levels.csv).</summary>
public class WeekNetTests(ITestOutputHelper output)
{
    private static readonly Lazy<(string Name, Week Week, Plan Plan)[]> Judged = new(() =>
        [.. WeekFiles.Table("plans/levels.csv").Where(r => r["feasible"] == "yes")
            .Select(r => (r["plan"], WeekFiles.Week(r["week"]), WeekFiles.Plan(r["plan"].Replace(".json", "", StringComparison.Ordinal))))]);

    [Fact]
    public void Every_start_of_every_judged_plan_lies_in_the_windows_of_its_week()
    {
        var (starts, first) = (0, 0);
        foreach (var (file, week, plan) in Judged.Value)
        {
            var net = new WeekNet(week, plan.Choices);
            var windows = Windows.Of(net.Net);
            Assert.NotNull(windows);
            foreach (var row in plan.Steps)
            {
                var (at, grain) = (net.Steps[row.Step], row.Start / week.Grain);
                Assert.True(grain >= windows.Earliest[at] && grain <= windows.Latest[at], $"{file}, {row.Step}: {grain} is not in {windows.Earliest[at]} to {windows.Latest[at]}");
                starts++;
                first += grain == windows.Earliest[at] ? 1 : 0;
            }
        }

        output.WriteLine($"{Judged.Value.Length} plans, {starts} starts, {first} at the first grain of their window");
        Assert.True(first > 0);
    }

    [Fact]
    public void No_judged_plan_hands_an_order_over_before_its_bound()
    {
        var (orders, met) = (0, 0);
        foreach (var (file, week, plan) in Judged.Value)
        {
            var bounds = WeekNet.Moments(week)!;
            var rows = plan.Steps.ToDictionary(r => r.Step, r => r.Start);
            foreach (var order in week.Orders.Where(o => bounds.ContainsKey(o.Id)))
            {
                var moment = rows[order.Out] + (order.EdgeIsEnd ? week.Steps.Single(s => s.Id == order.Out).Minutes : 0);
                Assert.True(moment >= bounds[order.Id], $"{file}, {order.Id}: {moment} is before {bounds[order.Id]}");
                orders++;
                met += moment == bounds[order.Id] ? 1 : 0;
            }
        }

        output.WriteLine($"{orders} orders, {met} at their bound");
        Assert.True(met > 0);
    }

    /// <summary>Of the tiny weeks the least sum of minutes late is proved (peers.csv, cpsat-exact): the bound may reach it, never pass it.</summary>
    [Fact]
    public void The_bound_of_minutes_late_stays_below_what_is_proved()
    {
        var late = WeekFiles.Names("tiny").Select(name =>
        {
            var week = WeekFiles.Week(name);
            var bounds = WeekNet.Moments(week)!;
            var bound = week.Orders.Where(o => o.Rank == 1 && bounds.ContainsKey(o.Id)).Sum(o => Math.Max(0, bounds[o.Id] - o.To));
            var proved = Peers.Of(name).Where(p => p.Feasible && p.Planner == "cpsat-exact").Min(p => p.Late);
            output.WriteLine($"{name}: {bound} of {proved}");
            Assert.InRange(bound, 0, proved);
            return bound;
        }).Sum();
        Assert.True(late > 0);
    }

    /// <summary>A hand is there from 8 to 20 and from 30; a bake in 6 or 4 grains, no hand needed; two grains of rest before the fill.</summary>
    [Fact]
    public void Windows_of_modes_and_calendars_worked_by_hand()
    {
        var hand = new Renewable("hand", 1, [.. Enumerable.Range(0, 40).Select(t => t is >= 8 and < 20 or >= 30 ? 1 : 0)]);
        var net = new Net(
            [
                new Activity("mix", [new Mode(3, [1])]),
                new Activity("bake", [new Mode(6, [0]), new Mode(4, [0])]),
                new Activity("fill", [new Mode(6, [1])]),
            ],
            [new Lag(0, 1, 0, AfterEnd: true), new Lag(1, 2, 2, AfterEnd: true)],
            [hand],
            40);
        var windows = Windows.Of(net)!;

        // mix waits for the hand (8), the sooner bake ends at 15, fill would run 17 to 23 across the break: 30.
        Assert.Equal([8, 11, 30], windows.Earliest);

        // Back from 40: fill by 34, bake by 34 - 2 - 4 = 28, mix by 25.
        Assert.Equal([25, 28, 34], windows.Latest);
    }
}
