namespace Bakehouse.Domain.Tests.Planning.Rules;

using Bakehouse.Domain.Planning;
using Bakehouse.Testing.Planning;
using static JudgeSays;

/// <summary>S1 to S6 and the food clocks and ages: where things stand, and how long.</summary>
public sealed class StandingTests
{
    /// <summary>Fill, 20 min, then 30 to 200 min in the fridge or 60 to 300 on the rack, then coat; 20 cm high.</summary>
    private static WeekBuilder Tier => new WeekBuilder().Person("ann").Store("fridge", 1, true, 20).Store("rack").Store("low", 9, false, 15)
        .Step("fill", 20).Step("coat", 20).Hold("set", "fill", "coat", 1, 20, null, new Standing("fridge", 30, 200), new Standing("rack", 60, 300), new Standing("low", 0, 300));

    private static PlanBuilder At(int coat, string store) => new PlanBuilder().Step("fill", 0, "ann").Step("coat", coat, "ann").Hold("set", store);

    [Fact]
    public void S1_least_gap_of_the_place_it_stands_in()
    {
        // Filled at 20: cold enough at 50 in the fridge, firm at 80 on the rack.
        Kept(Tier, At(50, "fridge"));
        Broken("S1", "set", Tier, At(45, "fridge"), "25 min", "fridge", "30");
        Kept(Tier, At(80, "rack"));
        Broken("S1", "set", Tier, At(75, "rack"), "55 min", "60");
    }

    [Fact]
    public void S1_nothing_starts_before_what_it_waits_for_is_over()
    {
        var week = new WeekBuilder().Store("rack").Step("a", 20, null).Step("b", 20, null).Hold("h", "a", "b", stores: [new Standing("rack", 0, 100)]);

        Kept(week, new PlanBuilder().Step("a", 0).Step("b", 20).Hold("h", "rack"));
        Broken("S1", "h", week, new PlanBuilder().Step("a", 0).Step("b", 15).Hold("h", "rack"), "-5 min");
    }

    [Fact]
    public void S2_most_gap_of_the_place_it_stands_in()
    {
        // 20 + 200 = 220 in the fridge, 20 + 300 = 320 on the rack.
        Kept(Tier, At(220, "fridge"));
        Broken("S2", "set", Tier, At(225, "fridge"), "205 min", "200");
        Kept(Tier, At(225, "rack"));
    }

    [Fact]
    public void S3_it_stands_where_it_may()
    {
        var week = Tier.Store("freezer", 5, true);

        Kept(week, At(100, "rack"));
        Broken("S3", "set", week, At(100, "freezer"), "set", "freezer");
    }

    [Fact]
    public void S4_it_is_not_too_tall()
    {
        // 20 cm stand under 20 cm, not under 15; what stands no minute needs no height.
        Kept(Tier, At(100, "fridge"));
        Broken("S4", "set", Tier, At(100, "low"), "20 cm", "15 cm");
        Kept(Tier, At(20, "low"));
    }

    [Fact]
    public void S5_places_are_not_exceeded()
    {
        // Two tiers of one place, one place in the fridge. The first stands 20 to 100; the second may come in at 100.
        var week = Tier.Person("ben").Step("fill2", 20).Step("coat2", 20).Hold("set2", "fill2", "coat2", stores: [new Standing("fridge", 0, 500)]);

        Kept(week, At(100, "fridge").Step("fill2", 80, "ben").Step("coat2", 200, "ben").Hold("set2", "fridge"));
        Broken("S5", "set2", week, At(100, "fridge").Step("fill2", 75, "ben").Step("coat2", 200, "ben").Hold("set2", "fridge"), "fridge", "1 places", "needs 2");

        // A wide one takes two places by itself.
        var wide = new WeekBuilder().Store("fridge", 1, true).Step("a", 20, null).Step("b", 20, null).Hold("h", "a", "b", 2, stores: [new Standing("fridge", 0, 100)]);
        Broken("S5", "h", wide, new PlanBuilder().Step("a", 0).Step("b", 50).Hold("h", "fridge"), "needs 2");
        Kept(wide, new PlanBuilder().Step("a", 0).Step("b", 20).Hold("h", "fridge"));
    }

    [Fact]
    public void S6_a_store_out_of_use_holds_nothing()
    {
        var week = new WeekBuilder().Store("fridge", 9, true, 99, new Span(100, 200)).Step("a", 20, null).Step("b", 20, null).Hold("h", "a", "b", stores: [new Standing("fridge", 0, 500)]);

        // It stands 20 to 100 and is gone, or comes at 200; 20 to 105 meets the repair.
        Kept(week, new PlanBuilder().Step("a", 0).Step("b", 100).Hold("h", "fridge"));
        Kept(week, new PlanBuilder().Step("a", 180).Step("b", 240).Hold("h", "fridge"));
        Broken("S6", "h", week, new PlanBuilder().Step("a", 0).Step("b", 105).Hold("h", "fridge"), "fridge", "out of use");
        Kept(week, new PlanBuilder().Step("a", 100).Step("b", 120).Hold("h", "fridge"));
    }

    [Fact]
    public void K1_time_out_of_the_cold_adds_up()
    {
        // Fill 20 + rack + chill + coat 20 + rack. Limit 120: 40 min of steps leave 80 min on racks, whatever lies between.
        static WeekBuilder Custard() => new WeekBuilder().Person("ann").Store("rack").Store("fridge", 9, true)
            .Step("fill", 20).Step("chill", 5, null).Step("coat", 20).Step("box", 10)
            .Hold("warm1", "fill", "chill", stores: [new Standing("rack", 0, 500), new Standing("fridge", 0, 500)])
            .Hold("cold", "chill", "coat", stores: [new Standing("fridge", 0, 900)])
            .Hold("warm2", "coat", "box", stores: [new Standing("rack", 0, 500), new Standing("fridge", 0, 500)])
            .Clock("custard", ["fill", "coat"], ["warm1", "cold", "warm2"], 120);
        static PlanBuilder Day(int chill, int box, string last) => new PlanBuilder().Step("fill", 0, "ann").Step("chill", chill).Step("coat", 300, "ann")
            .Step("box", box, "ann").Hold("warm1", "rack").Hold("cold", "fridge").Hold("warm2", last);

        // 20 + 50 (20 to 70) + 20 + 30 (320 to 350) = 120. Five minutes more break it, five hours of cold do not help.
        Kept(Custard(), Day(70, 350, "rack"));
        Broken("K1", "custard", Custard(), Day(75, 350, "rack"), "125 min", "120");
        Broken("K1", "custard", Custard(), Day(70, 355, "rack"), "125 min");
        Kept(Custard(), Day(70, 355, "fridge"));
    }

    [Fact]
    public void K2_nothing_is_older_than_a_hard_age()
    {
        static WeekBuilder Keeps(bool hard) => new WeekBuilder().Person("ann").Step("bake", 20).Step("out", 10).Age("keeps", "bake", "out", 200, hard);

        Kept(Keeps(true), new PlanBuilder().Step("bake", 0, "ann").Step("out", 220, "ann"));
        Broken("K2", "keeps", Keeps(true), new PlanBuilder().Step("bake", 0, "ann").Step("out", 225, "ann"), "205 min", "200");
        Kept(Keeps(false), new PlanBuilder().Step("bake", 0, "ann").Step("out", 225, "ann"));
    }
}
