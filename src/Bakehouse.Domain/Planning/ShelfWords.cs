namespace Bakehouse.Domain.Planning;

using System.Globalization;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;

/// <summary>What stands on a shelf in the words of the shop.</summary>
public sealed class ShelfWords(Week week, Shop shop, IReadOnlyList<Order> orders)
{
    private readonly StopWords hours = new(week, shop, orders, []);
    private readonly Dictionary<Guid, Order> byId = orders.ToDictionary(o => o.Id);

    /// <summary>"409 8 in", "409 6+8 in in its box"; the hold's own id where no order is known.</summary>
    public string Thing(Hold hold)
    {
        if (StepKey.Parse(hold.From) is not { } from || !byId.TryGetValue(from.Order, out var order))
        {
            return hold.Id;
        }

        var boxed = hold.Piece is { IsRound: false } ? " in its box" : "";
        return string.Create(CultureInfo.InvariantCulture, $"{order.Number} {StepWords.Size(StepWords.TiersOf(hold.From, order), shop)}{boxed}");
    }

    /// <summary>"Fri 18:00".</summary>
    public string Hour(int minute) => hours.Hour(minute);

    /// <summary>
    /// "Fridge 1, level 2, Fri 18:00 to Sat 07:00: 409 10 in and 411 8 in do not stand beside each other. 5 cm of width are missing."
    /// </summary>
    public string Crowded(ShelfStretch stretch)
    {
        var things = stretch.Holds.Select(Thing).ToList();
        var named = things.Count == 1 ? things[0] : $"{string.Join(", ", things.SkipLast(1))} and {things[^1]}";
        var said = things.Count == 1 ? "does not stand there" : "do not stand beside each other";
        return string.Create(CultureInfo.InvariantCulture, $"{PlaceWords.Of(stretch.Store.Id, shop)}, {Hour(stretch.Span.From)} to {Hour(stretch.Span.To)}: {named} {said}. {stretch.MissingCm} cm of width are missing.");
    }
}
