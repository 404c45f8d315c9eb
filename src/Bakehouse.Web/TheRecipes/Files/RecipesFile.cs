namespace Bakehouse.Web.TheRecipes.Files;

using Bakehouse.Domain;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Recipes;

/// <summary>
/// Recipes as a file: a row for each that goes in. What is said of the whole recipe stands in its first row and is empty, or the same,
/// in the others.
/// </summary>
internal static class RecipesFile
{
    /// <summary>The columns.</summary>
    public static readonly IReadOnlyList<string> Heads =
        ["recipe", "name", "makes", "goes in", "is", "amount", "measure", "eggs", "lost %", "oven c", "minutes", "keeps room h", "keeps fridge h", "keeps frozen h", "notes"];

    private static readonly IReadOnlyList<string> Whole = ["name", "makes", "eggs", "lost %", "oven c", "minutes", "keeps room h", "keeps fridge h", "keeps frozen h", "notes"];

    private static readonly IReadOnlyList<(string Head, KeepPlace Place)> Keeps = [("keeps room h", KeepPlace.Room), ("keeps fridge h", KeepPlace.Fridge), ("keeps frozen h", KeepPlace.Freezer)];

    /// <summary>All recipes of a cookbook.</summary>
    public static string Write(Cookbook book) => Csv.Write([Heads, .. book.Recipes.SelectMany(Rows)]);

    /// <summary>The recipes of a file, each with the version that stands in the book.</summary>
    public static FileRead<Recipe> Read(string text, Cookbook book)
    {
        var file = TableFile.Read(text, Heads);
        List<(Recipe, IReadOnlyList<int>)> items = [];
        foreach (var rows in file.Rows.GroupBy(r => file.Text(r, "recipe"), StringComparer.Ordinal).Select(g => g.ToList()))
        {
            file.Problems.AddRange(Otherwise(rows, file));
            items.Add((Of(rows, file, book), [.. rows.Select(r => r.Line)]));
        }

        return new FileRead<Recipe>(items, file.Problems);
    }

    /// <summary>True if both would be written the same.</summary>
    public static bool Same(Recipe a, Recipe b) => Csv.Write(Rows(a)) == Csv.Write(Rows(b));

    private static IEnumerable<IReadOnlyList<string>> Rows(Recipe r)
    {
        IReadOnlyList<string> whole =
        [
            FileWords.Eggs.Of(r.Eggs), Amounts.Text(r.LossPercent), r.Bakes is { } b ? Amounts.Text(b.Heat) : "",
            SeveralWords.Join(r.Bakes?.Times.Select(t => $"{Amounts.Text(t.ToInches)} in {Amounts.Text(t.ToCentimetres)} cm = {Amounts.Text(t.Minutes)}") ?? []),
            .. Keeps.Select(k => r.Keeps.FirstOrDefault(t => t.Place == k.Place) is { } kept ? Amounts.Text(kept.Hours) : ""), r.Notes,
        ];
        return r.Lines.Select((l, i) => (IReadOnlyList<string>)
        [
            r.Id, i == 0 ? r.Name : "", i == 0 ? FileWords.Makes.Of(r.Kind) : "", l.Of, FileWords.IsRecipe.Of(l.IsRecipe), Amounts.Text(l.Amount), l.Measure, .. whole.Select(w => i == 0 ? w : ""),
        ]);
    }

    /// <summary>What a later row says otherwise than the first.</summary>
    private static IEnumerable<Problem> Otherwise(List<CsvRow> rows, TableFile file) =>
        from row in rows.Skip(1)
        from head in Whole
        let text = file.Text(row, head)
        where text.Length > 0 && text != file.Text(rows[0], head)
        select new Problem(TableFile.At(row.Line, head), Problem.Shown(text), FormattableString.Invariant($"Row {rows[0].Line} of the same recipe says otherwise."), "Say it in the first row of the recipe only.");

    private static Recipe Of(List<CsvRow> rows, TableFile file, Cookbook book)
    {
        var (first, id) = (rows[0], file.Text(rows[0], "recipe"));
        var before = book.Recipe(id);
        List<KeepTime> keeps = [];
        foreach (var (head, place) in Keeps)
        {
            keeps.AddRange(file.Whole(first, head) is { } hours ? [new KeepTime(place, hours)] : (KeepTime[])[]);
        }

        return new Recipe(
            id, before?.Version ?? 0, file.Text(first, "name"), file.Word(first, "makes", FileWords.Makes), [.. rows.Select(r => Line(r, file))],
            file.Word(first, "eggs", FileWords.Eggs), file.Whole(first, "oven c") is { } heat ? new Baking(heat, Times(first, file)) : null, keeps, file.Figure(first, "lost %") ?? 0)
        {
            Notes = file.Text(first, "notes"),
        };
    }

    private static RecipeLine Line(CsvRow row, TableFile file)
    {
        var amount = file.Figure(row, "amount");
        if (amount is null && file.Text(row, "amount").Length == 0)
        {
            file.Problems.Add(new Problem(TableFile.At(row.Line, "amount"), "", "An amount is missing.", "Write how much goes in."));
        }

        var measure = file.Text(row, "measure");
        return new RecipeLine(file.Text(row, "goes in"), file.Word(row, "is", FileWords.IsRecipe), amount ?? 1, measure.Length > 0 ? measure : RecipeLine.Gram);
    }

    /// <summary>"8 in 5 cm = 35": minutes up to that diameter and that height.</summary>
    private static IReadOnlyList<BakeTime> Times(CsvRow row, TableFile file)
    {
        List<BakeTime> times = [];
        foreach (var word in SeveralWords.Split(file.Text(row, "minutes"), ';'))
        {
            var said = word.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            if (said is [var inches, "in", var height, "cm", "=", var minutes] && Amounts.ReadWhole(inches) is { } wide && Amounts.Read(height) is { } high && Amounts.ReadWhole(minutes) is { } time)
            {
                times.Add(new BakeTime(high, wide, time));
            }
            else
            {
                file.Problems.Add(new Problem(TableFile.At(row.Line, "minutes"), Problem.Shown(word), "Those are no minutes for a size.", "Write it like 8 in 5 cm = 35; 10 in 5 cm = 40."));
            }
        }

        return times;
    }
}
