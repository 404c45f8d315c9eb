namespace Bakehouse.Web.TheRecipes.Files;

using System.Text;

/// <summary>A row of a file: the number of the line on which it begins, and its fields.</summary>
internal sealed record CsvRow(int Line, IReadOnlyList<string> Fields);

/// <summary>
/// Reads and writes comma-separated values strictly as RFC 4180 has them: a quoted field may hold commas, line breaks and doubled quotes;
/// a quote elsewhere is told with its line, since guessing would shift columns.
/// </summary>
internal static class Csv
{
    /// <summary>The rows, or null and the line on which the quotes go wrong. Lines without anything are passed over.</summary>
    public static (IReadOnlyList<CsvRow>? Rows, int BadLine) Read(string text)
    {
        List<CsvRow> rows = [];
        var (at, line) = (0, 1);
        while (at < text.Length)
        {
            var (begin, fields) = (line, new List<string>());
            bool more;
            do
            {
                if (Field(text, ref at, ref line) is not { } field)
                {
                    return (null, line);
                }

                fields.Add(IsGuarded(field) ? field[1..] : field);
                more = at < text.Length && text[at] == ',';
                at += more ? 1 : 0;
            }
            while (more);
            at += at + 1 < text.Length && text[at] == '\r' && text[at + 1] == '\n' ? 2 : 1;
            line++;
            if (fields.Count > 1 || fields[0].Length > 0)
            {
                rows.Add(new CsvRow(begin, fields));
            }
        }

        return (rows, 0);
    }

    /// <summary>
    /// Rows as text: each field that needs it in quotes, lines end with CR LF. A spreadsheet takes what begins with one of = + - @ for a formula
    /// and would run it (OWASP, CSV Injection): such a text gets an apostrophe in front, which reading takes off again.
    /// </summary>
    public static string Write(IEnumerable<IReadOnlyList<string>> rows)
    {
        var text = new StringBuilder();
        foreach (var row in rows)
        {
            text.AppendJoin(',', row.Select(Guarded).Select(f => f.AsSpan().ContainsAny("\",\r\n") ? $"\"{f.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : f)).Append("\r\n");
        }

        return text.ToString();
    }

    private static string Guarded(string field) => BeginsAsFormula(field) ? $"'{field}" : field;

    private static bool IsGuarded(string field) => field.StartsWith('\'') && BeginsAsFormula(field);

    private static bool BeginsAsFormula(string field) => field.AsSpan().TrimStart('\'') is [('=' or '+' or '-' or '@' or '\t' or '\r'), ..];

    /// <summary>The field that begins there, up to its comma or line end; null where a quote stands wrong.</summary>
    private static string? Field(string text, ref int at, ref int line)
    {
        if (at < text.Length && text[at] == '"')
        {
            return Quoted(text, ref at, ref line);
        }

        var begin = at;
        while (at < text.Length && text[at] is not (',' or '\r' or '\n' or '"'))
        {
            at++;
        }

        return at < text.Length && text[at] == '"' ? null : text[begin..at];
    }

    private static string? Quoted(string text, ref int at, ref int line)
    {
        var field = new StringBuilder();
        var begin = line;
        for (at++; at < text.Length; at++)
        {
            var doubled = text[at] == '"' && at + 1 < text.Length && text[at + 1] == '"';
            if (text[at] == '"' && !doubled)
            {
                at++;
                return at == text.Length || text[at] is ',' or '\r' or '\n' ? field.ToString() : null;
            }

            line += text[at] == '\n' ? 1 : 0;
            field.Append(text[at]);
            at += doubled ? 1 : 0;
        }

        line = begin;
        return null;
    }
}
