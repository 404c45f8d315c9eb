namespace Bakehouse.Book.Entries;

using System.Globalization;
using Bakehouse.Book.Tables;
using Bakehouse.Domain;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Reminders;
using Microsoft.EntityFrameworkCore;
using NodaTime;

/// <summary>
/// Takes a tick back: the row stays, with who took it back and when. A ring that was answered by it may ring again. A step that nobody
/// ticked and that is taken as done is taken back in the same way: then it is not assumed any more.
/// </summary>
internal static class UndoEntry
{
    public static Outcome Decide(UndoTick command, Desk desk)
    {
        var order = StepKey.Parse(command.Step) is { } key ? desk.Order(key.Order) : null;
        var ticks = order is null ? [] : desk.TicksOf(order.Id);
        var ticked = ticks.Any(t => t.Step == command.Step);
        if (order is null || (!ticked && !IsAssumed(command.Step, desk)))
        {
            return Outcome.Refused(command.Step, new Problem("step", command.Step, "This step is not ticked.", "Load the work list again."));
        }

        if (order.Stage is not (Stage.InWork or Stage.Ready or Stage.HandedOver or Stage.Booked or Stage.Kept))
        {
            return Outcome.Refused(command.Step, new Problem("order", order.Number.ToString(CultureInfo.InvariantCulture), "This order is not being made any more.", "Take it up again first."));
        }

        return Write(command, desk, order, [.. ticks.Where(t => t.Step != command.Step)], ticked);
    }

    private static bool IsAssumed(string step, Desk desk) => desk.State is { Week: { } week, Wall: { } wall }
        && new AssumedNow(week, wall, desk.State.Ticks, desk.Now, desk.State.NotDone).Contains(step);

    private static Outcome Write(UndoTick command, Desk desk, Order order, List<Tick> left, bool ticked)
    {
        // The order may be handed over and so out of the plan: compiled as one in work of which nothing is done it tells its last steps.
        var ticks = desk.State.Ticks.Where(t => StepKey.Parse(t.Step)?.Order != order.Id).Concat(left).ToList();
        var ends = Week.From([order with { Stage = Stage.InWork }], desk.Shop, [], null, desk.Now).Orders[0];
        var after = StageChange.Of(order, StageChange.After(order.Stage, left, ends));
        var followed = Follow.Of(Before(command, desk), [after], ticks);
        return Outcome.Accepted(command.Step, new Change(followed.Wall, book =>
        {
            if (ticked)
            {
                TakeBack(book, command, desk);
            }
            else
            {
                book.Ticks.Add(Denied(command, desk, order.Id));
            }

            StageChange.Write(book, command, desk, order, after);
        }), after, followed.Late, followed.Message);
    }

    /// <summary>The desk as it was before the tick, as far as that is known: what the tick moved on the wall goes back, if it can stand.</summary>
    private static Desk Before(UndoTick command, Desk desk) => desk with
    {
        State = desk.State with
        {
            NotDone = new Dictionary<string, Instant>(desk.State.NotDone) { [command.Step] = desk.Now },
            Wall = desk.State.Wall is { } wall && desk.Moved.TryGetValue(command.Step, out var moved) ? WallMoves.Back(wall, moved) : desk.State.Wall,
        },
    };

    private static TickRow Denied(UndoTick command, Desk desk, Guid order) => new()
    {
        Step = command.Step,
        Order = order,
        Done = desk.Now,
        By = TickRow.Nobody,
        Person = command.Person,
        Device = command.Device,
        Written = desk.Now,
        Undone = desk.Now,
        UndonePerson = command.Person,
    };

    private static void TakeBack(BookContext book, UndoTick command, Desk desk)
    {
        TakeBack(book, command.Step, command.Person, desk.Now);
        var suffix = ":" + command.Step;
        foreach (var answer in book.RingAnswers.Where(a => a.Ring.EndsWith(suffix) && a.Undone == null && a.Kind == nameof(RingAnswerKind.Done)))
        {
            answer.Undone = desk.Now;
        }
    }

    /// <summary>Takes the standing tick of a step back, and gives its row.</summary>
    internal static TickRow TakeBack(BookContext book, string step, string person, Instant now)
    {
        var tick = book.Ticks.Single(t => t.Step == step && t.Undone == null);
        tick.Undone = now;
        tick.UndonePerson = person;
        return tick;
    }
}
