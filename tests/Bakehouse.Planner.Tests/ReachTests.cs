namespace Bakehouse.Planner.Tests;

using Bakehouse.Domain.Planning;
using Bakehouse.Planner.Quick;
using Bakehouse.Testing.Planning;
using Bakehouse.Testing;
using CsCheck;

/// <summary>Where a step may be put by hand: outside of it the Judge refuses whatever is tried, inside the planner mostly finds room.</summary>
public sealed class ReachTests(ITestOutputHelper output)
{
    private static readonly int[][] Tiers = [[6], [8], [6, 8], [6, 8, 10]];

    private static readonly Gen<SampleCake> Cake =
        from day in Gen.Int[0, 4]
        from hour in Gen.Int[9, 15]
        from tiers in Gen.Int[0, Tiers.Length - 1]
        from custard in Gen.Bool
        select new SampleCake(day, hour, Tiers[tiers], custard, false, false, false);

    private static readonly Gen<(Week Week, int[] Pins, int Step)> Cases =
        from cakes in Cake.Array[1, 3]
        from people in Gen.Int[1, 2]
        from pins in Gen.Int[0, 999].Array[0, 4]
        from step in Gen.Int[0, 999]
        select (SampleWeek.Of(cakes, people, 6), pins, step);

    [Fact]
    public void One_grain_further_than_a_step_can_go_the_Judge_refuses()
    {
        var (edges, kinds) = (0, new SortedDictionary<StopKind, int>());
        Cases.Each(
            Seeds.Whole ? 1_000 : 40,
            c =>
            {
                var (week, plan, row, reach) = Case(c);
                foreach (var crew in reach.Crews())
                {
                    foreach (var machine in reach.Machines())
                    {
                        foreach (var start in Outside(reach.Starts(crew, machine), week))
                        {
                            var why = reach.WhyNot(start, crew, machine)!;
                            kinds[why.Kind] = kinds.GetValueOrDefault(why.Kind) + 1;
                            edges++;
                            Assert.True(Refused(week, plan, row with { Start = start, People = crew, Machine = machine, Batch = null }), $"{row.Step} at {start} by {string.Join('+', crew)} on {machine}: {why}");
                        }
                    }
                }
            });
        output.WriteLine($"{edges} edges; {string.Join(", ", kinds.Select(k => $"{k.Key} {k.Value}"))}");
        Assert.True(edges > 200 && kinds.Count >= 4, $"{edges} edges of {kinds.Count} kinds.");
    }

    [Fact]
    public void Where_a_step_lights_up_the_planner_mostly_finds_room_for_the_others()
    {
        var (asked, found) = (0, 0);
        Gen.Select(Cases, Gen.Int[0, 10_000].Array[3]).Each(
            Seeds.Whole ? 300 : 30,
            drawn =>
            {
                var (c, where) = drawn;
                var (week, plan, row, reach) = Case(c);
                var starts = reach.Starts(row.People, row.Machine).SelectMany(r => Enumerable.Range(0, ((r.To - r.From) / 5) + 1).Select(n => r.From + (n * 5))).ToList();
                foreach (var start in where.Where(_ => starts.Count > 0).Select(w => starts[w % starts.Count]))
                {
                    asked++;
                    found += Moved(week, plan, row with { Start = start }) ? 1 : 0;
                }
            });
        output.WriteLine($"{found} of {asked} places that light up have a plan");
        Assert.True(found * 100 >= asked * 80, $"{found} of {asked}");
    }

    private static bool Moved(Week week, Plan plan, StepRow row)
    {
        var hung = With(plan, row);
        var pinned = week with { Reference = hung, Fixed = [.. week.Fixed.Where(f => f.Step != row.Step), new Fixed(row.Step, row.Start, row.People, row.Machine, null, null, "pinned")] };
        return new QuickPlanner().Push(pinned).Plan is { } made && Judge.Examine(pinned, made).Feasible;
    }

    private static (Week Week, Plan Plan, StepRow Row, Reach Reach) Case((Week Week, int[] Pins, int Step) c)
    {
        var plan = new QuickPlanner().Insert(c.Week).Plan!;
        var week = c.Week with { Reference = plan, Fixed = [.. c.Pins.Select(p => plan.Steps[p % plan.Steps.Count]).DistinctBy(r => r.Step).Select(r => new Fixed(r.Step, r.Start, r.People, r.Machine, null, null, "pinned"))] };
        var row = plan.Steps[c.Step % plan.Steps.Count];
        return (week, plan, row, Reach.Of(week, plan, row.Step)!);
    }

    private static IEnumerable<int> Outside(IReadOnlyList<Span> runs, Week week) =>
        runs.SelectMany(r => new[] { r.From - week.Grain, r.To + week.Grain }).Where(s => s >= 0 && s < week.Horizon).Distinct();

    /// <summary>With all others as they stand: a rule is broken, or a cake is later than it was.</summary>
    private static bool Refused(Week week, Plan plan, StepRow row)
    {
        var free = week with { Fixed = [.. week.Fixed.Where(f => f.Step != row.Step)] };
        var (before, after) = (Judge.Examine(free, plan), Judge.Examine(free, With(plan, row)));
        return !after.Feasible || after.Levels.Late > before.Levels.Late;
    }

    private static Plan With(Plan plan, StepRow row) => plan with { Steps = [.. plan.Steps.Select(r => r.Step == row.Step ? row : r)] };
}
