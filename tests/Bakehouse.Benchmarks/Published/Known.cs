using System.Globalization;

namespace Bakehouse.Benchmarks.Published;

/// <summary>What is published of an instance: the best end known, and whether no schedule exists.</summary>
/// <param name="Best">Best end known; null if none is.</param>
/// <param name="Unsolvable">True if there is no schedule.</param>
internal sealed record Known(int? Best, bool Unsolvable)
{
    /// <summary>Table of the Ghent group: cells divided by semicolons, instance second, upper bound under "UB value".</summary>
    public static Dictionary<string, Known> Ghent(string path)
    {
        var lines = File.ReadAllLines(path);
        var head = Array.FindIndex(lines, l => l.StartsWith("ID;", StringComparison.Ordinal));
        var column = Array.IndexOf(lines[head].Split(';'), "UB value");
        return lines.Skip(head + 1).Select(l => l.Split(';')).Where(c => c.Length > column)
            .ToDictionary(c => Path.GetFileNameWithoutExtension(c[1]), c => new Known(Number(c[column]), false), StringComparer.OrdinalIgnoreCase);
    }

    /// <summary>Table "problem,optimum": a number, two with dots between them, or unsat.</summary>
    public static Dictionary<string, Known> Optimum(string path) => File.ReadLines(path).Skip(1).Select(l => l.Split(','))
        .ToDictionary(c => Path.GetFileNameWithoutExtension(c[0]), c => new Known(Number(c[1].Split("..")[^1]), c[1] == "unsat"), StringComparer.OrdinalIgnoreCase);

    private static int? Number(string cell) => int.TryParse(cell, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
}
