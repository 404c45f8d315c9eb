namespace Bakehouse.Domain.Tests.Planning.Rules;

using Bakehouse.Domain.Planning;
using Bakehouse.Testing.Planning;
using static JudgeSays;

/// <summary>P1 and X1 to X3: what is promised, what is done, and what may not be touched.</summary>
public sealed class PromisesTests
{
    private static PlanBuilder Rows => new();

    [Fact]
    public void P1_nobody_is_served_before_the_agreed_time()
    {
        static WeekBuilder Handover(bool end) => new WeekBuilder().Person("ann").Step("box", 10).Step("out", 30).Order("o", "box", "out", 100, 130, end: end);

        // The start is promised: 100. The end is promised: a drive of 30 min from 70 ends at 100.
        Kept(Handover(false), Rows.Step("box", 0, "ann").Step("out", 100, "ann"));
        Broken("P1", "o", Handover(false), Rows.Step("box", 0, "ann").Step("out", 95, "ann"), "95", "100");
        Kept(Handover(true), Rows.Step("box", 0, "ann").Step("out", 70, "ann"));
        Broken("P1", "o", Handover(true), Rows.Step("box", 0, "ann").Step("out", 65, "ann"), "95", "100");

        // Late is no broken rule but a level: 10 min after 130.
        Assert.Equal(10, Judge.Examine(Handover(false).Build(), Rows.Step("box", 0, "ann").Step("out", 140, "ann").Build()).Levels.Late);
    }

    [Fact]
    public void X1_what_is_done_started_or_pinned_stays()
    {
        static WeekBuilder Kitchen() => new WeekBuilder().Person("ann").Person("ben").Bowl("bowl").Bowl("big").Family("sponge", "bowl", 900).Store("rack").Store("fridge")
            .Mix("mix", 20, "sponge", 100).Step("bake", 30, null).Hold("wait", "mix", "bake", stores: [new Standing("rack", 0, 90), new Standing("fridge", 0, 90)]);
        var plan = Rows.Step("mix", 0, "ann", "bowl").Step("bake", 40).Hold("wait", "rack");

        Kept(Kitchen().Fixed("mix", 0, ["ann"], "bowl").FixedPlace("wait", "rack"), plan);
        Broken("X1", "mix", Kitchen().Fixed("mix", 5), plan, "pinned", "start");
        Broken("X1", "mix", Kitchen().Fixed("mix", 0, ["ben"]), plan, "people");
        Broken("X1", "mix", Kitchen().Fixed("mix", machine: "big"), plan, "machine");
        Broken("X1", "wait", Kitchen().FixedPlace("wait", "fridge"), plan, "place");

        // Each field that differs is a breach of its own.
        Assert.Equal(2, Judge.Examine(Kitchen().Fixed("mix", 5, ["ben"], "bowl").Build(), plan.Build()).Breaches.Count);
    }

    [Fact]
    public void X2_nothing_new_in_the_past_or_the_frozen_stretch()
    {
        static WeekBuilder Late() => new WeekBuilder().Person("ann").Bowl("bowl", clean: 30).Step("a", 20).FreeFrom(100);
        static PlanBuilder From(int a) => Rows.Step("a", a, "ann");

        Kept(Late(), From(100));
        Broken("X2", "a", Late(), From(95), "95", "100");
        Kept(Late().Fixed("a", 20), From(20));

        // A clean-down before now is new unless it stands on the wall.
        Broken("X2", "bowl", Late(), From(100).Clean("bowl", 20, "ann"), "clean-down", "20");
        Kept(Late().Wall(Rows.Clean("bowl", 20, "ann").Build()), From(100).Clean("bowl", 20, "ann"));
    }

    [Fact]
    public void X3_an_insertion_keeps_every_row_of_the_wall()
    {
        var wall = Rows.Step("a", 0, "ann", "bowl").Hold("h", "rack").Build();

        Assert.Empty(Judge.KeepsEveryRow(wall, Rows.Step("new", 50, "ann").Step("a", 0, "ann", "bowl").Hold("h", "rack").Build()));
        Plan[] moved =
        [
            Rows.Step("a", 5, "ann", "bowl").Hold("h", "rack").Build(),
            Rows.Step("a", 0, "ben", "bowl").Hold("h", "rack").Build(),
            Rows.Step("a", 0, "ann", "big").Hold("h", "rack").Build(),
            Rows.Step("a", 0, "ann", "bowl").Hold("h", "fridge").Build(),
            Rows.Hold("h", "rack").Build(),
        ];
        Assert.All(moved, m => Assert.Equal(["X3"], Judge.KeepsEveryRow(wall, m).Select(b => b.Rule)));
    }
}
