namespace Bakehouse.Domain.Recipes;

using System.Globalization;
using static System.FormattableString;

/// <summary>Checks of words that somebody typed.</summary>
internal static class Said
{
    /// <summary>Longest name, in characters as people count them.</summary>
    public const int LongestName = 120;

    /// <summary>Longest id, measure or mark.</summary>
    public const int LongestWord = 40;

    /// <summary>By what it is found again in a list: its name, else its id.</summary>
    public static string Called(string name, string id, string what) => name.Trim().Length > 0 ? Problem.Shown(name) : id.Length > 0 ? Problem.Shown(id) : what;

    public static IEnumerable<Problem> Id(string where, string id)
    {
        if (id.Length is < 1 or > LongestWord || id.Any(c => c is not ((>= 'a' and <= 'z') or (>= '0' and <= '9') or '-')))
        {
            yield return new Problem(where, Problem.Shown(id), $"An id is 1 to {LongestWord} small letters, digits and hyphens.", "Write it like plain-flour.");
        }
    }

    public static IEnumerable<Problem> Text(string where, string what, string text, int limit, bool mayBeEmpty)
    {
        if (!mayBeEmpty && text.Trim().Length == 0)
        {
            yield return new Problem(where, "", $"{what} is missing.", "Write it.");
        }

        // Counting a megabyte as people count characters is slow: nothing of that length fits either way.
        var length = text.Length > limit * 8 ? text.Length : new StringInfo(text).LengthInTextElements;
        if (length > limit)
        {
            yield return new Problem(where, Problem.Shown(text), Invariant($"{what} is {length} characters long; at most {limit} fit."), "Shorten it.");
        }

        if (text.Any(c => char.IsControl(c) && c is not '\n' and not '\r' and not '\t'))
        {
            yield return new Problem(where, Problem.Shown(text), $"{what} holds a sign that can't be written.", "Type it again instead of pasting it.");
        }
    }
}
