namespace Bakehouse.Domain.Planning;

using System.Text.Json;

/// <summary>
/// Reads a week from its file and writes one, text in and value out. A broken file is told in one list that names
/// everything wrong. Notes of who made the file and the words of its query beside the kind are not kept.
/// </summary>
public static class WeekFile
{
    /// <summary>The format that this reads.</summary>
    public const string Format = "bakery-week/1";

    /// <summary>The week, or null and every problem found.</summary>
    public static (Week? Week, IReadOnlyList<Problem> Problems) Read(string text)
    {
        var problems = new List<Problem>();
        JsonDocument document;
        try
        {
            document = JsonDocument.Parse(text);
        }
        catch (JsonException broken)
        {
            return (null, [new Problem("file", Problem.Shown(text), $"This is not JSON: {broken.Message}", "Write the file again.")]);
        }

        using (document)
        {
            var read = new WeekReader(new JsonRow(document.RootElement, "", problems));
            var week = read.Week();
            problems.AddRange(WeekChecks.Of(week).Where(p => !Told(p.Where, problems)).ToList());
            return (problems.Count == 0 ? week : null, problems);
        }
    }

    /// <summary>The week as text.</summary>
    public static string Write(Week week) => WeekWriter.Write(week);

    /// <summary>A value that stands for one that could not be read is not complained about again.</summary>
    private static bool Told(string where, List<Problem> problems) =>
        where.Contains(' ', StringComparison.Ordinal)
        && problems.Exists(p => p.Where == where || p.Where.StartsWith(where + "[", StringComparison.Ordinal) || p.Where.StartsWith(where + ".", StringComparison.Ordinal));
}
