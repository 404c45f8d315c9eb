namespace Bakehouse.Domain.Tests.Allergens;

using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Recipes;
using static Bakehouse.Domain.Recipes.RecipeLine;

/// <summary>
/// The list of ingredients: by weight at use, most first (Regulation (EU) 1169/2011, article 18(1)), compound ones with their parts
/// (annex VII, part E, from memory), allergens stressed (article 21(1)(b)). Capitals stand for the stress here.
/// </summary>
public sealed class IngredientListTests
{
    private static string Of(Cookbook book, params (string Recipe, decimal Grams)[] parts) =>
        Label.Of([.. parts.Select(p => new RecipePart(book.Recipe(p.Recipe)!, Mass.FromGrams(p.Grams)))], [], book, AllergenRules.Usual).Text;

    [Fact]
    public void Most_comes_first_and_allergens_stand_out() =>
        Assert.Equal("EGG, WHEAT flour, sugar", Of(Starter.Sample.With([], [Starter.Sample.Recipe("genoise")! with { Lines = [Grams("sugar", 179), Grams("cake-flour", 180), Kitchen("egg", 6, "large")] }]), ("genoise", 500)));

    [Fact]
    public void What_a_name_does_not_say_follows_in_brackets_and_compounds_show_their_parts() =>
        Assert.Equal("dark chocolate (cocoa mass, sugar, cocoa butter, butter oil (MILK), emulsifier: sunflower lecithin), cream (MILK)", Of(Starter.Sample, ("ganache", 300)));

    [Fact]
    public void Parts_of_a_cake_stand_by_weight_and_the_same_recipe_once() =>
        Assert.Equal(
            "Chocolate ganache (dark chocolate (cocoa mass, sugar, cocoa butter, butter oil (MILK), emulsifier: sunflower lecithin), cream (MILK)), Buttercream (sugar, butter (MILK), cream (MILK)), Toasted walnuts (WALNUTS)",
            Of(Starter.Sample, ("toasted-walnuts", 100), ("buttercream", 60), ("ganache", 300), ("buttercream", 60)));

    [Fact]
    public void A_recipe_inside_another_stands_in_brackets_too() =>
        Assert.Contains("carrots, brown sugar, WHEAT flour, rapeseed oil, EGG, Toasted walnuts (WALNUTS), ", Of(Starter.Sample, ("carrot", 1000)), StringComparison.Ordinal);

    [Fact]
    public void Only_whole_words_of_what_is_in_it_stand_out()
    {
        var shop = Starter.Sample.With(
            [
                new Ingredient("coconut-milk", 1, "Coconut milk", "coconut milk", IngredientKind.Liquid, [], "", [new Pack("a", AllergenFacts.Only())]),
                new Ingredient("milkshake", 1, "Milkshake powder", "milkshake powder", IngredientKind.Other, [], "", [new Pack("a", AllergenFacts.Only("milk", "soya"))]),
            ],
            [new Recipe("x", 1, "X", RecipeKind.Part, [Grams("coconut-milk", 2), Grams("milkshake", 1)], EggMethod.None, null, [])]);
        Assert.Equal("coconut milk, milkshake powder (MILK, SOYA)", Of(shop, ("x", 10)));
    }

    [Theory]
    [InlineData(60, "sugar paste (sugar, glucose syrup, palm fat, stabiliser: E466, SULPHITES)")]
    [InlineData(9, "sugar paste (sugar, glucose syrup, palm fat, stabiliser: E466)")]
    public void Sulphites_are_named_from_the_limit_on(int mgPerKg, string list)
    {
        var paste = Starter.Sample.Ingredient("sugar-paste")!.Swapped(new Pack("b", AllergenFacts.Only() with { SulphitesMgPerKg = mgPerKg }));
        Assert.Equal(list, Of(Starter.Sample.With([paste], [new Recipe("x", 1, "X", RecipeKind.Part, [Grams("sugar-paste", 1)], EggMethod.None, null, [])]), ("x", 10)));
    }

    [Fact]
    public void Nothing_promises_that_something_is_not_in_it()
    {
        var all = string.Join(' ', Starter.Sample.Recipes.Select(r => Of(Starter.Sample, (r.Id, 100))));
        Assert.All(new[] { "free", "safe", "no " }, word => Assert.DoesNotContain(word, all, StringComparison.OrdinalIgnoreCase));
    }
}
