namespace Bakehouse.Domain.Orders;

using Bakehouse.Domain.Measures;

/// <summary>A fortnight of invented orders for the sample bakery, placed relative to a day so that there is always work to do.</summary>
public static class SampleOrders
{
    private static readonly (int Day, int Hour, string Name, string Tiers, string Sponge, string Filling, string Colour, string Swatch)[] Rows =
    [
        (0, 15, "Hale", "8", "vanilla", "raspberry-jam", "Ivory", "#F7F0E1"),
        (0, 16, "Moss", "8", "carrot", "cream-cheese", "Ivory", "#F7F0E1"),
        (1, 11, "Brandt", "6+8", "lemon", "lemon-curd", "Primrose", "#F4E9B0"),
        (1, 14, "Achterberg", "10", "vanilla", "buttercream", "Sage", "#D5DDC8"),
        (2, 10, "Lindqvist", "6+8+10", "vanilla", "raspberry-jam", "Blush", "#EAD0CC"),
        (2, 12, "Ferreira", "6+9", "chocolate", "ganache", "Cocoa", "#8B5E45"),
        (2, 15, "Okafor", "6", "chocolate", "buttercream", "Ivory", "#F7F0E1"),
        (4, 12, "Dunmore", "8", "vanilla", "raspberry-jam", "Sky", "#CFE0EA"),
        (5, 11, "Castellan", "9", "lemon", "lemon-curd", "Ivory", "#F7F0E1"),
        (6, 15, "Yilmaz", "6+8", "vanilla", "buttercream", "Lilac", "#DDD3E8"),
        (7, 10, "Marchetti", "6+8+10", "chocolate", "buttercream", "Ivory", "#F7F0E1"),
        (7, 14, "Osei", "8", "carrot", "buttercream", "Ivory", "#F7F0E1"),
        (8, 13, "Thorsen", "10", "vanilla", "raspberry-jam", "Blush", "#EAD0CC"),
        (9, 12, "Kowal", "6+9", "lemon", "raspberry-jam", "Primrose", "#F4E9B0"),
        (11, 11, "Bellamy", "8", "vanilla", "buttercream", "Sky", "#CFE0EA"),
    ];

    /// <summary>The orders, numbered from 401; each pickup on the first open day at or after its place in the fortnight.</summary>
    public static IReadOnlyList<Order> From(LocalDate today, Shops.Shop shop) =>
        [.. Rows.Select((row, i) => Make(row, i, OpenDay(today.PlusDays(row.Day), shop)))];

    private static LocalDate OpenDay(LocalDate day, Shops.Shop shop) =>
        Enumerable.Range(0, 14).Select(day.PlusDays).First(d => shop.HoursOn(d).Count > 0);

    private static Order Make((int Day, int Hour, string Name, string Tiers, string Sponge, string Filling, string Colour, string Swatch) row, int index, LocalDate day)
    {
        var sizes = row.Tiers.Split('+').Reverse().Select(int.Parse).ToList();
        var tiers = sizes.Select((inches, t) => new CakeTier(
            Id(index, t + 1), Length.FromInches(inches), Length.FromCentimetres(10), 4, row.Sponge, row.Filling, [new CoatColour(row.Colour, row.Swatch, 1)])).ToList();
        return new Order(
            Id(index, 0),
            401 + index,
            1,
            Stage.Booked,
            new Customer(row.Name, "+44207946" + (100 + index)),
            new Handover(Way.Collect, day + new LocalTime(row.Hour, 0), "", 0),
            null,
            new Portions(sizes.Sum(s => s * s / 3), Cut.Dessert),
            tiers,
            index % 5 == 4 ? Finish.Textured : Finish.Smooth,
            tiers.Count > 2 ? Decoration.Medium : Decoration.Simple,
            row.Name == "Dunmore" ? new AllergyAnswer(AllergyKind.Avoid, ["nuts"], "hazelnut, swells up") : AllergyAnswer.NoneTold,
            row.Name == "Hale" ? "HAPPY BIRTHDAY NOA" : "",
            "");
    }

    // Fixed ids, so that the sample is the same each time it is opened: no random numbers in Domain.
    private static Guid Id(int order, int tier) => new(0x5A3B1E00 + order, (short)tier, 0x4C1, 1, 2, 3, 4, 5, 6, 7, 8);
}
