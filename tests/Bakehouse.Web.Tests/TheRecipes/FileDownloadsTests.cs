namespace Bakehouse.Web.Tests.TheRecipes;

using System.Net;
using Bakehouse.Testing;
using Bakehouse.Web.Tests.Kitchen;
using Bakehouse.Web.TheRecipes.Files;

/// <summary>Files to take along, over HTTP, from the sample bakery.</summary>
public sealed class FileDownloadsTests
{
    [Fact]
    public async Task Whoever_may_open_the_recipes_takes_them_along_and_nobody_else()
    {
        await using var app = await KitchenShop.Sample(new SteppedTime(KitchenShop.Start));
        var cancel = TestContext.Current.CancellationToken;
        foreach (var (file, heads) in new[] { ("ingredients", IngredientsFile.Heads), ("recipes", RecipesFile.Heads) })
        {
            var answer = await app.At("petra").GetAsync($"/recipes/files/{file}.csv", cancel);
            Assert.Equal("text/csv", answer.Content.Headers.ContentType!.MediaType);
            Assert.StartsWith($"{string.Join(',', heads)}\r\n", await answer.Content.ReadAsStringAsync(cancel), StringComparison.Ordinal);
            Assert.Equal(HttpStatusCode.Forbidden, (await app.At("sal").GetAsync($"/recipes/files/{file}.csv", cancel)).StatusCode);
        }
    }
}
