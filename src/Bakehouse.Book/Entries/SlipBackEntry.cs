namespace Bakehouse.Book.Entries;

using System.Globalization;
using Bakehouse.Book.Tables;
using Bakehouse.Domain;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Slips;
using Microsoft.EntityFrameworkCore;
using NodaTime;

/// <summary>Takes a slip back: every row that it moved goes where it was, if all of that can stand there; else the plan is mended without it.</summary>
internal static class SlipBackEntry
{
    public static Outcome Decide(TakeBackSlip command, Desk desk)
    {
        using var book = desk.File.Context();
        if (book.Slips.AsNoTracking().FirstOrDefault(s => s.Id == command.Slip && s.Undone == null) is not { } row)
        {
            return Outcome.Refused(Subject(command), new Problem("slip", Subject(command), "That does not stand any more.", "Look at the kitchen again."));
        }

        var slip = row.Slip();
        if (SlipEntry.Refusal(slip.Kind, command, desk) is { } refused)
        {
            return refused;
        }

        var hand = desk.State.Hand with { Slips = [.. desk.State.Slips.Where(s => s.Id != slip.Id)] };
        return slip.Kind == SlipKind.Pickup ? Hour(command, desk, row, hand) : Write(command, desk, hand, Back(desk, desk.State.Orders, row, hand));
    }

    private static Outcome Write(TakeBackSlip command, Desk desk, ByHand hand, Wall? back)
    {
        var followed = back is null ? Follow.Mended(desk, hand) : new Follow(back, new Dictionary<string, int>(), "");
        return Outcome.Accepted(Subject(command), new Change(followed.Wall, book => LetGo(book, command, desk)), late: followed.Late, message: followed.Message);
    }

    /// <summary>The wall as it was, if it can hang again; else null. With a clock behind the book nothing is hung.</summary>
    private static Wall? Back(Desk desk, IReadOnlyList<Order> orders, SlipRow row, ByHand hand)
    {
        if (desk.ClockIsBehind || desk.State.Wall is not { } wall || row.Moved() is not { } moved)
        {
            return null;
        }

        var week = Week.From(orders, desk.Shop, desk.State.Ticks, WallMoves.Restored(wall, WallMoves.NotTicked(moved, desk.State.Ticks)), desk.Now, hand);
        return week.Reference is { } plan && Judge.Examine(week, plan).Feasible ? new Wall(week.Epoch, plan) : null;
    }

    /// <summary>The hour agreed before, if the order still stands at the one that the slip gave it.</summary>
    private static Outcome Hour(TakeBackSlip command, Desk desk, SlipRow row, ByHand hand)
    {
        var slip = row.Slip();
        var zone = DateTimeZoneProviders.Tzdb[desk.Shop.Zone];
        var now = desk.Order(Guid.ParseExact(slip.About[0], "N"));
        if (now is null || !Stages.IsPlanned(now.Stage) || now.Handover.At.InZoneLeniently(zone).ToInstant() != slip.Until)
        {
            return Outcome.Refused(Subject(command), new Problem("order", now?.Number.ToString(CultureInfo.InvariantCulture) ?? "", "That order has moved on since.", "Change its hour on its own page."));
        }

        var after = now with { Version = now.Version + 1, Handover = now.Handover with { At = slip.From!.Value.InZone(zone).LocalDateTime } };
        return SlipEntry.Pickup(command, Subject(command), desk, now, after, hand, Back(desk, desk.OrdersWith(after), row, hand), (book, _) => LetGo(book, command, desk));
    }

    private static void LetGo(BookContext book, TakeBackSlip command, Desk desk) =>
        book.Slips.Where(s => s.Id == command.Slip && s.Undone == null).ExecuteUpdate(s => s
            .SetProperty(r => r.Undone, desk.Now)
            .SetProperty(r => r.UndonePerson, command.Person));

    private static string Subject(TakeBackSlip command) => command.Slip.ToString("N", CultureInfo.InvariantCulture);
}
