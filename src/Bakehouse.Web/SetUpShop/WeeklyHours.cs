namespace Bakehouse.Web.SetUpShop;

using System.Globalization;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.TakeOrder;
using NodaTime;

/// <summary>Weekly hours in one line: "Mon-Fri 06:00-14:00, Sat 07:00-13:00". A break is two rows of one day.</summary>
public static class WeeklyHours
{
    private static readonly string[] Names = ["mon", "tue", "wed", "thu", "fri", "sat", "sun"];

    /// <summary>The rows, or the piece that can't be read.</summary>
    public static (IReadOnlyList<Shift> Rows, string? Unread) Read(string text)
    {
        var rows = new List<Shift>();
        foreach (var piece in text.Split([',', ';', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var at = piece.LastIndexOf(' ');
            var times = at > 0 ? piece[(at + 1)..].Split('-', '–') : [];
            var days = at > 0 ? Days(piece[..at]) : [];
            if (days.Count == 0 || times.Length != 2 || Hours.Read(times[0]) is not { } from || Hours.Read(times[1]) is not { } to || from >= to)
            {
                return ([], piece);
            }

            rows.AddRange(days.Select(d => new Shift(d, from, to)));
        }

        return (rows, null);
    }

    /// <summary>The line for those rows; days with the same hours stand together.</summary>
    public static string Write(IEnumerable<Shift> rows)
    {
        var pieces = new List<(IsoDayOfWeek First, IsoDayOfWeek Last, LocalTime From, LocalTime To)>();
        foreach (var row in rows.OrderBy(r => r.From).ThenBy(r => r.To).ThenBy(r => r.Day))
        {
            if (pieces.Count > 0 && pieces[^1] is var p && p.From == row.From && p.To == row.To && (int)p.Last + 1 == (int)row.Day)
            {
                pieces[^1] = p with { Last = row.Day };
            }
            else
            {
                pieces.Add((row.Day, row.Day, row.From, row.To));
            }
        }

        return string.Join(", ", pieces.OrderBy(p => p.First).ThenBy(p => p.From).Select(p =>
            $"{Short(p.First)}{(p.First == p.Last ? "" : "-" + Short(p.Last))} {Say(p.From)}-{Say(p.To)}"));
    }

    /// <summary>"Mon", "Tue-Fri"; empty if that is no day.</summary>
    internal static IReadOnlyList<IsoDayOfWeek> Days(string text)
    {
        var ends = text.Split('-', '–').Select(d => Array.FindIndex(Names, n => d.Trim().StartsWith(n, StringComparison.OrdinalIgnoreCase))).ToArray();
        if (ends.Length is < 1 or > 2 || ends.Contains(-1))
        {
            return [];
        }

        var many = ((ends[^1] - ends[0] + 7) % 7) + 1;
        return [.. Enumerable.Range(0, many).Select(i => (IsoDayOfWeek)(((ends[0] + i) % 7) + 1))];
    }

    internal static string Short(IsoDayOfWeek day) => day.ToString()[..3];

    internal static string Say(LocalTime time) => time.ToString("HH:mm", CultureInfo.InvariantCulture);
}
