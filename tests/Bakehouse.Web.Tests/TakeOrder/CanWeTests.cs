namespace Bakehouse.Web.Tests.TakeOrder;

using Bakehouse.Book.Entries;
using Bakehouse.Domain.Answers;
using Bakehouse.Domain.FarDates;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.TakeOrder;
using Bunit;
using NodaTime;

/// <summary>What the counter is told to "can we?", and what a tap on an offer does.</summary>
public sealed class CanWeTests : CounterContext
{
    private static readonly Instant Ready = Instant.FromUtc(2026, 10, 23, 12, 0);

    [Fact]
    public void Yes_says_when_it_is_ready_how_much_is_to_spare_and_what_was_assumed()
    {
        var page = Asked(order => new CanWe(BookInHand.Yes(order), 1));
        Assert.Equal("Yes", Word(page));
        Assert.Contains("Friday 23 October at 14:00", Says(page), StringComparison.Ordinal);
        Assert.Contains("so 1 h to spare", Says(page), StringComparison.Ordinal);
        Assert.Contains("For 12 in, as nothing else was said", Says(page), StringComparison.Ordinal);
        Assert.Equal("Take the order", MainButton(page));
    }

    [Fact]
    public void A_far_day_is_answered_by_a_budget_and_says_so()
    {
        var yes = Asked(order => new CanWe(Far(order, taken: 600), 1));
        Assert.Equal("Yes", Word(yes));
        Assert.Contains("Friday 23 October at 14:00", Says(yes), StringComparison.Ordinal);
        Assert.Contains("A budget, no plan yet: from Mon 19 Oct to Fri 23 Oct there are 30 h of hands that coat or decorate, 4 h are kept for small cakes, 10 h are taken, this needs 9 h 20. Its plan is made on Fri 2 Oct.", Says(yes), StringComparison.Ordinal);

        var no = Asked(order => new CanWe(Far(order, taken: 1600), 1) { Offers = [new Offer(OfferKind.Time, Far(order, taken: 0), 0, [])], IsWhole = true });
        Assert.Equal("Other time", Word(no));
        Assert.Contains("Not Fri 23 Oct, 14:00: 10 h of hands are missing", Says(no), StringComparison.Ordinal);
        Assert.Contains("What decides it, by a budget of hours", Says(no), StringComparison.Ordinal);
        Assert.Contains("same cake, by a budget of hours", no.Find(".offer").TextContent, StringComparison.Ordinal);
    }

    private static Fit Far(Order order, int taken) => Fit.Far(order, new FarBudget(
        new FarHands(new LocalDate(2026, 10, 19), new LocalDate(2026, 10, 23), [Skills.Coat, Skills.Decorate], 1800, 240, taken, 560), [], null, new LocalDate(2026, 10, 2)));

    [Fact]
    public void Fewer_minutes_than_the_shop_wants_are_tight() =>
        Assert.Equal("Tight", Word(Asked(order => new CanWe(BookInHand.Yes(order) with { Spare = 20 }, 1))));

    [Theory]
    [InlineData(Scarce.Hands, 0, "hands. One more pair between Thu 22 Oct, 13:00 and Fri 23 Oct, 13:00, for 1 h 30 of work, would do it.")]
    [InlineData(Scarce.Cold, 45, "room in the cold. One more shelf from Thu 22 Oct, 13:00 to Fri 23 Oct, 13:00 would still leave it 45 min late.")]
    [InlineData(Scarce.Machines, 0, "ovens and mixers. One more from Thu 22 Oct, 13:00 to Fri 23 Oct, 13:00, for 1 h 30, would do it.")]
    public void What_decides_is_said_with_its_hours(Scarce what, int still, string says)
    {
        var page = Asked(order => Late(order) with
        {
            Decides = new Decides(what, Ready - Duration.FromHours(24), Ready, 90, still),
            Offers = [new Offer(OfferKind.Time, BookInHand.Yes(order), 0, [])],
        });
        Assert.Equal("Other time", Word(page));
        Assert.Contains("Not Fri 23 Oct, 14:00: it would be 2 h 20 late", Says(page), StringComparison.Ordinal);
        Assert.Contains(says, Says(page), StringComparison.Ordinal);
        Assert.Null(MainButton(page));
    }

