namespace Bakehouse.Web.TheRecipes.Files;

using Bakehouse.Domain;
using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Recipes;

/// <summary>What a file would write: with the row of each, so that what the book says can be told by row.</summary>
internal sealed record FileRead<T>(IReadOnlyList<(T Item, IReadOnlyList<int> Rows)> Items, IReadOnlyList<Problem> Problems);

/// <summary>Ingredients as a file: one row each, with the pack in use. Other packs in the book stay as they are.</summary>
internal static class IngredientsFile
{
    /// <summary>The columns.</summary>
    public static readonly IReadOnlyList<string> Heads = ["ingredient", "name", "in lists", "counts as", "g per ml", "alcohol %", "measures", "made of", "source", "pack", "contains", "may contain", "not in it", "so2 mg per kg"];

    /// <summary>All ingredients of a cookbook.</summary>
    public static string Write(Cookbook book) => Csv.Write([Heads, .. book.Ingredients.Select(Row)]);

    /// <summary>The ingredients of a file, each with the version that stands in the book.</summary>
    public static FileRead<Ingredient> Read(string text, Cookbook book)
    {
        var file = TableFile.Read(text, Heads);
        List<(Ingredient, IReadOnlyList<int>)> items = [];
        foreach (var row in file.Rows)
        {
            items.Add((Of(row, file, book), [row.Line]));
        }

        file.Problems.AddRange(file.Rows.GroupBy(r => file.Text(r, "ingredient"), StringComparer.Ordinal).Where(g => g.Count() > 1)
            .Select(g => new Problem(TableFile.At(g.Last().Line, "ingredient"), Problem.Shown(g.Key), FormattableString.Invariant($"Row {g.First().Line} has that ingredient already."), "Leave one of them.")));
        return new FileRead<Ingredient>(items, file.Problems);
    }

    /// <summary>True if both would be written the same.</summary>
    public static bool Same(Ingredient a, Ingredient b) => Row(a).SequenceEqual(Row(b), StringComparer.Ordinal);

    private static IReadOnlyList<string> Row(Ingredient i)
    {
        var facts = i.InUse?.Facts;
        return
        [
            i.Id, i.Name, i.Label, FileWords.Counts.Of(i.Kind), Figure(i.GramsPerMillilitre), Amounts.Text(i.AlcoholPercent),
            SeveralWords.Join(i.Weights.Select(w => $"{SeveralWords.Plain(w.Measure)} = {Amounts.Text(w.Grams)}")),
            SeveralWords.Join(i.MadeOf.Select(c => SeveralWords.Plain(c.Label) + (c.Has.Count > 0 ? $" [{string.Join(' ', c.Has)}]" : ""))),
            i.Source, i.InUse?.Lot ?? "", SeveralWords.Join(facts?.Has ?? []), SeveralWords.Join(facts?.May ?? []), SeveralWords.Join(facts?.HasNot ?? []), Figure(facts?.SulphitesMgPerKg),
        ];
    }

    private static Ingredient Of(CsvRow row, TableFile file, Cookbook book)
    {
        var id = file.Text(row, "ingredient");
        var before = book.Ingredient(id);
        var name = file.Text(row, "name");
        var label = file.Text(row, "in lists");
        var written = new Ingredient(
            id, before?.Version ?? 0, name, label.Length > 0 ? label : name, file.Word(row, "counts as", FileWords.Counts), Weights(row, file), file.Text(row, "source"), before?.Packs ?? [])
        {
            GramsPerMillilitre = file.Figure(row, "g per ml"),
            AlcoholPercent = file.Figure(row, "alcohol %") ?? 0,
            MadeOf = [.. SeveralWords.Split(file.Text(row, "made of"), ';').Select(Part)],
        };
        return written.Swapped(new Pack(file.Text(row, "pack"), Facts(row, file)));
    }

    /// <summary>What the label says; null, nobody has read it, if every field of it is empty.</summary>
    private static AllergenFacts? Facts(CsvRow row, TableFile file)
    {
        IReadOnlyList<string> Words(string column) => [.. SeveralWords.Split(file.Text(row, column), ';').Select(w => w.ToLowerInvariant())];
        var facts = new AllergenFacts(Words("contains"), Words("may contain"), Words("not in it"), file.Figure(row, "so2 mg per kg"));
        return facts.Has.Count + facts.May.Count + facts.HasNot.Count == 0 && facts.SulphitesMgPerKg is null ? null : facts;
    }

    private static IReadOnlyList<KitchenWeight> Weights(CsvRow row, TableFile file)
    {
        List<KitchenWeight> weights = [];
        foreach (var word in SeveralWords.Split(file.Text(row, "measures"), ';'))
        {
            var sides = SeveralWords.Split(word, '=');
            if (sides.Count == 2 && !sides[1].Contains(',', StringComparison.Ordinal) && Amounts.Read(sides[1]) is { } grams)
            {
                weights.Add(new KitchenWeight(SeveralWords.Said(sides[0]), grams));
            }
            else
            {
                file.Problems.Add(new Problem(TableFile.At(row.Line, "measures"), Problem.Shown(word), "That is no measure with its grams.", "Write it like cup = 125; tbsp = 8, decimals behind a point."));
            }
        }

        return weights;
    }

    /// <summary>"butter oil [milk]".</summary>
    private static Component Part(string word)
    {
        var open = SeveralWords.Split(word, '[');
        return open.Count == 2 && open[1].EndsWith(']')
            ? new Component(SeveralWords.Said(open[0]), [.. open[1][..^1].Split(' ', ',').Where(a => a.Length > 0)])
            : new Component(SeveralWords.Said(word), []);
    }

    private static string Figure(decimal? figure) => figure is { } known ? Amounts.Text(known) : "";
}
