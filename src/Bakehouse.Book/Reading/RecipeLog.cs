namespace Bakehouse.Book.Reading;

using Bakehouse.Book.Tables;
using Bakehouse.Domain.Recipes;
using Microsoft.EntityFrameworkCore;
using NodaTime;

/// <summary>One version of a recipe as it was written.</summary>
/// <param name="Why">The reason that was given.</param>
/// <param name="Person">Id of whoever wrote it.</param>
public sealed record RecipeVersion(Recipe Recipe, string Why, string Person, Instant Written);

/// <summary>Reads the versions of one recipe out of those of the cookbook.</summary>
internal static class RecipeLog
{
    /// <summary>The newest first; one cookbook is in memory at a time.</summary>
    public static IReadOnlyList<RecipeVersion> Of(BookContext book, string recipe)
    {
        List<RecipeVersion> versions = [];
        foreach (var row in book.Cookbooks.AsNoTracking().OrderBy(r => r.Version).AsEnumerable())
        {
            if (row.Cookbook().Recipe(recipe) is { } written && written.Version != (versions.Count > 0 ? versions[^1].Recipe.Version : 0))
            {
                versions.Add(new RecipeVersion(written, row.Why, row.Person, row.Written));
            }
        }

        versions.Reverse();
        return versions;
    }
}
