namespace Bakehouse.Book.Entries;

using System.Globalization;
using Bakehouse.Book.Tables;
using Bakehouse.Domain;
using Bakehouse.Domain.Freezer;
using Bakehouse.Domain.Slips;
using NodaTime;

/// <summary>Writes what was counted in the freezer, and says what a slip takes from there. No plan depends on it.</summary>
internal static class SparesEntry
{
    public static Outcome Decide(CountSpares command, Desk desk)
    {
        var subject = command.Id.ToString("N", CultureInfo.InvariantCulture);
        var problems = SpareChecks.Problems(command.Spares, desk.Now.InZone(DateTimeZoneProviders.Tzdb[desk.Shop.Zone]).Date);
        return problems.Count > 0
            ? Outcome.Refused(subject, problems.Count == 1 ? problems[0].Sentence : $"{problems.Count.ToString(CultureInfo.InvariantCulture)} things need a look.", problems)
            : Outcome.Accepted(subject, new Change(desk.State.Wall, book => book.Spares.Add(SparesRow.Of(command, desk.Now))));
    }

    /// <summary>The slip with what it takes; refused for a cake that must avoid something, since the book does not know what those sponges contain.</summary>
    public static Outcome Take(Slip slip, Desk desk, Func<Slip, Outcome> write)
    {
        if (FromFreezer.Avoiding(slip, desk.State.Orders) is { } avoiding)
        {
            return Outcome.Refused(slip.Id.ToString("N", CultureInfo.InvariantCulture), new Problem(
                "spare", avoiding.Number.ToString(CultureInfo.InvariantCulture), $"Order {avoiding.Number.ToString(CultureInfo.InvariantCulture)} must avoid something, and what spare sponges contain is not in the book.", "Bake it again."));
        }

        var from = FromFreezer.For(slip, desk.State.Orders, desk.Shop, desk.State.Freezer);
        return write(slip with { Took = from.Taken.Count > 0 ? from.Taken : null });
    }
}
