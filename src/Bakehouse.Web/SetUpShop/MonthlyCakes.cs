namespace Bakehouse.Web.SetUpShop;

using System.Globalization;

/// <summary>Small cakes a week in one line: "6" all the year, "6, May-Jul 10, Dec 12" with months of their own.</summary>
public static class MonthlyCakes
{
    private const int Most = 200;

    private static readonly string[] Months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

    /// <summary>Twelve numbers, January first, null for none at all; or the piece that can't be read.</summary>
    public static (IReadOnlyList<int>? ByMonth, string? Unread) Read(string text)
    {
        var byMonth = new int[12];
        foreach (var piece in text.Split([',', ';', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).OrderBy(p => p.Contains(' ', StringComparison.Ordinal)))
        {
            var at = piece.LastIndexOf(' ');
            var months = at < 0 ? (From: 0, To: 11) : Span(piece[..at]);
            if (months.From < 0 || months.To < months.From || !int.TryParse(piece.AsSpan(at + 1), NumberStyles.None, CultureInfo.InvariantCulture, out var most) || most > Most)
            {
                return (null, piece);
            }

            Array.Fill(byMonth, most, months.From, months.To - months.From + 1);
        }

        return (Array.TrueForAll(byMonth, n => n == 0) ? null : byMonth, null);
    }

    /// <summary>The line for those numbers: what most months have, then the others.</summary>
    public static string Write(IReadOnlyList<int>? byMonth)
    {
        if (byMonth is null)
        {
            return "";
        }

        var usual = byMonth.GroupBy(n => n).OrderByDescending(g => g.Count()).ThenBy(g => g.Key).First().Key;
        var pieces = new List<string>();
        if (usual > 0)
        {
            pieces.Add(usual.ToString(CultureInfo.InvariantCulture));
        }

        for (var from = 0; from < 12; from++)
        {
            if (byMonth[from] != usual)
            {
                var to = from;
                while (to < 11 && byMonth[to + 1] == byMonth[from])
                {
                    to++;
                }

                pieces.Add(string.Create(CultureInfo.InvariantCulture, $"{Months[from]}{(to > from ? "-" + Months[to] : "")} {byMonth[from]}"));
                from = to;
            }
        }

        return string.Join(", ", pieces);
    }

    private static (int From, int To) Span(string text)
    {
        var ends = text.Split(['-', '\u2013'], StringSplitOptions.TrimEntries);
        return ends.Length > 2 ? (-1, -1) : (Month(ends[0]), Month(ends[^1]));
    }

    /// <summary>By its first three letters at least: "Sept" is September.</summary>
    private static int Month(string word) => word.Length < 3 ? -1
        : Array.FindIndex(CultureInfo.InvariantCulture.DateTimeFormat.MonthNames, m => m.Length > 0 && m.StartsWith(word, StringComparison.OrdinalIgnoreCase));
}
