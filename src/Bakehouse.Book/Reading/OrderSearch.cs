namespace Bakehouse.Book.Reading;

using Bakehouse.Book.Tables;
using Bakehouse.Domain.Orders;
using Microsoft.EntityFrameworkCore;
using NodaTime;

/// <summary>An order as a list of finds shows it.</summary>
/// <param name="At">Local handover.</param>
public sealed record OrderFound(Guid Id, int Number, Stage Stage, string Name, string Phone, LocalDateTime At, string SizeInInches)
{
    /// <summary>The find of an order.</summary>
    internal static OrderFound Of(Order order) =>
        new(order.Id, order.Number, order.Stage, order.Customer.Name, order.Customer.Phone, order.Handover.At, order.SizeInInches);
}

/// <summary>Finds orders by name, phone, number or day among all that were ever written.</summary>
internal static class OrderSearch
{
    /// <summary>Most finds that are shown; who sees so many types another word.</summary>
    public const int Most = 50;

    public static IReadOnlyList<OrderFound> Find(BookContext book, string question)
    {
        var words = SearchText.Words(question);
        if (words.Count == 0)
        {
            return [];
        }

        var rows = book.Orders.AsNoTracking().Where(o => !book.Orders.Any(n => n.Id == o.Id && n.Version > o.Version));
        foreach (var word in words)
        {
            rows = rows.Where(o => o.Search.Contains(word));
        }

        return [.. rows.OrderByDescending(o => o.Handover).ThenBy(o => o.Number).Take(Most).AsEnumerable().Select(r => OrderFound.Of(r.Order()))];
    }
}
