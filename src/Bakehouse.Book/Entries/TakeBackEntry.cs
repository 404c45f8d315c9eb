namespace Bakehouse.Book.Entries;

using System.Globalization;
using Bakehouse.Book.Tables;
using Bakehouse.Domain;
using Bakehouse.Domain.Planning;
using Microsoft.EntityFrameworkCore;

/// <summary>Takes a move back: every row that it moved goes where it was, if all of that can stand there now.</summary>
internal static class TakeBackEntry
{
    public static Outcome Decide(TakeBackMove command, Desk desk)
    {
        using var book = desk.File.Context();
        if (book.Pins.AsNoTracking().FirstOrDefault(p => p.Move == command.Move && p.Undone == null) is not { } pin)
        {
            return Outcome.Refused(Text(command.Move), new Problem("move", Text(command.Move), "That move does not stand any more.", "Look at the week again."));
        }

        var row = new StepRow(pin.Step, 0, pin.Pin().People, pin.Machine, null);
        return PinEntry.Refusal(command, row, row.People, desk) ?? Write(command, desk, pin);
    }

    private static Outcome Write(TakeBackMove command, Desk desk, PinRow pin)
    {
        var words = new PlanWords(desk);
        var moved = WallMoves.ToCome(pin.Moved(), desk.State.Week!);
        var others = desk.State.Hand with { Pins = [.. desk.State.Pins.Where(p => p.Step != pin.Step)] };
        var wall = moved.Plan is { Steps.Count: 0, Holds.Count: 0 } ? desk.State.Wall! : WallMoves.Back(desk.State.Wall!, moved);
        var week = Week.From(desk.State.Orders, desk.Shop, desk.State.Ticks, wall, desk.Now, others);
        return ReferenceEquals(wall, desk.State.Wall) || (week.Reference is { } plan && Judge.Examine(week, plan).Feasible)
            ? Outcome.Accepted(pin.Step, new Change(wall, book => PinEntry.LetGo(book, pin.Step, command, desk)))
            : Outcome.Refused(pin.Step, new Problem("move", words.Name(pin.Step), $"The plan has moved on since: {words.Name(pin.Step)} can’t go back to where it was.", "Move it by hand, or unpin it."));
    }

    private static string Text(Guid id) => id.ToString("N", CultureInfo.InvariantCulture);
}
