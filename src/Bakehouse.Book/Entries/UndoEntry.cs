namespace Bakehouse.Book.Entries;

using System.Globalization;
using Bakehouse.Book.Tables;
using Bakehouse.Domain;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Microsoft.EntityFrameworkCore;

/// <summary>Takes a tick back: the row stays, with who took it back and when. A ring that was answered by it may ring again.</summary>
internal static class UndoEntry
{
    public static Outcome Decide(UndoTick command, Desk desk)
    {
        var order = StepKey.Parse(command.Step) is { } key ? desk.Order(key.Order) : null;
        var ticks = order is null ? [] : desk.TicksOf(order.Id);
        if (order is null || ticks.All(t => t.Step != command.Step))
        {
            return Outcome.Refused(command.Step, new Problem("step", command.Step, "This step is not ticked.", "Load the work list again."));
        }

        if (order.Stage is not (Stage.InWork or Stage.Ready or Stage.HandedOver or Stage.Booked or Stage.Kept))
        {
            return Outcome.Refused(command.Step, new Problem("order", order.Number.ToString(CultureInfo.InvariantCulture), "This order is not being made any more.", "Take it up again first."));
        }

        return Write(command, desk, order, [.. ticks.Where(t => t.Step != command.Step)]);
    }

    private static Outcome Write(UndoTick command, Desk desk, Order order, List<Tick> left)
    {
        // The order may be handed over and so out of the plan: compiled as one in work of which nothing is done it tells its last steps.
        var ticks = desk.State.Ticks.Where(t => StepKey.Parse(t.Step)?.Order != order.Id).Concat(left).ToList();
        var ends = Week.From([order with { Stage = Stage.InWork }], desk.Shop, [], null, desk.Now).Orders[0];
        var after = StageChange.Of(order, StageChange.After(order.Stage, left, ends));
        var followed = Follow.Of(desk, [after], ticks);
        return Outcome.Accepted(command.Step, new Change(followed.Wall, book =>
        {
            TakeBack(book, command, desk);
            StageChange.Write(book, command, desk, order, after);
        }), after, followed.Late, followed.Message);
    }

    private static void TakeBack(BookContext book, UndoTick command, Desk desk)
    {
        var tick = book.Ticks.Single(t => t.Step == command.Step && t.Undone == null);
        tick.Undone = desk.Now;
        tick.UndonePerson = command.Person;
        var suffix = ":" + command.Step;
        foreach (var answer in book.RingAnswers.Where(a => a.Ring.EndsWith(suffix) && a.Undone == null && a.Kind == nameof(Domain.Reminders.RingAnswerKind.Done)))
        {
            answer.Undone = desk.Now;
        }
    }
}
