namespace Bakehouse.Book.Entries;

using Bakehouse.Book.Tables;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;

/// <summary>Ticks move an order through its stages: first step, boxed, handed over.</summary>
internal static class StageChange
{
    /// <summary>Where an order stands after these ticks; with none left it is booked again.</summary>
    /// <param name="ends">Names the steps that box it and hand it over.</param>
    public static Stage After(Stage stage, IReadOnlyList<Tick> ticks, WeekOrder ends)
    {
        if (ticks.Count == 0)
        {
            return stage is Stage.InWork or Stage.Ready or Stage.HandedOver ? Stage.Booked : stage;
        }

        return ticks.Any(t => t.Step == ends.Out) ? Stage.HandedOver
            : ticks.Any(t => t.Step == ends.Ready) ? Stage.Ready
            : Stage.InWork;
    }

    /// <summary>The next version at that stage, or the same order if it is there already.</summary>
    public static Order Of(Order order, Stage stage) =>
        order.Stage == stage ? order : order with { Stage = stage, Version = order.Version + 1 };

    public static void Write(BookContext book, Command command, Desk desk, Order before, Order after)
    {
        if (after.Version != before.Version)
        {
            book.Orders.Add(OrderRow.Of(after, command.Person, command.Device, desk.Now));
        }
    }
}
