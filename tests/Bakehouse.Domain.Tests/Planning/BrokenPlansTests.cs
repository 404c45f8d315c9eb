namespace Bakehouse.Domain.Tests.Planning;

using Bakehouse.Domain.Planning;
using Bakehouse.Testing.Planning;

/// <summary>
/// A good plan of a whole week (small-095-fridge: 459 steps), spoilt in one place at a time: the rule that this offends
/// speaks, and names the place. Expected rules follow from the sentence of each rule.
/// </summary>
public sealed class BrokenPlansTests
{
    private static readonly Week Week = WeekFiles.Week("small-095-fridge");
    private static readonly GoodPlan Good = new(Week, WeekFiles.Plan("small-095-fridge.rule"));

    /// <summary>What is done to the plan, the rule that must speak, and the plan with what the breach must be about (null: anything).</summary>
    private static readonly (string Done, string Rule, Func<Spoilt> Make)[] Cases =
    [
        ("a step left out", "W1", () => Good.Without(Good.Handed[5].Id)),
        ("a hold left out", "W1", () => Good.WithoutHold(Week.Holds[7].Id)),
        ("a step twice", "W1", () => Good.Twice(Good.Handed[9].Id)),
        ("a step of the option not taken", "W1", Good.NotTaken),
        ("a step that nobody knows", "W0", () => Good.Added(new StepRow("o99.mix", 600, [], null, null))),
        ("a person that nobody knows", "W0", () => Good.People(Good.Handed[3], ["nobody"], about: "nobody")),
        ("a store that nobody knows", "W0", () => Good.Store(Week.Holds[3].Id, "cellar", about: "cellar")),
        ("a choice not made", "W2", () => Good.Chosen(null)),
        ("an option that is none", "W2", () => Good.Chosen("moon")),
        ("a start off the grain", "W3", () => Good.Moved(Good.Handed[20], 2)),
        ("an end after the week", "W3", () => Good.To(Good.Handed[30], Week.Horizon)),
        ("a start before the week", "W3", () => Good.To(Good.Handed[30], -60)),
        ("nobody at a step of hands", "H1", () => Good.People(Good.Handed[12], [])),
        ("one of two people missing", "H1", Good.OneOfTwo),
        ("somebody at a bake", "H1", () => Good.People(Good.Baked[0], [Week.People[0].Id])),
        ("somebody without the skill", "H2", Good.Unskilled),
        ("work at three in the morning", "H3", () => Good.To(Good.Handed[15], 3 * 1440)),
        ("work that runs into a break", "H3", Good.IntoBreak),
        ("two things at once", "H4", Good.AtOnce),
        ("one tool twice at once", "T1", Good.ToolTwice),
        ("a mix in the oven", "M1", () => Good.On(Good.Mixed[0], Good.Oven.Id)),
        ("a bake in a bowl", "M1", () => Good.On(Good.Baked[0], Good.Bowl.Id)),
        ("a mix on no machine", "M1", () => Good.On(Good.Mixed[4], null)),
        ("a bowl overfilled", "M2", Good.Overfilled),
        ("a bowlful started at two times", "M3", () => Good.Moved(Good.InBatch(mix: true), 5, aboutBatch: true)),
        ("a bowlful by two people", "M3", Good.BowlfulApart),
        ("a load started at two times", "M3", () => Good.Moved(Good.InBatch(mix: false), 5, aboutBatch: true)),
        ("a load far too big for its oven", "M4", Good.Overloaded),
        ("two runs at once", "M5", () => Good.AfterRun(Good.Oven, 0)),
        ("a run without turn time", "M5", () => Good.AfterRun(Good.Bowl, 1)),
        ("a clean-down by two", "M6", Good.CleanedByTwo),
        ("a clean-down off the grain", "M6", Good.CleanedOffGrain),
        ("nuts in a bowlful kept from nuts", "A1", Good.NutsTogether),
        ("the clean-downs left out", "A2", Good.NeverCleaned),
        ("flour beside a cake kept from it", "A3", Good.Dusty),
        ("a step before what it waits for", "S1", () => Good.TooSoon(Week.Holds[0])),
        ("a batter that stands overnight", "S2", () => Good.TooLate(Good.Kept("none"))),
        ("a bake kept in the tubs", "S3", () => Good.Store(Good.Kept("rack").Id, "tubs")),
        ("a stacked cake under a low shelf", "S4", Good.TooTall),
        ("everything in one fridge", "S5", Good.Crowded),
        ("custard on the rack too long", "K1", Good.Warm),
        ("an old cake", "K2", Good.Old),
        ("handed over before the agreed time", "P1", () => Good.Early(Week.Orders[2])),
    ];

    public static TheoryData<string> Names => [.. Cases.Select(c => c.Done)];

    [Fact]
    public void The_plan_is_good_before_it_is_spoilt() => Assert.Empty(Judge.Examine(Week, Good.Plan).Breaches);

    [Theory]
    [MemberData(nameof(Names))]
    public void A_broken_plan_is_refused_by_the_right_rule(string done)
    {
        var (_, rule, make) = Cases.Single(c => c.Done == done);
        var spoilt = make();

        var verdict = Judge.Examine(Week, spoilt.Plan);

        Assert.False(verdict.Feasible);
        Assert.Equal(verdict.Breaches.Count, verdict.Levels.Broken);
        Assert.Contains(verdict.Breaches, b => b.Rule == rule && (spoilt.About is null || b.Step == spoilt.About));
    }

    /// <summary>Here the week turns and the plan stands: a thing breaks, an order is pinned elsewhere, time goes on.</summary>
    [Fact]
    public void A_good_plan_is_refused_when_the_week_turns()
    {
        var step = Good.Handed.First(s => s.Tools.Count > 0);
        var hold = Good.Kept("fridge");
        Refused("T2", Week with { Tools = [.. Week.Tools.Select(t => t.Id == step.Tools[0] ? t with { Down = [Good.At(step)] } : t)] });
        Refused("M7", Week with { Machines = [.. Week.Machines.Select(m => m == Good.Oven ? m with { Down = [new Span(0, Week.Horizon)] } : m)] });
        Refused("S6", Week with { Stores = [.. Week.Stores.Select(s => s.Id == "fridge" ? s with { Down = [new Span(0, Week.Horizon)] } : s)] });
        Refused("X1", Week with { Fixed = [new Fixed(step.Id, Good.At(step).From + 5, null, null, null, null, "pinned")] });
        Refused("X1", Week with { Fixed = [new Fixed(null, null, null, null, hold.Id, "cool", "pinned")] });
        Refused("X2", Week with { FreeFrom = Good.Plan.Steps.Min(r => r.Start) + 5 });
        Refused("K1", Week with { Clocks = [.. Week.Clocks.Select(c => c with { Limit = 0 })] });
        Refused("H2", Week with { People = [.. Week.People.Select(p => p with { Skills = [] })] }, "M6");

        static void Refused(string rule, Week turned, params string[] also) =>
            Assert.Equal([rule, .. also], Judge.Examine(turned, Good.Plan).Breaches.Select(b => b.Rule).Distinct());
    }
}
