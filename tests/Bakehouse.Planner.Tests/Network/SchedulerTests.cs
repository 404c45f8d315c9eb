using Bakehouse.Benchmarks.Published;
using Bakehouse.Planner.Network;
using Bakehouse.Testing;

namespace Bakehouse.Planner.Tests.Network;

public class SchedulerTests
{
    private const int Tries = 400;

    /// <summary>
    /// Worked by hand. One oven (1), two hands (2). a: 3 grains, oven, 1 hand; b: 2 grains, 2 hands; c after a: 2 grains, oven, 1 hand;
    /// d after b: 1 grain, 1 hand. Hands asked: 3 + 4 + 2 + 1 = 10 = 2 x 5, but b needs both hands and shares no grain with a or c,
    /// and a, c follow each other: 3 + 2 + 2 = 7, d fits beside c. So 7 is best.
    /// </summary>
    [Fact]
    public void Two_hands_and_an_oven_worked_by_hand_take_seven_grains()
    {
        var net = new Net(
            [Activity("a", 3, 1, 1), Activity("b", 2, 0, 2), Activity("c", 2, 1, 1), Activity("d", 1, 0, 1)],
            [new Lag(0, 2, 0, AfterEnd: true), new Lag(1, 3, 0, AfterEnd: true)],
            [new Renewable("oven", 1), new Renewable("hands", 2)],
            20);
        var found = Scheduler.Run(net, 1, Tries, cancel: TestContext.Current.CancellationToken);
        Assert.Equal(7, found.End);
        PlainCheck.Require(net, found.Starts, 7);
    }

    /// <summary>Worked by hand: 4 grains of one hand who is away from 3 to 5 can't be cut, so a begins at 5; b of 2 grains fits before.</summary>
    [Fact]
    public void What_is_not_interrupted_waits_until_the_break_is_over()
    {
        var net = new Net([Activity("a", 4, 1), Activity("b", 2, 1)], [], [new Renewable("hand", 1, [1, 1, 1, 0, 0, 1, 1, 1, 1, 1, 1, 1])], 12);
        var found = Scheduler.Run(net, 1, Tries, cancel: TestContext.Current.CancellationToken);
        Assert.Equal(9, found.End);
        Assert.Equal(5, found.Starts[0]);
        Assert.InRange(found.Starts[1], 0, 1);
    }

    [Fact]
    public void Tiny_nets_end_where_the_best_of_all_their_schedules_ends() => TinyNets.Plain.Each(300, Same);

    [Fact]
    public void Tiny_nets_with_calendars_and_lags_between_starts_end_where_the_best_of_all_their_schedules_ends() => TinyNets.Calendars.Each(300, Same);

    [Fact]
    public void Tiny_nets_with_most_gaps_end_where_the_best_of_all_their_schedules_ends_or_have_none() => TinyNets.Gaps.Each(400, Same);

    [Fact]
    public void With_most_gaps_and_calendars_what_is_found_is_a_schedule_and_nothing_is_found_where_there_is_none()
    {
        var (found, missed) = (0, 0);
        TinyNets.Both.Each(400, net =>
        {
            var scheduled = Scheduler.Run(net, 5, 200, cancel: TestContext.Current.CancellationToken);
            if (TinyNets.Best(net) is not { } end)
            {
                Assert.Empty(scheduled.Starts);
            }
            else if (scheduled.Starts.Length == 0)
            {
                Assert.NotEqual(Ending.Impossible, scheduled.Ending);
                missed++;
            }
            else
            {
                PlainCheck.Require(net, scheduled.Starts, scheduled.End);
                Assert.InRange(scheduled.End, end, net.Horizon);
                found++;
            }
        });
        Assert.InRange(missed * 20, 0, found);
    }

    [Fact]
    public void The_same_seed_and_budget_give_the_same_schedule_whatever_runs_beside_it()
    {
        var net = Wide(7);
        var alone = Told(net, 3);
        var beside = new List<string>[6];
        Parallel.For(0, beside.Length, new ParallelOptions { MaxDegreeOfParallelism = 3 }, n => beside[n] = Told(n % 2 == 0 ? net : Wide(n), 3));
        Assert.Equal(alone, beside[0]);
        Assert.Equal(alone, beside[4]);
        Assert.NotEqual(alone, Told(net, 4));
    }

    [Fact]
    public void Each_schedule_told_of_is_better_than_the_one_before_and_the_budget_is_kept()
    {
        var told = new List<Found>();
        var net = Wide(11);
        var found = Scheduler.Run(net, 1, 500, told.Add, cancel: TestContext.Current.CancellationToken);
        Assert.Equal(told.OrderByDescending(t => t.End).Select(t => t.End).Distinct(), told.Select(t => t.End));
        Assert.Equal(found.End, told[^1].End);
        Assert.InRange(found.Schedules, 1, 500 + Justification.Passes);
        Assert.All(told, t => PlainCheck.Require(net, t.Starts, t.End));
    }

    [Fact]
    public void Justifying_never_makes_a_schedule_longer() => TinyNets.Plain.Each(300, net =>
    {
        var chart = new Chart(net, []);
        var starts = new int[chart.Count];
        if (new SerialScheme(chart).Forward(chart.Order, starts))
        {
            var before = chart.End(starts);
            var after = new Justification(chart).Justify(starts);
            Assert.InRange(after, 0, before);
            PlainCheck.Require(net, starts, after);
        }
    });

    private static void Same(Net net)
    {
        var found = Scheduler.Run(net, 5, Tries, cancel: TestContext.Current.CancellationToken);
        var best = TinyNets.Best(net);
        Assert.Equal(best, found.Starts.Length > 0 ? found.End : null);
        if (best is { } end)
        {
            Assert.InRange(found.Bound, 0, end);
            PlainCheck.Require(net, found.Starts, end);
        }
    }

    private static List<string> Told(Net net, uint seed)
    {
        var told = new List<string>();
        var found = Scheduler.Run(net, seed, 600, f => told.Add($"{f.Schedules} {f.End} {string.Join(' ', f.Starts)}"), TestContext.Current.CancellationToken);
        told.Add($"{found.Schedules} {found.End} {string.Join(' ', found.Starts)}");
        return told;
    }

    /// <summary>Forty activities on one resource of four; what follows what is by arithmetic, so that it is always the same net.</summary>
    private static Net Wide(int odd) => new(
        [.. Enumerable.Range(0, 40).Select(a => Activity($"a{a}", 1 + a * odd % 9, 1 + a * odd % 3))],
        [.. Enumerable.Range(4, 36).Select(a => new Lag(a - 1 - a * odd % 4, a, 0, AfterEnd: true))],
        [new Renewable("r", 4)],
        400);

    private static Activity Activity(string name, int length, params int[] demand) => new(name, [new Mode(length, demand)]);
}
