using Bakehouse.Domain.Planning;
using Bakehouse.Planner.Quick;
using Bakehouse.Planner.Solver;
using Bakehouse.Testing;
using Bakehouse.Testing.Planning;
using Google.OrTools.Sat;

namespace Bakehouse.Planner.Tests.Solver;

/// <summary>The model against the Judge, who shares no code with it: what it allows breaks no rule, and what it counts is what he counts.</summary>
public class WeekModelTests
{
    /// <summary>Levels by the model's numbers.</summary>
    private static readonly Func<Levels, long>[] Counted = [l => l.Late, l => l.Stale, l => l.Overtime, l => l.Fresh, l => l.Changes, l => l.Uneven];

    [Theory]
    [InlineData("tiny-4")]
    [InlineData("home-080-fridge")]
    [InlineData("home-105-hands")]
    [InlineData("small-050-hands")]
    [InlineData("busy-050-fridge")]
    [InlineData("repair-3")]
    [InlineData("ask-2")]
    public void What_a_window_allows_breaks_no_rule_and_what_it_counts_the_Judge_counts(string name)
    {
        var week = WeekFiles.Week(name);
        var plan = new QuickPlanner(20_000).Plan(week, TestContext.Current.CancellationToken).Plan!;
        var at = new Ground(new Numbers(week), plan);
        var windows = new Windows(at, new Dice(7));
        var found = 0;
        for (var draw = 0; draw < (Seeds.Whole ? 200 : 12); draw++)
        {
            // A larger window with the plan as it stands, a smaller one for the best plan.
            var level = draw % 2 == 0 ? -1 : draw / 2 % 4;
            var model = new WeekModel(at, windows.Pick(draw % 2 == 0 ? 30 : 15, Math.Max(0, level)));
            if (level >= 0 && !model.Seek(level))
            {
                continue;
            }

            using var solver = new CpSolver { StringParameters = $"num_workers:1 random_seed:{draw} max_deterministic_time:0.1{(level < 0 ? " fix_variables_to_their_hinted_value:true" : "")}" };
            if (solver.Solve(model.Model) is CpSolverStatus.Optimal or CpSolverStatus.Feasible)
            {
                found++;
                Look(week, model, solver, level);
            }
        }

        Assert.True(found > 2, $"Only {found} windows had a plan.");
    }

    /// <summary>Pans on levels are counted by the model and looked at by the Judge alone.</summary>
    private static void Look(Week week, WeekModel model, CpSolver solver, int level)
    {
        var verdict = Judge.Examine(week, model.Read(solver));
        Assert.DoesNotContain(verdict.Breaches, b => b.Rule != "M4");
        if (level >= 0)
        {
            var said = model.Said(level, solver) * (level == 4 ? 1 : week.Grain);
            Assert.True(said >= Counted[level](verdict.Levels), $"L{level + 1}: the model says {said}, the Judge {Counted[level](verdict.Levels)}.");
            Assert.InRange(said - Counted[level](verdict.Levels), 0, level == 2 ? 60 : 0);
        }
    }
}
