namespace Bakehouse.Domain.Tests.Planning.Rules;

using Bakehouse.Domain.Planning;
using Bakehouse.Testing.Planning;
using static JudgeSays;

/// <summary>M1 to M7: bowls and ovens.</summary>
public sealed class MachinesTests
{
    /// <summary>A bowl for 900 of sponge, turn 5 to the same and 10 to another, 45 min to clean; an oven with two levels of two 8 in or three 6 in pans.</summary>
    private static WeekBuilder Kitchen => new WeekBuilder().Person("ann").Person("ben").Person("cat", "hand")
        .Bowl("bowl", 5, 10, 45).Bowl("pot").Family("sponge", "bowl", 900).Family("cream", "bowl", 900)
        .Oven("oven", 2, [(8, 2), (6, 3)], same: 5, other: 15);

    private static PlanBuilder Rows => new();

    [Fact]
    public void M1_the_machine_can_do_it()
    {
        var week = Kitchen.Mix("mix", 20, "sponge", 500).Bake("bake", 40, "177", 8);

        Kept(week, Rows.Step("mix", 0, "ann", "bowl").Step("bake", 20, machine: "oven"));

        // The pot is named in no limit of sponge; an oven is no bowl, a bowl no oven; a row without a machine does nothing.
        Broken("M1", "mix", week, Rows.Step("mix", 0, "ann", "pot").Step("bake", 20, machine: "oven"), "pot", "mix");
        Broken("M1", "mix", week, Rows.Step("mix", 0, "ann", "oven").Step("bake", 40, machine: "oven"), "oven", "mix");
        Broken("M1", "bake", week, Rows.Step("mix", 0, "ann", "bowl").Step("bake", 40, machine: "bowl"), "bowl", "bake");
        Broken("M1", "bake", week, Rows.Step("mix", 0, "ann", "bowl").Step("bake", 20), "No machine", "bake");

        // No level takes a 12 in pan.
        Broken("M1", "bake", Kitchen.Bake("bake", 40, "177", 8, 12), Rows.Step("bake", 0, machine: "oven"), "oven");
    }

    [Fact]
    public void M2_a_bowl_is_not_overfilled()
    {
        var together = Rows.Step("a", 0, "ann", "bowl", "b1").Step("b", 0, "ann", "bowl", "b1");

        // 500 + 400 = 900 is just what it holds; 500 + 405 is not.
        Kept(Kitchen.Mix("a", 20, "sponge", 500).Mix("b", 20, "sponge", 400), together);
        Broken("M2", "a", Kitchen.Mix("a", 20, "sponge", 500).Mix("b", 20, "sponge", 405), together, "900", "905");
        Broken("M2", "a", Kitchen.Mix("a", 20, "sponge", 905), Rows.Step("a", 0, "ann", "bowl"), "905");
    }

    [Fact]
    public void M3_a_batch_is_of_one_kind_one_start_and_the_same_people()
    {
        var week = Kitchen.Mix("a", 20, "sponge", 100).Mix("b", 20, "sponge", 100);

        Kept(week, Rows.Step("a", 0, "ann", "bowl", "b1").Step("b", 0, "ann", "bowl", "b1"));
        Broken("M3", "a", week, Rows.Step("a", 0, "ann", "bowl", "b1").Step("b", 5, "ann", "bowl", "b1"), "a");
        Broken("M3", "a", week, Rows.Step("a", 0, "ann", "bowl", "b1").Step("b", 0, "ben", "bowl", "b1"), "people");
        Broken("M3", "a", Kitchen.Mix("a", 20, "sponge", 100).Mix("b", 20, "cream", 100), Rows.Step("a", 0, "ann", "bowl", "b1").Step("b", 0, "ann", "bowl", "b1"), "family");
        Broken("M3", "x", Kitchen.Bake("x", 40, "177", 8).Bake("y", 40, "160", 8), Rows.Step("x", 0, machine: "oven", batch: "l").Step("y", 0, machine: "oven", batch: "l"), "heat");

        // The same label on two machines is two batches.
        var two = Kitchen.Bowl("bowl2").Family("cream2", "bowl2", 900).Mix("a", 20, "sponge", 100).Mix("b", 20, "cream2", 100);
        Kept(two, Rows.Step("a", 0, "ann", "bowl", "b1").Step("b", 40, "ann", "bowl2", "b1"));
    }

    [Fact]
    public void M4_the_pans_of_a_load_stand_on_the_levels()
    {
        // A level takes 2 eights or 3 sixes, shares 1/2 and 1/3. Two eights and three sixes fill the two levels.
        Kept(Kitchen.Bake("load", 40, "177", 8, 8, 6, 6, 6), Rows.Step("load", 0, machine: "oven"));
        Broken("M4", "load", Kitchen.Bake("load", 40, "177", 8, 8, 8, 8, 6), Rows.Step("load", 0, machine: "oven"), "8, 8, 8, 8, 6", "2 levels");

        // Three eights and one six have shares 3/2 + 1/3 = 11/6 < 2 and stand: 8 8 | 8 6. With two sixes the sum is 13/6 > 2.
        Kept(Kitchen.Bake("load", 40, "177", 8, 8, 8, 6), Rows.Step("load", 0, machine: "oven"));
        Broken("M4", "load", Kitchen.Bake("load", 40, "177", 8, 8, 8, 6, 6), Rows.Step("load", 0, machine: "oven"), "8, 8, 8, 6, 6");
    }

