namespace Bakehouse.Web.Tests.TakeOrder;

using AngleSharp.Dom;
using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;
using Bakehouse.Domain.Orders;
using Bakehouse.Testing;
using Bakehouse.Web.Access;
using Bakehouse.Web.TakeOrder;
using Bunit;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;
using NodaTime;
using NodaTime.Testing;

/// <summary>The counter, on Tuesday 13 October 2026 at 11:30 in London: what is typed is drawn, kept, checked and never lost.</summary>
public sealed class OrderPageTests : CounterContext
{
    [Fact]
    public void Both_counts_are_big_and_compared_with_what_is_wanted()
    {
        var page = Open();
        Type(page, "count", "47");
        Tap(page, "6+10");
        Assert.Equal(["40", "50"], page.FindAll(".two-counts .count").Select(c => c.TextContent));
        Assert.Equal("7 short of 47", page.Find(".two-counts .says").TextContent.Trim());
        Tap(page, "Coffee");
        Assert.Equal("3 more than asked", page.Find(".two-counts .says").TextContent.Trim());
        Assert.Equal(2, page.FindAll(".cake-side path.edge").Count);
        Assert.Contains("kg with its board", page.Find(".figures").TextContent, StringComparison.Ordinal);
    }

    /// <summary>6 in 12 and 12, 8 in 20 and 24, 10 in 28 and 38 portions: the chart that most shops print (common practice, no source).</summary>
    [Fact]
    public void A_common_build_shows_both_its_counts()
    {
        var build = Open().FindAll(".build").Single(b => b.QuerySelector("b")?.TextContent == "6+8+10");
        Assert.Contains("60 or 74", build.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_people_lift_from_the_shops_own_limit_on()
    {
        var page = Open();
        Tap(page, "6+10");
        Assert.Empty(page.FindAll(".cake-side .danger"));
        Book.State = Book.State with { Shop = Book.State.Shop! with { Settings = Book.State.Shop.Settings with { TwoPeopleFromKg = 5 } } };
        Type(page, "count", "40");
        Assert.Contains("Two people lift", page.Find(".cake-side .danger").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void One_message_names_everything_and_each_problem_leads_to_its_field()
    {
        var page = Open();
        Tap(page, "Deliver");
        Type(page, "day", "soon");
        Type(page, "hour", "25");
        Type(page, "route", "900");
        Tap(page, "Cut on …");
        Type(page, "cut-day", "31/2");
        Type(page, "cut-hour", "noon");
        Type(page, "count", "10000");
        Type(page, "name", new string('x', 2000));
        Type(page, "phone", "12");
        Type(page, "inscription", new string('y', 121));
        page.Find("#notes").Input(new string('z', 4001));
        Tap(page, "6+10");
        page.Find("[aria-label='Tier 1: diameter']").Input("30");
        page.Find("[aria-label='Tier 2: height in cm']").Input("high");
        Tap(page, "Take the order");

        var told = page.FindAll(".problems a").Select(a => a.GetAttribute("href")!.Split('#')[1]).ToList();
        string[] expected = ["day", "hour", "route", "address", "cut-day", "cut-hour", "count", "name", "phone", "inscription", "notes", "tier-1", "tier-2", "allergies"];
        Assert.Empty(expected.Except(told));
        Assert.All(told, id => Assert.Single(page.FindAll($"#{id}")));
        Assert.Equal("soon", page.Find("#day").GetAttribute("value"));
        Assert.Empty(Book.State.Orders);
    }

    [Theory]
    [InlineData("sun", "14", "shut that day")]
    [InlineData("12/10/2026", "14", "has passed")]
    [InlineData("+900", "14", "800 days")]
    public void An_hour_that_the_shop_cannot_promise_marks_day_and_hour(string day, string hour, string says)
    {
        var page = Filled(day, hour);
        Tap(page, "Take the order");
        Assert.Contains(says, page.Find(".problems").TextContent, StringComparison.Ordinal);
        Assert.Equal(2, page.FindAll("#day.is-wrong, #hour.is-wrong").Count);
    }

    /// <summary>Source: the tz database: Europe/London goes back on 25 October 2026 at 01:00 UTC, so that 01:30 comes twice.</summary>
    [Fact]
    public void A_delivery_in_the_hour_that_comes_twice_is_told()
    {
        var page = Filled("25/10", "01:30");
        Tap(page, "Deliver");
        Type(page, "address", "Orchard Hall");
        Type(page, "route", "20");
        Tap(page, "Take the order");
        Assert.Contains("comes twice", page.Find(".problems").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void No_tier_and_forty_tiers_are_told_and_nothing_breaks()
    {
        var page = Filled("24/10", "14");
        page.Find("[aria-label='Tier 1: take out']").Click();
        Tap(page, "Take the order");
        Assert.Contains("A cake has 1 to 8 tiers.", page.Find(".problems").TextContent, StringComparison.Ordinal);
        for (var i = 0; i < 40; i++)
        {
            Tap(page, "Add a tier");
        }

        Tap(page, "Take the order");
        Assert.Contains("“40”", page.Find(".problems").TextContent, StringComparison.Ordinal);
        Assert.Equal(40, page.FindAll("fieldset.tier").Count);
    }

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("Zoë 山田 🎂 مريم")]
    public void A_name_is_taken_as_it_is_written(string name)
    {
        var page = Filled("24/10", "14");
        Type(page, "name", name);
        Tap(page, "Take the order");
        Assert.Equal(name, Assert.Single(Book.State.Orders).Customer.Name);
        Assert.Empty(page.FindAll("script"));
    }

    [Fact]
    public void A_decimal_comma_is_a_figure()
    {
        var page = Filled("24/10", "14");
        page.Find("[aria-label='Tier 1: height in cm']").Input("10,5");
        Tap(page, "Take the order");
        Assert.Equal(10.5m, Assert.Single(Book.State.Orders).Tiers[0].Height.Centimetres);
    }

    [Fact]
    public void A_cut_on_another_day_is_read_back_and_written()
    {
        var page = Filled("24/10", "14");
        Tap(page, "Cut on …");
        Type(page, "cut-day", "25/10");
        Type(page, "cut-hour", "12");
        Assert.Contains("Sun 25 Oct, 22 h after it leaves", page.Markup, StringComparison.Ordinal);
        Tap(page, "Take the order");
        Assert.Equal(new LocalDateTime(2026, 10, 25, 12, 0), Assert.Single(Book.State.Orders).Cutting);
    }

    [Fact]
    public void The_second_of_two_screens_sees_both_and_chooses()
    {
        var order = Book.Write(Cakes.Good(), "ines").Order!;
        var (first, second) = (Open(order.Id), Open(order.Id));
        Type(first, "count", "50");
        Tap(first, "Write the change");
        Type(second, "count", "60");
        Tap(second, "Write the change");
        Assert.Contains("50 dessert", second.Find(".clash-table").TextContent, StringComparison.Ordinal);
        Assert.Contains("60 dessert", second.Find(".clash-table").TextContent, StringComparison.Ordinal);
        Tap(second, "Write mine over it");
        var kept = Assert.Single(Book.State.Orders);
        Assert.Equal((60, 3), (kept.Portions.Count, kept.Version));
    }

    [Fact]
    public void What_is_typed_survives_a_reload_and_a_start_again_can_be_undone()
    {
        var page = Open();
        Type(page, "name", "Amara");
        Time.Advance(TimeSpan.FromSeconds(3));
        page.WaitForAssertion(() => Assert.Contains(Book.Heard, c => c is KeepDraft { Text: not null }));
        var reloaded = Open();
        Assert.Equal("Amara", reloaded.Find("#name").GetAttribute("value"));
        Tap(reloaded, "Start again");
        Assert.Equal("", reloaded.Find("#name").GetAttribute("value") ?? "");
        Tap(reloaded, "Undo");
        Assert.Equal("Amara", reloaded.Find("#name").GetAttribute("value"));
    }

    [Fact]
    public void A_full_day_is_told_before_the_order_is_taken_and_the_owner_may_go_beyond()
    {
        Book.State = Book.State with { Shop = Book.State.Shop! with { Settings = new(Caps: [new(IsoDayOfWeek.Saturday, 1)]) } };
        Book.Write(Cakes.Good(), "ines");
        var page = Filled("24/10", "14");
        Assert.Empty(page.FindAll(".day-full"));
        Tap(page, "6+10");
        Assert.Contains("1 tiered cake leaves that day already (401)", page.Find(".day-full").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("#beyond-cap"));
        Tap(page, "Take the order");
        Assert.Single(page.FindAll("#day.is-wrong"));
        Assert.Single(Book.State.Orders);

        var hers = Filled("24/10", "14", "ines");
        Tap(hers, "6+10");
        hers.Find("#beyond-cap").Change(true);
        Tap(hers, "Take the order");
        Assert.True(Book.State.Orders.Single(o => o.Number == 402).BeyondCapAgreed);
    }

    [Fact]
    public void A_change_keeps_what_was_wrong_before_and_was_not_touched()
    {
        var late = Book.Write(Cakes.Good() with { Handover = new Handover(Way.Collect, new LocalDateTime(2026, 10, 13, 10, 0), "", 0) }, "ines").Order!;
        var page = Open(late.Id);
        Type(page, "notes", "Left at the bell");
        Tap(page, "Write the change");
        Assert.Equal("Left at the bell", Assert.Single(Book.State.Orders).Notes);
    }
}
