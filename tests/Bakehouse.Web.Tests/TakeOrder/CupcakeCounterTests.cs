namespace Bakehouse.Web.Tests.TakeOrder;

using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;
using Bakehouse.Web.TakeOrder;
using Bunit;

/// <summary>Cupcakes at the counter: alone in one tap, beside a cake in one more, with one price, one read-back and every allergen.</summary>
public sealed class CupcakeCounterTests : CounterContext
{
    public CupcakeCounterTests() => Book.State = Book.State with { Cookbook = Starter.Sample };

    [Fact]
    public void Two_dozen_alone_are_one_tap_and_their_own_number_of_portions()
    {
        var page = Open();
        Type(page, "day", "24/10");
        Type(page, "hour", "14");
        Tap(page, "None told");
        Type(page, "name", "Amara Okafor");
        Tap(page, "24 cupcakes");
        Assert.Equal("24", page.Find("#count").GetAttribute("value"));
        Assert.Contains("24 cupcakes", page.Find(".cake-side h2").TextContent, StringComparison.Ordinal);
        Tap(page, "36 cupcakes");
        Assert.Equal("36", page.Find("#count").GetAttribute("value"));
        Tap(page, "Take the order");
        var order = Assert.Single(Book.State.Orders);
        Assert.Equal((36, "36 cupcakes", 36), (order.Portions.Count, order.SizeInInches, order.Beside.Single().Special!.Cupcakes!.Count));
        Assert.Empty(order.Stack);
    }

    [Fact]
    public void A_cake_and_cupcakes_beside_it_are_one_order_and_come_back_when_it_is_changed()
    {
        var page = Filled("24/10", "14");
        Tap(page, "6+10");
        Type(page, "count", "60");
        Tap(page, "36 cupcakes");
        Tap(page, "Another kind …");
        page.Find("[aria-label='Cupcakes 2: sponge']").Change("chocolate");
        Tap(page, "Take the order");
        var order = Assert.Single(Book.State.Orders);
        Assert.Equal(("6+10 and 48 cupcakes", 2, 60), (order.SizeInInches, order.Stack.Count, order.Portions.Count));
        Assert.Equal(["vanilla", "chocolate"], order.Beside.Select(b => b.Sponge));

        var form = OrderForm.Of(order, Book.State.Shop!);
        Assert.Equal((2, 2), (form.Tiers.Count, form.Cupcakes.Count));
        var change = Open(order.Id);
        change.Find("[aria-label='Cupcakes 1: how many']").Input("40");
        Tap(change, "Write the change");
        var changed = Book.State.Orders.Single();
        Assert.Equal([40, 12], changed.Beside.Select(b => b.Special!.Cupcakes!.Count));
        Assert.Equal(order.Tiers.Select(t => t.Id), changed.Tiers.Select(t => t.Id));
        var again = OrderForm.Again(changed, Book.State.Shop!);
        Assert.Equal(["40", "12"], again.Cupcakes.Select(c => c.Count));
        Assert.DoesNotContain(again.Cupcakes, c => changed.Tiers.Any(t => t.Id == c.Id));
    }

    [Fact]
    public void What_is_wrong_leads_to_its_field()
    {
        var page = Filled("24/10", "14");
        Tap(page, "6+10");
        Tap(page, "12 cupcakes");
        page.Find("[aria-label='Cupcakes 1: how many']").Input("900");
        Tap(page, "Take the order");
        var told = page.Find(".problems a[href$='#cupcakes-1']").ParentElement!.TextContent;
        Assert.Contains("A batch is 1 to 240 cupcakes.", told, StringComparison.Ordinal);
        page.Find("[aria-label='Cupcakes 1: how many']").Input("a few");
        Tap(page, "Take the order");
        Assert.Contains("a few", page.Find(".problems").TextContent, StringComparison.Ordinal);
        Assert.Empty(Book.State.Orders);
        Tap(page, "12 cupcakes");
        Tap(page, "12 cupcakes");
        Assert.Empty(page.FindAll("[aria-label='Cupcakes 1: how many']"));
    }

    /// <summary>A cake that may be eaten, and cupcakes beside it that may not: the counter hears it before anybody takes the order.</summary>
    [Fact]
    public void An_allergen_that_is_only_in_the_cupcakes_stops_the_order()
    {
        var page = Filled("24/10", "14");
        Tap(page, "6+10");
        Tap(page, "12 cupcakes");
        Tap(page, "Avoid …");
        Tap(page, "nuts");
        Assert.DoesNotContain("not as it is", page.Find(".weighed").TextContent, StringComparison.Ordinal);
        page.Find("[aria-label='Cupcakes 1: sponge']").Change("carrot");
        Assert.Contains("walnuts", page.Find(".contains-line").TextContent, StringComparison.Ordinal);
        Assert.Contains("nuts: not as it is.", page.Find(".weighed").TextContent, StringComparison.Ordinal);
        Assert.Equal("Not this", page.Find(".answer-word").TextContent.Trim());
        Tap(page, "Take the order");
        Assert.Empty(Book.State.Orders);
    }
}
