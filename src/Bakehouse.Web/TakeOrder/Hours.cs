namespace Bakehouse.Web.TakeOrder;

using System.Globalization;
using System.Text.RegularExpressions;
using NodaTime;

/// <summary>Reads an hour as it is said: "14", "14:30", "14.30", "1430", "2pm", "2:30 pm".</summary>
public static partial class Hours
{
    /// <summary>The time, or null if it can't be read.</summary>
    public static LocalTime? Read(string text)
    {
        var match = Said().Match(text.Trim().ToLowerInvariant());
        if (!match.Success)
        {
            return null;
        }

        var hour = int.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture);
        var minute = match.Groups[2].Success ? int.Parse(match.Groups[2].Value, CultureInfo.InvariantCulture) : 0;
        var half = match.Groups[3].Value;
        if (half.Length > 0 && (hour is < 1 or > 12))
        {
            return null;
        }

        hour = half switch { "am" => hour % 12, "pm" => (hour % 12) + 12, _ => hour };
        return hour is >= 0 and < 24 && minute is >= 0 and < 60 ? new LocalTime(hour, minute) : null;
    }

    /// <summary>The hour of a handover: whoever says "at 2" to a bakery means the afternoon. A bare 1 to 6 is read so, "06:00" and "6 am" are not.</summary>
    public static LocalTime? OfHandover(string text) =>
        Read(text) is { } read ? text.Trim() is [>= '1' and <= '6'] ? read.PlusHours(12) : read : null;

    [GeneratedRegex(@"^(?<a>\d{1,2})(?:[:.h ]?(?<b>\d{2}))?\s*(?<c>am|pm)?$", RegexOptions.None, 1000)]
    private static partial Regex Said();
}
