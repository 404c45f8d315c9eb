namespace Bakehouse.Book.Entries;

using Bakehouse.Book.Tables;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;

/// <summary>Writes ticks: their rows, the stages that they move, and the plan as it follows.</summary>
internal static class Ticking
{
    /// <summary>The outcome of ticks that nobody made before, of steps in the plan.</summary>
    public static Outcome Decide(Command command, Desk desk, string subject, IReadOnlyList<Tick> ticks)
    {
        var moves = ticks.GroupBy(OrderOf).Select(mine => Moved(desk, mine.Key, [.. mine])).ToList();
        var followed = Follow.Of(desk, [.. moves.Select(m => m.After)], [.. desk.State.Ticks, .. ticks]);
        return Outcome.Accepted(subject, new Change(followed.Wall, book =>
        {
            book.Ticks.AddRange(ticks.Select(t => Row(command, desk, t)));
            moves.ForEach(m => StageChange.Write(book, command, desk, m.Before, m.After));
        }), moves[0].After, followed.Late, followed.Message);
    }

    private static (Order Before, Order After) Moved(Desk desk, Guid id, List<Tick> ticks)
    {
        var order = desk.Order(id) ?? throw new InvalidOperationException($"A tick is for {id}, which is no order.");
        var ends = desk.State.Week!.Orders.First(o => Guid.Parse(o.Id) == id);
        return (order, StageChange.Of(order, StageChange.After(order.Stage, [.. desk.TicksOf(id), .. ticks], ends)));
    }

    private static Guid OrderOf(Tick tick) => StepKey.Parse(tick.Step)?.Order
        ?? throw new InvalidOperationException($"{tick.Step} is no step's key.");

    internal static TickRow Row(Command command, Desk desk, Tick tick) => new()
    {
        Step = tick.Step,
        Order = OrderOf(tick),
        Done = tick.Done,
        By = tick.Person,
        Person = command.Person,
        Device = command.Device,
        Written = desk.Now,
    };
}
