using System.Globalization;

namespace Bakehouse.Benchmarks.Measured;

/// <summary>
/// A CSV that is written row by row, so that a run that is stopped leaves what it measured. Every row begins with the machine.
/// </summary>
internal sealed class ResultFile : IDisposable
{
    private readonly StreamWriter writer;
    private readonly Machine machine = Machine.Here();

    public ResultFile(string path, IEnumerable<string> columns)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(path))!);
        writer = new StreamWriter(path) { NewLine = "\n", AutoFlush = true };
        writer.WriteLine(string.Join(',', Machine.Columns.Concat(columns)));
    }

    /// <summary>One row; null is an empty cell. A comma in a cell becomes a semicolon.</summary>
    public void Row(params IEnumerable<object?> cells) =>
        writer.WriteLine(string.Join(',', machine.Cells.Concat(cells.Select(Text)).Select(c => c.Replace(',', ';'))));

    public void Dispose() => writer.Dispose();

    private static string Text(object? cell) => Convert.ToString(cell, CultureInfo.InvariantCulture) ?? "";
}
