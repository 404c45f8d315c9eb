namespace Bakehouse.Web.Tests.TakeOrder;

using Bakehouse.Book.Entries;
using Bakehouse.Domain.Orders;
using Bakehouse.Testing;
using Bakehouse.Web.TakeOrder;
using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

/// <summary>What was made before is ordered again in few taps: the shop's own cakes, and the last cake of somebody who was here before.</summary>
public sealed class AgainTests : CounterContext
{
    private readonly Order before = Cakes.Good(404, [9, 6]) with
    {
        Number = 404,
        Version = 2,
        Stage = Stage.HandedOver,
        Customer = new Customer("Amara Okafor", "+442079460182"),
        Finish = Finish.SemiNaked,
        Inscription = "HAPPY BIRTHDAY NOA",
        Notes = "ring twice",
        Allergies = new AllergyAnswer(AllergyKind.Avoid, ["sesame"], "swells up") { Judged = "swells up" },
    };

    public AgainTests() => Book.State = Book.State with
    {
        Orders = [before],
        Shop = Book.State.Shop! with { HouseCakes = [HouseCake.Of("Garden party", before), HouseCake.Of("Cocoa round", Cakes.Good(1, [8]))] },
    };

    /// <summary>Cake, day, allergies, name, telephone, take it.</summary>
    [Fact]
    public void A_house_cake_is_an_order_in_six_touches()
    {
        var page = Open();
        var touches = 0;
        void Touch(Action act)
        {
            act();
            touches++;
        }

        Touch(() => Tap(page, "Garden party"));
        Time.Advance(TimeSpan.FromSeconds(1));
        page.WaitForState(() => page.FindAll(".day:enabled").All(d => d.QuerySelector(".mark") is not null));
        Touch(() => page.FindAll(".day:enabled")[3].Click());
        Touch(() => Tap(page, "None told"));
        Touch(() => Type(page, "name", "Quill"));
        Touch(() => Type(page, "phone", "020 7946 0958"));
        Touch(() => Tap(page, "Take the order"));
        Assert.Equal(6, touches);

        var order = Book.Heard.OfType<WriteOrder>().Single().Order;
        Assert.Equal(before.Tiers.Select(t => (t.Diameter, t.Sponge, t.Filling)), order.Tiers.Select(t => (t.Diameter, t.Sponge, t.Filling)));
        Assert.Empty(order.Tiers.Select(t => t.Id).Intersect(before.Tiers.Select(t => t.Id)));
        Assert.Equal(Finish.SemiNaked, order.Finish);
        Assert.True(order.Portions.Count > 0);
    }

    [Fact]
    public void Who_was_here_before_is_offered_the_same_again_and_what_was_told_of_allergies_is_read_back()
    {
        var page = Open();
        Type(page, "day", "24/10");
        Type(page, "phone", "020 7946 0182");
        page.Find(".same-again button").Click();
        Assert.Equal("Amara Okafor", page.Find("#name").GetAttribute("value"));
        Assert.Equal("24/10", page.Find("#day").GetAttribute("value"));
        Assert.Equal("", page.Find("#inscription").GetAttribute("value") ?? "");
        Assert.Equal("true", page.FindAll(".chip").Single(c => c.TextContent == "sesame").GetAttribute("aria-pressed"));
        Assert.Empty(page.FindAll(".same-again"));

        Type(page, "hour", "14");
        Tap(page, "Take the order");
        Assert.Empty(Book.Heard.OfType<WriteOrder>());
        Assert.Contains("sesame", page.Find(".answer").TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("name", "ama", true)]
    [InlineData("name", "am", false)]
    [InlineData("name", "Okafor", false)]
    [InlineData("phone", "020 7946", false)]
    public void Somebody_is_known_by_three_letters_or_a_whole_number(string field, string typed, bool known)
    {
        var page = Open();
        Type(page, field, typed);
        Assert.Equal(known, page.FindAll(".same-again").Count == 1);
    }

    /// <summary>From the page of a cake: what was typed before comes back by a tap, and a reload does not begin it again.</summary>
    [Fact]
    public async Task Made_again_it_is_a_new_order_and_the_old_draft_is_a_tap_away()
    {
        var first = Open();
        Type(first, "name", "Half typed");
        Time.Advance(TimeSpan.FromSeconds(3));
        first.WaitForState(() => Book.Heard.OfType<KeepDraft>().Any());

        await DisposeComponentsAsync();
        Services.GetRequiredService<NavigationManager>().NavigateTo("/order?again=404");
        var page = Open();
        Assert.Equal("Amara Okafor", page.Find("#name").GetAttribute("value"));
        Assert.Equal("", page.Find("#day").GetAttribute("value") ?? "");
        Assert.EndsWith("/order", Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal);
        Tap(page, "Undo");
        Assert.Equal("Half typed", page.Find("#name").GetAttribute("value"));
        Assert.Equal(before, Book.State.Orders.Single());
    }

    /// <summary>A message becomes a draft with its open questions and a reply.</summary>
    [Fact]
    public void A_pasted_message_fills_the_page_and_says_what_is_still_to_ask()
    {
        var page = Open();
        Type(page, "message", "Hi, a two-tier lemon cake for 40 on Saturday 24 October?\nThanks, Amara");
        Tap(page, "Read it");
        Assert.Equal("2026-10-24", page.Find("#day").GetAttribute("value"));
        Assert.Equal("40", page.Find("#count").GetAttribute("value"));
        Assert.Equal("Amara", page.Find("#name").GetAttribute("value"));
        Assert.Equal(3, page.FindAll(".paste li").Count);
        Assert.Contains("allergic", page.Find(".paste ol").TextContent, StringComparison.Ordinal);
        Assert.StartsWith("Hello Amara,", page.Find("#reply").TextContent, StringComparison.Ordinal);
        Tap(page, "None told");
        Assert.DoesNotContain("allergic", page.Find(".paste ol").TextContent, StringComparison.Ordinal);
    }
}
