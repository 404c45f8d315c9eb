namespace Bakehouse.Domain.Recipes;

using Bakehouse.Domain.Measures;

/// <summary>Baker's percent: each weight as a part of all flour, which is 100.</summary>
public static class BakersPercent
{
    /// <summary>Percent of each line, in their order; null for a recipe without flour.</summary>
    public static IReadOnlyList<decimal>? Of(Recipe recipe, Cookbook book)
    {
        var flour = Flour(recipe, book);
        return flour == 0 ? null : [.. recipe.Lines.Select(l => book.Grams(l) / flour * 100)];
    }

    /// <summary>Grams of flour among its own lines; flour inside another recipe is that one's.</summary>
    public static decimal Flour(Recipe recipe, Cookbook book) => Grams(recipe, book, IngredientKind.Flour);

    /// <summary>Weights of a formula for a mass of dough or batter, to a step, by largest remainder.</summary>
    /// <param name="percents">With the flour's 100 among them.</param>
    public static IReadOnlyList<Mass> Weigh(Mass total, IReadOnlyList<decimal> percents, decimal step) =>
        [.. Shares.Split(total.Grams, percents, step).Select(Mass.FromGrams)];

    internal static decimal Grams(Recipe recipe, Cookbook book, IngredientKind kind) =>
        recipe.Lines.Where(l => !l.IsRecipe && book.Ingredient(l.Of)?.Kind == kind).Sum(book.Grams);
}
