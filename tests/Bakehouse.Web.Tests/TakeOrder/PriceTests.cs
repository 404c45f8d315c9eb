namespace Bakehouse.Web.Tests.TakeOrder;

using Bakehouse.Book.Entries;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Prices;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Shops;
using Bakehouse.Testing;
using Bakehouse.Web.Shell;
using Bakehouse.Web.TakeOrder;
using Bakehouse.Web.TheRecipes;
using Bunit;

/// <summary>The price at the counter: with its parts, or with what is missing; never under the floor without a reason.</summary>
public sealed class PriceTests : CounterContext
{
    public PriceTests() => Book.State = Book.State with { Cookbook = Starter.Sample, Shop = Book.State.Shop! with { Prices = SampleBakery.Shop.Prices } };

    private CakePrice Sample => CakePrice.Of(Book.State.Orders.Single(), Starter.Sample, Book.State.Shop!)!;

    [Fact]
    public void It_stands_there_with_its_parts_and_is_agreed_in_a_tap()
    {
        var page = Filled("sat", "14:00");
        var asked = page.Find(".price-asked").TextContent;
        var parts = page.FindAll(".price-parts dt").Select(d => d.TextContent).ToList();
        Assert.Equal(["Ingredients", "Packaging"], parts.Take(2));
        Assert.Contains("Costs", parts);
        Assert.Equal(asked, page.FindAll(".price-parts .sum dd")[^1].TextContent);
        page.Find(".price-agreed button").Click();
        Tap(page, "Take the order");
        Assert.Equal(Sample.Asked, Book.State.Orders.Single().Price!.Amount);
        Assert.Equal(Words.Of(Book.State.Shop).Money(Sample.Asked!.Value), asked);
    }

    [Fact]
    public void Without_prices_it_says_what_is_missing_and_the_order_can_be_taken_all_the_same()
    {
        Book.State = Book.State with { Shop = Book.State.Shop! with { Prices = new ShopPrices { Wage = 17 } } };
        var page = Filled("sat", "14:00");
        Assert.Empty(page.FindAll(".price-asked"));
        Assert.Contains("Price not set. Missing under Shop: overhead, orders a year, mark-up and", page.Find(".price-tray").TextContent, StringComparison.Ordinal);
        Tap(page, "Take the order");
        Assert.Null(Book.State.Orders.Single().Price);

        Book.State = Book.State with { Shop = Book.State.Shop! with { Prices = null } };
        Assert.Contains("Price not set: give wage", Open().Find(".price-tray").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Under_the_floor_it_asks_for_a_reason_and_keeps_it()
    {
        var page = Filled("sat", "14:00");
        Assert.Empty(page.FindAll("#price-reason"));
        Type(page, "price", "5,50");
        Assert.Contains("Under the floor of £", page.Find(".price-tray").TextContent, StringComparison.Ordinal);
        Tap(page, "Take the order");
        Assert.StartsWith("Price “5.50”: The floor of this cake is", page.Find(".problems li").TextContent.Trim(), StringComparison.Ordinal);
        Assert.DoesNotContain(Book.Heard, c => c is WriteOrder);
        Type(page, "price-reason", "Her sister's cake broke");
        Tap(page, "Take the order");
        Assert.Equal(new AgreedPrice(5.50m, "Her sister's cake broke"), Book.State.Orders.Single().Price);
    }

    [Fact]
    public void A_price_that_cannot_be_read_is_named()
    {
        var page = Filled("sat", "14:00");
        Type(page, "price", "a lot");
        Tap(page, "Take the order");
        Assert.Contains("Price “a lot”: A figure in the shop's money is needed here.", page.Find(".problems").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_recipe_says_what_it_costs_or_which_pack_has_no_price()
    {
        var cream = Starter.Sample.Recipe("buttercream")!;
        string Line(Shop shop) => Render<RecipeCostLine>(p => p.Add(c => c.Recipe, cream).Add(c => c.Cookbook, Starter.Sample).Add(c => c.Shop, shop).Add(c => c.Grams, 751m)).Find(".recipe-cost").TextContent;
        // 2.6193 for 751 g, worked by hand in the domain's tests.
        Assert.Contains("£2.62 for 751 g, £3.49 a kg weighed in.", Line(Book.State.Shop!), StringComparison.Ordinal);
        Assert.Contains("give pack prices for Butter, unsalted, Cream, heavy, Icing sugar under Shop.", Line(Book.State.Shop! with { Prices = ShopPrices.None }), StringComparison.Ordinal);
    }
}
