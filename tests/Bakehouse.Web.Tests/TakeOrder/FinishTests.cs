namespace Bakehouse.Web.Tests.TakeOrder;

using Bakehouse.Web.Shell;
using Bakehouse.Testing;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;
using Bakehouse.Web.TakeOrder;
using Bunit;

/// <summary>Sugar paste and a drip are chosen at the counter, and come back when the order is changed.</summary>
public sealed class FinishTests : CounterContext
{
    public FinishTests() => Book.State = Book.State with { Cookbook = Starter.Sample };

    /// <summary>Cupcakes beside the cake have no drip: they don't count among its tiers.</summary>
    [Fact]
    public void A_drip_on_each_tier_is_said_so_with_cupcakes_beside_too()
    {
        var cake = Cakes.Good();
        var dripped = cake.Tiers.Select(t => t with { Special = new TierSpecial { Drip = Length.FromCentimetres(4) } }).ToList();
        var batch = Cupcakes.Batch(Guid.NewGuid(), 24, "vanilla", cake.Tiers[0].Colours);
        Assert.Equal("smooth, a drip on each tier", FinishWords.Say(cake with { Tiers = [.. dripped, batch] }));
        Assert.Equal("smooth, a drip on the top tier", FinishWords.Say(cake with { Tiers = [.. cake.Tiers.SkipLast(1), dripped[^1], batch] }));
    }

    [Fact]
    public void Paste_covers_every_tier_whenever_it_is_chosen_and_another_coat_takes_it_off()
    {
        var page = Filled("24/10", "14");
        page.Find("#finish").Change("Paste");
        Tap(page, "6+10");
        Tap(page, "Take the order");
        var order = Assert.Single(Book.State.Orders);
        Assert.All(order.Tiers, t => Assert.Equal(4m, t.Special!.Paste!.Value.Millimetres));

        var change = Open(order.Id);
        Assert.Equal("Paste", change.Find("#finish").GetAttribute("value"));
        change.Find("#finish").Change("SemiNaked");
        Tap(change, "Write the change");
        Assert.All(Book.State.Orders.Single().Tiers, t => Assert.Null(t.Special));
        Assert.Equal(Finish.SemiNaked, Book.State.Orders.Single().Finish);
    }

    [Fact]
    public void A_drip_runs_from_the_top_tier_or_from_each_and_is_in_what_it_contains()
    {
        Book.State = Book.State with { Cookbook = Starter.Sample.With([Starter.Sample.Ingredient("dark-chocolate")! with { MadeOf = [new("cocoa mass", []), new("soya lecithin", ["soya"])], Packs = [new Pack("b", Domain.Allergens.AllergenFacts.Only("milk", "soya"))] }], []) };
        var page = Filled("24/10", "14");
        Tap(page, "6+8+10");
        Type(page, "count", "40");
        Assert.DoesNotContain("soya", page.Find(".contains-line").TextContent, StringComparison.Ordinal);
        page.Find("#drip").Change("Top");
        Assert.Contains("soya", page.Find(".contains-line").TextContent, StringComparison.Ordinal);
        Tap(page, "Take the order");
        var order = Assert.Single(Book.State.Orders);
        Assert.Equal([0m, 0m, 40m], order.Tiers.Select(t => t.Special?.Drip.Millimetres ?? 0));
        Assert.Equal(Dripping.Top, OrderForm.Of(order, Book.State.Shop!).Drip);
    }
}
