namespace Bakehouse.Domain.FarDates;

using Bakehouse.Domain.Cakes.Packing;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;

/// <summary>One night of tiers in the fridge.</summary>
/// <param name="Evening">The day on whose evening it begins.</param>
/// <param name="Tiers">Tiers that must stand cold, small cakes that are not ordered yet among them.</param>
/// <param name="Over">How many of them found no shelf; 0 if all stand.</param>
public sealed record FarNight(LocalDate Evening, int Tiers, int Over)
{
    /// <summary>A tier is filled and coated two days before, so it stands cold two nights (common practice, no source).</summary>
    private const int Nights = 2;

    /// <summary>The nights before an order's handover, with what else stands there.</summary>
    internal static IReadOnlyList<FarNight> Before(Order order, IReadOnlyList<Order> others, Shop shop) =>
        [.. Enumerable.Range(1, Nights).Reverse().Select(n => On(order.Handover.At.Date.PlusDays(-n), order, others, shop))];

    private static FarNight On(LocalDate evening, Order order, IReadOnlyList<Order> others, Shop shop)
    {
        var there = others.Where(o => o.Handover.At.Date > evening && o.Handover.At.Date <= evening.PlusDays(Nights)).Append(order).ToList();
        var usual = (int)SmallCakes.Usual(shop, evening.PlusDays(1), evening.PlusDays(Nights)) - there.Count(SmallCakes.IsOne);
        List<Standing> tiers = [.. there.SelectMany(o => Standing.Of(o.Stack, shop)), .. Enumerable.Repeat(Standing.Of([SmallCakes.Tier], shop)[0], Math.Max(0, usual))];
        return new FarNight(evening, tiers.Count, Unplaced(tiers, shop));
    }

    /// <summary>Widest first, each onto the first shelf on which it stands with the others, the lowest shelves first.</summary>
    private static int Unplaced(List<Standing> tiers, Shop shop)
    {
        var shelves = shop.Shelves.Where(s => s.Kind == ShelfKind.Fridge).OrderBy(s => s.Clear).Select(s => (Shelf: s, On: new List<Piece>())).ToList();
        var over = 0;
        foreach (var tier in tiers.OrderByDescending(t => t.HeightCm).ThenByDescending(t => t.Piece.Area))
        {
            var place = shelves.Find(s => ShelfRoom.Holds(s.Shelf, tier.Piece, tier.HeightCm) && Layouts.Fit(Room.Of(s.Shelf), [.. s.On, tier.Piece]));
            if (place.On is { } on)
            {
                on.Add(tier.Piece);
            }
            else
            {
                over++;
            }
        }

        return over;
    }

    private sealed record Standing(Piece Piece, int HeightCm)
    {
        public static IReadOnlyList<Standing> Of(IReadOnlyList<CakeTier> tiers, Shop shop) =>
            [.. tiers.Select((t, i) => new Standing(ShelfRoom.OnBoard(t, i == 0 && (shop.Settings.OnDrum || tiers.Count == 1)), ShelfRoom.HeightCm([t])))];
    }
}
