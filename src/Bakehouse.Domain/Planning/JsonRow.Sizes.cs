namespace Bakehouse.Domain.Planning;

using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using Bakehouse.Domain.Measures;
using static System.FormattableString;

/// <content>Numbers with decimals, lengths and masses, and words from a list.</content>
internal readonly partial struct JsonRow
{
    /// <summary>A number within bounds, both included; the fallback if it is left out, zero if it is missing or wrong.</summary>
    /// <param name="unit">"mm", "g", or empty.</param>
    public decimal Decimal(string name, decimal least, decimal most, string unit, decimal? fallback = null)
    {
        if (!Has(name))
        {
            _ = fallback is null && Missing(name);
            return fallback ?? 0;
        }

        return Within(element.GetProperty(name), Join(name), least, most, unit);
    }

    /// <summary>Millimetres within bounds; null if it is left out.</summary>
    public Length? Millimetres(string name, decimal least, decimal most) =>
        Has(name) ? Length.FromMillimetres(Decimal(name, least, most, "mm")) : null;

    /// <summary>Several lengths in millimetres; empty if they are left out.</summary>
    public IReadOnlyList<Length> MillimetresEach(string name, decimal least, decimal most)
    {
        var row = this;
        return [.. Array(name).Select((e, i) => Length.FromMillimetres(row.Within(e, Invariant($"{row.Join(name)}[{i}]"), least, most, "mm")))];
    }

    /// <summary>Numbers by name, whatever they are.</summary>
    public IReadOnlyDictionary<string, decimal> Decimals(string name, string unit)
    {
        var numbers = new Dictionary<string, decimal>(StringComparer.Ordinal);
        foreach (var property in Below(name)?.Properties() ?? [])
        {
            numbers[property.Name] = Within(property.Value, $"{Join(name)}.{property.Name}", -Most, Most, unit);
        }

        return numbers;
    }

    /// <summary>One of the words of a list, by its number there; the fallback if it is left out or wrong.</summary>
    public int OneOf(string name, IReadOnlyList<string> words, int fallback)
    {
        if (!Has(name))
        {
            return fallback;
        }

        var e = element.GetProperty(name);
        var given = e.ValueKind == JsonValueKind.String ? Said(e) : null;
        var at = words.ToList().FindIndex(w => string.Equals(w, given, StringComparison.OrdinalIgnoreCase));
        if (at < 0)
        {
            Say(name, Problem.Shown(given ?? e.GetRawText()), "This name is not known.", $"Write one of {string.Join(", ", words)}.");
        }

        return at < 0 ? fallback : at;
    }

    /// <summary>The same for an enumeration.</summary>
    public T OneOf<T>(string name, T fallback)
        where T : struct, Enum => Enum.GetValues<T>()[OneOf(name, Enum.GetNames<T>(), System.Array.IndexOf(Enum.GetValues<T>(), fallback))];

    /// <summary>Says which fields are not known here, so that a slip of the pen is not passed over.</summary>
    public void OnlyKnows(params string[] names)
    {
        foreach (var property in IsObject ? Properties() : [])
        {
            if (!names.Contains(property.Name, StringComparer.Ordinal))
            {
                Say(property.Name, Problem.Shown(property.Value.GetRawText()), "This field is not known.", $"Write one of {string.Join(", ", names)}.");
            }
        }
    }

    /// <summary>The elements of a list, called by their number from 1.</summary>
    public IReadOnlyList<JsonRow> Counted(string name, string called, bool needed)
    {
        var say = problems;
        return [.. Array(name, needed).Select((e, i) => new JsonRow(e, Invariant($"{called} {i + 1}"), say))];
    }

    /// <summary>Numbers with a decimal comma in a text that is no JSON: each as a problem.</summary>
    public static IEnumerable<Problem> DecimalCommas(string text) => DecimalComma().Matches(text).Select(m => new Problem(
        m.Groups["name"].Value, m.Groups["number"].Value, "A decimal comma ends a number in this kind of file.", $"Write {m.Groups["number"].Value.Replace(',', '.')}."));

    [GeneratedRegex("\"(?<name>[^\"]{1,80})\"\\s*:\\s*(?<number>-?[0-9]{1,20},[0-9]{1,20})\\s*[,}\\]]", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex DecimalComma();

    private decimal Within(JsonElement e, string where, decimal least, decimal most, string unit)
    {
        var shown = Problem.Shown(e.GetRawText());
        if (e.ValueKind != JsonValueKind.Number || !e.TryGetDecimal(out var number))
        {
            var meant = e.ValueKind == JsonValueKind.String && decimal.TryParse(Said(e).Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out var typed) ? Invariant($"Write {typed}, without quotation marks.") : "Write it with a point and without quotation marks, like 12.5.";
            problems.Add(new Problem(where, shown, unit.Length > 0 ? $"This must be a number of {unit}." : "This must be a number.", meant));
            return least > 0 ? least : 0;
        }

        if (number >= least && number <= most)
        {
            return number;
        }

        problems.Add(new Problem(where, shown, Invariant($"This is {least} to {most} {unit}").TrimEnd() + ".", "Give a number between."));
        return Math.Clamp(number, least, most);
    }
}
