namespace Bakehouse.Domain.Tests.Planning;

using Bakehouse.Domain.Planning;
using Bakehouse.Testing.Planning;

/// <summary>L1 to L6 on tiny weeks, each figure worked out beside it, and the order in which they are compared.</summary>
public sealed class LevelsTests
{
    private static PlanBuilder Rows => new();

    private static Levels Of(WeekBuilder week, PlanBuilder plan)
    {
        var verdict = Judge.Examine(week.Build(), plan.Build());
        Assert.Empty(verdict.Breaches);
        return verdict.Levels;
    }

    [Fact]
    public void L1_is_minutes_late_of_promised_orders_and_L4_of_wished_ones()
    {
        // Boxed by 20, out 150 to 160, agreed 100 to 130: the start is 20 min late, the end 30.
        static Levels Out(int rank, bool end) => Of(
            new WeekBuilder().Person("ann").Step("box", 20).Step("out", 10).Order("o", "box", "out", 100, 130, rank, end: end),
            Rows.Step("box", 0, "ann").Step("out", 150, "ann"));

        Assert.Equal(new Levels(0, 20, 0, 0, 0, 0, 0), Out(1, false));
        Assert.Equal(new Levels(0, 30, 0, 0, 0, 0, 0), Out(1, true));
        Assert.Equal(new Levels(0, 0, 0, 0, 20, 0, 0), Out(2, false));
    }

    [Fact]
    public void L2_is_minutes_past_a_soft_age()
    {
        // Baked by 20, eaten from 260: 240 min old, 40 past 200; the second age is kept.
        var week = new WeekBuilder().Person("ann").Step("bake", 20).Step("out", 10).Age("soft", "bake", "out", 200, false).Age("long", "bake", "out", 240, false);

        Assert.Equal(40, Of(week, Rows.Step("bake", 0, "ann").Step("out", 260, "ann")).Stale);
    }

    [Fact]
    public void L3_is_minutes_worked_in_overtime_a_bowlful_once()
    {
        // Shift 0 to 100, overtime 100 to 200. The bowlful of 20 and 30 min from 90 lies 20 min in overtime, wiping 130 to 140 ten more.
        var week = new WeekBuilder().Person("ann", shifts: [new Span(0, 100)], extra: [new Span(100, 200)]).Bowl("bowl", clean: 15).Family("sponge", "bowl", 900)
            .Mix("a", 20, "sponge", 100).Mix("b", 30, "sponge", 100).Step("wipe", 10);
        var plan = Rows.Step("a", 90, "ann", "bowl", "b").Step("b", 90, "ann", "bowl", "b").Step("wipe", 130, "ann");

        Assert.Equal(30, Of(week, plan).Overtime);

        // A clean-down of 15 min in overtime counts, too.
        Assert.Equal(45, Of(week, plan.Clean("bowl", 150, "ann")).Overtime);
    }

    [Fact]
    public void L4_is_freshness_and_buffer()
    {
        // Decorated by 20, out at 250: 230 min, 30 past 200. Boxed by 230: 20 min before, 10 short of the buffer of 30.
        var week = new WeekBuilder().Person("ann").Step("decorate", 20).Step("box", 10).Step("out", 10)
            .Order("o", "box", "out", 200, 300, buffer: 30, fresh: [new Fresh("decorate", 200)]);

        Assert.Equal(40, Of(week, Rows.Step("decorate", 0, "ann").Step("box", 220, "ann").Step("out", 250, "ann")).Fresh);
        Assert.Equal(0, Of(week, Rows.Step("decorate", 30, "ann").Step("box", 210, "ann").Step("out", 250, "ann")).Fresh);
    }

    [Fact]
    public void L5_counts_rows_of_the_wall_that_differ()
    {
        var wall = Rows.Step("a", 0, "ann").Step("b", 20, "ann").Step("c", 40, "ann").Step("gone", 0, "ann").Hold("h", "rack").Take("where", "shop").Step("fold", 60, "ann").Build();
        var week = new WeekBuilder().Person("ann").Person("ben").Store("rack").Store("cool").Choice("where", "shop", "site")
            .Step("a", 20).Step("b", 20).Step("c", 20).Step("new", 20).Step("fold", 20, taken: new Taken("where", "shop"))
            .Hold("h", "a", "c", stores: [new Standing("rack", 0, 90), new Standing("cool", 0, 90)]).Wall(wall);

        // b moved, c changed hands, h stands elsewhere, fold is absent by the choice: 4. "gone" is no longer wanted, "new" is new: 0.
        var plan = Rows.Take("where", "site").Step("a", 0, "ann").Step("b", 25, "ann").Step("c", 40, "ben").Step("new", 100, "ann").Hold("h", "cool");
        Assert.Equal(4, Of(week, plan).Changes);
        Assert.Equal(0, Of(new WeekBuilder().Person("ann").Step("a", 20), Rows.Step("a", 0, "ann")).Changes);
    }

    [Fact]
    public void L6_is_the_gap_between_most_and_least_hands()
    {
        // Ann 20 + 30, Ben 10, Cat does not share: 40. Alone there is nothing to spread.
        var week = new WeekBuilder().Person("ann", share: true).Person("ben", share: true).Person("cat").Bowl("bowl", clean: 30)
            .Step("a", 20).Step("b", 10).Step("c", 100);

        Assert.Equal(40, Of(week, Rows.Step("a", 0, "ann").Clean("bowl", 30, "ann").Step("b", 0, "ben").Step("c", 0, "cat")).Uneven);
        Assert.Equal(0, Of(new WeekBuilder().Person("ann", share: true).Step("a", 20), Rows.Step("a", 0, "ann")).Uneven);
    }

    [Fact]
    public void An_earlier_level_always_wins()
    {
        // From the worst to the best: each is better in one level and worse in all that come after it.
        Levels[] plan =
        [
            new(2, 0, 0, 0, 0, 0, 0), new(1, 2, 0, 0, 0, 0, 0), new(1, 1, 2, 0, 0, 0, 0), new(1, 1, 1, 2, 0, 0, 0), new(1, 1, 1, 1, 2, 0, 0),
            new(1, 1, 1, 1, 1, 2, 0), new(1, 1, 1, 1, 1, 1, 2), new(1, 1, 1, 1, 1, 1, 1),
        ];
        Levels[] repair =
        [
            new(2, 0, 0, 0, 0, 0, 0), new(1, 2, 0, 0, 0, 0, 0), new(1, 1, 0, 0, 0, 2, 0), new(1, 1, 2, 0, 0, 1, 0), new(1, 1, 1, 2, 0, 1, 0),
            new(1, 1, 1, 1, 2, 1, 0), new(1, 1, 1, 1, 1, 1, 2), new(1, 1, 1, 1, 1, 1, 1),
        ];

        InOrder(plan, false);
        InOrder(repair, true);

        // The two orders differ: more changes and less overtime is better as a plan, worse as a repair.
        Assert.True(new Levels(0, 0, 0, 1, 0, 9, 0).CompareTo(new Levels(0, 0, 0, 2, 0, 0, 0)) < 0);
        Assert.True(new Levels(0, 0, 0, 1, 0, 9, 0).CompareTo(new Levels(0, 0, 0, 2, 0, 0, 0), repair: true) > 0);
    }

    private static void InOrder(Levels[] worstFirst, bool repair)
    {
        for (var i = 0; i < worstFirst.Length; i++)
        {
            for (var j = 0; j < worstFirst.Length; j++)
            {
                Assert.Equal(Math.Sign(j - i), Math.Sign(worstFirst[i].CompareTo(worstFirst[j], repair)));
            }
        }
    }
}
