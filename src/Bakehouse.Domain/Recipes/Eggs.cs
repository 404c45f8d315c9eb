namespace Bakehouse.Domain.Recipes;

using Bakehouse.Domain.Measures;

/// <summary>Eggs: how many, of which size, and how they are treated.</summary>
public static class Eggs
{
    /// <summary>Grams out of the shell by size (USDA SR28, NDB 01123).</summary>
    public static IReadOnlyList<KitchenWeight> Sizes { get; } =
        [new("small", 38), new("medium", 44), new("large", 50), new("extra large", 56), new("jumbo", 63)];

    /// <summary>Least net weight of a dozen in the shell, ounces (USDA weight classes): a class is set by the dozen, one egg may be lighter.</summary>
    public static IReadOnlyList<(string Size, decimal DozenOunces)> InShell { get; } =
        [("peewee", 15), ("small", 18), ("medium", 21), ("large", 24), ("extra large", 27), ("jumbo", 30)];

    /// <summary>Grams of one egg in the shell at the least weight of its class. Throws for a size that is none.</summary>
    public static Mass EachInShell(string size) => InShell.FirstOrDefault(e => e.Size == size) is { Size: not null } found
        ? Mass.FromOunces(found.DozenOunces / 12)
        : throw new ArgumentOutOfRangeException(nameof(size), size, "No such class of egg.");

    /// <summary>Eggs of a size for so much whole egg, rounded up. Throws for a size that is none.</summary>
    public static int For(Mass edible, string size) => (int)decimal.Ceiling(edible.Grams / Grams(size));

    /// <summary>Eggs of another size that give at least as much.</summary>
    public static int Instead(int count, string size, string other) => For(Mass.FromGrams(count * Grams(size)), other);

    /// <summary>What to look at in how the eggs of a recipe are treated.</summary>
    public static IEnumerable<RecipeHint> Hints(Recipe recipe, Cookbook book)
    {
        var has = recipe.Lines.Any(l => !l.IsRecipe && book.Ingredient(l.Of)?.Kind == IngredientKind.Egg);
        if (has && recipe.Eggs == EggMethod.None)
        {
            yield return new RecipeHint("There is egg in it, and it is not said how it is treated.", "Common practice, no source.");
        }

        if (!has && recipe.Eggs != EggMethod.None)
        {
            yield return new RecipeHint("It says how eggs are treated, and has none of its own.", "Common practice, no source.");
        }

        if (has && recipe.Eggs == EggMethod.Raw)
        {
            yield return new RecipeHint(
                "Raw egg: some people must not have it (the very young, the old, the pregnant, the ill). 71 °C or pasteurised egg is the usual way out; local rules decide.",
                "Food Standards Agency, advice on eggs of 2017; US practice: pasteurised.");
        }
    }

    private static decimal Grams(string size) => Sizes.FirstOrDefault(s => s.Measure == size)?.Grams
        ?? throw new ArgumentOutOfRangeException(nameof(size), size, "No such size of egg.");
}

/// <summary>What is left of alcohol.</summary>
public static class AlcoholLeft
{
    /// <summary>
    /// Percent of what went in: without heat, overnight 70; stirred in and baked 15 min 40, 30 min 35, 1 h 25, 1.5 h 20, 2 h 10,
    /// 2.5 h 5 (USDA Table of Nutrient Retention Factors, release 6).
    /// </summary>
    private static readonly (int Minutes, int Percent)[] Table = [(150, 5), (120, 10), (90, 20), (60, 25), (30, 35), (15, 40), (0, 70)];

    /// <summary>Percent left after so many minutes baked, by the last row that was reached: never less than the table says.</summary>
    public static int Percent(int bakedMinutes) => Table.First(t => bakedMinutes >= t.Minutes).Percent;

    /// <summary>Names of the ingredients with alcohol, through all recipes inside. Baked or not: some is left.</summary>
    public static IEnumerable<string> In(Recipe recipe, Cookbook book) => book.Needs(recipe).Keys.Select(id => book.Ingredient(id)!).Where(i => i.AlcoholPercent > 0).Select(i => i.Name);
}
