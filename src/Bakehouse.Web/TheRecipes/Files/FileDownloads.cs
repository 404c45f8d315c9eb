namespace Bakehouse.Web.TheRecipes.Files;

using System.Text;
using Bakehouse.Book.Reading;
using Bakehouse.Domain.Recipes;
using Bakehouse.Web.Access;

/// <summary>Recipes and ingredients to take along, for whoever may open the recipes.</summary>
internal static class FileDownloads
{
    /// <summary>Maps /recipes/files/ingredients.csv and /recipes/files/recipes.csv.</summary>
    public static void MapRecipeFiles(this WebApplication app)
    {
        app.MapGet("/recipes/files/ingredients.csv", (HttpContext context, IBook book) => Give(context, book, IngredientsFile.Write));
        app.MapGet("/recipes/files/recipes.csv", (HttpContext context, IBook book) => Give(context, book, RecipesFile.Write));
    }

    private static IResult Give(HttpContext context, IBook book, Func<Cookbook, string> write)
    {
        if (!Rights.MayOpen("recipes", book.State.Shop?.PersonOf(WhoAmI.Of(context).Person)?.Role))
        {
            return Results.StatusCode(StatusCodes.Status403Forbidden);
        }

        context.Response.Headers.CacheControl = "no-store";
        return Results.Text(write(book.State.Cookbook), "text/csv; charset=utf-8", Encoding.UTF8);
    }
}
