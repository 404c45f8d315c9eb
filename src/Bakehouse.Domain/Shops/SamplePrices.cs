namespace Bakehouse.Domain.Shops;

using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Prices;

/// <summary>Prices of the sample bakery, all invented.</summary>
internal static class SamplePrices
{
    // Ingredient, grams in the pack, its price.
    private static readonly (string Id, decimal Grams, decimal Price)[] Packs =
    [
        ("plain-flour", 16000, 13.60m), ("cake-flour", 16000, 15.20m), ("bread-flour", 16000, 14.40m), ("whole-flour", 8000, 9.80m), ("sugar", 25000, 24.50m), ("icing-sugar", 10000, 14.80m),
        ("brown-sugar", 3000, 5.10m), ("honey", 1360, 8.90m), ("maple-syrup", 1320, 16.40m), ("corn-syrup", 1365, 6.20m), ("gelatine", 500, 9.80m), ("butter", 5000, 37.50m), ("rapeseed-oil", 4600, 9.20m), ("shortening", 2500, 7.90m),
        ("milk", 4120, 4.30m), ("buttermilk", 1030, 1.90m), ("cream", 2020, 9.60m), ("sour-cream", 1000, 3.80m), ("cream-cheese-block", 2000, 11.40m), ("egg", 9000, 42.00m),
        ("egg-white", 2000, 9.90m), ("egg-yolk", 2000, 13.50m), ("baking-powder", 1000, 5.40m), ("baking-soda", 1000, 2.90m), ("cream-of-tartar", 500, 6.20m), ("salt", 1500, 1.20m),
        ("vanilla", 500, 34.00m), ("cocoa", 1000, 12.80m), ("cornstarch", 3000, 6.60m), ("dark-chocolate", 5000, 48.00m), ("ground-almonds", 1000, 11.20m), ("ground-hazelnuts", 1000, 14.60m),
        ("pecans", 1000, 17.90m), ("walnuts", 1000, 12.40m), ("raspberries", 2500, 16.50m), ("carrots", 5000, 5.50m), ("lemon-juice", 1000, 4.20m), ("lemon-zest", 250, 6.00m),
        ("cinnamon", 500, 6.80m), ("water", 1000, 0), ("colour-gel", 25, 3.20m), ("sugar-pearls", 500, 5.90m), ("sugar-paste", 5000, 23.00m), ("marshmallows", 1000, 6.40m), ("boiled-sweets", 1000, 5.20m), ("popcorn", 500, 2.80m),
        ("whole-almonds", 1000, 10.90m), ("whole-hazelnuts", 1000, 13.80m), ("whole-walnuts", 1000, 13.10m), ("whole-pecans", 1000, 18.60m),
        ("whole-cashews", 1000, 13.20m), ("whole-brazil-nuts", 1000, 14.90m), ("whole-pistachios", 1000, 24.50m), ("whole-macadamias", 1000, 26.00m), ("whole-peanuts", 1000, 4.40m),
        ("grapes", 1000, 4.60m), ("strawberries", 1000, 7.20m), ("food-glitter", 10, 4.90m), ("gold-leaf", 1, 38.00m),
    ];

    public static ShopPrices All { get; } = new()
    {
        Wage = 17, OverheadAYear = 15_600, OrdersAYear = 780, MarkUp = 0.35m, LeastMarkUp = 0.15m, Step = 5, SupportEach = 0.15m, RodEach = 0.90m, CupcakePack = 0.22m,
        Packs = [.. Packs.Select(p => new PackPrice(p.Id, Mass.FromGrams(p.Grams), p.Price))],
        Boards = Sizes((4, 0.35m), (6, 0.45m), (8, 0.60m), (10, 0.80m), (12, 1.10m), (14, 1.50m), (16, 1.90m)),
        Drums = Sizes((8, 1.60m), (10, 2.10m), (12, 2.60m), (14, 3.30m), (16, 4.20m), (18, 5.40m), (20, 6.80m)),
        Boxes = Sizes((8, 1.80m), (10, 2.20m), (12, 2.90m), (14, 3.80m), (16, 5.20m), (18, 6.90m), (20, 8.50m)),
        List = new PriceList(
            [
                new(Finish.Smooth, Cut.Dessert, 6.50m), new(Finish.Smooth, Cut.Coffee, 5.40m), new(Finish.Textured, Cut.Dessert, 6.90m), new(Finish.Textured, Cut.Coffee, 5.70m),
                new(Finish.SemiNaked, Cut.Dessert, 6.00m), new(Finish.SemiNaked, Cut.Coffee, 5.00m),
            ],
            [new(Decoration.Medium, 0.10m), new(Decoration.Rich, 0.25m)],
            95,
            5)
        {
            FalseTier = 45, DripTier = 12, PasteShare = 0.25m, Cupcake = 4.20m,
        },
    };

    private static List<SizePrice> Sizes(params IReadOnlyList<(int Inches, decimal Price)> rows) => [.. rows.Select(r => new SizePrice(Length.FromInches(r.Inches), r.Price))];
}
