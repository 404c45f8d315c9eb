namespace Bakehouse.Book.Entries;

using Bakehouse.Book.Tables;
using Bakehouse.Domain;
using Bakehouse.Domain.Shops;
using Microsoft.EntityFrameworkCore;

/// <summary>Gives a person's calendar a new secret address, or stops the one there is.</summary>
internal static class CalendarEntry
{
    private const int SecretLength = 64;

    public static Outcome Decide(RenewCalendar command, Desk desk)
    {
        if (Refusal(command, command.For, desk) is { } refused)
        {
            return refused;
        }

        if (command.Secret.Length != SecretLength || !command.Secret.All(char.IsAsciiHexDigit))
        {
            throw new ArgumentException($"A secret is kept as {SecretLength} hexadecimal digits, not as {command.Secret.Length} signs.", nameof(command));
        }

        return Outcome.Accepted(command.For, new Change(desk.State.Wall, book =>
        {
            Stop(book, command.For, desk);
            book.Calendars.Add(new CalendarRow { Person = command.For, Secret = command.Secret.ToUpperInvariant(), Made = desk.Now });
        }));
    }

    public static Outcome Decide(StopCalendar command, Desk desk) => Refusal(command, command.For, desk)
        ?? Outcome.Accepted(command.For, new Change(desk.State.Wall, book => Stop(book, command.For, desk)));

    private static Outcome? Refusal(Command command, string person, Desk desk)
    {
        if (command.Person != person && desk.Shop.PersonOf(command.Person)?.Role != Role.Owner)
        {
            return Outcome.NotAllowed("That calendar is somebody else’s. Ask the owner.");
        }

        return desk.Shop.PersonOf(person) is null
            ? Outcome.Refused(person, new Problem("for", person, "Nobody of that name works here.", "Say whose calendar it is."))
            : null;
    }

    private static void Stop(BookContext book, string person, Desk desk)
    {
        foreach (var row in book.Calendars.Where(c => c.Person == person && c.Ended == null))
        {
            row.Ended = desk.Now;
        }
    }
}