    /// <summary>The person or the place, the hour and both figures, in one sentence.</summary>
    [Theory]
    [InlineData(Scarce.Hands, "petra", 90, 20, 0, "What decides it: Petra’s hands. Fri 23 Oct, 09:00 to 13:00 this cake needs 1 h 30 of them, 20 min is free. One more pair would do it.")]
    [InlineData(Scarce.Hands, "petra", 90, 0, 45, "What decides it: Petra’s hands. Fri 23 Oct, 09:00 to 13:00 this cake needs 1 h 30 of them, none is free. One more pair would still leave it 45 min late.")]
    [InlineData(Scarce.Cold, "f1", 62, 55, 0, "What decides it: Fridge 1, level 1. Fri 23 Oct, 09:00 to 13:00 62 cm of width are needed, 55 are there. One more shelf would do it.")]
    [InlineData(Scarce.Machines, "o1", 40, 0, 0, "What decides it: Oven 1. Fri 23 Oct, 09:00 to 13:00 it is in use, and this cake needs it for 40 min. One more would do it.")]
    [InlineData(Scarce.Machines, "b1", 40, 0, 0, "What decides it: Bowl 1. Fri 23 Oct, 09:00 to 13:00 it is in use, and this cake needs it for 40 min. One more would do it.")]
    public void What_decides_names_whose_when_and_how_much(Scarce what, string whose, int needed, int there, int still, string says)
    {
        var page = Asked(order => Late(order) with
        {
            Decides = new Decides(what, Ready - Duration.FromHours(4), Ready, 90, still) { Whose = whose, Needed = needed, There = there },
            Offers = [new Offer(OfferKind.Time, BookInHand.Yes(order), 0, [])],
        });
        Assert.Contains(says, Says(page), StringComparison.Ordinal);
    }

    /// <summary>Where only turntables or racks were short, no single one is named; it is not said that time is.</summary>
    [Theory]
    [InlineData(Scarce.Machines, "ovens, mixers, turntables and racks. Twice of them would do it.")]
    [InlineData(Scarce.Time, "time. Baking, cooling and setting take longer than there is, whoever helps.")]
    public void What_decides_without_an_hour_says_what_is_short(Scarce what, string says) => Assert.Contains(
        says, Says(Asked(order => Late(order) with { Decides = new Decides(what, null, null, 0, 0), Offers = [new Offer(OfferKind.Time, BookInHand.Yes(order), 0, [])] })), StringComparison.Ordinal);

    [Theory]
    [InlineData(-12.5, "same cake, £12.50 less, 1 h to spare")]
    [InlineData(8.0, "same cake, £8.00 more, 1 h to spare")]
    [InlineData(0.0, "same cake, same price, 1 h to spare")]
    [InlineData(null, "same cake, 1 h to spare")]
    public void An_offer_says_what_is_asked_more_or_less(double? dearer, string says)
    {
        var page = Asked(order => Late(order) with { Offers = [new Offer(OfferKind.Time, BookInHand.Yes(order), 0, []) { Dearer = (decimal?)dearer }] });
        Assert.Contains(says, page.Find(".offer").TextContent, StringComparison.Ordinal);
    }

    /// <summary>Too many ask: that is said, nothing is asked for a second, and then again, until the answer stands there.</summary>
    [Fact]
    public async Task An_answer_that_waits_for_its_turn_says_so_and_is_asked_for_each_second()
    {
        Book.Crowded = 2;
        var page = Open();
        Type(page, "day", "fri 23 oct");
        Type(page, "hour", "14");
        Type(page, "count", "40");
        Time.Advance(TimeSpan.FromMilliseconds(100));
        page.WaitForAssertion(() => Assert.Contains("Others are asking as well: this answer comes in its turn.", Says(page), StringComparison.Ordinal));
        var tenths = 0;
        for (; Word(page) != "Yes" && tenths < 600; tenths++)
        {
            Time.Advance(TimeSpan.FromMilliseconds(100));
            await Task.Delay(5, Xunit.TestContext.Current.CancellationToken);
        }

        Assert.Equal("Yes", Word(page));
        Assert.InRange(tenths, 20, 599);
        Assert.DoesNotContain("in its turn", Says(page), StringComparison.Ordinal);
    }

