namespace Bakehouse.Web.Tests.TakeOrder;

using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;
using Bunit;

/// <summary>At the counter the cake says what it contains, and what must be avoided is weighed against it.</summary>
public sealed class WeighedTests : CounterContext
{
    [Fact]
    public void What_it_contains_stands_beside_the_drawing_and_follows_what_is_typed()
    {
        Book.State = Book.State with { Cookbook = Starter.Sample, Shop = Book.State.Shop! with { Allergens = AllergenRules.Usual with { Traces = "Almond is used in this kitchen." } } };
        var page = Open();
        Tap(page, "6+10");
        Assert.Equal("Contains egg, milk, wheat (gluten). Almond is used in this kitchen.", page.Find(".contains-line").TextContent.Trim());
        page.Find("fieldset.tier select").Change("carrot");
        Assert.Contains("walnuts", page.Find(".contains-line").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_recipes_nothing_is_said_to_be_in_it()
    {
        var page = Open();
        Tap(page, "6+10");
        Assert.Empty(page.FindAll(".contains-line"));
    }

    [Fact]
    public void What_must_be_avoided_is_weighed_at_once_and_refused_when_it_is_in_the_cake()
    {
        Book.State = Book.State with { Cookbook = Starter.Sample };
        var page = Filled("24/10", "14");
        Tap(page, "Avoid …");
        Tap(page, "milk");
        Assert.Contains("milk: not as it is.", page.Find(".weighed").TextContent, StringComparison.Ordinal);
        Tap(page, "Take the order");
        Assert.Contains("It contains milk", page.Find(".problems").TextContent, StringComparison.Ordinal);
        Assert.Empty(Book.State.Orders);
        page.Find("#told").Change("Dislike");
        Assert.Contains("milk: note it.", page.Find(".weighed").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void The_answer_on_top_says_what_stands_against_it_before_the_plan()
    {
        Book.State = Book.State with { Cookbook = Starter.Sample };
        var page = Filled("24/10", "14");
        Tap(page, "Avoid …");
        Assert.NotEqual("Not this", page.Find(".answer-word").TextContent.Trim());
        Tap(page, "milk");
        Assert.Equal("Not this", page.Find(".answer-word").TextContent.Trim());
        Assert.StartsWith("Avoid milk. It contains milk: ", page.Find(".answer-says .headline").TextContent.Trim(), StringComparison.Ordinal);
        Assert.Empty(page.FindAll(".answer .button.main"));
        Tap(page, "Keep the day 48\u00A0h");
        Assert.Contains("It contains milk", page.Find(".answer-says").TextContent, StringComparison.Ordinal);
        Assert.Contains("Only the day is kept; it is no cake yet.", page.Find(".answer-says").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void What_nobody_has_read_is_no_yes_either()
    {
        Book.State = Book.State with { Cookbook = Starter.ToBeRead };
        var page = Filled("24/10", "14");
        page.WaitForAssertion(() => Assert.Equal("Not yet", page.Find(".answer-word").TextContent.Trim()));
        Assert.StartsWith("Not everything is known of ", page.Find(".answer-says .headline").TextContent.Trim(), StringComparison.Ordinal);
        Assert.Contains("Until then the day can be kept.", page.Find(".answer-says").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Words_beside_what_is_ticked_keep_the_order_from_being_taken_until_somebody_has_judged_them()
    {
        Book.State = Book.State with { Cookbook = Starter.Sample };
        var page = Filled("24/10", "14");
        Tap(page, "Avoid …");
        Tap(page, "nuts");
        Type(page, "allergy-words", "nuts, and kiwi");
        Tap(page, "Take the order");
        Assert.Contains("Nobody has said yet whether these words name something that is not ticked.", page.Find(".problems").TextContent, StringComparison.Ordinal);
        Assert.Empty(Book.State.Orders);

        page.Find("#judged").Change(true);
        Type(page, "allergy-words", "nuts, and plums");
        Assert.False(page.Find("#judged").HasAttribute("checked"));
        page.Find("#judged").Change(true);
        Tap(page, "Take the order");
        Tap(page, "Said yes");
        Assert.Equal("nuts, and plums", Assert.Single(Book.State.Orders).Allergies.Judged);
        Assert.Equal("nuts, and plums", Bakehouse.Web.TakeOrder.OrderForm.Of(Book.State.Orders[0], Book.State.Shop!).JudgedWords);
    }

    [Fact]
    public void An_everyday_word_leads_to_the_button_that_covers_it_and_a_person_still_judges()
    {
        Book.State = Book.State with { Cookbook = Starter.Sample };
        var page = Filled("24/10", "14");
        Tap(page, "Avoid …");
        Assert.Contains("Nobody has said yet what must be avoided.", page.Find(".weighed").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain(": nobody can say yet", page.Find(".weighed").TextContent, StringComparison.Ordinal);
        Type(page, "allergy-words", "hazelnuts, and sesame oil");
        Assert.Equal(["“hazelnuts” is covered by", "“sesame” is covered by"], page.FindAll(".lead span").Select(s => s.TextContent.Trim()));
        Tap(page, "Tick nuts");
        Tap(page, "Tick sesame");
        Assert.Empty(page.FindAll(".lead"));
        Tap(page, "Take the order");
        Assert.Contains("Nobody has said yet whether these words name something that is not ticked.", page.Find(".problems").TextContent, StringComparison.Ordinal);
        page.Find("#judged").Change(true);
        Tap(page, "Take the order");
        Tap(page, "Said yes");
        Assert.Equal(["nuts", "sesame"], Assert.Single(Book.State.Orders).Allergies.Avoid);
    }

    [Fact]
    public void The_customers_word_is_kept_with_the_order_and_comes_back_when_it_is_changed()
    {
        Book.State = Book.State with { Cookbook = Starter.Sample };
        var page = Filled("24/10", "14");
        Tap(page, "Avoid …");
        Tap(page, "nuts");
        page.Find("#told").Change("Anaphylaxis");
        Assert.Contains("nuts: only with controls.", page.Find(".weighed").TextContent, StringComparison.Ordinal);
        Tap(page, "Take the order");
        Assert.Contains("Say: nuts. No recipe of this cake lists nuts. What is used in this kitchen can still get in.", page.Markup, StringComparison.Ordinal);
        Tap(page, "Said yes");
        Assert.Equal(CustomersWord.Anaphylaxis, Assert.Single(Book.State.Orders).Allergies.Told);
        Assert.Equal(CustomersWord.Anaphylaxis, Bakehouse.Web.TakeOrder.OrderForm.Of(Book.State.Orders[0], Book.State.Shop!).Told);
    }
}
