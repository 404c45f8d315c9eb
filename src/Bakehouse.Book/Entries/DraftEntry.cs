namespace Bakehouse.Book.Entries;

using System.Globalization;
using Bakehouse.Book.Tables;
using Bakehouse.Domain;
using Microsoft.EntityFrameworkCore;

/// <summary>Keeps what is typed so far on one screen. No other screen sees it, so nothing else is told.</summary>
internal static class DraftEntry
{
    // An order with forty tiers and long notes is under 40,000 characters.
    private const int Longest = 200_000;

    public static Outcome Decide(KeepDraft command, Desk desk)
    {
        if (command.Text?.Length > Longest)
        {
            return Outcome.Refused("", new Problem("draft", command.Text.Length.ToString(CultureInfo.InvariantCulture), $"A draft holds at most {Longest} characters.", "Shorten the notes."));
        }

        return Outcome.Accepted("", new Change(desk.State.Wall, book => Write(book, command, desk), MovesHead: false));
    }

    private static void Write(BookContext book, KeepDraft command, Desk desk)
    {
        var kept = book.Drafts.Find(command.Device);
        switch (kept, command.Text)
        {
            case (null, { } text):
                book.Drafts.Add(new DraftRow { Device = command.Device, Text = text, Person = command.Person, Written = desk.Now });
                break;
            case ({ } row, { } text):
                (row.Text, row.Person, row.Written) = (text, command.Person, desk.Now);
                break;
            case ({ } row, null):
                book.Drafts.Remove(row);
                break;
        }
    }
}
