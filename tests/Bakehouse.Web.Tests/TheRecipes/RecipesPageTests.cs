namespace Bakehouse.Web.Tests.TheRecipes;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;
using Bakehouse.Domain;
using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;
using Bakehouse.Testing;
using Bakehouse.Web.Access;
using Bakehouse.Web.TheRecipes;
using Bunit;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;
using NodaTime.Testing;

/// <summary>The recipes, one weighed out, written anew; an ingredient with its packs.</summary>
public sealed class RecipesPageTests : BunitContext
{
    private readonly BookInHand book = new();

    public RecipesPageTests()
    {
        book.State = book.State with { Cookbook = Starter.Sample };
        Services.AddSingleton<IBook>(book);
        Services.AddSingleton<IClock>(new FakeClock(Cakes.Now));
        Services.AddSingleton<TimeProvider>(new MovableTime(Cakes.Now));
    }

    [Fact]
    public void An_empty_book_begins_with_ours_whose_packs_nobody_has_read_yet()
    {
        book.State = book.State with { Cookbook = Cookbook.Empty };
        Assert.Empty(Recipes(null, "petra").FindAll("button"));
        Tap(Recipes(null), "Start from ours");
        var written = Assert.IsType<WriteRecipes>(book.Heard[^1]);
        Assert.All(written.Ingredients, i => Assert.True(i.Version == 0 && i.InUse!.Facts!.HasNot.Count == 0));
        Assert.Equal(Starter.Sample.Recipes.Count, written.Recipes.Count);
    }

    [Fact]
    public void The_list_says_what_each_contains_and_finds_by_a_part_of_the_name()
    {
        var page = Recipes(null);
        Assert.Contains(page.FindAll(".recipe-line"), l => l.TextContent == "Vanilla butter cakeContains egg, milk, wheat (gluten).");
        page.Find("#find-recipe").Input("butterm");
        Assert.Equal("Buttermilk", Assert.Single(page.FindAll(".recipe-line")).QuerySelector("b")!.TextContent);
    }

    /// <summary>Twice the batter is twice of everything: exact, as Scaled is (checked there).</summary>
    [Fact]
    public void A_recipe_is_weighed_out_for_any_mass_and_a_mass_that_may_be_two_is_none()
    {
        var page = Recipes("vanilla");
        var vanilla = Starter.Sample.Recipe("vanilla")!;
        var twice = Starter.Sample.Total(vanilla).Grams * 2;
        page.Find("#grams").Input(twice.ToString(System.Globalization.CultureInfo.InvariantCulture));
        Assert.StartsWith($"{Starter.Sample.Grams(vanilla.Lines[0]) * 2:0.##} g", page.Find("tbody .grams-big").TextContent, StringComparison.Ordinal);
        page.Find("#grams").Input("1,650");
        Assert.Contains("That is no mass.", page.Find("[role=alert]").TextContent, StringComparison.Ordinal);
        page.Find("#grams").Input("1,65");
        Assert.Empty(page.FindAll("[role=alert]"));
    }

