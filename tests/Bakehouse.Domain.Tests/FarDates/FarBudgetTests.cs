namespace Bakehouse.Domain.Tests.FarDates;

using Bakehouse.Domain.Chores;
using Bakehouse.Domain.FarDates;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;
using Bakehouse.Testing;
using NodaTime;

/// <summary>The budget of a far day: hours, nights and the van. The shops and orders are invented.</summary>
public sealed class FarBudgetTests
{
    private static readonly LocalDate Today = new(2026, 10, 13);
    private static readonly LocalDate Day = new(2027, 3, 6); // A Saturday.

    /// <summary>One pair of hands, Tuesday to Saturday, ten hours a day.</summary>
    private static readonly Shop One = SampleBakery.Shop with
    {
        Settings = new ShopSettings(),
        People = [SampleBakery.Shop.People[0] with { Shifts = [.. new[] { IsoDayOfWeek.Tuesday, IsoDayOfWeek.Wednesday, IsoDayOfWeek.Thursday, IsoDayOfWeek.Friday, IsoDayOfWeek.Saturday }.Select(d => new Shift(d, new LocalTime(8, 0), new LocalTime(18, 0)))] }],
    };

    [Fact]
    public void Hours_are_those_of_the_days_around_it_less_slack_chores_and_what_is_taken()
    {
        var alone = Of(One, [], []);
        Assert.Equal((Day.PlusDays(-4), Day), (alone.Hands.From, alone.Hands.To));
        // Five days of ten hours, times 0.82 (15 to 20 % is kept; common practice, no source).
        Assert.Equal((int)(5 * 600 * 0.82), alone.Hands.Usable);
        Assert.True(alone.Fits);
        Assert.Equal(Day.PlusDays(-One.Settings.PlanDays), alone.PlannedFrom);

        var chore = new Chore(Guid.NewGuid(), 1, ChoreKind.Cleaning, "Floor", Day.PlusDays(-30), new LocalTime(8, 0), new LocalTime(9, 30), [IsoDayOfWeek.Wednesday], null, [One.People[0].Id], [], []);
        Assert.Equal((int)(((5 * 600) - 90) * 0.82), Of(One, [], [chore]).Hands.Usable);

        var other = At(2, Day);
        Assert.Equal(alone.Hands.Needed, Of(One, [other], []).Hands.Taken);
        Assert.Equal(0, Of(One, [other with { Stage = Stage.Quoted }], []).Hands.Taken);
        // Their days do not lie wholly within five, but within twelve.
        Assert.Equal(alone.Hands.Needed, Of(One, [At(3, Day.PlusDays(7))], []).Hands is { To: var to } hands && to > Day ? hands.Taken : alone.Hands.Needed);
    }

    [Fact]
    public void When_hands_are_short_the_days_and_the_minutes_are_named()
    {
        var many = Enumerable.Range(2, 6).Select(n => At(n, Day)).ToList();
        var budget = Of(One, many, []);
        Assert.False(budget.Fits);
        Assert.True(budget.Hands.Left < 0);
        Assert.Equal(6 * budget.Hands.Needed, budget.Hands.Taken);
        Assert.Equal(budget.Hands.Usable - budget.Hands.Small - budget.Hands.Taken - budget.Hands.Needed, budget.Hands.Left);
    }

    /// <summary>Whoever can't coat is no help with coats: the scarcest hands decide, not all of them together.</summary>
    [Fact]
    public void The_scarcest_skill_decides()
    {
        var helped = One with { People = [.. One.People, .. Enumerable.Range(0, 5).Select(n => One.People[0] with { Id = $"helper{n}", Skills = [Skills.Box] })] };
        var many = Enumerable.Range(2, 9).Select(n => At(n, Day)).ToList();
        var hands = Of(helped, many, []).Hands;
        Assert.True(hands.Left < 0);
        Assert.DoesNotContain(Skills.Box, hands.Skills);
    }

    /// <summary>Six a week in March: room is left for them, and a small cake that is in the book already is one of them.</summary>
    [Fact]
    public void Room_is_left_for_the_small_cakes_of_the_season()
    {
        var march = One with { Settings = One.Settings with { SmallCakes = [0, 0, 6, 0, 0, 0, 0, 0, 0, 0, 0, 0] } };
        var (kept, none) = (Of(march, [], []).Hands, Of(One, [], []).Hands);
        Assert.Equal(0, none.Small);
        var small = Of(march, [At(2, Day, 8)], []).Hands;
        Assert.InRange(kept.Small, 1, kept.Usable);
        Assert.True(small.Small < kept.Small && small.Left >= kept.Left - 1, $"{small} against {kept}");
        Assert.Equal(0, Of(march, [], [], Day.PlusDays(31)).Hands.Small);
    }

