namespace Bakehouse.Book.Entries;

using Bakehouse.Book.Tables;
using Bakehouse.Domain;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Reminders;
using Microsoft.EntityFrameworkCore;
using NodaTime;

/// <summary>Answers a ring. The first answer wins; "done" ticks what the ring calls for in the same transaction.</summary>
internal static class RingEntry
{
    public static Outcome Decide(AnswerRing command, Desk desk)
    {
        var step = command.Ring[(command.Ring.IndexOf(':', StringComparison.Ordinal) + 1)..];
        if (StepKey.Parse(step) is not { } key || desk.Order(key.Order) is not { } order)
        {
            return Outcome.Refused(command.Ring, new Problem("ring", command.Ring, "The book knows no such ring.", "Load the page again."));
        }

        var given = Given(desk, command.Ring);
        var ring = Open(desk, command.Ring);
        if (ring is null || (ring.Due > desk.Now && given.LastOrDefault()?.Until > desk.Now))
        {
            return Outcome.Clash(command.Ring, First(desk, given, step, order), order);
        }

        if (Problem(command, desk, ring) is { } problem)
        {
            return Outcome.Refused(command.Ring, problem);
        }

        var row = Row(command, desk, order, given.Count + 1);
        return command.Kind == RingAnswerKind.Done && ring.Steps.Count > 0
            ? Ticked(command, desk, ring, row)
            : Outcome.Accepted(command.Ring, new Change(desk.State.Wall, book => book.RingAnswers.Add(row)), order);
    }

    private static Ring? Open(Desk desk, string id) => desk.State is { Week: { } week, Wall: { } wall }
        ? Rings.Of(week, wall, desk.State.Orders, desk.Shop, desk.State.Ticks, desk.State.Answers).FirstOrDefault(r => r.Id == id)
        : null;

    /// <summary>Why the ring is not open any more: who was first and what that person said.</summary>
    private static string First(Desk desk, List<RingAnswerRow> given, string step, Order order)
    {
        if (desk.TicksOf(order.Id).FirstOrDefault(t => t.Step == step) is { } tick)
        {
            return $"{desk.NameOf(tick.Person)} did it at {desk.Clock(tick.Done)}.";
        }

        return given.LastOrDefault(a => a.Undone is null) switch
        {
            { Kind: nameof(RingAnswerKind.Done) } done => $"{desk.NameOf(done.Person)} did it at {desk.Clock(done.At)}.",
            { Kind: nameof(RingAnswerKind.Later) } later => $"{desk.NameOf(later.Person)} moved it to {desk.Clock(later.Until ?? later.At)}.",
            { Kind: nameof(RingAnswerKind.Cannot) } cannot => $"{desk.NameOf(cannot.Person)} said at {desk.Clock(cannot.At)} that it can't be done: {cannot.Reason}",
            _ => "The plan has changed: this ring is withdrawn.",
        };
    }

    private static Problem? Problem(AnswerRing command, Desk desk, Ring ring) => command.Kind switch
    {
        RingAnswerKind.Later when !ring.MayWait(desk.Now) => new Problem(
            "ring",
            desk.Clock(desk.Now + Ring.Later),
            ring.SlackUntil is { } until ? $"It can't wait 10 minutes: at {desk.Clock(until)} the next thing begins." : "It can't wait.",
            "Do it now, or say that it can't be done."),
        RingAnswerKind.Cannot when string.IsNullOrWhiteSpace(command.Reason) => new Problem(
            "reason", "", "Nobody knows why it can't be done.", "Say why in a few words."),
        _ => null,
    };

    private static Outcome Ticked(AnswerRing command, Desk desk, Ring ring, RingAnswerRow row)
    {
        var ticked = desk.State.Ticks.Select(t => t.Step).ToHashSet(StringComparer.Ordinal);
        var ticks = ring.Steps.Where(s => !ticked.Contains(s)).Select(s => new Tick(s, desk.Now, command.Person)).ToList();
        var outcome = Ticking.Decide(command, desk, command.Ring, ticks);
        return outcome with
        {
            Change = outcome.Change! with
            {
                Write = book =>
                {
                    outcome.Change.Write(book);
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
        Until = command.Kind == RingAnswerKind.Later ? desk.Now + Ring.Later : null,
    };
}
