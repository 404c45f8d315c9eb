namespace Bakehouse.Domain.Tests.Orders;

using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;
using Bakehouse.Testing;

public sealed class OrderChecksTests
{
    [Fact]
    public void A_good_order_has_no_problem() => Assert.Empty(Look(Cakes.Good()));

    [Fact]
    public void Everything_wrong_is_named_at_once()
    {
        var order = Cakes.Good() with
        {
            Customer = new Customer(new string('x', 2000), ""),
            Portions = new Portions(10_000, Cut.Dessert),
            Allergies = AllergyAnswer.NotAsked,
            Tiers = [Cakes.Tier(1, 1, 6), Cakes.Tier(1, 2, 10) with { Colours = [new CoatColour("Ivory", "#F7F0E1", 0.6m)] }],
            Handover = new Handover(Way.Collect, new LocalDateTime(2026, 10, 18, 14, 0), "", 0),
        };
        var problems = Look(order);
        string[] expected = ["When", "Who", "How many", "Tier 2", "Tier 2", "Allergies"];
        Assert.Equal(expected.Order(), problems.Select(p => p.Where).Order());
        Assert.All(problems, p => Assert.False(string.IsNullOrWhiteSpace(p.Try)));
        Assert.Contains(problems, p => p.Sentence.Contains("2000", StringComparison.Ordinal) && p.Sentence.Contains("200", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(0, "1 to 8 tiers")]
    [InlineData(40, "1 to 8 tiers")]
    public void A_cake_has_one_to_eight_tiers(int count, string says)
    {
        var order = Cakes.Good() with { Tiers = [.. Enumerable.Range(1, count).Select(i => Cakes.Tier(1, i, 6))] };
        Assert.Contains(Look(order), p => p.Where == "Tiers" && p.Sentence.Contains(says, StringComparison.Ordinal));
    }

    [Fact]
    public void A_tier_wider_than_any_deck_or_shelf_is_told_with_the_limit()
    {
        var problems = Look(Cakes.Good(1, 18));
        Assert.Contains(problems, p => p.Sentence.Contains("No oven takes", StringComparison.Ordinal));
        Assert.Contains(problems, p => p.Sentence.Contains("widest fridge shelf has 55 cm", StringComparison.Ordinal));
    }

    [Fact]
    public void A_wider_tier_above_needs_the_owners_tick()
    {
        var order = Cakes.Good(1, 6, 8);
        Assert.Single(Look(order));
        Assert.Single(Look(order with { WiderAboveAgreed = true }));
        Assert.Empty(OrderChecks.Problems(order with { WiderAboveAgreed = true }, SampleBakery.Shop, Cakes.Now, owner: true));
    }

    [Theory]
    [InlineData(2026, 10, 12, 14, "passed")] // yesterday
    [InlineData(2026, 10, 25, 14, "shut")] // Sunday
    [InlineData(2026, 10, 24, 20, "08:00 to 16:00")] // after closing
    [InlineData(2026, 11, 28, 14, "21 days")] // beyond the plan
    [InlineData(2026, 10, 13, 15, "24 h notice")] // this afternoon
    public void The_hour_must_be_one_that_the_shop_can_promise(int year, int month, int day, int hour, string says)
    {
        var order = Cakes.Good() with { Handover = new Handover(Way.Collect, new LocalDateTime(year, month, day, hour, 0), "", 0) };
        Assert.Contains(Look(order), p => p.Where == "When" && p.Sentence.Contains(says, StringComparison.Ordinal));
    }

    /// <summary>Source: the clock changes of Europe/London in 2026 as published in the tz database: 29 March and 25 October, 01:00 UTC.</summary>
    [Theory]
    [InlineData(2026, 3, 29, "does not exist")]
    [InlineData(2026, 10, 25, "comes twice")]
    public void An_hour_that_the_clock_change_takes_or_doubles_is_told(int year, int month, int day, string says)
    {
        var order = Cakes.Good() with { Handover = new Handover(Way.Deliver, new LocalDateTime(year, month, day, 1, 30), "Orchard Hall", 10) };
        var before = Instant.FromUtc(year, month, day - 4, 9, 0);
        Assert.Contains(OrderChecks.Problems(order, SampleBakery.Shop, before, false), p => p.Sentence.Contains(says, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("Zoë 山田 🎂")]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("مريم")]
    public void A_name_may_be_in_any_script(string name) => Assert.Empty(Look(Cakes.Good() with { Customer = new Customer(name, "") }));

    [Fact]
    public void Heights_and_layers_have_limits()
    {
        var order = Cakes.Good(1, 8);
        var tier = order.Tiers[0] with { Height = Length.FromCentimetres(40), Layers = 12, Sponge = "granite" };
        Assert.True(Look(order with { Tiers = [tier] }).Count >= 3);
    }

    private static IReadOnlyList<Problem> Look(Order order) => OrderChecks.Problems(order, SampleBakery.Shop, Cakes.Now, owner: false);
}
