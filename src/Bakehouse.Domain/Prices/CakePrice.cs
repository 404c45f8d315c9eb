namespace Bakehouse.Domain.Prices;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Shops;

/// <summary>What a cake costs here and what is asked for it.</summary>
/// <param name="Cost">Too low while something is missing.</param>
/// <param name="Listed">By the price list; null if it has no row for that finish and cut.</param>
/// <param name="Missing">What nobody has given a price for, in words; then neither price by cost nor floor is known.</param>
public sealed record CakePrice(CakeCost Cost, decimal? Listed, IReadOnlyList<string> Missing)
{
    /// <summary>What makes up the listed price, before its least price and step.</summary>
    public IReadOnlyList<PriceLine> Lines { get; init; } = [];

    /// <summary>What the list has no price for, in words; it is then asked by cost and mark-up.</summary>
    public IReadOnlyList<string> Unlisted { get; init; } = [];

    /// <summary>The least that may be asked without a reason; null while it is not known.</summary>
    public decimal? Floor => Missing.Count == 0 ? Cost.Floor : null;

    /// <summary>What is asked: by the list, else by cost and mark-up, never under the next step above the floor; null while nothing is known.</summary>
    public decimal? Asked => Listed is { } listed ? Math.Max(listed, Floor is { } floor ? Cash.UpTo(floor, Cost.Rates.Step) : listed) : Missing.Count == 0 ? Cost.Price : null;

    /// <summary>
    /// The price of an order in this shop, its hands as its steps plan them; null if its tiers can't be made here, or the shop has
    /// said no price at all.
    /// </summary>
    public static CakePrice? Of(Order order, Cookbook book, Shop shop)
    {
        if (shop.Prices is not { } prices || order.Tiers.Count == 0 || OrderChecks.OfTiers(order, shop).Count > 0
            || BuildSheet.Try(order.Tiers, order.Finish, CakeFigures.Of(shop)) is not { } sheet)
        {
            return null;
        }

        var cost = CakeCost.Of(order, sheet, book, PlannedHands.Minutes(CakeSteps.Of(order, shop)), prices.Rates());
        string[] cut = [.. sheet.Supports > 0 && prices.SupportEach is null ? ["supports"] : Array.Empty<string>(), .. sheet.Rods > 0 && prices.RodEach is null ? ["centre rod"] : Array.Empty<string>(), .. sheet.Beside.Count > 0 && prices.CupcakePack is null ? ["case and box for a cupcake"] : Array.Empty<string>()];
        var listed = ByTheList(order, sheet);
        return new CakePrice(cost, prices.List.Price(listed), [.. prices.Unsaid(), .. cost.Unpriced, .. cut]) { Lines = prices.List.Lines(listed), Unlisted = prices.List.Portions.Count == 0 ? [] : prices.List.Unlisted(listed) };
    }

    private static ListedCake ByTheList(Order order, BuildSheet sheet)
    {
        List<CakeTier> stack = [.. order.Tiers.Where(t => !t.StandsBeside)];
        return new ListedCake(
            stack.Count == 0 ? 0 : Math.Max(1, sheet.Stack.Sum(t => t.Portions(order.Portions.Cut))), order.Portions.Cut, order.Finish, order.Decoration,
            stack.Count(t => t.IsFalse), stack.Count(t => t.Special is { Drip.Millimetres: > 0 }), stack.Any(t => t.Special?.Paste is not null), sheet.Beside.Sum(t => t.Dessert));
    }
}

/// <summary>The floor price: what no order goes under without a reason.</summary>
public static class FloorPrice
{
    /// <summary>
    /// Told where a price was agreed under the floor and no reason stands beside it; null if it may be written. The owner may go under it, and what
    /// was agreed before stays agreed as long as the cake does not cost more.
    /// </summary>
    /// <param name="before">The version that stands, or null.</param>
    public static Problem? Against(Order after, Order? before, Cookbook book, Shop shop, bool owner)
    {
        if (owner || after.Price is not { } agreed || agreed.Reason.Trim().Length > 0 || CakePrice.Of(after, book, shop) is not { Floor: { } floor } price || agreed.Amount >= floor)
        {
            return null;
        }

        var stood = before?.Price == agreed && CakePrice.Of(before, book, shop)?.Floor >= floor;
        return stood ? null : PriceList.Below(agreed.Amount, price.Cost, price.Asked ?? price.Cost.Price, Cash.Sign(shop.Settings.Country)) is { } problem ? problem with { Try = problem.Try.TrimEnd('.') + ", or write down why it is under the floor." } : null;
    }
}

/// <summary>What a recipe costs by the prices of the packs.</summary>
/// <param name="Cost">Of the mass that was asked, not rounded; null while something has no price.</param>
/// <param name="Missing">Names of ingredients without a price.</param>
public sealed record RecipeCost(decimal? Cost, IReadOnlyList<string> Missing)
{
    /// <summary>The cost of so many grams weighed in, before anything is lost.</summary>
    public static RecipeCost Of(Recipe recipe, Cookbook book, decimal gramsIn, IReadOnlyList<PackPrice> packs)
    {
        var total = book.Total(recipe).Grams;
        var comesOut = total > 0 ? book.Yield(recipe).Grams * gramsIn / total : 0;
        var needs = book.Needs(recipe).Select(n => (Id: n.Key, Grams: n.Value * comesOut, Pack: packs.FirstOrDefault(p => p.Ingredient == n.Key))).ToList();
        List<string> missing = [.. needs.Where(n => n.Pack is null).Select(n => book.Ingredient(n.Id)?.Name ?? n.Id).Order(StringComparer.Ordinal)];
        return new RecipeCost(missing.Count == 0 ? needs.Sum(n => n.Grams * n.Pack!.Gram) : null, missing);
    }
}