    /// <summary>A mark stands for the cake that is typed: of the one before it none is left, however long the new answer takes.</summary>
    [Fact]
    public void Marks_of_another_cake_are_gone_before_the_new_answer_is_there()
    {
        var page = Asked(order => new CanWe(BookInHand.Yes(order), 1));
        page.WaitForAssertion(() => Assert.DoesNotContain("not known yet", page.Find(".days").TextContent, StringComparison.Ordinal));
        Book.Crowded = int.MaxValue;
        Tap(page, "6+10");
        Time.Advance(TimeSpan.FromMilliseconds(100));
        page.WaitForAssertion(() => Assert.Contains("in its turn", Says(page), StringComparison.Ordinal));
        Assert.All(page.FindAll(".day:not([disabled])"), day => Assert.Contains("not known yet", day.TextContent, StringComparison.Ordinal));
    }

    /// <summary>Found last, shown last; taken, its day and hour are in the form and the others move for it.</summary>
    [Fact]
    public void Where_others_make_way_at_another_time_that_time_is_taken_with_it()
    {
        Book.AskedLast = whole => whole with
        {
            Offers = [.. whole.Offers, new Offer(OfferKind.Moves, BookInHand.Yes(whole.Wished.Order with { Handover = whole.Wished.Order.Handover with { At = new LocalDateTime(2026, 10, 22, 11, 30) } }), 2, [402])],
        };
        var page = Asked(order => order.Handover.At.Day == 24 ? new CanWe(BookInHand.Yes(order), 1) : Late(order) with
        {
            Offers = [new Offer(OfferKind.Time, BookInHand.Yes(order with { Handover = order.Handover with { At = new LocalDateTime(2026, 10, 24, 14, 0) } }), 0, [])],
        });
        Assert.Equal(["Time", "Moves"], page.FindAll(".offer").Select(o => o.GetAttribute("data-kind")));
        page.FindAll(".offer button")[1].Click();
        Assert.Equal("2026-10-22", page.Find("#day").GetAttribute("value"));
        Assert.Equal("11:30", page.Find("#hour").GetAttribute("value"));
        Answer(page);
        Assert.Equal("Yes", Word(page));
        Assert.Contains("Thursday 22 October at 11:30", Says(page), StringComparison.Ordinal);
        Assert.Contains("2 steps of 402 move, none late", Says(page), StringComparison.Ordinal);
    }

    /// <summary>The owner, too, is asked before a day is kept for a cake that would be late.</summary>
    [Theory]
    [InlineData("wren")]
    [InlineData("ines")]
    public void A_day_for_a_late_cake_is_kept_only_once_somebody_says_so(string person)
    {
        Book.Asked = Late;
        var page = Filled("fri 23 oct", "14", person);
        Answer(page);
        Tap(page, "Keep the day 48\u00A0h");
        Assert.Empty(Book.State.Orders);
        Assert.Equal("Keep it late", Word(page));
        Assert.Contains("it would be 2 h 20 late", Says(page), StringComparison.Ordinal);
        Tap(page, "Go back");
        Tap(page, "Keep the day 48\u00A0h");
        Tap(page, "Keep it all the same");
        Assert.Equal(Stage.Kept, Assert.Single(Book.State.Orders).Stage);
    }

    [Fact]
    public void What_can_not_be_this_cake_is_offered_neither_late_nor_at_another_time()
    {
        Book.State = Book.State with { Cookbook = Starter.Sample };
        Book.Asked = order => Late(order) with { Offers = [new Offer(OfferKind.Time, BookInHand.Yes(order), 0, [])] };
        var page = Filled("fri 23 oct", "14");
        Answer(page);
        Assert.Contains("Take it late", page.Find(".answer-does").TextContent, StringComparison.Ordinal);
        Tap(page, "Avoid …");
        Tap(page, "milk");
        Answer(page);
        Assert.Equal("Not this", Word(page));
        Assert.DoesNotContain("late", page.Find(".answer-does").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll(".offer"));
    }

