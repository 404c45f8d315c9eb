namespace Bakehouse.Domain.Prices;

using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Structure;
using static System.FormattableString;

/// <summary>What a line of cost is for.</summary>
public enum CostKind
{
    /// <summary>What is weighed in.</summary>
    Ingredient,

    /// <summary>Boards, drum, box, supports, rod.</summary>
    Packaging,

    /// <summary>Planned minutes of hands.</summary>
    Hands,

    /// <summary>The order's part of what a year costs.</summary>
    Overhead,
}

/// <summary>A line of cost.</summary>
/// <param name="Name">In the shop's words.</param>
/// <param name="Amount">How much of it: "1.25 kg", "6.5 h", "2".</param>
/// <param name="Cost">In whole coins.</param>
public sealed record CostLine(CostKind Kind, string Name, string Amount, decimal Cost);

/// <summary>What an order costs, line by line, and the prices that follow. Lines are in whole coins and add up to the cost.</summary>
/// <param name="Lines">In the order of the kinds.</param>
/// <param name="Unpriced">Names of what nobody has given a price for: it counts as nothing, so the cost is too low.</param>
public sealed record CakeCost(IReadOnlyList<CostLine> Lines, CostRates Rates, IReadOnlyList<string> Unpriced)
{
    /// <summary>All of it.</summary>
    public decimal Cost => Lines.Sum(l => l.Cost);

    /// <summary>Of one kind.</summary>
    public decimal Of(CostKind kind) => Lines.Where(l => l.Kind == kind).Sum(l => l.Cost);

    /// <summary>Cost and mark-up, up to the next step.</summary>
    public decimal Price => Cash.UpTo(Cash.Rounded(Earning.Price(Cost, Rates.MarkUp)), Rates.Step);

    /// <summary>Cost and least mark-up in whole coins: below it the order is not worth its work.</summary>
    public decimal Floor => Cash.Rounded(Earning.Price(Cost, Rates.LeastMarkUp));

    /// <summary>What a price leaves after cost.</summary>
    public decimal Earned(decimal price) => price - Cost;

    /// <summary>A cost of amounts that are known already.</summary>
    /// <param name="minutes">Of hands, with preparing and washing up.</param>
    public static CakeCost Of(decimal ingredients, decimal packaging, int minutes, CostRates rates) => new(
        [new(CostKind.Ingredient, "Ingredients", "", Cash.Rounded(ingredients)), new(CostKind.Packaging, "Packaging", "", Cash.Rounded(packaging)), .. Hours(minutes, rates)], rates, []);

    /// <summary>The cost of an order.</summary>
    /// <param name="minutes">Planned minutes of hands, zero or more.</param>
    public static CakeCost Of(Order order, BuildSheet sheet, Cookbook book, int minutes, CostRates rates)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(minutes);
        if (rates.Problems().ToList() is { Count: > 0 } problems)
        {
            throw new ArgumentException(string.Join(" ", problems), nameof(rates));
        }

        var (ingredients, unpriced) = Ingredients(order, sheet, book, rates);
        var (packaging, missing) = new PackagingCost(sheet, TravelPart.Of(sheet, order.Handover.RouteMinutes), rates).Lines();
        return new CakeCost([.. ingredients, .. packaging, .. Hours(minutes, rates)], rates, [.. unpriced, .. missing]);
    }

    private static IEnumerable<CostLine> Hours(int minutes, CostRates rates) =>
    [
        new(CostKind.Hands, "Hands", Invariant($"{minutes / 60m:0.##} h"), Cash.Rounded(minutes * rates.Wage / 60)),
        new(CostKind.Overhead, "Overhead", "1 order", Cash.Rounded(rates.Overhead)),
    ];

    /// <summary>Grams of everything that is weighed in, by ingredient; what has no recipe or no price is named.</summary>
    private static (IReadOnlyList<CostLine> Lines, IReadOnlyList<string> Unpriced) Ingredients(Order order, BuildSheet sheet, Cookbook book, CostRates rates)
    {
        var (grams, unknown) = IngredientNeeds.Of(order, sheet, book);
        var priced = grams.Select(g => (book.Ingredient(g.Key)!.Name, Grams: g.Value, Price: rates.Packs.FirstOrDefault(p => p.Ingredient == g.Key))).OrderBy(g => g.Name, StringComparer.Ordinal).ToList();
        return (
            [.. priced.Where(p => p.Price is not null).Select(p => new CostLine(CostKind.Ingredient, p.Name, Invariant($"{p.Grams:0} g"), Cash.Rounded(p.Grams * p.Price!.Gram)))],
            [.. unknown, .. priced.Where(p => p.Price is null).Select(p => p.Name)]);
    }
}

/// <summary>What must be weighed in for an order.</summary>
public static class IngredientNeeds
{
    /// <summary>Grams by ingredient id, and the names of parts that no recipe describes.</summary>
    public static (IReadOnlyDictionary<string, decimal> Grams, IReadOnlyList<string> Unknown) Of(Order order, BuildSheet sheet, Cookbook book)
    {
        var grams = new SortedDictionary<string, decimal>(StringComparer.Ordinal);
        var unknown = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var part in CakeParts.Of(order, sheet).Values.SelectMany(p => p))
        {
            if (book.Recipe(part.Recipe) is not { } recipe)
            {
                unknown.Add(part.Name);
                continue;
            }

            // Batter is measured at the bowl, before the oven takes its part; all else as it goes on. Without a mass it is what the recipe makes.
            var atBowl = recipe.Kind == RecipeKind.Sponge ? 1 - (recipe.LossPercent / 100) : 1;
            var comesOut = part.Made.Grams > 0 ? part.Made.Grams * atBowl : book.Yield(recipe).Grams;
            foreach (var (id, each) in book.Needs(recipe))
            {
                grams[id] = grams.GetValueOrDefault(id) + (each * comesOut);
            }
        }

        return (grams, [.. unknown]);
    }
}
