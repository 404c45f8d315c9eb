namespace Bakehouse.Web.TheRecipes;

using Bakehouse.Domain;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Recipes;

/// <summary>A row of a recipe as typed. The part is "i:sugar" or "r:ganache".</summary>
public sealed class RecipeRow
{
    public string Part { get; set; } = "";

    public string Amount { get; set; } = "";

    public string Measure { get; set; } = RecipeLine.Gram;
}

/// <summary>A recipe as typed by the owner.</summary>
public sealed class RecipeForm
{
    private Recipe? before;

    public string Id { get; set; } = "";

    public string Name { get; set; } = "";

    public RecipeKind Kind { get; set; } = RecipeKind.Part;

    public IList<RecipeRow> Rows { get; private set; } = [new()];

    public EggMethod Eggs { get; set; }

    public string Loss { get; set; } = "0";

    public string Heat { get; set; } = "";

    /// <summary>Hours by place; "" where it is not kept.</summary>
    public IDictionary<KeepPlace, string> Keeps { get; } = Enum.GetValues<KeepPlace>().ToDictionary(p => p, _ => "");

    public string Notes { get; set; } = "";

    public string Why { get; set; } = "";

    /// <summary>True if the recipe is in the book already: then its id stays.</summary>
    public bool IsKnown => before is not null;

    /// <summary>The form filled with a recipe.</summary>
    public static RecipeForm Of(Recipe recipe)
    {
        var form = new RecipeForm
        {
            before = recipe,
            Id = recipe.Id,
            Name = recipe.Name,
            Kind = recipe.Kind,
            Rows = [.. recipe.Lines.Select(l => new RecipeRow { Part = $"{(l.IsRecipe ? 'r' : 'i')}:{l.Of}", Amount = Amounts.Text(l.Amount), Measure = l.Measure })],
            Eggs = recipe.Eggs,
            Loss = Amounts.Text(recipe.LossPercent),
            Heat = recipe.Bakes is { } bakes ? Amounts.Text(bakes.Heat) : "",
            Notes = recipe.Notes,
        };
        foreach (var kept in recipe.Keeps)
        {
            form.Keeps[kept.Place] = Amounts.Text(kept.Hours);
        }

        return form;
    }

    /// <summary>The recipe as typed and what can't be read; the book looks at the rest. Rows without a part are passed over.</summary>
    public (Recipe Recipe, IReadOnlyList<Problem> Problems) Read()
    {
        List<Problem> problems = [];
        var rows = Rows.Where(r => r.Part.Length > 2).ToList();
        List<RecipeLine> lines = [.. rows.Select((r, i) => new RecipeLine(r.Part[2..], r.Part[0] == 'r', Figure($"Row {i + 1}", r.Amount, problems), r.Measure.Trim()))];
        var heat = Heat.Trim().Length == 0 ? (int?)null : Whole("Oven", Heat, problems);
        List<KeepTime> keeps = [.. Keeps.Where(k => k.Value.Trim().Length > 0).Select(k => new KeepTime(k.Key, Whole($"Keeps, {k.Key.ToString().ToLowerInvariant()}", k.Value, problems)))];
        // A new sponge bakes as long as a butter cake until the shop's own minutes are known.
        var times = before?.Bakes?.Times ?? Sponge.All[0].Bakes;
        var recipe = new Recipe(Id.Trim(), before?.Version ?? 0, Name.Trim(), Kind, lines, Eggs, heat is { } h ? new Baking(h, times) : null, keeps, Figure("Lost while it is made", Loss, problems)) { Notes = Notes.Trim() };
        return (recipe, problems);
    }

    private static decimal Figure(string where, string text, List<Problem> problems)
    {
        if (Amounts.Read(text) is not { } figure)
        {
            problems.Add(Amounts.None(where, text));
            return 1;
        }

        return figure;
    }

    private static int Whole(string where, string text, List<Problem> problems)
    {
        if (Amounts.ReadWhole(text) is not { } figure)
        {
            problems.Add(Amounts.None(where, text, whole: true));
            return 1;
        }

        return figure;
    }
}