    [Fact]
    public void Never_a_bare_no_where_a_sooner_time_is_known()
    {
        var page = Asked(order => Late(order) with { Earliest = BookInHand.Yes(order with { Handover = order.Handover with { At = new LocalDateTime(2026, 10, 20, 9, 0) } }), Decides = new Decides(Scarce.Time, null, null, 0, 140) });
        Assert.Equal("Other time", Word(page));
        Assert.Contains("The earliest is Tue 20 Oct, 09:00", Says(page), StringComparison.Ordinal);
        Assert.Equal("No", Word(Asked(Late)));
    }

    /// <summary>The day, the finish, the tiers and their number: what the offer changes is in the form, the rest stays.</summary>
    [Fact]
    public void An_offer_taken_is_in_the_form_and_the_rest_stays()
    {
        var page = Asked(order => Late(order) with
        {
            Offers = [new Offer(OfferKind.Build, BookInHand.Yes(order with { Tiers = [order.Tiers[0]], Handover = order.Handover with { At = new LocalDateTime(2026, 10, 24, 10, 30) } }), 0, [])],
        });
        Tap(page, "6+10");
        Type(page, "name", "Quill");
        Answer(page);
        page.Find(".offer button").Click();
        Assert.Equal("2026-10-24", page.Find("#day").GetAttribute("value"));
        Assert.Equal("10:30", page.Find("#hour").GetAttribute("value"));
        Assert.Equal("28", page.Find("#count").GetAttribute("value"));
        Assert.Equal("Quill", page.Find("#name").GetAttribute("value"));
        Assert.Single(page.FindAll(".one-tier, [aria-label='Tier 1: height in cm']"));
    }

    /// <summary>Others move only for whoever took that offer, and no longer once something else is typed.</summary>
    [Fact]
    public void Others_make_way_only_when_that_offer_was_taken()
    {
        var page = Asked(order => Late(order) with { Offers = [new Offer(OfferKind.Moves, BookInHand.Yes(order), 3, [402])] });
        Tap(page, "6+10");
        Tap(page, "None told");
        Type(page, "name", "Quill");
        Type(page, "phone", "020 7946 0182");
        Answer(page);
        Assert.Contains("3 steps of 402 move, none late", page.Find(".offer").TextContent, StringComparison.Ordinal);
        page.Find(".offer button").Click();
        Assert.Equal("Yes", Word(page));
        Assert.Contains("3 steps of 402 move, none late", Says(page), StringComparison.Ordinal);

        Type(page, "name", "Quillon");
        Answer(page);
        Assert.Equal("Other time", Word(page));
        page.Find(".offer button").Click();
        Tap(page, "Take the order");
        Assert.True(Book.Heard.OfType<WriteOrder>().Single().MayMove);
    }

    [Fact]
    public void Nobody_is_asked_about_what_is_over()
    {
        var asked = 0;
        Book.State = Book.State with { Orders = [Testing.Cakes.Good() with { Stage = Stage.HandedOver, Version = 1, Number = 401 }] };
        Book.Asked = order =>
        {
            asked++;
            return Late(order);
        };
        Answer(Open(Book.State.Orders[0].Id));
        Assert.Equal(0, asked);
    }

    private static CanWe Late(Order order) =>
        new(new Fit(order, Ready, -140, new Dictionary<string, int> { [order.Id.ToString("N")] = 140 }, BookInHand.Yes(order).Proof, []), 1);

    private IRenderedComponent<OrderPage> Asked(Func<Order, CanWe> answer)
    {
        Book.Asked = answer;
        var page = Open();
        Type(page, "day", "fri 23 oct");
        Type(page, "hour", "14");
        Type(page, "count", "40");
        Answer(page);
        return page;
    }

    /// <summary>Lets the moment pass after which the page asks.</summary>
    private void Answer(IRenderedComponent<OrderPage> page)
    {
        Time.Advance(TimeSpan.FromSeconds(1));
        page.WaitForState(() => page.FindAll(".answer.is-old").Count == 0);
    }

    private static string Word(IRenderedComponent<OrderPage> page) => page.Find(".answer-word").TextContent.Trim();

    private static string Says(IRenderedComponent<OrderPage> page) => page.Find(".answer-says").TextContent.Replace('\u00A0', ' ');

    private static string? MainButton(IRenderedComponent<OrderPage> page) => page.FindAll(".answer-does .main") is [var main, ..] ? main.TextContent.Trim() : null;
}
