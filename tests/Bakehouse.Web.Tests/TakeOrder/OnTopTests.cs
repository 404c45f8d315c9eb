namespace Bakehouse.Web.Tests.TakeOrder;

using Bakehouse.Domain.Dangers;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.TakeOrder;
using Bunit;

/// <summary>Flowers, things on top, who eats and the owner's limits at the counter: folded away until asked for, and told before any yes of the plan.</summary>
public sealed class OnTopTests : CounterContext
{
    public OnTopTests() => Book.State = Book.State with { Cookbook = Starter.Sample };

    [Fact]
    public void An_ordinary_order_sees_none_of_it_and_costs_no_tap()
    {
        var page = Filled("24/10", "14");
        Assert.Empty(page.FindAll("#fresh-flowers, #small-children, .cap-line"));
        Tap(page, "Take the order");
        var order = Assert.Single(Book.State.Orders);
        Assert.Equal((null, null), ((object?)order.OnTop, (object?)order.Eaters));
    }

    [Fact]
    public void Flowers_are_named_kept_from_the_cake_and_told_by_whom()
    {
        var page = Filled("24/10", "14");
        Tap(page, "On top …");
        Tap(page, "Fresh flowers");
        Assert.Equal("Not yet", page.Find(".answer-word").TextContent.Trim());
        Assert.Contains("nobody has said which", page.Find(".answer-says").TextContent, StringComparison.Ordinal);

        page.Find("[aria-label='Flower 1: which']").Input("foxglove");
        Assert.Contains("listed as poisonous. Colorado State", page.Find(".flower-says").TextContent, StringComparison.Ordinal);
        Assert.Contains("Foxglove (Digitalis) is listed as poisonous. Nobody has said how it goes on.", page.Find(".answer-says").TextContent, StringComparison.Ordinal);
        page.Find("[aria-label='Flower 1: how it goes on']").Change("Touches");
        Tap(page, "Take the order");
        Assert.Empty(Book.State.Orders);
        Assert.Contains("On top “foxglove”", page.Find(".problems").TextContent, StringComparison.Ordinal);

        page.Find("[aria-label='Flower 1: how it goes on']").Change("Pick");
        page.Find("[aria-label='Flower 1: stems']").Input("5");
        page.Find("#florist").Input("Tansy Lane");
        Assert.Contains("5 stems of foxglove.", page.Find(".on-top .danger").TextContent, StringComparison.Ordinal);
        Tap(page, "Take the order");
        var flowers = Assert.Single(Book.State.Orders).OnTop!.Flowers!;
        Assert.Equal((new OrderedFlower("foxglove", FlowerPut.Pick, Stems: 5), "Tansy Lane"), (flowers.Kinds.Single(), flowers.Florist));
        var again = OnTopForm.Of(Book.State.Orders[0].OnTop);
        Assert.Equal(("foxglove", "5", "Tansy Lane"), (again.Kinds[0].Species, again.Kinds[0].Stems, again.Florist));
    }

    [Fact]
    public void An_unknown_flower_stays_beside_the_cake_and_a_rose_touches_it_only_if_grown_to_eat()
    {
        var page = Filled("24/10", "14");
        Tap(page, "On top …");
        Tap(page, "Fresh flowers");
        page.Find("#florist").Input("Tansy Lane");
        page.Find("[aria-label='Flower 1: which']").Input("freesia");
        page.Find("[aria-label='Flower 1: how it goes on']").Change("Pick");
        Assert.Contains("freesia is on none of our lists", page.Find(".answer-says").TextContent, StringComparison.Ordinal);
        page.Find("[aria-label='Flower 1: how it goes on']").Change("Beside");
        Assert.NotEqual("Not yet", page.Find(".answer-word").TextContent.Trim());

        page.Find("[aria-label='Flower 1: which']").Input("white roses");
        page.Find("[aria-label='Flower 1: how it goes on']").Change("Touches");
        Assert.Equal("Not yet", page.Find(".answer-word").TextContent.Trim());
        page.Find(".grown").Change(true);
        Assert.NotEqual("Not yet", page.Find(".answer-word").TextContent.Trim());
    }

    [Fact]
    public void What_is_no_food_is_not_this_and_a_count_that_is_none_is_named()
    {
        var page = Filled("24/10", "14");
        Tap(page, "On top …");
        page.Find("#topping").Change("craft-glitter");
        Assert.Equal("Not this", page.Find(".answer-word").TextContent.Trim());
        Assert.Contains("22.1 mg", page.Find(".topping").TextContent, StringComparison.Ordinal);
        Tap(page, "Glitter or dust not sold as food: take out");
        page.Find("#topping").Change("flags");
        page.Find("[aria-label='Flags on picks: how many']").Input("some");
        Tap(page, "Take the order");
        Assert.Contains("On top “some”: A whole number of pieces is needed here.", page.Find(".problems").TextContent, StringComparison.Ordinal);
    }

