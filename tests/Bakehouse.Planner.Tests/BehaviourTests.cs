using Bakehouse.Domain.Planning;
using Bakehouse.Planner.Quick;
using Bakehouse.Testing;
using Bakehouse.Testing.Planning;

namespace Bakehouse.Planner.Tests;

/// <summary>Hand-made weeks, one behaviour each. Invented bakery; days from 8:00 to 17:00 with half an hour at noon.</summary>
public class BehaviourTests(ITestOutputHelper output)
{
    private static readonly SampleCake Friday = new(4, 14, [8]);
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private static QuickPlanner Planner => new(2_000);

    [Fact]
    public void A_lone_cake_is_on_time_in_the_usual_hours_with_its_buffer()
    {
        var week = SampleWeek.Of([Friday]);
        var outcome = Planner.Plan(week, Cancel);
        // One cake of 200 hands-on minutes in four empty days: nothing has to give, so every level is 0 but evenness.
        Assert.Equal(new Levels(0, 0, 0, 0, 0, 0, 0), Judge.Examine(week, outcome.Plan!).Levels with { Uneven = 0 });
        Assert.Empty(outcome.Late);
    }

    [Fact]
    public void A_cake_for_this_morning_is_late_and_the_minutes_are_named()
    {
        var week = SampleWeek.Of([new(0, 9, [6])]);
        var outcome = Planner.Plan(week, Cancel);
        // Longest way of a 6 in cake from 8:00: 20 mix, 45 bake, 10 rest, 5 turn out, 80 cool, 10 wrap, 0, 20 fill, 60, 15
        // crumb, 30, 35 coat, 120 set, 20 stack, 45 decorate, 5, 20 box = 540 min, so handover is not before 17:00,
        // 450 min after 9:30; the break and the closing hour can only add to it.
        Assert.InRange(outcome.Late["o1"], 450, 24 * 60);
        Assert.True(Judge.Examine(week, outcome.Plan!).Feasible);
    }

    [Fact]
    public void Insertion_leaves_every_row_of_the_wall_as_it_is()
    {
        var before = SampleWeek.Of([Friday, new(4, 12, [6, 8]), new(3, 10, [10])]);
        var wall = Planner.Plan(before, Cancel).Plan!;
        var after = SampleWeek.Of([Friday, new(4, 12, [6, 8]), new(3, 10, [10]), new(4, 13, [6])]) with { Reference = wall };
        var outcome = Planner.Insert(after, Cancel);
        Assert.Empty(Judge.KeepsEveryRow(wall, outcome.Plan!));
        Assert.True(Judge.Examine(after, outcome.Plan!).Feasible);
    }

    [Fact]
    public void A_skill_that_nobody_has_is_a_reason_with_what_to_try()
    {
        var week = SampleWeek.Of([Friday]);
        week = week with { People = [.. week.People.Select(p => p with { Skills = [.. p.Skills.Where(s => s != "decorate")] })] };
        var outcome = Planner.Plan(week, Cancel);
        Assert.Null(outcome.Plan);
        Assert.Contains(outcome.Reasons, r => r.Sentence == "Nobody can decorate, and \"decorate\" needs it." && r.Try.Length > 0 && r.Step == "o1.decorate");
    }

    [Fact]
    public void A_tier_that_fits_no_oven_is_a_reason()
    {
        var outcome = Planner.Plan(SampleWeek.Of([new(4, 14, [14])]), Cancel);
        Assert.Null(outcome.Plan);
        Assert.Contains(outcome.Reasons, r => r.Sentence == "The pans of \"bake\" (14, 14 in) fit no oven.");
    }

    [Fact]
    public void A_food_clock_that_the_work_alone_outruns_is_a_reason()
    {
        var week = SampleWeek.Of([Friday with { Custard = true }]);
        // Fill 20 + crumb 15 + coat 35 = 70 min out of the cold, whatever the plan.
        week = week with { Clocks = [.. week.Clocks.Select(c => c with { Limit = 60 })] };
        var outcome = Planner.Plan(week, Cancel);
        Assert.Null(outcome.Plan);
        Assert.Contains(outcome.Reasons, r => r.Sentence.Contains("70 minutes; the food clock allows 60", StringComparison.Ordinal));
    }

