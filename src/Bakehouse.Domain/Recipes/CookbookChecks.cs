namespace Bakehouse.Domain.Recipes;

/// <summary>Everything that can be wrong with a cookbook, all at once: recipe and row, value, limit and what to try.</summary>
public static class CookbookChecks
{
    /// <summary>Most ingredients and most recipes.</summary>
    public const int Most = 2000;

    /// <summary>So many recipes inside one another at most, the outermost counted.</summary>
    public const int MostDeep = 12;

    /// <summary>Every problem; empty if it may be written.</summary>
    /// <param name="knows">Ids of the allergens that may be named.</param>
    public static IReadOnlyList<Problem> Problems(Cookbook book, IReadOnlySet<string> knows)
    {
        List<Problem> problems =
        [
            .. TooMany(book),
            .. Twice("Ingredients", book.Ingredients.Select(i => i.Id)),
            .. Twice("Recipes", book.Recipes.Select(r => r.Id)),
            .. Twice("Recipes", book.Recipes.Select(r => r.Name.Trim().ToUpperInvariant())),
            .. book.Ingredients.SelectMany(i => IngredientChecks.Problems(i, knows)),
            .. book.Recipes.SelectMany(r => RecipeChecks.Problems(r, book)),
        ];
        if (problems.Count == 0)
        {
            problems.AddRange(InsideItself(book));
        }

        return problems.Count > 0 ? problems : [.. TooDeep(book)];
    }

    private static IEnumerable<Problem> TooMany(Cookbook book) =>
        new (string Where, int Count)[] { ("Ingredients", book.Ingredients.Count), ("Recipes", book.Recipes.Count) }
            .Where(c => c.Count > Most)
            .Select(c => new Problem(c.Where, FormattableString.Invariant($"{c.Count}"), $"A cookbook has at most {Most}.", "Take out what is not used."));

    private static IEnumerable<Problem> Twice(string where, IEnumerable<string> names) => names.GroupBy(n => n, StringComparer.Ordinal)
        .Where(g => g.Count() > 1)
        .Select(g => new Problem(where, Problem.Shown(g.Key), $"That is there {g.Count()} times.", "Give one of them another name."));

    private static IEnumerable<Problem> TooDeep(Cookbook book)
    {
        var depths = new Dictionary<string, int>(StringComparer.Ordinal);
        int Depth(Recipe recipe) => depths.TryGetValue(recipe.Id, out var known) ? known
            : depths[recipe.Id] = 1 + recipe.Lines.Where(l => l.IsRecipe).Select(l => Depth(book.Recipe(l.Of)!)).DefaultIfEmpty(0).Max();
        return book.Recipes.Where(r => Depth(r) == MostDeep + 1)
            .Select(r => new Problem(Problem.Shown(r.Name), FormattableString.Invariant($"{MostDeep + 1}"), $"Recipes are at most {MostDeep} inside one another.", "Write what it is made of into the recipe itself."));
    }

    /// <summary>Each ring of recipes once, said as the way round it.</summary>
    private static IEnumerable<Problem> InsideItself(Cookbook book)
    {
        var done = new HashSet<string>(StringComparer.Ordinal);
        foreach (var recipe in book.Recipes)
        {
            if (Ring(recipe, book, done, []) is { } ring)
            {
                yield return new Problem(
                    ring[0].Name, Problem.Shown(string.Join(" > ", ring.Select(r => r.Name))), "This recipe is inside itself.", $"Take {ring[1].Name} out of {ring[0].Name}, or {ring[0].Name} out of {ring[^2].Name}.");
            }
        }
    }

    private static List<Recipe>? Ring(Recipe recipe, Cookbook book, HashSet<string> done, List<Recipe> way)
    {
        var met = way.FindIndex(r => r.Id == recipe.Id);
        if (met >= 0)
        {
            return [.. way.Skip(met), recipe];
        }

        if (done.Contains(recipe.Id))
        {
            return null;
        }

        way.Add(recipe);
        var ring = recipe.Lines.Where(l => l.IsRecipe).Select(l => Ring(book.Recipe(l.Of)!, book, done, way)).FirstOrDefault(r => r is not null);
        way.RemoveAt(way.Count - 1);
        done.Add(recipe.Id);
        return ring;
    }
}
