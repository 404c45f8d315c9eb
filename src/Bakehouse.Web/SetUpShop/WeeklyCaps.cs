namespace Bakehouse.Web.SetUpShop;

using System.Globalization;
using Bakehouse.Domain.Shops;

/// <summary>Caps of days in one line: "Sat 2, Sun 1", "Mon-Thu 3".</summary>
public static class WeeklyCaps
{
    /// <summary>The caps, or the piece that can't be read.</summary>
    public static (IReadOnlyList<DayCap> Caps, string? Unread) Read(string text)
    {
        var caps = new List<DayCap>();
        foreach (var piece in text.Split([',', ';', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var at = piece.LastIndexOf(' ');
            var days = at > 0 ? WeeklyHours.Days(piece[..at]) : [];
            if (days.Count == 0 || !int.TryParse(piece.AsSpan(at + 1), NumberStyles.None, CultureInfo.InvariantCulture, out var most) || days.Any(d => caps.Exists(c => c.Day == d)))
            {
                return ([], piece);
            }

            caps.AddRange(days.Select(d => new DayCap(d, most)));
        }

        return ([.. caps.OrderBy(c => c.Day)], null);
    }

    /// <summary>The line for those caps; neighbours with the same number stand together.</summary>
    public static string Write(IReadOnlyList<DayCap> caps)
    {
        var pieces = new List<(DayCap First, DayCap Last)>();
        foreach (var cap in caps.OrderBy(c => c.Day))
        {
            if (pieces.Count > 0 && pieces[^1] is var p && p.Last.Most == cap.Most && (int)p.Last.Day + 1 == (int)cap.Day)
            {
                pieces[^1] = (p.First, cap);
            }
            else
            {
                pieces.Add((cap, cap));
            }
        }

        return string.Join(", ", pieces.Select(p => string.Create(
            CultureInfo.InvariantCulture, $"{WeeklyHours.Short(p.First.Day)}{(p.First == p.Last ? "" : "-" + WeeklyHours.Short(p.Last.Day))} {p.First.Most}")));
    }
}