    /// <summary>
    /// A home set-up of three shelves of 50 x 32 cm: 6-8-10 twice and 6+9 do not fit, eight tiers need four shelves even packed best; two
    /// of them do (worked out by hand with the packing of a home fridge; common practice, no source).
    /// </summary>
    [Fact]
    public void Eight_tiers_do_not_stand_on_three_small_shelves_overnight()
    {
        var home = Home(3);
        Order[] two = [At(2, Day), At(3, Day, 9, 6)];
        Assert.Contains(Of(home, two, []).Nights, n => n is { Tiers: 8, Over: > 0 });
        Assert.All(Of(home, [two[1]], []).Nights, n => Assert.True(n is { Tiers: 5, Over: 0 }, n.ToString()));
        Assert.All(Of(Home(4), two, []).Nights, n => Assert.True(n is { Tiers: 8, Over: 0 }, n.ToString()));
        // A cake for the next day stands there the last of the two nights before, too.
        Assert.Equal([3, 5], Of(Home(9), [At(4, Day.PlusDays(1), 9, 6)], []).Nights.Select(n => n.Tiers));
    }

    [Fact]
    public void One_van_is_not_in_two_places()
    {
        var away = At(1, Day) with { Handover = new Handover(Way.Deliver, Day.At(new LocalTime(14, 0)), "2 Mill Lane", 30) };
        Order Other(int hour) => away with { Id = Guid.NewGuid(), Number = 402, Handover = away.Handover with { At = Day.At(new LocalTime(hour, 0)) } };
        Assert.Equal([402], FarBudget.Of(away, [Other(13)], One, [], Today).Van!.Numbers);
        Assert.Null(FarBudget.Of(away, [Other(10)], One, [], Today).Van);
        Assert.Null(Of(One, [Other(14)], []).Van);
    }

    [Fact]
    public void A_day_is_far_when_it_lies_beyond_the_planned_ones()
    {
        Assert.False(PlanReach.IsFar(At(1, Today.PlusDays(21)), One, Today));
        Assert.True(PlanReach.IsFar(At(1, Today.PlusDays(22)), One, Today));
    }

    /// <summary>Three hundred orders over a year: only those around the day may cost, since one customer's far answer is asked a dozen times.</summary>
    [Fact]
    public void Orders_of_other_months_cost_nothing()
    {
        var year = Enumerable.Range(1, 300).Select(n => At(n + 1, Day.PlusDays((n * 7 % 360) - 100), 10, 8, 6)).ToList();
        var near = year.Where(o => Math.Abs(Period.DaysBetween(Day, o.Handover.At.Date)) <= 25).ToList();
        var (all, few) = (Worked(year), Worked(near));
        TestContext.Current.TestOutputHelper!.WriteLine($"{all * 1000:0.0} ms with 300 orders, {few * 1000:0.0} ms with the {near.Count} around");
        Assert.InRange(all / few, 0, 3);
    }

    /// <summary>Seconds of this thread for one budget: the least of some tries.</summary>
    private static double Worked(List<Order> others) => Enumerable.Range(0, 6).Min(_ =>
    {
        var time = ThreadTime.Start();
        Of(One, others, []);
        return time.Seconds;
    });

    private static FarBudget Of(Shop shop, IReadOnlyList<Order> others, IReadOnlyList<Chore> chores, LocalDate? day = null) =>
        FarBudget.Of(At(1, day ?? Day), others, shop, chores, Today);

    private static Order At(int number, LocalDate day, params int[] inches)
    {
        var order = Cakes.Good(number, inches);
        return order with { Number = 400 + number, Handover = order.Handover with { At = day.At(new LocalTime(14, 0)) } };
    }

    private static Shop Home(int shelves) => One with
    {
        Shelves = [.. Enumerable.Range(1, shelves).Select(n => new Shelf($"h{n}", ShelfKind.Fridge, "Fridge", n, Length.FromCentimetres(50), Length.FromCentimetres(32), Length.FromCentimetres(25)))],
        Settings = One.Settings with { OnDrum = false },
    };
}
