namespace Bakehouse.Web.TheRecipes;

using Bakehouse.Book.Entries;
using Bakehouse.Domain;
using Bakehouse.Domain.Recipes;
using Bakehouse.Web.Access;
using Microsoft.AspNetCore.Components;

/// <summary>Reads weights as typed, shows which cakes they touch, and writes them.</summary>
public sealed partial class WeightsTray
{
    private List<WeightRow> rows = [];
    private string density = "";
    private string source = "";
    private string said = "";
    private (string Id, int Version) filled;
    private SeenFirst? seen;
    private IReadOnlyList<Problem> unread = [];

    /// <summary>The ingredient as the book has it.</summary>
    [Parameter, EditorRequired]
    public Ingredient Ingredient { get; set; } = default!;

    [CascadingParameter]
    private Who Here { get; set; } = new("", "");

    private SeenFirst Seen => seen ??= new SeenFirst(Book);

    private IReadOnlyList<Problem> Problems => unread.Count > 0 ? unread : Seen.Problems;

    /// <summary>What is typed stays until the ingredient itself is another one.</summary>
    protected override void OnParametersSet()
    {
        if (filled != (Ingredient.Id, Ingredient.Version))
        {
            filled = (Ingredient.Id, Ingredient.Version);
            rows = [.. Ingredient.Weights.Select(w => new WeightRow { Measure = w.Measure, Grams = Amounts.Text(w.Grams) })];
            (density, source) = (Ingredient.GramsPerMillilitre is { } known ? Amounts.Text(known) : "", Ingredient.Source);
            unread = [];
            Seen.Forget();
        }
    }

    /// <summary>The ingredient as typed, and every figure that can't be read.</summary>
    private (Ingredient Typed, IReadOnlyList<Problem> Problems) Read()
    {
        List<Problem> problems = [.. rows.Where(r => Amounts.ReadGrams(r.Grams) is null).Select(r => Amounts.None(r.Measure.Trim().Length > 0 ? r.Measure.Trim() : "A measure", r.Grams))];
        if (density.Trim().Length > 0 && Amounts.Read(density) is null)
        {
            problems.Add(Amounts.None("Grams in a millilitre", density));
        }

        foreach (var twice in rows.GroupBy(r => r.Measure.Trim(), StringComparer.Ordinal).Where(g => g.Count() > 1))
        {
            problems.Add(new Problem("Measures", Problem.Shown(twice.Key), "This measure stands twice.", "Take one out."));
        }

        var typed = Ingredient with
        {
            Weights = [.. rows.Select(r => new KitchenWeight(r.Measure.Trim(), Amounts.ReadGrams(r.Grams) ?? 0))],
            GramsPerMillilitre = density.Trim().Length == 0 ? null : Amounts.Read(density),
            Source = source.Trim(),
        };
        if (typed.Source.Length > 0 && typed.Source == Ingredient.Source && !typed.Weights.SequenceEqual(Ingredient.Weights))
        {
            problems.Add(new Problem("Where the weights come from", Problem.Shown(typed.Source), "These are not the weights of that source any more.", "Write where they come from, or leave it empty for your own scales."));
        }

        return (typed, problems);
    }

    /// <summary>First shows which cakes wait for a look; written at once if there are none, or at the second tap if they are still the same.</summary>
    private async Task Look()
    {
        (var typed, unread) = Read();
        said = "";
        if (unread.Count == 0 && await Seen.Enter(new WriteRecipes(Guid.NewGuid(), Here.Person, Here.Device, [typed], [], $"Weights of {typed.Name}"), typed.Name) is { } answer)
        {
            said = answer.Message.Length > 0 ? answer.Message : "Written. Recipes count with it from now on.";
        }
    }

    private sealed class WeightRow
    {
        public string Measure { get; set; } = "";

        public string Grams { get; set; } = "";
    }
}
