namespace Bakehouse.Web.Tests.TheCakes;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;
using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;
using Bakehouse.Testing;
using Bakehouse.Web.Access;
using Bakehouse.Web.TheCakes;
using Bunit;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;
using NodaTime.Testing;

/// <summary>What a cake contains, on its page, and what must be answered before work goes on.</summary>
public sealed class ContainsTrayTests : BunitContext
{
    private readonly BookInHand book = new();
    private Order order;

    public ContainsTrayTests()
    {
        order = book.Write(Cakes.Good() with { MadeFrom = MadeFrom.Of(Starter.Sample) }, "ines").Order!;
        book.State = book.State with { Cookbook = Starter.Sample };
        Services.AddSingleton<IBook>(book);
        Services.AddSingleton<IClock>(new FakeClock(Cakes.Now));
        Services.AddSingleton<TimeProvider>(new MovableTime(Cakes.Now));
    }

    [Fact]
    public void Each_tier_says_what_it_contains_and_the_list_of_ingredients_stresses_it()
    {
        book.State = book.State with { Shop = book.State.Shop! with { Allergens = AllergenRules.Usual with { Traces = "Almond is used in this kitchen." } } };
        var tray = Open().Find("#contains");
        Assert.Equal(3, tray.TextContent.Split("Contains egg, milk, wheat (gluten).").Length - 1);
        Assert.Contains("Almond is used in this kitchen.", tray.TextContent, StringComparison.Ordinal);
        Assert.Contains(tray.QuerySelectorAll(".label-text strong"), s => s.TextContent == "wheat");
        Assert.Empty(tray.QuerySelectorAll("button"));
        Assert.DoesNotContain("free from", tray.TextContent, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void A_change_that_touches_it_is_told_to_all_and_answered_by_the_owner()
    {
        var vanilla = Starter.Sample.Recipe("vanilla")!;
        var newest = Starter.Sample.With([], [vanilla with { Lines = [.. vanilla.Lines, RecipeLine.Grams("ground-almonds", 50)] }]);
        book.State = book.State with { Cookbook = newest, Cookbooks = new Dictionary<int, Cookbook> { [1] = Starter.Sample } };
        Assert.Contains("has changed since it was taken", Open("petra").Find("#contains").TextContent, StringComparison.Ordinal);
        Assert.Empty(Open("petra").FindAll("#contains button"));
        Assert.Empty(Open("petra").FindAll("#contains .label-text"));
        Assert.DoesNotContain("almonds", Open("petra").Find("#contains").TextContent, StringComparison.Ordinal);

        Tap("ines", "Make it from the new recipes");
        var looked = Assert.IsType<LookAtRecipes>(book.Heard[^1]);
        Assert.Equal((order.Id, order.Version, true), (looked.Order, looked.Version, looked.Move));
        Tap("ines", "Keep its recipes");
        Assert.False(Assert.IsType<LookAtRecipes>(book.Heard[^1]).Move);
    }

    [Fact]
    public void What_must_be_avoided_is_read_back_here()
    {
        order = book.Write(order with { Allergies = new AllergyAnswer(AllergyKind.Avoid, ["nuts"], "swells up"), Statement = new Statement("wren", Cakes.Now) }, "wren").Order!;
        Assert.Contains("has not been read back", Open().Find("#contains").TextContent, StringComparison.Ordinal);
        Tap("petra", "I have read it back: “Avoid nuts.”");
        Assert.Equal((order.Id, order.Version, "petra"), book.Heard[^1] is ReadBackAllergies read ? (read.Order, read.Version, read.Person) : default);
        order = book.Write(order with { Statement = new Statement("wren", Cakes.Now, "petra", Cakes.Now) }, "petra").Order!;
        Assert.Contains("Read back Petra,", Open().Find("#contains").TextContent, StringComparison.Ordinal);
        Assert.Empty(Open().FindAll("#contains button"));
    }

    [Fact]
    public void What_nobody_knows_is_said_and_stops_work()
    {
        var unread = new Cookbook(1, [.. Starter.Sample.Ingredients.Select(i => i.Id == "icing-sugar" ? i.Swapped(new Pack("second", null)) : i)], Starter.Sample.Recipes);
        book.State = book.State with { Cookbook = unread };
        var said = Open().Find("#contains").TextContent;
        Assert.Contains("Not known yet: read the packs.", said, StringComparison.Ordinal);
        Assert.Contains("Nobody has said yet what that contains.", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_all_packs_read_there_is_no_label_and_no_part_of_one()
    {
        book.State = book.State with { Shop = book.State.Shop! with { Limits = new Bakehouse.Domain.Shops.OwnLimits(false, "", null, "Made in a home kitchen.") } };
        var ready = Open().Find("#contains");
        Assert.Contains("Made in a home kitchen.", ready.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("No label yet", ready.TextContent, StringComparison.Ordinal);

        book.State = book.State with { Cookbook = new Cookbook(1, [.. Starter.Sample.Ingredients.Select(i => i.Id == "icing-sugar" ? i.Swapped(new Pack("second", null)) : i)], [.. Starter.Sample.Recipes.Where(r => r.Id != "colour")]) };
        var tray = Open().Find("#contains");
        Assert.Empty(tray.QuerySelectorAll(".label-text"));
        Assert.Single(tray.QuerySelectorAll(".no-label"));
        Assert.Contains("No label yet.", tray.TextContent, StringComparison.Ordinal);
        Assert.Contains("No recipe Colour of the coat.", tray.TextContent, StringComparison.Ordinal);
        Assert.Equal("/recipes/ingredient/icing-sugar", Assert.Single(tray.QuerySelectorAll(".no-label a"), a => a.TextContent == "Icing sugar").GetAttribute("href"));
        Assert.DoesNotContain("Made in a home kitchen.", tray.TextContent, StringComparison.Ordinal);
    }

    private void Tap(string person, string words) => Open(person).FindAll("#contains button").Single(b => b.TextContent == words).Click();

    private IRenderedComponent<OneCakePage> Open(string person = "petra") =>
        Render<OneCakePage>(p => p.AddCascadingValue(new Who(person, "bench")).Add(c => c.Number, order.Number));
}
