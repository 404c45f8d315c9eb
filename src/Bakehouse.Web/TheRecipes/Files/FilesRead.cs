namespace Bakehouse.Web.TheRecipes.Files;

using System.Globalization;
using System.Text;
using Bakehouse.Domain;
using Bakehouse.Domain.Recipes;

/// <summary>A file of ingredients, one of recipes, or both, as they would be written: all of it or nothing.</summary>
internal sealed class FilesRead
{
    /// <summary>Largest file, bytes.</summary>
    public const int LargestFile = 4_000_000;

    private readonly List<(string Called, string File, IReadOnlyList<int> Rows, bool IsRecipe)> places = [];

    private FilesRead()
    {
    }

    /// <summary>Ingredients that are new or differ.</summary>
    public IReadOnlyList<Ingredient> Ingredients { get; private set; } = [];

    /// <summary>Recipes that are new or differ.</summary>
    public IReadOnlyList<Recipe> Recipes { get; private set; } = [];

    /// <summary>How many of both stand in the book just so.</summary>
    public int AsTheyAre { get; private set; }

    /// <summary>How many of both the book has not.</summary>
    public int New => Ingredients.Count(i => i.Version == 0) + Recipes.Count(r => r.Version == 0);

    /// <summary>How many of both the book has otherwise.</summary>
    public int Changed => Ingredients.Count + Recipes.Count - New;

    /// <summary>What can't be read, by row.</summary>
    public IReadOnlyList<Problem> Problems { get; private set; } = [];

    /// <summary>Reads what is there; null for a file that was not given.</summary>
    public static FilesRead Of(string? ingredients, string? recipes, Cookbook book)
    {
        var first = ingredients is null ? new FileRead<Ingredient>([], []) : IngredientsFile.Read(ingredients, book);
        var second = recipes is null ? new FileRead<Recipe>([], []) : RecipesFile.Read(recipes, book);
        var read = new FilesRead
        {
            Problems = [.. first.Problems.Select(p => p with { Where = $"Ingredients: {p.Where}" }), .. second.Problems.Select(p => p with { Where = $"Recipes: {p.Where}" })],
            Ingredients = [.. first.Items.Select(i => i.Item).Where(i => book.Ingredient(i.Id) is not { } stands || !IngredientsFile.Same(stands, i))],
            Recipes = [.. second.Items.Select(r => r.Item).Where(r => book.Recipe(r.Id) is not { } stands || !RecipesFile.Same(stands, r))],
        };
        read.AsTheyAre = first.Items.Count + second.Items.Count - read.Ingredients.Count - read.Recipes.Count;
        read.places.AddRange(first.Items.Select(i => (Called(i.Item.Name, i.Item.Id), "Ingredients", i.Rows, false)));
        read.places.AddRange(second.Items.Select(r => (Called(r.Item.Name, r.Item.Id), "Recipes", r.Rows, true)));
        return read;
    }

    /// <summary>The text of a file; null if it is not written in UTF-8.</summary>
    public static string? Text(byte[] bytes)
    {
        try
        {
            return new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes).TrimStart('\uFEFF');
        }
        catch (DecoderFallbackException)
        {
            return null;
        }
    }

    /// <summary>The same problem, told by the row of the file where the book told it by name.</summary>
    public Problem ByRow(Problem problem)
    {
        var fits = places.Where(p => problem.Where == p.Called || problem.Where.StartsWith($"{p.Called}, ", StringComparison.Ordinal)).OrderByDescending(p => p.Called.Length).ToList();
        if (fits.Count == 0)
        {
            return problem;
        }

        var (called, file, rows, isRecipe) = fits[0];
        var rest = problem.Where[called.Length..];
        var line = isRecipe && rest.StartsWith(", row ", StringComparison.Ordinal) && int.TryParse(rest[6..], NumberStyles.None, CultureInfo.InvariantCulture, out var n) && n >= 1 && n <= rows.Count ? n - 1 : 0;
        return problem with { Where = $"{file}: {TableFile.At(rows[line])}, {called}" };
    }

    /// <summary>By what the checks call it.</summary>
    private static string Called(string name, string id) => name.Length > 0 ? Problem.Shown(name) : Problem.Shown(id);
}
