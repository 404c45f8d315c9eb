namespace Bakehouse.Book.Tables;

using System.Globalization;
using System.Text;
using Bakehouse.Domain.Orders;

/// <summary>
/// Words by which an order is found, folded in C# because databases fold letters each in its own way: lower case, accents taken
/// off ('Á' finds 'a'). Words of a question must all be found.
/// </summary>
internal static class SearchText
{
    /// <summary>Name, phone digits, number and day of an order.</summary>
    public static string Of(Order order)
    {
        var day = order.Handover.At.Date;
        var iso = day.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture);
        var spoken = day.ToString("dddd d MMMM", CultureInfo.InvariantCulture);
        return Fold($"{order.Customer.Name} {Digits(order.Customer.Phone)} {order.Number} {iso} {spoken}");
    }

    /// <summary>The words of a question. A question of digits alone is a number or a phone, spaces and a leading 0 or + left out.</summary>
    public static IReadOnlyList<string> Words(string question)
    {
        var digits = Digits(question);
        var isPhone = digits.Length > 4 && question.All(c => char.IsAsciiDigit(c) || c is ' ' or '+' or '-' or '(' or ')' or '/') && question.Count(c => c == '-') < 2;
        return isPhone ? [digits.TrimStart('0')] : Fold(question).Split(' ', StringSplitOptions.RemoveEmptyEntries);
    }

    /// <summary>Lower case without accents; letters that are no letter with an accent are spelt out.</summary>
    public static string Fold(string text)
    {
        // Half a sign (a lone surrogate) can't be normalised; runes turn it into the replacement sign.
        var whole = string.Concat(text.EnumerateRunes());
        var folded = new StringBuilder(text.Length);
        foreach (var c in whole.Normalize(NormalizationForm.FormKD))
        {
            if (CharUnicodeInfo.GetUnicodeCategory(c) != UnicodeCategory.NonSpacingMark)
            {
                folded.Append(char.ToLowerInvariant(c));
            }
        }

        return folded.ToString()
            .Replace("ß", "ss", StringComparison.Ordinal).Replace("æ", "ae", StringComparison.Ordinal)
            .Replace("ø", "o", StringComparison.Ordinal).Replace("ł", "l", StringComparison.Ordinal)
            .Replace("đ", "d", StringComparison.Ordinal).Replace('\t', ' ').Replace('\n', ' ');
    }

    private static string Digits(string text) => string.Concat(text.Where(char.IsAsciiDigit));
}
