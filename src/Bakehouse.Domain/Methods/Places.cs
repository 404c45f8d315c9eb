namespace Bakehouse.Domain.Methods;

using Bakehouse.Domain.Cakes.Packing;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;

/// <summary>The places of a shop as stores of a week: each shelf is a store of its own; racks, benches and tubs are one each.</summary>
public static class Places
{
    /// <summary>A wait that needs no place.</summary>
    public const string None = "none";

    /// <summary>Longer than any week.</summary>
    public const int Endless = 60 * 1440;

    /// <summary>Of an order of work that is a habit and no wait: one comes after the other, whenever that is.</summary>
    public static Standing Whenever { get; } = new(None, 0, Endless);

    /// <summary>True if the hold only says which comes first.</summary>
    public static bool IsWhenever(Hold hold) => hold.In is [var only] && only == Whenever;

    /// <summary>Tubs of cream and filling that a small shop keeps cold; a setting later (common practice, no source).</summary>
    private const int TubPlaces = 24;

    /// <summary>What is cooked in one pot at most, mL (common practice, no source).</summary>
    public const int PotMillilitres = 3000;

    /// <summary>All stores of the shop.</summary>
    public static IReadOnlyList<Store> Of(Shop shop) =>
    [
        .. shop.Shelves.Select(s => new Store(s.Id, Kind(s), s.Kind != ShelfKind.CoolRoom, (int)s.Clear.Centimetres, ShelfRoom.Places(s), []) { Floor = Room.Of(s) }),
        new Store("rack", "rack", false, 60, shop.RackPlaces, []),
        new Store("bench", "bench", false, 120, shop.BenchPlaces * ShelfRoom.BenchPlaces, []) { Floor = ShelfRoom.Bench(shop.BenchPlaces) },
        new Store("tubs", "tubs", true, 30, TubPlaces, []),
        new Store(None, None, false, 999, 9999, []),
    ];

    /// <summary>The shelves of that kind that take the footprint and height, and bench where the wait allows it.</summary>
    /// <param name="least">Minutes instead of the wait's own, outside of a freezer.</param>
    /// <param name="heated">Minutes that heat asks for on a shelf, instead of any other; null where it does not decide.</param>
    public static IEnumerable<Standing> OnShelves(Shop shop, WaitIn wait, Piece piece, int height, int? least, Func<Shelf, int?> heated)
    {
        if (wait.Kind is "bench" or None)
        {
            return [new Standing(wait.Kind, wait.Least, wait.Most)];
        }

        return shop.Shelves.Where(s => Kind(s) == wait.Kind && ShelfRoom.Holds(s, piece, height)).Select(s => On(s, wait, least, heated));
    }

    /// <summary>Every shelf of that kind, whether it takes the thing or not.</summary>
    public static IEnumerable<Standing> AnyShelf(Shop shop, WaitIn wait, int? least, Func<Shelf, int?> heated) =>
        shop.Shelves.Where(s => Kind(s) == wait.Kind).OrderByDescending(s => s.Clear).Select(s => On(s, wait, least, heated));

    /// <summary>Longest time in a freezer after the least, where heat asks for more than the wait allows: it freezes through from then on.</summary>
    private const int InFreezerAfter = 20;

    private static Standing On(Shelf shelf, WaitIn wait, int? least, Func<Shelf, int?> heated)
    {
        // A wait that the filling or the layer lengthens, is lengthened on the fridge's figure; the freezer keeps its own.
        var minutes = heated(shelf) ?? (wait.Kind == "freezer" ? wait.Least : least ?? wait.Least);
        return new Standing(shelf.Id, minutes, Math.Max(wait.Most, minutes + InFreezerAfter));
    }

    private static string Kind(Shelf shelf) => shelf.Kind switch
    {
        ShelfKind.Fridge => "fridge",
        ShelfKind.Freezer => "freezer",
        ShelfKind.CoolRoom => "cool",
        _ => throw new ArgumentOutOfRangeException(nameof(shelf), shelf.Kind, "Unknown kind of shelf."),
    };
}
