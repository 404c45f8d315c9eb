namespace Bakehouse.Web.TheRecipes;

using Bakehouse.Book.Reading;
using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;

/// <summary>Planned cakes that a change of the recipes touches.</summary>
internal static class Touched
{
    /// <summary>Those that wait for a look once these recipes stand; by handover.</summary>
    public static IReadOnlyList<Order> By(Cookbook next, BookState book) => book.Shop is { } shop
        ? [.. book.Orders.Where(o => BeforeWork.IsHit(o, book.CookbookOf(o), next, shop))]
        : [];

    /// <summary>Those that wait for a look now.</summary>
    public static IReadOnlyList<Order> Now(BookState book) => By(book.Cookbook, book);
}
