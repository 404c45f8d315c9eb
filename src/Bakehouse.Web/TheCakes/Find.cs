namespace Bakehouse.Web.TheCakes;

using System.Globalization;
using System.Text;
using Bakehouse.Domain.Orders;
using Bakehouse.Web.Shell;
using Bakehouse.Web.TakeOrder;

/// <summary>Finds orders by name, number, telephone or day, whatever the accents and capitals.</summary>
public static class Find
{
    /// <summary>By handover, the next first. Words are all looked for; each may be in another place.</summary>
    /// <param name="all">Also the ones handed over or cancelled; a search always looks at all.</param>
    public static IReadOnlyList<Order> In(IEnumerable<Order> orders, string text, bool all, Words words, string country)
    {
        var asked = Fold(text).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return [.. orders
            .Where(o => all || asked.Length > 0 || o.Stage is not (Stage.HandedOver or Stage.Cancelled))
            .Where(o => Fits(o, asked, words, country))
            .OrderBy(o => o.Handover.At).ThenBy(o => o.Number)];
    }

    private static bool Fits(Order order, string[] asked, Words words, string country)
    {
        if (asked.Length == 0)
        {
            return true;
        }

        var digits = string.Concat(asked.SelectMany(a => a).Where(char.IsAsciiDigit)).TrimStart('0');
        var all = string.Concat(asked).All(c => char.IsAsciiDigit(c) || c is '+' or '-' or '(' or ')');
        if (all && digits.Length > 0 && order.Customer.Phone.Contains(digits, StringComparison.Ordinal))
        {
            return true;
        }

        var at = order.Handover.At;
        var hay = Fold(string.Create(
            CultureInfo.InvariantCulture,
            $"{order.Number} {order.Customer.Name} {Phone.Show(order.Customer.Phone, country)} {words.LongDay(at.Date)} {words.Day(at.Date)} {at.Day}/{at.Month}"));
        return asked.All(a => hay.Contains(a, StringComparison.Ordinal));
    }

    private static string Fold(string text) => string.Concat(text.Normalize(NormalizationForm.FormD)
        .Where(c => CharUnicodeInfo.GetUnicodeCategory(c) != UnicodeCategory.NonSpacingMark)).ToLowerInvariant();
}
