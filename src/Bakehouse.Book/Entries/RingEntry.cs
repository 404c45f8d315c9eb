namespace Bakehouse.Book.Entries;

using Bakehouse.Book.Tables;
using Bakehouse.Domain;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Reminders;
using Microsoft.EntityFrameworkCore;
using NodaTime;

/// <summary>Answers a ring. The first answer wins; "done" ticks the step in the same transaction.</summary>
internal static class RingEntry
{
    private static readonly Duration Later = Duration.FromMinutes(10);

    public static Outcome Decide(AnswerRing command, Desk desk)
    {
        var cut = command.Ring.IndexOf(':', StringComparison.Ordinal);
        var step = command.Ring[(cut + 1)..];
        if (cut < 0 || !Enum.TryParse<RingKind>(command.Ring[..cut], out _) || StepKey.Parse(step) is not { } key || desk.Order(key.Order) is not { } order)
        {
            return Outcome.Refused(command.Ring, new Problem("ring", command.Ring, "The book knows no such ring.", "Load the page again."));
        }

        var given = Given(desk, command.Ring);
        if (First(desk, given, step, order) is { } told)
        {
            return Outcome.Clash(command.Ring, told, order);
        }

        if (command.Kind == RingAnswerKind.Cannot && string.IsNullOrWhiteSpace(command.Reason))
        {
            return Outcome.Refused(command.Ring, new Problem("reason", "", "Nobody knows why it can't be done.", "Say why in a few words."));
        }

        var row = Row(command, desk, order, given.Count + 1);
        return command.Kind == RingAnswerKind.Done
            ? Ticked(command, desk, step, row)
            : Outcome.Accepted(command.Ring, new Change(desk.State.Wall, book => book.RingAnswers.Add(row)), order);
    }

    /// <summary>Who was first and what that person said, or null if the ring is still open.</summary>
    private static string? First(Desk desk, List<RingAnswerRow> given, string step, Order order)
    {
        if (given.LastOrDefault(a => a.Undone is null) is { } last && (last.Until is null || last.Until > desk.Now))
        {
            var who = desk.NameOf(last.Person);
            return last.Kind switch
            {
                nameof(RingAnswerKind.Done) => $"{who} did it at {desk.Clock(last.At)}.",
                nameof(RingAnswerKind.Later) => $"{who} moved it to {desk.Clock(last.Until ?? last.At)}.",
                _ => $"{who} said at {desk.Clock(last.At)} that it can't be done: {last.Reason}",
            };
        }

        return desk.TicksOf(order.Id).FirstOrDefault(t => t.Step == step) is { } tick
            ? $"{desk.NameOf(tick.Person)} did it at {desk.Clock(tick.Done)}."
            : null;
    }

    private static Outcome Ticked(AnswerRing command, Desk desk, string step, RingAnswerRow row)
    {
        var tick = TickEntry.Decide(new TickStep(command.Id, command.Person, command.Device, step, command.Person), desk);
        return tick.Change is not { } change ? tick : tick with
        {
            Subject = command.Ring,
            Change = change with
            {
                Write = book =>
                {
                    change.Write(book);
                    book.RingAnswers.Add(row);
                },
            },
        };
    }

    private static List<RingAnswerRow> Given(Desk desk, string ring)
    {
        using var book = desk.File.Context();
        return [.. book.RingAnswers.AsNoTracking().Where(a => a.Ring == ring).OrderBy(a => a.Turn)];
    }

    private static RingAnswerRow Row(AnswerRing command, Desk desk, Order order, int turn) => new()
    {
        Ring = command.Ring,
        Turn = turn,
        Order = order.Id,
        Kind = command.Kind.ToString(),
        Reason = command.Reason.Trim(),
        Person = command.Person,
        Device = command.Device,
        At = desk.Now,
        Until = command.Kind == RingAnswerKind.Later ? desk.Now + Later : null,
    };
}
