namespace Bakehouse.Domain.Chores;

using System.Globalization;
using Bakehouse.Domain.Shops;

/// <summary>Everything that may be wrong with a chore, in one list.</summary>
public static class ChoreChecks
{
    private static readonly LocalDate Earliest = new(2000, 1, 1);
    private static readonly LocalDate Latest = new(2100, 1, 1);

    /// <summary>Each problem with its value, the limit and what to try; empty if it can be written.</summary>
    public static IReadOnlyList<Problem> Problems(Chore chore, Shop shop) =>
    [
        .. ShopChecks.Named("name", chore.Name),
        .. Times(chore),
        .. Days(chore),
        .. Takes(chore),
        .. Unknown("people", chore.People, shop.People.Select(p => p.Id)),
        .. Unknown("ovens and bowls", chore.Machines, [.. shop.Ovens.Select(o => o.Id), .. shop.Bowls.Select(b => b.Id)]),
        .. Unknown("shelves", chore.Shelves, shop.Shelves.Select(s => s.Id)),
    ];

    private static IEnumerable<Problem> Times(Chore chore)
    {
        if (chore.From >= chore.To)
        {
            yield return new Problem("to", ShopChecks.Clock(chore.To), $"It ends at {ShopChecks.Clock(chore.To)}, before it begins at {ShopChecks.Clock(chore.From)}.", "Turn the two times round; past midnight it is two.");
        }
    }

    private static IEnumerable<Problem> Days(Chore chore)
    {
        if (chore.First < Earliest || chore.First >= Latest)
        {
            yield return new Problem("first day", Say(chore.First), "That is not a day of this shop.", "Give a day of the next years.");
        }

        if (chore.Last is { } last && last < chore.First)
        {
            yield return new Problem("last day", Say(last), $"The last day is before the first, {Say(chore.First)}.", "Give a later last day, or none.");
        }
        else if (chore is { Days.Count: > 0, Last: { } end } && Period.DaysBetween(chore.First, end) < 7 && !Enumerable.Range(0, 7).Any(n => chore.IsOn(chore.First.PlusDays(n))))
        {
            yield return new Problem("days", string.Join(", ", chore.Days), $"None of these days lies between {Say(chore.First)} and {Say(end)}.", "Tick another day, or give a later last day.");
        }

        if (chore.Days.Any(d => d is < IsoDayOfWeek.Monday or > IsoDayOfWeek.Sunday))
        {
            yield return new Problem("days", string.Join(", ", chore.Days), "That is no day of the week.", "Tick days from Monday to Sunday.");
        }
    }

    private static IEnumerable<Problem> Takes(Chore chore)
    {
        if (chore.People.Count + chore.Machines.Count + chore.Shelves.Count == 0)
        {
            yield return new Problem("takes", "", "It takes nobody and nothing, so it changes no plan.", "Tick who is needed, or an oven, a bowl or a shelf.");
        }
    }

    private static IEnumerable<Problem> Unknown(string where, IReadOnlyList<string> named, IEnumerable<string> known) =>
        named.Except(known).Select(n => new Problem(where, n, $"The shop has no {n}.", "Tick another."));

    private static string Say(LocalDate day) => day.ToString("ddd d MMM uuuu", CultureInfo.InvariantCulture);
}