    /// <summary>Each kind of nut is an entry of its own in annex II of Regulation (EU) No 1169/2011, and peanuts are another: none is assumed.</summary>
    [Fact]
    public void Whole_nuts_are_asked_about_by_kind_and_each_brings_its_own_allergen()
    {
        var page = Filled("24/10", "14");
        Tap(page, "On top …");
        page.Find("#topping").Change("whole-nuts");
        Assert.Equal("Not yet", page.Find(".answer-word").TextContent.Trim());
        Assert.Contains("Whole nuts are asked for, and nobody has said which.", page.Find(".answer-says").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("almonds", page.Find(".contains-line").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain(page.FindAll("#topping option"), o => o.GetAttribute("value") == "whole-hazelnuts");

        page.Find("[aria-label='Which nuts']").Change("whole-hazelnuts");
        Assert.NotEqual("Not yet", page.Find(".answer-word").TextContent.Trim());
        Assert.Contains("hazelnuts", page.Find(".contains-line").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("almonds", page.Find(".contains-line").TextContent, StringComparison.Ordinal);
        page.Find("[aria-label='Which nuts']").Change("whole-peanuts");
        Assert.Contains("peanuts", page.Find(".contains-line").TextContent, StringComparison.Ordinal);
        Tap(page, "Take the order");
        Assert.Equal("whole-peanuts", Assert.Single(Assert.Single(Book.State.Orders).OnTop!.Toppings).Topping);
    }

    [Fact]
    public void Small_children_bring_what_chokes_and_alcohol_and_it_is_asked_once()
    {
        var page = Filled("24/10", "14");
        page.Find("#decoration").Change("Medium");
        page.Find("#who-eats").Click();
        page.Find("#small-children").Change(true);
        Assert.Contains("A small child can choke on: sugar pearls. Alcohol goes in, baked or not: Vanilla extract.", page.Find(".eaters .danger").TextContent, StringComparison.Ordinal);
        Assert.Equal("Not yet", page.Find(".answer-word").TextContent.Trim());
        page.Find("#eaters-asked").Change(true);
        Assert.NotEqual("Not yet", page.Find(".answer-word").TextContent.Trim());

        // Something comes in: it is asked anew.
        Tap(page, "On top …");
        page.Find("#topping").Change("popcorn");
        Assert.Equal("Not yet", page.Find(".answer-word").TextContent.Trim());
        page.Find("#eaters-asked").Change(true);
        Tap(page, "Take the order");
        Assert.Contains("popcorn, sugar pearls", Assert.Single(Book.State.Orders).Eaters!.Asked, StringComparison.Ordinal);
        Assert.False(OrderForm.Again(Book.State.Orders[0], Book.State.Shop!).Eaters.IsTold);
    }

    [Fact]
    public void Raw_egg_for_somebody_ill_is_the_owners_word()
    {
        var jam = Starter.Sample.Recipe("raspberry-jam")!;
        Book.State = Book.State with { Cookbook = Starter.Sample.With([], [jam with { Lines = [.. jam.Lines, RecipeLine.Kitchen("egg-white", 2, "large")], Eggs = EggMethod.Raw }]) };
        var page = Filled("24/10", "14");
        page.Find("#who-eats").Click();
        page.Find("#vulnerable").Change(true);
        page.Find("#eaters-asked").Change(true);
        Assert.Contains("There is raw egg in it", page.Find(".answer-says").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("#raw-egg"));
        var owner = Filled("24/10", "14", "ines");
        owner.Find("#who-eats").Click();
        owner.Find("#vulnerable").Change(true);
        owner.Find("#eaters-asked").Change(true);
        owner.Find("#raw-egg").Change(true);
        Tap(owner, "Take the order");
        Assert.True(Assert.Single(Book.State.Orders).Eaters!.RawEggAgreed);
    }

    /// <summary>Figures of a scenario of the trade: see OwnLimitsTests.</summary>
    [Fact]
    public void The_owners_limits_are_told_in_her_words_and_her_cap_with_its_figures_to_her_alone()
    {
        Book.State = Book.State with { Shop = Book.State.Shop! with { Limits = new OwnLimits(true, "I sell nothing that needs the fridge.", 50_000, "Made in a home kitchen.") } };
        Book.Write(Bakehouse.Testing.Cakes.Good(9) with { Price = new AgreedPrice(46_800) }, "ines");
        var page = Filled("24/10", "14", "ines");
        Type(page, "price", "420");
        Assert.Equal("£47,220.00 is then booked for 2026: 94 % of your cap of £50,000.00.", page.Find(".cap-line").TextContent.Trim());
        page.FindAll("fieldset.tier select")[1].Change("cream-cheese");
        Assert.Equal("Not this", page.Find(".answer-word").TextContent.Trim());
        Assert.StartsWith("“I sell nothing that needs the fridge.” Cream cheese needs it.", page.Find(".answer-says .headline").TextContent.Trim(), StringComparison.Ordinal);
        Assert.Contains("Take buttercream or raspberry jam instead.", page.Find(".answer-says").TextContent, StringComparison.Ordinal);
        page.FindAll("fieldset.tier select")[1].Change("raspberry-jam");
        Assert.NotEqual("Not this", page.Find(".answer-word").TextContent.Trim());
        Type(page, "price", "3200.01");
        Assert.Equal("Not this", page.Find(".answer-word").TextContent.Trim());
        Tap(page, "Take the order");
        Assert.Contains("your yearly cap is 50,000, and 3,200 of it is left", page.Find(".problems").TextContent, StringComparison.Ordinal);

        var counter = Filled("24/10", "14");
        Type(counter, "price", "420");
        Assert.Equal("With this cake 94 % of the owner's yearly cap is booked.", counter.Find(".cap-line").TextContent.Trim());
        Type(counter, "price", "3200.01");
        Tap(counter, "Take the order");
        Assert.Contains("With it the owner's cap for 2026 would be passed.", counter.Find(".problems").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("50,000", counter.Markup, StringComparison.Ordinal);
    }
}
