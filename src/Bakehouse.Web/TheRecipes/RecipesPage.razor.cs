namespace Bakehouse.Web.TheRecipes;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;
using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.Access;
using Microsoft.AspNetCore.Components;

/// <summary>All recipes and ingredients with what they contain, and one recipe weighed out.</summary>
public sealed partial class RecipesPage
{
    private string find = "";
    private string said = "";
    private RecipeForm? editing;

    /// <summary>Id of the open recipe, or null.</summary>
    [Parameter]
    public string? Id { get; set; }

    [CascadingParameter]
    private Who Here { get; set; } = new("", "");

    private Cookbook Recipes => Book.State.Cookbook;

    private Shop Shop => Book.State.Shop ?? throw new InvalidOperationException("The recipes are open without a shop.");

    private Recipe? Recipe => Id is null ? null : Recipes.Recipe(Id);

    private bool IsOwner => Shop.PersonOf(Here.Person)?.Role == Role.Owner;

    private IReadOnlyList<Order> Waiting { get; set; } = [];

    private IEnumerable<Recipe> FoundRecipes => Recipes.Recipes.Where(r => Has(r.Name)).OrderBy(r => r.Kind).ThenBy(r => r.Name, StringComparer.OrdinalIgnoreCase);

    private IEnumerable<Ingredient> FoundIngredients => Recipes.Ingredients.Where(i => Has(i.Name)).OrderBy(i => i.Name, StringComparer.OrdinalIgnoreCase);

    /// <inheritdoc/>
    public void Dispose() => Book.Changed -= Refresh;

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        Book.Changed += Refresh;
        Waiting = Touched.Now(Book.State);
    }

    /// <inheritdoc/>
    protected override void OnParametersSet() => editing = null;

    private void Refresh(BookState state) => _ = InvokeAsync(() =>
    {
        Waiting = Touched.Now(state);
        StateHasChanged();
    });

    private bool Has(string name) => name.Contains(find.Trim(), StringComparison.OrdinalIgnoreCase);

    private Contents ContentsOf(Recipe recipe) => Contents.Of([new RecipePart(recipe, Recipes.Total(recipe))], Recipes, Shop.Allergens);

    private async Task StartFromOurs()
    {
        var ours = Starter.ToBeRead;
        var answer = await Book.Enter(new WriteRecipes(
            Guid.NewGuid(), Here.Person, Here.Device, [.. ours.Ingredients.Select(i => i with { Version = 0 })], [.. ours.Recipes.Select(r => r with { Version = 0 })], "The first recipes"));
        said = answer.Message;
    }

    /// <summary>The recipe was written, with what the book said, or left (null).</summary>
    private void Close((string Id, string Said)? written)
    {
        (editing, said) = (null, written?.Said ?? "");
        if (written is { } done && done.Id != Id)
        {
            Navigation.NavigateTo($"/recipes/{done.Id}");
        }
    }
}
