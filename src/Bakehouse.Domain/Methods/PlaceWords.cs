namespace Bakehouse.Domain.Methods;

using Bakehouse.Domain.Shops;

/// <summary>How a place of the week is called in the shop.</summary>
public static class PlaceWords
{
    /// <summary>"Fridge 1, level 3" for a shelf; "Bench", "Rack", "Tubs"; "" where a wait needs no place.</summary>
    public static string Of(string store, Shop shop) => shop.Shelves.FirstOrDefault(s => s.Id == store) is { } shelf
        ? $"{shelf.Unit}, level {shelf.Level}"
        : store is "" or Places.None ? "" : char.ToUpperInvariant(store[0]) + store[1..];
}
