namespace Bakehouse.Web.TheRecipes;

using Bakehouse.Domain.Recipes;

/// <summary>What a new version of a recipe changed, in a sentence.</summary>
internal static class VersionWords
{
    /// <summary>"Sugar, granulated 200 g was 180 g. Almonds, ground came in, 50 g." Empty if no row differs.</summary>
    /// <param name="book">For the names.</param>
    public static string Of(Recipe before, Recipe after, Cookbook book)
    {
        var (was, now) = (Rows(before), Rows(after));
        return string.Join(' ', was.Keys.Union(now.Keys).Select(k => (Was: was.GetValueOrDefault(k), Now: now.GetValueOrDefault(k), Name: book.NameOf(k))).Where(c => c.Was != c.Now).Select(c =>
            c.Was is null ? $"{c.Name} came in, {c.Now}."
            : c.Now is null ? $"{c.Name} went out."
            : $"{c.Name} {c.Now}, was {c.Was}."));
    }

    private static Dictionary<RecipeLine, string> Rows(Recipe recipe) => recipe.Lines
        .GroupBy(l => new RecipeLine(l.Of, l.IsRecipe, 0))
        .ToDictionary(g => g.Key, g => string.Join(" and ", g.Select(l => $"{Amounts.Text(l.Amount)} {l.Measure}")));
}