    [Fact]
    public void M4_looks_at_each_level_and_not_only_at_the_sum()
    {
        // A level takes 2 tens, 3 eights or 5 sixes. 10 8 8 6 6 6 6 sums 1/2 + 2/3 + 4/5 = 59/30 < 2, yet beside the ten there is
        // room for one eight (leaving 1/3 + 4/5 > 1) or two sixes (leaving 2/3 + 2/5 > 1). Without one six: 10 6 6 | 8 8 6 stands.
        static WeekBuilder Load(params int[] pans) => new WeekBuilder().Oven("oven", 2, [(10, 2), (8, 3), (6, 5)]).Bake("load", 40, "177", pans);

        Kept(Load(10, 8, 8, 6, 6, 6), Rows.Step("load", 0, machine: "oven"));
        Broken("M4", "load", Load(10, 8, 8, 6, 6, 6, 6), Rows.Step("load", 0, machine: "oven"), "2 levels");
    }

    [Fact]
    public void M5_runs_do_not_overlap_and_leave_turn_time()
    {
        var same = Kitchen.Mix("a", 20, "sponge", 100).Mix("b", 20, "sponge", 100);
        var other = Kitchen.Mix("a", 20, "sponge", 100).Mix("b", 20, "cream", 100);

        // a ends at 20; the same again from 25, another from 30.
        Kept(same, Rows.Step("a", 0, "ann", "bowl").Step("b", 25, "ben", "bowl"));
        Broken("M5", "b", same, Rows.Step("a", 0, "ann", "bowl").Step("b", 20, "ben", "bowl"), "bowl", "5 min");
        Kept(other, Rows.Step("a", 0, "ann", "bowl").Step("b", 30, "ben", "bowl"));
        Broken("M5", "b", other, Rows.Step("a", 0, "ann", "bowl").Step("b", 25, "ben", "bowl"), "10 min");
        Broken("M5", "b", same, Rows.Step("a", 0, "ann", "bowl").Step("b", 0, "ben", "bowl"), "bowl");

        // A clean-down of 45 min needs no turn time before or after: 20 to 65.
        Kept(other, Rows.Step("a", 0, "ann", "bowl").Clean("bowl", 20, "ann").Step("b", 65, "ben", "bowl"));
        Broken("M5", "b", other, Rows.Step("a", 0, "ann", "bowl").Clean("bowl", 20, "ann").Step("b", 60, "ben", "bowl"), "clean-down");
    }

    [Fact]
    public void M5_a_load_keeps_the_oven_until_its_longest_is_done()
    {
        var week = Kitchen.Bake("x", 20, "177", 8).Bake("y", 40, "177", 8).Bake("z", 20, "160", 8);

        // x and y go in at 0; x is done at 20, the oven at 40; another heat from 55.
        Kept(week, Rows.Step("x", 0, machine: "oven", batch: "l").Step("y", 0, machine: "oven", batch: "l").Step("z", 55, machine: "oven"));
        Broken("M5", "z", week, Rows.Step("x", 0, machine: "oven", batch: "l").Step("y", 0, machine: "oven", batch: "l").Step("z", 50, machine: "oven"), "15 min");
    }

    [Fact]
    public void M6_a_clean_down_is_done_properly()
    {
        var week = Kitchen.Person("dan", shifts: [new Span(0, 100)]);

        Kept(week, Rows.Clean("bowl", 0, "ann"));
        Kept(week, Rows.Clean("bowl", 55, "dan"));
        Broken("M6", "bowl", week, Rows.Clean("bowl", 0, "cat"), "clean");
        Broken("M6", "bowl", week, Rows.Clean("bowl", 0, "ann ben"), "2 people");
        Broken("M6", "bowl", week, Rows.Clean("bowl", 60, "dan"), "dan");
        Broken("M6", "bowl", week, Rows.Clean("bowl", 3, "ann"), "outside the week");
        Broken("M6", "pot", week, Rows.Clean("pot", 0, "ann"), "has no clean-down");
        Broken("M6", "oven", week, Rows.Clean("oven", 0, "ann"), "has no clean-down");
    }

    [Fact]
    public void M7_a_machine_out_of_use_is_not_used()
    {
        var week = new WeekBuilder().Oven("oven", 1, [(8, 2)], down: new Span(100, 200)).Bake("x", 40, "177", 8);

        Kept(week, Rows.Step("x", 60, machine: "oven"));
        Kept(week, Rows.Step("x", 200, machine: "oven"));
        Broken("M7", "x", week, Rows.Step("x", 65, machine: "oven"), "oven", "out of use");
    }
}
