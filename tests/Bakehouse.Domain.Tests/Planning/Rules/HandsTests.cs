namespace Bakehouse.Domain.Tests.Planning.Rules;

using Bakehouse.Domain.Planning;
using Bakehouse.Testing.Planning;
using static JudgeSays;

/// <summary>H1 to H4 and T1, T2: who does it, and with what.</summary>
public sealed class HandsTests
{
    private static PlanBuilder Rows => new();

    [Fact]
    public void H1_as_many_different_people_as_asked()
    {
        var week = new WeekBuilder().Person("ann").Person("ben").Step("carry", 10, count: 2).Step("cool", 20, skill: null);

        Kept(week, Rows.Step("carry", 0, "ann ben").Step("cool", 10));
        Broken("H1", "carry", week, Rows.Step("carry", 0, "ann").Step("cool", 10), "has 1", "needs 2");

        // Ann twice is one person; cooling needs nobody.
        Broken("H1", "carry", week, Rows.Step("carry", 0, "ann ann").Step("cool", 10), "has 1", "needs 2");
        Broken("H1", "cool", week, Rows.Step("carry", 0, "ann ben").Step("cool", 10, "ann"), "has 1", "needs 0");
    }

    [Fact]
    public void H2_each_has_the_skill()
    {
        var week = new WeekBuilder().Person("ann", "pipe hand").Person("ben", "hand").Step("roses", 30, "pipe");

        Kept(week, Rows.Step("roses", 0, "ann"));
        Broken("H2", "roses", week, Rows.Step("roses", 0, "ben"), "ben", "pipe");
    }

    [Fact]
    public void H3_a_step_lies_in_one_stretch_of_work()
    {
        // Ann works 0 to 100, has a break, works 120 to 200, and could stay 200 to 260: shift and overtime touch and join.
        var week = new WeekBuilder().Person("ann", shifts: [new Span(0, 100), new Span(120, 200)], extra: [new Span(200, 260)]).Step("coat", 40);

        Kept(week, Rows.Step("coat", 60, "ann"));
        Kept(week, Rows.Step("coat", 180, "ann"));
        Kept(week, Rows.Step("coat", 220, "ann"));

        // 65 to 105 runs into the break, 225 to 265 past the end, 80 to 120 is whole in neither.
        Broken("H3", "coat", week, Rows.Step("coat", 65, "ann"), "ann", "coat");
        Broken("H3", "coat", week, Rows.Step("coat", 225, "ann"), "ann", "coat");
        Broken("H3", "coat", week, Rows.Step("coat", 80, "ann"), "ann", "coat");
    }

    [Fact]
    public void H4_one_person_one_thing_at_a_time()
    {
        var week = new WeekBuilder().Person("ann").Step("long", 100).Step("short", 10).Step("last", 10).Bowl("bowl", clean: 30);

        Kept(week, Rows.Step("long", 0, "ann").Step("short", 100, "ann").Step("last", 110, "ann"));
        Broken("H4", "short", week, Rows.Step("long", 0, "ann").Step("short", 95, "ann").Step("last", 110, "ann"), "ann", "long", "short");

        // Two short things inside the long one are two breaches; a clean-down (200 to 230) takes hands, too.
        var twice = Judge.Examine(week.Build(), Rows.Step("long", 0, "ann").Step("short", 20, "ann").Step("last", 50, "ann").Build());
        Assert.Equal(["H4 short", "H4 last"], twice.Breaches.Select(b => $"{b.Rule} {b.Step}"));
        Broken("H4", "last", week, Rows.Step("long", 0, "ann").Step("short", 100, "ann").Step("last", 225, "ann").Clean("bowl", 200, "ann"), "ann", "clean-down");
    }

    [Fact]
    public void H4_a_bowlful_is_one_thing()
    {
        var week = new WeekBuilder().Person("ann").Bowl("bowl").Family("sponge", "bowl", 900)
            .Mix("a", 20, "sponge", 400).Mix("b", 30, "sponge", 400).Step("wipe", 5);

        // One bowlful 0 to 30: Ann is free at 30, not at 20.
        Kept(week, Bowlful.Step("wipe", 30, "ann"));
        Broken("H4", "wipe", week, Bowlful.Step("wipe", 20, "ann"), "ann");
    }

    [Fact]
    public void T1_not_more_pieces_of_a_tool_than_there_are()
    {
        var week = new WeekBuilder().Person("ann").Person("ben").Person("cat").Tool("wheel", 2)
            .Step("a", 30, tool: "wheel").Step("b", 30, tool: "wheel").Step("c", 30, tool: "wheel");

        // Two wheels: a and b from 0, c from 30 when they stop. At 25 three would turn.
        Kept(week, Rows.Step("a", 0, "ann").Step("b", 0, "ben").Step("c", 30, "cat"));
        Broken("T1", "c", week, Rows.Step("a", 0, "ann").Step("b", 0, "ben").Step("c", 25, "cat"), "3 of wheel", "there are 2");
    }

    [Fact]
    public void T2_a_tool_out_of_use_is_not_used()
    {
        var week = new WeekBuilder().Person("ann").Tool("wheel", 1, new Span(100, 200)).Step("a", 30, tool: "wheel");

        Kept(week, Rows.Step("a", 70, "ann"));
        Kept(week, Rows.Step("a", 200, "ann"));
        Broken("T2", "a", week, Rows.Step("a", 75, "ann"), "wheel", "out of use");
        Broken("T2", "a", week, Rows.Step("a", 195, "ann"), "wheel", "out of use");
    }

    private static PlanBuilder Bowlful => Rows.Step("a", 0, "ann", "bowl", "b1").Step("b", 0, "ann", "bowl", "b1");
}
