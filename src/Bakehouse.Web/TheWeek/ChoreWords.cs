namespace Bakehouse.Web.TheWeek;

using Bakehouse.Domain.Chores;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.Shell;
using NodaTime;

/// <summary>A chore in words.</summary>
internal static class ChoreWords
{
    /// <summary>"Tue, Fri 06:00–07:30, until Sat 19 Dec" or "Wed 14 Oct 06:00–07:30".</summary>
    public static string When(Chore chore, Shop shop)
    {
        var words = Words.Of(shop);
        var hours = $"{words.Time(chore.From)}–{words.Time(chore.To)}";
        if (chore.Days.Count == 0)
        {
            return $"{words.Day(chore.First)} {hours}";
        }

        var days = chore.Days.Count == 7 ? "every day" : string.Join(", ", chore.Days.Order().Select(Short));
        return $"{days} {hours}{(chore.Last is { } last ? $", until {words.Day(last)}" : "")}";
    }

    /// <summary>"Petra, Oven 1, Fridge 1: 2 of 4 shelves".</summary>
    public static string Takes(Chore chore, Shop shop) => string.Join(", ",
    [
        .. chore.People.Select(p => shop.PersonOf(p)?.Name ?? p),
        .. shop.Ovens.Where(o => chore.Machines.Contains(o.Id)).Select(o => o.Name),
        .. shop.Bowls.Where(b => chore.Machines.Contains(b.Id)).Select(b => b.Name),
        .. shop.Shelves.GroupBy(s => s.Unit).Where(u => u.Any(s => chore.Shelves.Contains(s.Id)))
            .Select(u => $"{u.Key}: {u.Count(s => chore.Shelves.Contains(s.Id))} of {u.Count()} shelves"),
    ]);

    /// <summary>"Mon".</summary>
    public static string Short(IsoDayOfWeek day) => day.ToString()[..3];
}
