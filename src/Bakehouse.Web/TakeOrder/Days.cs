namespace Bakehouse.Web.TakeOrder;

using System.Globalization;
using System.Text.RegularExpressions;
using NodaTime;

/// <summary>
/// Reads a day as it is said at the counter: "fri", "tomorrow", "24", "24/10", "24 oct", "Sat 24 Oct", "2026-10-24", "+3".
/// A day without a year is the next one from today on. A weekday that contradicts the date is a problem, never a guess.
/// </summary>
public static partial class Days
{
    private static readonly string[] Months = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];
    private static readonly string[] Weekdays = ["mon", "tue", "wed", "thu", "fri", "sat", "sun"];

    /// <summary>The day, or why it can't be read.</summary>
    /// <param name="monthFirst">True where 10/24 is said for the 24th of October.</param>
    public static (LocalDate? Day, string Why) Read(string text, LocalDate today, bool monthFirst = false)
    {
        var said = text.Trim().ToLowerInvariant();
        if (said.Length == 0)
        {
            return (null, "No day yet.");
        }

        if (Plus().Match(said) is { Success: true } plus)
        {
            return (today.PlusDays(Number(plus.Groups[1])), "");
        }

        if (said is "today" or "tomorrow")
        {
            return (today.PlusDays(said == "today" ? 0 : 1), "");
        }

        if (Iso().Match(said) is { Success: true } iso)
        {
            return Made(Number(iso.Groups[1]), Number(iso.Groups[2]), Number(iso.Groups[3]));
        }

        var weekday = WeekdayIn(ref said);
        return said.Length == 0 && weekday is { } day ? (today.Next(day), "") : Checked(Dated(said, today, monthFirst), weekday);
    }

    private static (LocalDate? Day, string Why) Dated(string said, LocalDate today, bool monthFirst)
    {
        if (OnlyDay().Match(said) is { Success: true } only)
        {
            return NextDayOfMonth(Number(only.Groups[1]), today);
        }

        if (Slashed().Match(said) is { Success: true } s)
        {
            var (day, month) = monthFirst ? (Number(s.Groups[2]), Number(s.Groups[1])) : (Number(s.Groups[1]), Number(s.Groups[2]));
            return WithYear(s.Groups[3], month, day, today);
        }

        if (Named().Match(said) is { Success: true } n && Array.IndexOf(Months, n.Groups[2].Value[..3]) is >= 0 and var at)
        {
            return WithYear(n.Groups[3], at + 1, Number(n.Groups[1]), today);
        }

        return (null, "That is no day that can be read here.");
    }

    private static (LocalDate? Day, string Why) WithYear(Group year, int month, int day, LocalDate today)
    {
        if (year.Success)
        {
            return Made(Number(year) is < 100 and var y ? 2000 + y : Number(year), month, day);
        }

        var made = Made(today.Year, month, day);
        return made.Day is null || made.Day >= today ? made : Made(today.Year + 1, month, day);
    }

    private static (LocalDate? Day, string Why) NextDayOfMonth(int day, LocalDate today)
    {
        for (var month = today.With(DateAdjusters.StartOfMonth); month < today.PlusMonths(13); month = month.PlusMonths(1))
        {
            var made = Made(month.Year, month.Month, day);
            if (made.Day >= today)
            {
                return made;
            }
        }

        return (null, $"No month has a day {day}.");
    }

    private static (LocalDate? Day, string Why) Made(int year, int month, int day) =>
        month is >= 1 and <= 12 && year is >= 1900 and <= 9000 && day >= 1 && day <= CalendarSystem.Iso.GetDaysInMonth(year, month)
            ? (new LocalDate(year, month, day), "")
            : (null, $"There is no day {day} in month {month} of {year}.");

    private static (LocalDate? Day, string Why) Checked((LocalDate? Day, string Why) read, IsoDayOfWeek? weekday) =>
        read.Day is { } day && weekday is { } said && day.DayOfWeek != said
            ? (null, $"{day.ToString("d MMMM uuuu", CultureInfo.InvariantCulture)} is a {day.DayOfWeek}, not a {said}.")
            : read;

    private static IsoDayOfWeek? WeekdayIn(ref string said)
    {
        var match = Worded().Match(said);
        if (!match.Success || Array.IndexOf(Weekdays, match.Groups[1].Value[..3]) is not (>= 0 and var at))
        {
            return null;
        }

        said = match.Groups[2].Value.Trim();
        return (IsoDayOfWeek)(at + 1);
    }

    private static int Number(Group group) => int.Parse(group.Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^\+\s?(?<a>\d{1,3})$", RegexOptions.None, 1000)]
    private static partial Regex Plus();

    [GeneratedRegex(@"^(?<a>\d{4})-(?<b>\d{1,2})-(?<c>\d{1,2})$", RegexOptions.None, 1000)]
    private static partial Regex Iso();

    [GeneratedRegex(@"^(?<a>\d{1,2})(?:st|nd|rd|th|\.)?$", RegexOptions.None, 1000)]
    private static partial Regex OnlyDay();

    [GeneratedRegex(@"^(?<a>\d{1,2})[/.\-](?<b>\d{1,2})[/.\-]?(?<c>\d{4}|\d{2})?$", RegexOptions.None, 1000)]
    private static partial Regex Slashed();

    [GeneratedRegex(@"^(?<a>\d{1,2})(?:st|nd|rd|th|\.)?\s*(?<b>[a-z]{3,9})\.?,?\s*(?<c>\d{4})?$", RegexOptions.None, 1000)]
    private static partial Regex Named();

    [GeneratedRegex(@"^(?<a>mon|tue|tues|wed|thu|thur|thurs|fri|sat|sun|monday|tuesday|wednesday|thursday|friday|saturday|sunday)\b\.?,?(?<b>.*)$", RegexOptions.None, 1000)]
    private static partial Regex Worded();
}