    [Fact]
    public void One_recipe_says_what_it_contains_its_percent_and_how_long_it_keeps_and_claims_nothing()
    {
        var text = Recipes("vanilla").Find(".recipes").TextContent;
        Assert.StartsWith("Ingredients: ", Recipes("vanilla").Find(".label-text").TextContent, StringComparison.Ordinal);
        Assert.Contains("Contains egg, milk, wheat (gluten).", text, StringComparison.Ordinal);
        Assert.Contains("Local rules and your own tests come first.", text, StringComparison.Ordinal);
        Assert.Contains(Recipes("vanilla").FindAll("tbody tr"), r => r.Children[0].TextContent.Contains("flour", StringComparison.OrdinalIgnoreCase) && r.Children[3].TextContent == "100");
        Assert.DoesNotContain("free from", text, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("safe", text, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void What_nobody_has_read_is_never_shown_as_not_in_it()
    {
        book.State = book.State with { Cookbook = Starter.ToBeRead };
        var box = Recipes("raspberry-jam").Find(".contains-big").TextContent;
        Assert.Contains("Not known yet: read the packs.", box, StringComparison.Ordinal);
        Assert.DoesNotContain("none listed", box, StringComparison.Ordinal);
        Assert.Empty(Recipes("raspberry-jam").FindAll(".label-text"));
        Assert.Contains("Pack not read Lemon juice; Raspberries; Sugar, granulated. Read what stands on it", Recipes("raspberry-jam").Find(".no-label").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Its_versions_say_who_when_why_and_what_changed()
    {
        var vanilla = Starter.Sample.Recipe("vanilla")!;
        var later = vanilla with { Version = 2, Lines = [.. vanilla.Lines.Skip(1), RecipeLine.Grams("ground-almonds", 50)] };
        book.State = book.State with { Cookbook = Starter.Sample.With([], [later]) };
        book.Recipes = [new RecipeVersion(later, "Firmer", "ines", Cakes.Now), new RecipeVersion(vanilla, "The first recipes", "ines", Cakes.Now)];
        var text = Recipes("vanilla").Find(".recipe-versions").TextContent;
        Assert.Contains("Ines: Firmer", text, StringComparison.Ordinal);
        Assert.Contains("Almonds, ground came in, 50 g.", text, StringComparison.Ordinal);
        Assert.Contains("went out.", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_change_shows_the_planned_cakes_that_it_touches_before_it_is_written()
    {
        var order = book.Write(Cakes.Good() with { MadeFrom = MadeFrom.Of(Starter.Sample) }, "ines").Order!;
        Assert.Empty(Recipes("vanilla", "petra").FindAll("main button, .recipe-middle button"));
        var page = Recipes("vanilla");
        Tap(page, "Change this recipe");
        Tap(page, "Add a row");
        var row = page.FindAll(".recipe-row").Count;
        page.Find($"#part-{row}").Change("i:ground-almonds");
        page.Find($"#amount-{row}").Change("50");
        page.Find("#r-why").Change("Firmer");
        Tap(page, "Write it");
        Assert.Empty(book.Heard.OfType<WriteRecipes>());
        Assert.Contains(order.Customer.Name, page.Find("#touches").TextContent, StringComparison.Ordinal);
        Tap(page, "Write it all the same");
        var written = Assert.Single(book.Heard.OfType<WriteRecipes>());
        Assert.Equal(("Firmer", 50m), (written.Why, written.Recipes[0].Lines[^1].Amount));
        Assert.Equal(Starter.Sample.Recipe("vanilla")!.Lines, written.Recipes[0].Lines.SkipLast(1));
    }

    [Fact]
    public void What_can_not_be_read_is_named_row_by_row_and_what_the_book_refuses_is_shown()
    {
        var page = Recipes("vanilla");
        Tap(page, "Change this recipe");
        page.Find("#amount-1").Change("1,500");
        page.Find("#r-heat").Change("177.5");
        Tap(page, "Write it");
        var text = page.Find(".problems").TextContent;
        Assert.Contains("Row 1", text, StringComparison.Ordinal);
        Assert.Contains("A whole figure is needed here.", text, StringComparison.Ordinal);
        book.Future = _ => new Foreseen(BookInHand.Accepted() with { Kind = AnswerKind.Refused, Problems = [new Problem("why", "", "A change needs a reason.", "Say why.")] }, 1, null);
        page.Find("#amount-1").Change("150");
        page.Find("#r-heat").Change("177");
        Tap(page, "Write it");
        Assert.Contains("A change needs a reason.", page.Find(".problems").TextContent, StringComparison.Ordinal);
        Assert.Empty(book.Heard.OfType<WriteRecipes>());
    }

    [Fact]
    public void Cakes_that_wait_for_a_look_stand_at_the_right_with_a_link()
    {
        var order = book.Write(Cakes.Good() with { MadeFrom = MadeFrom.Of(Starter.Sample) }, "ines").Order!;
        var vanilla = Starter.Sample.Recipe("vanilla")!;
        book.State = book.State with { Cookbook = Starter.Sample.With([], [vanilla with { Lines = [.. vanilla.Lines, RecipeLine.Grams("ground-almonds", 50)] }]), Cookbooks = new Dictionary<int, Cookbook> { [1] = Starter.Sample } };
        Assert.Equal($"/cakes/{order.Number}#contains", Recipes("lemon").Find(".touched a").GetAttribute("href"));
    }

    [Fact]
    public void Waiting_cakes_that_avoid_nothing_take_the_new_recipes_with_one_tap_the_others_are_looked_at_one_by_one()
    {
        foreach (var number in new[] { 1, 2, 3 })
        {
            var order = Cakes.Good(number) with { MadeFrom = MadeFrom.Of(Starter.Sample) };
            book.Write(number == 3 ? order with { Allergies = new AllergyAnswer(AllergyKind.Avoid, ["nuts"], "swells up") } : order, "ines");
        }

        var vanilla = Starter.Sample.Recipe("vanilla")!;
        book.State = book.State with { Cookbook = Starter.Sample.With([], [vanilla with { Lines = [.. vanilla.Lines, RecipeLine.Grams("ground-almonds", 50)] }]), Cookbooks = new Dictionary<int, Cookbook> { [1] = Starter.Sample } };
        Assert.DoesNotContain(Recipes("lemon", "petra").FindAll("button"), b => b.TextContent.Contains("from the new recipes", StringComparison.Ordinal));
        var page = Recipes("lemon");
        Assert.Contains("2 of them must avoid nothing; look at the others one by one.", page.Find(".recipe-right").TextContent, StringComparison.Ordinal);
        Tap(page, "Make these 2 from the new recipes");
        var looked = book.Heard.OfType<LookAtRecipes>().ToList();
        Assert.Equal(book.State.Orders.Where(o => o.Allergies.Kind == AllergyKind.NoneTold).Select(o => o.Id).Order(), looked.Select(l => l.Order).Order());
        Assert.All(looked, l => Assert.True(l.Move));
        Assert.Contains("2 cakes are made from the new recipes.", page.Find(".recipe-right").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pack_is_read_allergen_by_allergen_and_what_is_left_open_stays_not_known()
    {
        var page = Ingredient("butter", "petra");
        Assert.Equal("Has", page.Find("#a-milk").GetAttribute("value"));
        page.Find("#lot").Change("L204");
        Assert.Equal("Unknown", page.Find("#a-milk").GetAttribute("value"));
        Tap(page, "All that are not chosen: not in it");
        Assert.Equal("0", page.Find("#sulphites").GetAttribute("value"));
        page.Find("#a-milk").Change("Has");
        page.Find("#a-soya").Change("May");
        page.Find("#a-egg").Change("Unknown");
        page.Find("#sulphites").Change("12,5");
        Tap(page, "Use this pack");
        var pack = Assert.IsType<OpenPack>(book.Heard[^1]).Pack;
        Assert.Equal(("L204", 12.5m), (pack.Lot, pack.Facts!.SulphitesMgPerKg));
        Assert.Equal((AllergenStatus.Has, AllergenStatus.May, AllergenStatus.Unknown, AllergenStatus.HasNot), (pack.Facts.Of("milk"), pack.Facts.Of("soya"), pack.Facts.Of("egg"), pack.Facts.Of("fish")));
        Tap(page, "All that are not chosen: not in it");
        page.Find("#sulphites").Change("a lot");
        Tap(page, "Use this pack");
        Assert.Contains("That is no figure.", page.Find(".problems").TextContent, StringComparison.Ordinal);
        Assert.Single(book.Heard.OfType<OpenPack>());
        Assert.Empty(Ingredient("butter", "petra").FindAll("#locks"));
    }

    [Fact]
    public void The_owner_keeps_a_pack_for_a_cake_and_lets_it_go()
    {
        var order = book.Write(Cakes.Good() with { MadeFrom = MadeFrom.Of(Starter.Sample) with { Packs = [new PackLock("butter", "sample")] } }, "ines").Order!;
        var page = Ingredient("butter");
        Tap(page, "Let it go for order 401");
        Assert.Empty(Assert.IsType<LookAtRecipes>(book.Heard[^1]).Packs);
        page.Find("#lock-cake").Change(order.Id.ToString());
        Tap(page, "Keep it for this cake");
        var locked = Assert.IsType<LookAtRecipes>(book.Heard[^1]);
        Assert.Equal((order.Id, false, new PackLock("butter", "sample")), (locked.Order, locked.Move, Assert.Single(locked.Packs)));
        Assert.Empty(Ingredient("walnuts").FindAll("#locks"));
    }

    private IRenderedComponent<RecipesPage> Recipes(string? id, string person = "ines") => Render<RecipesPage>(p => p.Add(r => r.Id, id).AddCascadingValue(new Who(person, "office")));

    /// <summary>An eighth of a litre of a syrup of 1.4 g/mL weighs 175 g (worked by hand); the table's name goes with the table's figures only.</summary>
    [Fact]
    public void The_owner_writes_what_an_ingredient_weighs_and_no_figure_keeps_anothers_source()
    {
        Assert.Empty(Ingredient("honey", "petra").FindAll(".weights"));
        var page = Ingredient("honey");
        Assert.Equal("339", page.Find("[aria-label='Measure 1: grams']").GetAttribute("value"));
        page.Find("[aria-label='Measure 1: grams']").Change("0,34 kg");
        Tap(page, "Write the weights");
        Assert.Contains("These are not the weights of that source any more.", page.Find(".problems").TextContent, StringComparison.Ordinal);

        page.Find("#weights-source").Change("");
        page.Find("#density").Change("1,4");
        Tap(page, "+ measure");
        page.Find("[aria-label='Measure 2: its word']").Change("eighth");
        page.Find("[aria-label='Measure 2: grams']").Change("a lot");
        Tap(page, "Write the weights");
        Assert.Contains("eighth “a lot”: A figure is needed here.", page.Find(".problems").TextContent, StringComparison.Ordinal);
        page.Find("[aria-label='Measure 2: grams']").Change("175");
        Tap(page, "Write the weights");
        var written = Assert.Single(Assert.IsType<WriteRecipes>(book.Heard[^1]).Ingredients);
        Assert.Equal([new KitchenWeight("cup", 340m), new KitchenWeight("eighth", 175m)], written.Weights);
        Assert.Equal((1.4m, ""), (written.GramsPerMillilitre, written.Source));
        Assert.Equal(175, KitchenAmount.GramsOf(written, "mL") * 125);
        Assert.Equal(1, written.Version);
    }

    private IRenderedComponent<IngredientPage> Ingredient(string id, string person = "ines") => Render<IngredientPage>(p => p.Add(r => r.Id, id).AddCascadingValue(new Who(person, "office")));

    private static void Tap<T>(IRenderedComponent<T> page, string words)
        where T : Microsoft.AspNetCore.Components.IComponent => page.FindAll("button").First(b => b.TextContent.Trim() == words).Click();
}
