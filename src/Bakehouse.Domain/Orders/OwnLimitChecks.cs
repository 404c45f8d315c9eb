namespace Bakehouse.Domain.Orders;

using Bakehouse.Domain.Dangers;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Shops;

/// <summary>The owner's limits against an order: each is told in her words, with what else the shop has.</summary>
public static class OwnLimitChecks
{
    /// <summary>What needs the fridge in a cake that is taken, where she lets nothing of that leave.</summary>
    public static IEnumerable<Problem> Problems(Order order, Shop shop) =>
        Stages.IsTaken(order.Stage) ? Cold(order, shop) : [];

    /// <summary>The same whatever its stage: each filling once, then what goes on top.</summary>
    public static IReadOnlyList<Problem> Cold(Order order, Shop shop)
    {
        if (shop.Limits is not { NothingCold: true } limits)
        {
            return [];
        }

        var instead = string.Join(" or ", Filling.All.Where(f => !shop.IsOnClock(f)).Select(f => f.Name.ToLowerInvariant()));
        var fillings = order.Tiers.Where(t => t.Layers > 1 && !t.IsFalse).Select(t => Filling.Of(t.Filling)).OfType<Filling>().Where(shop.IsOnClock).Distinct();
        var toppings = (order.OnTop?.Toppings ?? []).Select(t => Topping.Of(t.Topping)).OfType<Topping>().Where(t => t.NeedsFridge);
        return
        [
            .. fillings.Select(f => new Problem("Own limits", f.Name, $"“{limits.SaysCold}” {f.Name} needs it.", $"Take {instead} instead.")),
            .. toppings.Select(t => new Problem("Own limits", t.Name, $"“{limits.SaysCold}” {t.Name} need it.", $"Leave them off, or take {instead} inside.")),
        ];
    }
}

/// <summary>Money that is booked for a year, beside the owner's cap.</summary>
/// <param name="Year">Calendar year of the handovers.</param>
/// <param name="Booked">Prices agreed for all that is taken, without the order that is asked for.</param>
/// <param name="Asked">The price of the order that is asked for; 0 if none is known.</param>
/// <param name="Unpriced">Numbers of orders that are taken without a price: they are in no sum.</param>
public sealed record YearlyCap(int Year, decimal Booked, decimal Asked, decimal Cap, IReadOnlyList<int> Unpriced)
{
    /// <summary>From this share of the cap on it is told (common practice, no source).</summary>
    public const decimal WarnsFrom = 0.90m;

    /// <summary>Booked with the order.</summary>
    public decimal Together => Booked + Asked;

    /// <summary>Of the cap, 1 and more when it is reached.</summary>
    public decimal Share => Together / Cap;

    /// <summary>In whole percent, cut down: 94.9 is 94, so that 100 is never said too early.</summary>
    public int Percent => (int)decimal.Floor(Share * 100);

    /// <summary>True if it is to be told.</summary>
    public bool IsNear => Share >= WarnsFrom;

    /// <summary>True if it is above the cap.</summary>
    public bool IsOver => Together > Cap;

    /// <summary>What is booked for the year of that order; null where the owner has set no cap.</summary>
    /// <param name="orders">Newest versions of all.</param>
    /// <param name="asked">Its price.</param>
    public static YearlyCap? Of(Order order, decimal asked, IReadOnlyList<Order> orders, Shop shop)
    {
        if (shop.Limits?.YearlyCap is not { } cap)
        {
            return null;
        }

        var year = order.Handover.At.Year;
        var others = orders.Where(o => o.Id != order.Id && o.Handover.At.Year == year && IsSold(o)).ToList();
        return new YearlyCap(year, others.Sum(o => o.Price?.Amount ?? 0), asked, cap, [.. others.Where(o => o.Price is null).Select(o => o.Number).Order()]);
    }

    /// <summary>What is agreed so far for handovers of a calendar year, with the numbers of orders that are taken without a price.</summary>
    /// <param name="orders">Newest versions of all.</param>
    public static (decimal Booked, IReadOnlyList<int> Unpriced) SoFar(int year, IReadOnlyList<Order> orders)
    {
        var sold = orders.Where(o => o.Handover.At.Year == year && IsSold(o)).ToList();
        return (sold.Sum(o => o.Price?.Amount ?? 0), [.. sold.Where(o => o.Price is null).Select(o => o.Number).Order()]);
    }

    /// <summary>
    /// Told where an order that is taken goes above the cap, or has no price to count; null if there is room, or if it stood so already.
    /// </summary>
    /// <param name="before">The version that stands, or null.</param>
    /// <param name="owner">True if the owner writes it: what is booked in a year is told to her alone.</param>
    public static Problem? Against(Order after, Order? before, IReadOnlyList<Order> orders, Shop shop, bool owner)
    {
        if (!IsSold(after) || Of(after, after.Price?.Amount ?? 0, orders, shop) is not { } year)
        {
            return null;
        }

        var stood = before is not null && IsSold(before) && before.Handover.At.Year == year.Year && (before.Price?.Amount ?? 0) >= year.Asked && (before.Price is null || after.Price is not null);
        return stood ? null
            : after.Price is null ? new Problem("Price", "", "There is a yearly cap, and it counts agreed prices: this cake has none.", "Agree a price first.")
            : !year.IsOver ? null
            : owner ? new Problem("Price", Text(year.Asked), $"{Text(year.Together)} would be booked for {year.Year}; your yearly cap is {Text(year.Cap)}, and {Text(Math.Max(0, year.Cap - year.Booked))} of it is left.", "Don't take it for this year, or change the cap under Shop.")
            : new Problem("Price", Text(year.Asked), $"With it the owner's cap for {year.Year} would be passed.", "Ask the owner, or offer a day of another year.");
    }

    /// <summary>What was handed over was sold, too.</summary>
    private static bool IsSold(Order order) => Stages.IsTaken(order.Stage) || order.Stage == Stage.HandedOver;

    private static string Text(decimal amount) => amount.ToString("#,0.##", System.Globalization.CultureInfo.InvariantCulture);
}
