namespace Bakehouse.Domain.Tests.Cakes.Checks;

using System.Globalization;
using System.Text.RegularExpressions;

/// <summary>One published or computed value with its source, as it stands in build-checks.csv.</summary>
/// <param name="Tolerance">"0.0005" around each number, "0.5%" of it, or "range": within the numbers printed.</param>
/// <param name="Basis">Published, computed from definitions, or from memory.</param>
public sealed partial record CheckRow(string Id, string Quantity, string Inputs, string Expected, string Unit, string Tolerance, string Source, string Basis)
{
    public static IReadOnlyList<CheckRow> All { get; } =
        [.. File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Cakes", "Checks", "build-checks.csv")).Skip(1).Select(Read)];

    public static CheckRow Of(string id) => All.Single(r => r.Id == id);

    /// <summary>Every number of the expected value, in its order.</summary>
    public double[] Numbers => NumbersIn(Expected);

    /// <summary>Every number of the inputs, in their order.</summary>
    public double[] Given => NumbersIn(Inputs);

    /// <summary>The number after a name in the inputs: D=6 in.</summary>
    public double In(string name) => Regex.Match(Inputs, $@"(?<![A-Za-z0-9]){name}\s*<?=\s*([\d.]+(e\d+)?)") is { Success: true } m
        ? double.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture)
        : throw new InvalidOperationException($"{Id}: no {name} in {Inputs}");

    /// <summary>Each found number is the expected one within the tolerance; of a range, each lies in it.</summary>
    public void Holds(params double[] found)
    {
        if (Tolerance == "range")
        {
            Assert.NotEmpty(found);
            Assert.All(found, f => Assert.InRange(f, Numbers.Min(), Numbers.Max()));
            return;
        }

        Assert.Equal(Numbers.Length, found.Length);
        Assert.All(Numbers.Zip(found), pair => Assert.Equal(pair.First, pair.Second, Within(pair.First)));
    }

    /// <summary>Each is the printed one, whatever the tolerance says of other tables.</summary>
    public void Exactly(params double[] found) => (this with { Tolerance = "1e-9" }).Holds(found);

    /// <summary>The same for declared, exact numbers.</summary>
    public void Is(params decimal[] found) => Holds([.. found.Select(f => (double)f)]);

    public override string ToString() => $"{Id}: {Quantity}, {Inputs} = {Expected} {Unit} ({Source}; {Basis})";

    // "0" is exact: only the last digits of a double may differ.
    private double Within(double expected) => Tolerance.EndsWith('%')
        ? double.Parse(Tolerance[..^1], CultureInfo.InvariantCulture) / 100 * expected
        : Math.Max(double.Parse(Tolerance, CultureInfo.InvariantCulture), Math.Abs(expected) * 1e-12);

    private static double[] NumbersIn(string text) => [.. Numeral().Matches(text).Select(m => double.Parse(m.Value, CultureInfo.InvariantCulture))];

    private static CheckRow Read(string line)
    {
        var f = Field().Matches(line).Select(m => m.Groups[1].Success ? m.Groups[1].Value.Replace("\"\"", "\"", StringComparison.Ordinal) : m.Groups[2].Value).ToArray();
        return new CheckRow(f[0], f[1], f[2], f[3], f[4], f[5], f[6], f[7]);
    }

    [GeneratedRegex("(?:^|,)(?:\"((?:[^\"]|\"\")*)\"|([^,]*))")]
    private static partial Regex Field();

    [GeneratedRegex(@"(?<![A-WYZa-wyz\d.^])\d*\.?\d+(e-?\d+)?")]
    private static partial Regex Numeral();
}
