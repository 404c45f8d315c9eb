namespace Bakehouse.Domain.Orders;

using System.Globalization;
using Bakehouse.Domain.Shops;

/// <summary>
/// The owner's caps on days of the week: so many tiered cakes leave, and no more. A cap asks nothing of what was taken already; it
/// speaks before one more is taken.
/// </summary>
public static class DayCaps
{
    /// <summary>What the cap says against a version that shall be written; null if there is room, or if it holds its place on that day already.</summary>
    /// <param name="before">The version that stands, or null.</param>
    /// <param name="orders">Newest versions of all.</param>
    /// <param name="owner">True if the owner writes it: her tick goes beyond the cap.</param>
    public static Problem? Against(Order order, Order? before, IReadOnlyList<Order> orders, Shop shop, bool owner)
    {
        var day = order.Handover.At.Date;
        return !Counts(order, day) || (before is not null && Counts(before, day)) || (order.BeyondCapAgreed && owner)
            ? null
            : Full(day, order.Id, orders, shop);
    }

    /// <summary>What the cap says of one more tiered cake on that day; null if there is room.</summary>
    /// <param name="but">The order that is asked for; it does not count.</param>
    public static Problem? Full(LocalDate day, Guid but, IReadOnlyList<Order> orders, Shop shop)
    {
        if (shop.Settings.Caps?.FirstOrDefault(c => c.Day == day.DayOfWeek) is not { } cap)
        {
            return null;
        }

        var taken = orders.Where(o => o.Id != but && Counts(o, day)).Select(o => o.Number).Order().ToList();
        return taken.Count < cap.Most ? null : new Problem(
            "When",
            day.ToString("ddd d MMM", CultureInfo.InvariantCulture),
            $"{Has(taken)}; your cap for a {cap.Day} is {Text(cap.Most)}.",
            "Choose another day, or let the owner take it beyond the cap.");
    }

    /// <summary>True for a cake of two tiers and more that holds a place on that day, or has left on it.</summary>
    public static bool Counts(Order order, LocalDate day) => order.Stack.Count > 1
        && order.Handover.At.Date == day && (Stages.IsPlanned(order.Stage) || order.Stage == Stage.HandedOver);

    private static string Has(List<int> taken) => taken.Count switch
    {
        0 => "No tiered cake leaves that day",
        1 => $"1 tiered cake leaves that day already ({Text(taken[0])})",
        _ => $"{Text(taken.Count)} tiered cakes leave that day already ({string.Join(", ", taken.Select(Text))})",
    };

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
