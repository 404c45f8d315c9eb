namespace Bakehouse.Book.Answers;

using Bakehouse.Domain.Answers;
using Bakehouse.Domain.Orders;
using NodaTime;

/// <summary>
/// The earliest time at which an order fits if others make way and every promise is kept. Each try takes up to seventeen placements, so the days
/// are tried by their last half hour, only the first that holds is halved, and after so many tries it is given up.
/// </summary>
internal sealed class SoonestWithMoves(Asking asking, PickupTimes times)
{
    private const int MostTries = 8;

    private int tries;

    /// <summary>Null if none is sooner than <see cref="CanWe.Earliest"/>, or if others make way at the wished time already.</summary>
    public Offer? Of(CanWe whole)
    {
        var order = whole.Wished.Order;
        if (whole.Wished.IsYes || whole.Wished.Proof is null || whole.Offers.Any(o => o.Kind == OfferKind.Moves))
        {
            return null;
        }

        var until = whole.Earliest?.Order.Handover.At ?? LocalDate.MaxIsoValue.AtMidnight();
        foreach (var open in times.Days(order).TakeWhile(day => day[0] < until && tries < MostTries))
        {
            List<LocalDateTime> day = [.. open.Where(at => at < until && at != order.Handover.At)];
            if (day.Count > 0 && Try(order, day[^1]) is { } found)
            {
                return Sooner(order, day, found);
            }
        }

        return null;
    }

    /// <summary>A later half hour of a day is seldom harder than one before it; where it is, a later one is offered than could be, never one that breaks a promise.</summary>
    private Offer Sooner(Order order, IReadOnlyList<LocalDateTime> day, Offer last)
    {
        var (no, yes) = (-1, day.Count - 1);
        while (yes - no > 1 && tries < MostTries)
        {
            var middle = (no + yes) / 2;
            if (Try(order, day[middle]) is { } found)
            {
                (yes, last) = (middle, found);
            }
            else
            {
                no = middle;
            }
        }

        return last;
    }

    private Offer? Try(Order order, LocalDateTime at)
    {
        tries++;
        return asking.Of(order with { Handover = order.Handover with { At = at } }) is { IsYes: false } fit ? asking.MakingRoom(fit) : null;
    }
}
