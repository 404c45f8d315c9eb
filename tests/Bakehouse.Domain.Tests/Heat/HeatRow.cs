namespace Bakehouse.Domain.Tests.Heat;

using System.Globalization;
using System.Text.RegularExpressions;

/// <summary>One published or computed value of heat or food clocks with its source.</summary>
/// <param name="Expected">A number, or words where the unit is logic, class, date or set.</param>
/// <param name="Basis">Opened, computed or from memory.</param>
public sealed partial record HeatRow(string Id, string Quantity, string Inputs, string Expected, string Unit, string Tolerance, string Source, string Basis)
{
    public static IReadOnlyList<HeatRow> All { get; } = [.. Fields("heat-checks.csv").Select(f => new HeatRow(f[0], f[1], f[2], f[3], f[4], f[5], f[6], f[7]))];

    public static HeatRow Of(string id) => All.Single(r => r.Id == id);

    public double Number => double.Parse(Expected, CultureInfo.InvariantCulture);

    /// <summary>The number after a name in the inputs: aw=0.9.</summary>
    public double In(string name) => double.Parse(Regex.Match(Inputs, $@"{name}=([\d.]+)", RegexOptions.None, TimeSpan.FromSeconds(1)).Groups[1].Value, CultureInfo.InvariantCulture);

    /// <summary>What was found is the printed value within its tolerance, and the last digits of a double.</summary>
    public void Holds(double found) =>
        Assert.Equal(Number, found, Math.Max(double.Parse(Tolerance, CultureInfo.InvariantCulture), Math.Abs(Number) * 1e-12));

    public override string ToString() => $"{Id}: {Quantity} = {Expected} {Unit} ({Source}; {Basis})";

    /// <summary>The fields of every row but the first.</summary>
    public static IEnumerable<string[]> Fields(string file) =>
        File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Heat", "Checks", file)).Skip(1)
            .Select(line => Field().Matches(line).Select(m => m.Groups[1].Success ? m.Groups[1].Value.Replace("\"\"", "\"", StringComparison.Ordinal) : m.Groups[2].Value).ToArray());

    [GeneratedRegex("(?:^|,)(?:\"((?:[^\"]|\"\")*)\"|([^,]*))")]
    private static partial Regex Field();
}
