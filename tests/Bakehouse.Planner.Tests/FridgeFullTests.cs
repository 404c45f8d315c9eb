using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Planning;
using Bakehouse.Planner.Quick;
using Bakehouse.Testing.Planning;
using Standing = Bakehouse.Domain.Planning.Standing;

namespace Bakehouse.Planner.Tests;

/// <summary>
/// Friday 15:00 (minute 900), all six places of the fridge taken until Saturday, one of them by a custard cake on its food clock; a crumb
/// coated 8 in, promised for 17:00, needs half an hour cold. The expert sets it in the freezer for ten to fifteen minutes, which takes no
/// place of the fridge, and never moves the custard (the trade's own telling: common practice, no source).
/// </summary>
public sealed class FridgeFullTests
{
    private const int Saturday = 1440;
    private static readonly QuickPlanner Planner = new();

    [Fact]
    public void A_crumb_coat_is_set_in_the_freezer_when_the_fridge_is_full_and_nobody_moves()
    {
        var week = Friday(freezer: 4);
        var result = Planner.Plan(week, TestContext.Current.CancellationToken);
        var judged = Judge.Examine(week, result.Plan!);
        Assert.Empty(judged.Breaches);
        Assert.Empty(result.Late);
        Assert.Equal("freezer", result.Plan!.Holds.Single(h => h.Hold == "set").Store);
        Assert.InRange(result.Plan.Steps.Single(r => r.Step == "coat").Start, 915, 960);
        Assert.All(Enumerable.Range(1, 6), n => Assert.Equal("fridge", result.Plan.Holds.Single(h => h.Hold == $"waits{n}").Store));
    }

    /// <summary>Without the freezer a cake that is crumb coated already has nowhere to stand: no plan is made up, and the cake is named.</summary>
    [Fact]
    public void Without_a_freezer_no_plan_is_made_up_and_the_cake_is_named()
    {
        var result = Planner.Plan(Friday(freezer: 0), TestContext.Current.CancellationToken);
        Assert.Null(result.Plan);
        Assert.Contains(result.Reasons, r => r.Order == "eight");
    }

    /// <summary>What the shop's own methods say of the crumb coat is what the expert does: half an hour in the fridge or a quarter in the freezer.</summary>
    [Fact]
    public void The_methods_know_both_ways()
    {
        var set = Method.Waits.Single(g => g is { From: "crumb", To: "coat" });
        Assert.Equal([("fridge", 30), ("freezer", 15)], set.In.Select(i => (i.Kind, i.Least)));
    }

    private static Week Friday(int freezer)
    {
        var builder = new WeekBuilder()
            .Person("dov", "hand", [new Span(540, 1080), new Span(Saturday + 480, Saturday + 960)])
            .Store("fridge", places: 6, cold: true).Store("freezer", places: freezer, cold: true).Store("dry")
            .Step("crumb", 15).Step("coat", 40).Step("box", 15).Step("out", 5)
            .Hold("set", "crumb", "coat", stores: [new Standing("fridge", 30, 1440), new Standing("freezer", 15, 60)])
            .Hold("firm", "coat", "box", stores: new Standing("dry", 15, 240))
            .Hold("boxed", "box", "out", stores: new Standing("dry", 0, 240))
            .Order("eight", "box", "out", 1005, 1020)
            .Fixed("crumb", 885, ["dov"])
            .FreeFrom(900);
        for (var n = 1; n <= 6; n++)
        {
            builder = builder.Step($"cold{n}", 5, null).Step($"fetched{n}", 5).Hold($"waits{n}", $"cold{n}", $"fetched{n}", stores: new Standing("fridge", 60, 3000))
                .Order($"other{n}", $"cold{n}", $"fetched{n}", Saturday + 540, Saturday + 540 + (5 * n)).Fixed($"cold{n}", 780, []);
        }

        return builder.Clock("custard", [], ["waits6"], 120).Build() with { Horizon = 4320 };
    }
}
