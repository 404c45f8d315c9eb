namespace Bakehouse.Domain.Recipes;

using Bakehouse.Domain.Measures;

/// <summary>All ingredients and recipes of a shop at one moment. Immutable; a change is a new version of the whole.</summary>
public sealed class Cookbook
{
    private readonly Dictionary<string, Ingredient> ingredients;
    private readonly Dictionary<string, Recipe> recipes;
    private readonly Dictionary<string, IReadOnlyDictionary<string, decimal>> needs = new(StringComparer.Ordinal);
    private readonly Lock writing = new();

    /// <summary>A cookbook; of two with one id the later counts (<see cref="CookbookChecks"/> names them).</summary>
    /// <param name="version">0 for one that nobody has written yet.</param>
    public Cookbook(int version, IReadOnlyList<Ingredient> ingredients, IReadOnlyList<Recipe> recipes)
    {
        (Version, Ingredients, Recipes) = (version, ingredients, recipes);
        this.ingredients = new Dictionary<string, Ingredient>(StringComparer.Ordinal);
        this.recipes = new Dictionary<string, Recipe>(StringComparer.Ordinal);
        foreach (var ingredient in ingredients)
        {
            this.ingredients[ingredient.Id] = ingredient;
        }

        foreach (var recipe in recipes)
        {
            this.recipes[recipe.Id] = recipe;
        }
    }

    /// <summary>Nothing in it.</summary>
    public static Cookbook Empty { get; } = new(0, [], []);

    /// <summary>1 and up; each change adds one.</summary>
    public int Version { get; }

    /// <summary>Everything that is bought.</summary>
    public IReadOnlyList<Ingredient> Ingredients { get; }

    /// <summary>Everything that is made.</summary>
    public IReadOnlyList<Recipe> Recipes { get; }

    /// <summary>The ingredient of that id, or null.</summary>
    public Ingredient? Ingredient(string id) => ingredients.GetValueOrDefault(id);

    /// <summary>The recipe of that id, or null.</summary>
    public Recipe? Recipe(string id) => recipes.GetValueOrDefault(id);

    /// <summary>What a line is called: the name of its ingredient or recipe, or its id if there is none.</summary>
    public string NameOf(RecipeLine line) => (line.IsRecipe ? Recipe(line.Of)?.Name : Ingredient(line.Of)?.Name) ?? line.Of;

    /// <summary>The next version, with these in the places of their former ones or added.</summary>
    public Cookbook With(IReadOnlyList<Ingredient> changed, IReadOnlyList<Recipe> written) => new(
        Version + 1,
        [.. Ingredients.Select(i => changed.LastOrDefault(c => c.Id == i.Id) ?? i), .. changed.Where(c => Ingredient(c.Id) is null)],
        [.. Recipes.Select(r => written.LastOrDefault(w => w.Id == r.Id) ?? r), .. written.Where(w => Recipe(w.Id) is null)]);

    /// <summary>The same version in which those packs are in use.</summary>
    public Cookbook Using(IEnumerable<PackLock> packs)
    {
        var locks = packs.ToDictionary(p => p.Ingredient, p => p.Lot, StringComparer.Ordinal);
        return locks.Count == 0 ? this : new(Version, [.. Ingredients.Select(i => locks.TryGetValue(i.Id, out var lot) ? i.Using(lot) : i)], Recipes);
    }

    /// <summary>Grams of a line. Throws where <see cref="CookbookChecks"/> has a problem.</summary>
    public decimal Grams(RecipeLine line) => line.IsRecipe ? line.Amount
        : Ingredient(line.Of) is { } ingredient && KitchenAmount.GramsOf(ingredient, line.Measure) is { } grams ? line.Amount * grams
        : throw new ArgumentOutOfRangeException(nameof(line), line, "Nobody knows what this line weighs.");

    /// <summary>All that goes in.</summary>
    public Mass Total(Recipe recipe) => Mass.FromGrams(recipe.Lines.Sum(Grams));

    /// <summary>What comes out: the total less what is lost.</summary>
    public Mass Yield(Recipe recipe) => Total(recipe) * (1 - (recipe.LossPercent / 100));

    /// <summary>
    /// Grams of every ingredient in one gram of what comes out, through all recipes inside it. Throws for a recipe inside itself, and
    /// for an ingredient or recipe that is missing: the checks name those first.
    /// </summary>
    public IReadOnlyDictionary<string, decimal> Needs(Recipe recipe)
    {
        lock (writing)
        {
            return Needs(recipe, []);
        }
    }

    private IReadOnlyDictionary<string, decimal> Needs(Recipe recipe, HashSet<string> above)
    {
        if (needs.TryGetValue(recipe.Id, out var known))
        {
            return known;
        }

        if (!above.Add(recipe.Id))
        {
            throw new InvalidOperationException($"{recipe.Name} is inside itself.");
        }

        var found = new Dictionary<string, decimal>(StringComparer.Ordinal);
        var comesOut = Yield(recipe).Grams;
        foreach (var line in recipe.Lines)
        {
            foreach (var (id, grams) in Inside(line, above))
            {
                found[id] = found.GetValueOrDefault(id) + (grams / comesOut);
            }
        }

        above.Remove(recipe.Id);
        return needs[recipe.Id] = found;
    }

    private IEnumerable<(string Id, decimal Grams)> Inside(RecipeLine line, HashSet<string> above) => !line.IsRecipe
        ? [(line.Of, Grams(line))]
        : Needs(Recipe(line.Of) ?? throw new ArgumentOutOfRangeException(nameof(line), line.Of, "There is no such recipe."), above).Select(n => (n.Key, n.Value * line.Amount));
}

/// <summary>A pack that an order is made from, whatever else is in use.</summary>
/// <param name="Ingredient">Id of the ingredient.</param>
public sealed record PackLock(string Ingredient, string Lot);
