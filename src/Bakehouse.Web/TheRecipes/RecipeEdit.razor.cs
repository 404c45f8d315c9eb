namespace Bakehouse.Web.TheRecipes;

using Bakehouse.Book.Entries;
using Bakehouse.Domain;
using Bakehouse.Domain.Recipes;
using Bakehouse.Web.Access;
using Microsoft.AspNetCore.Components;

/// <summary>Reads the recipe as typed, shows which cakes it touches, and writes it.</summary>
public sealed partial class RecipeEdit
{
    private static readonly IReadOnlyList<(KeepPlace, string)> Places = [(KeepPlace.Room, "Keeps in the room, h"), (KeepPlace.Fridge, "In the fridge, h"), (KeepPlace.Freezer, "Frozen, h")];
    private bool busy;
    private SeenFirst? seen;
    private IReadOnlyList<Problem> unread = [];

    /// <summary>The recipe as typed.</summary>
    [Parameter, EditorRequired]
    public RecipeForm Form { get; set; } = default!;

    /// <summary>What it can be made from.</summary>
    [Parameter, EditorRequired]
    public Cookbook Cookbook { get; set; } = default!;

    /// <summary>Written, with its id and what the book said; or left (null).</summary>
    [Parameter]
    public EventCallback<(string Id, string Said)?> Done { get; set; }

    [CascadingParameter]
    private Who Here { get; set; } = new("", "");

    private SeenFirst Seen => seen ??= new SeenFirst(Book);

    private IReadOnlyList<Problem> Problems => unread.Count > 0 ? unread : Seen.Problems;

    private IEnumerable<(string Value, string Name)> Parts => Cookbook.Ingredients.Select(i => ($"i:{i.Id}", i.Name))
        .Concat(Cookbook.Recipes.Where(r => r.Id != Form.Id).Select(r => ($"r:{r.Id}", $"{r.Name} (recipe)"))).OrderBy(p => p.Item2, StringComparer.OrdinalIgnoreCase);

    private IEnumerable<string> Measures(RecipeRow row) =>
        (row.Part.StartsWith("i:", StringComparison.Ordinal) && Cookbook.Ingredient(row.Part[2..]) is { } ingredient ? KitchenAmount.Of(ingredient) : [RecipeLine.Gram]).Union([row.Measure], StringComparer.Ordinal);

    /// <summary>First shows which cakes it touches; written at once if there are none, or at the second tap if they are still the same.</summary>
    private async Task Look()
    {
        var (recipe, problems) = Form.Read();
        unread = problems;
        if (unread.Count > 0)
        {
            return;
        }

        busy = true;
        if (await Seen.Enter(new WriteRecipes(Guid.NewGuid(), Here.Person, Here.Device, [], [recipe], Form.Why), recipe.Name) is { } answer)
        {
            await Done.InvokeAsync((recipe.Id, answer.Message));
        }

        busy = false;
    }
}
