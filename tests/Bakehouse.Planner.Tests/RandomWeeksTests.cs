using Bakehouse.Domain.Planning;
using Bakehouse.Planner.Quick;
using Bakehouse.Testing.Planning;
using Bakehouse.Testing;
using CsCheck;

namespace Bakehouse.Planner.Tests;

public class RandomWeeksTests
{
    private static readonly int[][] Tiers = [[6], [8], [10], [6, 8], [8, 10], [6, 8, 10]];

    private static readonly Gen<SampleCake> Cake =
        from day in Gen.Int[0, 5]
        from hour in Gen.Int[9, 15]
        from tiers in Gen.Int[0, Tiers.Length - 1]
        from custard in Gen.Bool
        from nuts in Gen.Int[0, 3]
        from wheat in Gen.Int[0, 4]
        select new SampleCake(day, hour, Tiers[tiers], custard, nuts == 0, nuts == 1, wheat == 0);

    private static readonly Gen<Week> Weeks =
        from cakes in Cake.Array[1, 5]
        from people in Gen.Int[1, 2]
        from fridge in Gen.Int[3, 8]
        select SampleWeek.Of(cakes, people, fridge);

    [Fact]
    public void Three_hundred_random_weeks_are_planned_without_breaking_a_rule()
        => Weeks.Each(300, week => Assert.True(Holds(week)), threads: 2);

    [Fact]
    public void The_same_week_gives_the_same_plan_byte_by_byte()
        => Weeks.Each(20, week => Assert.Equal(PlanFile.Write(new QuickPlanner(5_000).Plan(week).Plan!), PlanFile.Write(new QuickPlanner(5_000).Plan(week).Plan!)), threads: 2);

    private static bool Holds(Week week)
    {
        var outcome = new QuickPlanner(3_000).Plan(week);
        if (outcome.Plan is null)
        {
            // A second week of work stands behind every pickup: there is always a plan, if need be a late one.
            throw new InvalidOperationException(string.Join(' ', outcome.Reasons) + $" {week.People.Count} people, fridge {week.Stores[0].Places}, {string.Join(", ", week.Steps.Select(s => s.Id))}");
        }

        return Judge.Examine(week, outcome.Plan).Feasible;
    }
}
