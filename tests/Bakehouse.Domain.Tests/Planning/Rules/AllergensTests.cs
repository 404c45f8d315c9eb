namespace Bakehouse.Domain.Tests.Planning.Rules;

using Bakehouse.Domain.Planning;
using Bakehouse.Testing.Planning;
using static JudgeSays;

/// <summary>A1 to A3: what is in one cake stays out of another that is kept from it.</summary>
public sealed class AllergensTests
{
    private static PlanBuilder Rows => new();

    private static WeekBuilder Kitchen => new WeekBuilder().Person("ann").Person("ben")
        .Bowl("bowl", clean: 45).Bowl("other").Family("cream", "bowl", 900).Family("rice", "other", 900);

    [Fact]
    public void A1_nothing_in_a_batch_harms_another()
    {
        var apart = Kitchen.Mix("plain", 20, "cream", 100, has: "milk").Mix("kept", 20, "cream", 100, avoid: "nuts");
        var harm = Kitchen.Mix("praline", 20, "cream", 100, has: "nuts").Mix("kept", 20, "cream", 100, avoid: "nuts");

        Kept(apart, Rows.Step("plain", 0, "ann", "bowl", "b").Step("kept", 0, "ann", "bowl", "b"));
        Broken("A1", "praline", harm, Rows.Step("praline", 0, "ann", "bowl", "b").Step("kept", 0, "ann", "bowl", "b"), "nuts");
    }

    [Fact]
    public void A2_a_wet_clean_down_lies_between_an_allergen_and_a_cake_kept_from_it()
    {
        var week = Kitchen.Mix("praline", 20, "cream", 100, has: "nuts").Mix("plain", 20, "cream", 100).Mix("kept", 20, "cream", 100, avoid: "nuts");

        // Praline 0 to 20, clean-down 20 to 65, kept at 65: clean. Kept first needs none. A plain mix in between cleans nothing.
        Kept(week, Rows.Step("praline", 0, "ann", "bowl").Clean("bowl", 20, "ann").Step("kept", 65, "ann", "bowl").Step("plain", 100, "ann", "bowl"));
        Kept(week, Rows.Step("kept", 0, "ann", "bowl").Step("praline", 20, "ann", "bowl").Step("plain", 40, "ann", "bowl"));
        Broken("A2", "kept", week, Rows.Step("praline", 0, "ann", "bowl").Step("plain", 20, "ann", "bowl").Step("kept", 40, "ann", "bowl"), "nuts", "praline");

        // A clean-down before the praline, or after the kept one, is none between them.
        Broken("A2", "kept", week, Rows.Clean("bowl", 0, "ben").Step("praline", 45, "ann", "bowl").Step("kept", 65, "ann", "bowl").Step("plain", 300, "ann", "bowl"), "nuts");
    }

    [Fact]
    public void A3_the_air_settles()
    {
        var week = Kitchen.Air("wheat", 480).Mix("flour", 20, "cream", 100, has: "wheat").Mix("kept", 20, "rice", 100, avoid: "wheat");

        // Flour is up until 20 + 480 = 500, in every bowl; before it nothing hangs in the air.
        Kept(week, Rows.Step("flour", 0, "ann", "bowl").Step("kept", 500, "ben", "other"));
        Kept(week, Rows.Step("kept", 0, "ben", "other").Step("flour", 20, "ann", "bowl"));
        Broken("A3", "kept", week, Rows.Step("flour", 0, "ann", "bowl").Step("kept", 495, "ben", "other"), "480", "wheat");
        Broken("A3", "kept", week, Rows.Step("kept", 0, "ben", "other").Step("flour", 15, "ann", "bowl"), "flour");
    }
}