    [Fact]
    public void What_is_done_stays_and_the_rest_follows()
    {
        var week = SampleWeek.Of([Friday]);
        var wall = Planner.Plan(week, Cancel).Plan!;
        var mixed = wall.Steps.First(s => s.Step == "o1.t8.mix");
        var now = mixed.Start + 30;
        var later = week with { Now = now, FreeFrom = now, Reference = wall, Fixed = [.. wall.Steps.Where(s => s.Start < now).Select(Done)] };
        foreach (var outcome in new[] { Planner.Plan(later, Cancel), Planner.Push(later, Cancel), Planner.Insert(later, Cancel) })
        {
            Assert.True(Judge.Examine(later, outcome.Plan!).Feasible);
            Assert.Equal(mixed.Start, outcome.Plan!.Steps.First(s => s.Step == mixed.Step).Start);
            Assert.Equal(0, Judge.Examine(later, outcome.Plan).Levels.Changes);
        }
    }

    [Fact]
    public void A_push_moves_what_cannot_stand_and_nothing_else()
    {
        var week = SampleWeek.Of([Friday, new(2, 12, [6])]);
        var wall = Planner.Plan(week, Cancel).Plan!;
        var wrap = wall.Steps.First(s => s.Step == "o1.t8.wrap");
        // Wrapping took 15 minutes more than planned: all before is done, and the other cake's later rows have no part in it.
        var now = wrap.Start + 30;
        var slipped = week with
        {
            Now = now,
            FreeFrom = now,
            Reference = wall,
            Steps = [.. week.Steps.Select(s => s.Id == wrap.Step ? s with { Minutes = s.Minutes + 15 } : s)],
            Fixed = [.. wall.Steps.Where(s => s.Start <= wrap.Start).Select(Done)],
        };
        var outcome = Planner.Push(slipped, Cancel);
        var verdict = Judge.Examine(slipped, outcome.Plan!);
        Assert.True(verdict.Feasible);
        Assert.InRange(verdict.Levels.Changes, 0, 2);
        Assert.All(
            wall.Steps.Where(s => s.Step.StartsWith("o2", StringComparison.Ordinal)),
            s => Assert.Equal(s.Start, outcome.Plan!.Steps.First(r => r.Step == s.Step).Start));
    }

    [Fact]
    public void One_order_is_fitted_into_a_full_week_well_under_300_ms()
    {
        var week = WeekFiles.Week("small-105-hands");
        var wall = new QuickPlanner(0).Plan(week, Cancel).Plan!;
        var last = week.Orders[^1].Id;
        var standing = wall with
        {
            Steps = [.. wall.Steps.Where(s => !s.Step.StartsWith(last + ".", StringComparison.Ordinal))],
            Holds = [.. wall.Holds.Where(h => !h.Hold.StartsWith(last + ".", StringComparison.Ordinal))],
        };
        var asked = week with { Reference = standing };
        var outcome = Planner.Insert(asked, Cancel);
        var fastest = Enumerable.Range(0, 5).Min(_ => Milliseconds(() => Planner.Insert(asked, Cancel)));
        output.WriteLine($"one order into {week.Orders.Count - 1}: {fastest:0} ms");
        Assert.Empty(Judge.KeepsEveryRow(standing, outcome.Plan!));
        Assert.InRange(fastest, 0, 300);
    }

    private static double Milliseconds(Action work)
    {
        var time = ThreadTime.Start();
        work();
        return time.Seconds * 1000;
    }

    private static Fixed Done(StepRow row) => new(row.Step, row.Start, row.People.Count > 0 ? row.People : null, row.Machine, null, null, "done");
}
