namespace Bakehouse.Web.Tests.TheCakes;

using Bakehouse.Book.Reading;
using Bakehouse.Domain.Orders;
using Bakehouse.Testing;
using Bakehouse.Web.Access;
using Bakehouse.Web.TheCakes;
using Bunit;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;
using NodaTime.Testing;

/// <summary>One cake: all that is needed to build it, in the order of its drawing.</summary>
public sealed class OneCakePageTests : BunitContext
{
    private readonly BookInHand book = new();
    private readonly Order order;

    public OneCakePageTests()
    {
        order = book.Write(Cakes.Good(), "ines").Order!;
        Services.AddSingleton<IBook>(book);
        Services.AddSingleton<IClock>(new FakeClock(Cakes.Now));
        Services.AddSingleton<TimeProvider>(new MovableTime(Cakes.Now));
    }

    [Fact]
    public void The_top_tier_stands_on_top_and_the_dowels_agree_in_table_count_and_drawing()
    {
        var page = Open();
        Assert.Equal(["6 in", "8 in", "10 in"], page.FindAll(".tier-row h2").Select(h => h.TextContent));
        var dowels = page.FindAll(".tier-row dl > div:last-child dd").Select(d => d.TextContent).ToList();
        Assert.Equal(["none", "5 × 10.7 cm", "6 × 10.7 cm"], dowels);
        Assert.Contains("Inside: 11 dowels, 2 boards, 1 rod.", page.Find(".inside-tray").TextContent, StringComparison.Ordinal);
        Assert.Equal(11, page.FindAll(".inside-tray circle.dowel").Count);
        Assert.Contains("look at the load yourself", page.Find(".inside-tray").TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Half cut", "cut in half")]
    [InlineData("Outside", "from the front")]
    [InlineData("From above", "from above")]
    public void It_is_drawn_three_ways(string tap, string says)
    {
        var page = Open();
        page.FindAll(".cake-views button").Single(b => b.TextContent == tap).Click();
        Assert.Contains(says, page.Find(".cake-views svg title").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Lifting_and_allergies_stand_on_black_and_no_price_anywhere()
    {
        book.State = book.State with { Shop = book.State.Shop! with { Settings = book.State.Shop.Settings with { TwoPeopleFromKg = 5 } } };
        book.Write(order with { Allergies = new AllergyAnswer(AllergyKind.Avoid, ["nuts"], "airways close") }, "ines");
        var page = Open();
        Assert.Equal(["Avoid nuts.", "Two people lift."], page.FindAll(".danger b").Select(b => b.TextContent));
        Assert.Contains("“airways close”", page.Find(".danger").TextContent, StringComparison.Ordinal);
        Assert.Contains("no recipes are written yet. Check the recipe yourself", page.Find("#contains").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain(page.Markup, c => c is '£' or '$' or '€');
    }

    [Fact]
    public void A_new_version_says_what_changed_and_who_did_it()
    {
        book.Write(order with { Portions = new Portions(55, Cut.Dessert) }, "petra");
        var page = Open();
        Assert.Contains("version 2", page.Find(".cake-head").TextContent, StringComparison.Ordinal);
        Assert.Equal("40 dessert", page.Find("#what-changed s").TextContent);
        Assert.Contains("Petra", page.Find("#what-changed").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_delivery_says_when_it_leaves()
    {
        book.Write(order with { Handover = new Handover(Way.Deliver, new LocalDateTime(2026, 10, 24, 10, 0), "Orchard Hall", 90) }, "ines");
        Assert.Equal("Sat 24 Oct, leave 08:30", Open().Find(".leaves").TextContent);
    }

    [Fact]
    public void A_cake_of_one_tier_hides_nothing()
    {
        book.Write(order with { Tiers = [order.Tiers[0]] }, "ines");
        Assert.Empty(Open().FindAll(".inside-tray"));
    }

    private IRenderedComponent<OneCakePage> Open() =>
        Render<OneCakePage>(p => p.AddCascadingValue(new Who("petra", "bench")).Add(c => c.Number, order.Number));
}
