namespace Bakehouse.Web.Tests.TakeOrder;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Testing;
using Bakehouse.Web.TakeOrder;
using Bakehouse.Web.TakeOrder.Messages;
using Bakehouse.Web.TheKitchen;
using Bunit;
using NodaTime;

/// <summary>Tiers that are not round, at the counter.</summary>
public sealed class OtherShapesTests : CounterContext
{
    [Theory]
    [InlineData("Square", OutlineKind.Square)]
    [InlineData("Slab", OutlineKind.Rectangle)]
    [InlineData("Hexagon", OutlineKind.Hexagon)]
    [InlineData("Heart", OutlineKind.Heart)]
    [InlineData("Petal", OutlineKind.Petal)]
    [InlineData("Number", OutlineKind.Sign)]
    [InlineData("Letter", OutlineKind.Sign)]
    public void A_shape_is_taken_in_two_taps_and_written_as_such(string name, OutlineKind kind)
    {
        var page = Filled("sat", "14:00");
        Type(page, "count", "6");
        Assert.DoesNotContain(page.FindAll(".build b"), b => b.TextContent == name);
        Tap(page, "Other shapes");
        Tap(page, name);
        Assert.Empty(page.FindAll("[aria-label='Other shapes']"));
        Tap(page, "Take the order");
        var tier = Assert.Single(Book.State.Orders.Single().Tiers);
        Assert.Equal(kind, tier.Special!.Outline!.Kind);
        Assert.Empty(BuildProblems.Of([tier], CakeFigures.Usual));
    }

    [Fact]
    public void Sides_and_sign_are_typed_and_what_is_wrong_is_named()
    {
        var page = Filled("sat", "14:00");
        Tap(page, "Other shapes");
        Tap(page, "Slab");
        page.Find("[aria-label='Tier 1: depth']").Input("10");
        Assert.Contains("13×10, one tier", page.Find(".cake-side h2").TextContent, StringComparison.Ordinal);
        Tap(page, "Other shapes");
        Tap(page, "Number");
        page.Find("[aria-label='Tier 1: figure or letter']").Input("?");
        Tap(page, "Take the order");
        Assert.Contains("There is no template for this sign.", page.Find(".problems").TextContent, StringComparison.Ordinal);
        page.Find("[aria-label='Tier 1: figure or letter']").Input("r");
        Tap(page, "Take the order");
        Assert.Equal("R", Book.State.Orders.Single().Tiers[0].Special!.Outline!.Sign);
    }

    /// <summary>By hand: a 4 is 6 of 10 units wide, 7.2 in or 18.3 cm at 12 in of height.</summary>
    [Fact]
    public void It_is_drawn_and_told_as_wide_as_it_is()
    {
        var sign = Cakes.Tier(1, 1, 12) with { Special = new TierSpecial { Outline = new Outline(OutlineKind.Sign, Length.FromInches(12), Sign: "4") } };
        Assert.Equal(18.288m, Assert.Single(PictureView.Of("coat", [sign]).Tiers).Width);
        var heart = Cakes.Tier(1, 2, 8) with { Special = new TierSpecial { Outline = new Outline(OutlineKind.Heart, Length.FromInches(8)) } };
        var reply = new ReplyWords(Book.State.Shop!, new LocalDate(2026, 10, 13));
        Assert.Contains("8 in heart on 10 in.", reply.Letter(new OrderForm(), null, null, null, [Cakes.Tier(1, 1, 10), heart], "", []), StringComparison.Ordinal);
    }

    [Fact]
    public void A_round_build_is_round_again_and_changing_an_order_keeps_what_is_special()
    {
        var page = Filled("sat", "14:00");
        Tap(page, "Other shapes");
        Tap(page, "Heart");
        Tap(page, "6+10");
        Assert.Contains("6+10 round", page.Find(".cake-side h2").TextContent, StringComparison.Ordinal);

        var special = new TierSpecial { Outline = new Outline(OutlineKind.Petal, Length.FromInches(8), Lobes: 12), Separator = Length.FromMillimetres(40) };
        var order = Cakes.Good(7);
        var kept = Book.Write(order with { Id = Guid.NewGuid(), Tiers = [order.Tiers[0], order.Tiers[1] with { Special = special }] }, "ines").Order!;
        var change = Open(kept.Id);
        Type(change, "inscription", "NOA");
        Tap(change, "Write the change");
        var written = Book.State.Orders.Single(o => o.Id == kept.Id);
        Assert.Equal("NOA", written.Inscription);
        Assert.Equal(special, written.Tiers[1].Special! with { LayerHeights = special.LayerHeights });
    }
}
