using Bakehouse.Domain.Planning;
using Bakehouse.Planner.Quick;
using Bakehouse.Planner.Solver;
using Bakehouse.Testing;
using Bakehouse.Testing.Planning;

namespace Bakehouse.Planner.Tests;

/// <summary>
/// "Can we?" against an exact referee: an order is taken out of a planned week and asked for again for another hour, while all
/// others stand still. Each yes is judged; each no is given to the solver, which finds a plan in time or proves that there is none. The limits
/// are our own: no false no on the tiny weeks, at most one in twenty on the small ones.
/// </summary>
public sealed class AskTests(ITestOutputHelper output)
{
    private const double RefereeUnits = 20;
    private readonly Dictionary<string, (Week Week, Plan Plan)> planned = [];

    [Theory]
    [InlineData("tiny", 12, 250, 0.0)]
    [InlineData("small", 10, 250, 0.05)]
    public void A_yes_is_judged_and_a_no_is_rarely_false(string kind, int usual, int whole, double mostFalse)
    {
        var (seed, asks) = (Seeds.Of(), Seeds.Whole ? whole : usual);
        output.WriteLine($"seed {seed}, {asks} asks");
        var chance = new Random(seed);
        var told = Enumerable.Range(0, asks).Select(_ => Ask(kind, chance)).ToList();
        var (no, wrong) = (told.Count(t => t != Told.Yes), told.Count(t => t == Told.FalseNo));
        output.WriteLine($"{asks - no} yes, {no} no, of which {wrong} false and {told.Count(t => t == Told.Open)} not decided by the referee");
        Assert.True(no > 0 && no < asks, $"All {asks} are answered alike ({no} no): nothing is tried.");
        Assert.True(wrong <= no * mostFalse, $"{wrong} of {no} are false.");
    }

    /// <summary>Half of them are asked for again just before the hour that the first answer could keep: there a no is likeliest to be false.</summary>
    private Told Ask(string kind, Random chance)
    {
        var names = WeekFiles.Names(kind);
        var (week, plan) = Planned(names[chance.Next(names.Count)]);
        var order = week.Orders[chance.Next(week.Orders.Count)];
        var (minutes, again, less) = (chance.Next(-12, 49) * 30, chance.Next(2) == 0, chance.Next(1, 13) * week.Grain);
        var (asked, outcome) = Asked(week, plan, order, minutes);
        if (again && outcome.Late.GetValueOrDefault(order.Id) is > 0 and var late)
        {
            (asked, outcome) = Asked(week, plan, order, minutes + late - less);
        }

        return Look(asked, order.Id, outcome, plan);
    }

    private static (Week Asked, PlanOutcome Outcome) Asked(Week week, Plan plan, WeekOrder order, int later)
    {
        var other = Later(week, order, later);
        var asked = other with { Reference = Without(other, plan, order) };
        return (asked, new QuickPlanner().Insert(asked));
    }

    /// <param name="before">The plan as it was before the order was taken out: where the referee begins if no place was found at all.</param>
    private static Told Look(Week asked, string order, PlanOutcome outcome, Plan before)
    {
        if (outcome.Plan is { } found)
        {
            Assert.Empty(Judge.Examine(asked, found).Breaches.Concat(Judge.KeepsEveryRow(asked.Reference!, found)));
            if (!outcome.Late.ContainsKey(order))
            {
                return Told.Yes;
            }
        }

        var start = outcome.Plan ?? before;
        if (!Judge.Examine(asked, start).Feasible)
        {
            return Told.Open;
        }

        var referee = new Search(Standing(asked), start, 1);
        referee.Exactly(RefereeUnits, () => { });
        return !Judge.MinutesLate(asked, referee.Best).ContainsKey(order) ? Told.FalseNo : referee.Proved ? Told.No : Told.Open;
    }

    private (Week Week, Plan Plan) Planned(string name)
    {
        if (!planned.TryGetValue(name, out var known))
        {
            var week = WeekFiles.Week(name);
            planned[name] = known = (week, new QuickPlanner(50_000).Plan(week).Plan!);
        }

        return known;
    }

    private static Week Later(Week week, WeekOrder order, int minutes) => week with
    {
        Orders = [.. week.Orders.Select(o => o == order ? o with { From = o.From + minutes, To = o.To + minutes } : o)],
    };

    private static Plan Without(Week week, Plan plan, WeekOrder order)
    {
        var mine = week.Steps.Where(s => s.Order == order.Id).Select(s => s.Id).ToHashSet(StringComparer.Ordinal);
        var holds = week.Holds.Where(h => mine.Contains(h.From)).Select(h => h.Id).ToHashSet(StringComparer.Ordinal);
        return plan with { Steps = [.. plan.Steps.Where(r => !mine.Contains(r.Step))], Holds = [.. plan.Holds.Where(r => !holds.Contains(r.Hold))] };
    }

    /// <summary>The week in which every row of the reference is given.</summary>
    private static Week Standing(Week week) => week with
    {
        Fixed =
        [
            .. week.Reference!.Steps.Select(r => new Fixed(r.Step, r.Start, r.People, r.Machine, null, null, "stands")),
            .. week.Reference.Holds.Select(r => new Fixed(null, null, null, null, r.Hold, r.Store, "stands")),
        ],
    };

    private enum Told
    {
        Yes,
        No,
        FalseNo,
        Open,
    }
}
