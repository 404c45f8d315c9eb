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
        var small = SampleBakery.Shop with { Ovens = [SampleBakery.Shop.Ovens[0]] };
        Assert.Contains(OrderChecks.Problems(Cakes.Good(1, 18), small, Cakes.Now, owner: false), p => p.Sentence.Contains("nor half of it; the widest is 11 in", StringComparison.Ordinal));
        Assert.DoesNotContain(problems, p => p.Sentence.Contains("No oven takes", StringComparison.Ordinal));
        Assert.Contains(problems, p => p.Sentence.Contains("largest fridge shelf has 55 cm one way", StringComparison.Ordinal));
    }

    /// <summary>What is missing is named: width or height.</summary>
    [Theory]
    [InlineData(32, 20, "it needs 37.6 cm of shelf both ways; the largest fridge shelf has 32 cm one way")]
    [InlineData(60, 10, "it needs 14 cm of height; the highest fridge shelf that is wide enough has 10 cm")]
    public void A_tier_that_finds_no_shelf_is_told_what_is_missing(int depth, int clear, string says)
    {
        var shop = SampleBakery.Shop with { Shelves = [new Shelf("f1", ShelfKind.Fridge, "Fridge", 1, Length.FromCentimetres(50), Length.FromCentimetres(depth), Length.FromCentimetres(clear))] };
        Assert.Contains(OrderChecks.Problems(Cakes.Good(1, 10), shop, Cakes.Now, owner: false), p => p.Sentence.Contains(says, StringComparison.Ordinal));
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
    [InlineData(2029, 11, 28, 14, "800 days")] // farther ahead than orders are taken
    [InlineData(2026, 10, 13, 15, "24 h notice")] // this afternoon
    public void The_hour_must_be_one_that_the_shop_can_promise(int year, int month, int day, int hour, string says)
    {
        var order = Cakes.Good() with { Handover = new Handover(Way.Collect, new LocalDateTime(year, month, day, hour, 0), "", 0) };
        Assert.Contains(Look(order), p => p.Where == "When" && p.Sentence.Contains(says, StringComparison.Ordinal));
    }

    /// <summary>On Friday 23 October, 16:40, the next day's opening ends at 16:00 before the notice is over, and Sunday and Monday are shut.</summary>
    [Fact]
    public void The_first_hour_that_keeps_the_notice_is_one_at_which_the_shop_is_open()
    {
        var now = new LocalDateTime(2026, 10, 23, 16, 40).InZoneStrictly(DateTimeZoneProviders.Tzdb["Europe/London"]).ToInstant();
        var problem = Assert.Single(OrderChecks.Problems(Cakes.Good(), SampleBakery.Shop, now, false), p => p.Sentence.Contains("24 h notice", StringComparison.Ordinal));
        Assert.Equal("Choose Tue 27 Oct 09:00 or later, in the opening hours.", problem.Try);
        problem = Assert.Single(OrderChecks.Problems(Cakes.Good(), SampleBakery.Shop, now - Duration.FromHours(2), false), p => p.Sentence.Contains("24 h notice", StringComparison.Ordinal));
        Assert.Equal("Choose Sat 24 Oct 15:00 or later, in the opening hours.", problem.Try);
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

    /// <summary>1 layer of 10 cm needs a deeper pan than 3 in; 8 layers of 5 mm and 7 fillings of 1/4 in need 8.4 cm.</summary>
    [Theory]
    [InlineData(10, 1, "deepest pan is 7.6 cm")]
    [InlineData(7, 8, "8.4 cm")]
    public void Layers_must_fit_pans_and_height(int height, int layers, string says)
    {
        var order = Cakes.Good(1, 8);
        order = order with { Tiers = [order.Tiers[0] with { Height = Length.FromCentimetres(height), Layers = layers }] };
        Assert.Contains(says, Assert.Single(Look(order)).Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(24, 14, false)] // Saturday: the driver is there
    [InlineData(24, 8, true)] // Saturday at eight: she begins at seven, load and road take longer
    [InlineData(25, 14, true)] // Sunday: nobody works
    public void Somebody_must_drive(int day, int hour, bool wrong)
    {
        var order = Cakes.Good() with { Handover = new Handover(Way.Deliver, new LocalDateTime(2026, 10, day, hour, 0), "Orchard Hall", 20) };
        Assert.Equal(wrong, Look(order).Any(p => p.Sentence.Contains("Nobody who drives", StringComparison.Ordinal)));
    }

    [Fact]
    public void Ten_thousand_portions_are_told_with_the_limit_and_what_the_cake_gives()
    {
        var problem = Assert.Single(Look(Cakes.Good() with { Portions = new Portions(10_000, Cut.Dessert) }));
        Assert.Equal("10000", problem.Value);
        Assert.Contains("1 to 1000", problem.Sentence, StringComparison.Ordinal);
        Assert.Contains("gives 60", problem.Sentence, StringComparison.Ordinal); // 12 + 20 + 28 by the printed chart
    }

    private static IReadOnlyList<Problem> Look(Order order) => OrderChecks.Problems(order, SampleBakery.Shop, Cakes.Now, owner: false);
}
