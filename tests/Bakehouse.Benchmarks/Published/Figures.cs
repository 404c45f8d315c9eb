using System.Globalization;

namespace Bakehouse.Benchmarks.Published;

/// <summary>A published file's text as lines of whole numbers; notes everything that is wrong instead of stopping at the first.</summary>
internal sealed class Figures(string text)
{
    private readonly string[] lines = text.ReplaceLineEndings("\n").Split('\n');
    private readonly List<string> wrong = [];

    public int Lines => lines.Length;

    public IReadOnlyList<string> Wrong => wrong;

    public string Line(int n) => lines[n];

    public void Note(int line, string what) => wrong.Add(string.Create(CultureInfo.InvariantCulture, $"line {line + 1}: {what}"));

    public void Note(string what) => wrong.Add(what);

    /// <summary>First line that begins so, or -1 with a note.</summary>
    public int Find(string beginning)
    {
        var at = Array.FindIndex(lines, l => l.TrimStart().StartsWith(beginning, StringComparison.OrdinalIgnoreCase));
        if (at < 0)
        {
            Note($"there is no line \"{beginning}\".");
        }

        return at;
    }

    /// <summary>The numbers of a line; brackets count as spaces. What is no number is noted.</summary>
    public int[] Numbers(int line)
    {
        if (line < 0 || line >= lines.Length)
        {
            Note(line, "the file ends before it.");
            return [];
        }

        var parts = lines[line].Split([' ', '\t', '[', ']'], StringSplitOptions.RemoveEmptyEntries);
        var odd = parts.Where(p => !int.TryParse(p, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out _)).ToList();
        if (odd.Count > 0)
        {
            Note(line, $"{string.Join(", ", odd.Select(o => $"\"{o}\""))} should be whole numbers.");
            return [];
        }

        return [.. parts.Select(p => int.Parse(p, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture))];
    }

    /// <summary>True if the line has at least so many numbers; if not, it is noted.</summary>
    public bool Enough(int line, int[] numbers, int least, string what)
    {
        if (numbers.Length < least && (line >= 0 && line < lines.Length))
        {
            Note(line, string.Create(CultureInfo.InvariantCulture, $"{numbers.Length} numbers where {what} needs {least}."));
        }

        return numbers.Length >= least;
    }
}
