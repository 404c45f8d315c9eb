namespace Bakehouse.Web.TheRecipes.Files;

using Bakehouse.Domain;

/// <summary>
/// A file of ours with its columns found by name. Whatever is wrong is told by row, with what to do; nothing is guessed.
/// </summary>
internal sealed class TableFile
{
    /// <summary>Longest field, characters.</summary>
    public const int LongestField = 8000;

    /// <summary>Most rows.</summary>
    public const int MostRows = 20_000;

    private readonly Dictionary<string, int> columns = new(StringComparer.Ordinal);

    private TableFile()
    {
    }

    /// <summary>The rows below the heads.</summary>
    public IReadOnlyList<CsvRow> Rows { get; private set; } = [];

    /// <summary>Everything that can't be read.</summary>
    public List<Problem> Problems { get; } = [];

    /// <summary>Reads a file that must have just these columns, in any order.</summary>
    public static TableFile Read(string text, IReadOnlyList<string> heads)
    {
        var file = new TableFile();
        var (rows, bad) = Csv.Read(text);
        if (rows is null)
        {
            file.Problems.Add(new Problem(At(bad), "", "A quotation mark stands where none may.", "Put the whole field in quotation marks and double those inside it: \"8\"\" tin\"."));
        }
        else if (rows.Count < 2)
        {
            file.Problems.Add(new Problem("File", "", "There is nothing in it.", $"Its first row is: {string.Join(",", heads)}"));
        }
        else if (file.Columns(rows[0], heads))
        {
            file.Fill([.. rows.Skip(1)]);
        }

        return file;
    }

    /// <summary>"Row 7", as a spreadsheet counts lines; with its column, "Row 7, amount".</summary>
    public static string At(int line, string column = "") => FormattableString.Invariant($"Row {line}{(column.Length > 0 ? ", " : "")}{column}");

    /// <summary>The field of that column without blanks around it.</summary>
    public string Text(CsvRow row, string column) => row.Fields[columns[column]].Trim();

    /// <summary>A figure with a point, or null where there is none; what is no figure is told.</summary>
    public decimal? Figure(CsvRow row, string column)
    {
        var text = Text(row, column);
        if (text.Length == 0 || (!text.Contains(',', StringComparison.Ordinal) && Amounts.Read(text) is not null))
        {
            return text.Length == 0 ? null : Amounts.Read(text);
        }

        var comma = text.Contains(',', StringComparison.Ordinal);
        Problems.Add(new Problem(At(row.Line, column), Problem.Shown(text), comma ? "Decimals stand behind a point here, and nothing parts thousands." : "That is no figure.", comma ? "Write 12.5 and 1650." : "Write digits, such as 12 or 12.5."));
        return null;
    }

    /// <summary>A whole figure, or null.</summary>
    public int? Whole(CsvRow row, string column)
    {
        var figure = Figure(row, column);
        if (figure is { } known && (known != decimal.Truncate(known) || known > int.MaxValue))
        {
            Problems.Add(new Problem(At(row.Line, column), Amounts.Text(known), "A whole figure is needed here.", "Write it without decimals."));
            return null;
        }

        return (int?)figure;
    }

    /// <summary>One of those words; the first for an empty field; what is none of them is told.</summary>
    public T Word<T>(CsvRow row, string column, IReadOnlyDictionary<string, T> words)
    {
        var text = Text(row, column);
        if (text.Length == 0 || words.ContainsKey(text))
        {
            return text.Length == 0 ? words.First().Value : words[text];
        }

        Problems.Add(new Problem(At(row.Line, column), Problem.Shown(text), "There is no such word here.", $"Use one of {string.Join(", ", words.Keys)}."));
        return words.First().Value;
    }

    private bool Columns(CsvRow head, IReadOnlyList<string> heads)
    {
        List<string> there = [.. head.Fields.Select(f => f.Trim().TrimStart('\uFEFF').ToLowerInvariant())];
        if (there.Count == 1 && there[0].Contains(';', StringComparison.Ordinal))
        {
            Problems.Add(new Problem(At(head.Line), Problem.Shown(there[0]), "The columns are parted by semicolons.", "Save it with commas between the columns, and points before decimals."));
            return false;
        }

        Problems.AddRange(heads.Except(there).Select(h => new Problem(At(head.Line), h, "This column is missing.", $"The columns are: {string.Join(",", heads)}")));
        Problems.AddRange(there.Except(heads).Select(h => new Problem(At(head.Line), Problem.Shown(h), "There is no such column.", $"Take it out. The columns are: {string.Join(",", heads)}")));
        Problems.AddRange(there.GroupBy(h => h).Where(g => g.Count() > 1).Select(g => new Problem(At(head.Line), Problem.Shown(g.Key), "This column is there twice.", "Take one of them out.")));
        for (var i = 0; i < there.Count; i++)
        {
            columns[there[i]] = i;
        }

        return Problems.Count == 0;
    }

    private void Fill(IReadOnlyList<CsvRow> rows)
    {
        if (rows.Count > MostRows)
        {
            Problems.Add(new Problem("File", FormattableString.Invariant($"{rows.Count} rows"), $"At most {MostRows} rows are read.", "Part it in several files."));
            return;
        }

        foreach (var row in rows)
        {
            if (row.Fields.Count != columns.Count)
            {
                Problems.Add(new Problem(At(row.Line), FormattableString.Invariant($"{row.Fields.Count} fields"), FormattableString.Invariant($"The file has {columns.Count} columns."), "Look for a comma too many or too few; a field with a comma stands in quotation marks."));
            }

            Problems.AddRange(row.Fields.Where(f => f.Length > LongestField).Select(f => new Problem(At(row.Line), Problem.Shown(f), FormattableString.Invariant($"A field has {f.Length} characters; at most {LongestField} fit."), "Shorten it.")));
        }

        // Rows that don't fit the columns, or hold a screenful, are told once and not read further.
        Rows = [.. rows.Where(r => r.Fields.Count == columns.Count && r.Fields.All(f => f.Length <= LongestField))];
    }
}
