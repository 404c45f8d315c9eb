namespace Bakehouse.Domain.Tests.Reminders;

using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Reminders;
using Bakehouse.Domain.Shops;
using Bakehouse.Testing;
using CsCheck;

/// <summary>Laws of rings over random books: any rows, any ticks, any answers, also of steps that do not exist.</summary>
public sealed class RandomRingsTests
{
    private static readonly Gen<(int Orders, int Seed)> Books = Gen.Select(Gen.Int[1, 4], Gen.Int[0, 1_000_000]);

    [Fact]
    public void None_without_a_row_none_twice_none_done_late_first() => Books.Each(100, drawn =>
    {
        var plan = Random(drawn.Orders, drawn.Seed);
        var (week, wall, now) = (plan.Week, plan.Wall, plan.Now);
        var rings = plan.Rings();
        var planned = wall.Plan.Steps.Select(r => r.Step).ToHashSet();
        Assert.All(rings, r => Assert.Contains(r.Step, planned));
        Assert.All(rings, r => Assert.Contains(week.Steps, s => s.Id == r.Step));
        Assert.Distinct(rings.Select(r => r.Id));
        Assert.Distinct(rings.SelectMany(r => r.Steps.Select(s => (r.Kind, s))));
        Assert.DoesNotContain(rings, r => plan.Ticks.Any(t => r.Steps.Contains(t.Step)));
        Assert.All(rings, r => Assert.True(r.SlackUntil is null || r.Due <= r.SlackUntil));
        Assert.Equal(rings.OrderByDescending(r => r.At(now)).Select(r => r.At(now)), rings.Select(r => r.At(now)));
        Assert.Equal(rings.Select(r => r.Id), plan.Rings().Select(r => r.Id));
    });

    /// <summary>
    /// Every bake, fridge exit and handover that has a row and is not done, nor said to be impossible, is in exactly one ring; but a
    /// handover for which the cake was taken out at most 10 min before.
    /// </summary>
    [Fact]
    public void None_is_lost() => Books.Each(100, drawn =>
    {
        var plan = Random(drawn.Orders, drawn.Seed);
        plan.Answers.RemoveAll(a => a.Kind == RingAnswerKind.Cannot);
        var week = plan.Week;
        var done = week.Fixed.Where(f => f.Why == "done").Select(f => f.Step).ToHashSet();
        var expected = plan.Wall.Plan.Steps.Select(r => r.Step)
            .Where(s => week.Steps.Any(w => w.Id == s && w.Name is "bake" or "leavefridge" or "handover") && !done.Contains(s) && !OneWay(plan, s))
            .Order(StringComparer.Ordinal);
        Assert.Equal(expected, plan.Rings().SelectMany(r => r.Steps).Order(StringComparer.Ordinal));
    });

    private static bool OneWay(SmallPlan plan, string step)
    {
        var rows = plan.Wall.Plan.Steps.ToDictionary(r => r.Step);
        return step.Contains(".handover.", StringComparison.Ordinal)
            && rows.TryGetValue(step.Replace(".handover.", ".leavefridge.", StringComparison.Ordinal), out var leave)
            && rows[step].Start - leave.Start is >= 0 and <= 10;
    }

    private static SmallPlan Random(int orders, int seed)
    {
        var dice = new Random(seed);
        var plan = new SmallPlan([.. Enumerable.Range(1, orders).Select(i => Testing.Cakes.Good(i, dice.Next(2) == 0 ? [8] : [9, 6]) with { Number = 400 + i, Version = 1 })]);
        var steps = plan.Week.Steps.ToList();
        foreach (var step in steps.Where(_ => dice.Next(5) > 0))
        {
            var person = step.Skill is null ? null : SampleBakery.Shop.People[dice.Next(5)].Id;
            plan.Row(step.Id, plan.Now + Duration.FromMinutes(5 * dice.Next(-300, 300)), person, step.Bake is null ? null : "oven1", dice.Next(2) == 0 ? null : "b" + dice.Next(3));
        }

        plan.Row(new StepKey(new Guid(9, 9, 9, 1, 2, 3, 4, 5, 6, 7, 8), null, "leavefridge", 1).ToString(), plan.Now, "wren");
        plan.Ticks.AddRange(steps.Where(_ => dice.Next(12) == 0).Select(s => new Tick(s.Id, plan.Now, "petra")));
        plan.Answers.AddRange(steps.Where(_ => dice.Next(4) == 0).Select(s => new RingAnswer(
            $"{(s.Name == "bake" ? RingKind.OvenOut : s.Name == "handover" ? RingKind.Handover : RingKind.LeaveFridge)}:{s.Id}",
            (RingAnswerKind)dice.Next(3), "", "petra", plan.Now, plan.Now + Ring.Later)));
        return plan;
    }
}
