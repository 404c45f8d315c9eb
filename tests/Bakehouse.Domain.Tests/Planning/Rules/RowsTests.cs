namespace Bakehouse.Domain.Tests.Planning.Rules;

using Bakehouse.Domain.Planning;
using Bakehouse.Testing.Planning;
using static JudgeSays;

/// <summary>W0 to W3: a row for everything that is wanted, on whole grains.</summary>
public sealed class RowsTests
{
    /// <summary>Ann whisks, 20 min, then it stands on the rack until she spreads it, 10 min.</summary>
    private static WeekBuilder Two => new WeekBuilder().Person("ann").Store("rack")
        .Step("whisk", 20).Step("spread", 10).Hold("rest", "whisk", "spread", stores: [new Standing("rack", 0, 500)]);

    private static PlanBuilder Good => new PlanBuilder().Step("whisk", 0, "ann").Step("spread", 40, "ann").Hold("rest", "rack");

    [Fact]
    public void W0_every_name_is_known()
    {
        Kept(Two, Good);

        // No such step, hold, person, machine, store or choice stands in the week.
        Broken("W0", "knead", Two, Good.Step("knead", 100, "ann"), "step knead");
        Broken("W0", "prove", Two, Good.Hold("prove", "rack"), "hold prove");
        Broken("W0", "zoe", Two, new PlanBuilder().Step("whisk", 0, "ann").Step("spread", 40, "zoe").Hold("rest", "rack"), "person zoe");
        Broken("W0", "vat", Two, Good.Clean("vat", 200, "ann"), "machine vat");
        Broken("W0", "loft", Two, new PlanBuilder().Step("whisk", 0, "ann").Step("spread", 40, "ann").Hold("rest", "loft"), "store loft");
        Broken("W0", "where", Two, Good.Take("where", "here"), "choice where");
    }

    [Fact]
    public void W1_every_present_step_and_hold_has_one_row_and_no_other_has_one()
    {
        var week = Two.Choice("where", "shop", "site").Step("drive", 30, taken: new Taken("where", "site"));

        Kept(week, Good.Take("where", "shop"));
        Kept(week, Good.Take("where", "site").Step("drive", 100, "ann"));

        // Site is taken and driving has no row; shop is taken and driving has one.
        Broken("W1", "drive", week, Good.Take("where", "site"), "0 rows", "needs 1");
        Broken("W1", "drive", week, Good.Take("where", "shop").Step("drive", 100, "ann"), "1 rows", "needs 0");

        // Spread twice; the rest without a place.
        Broken("W1", "spread", Two, Good.Step("spread", 60, "ann"), "2 rows");
        Broken("W1", "rest", Two, new PlanBuilder().Step("whisk", 0, "ann").Step("spread", 40, "ann"), "hold rest", "0 rows");
    }

    [Fact]
    public void W2_every_choice_is_made()
    {
        var week = Two.Choice("where", "shop", "site");

        Kept(week, Good.Take("where", "site"));
        Broken("W2", "where", week, Good, "shop, site");
        Broken("W2", "where", week, Good.Take("where", "moon"), "shop, site");
    }

    [Fact]
    public void W3_starts_are_whole_grains_inside_the_week()
    {
        var week = new WeekBuilder().Step("cool", 20, skill: null);

        // The week has 1000 minutes, so 980 is the last start of 20 min.
        Kept(week, new PlanBuilder().Step("cool", 0));
        Kept(week, new PlanBuilder().Step("cool", 980));
        Broken("W3", "cool", week, new PlanBuilder().Step("cool", 985), "985");
        Broken("W3", "cool", week, new PlanBuilder().Step("cool", 12), "12", "5 minutes");

        // A start before the week is also before the first free minute (X2), so two rules speak.
        Assert.Equal(["W3", "X2"], Judge.Examine(week.Build(), new PlanBuilder().Step("cool", -5).Build()).Breaches.Select(b => b.Rule));
        Assert.Contains(Judge.Examine(week.Build(), new PlanBuilder().Step("cool", 2147483645).Build()).Breaches, b => b.Rule == "W3");
    }
}
