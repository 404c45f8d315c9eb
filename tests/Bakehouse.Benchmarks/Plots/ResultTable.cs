using System.Globalization;

namespace Bakehouse.Benchmarks.Plots;

/// <summary>A result file read again.</summary>
internal sealed class ResultTable
{
    private readonly string[] head;
    private readonly List<string[]> rows;

    public ResultTable(string path)
    {
        var lines = File.ReadAllLines(path);
        head = lines[0].Split(',');
        rows = [.. lines.Skip(1).Select(l => l.Split(','))];
    }

    public int Count => rows.Count;

    /// <summary>Columns that begin so, without that beginning.</summary>
    public IEnumerable<string> Endings(string beginning) => head.Where(h => h.StartsWith(beginning, StringComparison.Ordinal)).Select(h => h[beginning.Length..]);

    public IEnumerable<string> Column(string name) => rows.Select(r => r[Array.IndexOf(head, name)]);

    public IEnumerable<double> Numbers(string name) => Column(name).Select(c => double.Parse(c, CultureInfo.InvariantCulture));
}
