namespace Bakehouse.Domain.Orders;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Dangers;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Shops;

/// <summary>A fortnight of invented orders for the sample bakery, placed relative to a day so that there is always work to do.</summary>
public static class SampleOrders
{
    private sealed record Row(int Day, int Hour, string Name, string Tiers, string Sponge, string Filling, string Colour, string Swatch)
    {
        public Finish Finish { get; init; } = Finish.Smooth;

        public Decoration Decoration { get; init; } = Decoration.Simple;

        public AllergyAnswer Allergies { get; init; } = AllergyAnswer.NoneTold;

        public string Inscription { get; init; } = "";

        public OnTop? OnTop { get; init; }

        /// <summary>Brought on the first Saturday from that day on: the driver works on Saturdays. Null if it is collected.</summary>
        public string? Address { get; init; }
    }

    private static readonly Row[] Rows =
    [
        new(0, 15, "Hale", "8", "vanilla", "raspberry-jam", "Ivory", "#F7F0E1") { Inscription = "HAPPY BIRTHDAY NOA" },
        new(0, 16, "Moss", "8", "carrot", "cream-cheese", "Ivory", "#F7F0E1"),
        new(1, 11, "Brandt", "6+8", "lemon", "lemon-curd", "Primrose", "#F4E9B0"),
        new(1, 14, "Achterberg", "10", "vanilla", "buttercream", "Sage", "#D5DDC8") { Inscription = "FOR BOTH OF YOU" },
        new(2, 10, "Lindqvist", "6+8+10", "vanilla", "raspberry-jam", "Blush", "#EAD0CC") { Finish = Finish.Textured, Decoration = Decoration.Medium },
        new(2, 12, "Ferreira", "6+9", "chocolate", "ganache", "Cocoa", "#8B5E45"),
        new(2, 15, "Okafor", "6", "chocolate", "buttercream", "Ivory", "#F7F0E1") { Inscription = "7" },
        new(4, 12, "Dunmore", "8", "vanilla", "raspberry-jam", "Sky", "#CFE0EA") { Allergies = new AllergyAnswer(AllergyKind.Avoid, ["nuts"], "hazelnut, swells up") { Judged = "hazelnut, swells up" } },
        new(5, 14, "Castellan", "6+9", "lemon", "raspberry-jam", "Ivory", "#F7F0E1") { Finish = Finish.SemiNaked, Address = "Orchard Hall, 3 Mill Lane" },
        new(6, 15, "Yilmaz", "6+8", "vanilla", "buttercream", "Lilac", "#DDD3E8"),
        new(7, 10, "Marchetti", "6+8+10", "chocolate", "buttercream", "Ivory", "#F7F0E1") { Decoration = Decoration.Medium, OnTop = new OnTop(new FreshFlowers([new OrderedFlower("white roses", FlowerPut.Pick, Stems: 12)], "Tansy Lane Flowers"), []) },
        new(7, 14, "Osei", "8", "carrot", "buttercream", "Ivory", "#F7F0E1") { Finish = Finish.SemiNaked },
        new(8, 13, "Thorsen", "10", "vanilla", "raspberry-jam", "Blush", "#EAD0CC"),
        new(9, 12, "Kowal", "6+9", "lemon", "lemon-curd", "Primrose", "#F4E9B0") { Finish = Finish.Textured },
        new(11, 11, "Bellamy", "8", "vanilla", "buttercream", "Sky", "#CFE0EA"),
    ];

    /// <summary>What the sample bakery sells by name.</summary>
    public static IReadOnlyList<HouseCake> HouseCakes { get; } =
    [
        new("Lemon garden", Sized([8, 6], "lemon", "lemon-curd", "Primrose", "#F4E9B0", 101), Finish.Textured, Decoration.Simple),
        new("Three in ivory", Sized([10, 8, 6], "vanilla", "raspberry-jam", "Ivory", "#F7F0E1", 102), Finish.Smooth, Decoration.Medium),
        new("Cocoa round", Sized([8], "chocolate", "ganache", "Cocoa", "#8B5E45", 103), Finish.Smooth, Decoration.Simple),
    ];

    /// <summary>The orders, numbered from 401; each pickup on the first open day at or after its place in the fortnight.</summary>
    public static IReadOnlyList<Order> From(LocalDate today, Shop shop) =>
        [.. Rows.Select((row, i) => Make(row, i, OpenDay(today.PlusDays(row.Day), shop, row.Address is null ? null : IsoDayOfWeek.Saturday)))];

    private static LocalDate OpenDay(LocalDate day, Shop shop, IsoDayOfWeek? only) =>
        Enumerable.Range(0, 14).Select(day.PlusDays).First(d => shop.HoursOn(d).Count > 0 && (only is null || d.DayOfWeek == only));

    private static List<CakeTier> Sized(IReadOnlyList<int> inches, string sponge, string filling, string colour, string swatch, int index) =>
        [.. inches.Select((across, t) => new CakeTier(Id(index, t + 1), Length.FromInches(across), Length.FromCentimetres(10), 4, sponge, filling, [new CoatColour(colour, swatch, 1)]))];

    private static Order Make(Row row, int index, LocalDate day)
    {
        var sizes = row.Tiers.Split('+').Reverse().Select(int.Parse).ToList();
        var tiers = Sized(sizes, row.Sponge, row.Filling, row.Colour, row.Swatch, index);
        var at = day + new LocalTime(row.Hour, 0);
        return new Order(
            Id(index, 0),
            401 + index,
            1,
            Stage.Booked,
            // Numbers that are kept free for invented people: 020 7946 0000 to 0999 (Ofcom).
            new Customer(row.Name, $"+442079460{100 + index}"),
            row.Address is { } address ? new Handover(Way.Deliver, at, address, 20) : new Handover(Way.Collect, at, "", 0),
            null,
            new Portions(tiers.Sum(t => PortionChart.Count(t.Diameter, t.Height, Cut.Dessert, CakeFigures.Usual)), Cut.Dessert),
            tiers,
            row.Finish,
            row.Decoration,
            row.Allergies,
            row.Inscription,
            "") { OnTop = row.OnTop };
    }

    // Fixed ids, so that the sample is the same each time it is opened: no random numbers in Domain.
    private static Guid Id(int order, int tier) => new(0x5A3B1E00 + order, (short)tier, 0x4C1, 1, 2, 3, 4, 5, 6, 7, 8);
}
