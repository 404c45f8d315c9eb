namespace Bakehouse.Domain.Shops;

/// <summary>What may be wrong with ovens, bowls, shelves and places. Limits are generous: what a bakery can own at all.</summary>
internal static class EquipmentChecks
{
    public static IEnumerable<Problem> Problems(Shop shop) =>
    [
        .. Missing(shop),
        .. ShopChecks.Twice("ovens and bowls", [.. shop.Ovens.Select(o => o.Id), .. shop.Bowls.Select(b => b.Id)]),
        .. ShopChecks.Twice("shelves", shop.Shelves.Select(s => s.Id)),
        .. shop.Ovens.SelectMany(One),
        .. shop.Bowls.SelectMany(One),
        .. shop.Shelves.SelectMany(One),
        .. ShopChecks.Between("racks", shop.RackPlaces, 1, 500, " places"),
        .. ShopChecks.Between("benches", shop.BenchPlaces, 1, 100, " places"),
        .. ShopChecks.Between("turntables", shop.Turntables, 1, 50, ""),
    ];

    private static IEnumerable<Problem> Missing(Shop shop)
    {
        if (shop.Ovens.Count == 0)
        {
            yield return new Problem("ovens", "", "There is no oven.", "Add the oven with its inside width and depth.");
        }

        if (shop.Bowls.Count == 0)
        {
            yield return new Problem("bowls", "", "There is no mixer bowl.", "Add the bowl with its litres.");
        }

        if (!shop.Shelves.Any(s => s.Kind == ShelfKind.Fridge))
        {
            yield return new Problem("shelves", "", "There is no fridge shelf.", "Add the shelves with width, depth and clear height.");
        }
    }

    private static IEnumerable<Problem> One(Oven oven) =>
    [
        .. ShopChecks.Named("oven", oven.Name),
        .. ShopChecks.Id("oven", oven.Id),
        .. ShopChecks.Between($"{oven.Name}, decks", oven.Decks, 1, 20, ""),
        .. ShopChecks.Inside($"{oven.Name}, width", oven.Width, 20, 300),
        .. ShopChecks.Inside($"{oven.Name}, depth", oven.Depth, 20, 300),
    ];

    private static IEnumerable<Problem> One(Bowl bowl) =>
    [
        .. ShopChecks.Named("bowl", bowl.Name),
        .. ShopChecks.Id("bowl", bowl.Id),
        .. ShopChecks.Between($"{bowl.Name}, litres", bowl.Litres, 1, 200, " L"),
        .. ShopChecks.Between($"{bowl.Name}, batter", bowl.Batter.Kilograms, 0.2m, 150, " kg"),
        .. ShopChecks.Between($"{bowl.Name}, buttercream", bowl.CreamMillilitres, 200, 150_000, " mL"),
    ];

    private static IEnumerable<Problem> One(Shelf shelf) =>
    [
        .. ShopChecks.Named("shelf", shelf.Unit),
        .. ShopChecks.Id("shelf", shelf.Id),
        .. ShopChecks.Between($"{shelf.Unit}, level", shelf.Level, 1, 40, ""),
        .. ShopChecks.Inside($"{shelf.Unit} level {shelf.Level}, width", shelf.Width, 15, 400),
        .. ShopChecks.Inside($"{shelf.Unit} level {shelf.Level}, depth", shelf.Depth, 15, 400),
        .. ShopChecks.Inside($"{shelf.Unit} level {shelf.Level}, clear height", shelf.Clear, 4, 250),
    ];
}
