namespace Bakehouse.Web.Access;

using System.Reflection;
using Bakehouse.Domain.Shops;
using Microsoft.AspNetCore.Components;

/// <summary>
/// Which page is for whom. A page without a row is for nobody. Rows are the first word of a page's path.
/// What may be written is decided in the book, not here.
/// </summary>
public static class Rights
{
    private static readonly Role[] Everybody = Enum.GetValues<Role>();
    private static readonly Role[] Planners = [Role.Owner, Role.Baker, Role.Decorator, Role.Counter];

    private static readonly Dictionary<string, Role[]> Table = new(StringComparer.Ordinal)
    {
        ["order"] = [Role.Owner, Role.Counter, Role.Baker],
        ["cakes"] = Everybody,
        ["week"] = Planners,
        ["kitchen"] = [Role.Owner, Role.Baker, Role.Decorator, Role.Counter],
        ["freezer"] = [Role.Owner, Role.Baker, Role.Decorator, Role.Counter],
        ["calendar"] = Everybody,
        ["recipes"] = Planners,
        ["shop"] = [Role.Owner],
        ["well"] = [Role.Owner],
    };

    /// <summary>Open before anybody has said who they are.</summary>
    private static readonly HashSet<string> Open = new(StringComparer.Ordinal) { "", "who", "not-found", "trouble" };

    /// <summary>The labels of the bar in their order: path and words.</summary>
    public static IReadOnlyList<(string Path, string Words)> Labels { get; } =
        [("order", "Take an order"), ("cakes", "The cakes"), ("week", "The week"), ("kitchen", "The kitchen"), ("recipes", "Recipes"), ("shop", "Shop")];

    /// <summary>The row of a page: the first word of its path, "" for the door.</summary>
    public static string RowOf(Type page)
    {
        var template = page.GetCustomAttributes<RouteAttribute>().FirstOrDefault()?.Template ?? "?";
        return template.Trim('/').Split('/')[0];
    }

    /// <summary>True if a page of that row needs no person.</summary>
    public static bool IsOpen(string row) => Open.Contains(row);

    /// <summary>True if the person may open it; a book without a shop lets anybody set it up.</summary>
    public static bool MayOpen(string row, Role? role, bool emptyBook = false) =>
        Open.Contains(row)
        || (emptyBook && row == "shop")
        || (role is { } known && Table.TryGetValue(row, out var roles) && roles.Contains(known));
}
