namespace Bakehouse.Domain.Tests.Planning;

using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using Bakehouse.Testing;

/// <summary>
/// One tier of 8 in with lemon curd, filled and coated on Friday, boxed on Saturday, for Saturday 24 October 2026 14:00 in London. Worked out
/// by hand: fill 15, crumb 10, coat 20, decor 15, box 20, take out 5 and hand over 10 are 95 min out of the cold; the shop's limit is 240.
/// </summary>
public sealed class FoodLimitsTests
{
    private const int Filled = (4 * 1440) + (9 * 60);
    private static readonly Instant Monday = Instant.FromUtc(2026, 10, 18, 23, 0);

    [Fact]
    public void A_cake_that_stays_cold_between_passes_no_limit() => Assert.Empty(Passed(Cake("lemon-curd"), Rows(1430), At(5, 14, 0)));

    [Fact]
    public void Three_hours_on_the_bench_before_the_customer_comes_pass_the_clock()
    {
        // Taken out by 11:00, handed over at 14:00: 95 and 180 min.
        var passed = Assert.Single(Passed(Cake("lemon-curd"), Rows(1255), At(5, 11, 0)));
        Assert.Equal((false, 275, 240), (passed.UseBy, passed.Minutes, passed.Limit));
        Assert.Contains("275 min", passed.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_customer_who_does_not_come_lets_the_clock_run_on()
    {
        // Taken out by 13:55; at 16:30 still there: 95 and 155 min.
        var rows = Rows(1430);
        Assert.Empty(Passed(Cake("lemon-curd"), rows, At(5, 16, 0)));
        Assert.Equal(250, Assert.Single(Passed(Cake("lemon-curd"), rows, At(5, 16, 30))).Minutes);
    }

    [Fact]
    public void The_limit_is_the_shops_own()
    {
        var strict = SampleBakery.Shop with { Settings = new ShopSettings(FoodClockMinutes: 60) };
        Assert.Equal(60, Assert.Single(FoodLimits.Passed([Cake("lemon-curd")], strict, Wall(Cake("lemon-curd"), Rows(1430)), At(5, 9, 0))).Limit);
    }

    [Fact]
    public void Cream_cheese_filled_on_friday_is_past_its_use_by_on_tuesday()
    {
        var cake = Cake("cream-cheese");
        Assert.Empty(Passed(cake, Rows(1430), At(5, 14, 0)));
        Assert.Contains(Passed(cake, Rows(1430), At(8, 10, 0)), p => p.UseBy && p.Limit == 3 * 1440);
    }

    [Fact]
    public void A_cake_that_is_not_filled_yet_or_keeps_without_limit_is_not_told()
    {
        Assert.Empty(Passed(Cake("lemon-curd"), Rows(1255), At(4, 8, 0)));
        Assert.Empty(Passed(Cake("raspberry-jam"), Rows(1255), At(8, 14, 0)));
    }

    private static Order Cake(string filling)
    {
        var order = Cakes.Good(1, 8);
        return order with { Number = 401, Version = 1, Tiers = [order.Tiers[0] with { Filling = filling }] };
    }

    private static IReadOnlyList<PassedLimit> Passed(Order order, (string, int)[] rows, Instant now) =>
        FoodLimits.Passed([order], SampleBakery.Shop, Wall(order, rows), now);

    /// <summary>Starts; the cake is taken out from that minute of Saturday's day minus a night on (1430 is 13:50).</summary>
    private static (string Operation, int Start)[] Rows(int takenOut) =>
    [
        ("fill", Filled - 15), ("crumb", Filled + 120), ("coat", Filled + 180), ("decorate", Filled + 330),
        ("box", (5 * 1440) + (8 * 60)), ("leavefridge", (4 * 1440) + takenOut + 840), ("handover", (5 * 1440) + (14 * 60)),
    ];

    private static Wall Wall(Order order, (string Operation, int Start)[] rows)
    {
        var cake = CakeSteps.Of(order, SampleBakery.Shop);
        var steps = rows.Select(r => new StepRow(cake.Steps.First(s => s.Name == r.Operation).Id, r.Start, [], null, null)).ToList();
        var holds = cake.Holds.Where(h => h.In.Any(i => i.Store == "f1l2")).Select(h => new HoldRow(h.Id, "f1l2"));
        return new Wall(Monday, new Plan("w", new Dictionary<string, string>(), steps, [.. holds], []));
    }

    private static Instant At(int day, int hour, int minute) => Monday + Duration.FromMinutes((day * 1440) + (hour * 60) + minute);
}
