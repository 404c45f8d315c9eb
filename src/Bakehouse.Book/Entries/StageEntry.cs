namespace Bakehouse.Book.Entries;

using System.Globalization;
using Bakehouse.Domain;
using Bakehouse.Domain.Orders;

/// <summary>Moves an order to another stage, or lets a kept day go whose hours are over.</summary>
internal static class StageEntry
{
    public static Outcome Decide(MoveStage command, Desk desk)
    {
        var subject = command.Order.ToString("N", CultureInfo.InvariantCulture);
        if (desk.Order(command.Order) is not { } order)
        {
            return Outcome.Refused(subject, new Problem("order", subject, "The book has no such order.", "Look for it among the cakes."));
        }

        if (order.Version != command.Version)
        {
            return Outcome.Clash(subject, $"Order {order.Number} was changed meanwhile: it stands at version {order.Version}.", order);
        }

        return order.Stage == command.To
            ? Outcome.Clash(subject, $"Order {order.Number} is there already.", order)
            : OrderEntry.Write(command, desk, order, order with { Stage = command.To, Version = order.Version + 1 });
    }

    public static Outcome Decide(LetDayGo command, Desk desk)
    {
        var subject = command.Order.ToString("N", CultureInfo.InvariantCulture);
        return desk.Order(command.Order) is { Stage: Stage.Kept, KeptUntil: { } until } order && until <= desk.Now
            ? OrderEntry.Write(command, desk, order, order with { Stage = Stage.Quoted, Version = order.Version + 1 })
            : Outcome.Refused(subject, new Problem("order", subject, "Its day is not kept, or still is.", "Leave it as it is."));
    }
}
