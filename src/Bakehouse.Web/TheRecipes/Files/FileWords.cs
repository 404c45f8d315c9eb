namespace Bakehouse.Web.TheRecipes.Files;

using Bakehouse.Domain.Recipes;

/// <summary>The words of our files for what a recipe or ingredient is; the first counts where a field is empty.</summary>
internal static class FileWords
{
    /// <summary>What an ingredient counts as.</summary>
    public static readonly IReadOnlyDictionary<string, IngredientKind> Counts = new Dictionary<string, IngredientKind>(StringComparer.OrdinalIgnoreCase)
    {
        ["other"] = IngredientKind.Other, ["flour"] = IngredientKind.Flour, ["sugar"] = IngredientKind.Sugar, ["fat"] = IngredientKind.Fat,
        ["liquid"] = IngredientKind.Liquid, ["egg"] = IngredientKind.Egg, ["baking powder"] = IngredientKind.BakingPowder, ["baking soda"] = IngredientKind.BakingSoda,
    };

    /// <summary>What a recipe makes.</summary>
    public static readonly IReadOnlyDictionary<string, RecipeKind> Makes = new Dictionary<string, RecipeKind>(StringComparer.OrdinalIgnoreCase)
    {
        ["part"] = RecipeKind.Part, ["sponge"] = RecipeKind.Sponge, ["filling"] = RecipeKind.Filling, ["colour"] = RecipeKind.Colour, ["decoration"] = RecipeKind.Decoration, ["kit"] = RecipeKind.Kit,
    };

    /// <summary>How eggs are treated.</summary>
    public static readonly IReadOnlyDictionary<string, EggMethod> Eggs = new Dictionary<string, EggMethod>(StringComparer.OrdinalIgnoreCase)
    {
        ["none"] = EggMethod.None, ["cooked"] = EggMethod.Cooked, ["pasteurised"] = EggMethod.Pasteurised, ["raw"] = EggMethod.Raw,
    };

    /// <summary>What goes in: something bought, or another recipe.</summary>
    public static readonly IReadOnlyDictionary<string, bool> IsRecipe = new Dictionary<string, bool>(StringComparer.OrdinalIgnoreCase) { ["ingredient"] = false, ["recipe"] = true };

    /// <summary>The word of a value.</summary>
    public static string Of<T>(this IReadOnlyDictionary<string, T> words, T value)
        where T : struct => words.First(w => EqualityComparer<T>.Default.Equals(w.Value, value)).Key;
}
