namespace Bakehouse.Web.Tests.TakeOrder;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Orders;
using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

/// <summary>From guests to tiers at the counter, and a cake that serves fewer than were asked for.</summary>
public sealed class GuestsTests : CounterContext
{
    /// <summary>40 invited to a wedding, 32 come, self-served 29 take cake (shares: common practice, no source).</summary>
    [Fact]
    public void Guests_become_portions_and_three_builds_of_which_one_tap_takes_one()
    {
        var page = Filled("sat", "14:00");
        Tap(page, "Guests");
        Type(page, "count", "40");
        page.Find("#occasion").Change("Wedding");
        page.Find("#serving").Change("SelfServed");
        Tap(page, "Coffee");
        Tap(page, "Top kept");
        Assert.Contains("29 portions to cut beside the top tier", page.Markup, StringComparison.Ordinal);
        var builds = page.FindAll(".for-guests .build").Where(b => b.QuerySelector(".over") is not null).ToList();
        Assert.Equal(3, builds.Count);
        Assert.All(builds, b => Assert.Matches("[0-9]+ or [0-9]+.*(over|short).*top kept: [0-9]+ over", b.TextContent.Replace('\n', ' ')));
        builds[0].Click();
        Tap(page, "Take the order");
        var order = Assert.Single(Book.State.Orders);
        Assert.Equal(new Guests(40, Occasion.Wedding, Serving.SelfServed, KeepsTop: true), order.Guests);
        Assert.Equal(29, order.Portions.Count);
        Assert.Equal(0, Serves.Of(order, CakeFigures.Usual)!.Missing);
        Assert.True(order.Tiers.Count > 1);
    }

    [Fact]
    public void A_number_of_guests_that_is_none_is_named_at_its_field()
    {
        var page = Filled("sat", "14:00");
        Tap(page, "Guests");
        Type(page, "count", "many");
        Tap(page, "Take the order");
        Assert.Contains("whole number of guests", page.Find(".problems").TextContent, StringComparison.Ordinal);
        Type(page, "count", "9000");
        Assert.Contains("1 to 5000 guests", page.Find(".problems").TextContent, StringComparison.Ordinal);
        Assert.Empty(Book.State.Orders);
    }

    [Fact]
    public void A_heart_for_twenty_is_heard_short_at_once_and_the_next_size_is_one_tap()
    {
        var page = Filled("sat", "14:00");
        Tap(page, "Other shapes");
        Tap(page, "Heart");
        Assert.Contains("Serves 13: 7 short of 20", page.Find("#short").TextContent, StringComparison.Ordinal);
        Assert.Contains("Short", page.Find(".answer-word").TextContent, StringComparison.Ordinal);
        Tap(page, "Take the order");
        Assert.Empty(Book.State.Orders);
        Assert.Contains("7 short", page.Find(".problems").TextContent, StringComparison.Ordinal);
        page.Find("#short button").Click();
        Assert.Empty(page.FindAll("#short"));
        Tap(page, "Take the order");
        Assert.Equal(10, Assert.Single(Book.State.Orders).Tiers[0].Diameter.Inches);
    }

    [Fact]
    public void Whoever_was_told_takes_the_smaller_cake_and_it_is_written_down()
    {
        var page = Filled("sat", "14:00");
        Type(page, "count", "24");
        page.Find("#short-told").Change(true);
        Tap(page, "Take the order");
        Assert.Equal(4, Assert.Single(Book.State.Orders).ShortTold);
    }

    [Fact]
    public void What_was_told_of_four_is_not_told_of_ten()
    {
        var page = Filled("sat", "14:00");
        Type(page, "count", "24");
        page.Find("#short-told").Change(true);
        Type(page, "count", "30");
        Assert.False(page.Find("#short-told").HasAttribute("checked"));
        Tap(page, "Take the order");
        Assert.Empty(Book.State.Orders);
    }

    /// <summary>Sixty guests become eighty-five on 6+8+10 with the top kept: 23 fingers short, the tiers stay, a slab is cut beside it.</summary>
    [Fact]
    public void More_guests_leave_the_tiers_and_a_cutting_cake_follows_with_one_tap()
    {
        var sixty = new Guests(60, Occasion.Other, Serving.Plated, KeepsTop: true);
        var order = Book.Write(Bakehouse.Testing.Cakes.Good() with { Portions = new Portions(60, Cut.Coffee), Guests = sixty }, "wren").Order!;
        var change = Open(order.Id);
        Type(change, "count", "85");
        var said = change.Find("#short").TextContent;
        Assert.Contains("Serves 62, 12 on the top tier kept: 23 short of 85.", said, StringComparison.Ordinal);
        Assert.Contains("The tiers stay.", said, StringComparison.Ordinal);
        Assert.True(said.Contains("serves 54: it is taken next", StringComparison.Ordinal), said);
        Assert.Contains("gives 24: too tight", said, StringComparison.Ordinal);
        change.Find("#short-told").Change(true);
        Tap(change, "Write the change");
        var changed = Book.State.Orders.Single();
        Assert.Equal((order.Version + 1, 85, 23), (changed.Version, changed.Guests!.Invited, changed.ShortTold));
        Assert.Equal(order.Tiers.Select(t => t.Diameter), changed.Tiers.Select(t => t.Diameter));

        var link = change.Find("a.main").GetAttribute("href")!;
        Assert.Equal($"/order?again={changed.Number}&beside=true", link);
        Services.GetRequiredService<NavigationManager>().NavigateTo(link);
        var slab = Open();
        Assert.Equal("23", slab.Find("#count").GetAttribute("value"));
        Assert.Contains("13×9", slab.Find(".cake-side h2").TextContent, StringComparison.Ordinal);
        Tap(slab, "Take the order");
        Assert.Contains("allergies", slab.Find(".problems").TextContent, StringComparison.Ordinal);
        Tap(slab, "None told");
        Tap(slab, "Take the order");
        var beside = Book.State.Orders.Single(o => o.Id != order.Id);
        Assert.Equal((order.Handover.At, order.Customer), (beside.Handover.At, beside.Customer));
        Assert.Equal(order.Tiers[0].Sponge, Assert.Single(beside.Tiers).Sponge);
    }
}
