namespace Bakehouse.Domain.Planning;

using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;

/// <summary>
/// Says of each bowlful and load which words of the week's customers it meets: by what its sponge or filling usually contains, and by the
/// recipe that the cake is made from. A wheat batter meets "gluten", and a shop that puts almonds into its vanilla cleans the bowl down
/// for "nuts". What may be in a pack counts as in it; what nobody knows is stopped elsewhere.
/// </summary>
internal sealed class GoesIn
{
    private readonly AllergenRules rules;
    private readonly ByHand hand;
    private readonly IReadOnlyDictionary<string, IReadOnlySet<string>> words;
    private readonly Dictionary<(Cookbook, string), IReadOnlyList<string>> known = [];

    /// <param name="orders">All that are planned: what one must avoid counts for the bowls of the others.</param>
    public GoesIn(IEnumerable<Order> orders, AllergenRules rules, ByHand hand)
    {
        (this.rules, this.hand) = (rules, hand);
        words = orders.SelectMany(o => o.Allergies.Avoid).Distinct(StringComparer.Ordinal).ToDictionary(w => w, Ids, StringComparer.Ordinal);
    }

    /// <summary>The steps of an order with the words that each meets; never kept from what it holds itself, which is stopped elsewhere.</summary>
    public IEnumerable<Step> Of(Order order, IReadOnlyList<Step> steps)
    {
        if (words.Count == 0)
        {
            return steps;
        }

        var recipes = hand.RecipesOf(order);
        return steps.Select(s => RecipeOf(s, order) is { } recipe ? Met(s, [.. s.Has.SelectMany(Ids), .. Contained(recipe, recipes)]) : s);
    }

    /// <summary>Dust in the air by every word that covers it.</summary>
    public IReadOnlyList<Air> Dust(IReadOnlyList<Air> air) =>
        [.. air, .. air.SelectMany(a => words.Where(w => w.Key != a.Allergen && w.Value.Contains(a.Allergen)).Select(w => a with { Allergen = w.Key }))];

    private Step Met(Step step, HashSet<string> ids)
    {
        var met = words.Where(w => w.Value.Overlaps(ids)).Select(w => w.Key).Except(step.Has, StringComparer.Ordinal).ToList();
        return met.Count == 0 ? step : step with { Has = [.. step.Has, .. met], Avoid = [.. step.Avoid.Except(met, StringComparer.Ordinal)] };
    }

    private IReadOnlySet<string> Ids(string word) => rules.Covered(word).Append(word).ToHashSet(StringComparer.Ordinal);

    /// <summary>A mix is named by its recipe; what is in the oven is the sponge of its tier.</summary>
    private static string? RecipeOf(Step step, Order order) => step.Mix is { } mix ? mix.Family
        : step.Bake is not null && StepKey.Parse(step.Id)?.Tier is { } tier ? order.Tiers.FirstOrDefault(t => t.Id == tier)?.Sponge
        : null;

    private IReadOnlyList<string> Contained(string recipe, Cookbook book)
    {
        if (!known.TryGetValue((book, recipe), out var has))
        {
            has = book.Recipe(recipe) is { } made ? In(made, book) : [];
            known[(book, recipe)] = has;
        }

        return has;
    }

    private IReadOnlyList<string> In(Recipe made, Cookbook book)
    {
        var contents = Contents.Of([new RecipePart(made, book.Total(made))], book, rules);
        return [.. contents.Has.Concat(contents.May).Distinct(StringComparer.Ordinal)];
    }
}
