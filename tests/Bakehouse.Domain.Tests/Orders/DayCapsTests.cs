namespace Bakehouse.Domain.Tests.Orders;

using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;
using Bakehouse.Testing;

/// <summary>"Two tiered cakes a Saturday": a usual rule of small shops (common practice, no source). 24 October 2026 is a Saturday (ISO 8601).</summary>
public sealed class DayCapsTests
{
    private static readonly Shop Two = SampleBakery.Shop with { Settings = new ShopSettings(Caps: [new DayCap(IsoDayOfWeek.Saturday, 2)]) };

    [Fact]
    public void The_second_is_taken_and_the_third_is_told_with_the_numbers_of_the_two()
    {
        Assert.Null(Against(Cakes.Good(3), Standing(401)));
        var problem = Against(Cakes.Good(3), Standing(402), Standing(401));
        Assert.Equal("When", problem!.Where);
        Assert.Equal("2 tiered cakes leave that day already (401, 402); your cap for a Saturday is 2.", problem.Sentence);
    }

    [Fact]
    public void Single_tiers_enquiries_and_other_days_do_not_count()
    {
        Assert.Null(Against(Cakes.Good(3), Standing(401), Standing(402) with { Tiers = [Cakes.Tier(2, 1, 8)] }));
        Assert.Null(Against(Cakes.Good(3), Standing(401), Standing(402) with { Stage = Stage.Enquiry }));
        Assert.Null(Against(Cakes.Good(3), Standing(401), Standing(402) with { Stage = Stage.Cancelled }));
        Assert.Null(Against(Cakes.Good(3), Standing(401), On(23, Standing(402))));
        Assert.Null(Against(Cakes.Good(3, 8), Standing(401), Standing(402)));
        Assert.Null(Against(On(23, Cakes.Good(3)), Standing(401), Standing(402)));
    }

    [Fact]
    public void One_that_has_left_that_morning_still_counts() =>
        Assert.NotNull(Against(Cakes.Good(3), Standing(401) with { Stage = Stage.HandedOver }, Standing(402)));

    [Fact]
    public void What_holds_its_place_already_is_not_asked_again_and_a_change_of_day_is()
    {
        Order[] all = [Standing(401), Standing(402), Standing(403)];
        Assert.Null(DayCaps.Against(all[2] with { Inscription = "NOA" }, all[2], all, Two, owner: false));
        Assert.NotNull(DayCaps.Against(all[2], On(23, all[2]), all, Two, owner: false));
        Assert.NotNull(DayCaps.Against(all[2], all[2] with { Stage = Stage.Quoted }, all, Two, owner: false));
    }

    [Fact]
    public void Only_the_owners_tick_goes_beyond_it()
    {
        var agreed = Cakes.Good(3) with { BeyondCapAgreed = true };
        Order[] all = [Standing(401), Standing(402)];
        Assert.Null(DayCaps.Against(agreed, null, all, Two, owner: true));
        Assert.NotNull(DayCaps.Against(agreed, null, all, Two, owner: false));
        Assert.NotNull(DayCaps.Against(Cakes.Good(3), null, all, Two, owner: true));
    }

    [Fact]
    public void No_hand_is_at_work_after_the_last_hour_and_handing_over_must_lie_before_it()
    {
        var late = Two with { Settings = new ShopSettings(LastHands: new LocalTime(17, 30)) };
        Assert.Empty(ShopChecks.Problems(late));
        var people = Bakehouse.Domain.Planning.Week.From([Standing(401)], late, [], null, Cakes.Now);
        Assert.Contains(people.People, p => p.Extra.Count > 0);
        Assert.All(people.People.SelectMany(p => p.Shifts.Concat(p.Extra)), s => Assert.True(
            (people.Epoch + Duration.FromMinutes(s.To)).InZone(DateTimeZoneProviders.Tzdb[late.Zone]).TimeOfDay <= new LocalTime(17, 30)));
        // Thursday 15 October 2026: Ines may stay until seven, but not here.
        Assert.Equal((true, false), (late.WorksAt(new LocalDateTime(2026, 10, 15, 17, 25)), late.WorksAt(new LocalDateTime(2026, 10, 15, 17, 30))));
        Assert.Contains("Customers may come until 17:30", Assert.Single(ShopChecks.Problems(Two with { Settings = new ShopSettings(LastHands: new LocalTime(17, 0)) })).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_delivery_after_the_last_hour_finds_no_driver()
    {
        var shop = SampleBakery.Shop with { Settings = new ShopSettings(LastHands: new LocalTime(13, 0)) };
        var order = Cakes.Good() with { Handover = new Handover(Way.Deliver, new LocalDateTime(2026, 10, 24, 14, 0), "Orchard Hall", 20) };
        Assert.Contains(OrderChecks.Problems(order, shop, Cakes.Now, owner: true), p => p.Sentence.StartsWith("Nobody who drives", StringComparison.Ordinal));
    }

    [Fact]
    public void Caps_of_one_day_twice_or_of_a_hundred_are_told() => Assert.Equal(
        2, ShopChecks.Problems(Two with { Settings = new ShopSettings(Caps: [new DayCap(IsoDayOfWeek.Friday, 100), new DayCap(IsoDayOfWeek.Friday, 2)]) }).Count);

    private static Order Standing(int number) => Cakes.Good(number) with { Number = number, Version = 1 };

    private static Order On(int day, Order order) => order with { Handover = order.Handover with { At = new LocalDateTime(2026, 10, day, 14, 0) } };

    private static Problem? Against(Order order, params Order[] others) => DayCaps.Against(order, null, others, Two, owner: false);
}
