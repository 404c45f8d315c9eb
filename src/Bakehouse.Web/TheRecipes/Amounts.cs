namespace Bakehouse.Web.TheRecipes;

using System.Globalization;
using Bakehouse.Domain;

/// <summary>Figures as somebody types them: digits with a point or a comma before the decimals.</summary>
internal static class Amounts
{
    private const int Longest = 30;

    /// <summary>The figure, or null. "1,650" may be one and a half or a thousand and more, so it is none.</summary>
    public static decimal? Read(string text)
    {
        var typed = text.Trim();
        var comma = typed.IndexOf(',', StringComparison.Ordinal);
        return typed.Length is > 0 and <= Longest && (comma < 0 || typed.Length - comma != 4)
            && decimal.TryParse(typed.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var figure) ? figure : null;
    }

    /// <summary>Grams as somebody types them, or null: "1650", "1650 g", "1.65 kg".</summary>
    public static decimal? ReadGrams(string text)
    {
        var typed = text.Trim();
        return typed.EndsWith("kg", StringComparison.OrdinalIgnoreCase) ? Read(typed[..^2]) * 1000
            : typed.EndsWith('g') ? Read(typed[..^1])
            : Read(typed);
    }

    /// <summary>The whole figure, or null.</summary>
    public static int? ReadWhole(string text) => Read(text) is { } figure && figure == decimal.Truncate(figure) && figure <= int.MaxValue ? (int)figure : null;

    /// <summary>What is wrong with a figure that can't be read.</summary>
    public static Problem None(string where, string text, bool whole = false) => new(where, Problem.Shown(text), whole ? "A whole figure is needed here." : "A figure is needed here.", whole ? "Write it like 12." : "Write it like 12 or 12.5, thousands as 1650.");

    /// <summary>A figure as it stands in a field.</summary>
    public static string Text(decimal figure) => figure.ToString("0.############################", CultureInfo.InvariantCulture);
}
