namespace Bakehouse.Domain.Allergens;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;

/// <summary>What one tier contains.</summary>
/// <param name="Parts">With a recipe; at the mixing bowl.</param>
/// <param name="Missing">Names of parts without a recipe.</param>
/// <param name="Label">The full list of ingredients; nothing as long as something is not known of any tier of the cake.</param>
/// <param name="Alcohol">Names of the ingredients with alcohol; baked or not, some is left.</param>
/// <param name="RawEgg">Names of the recipes with raw egg.</param>
public sealed record TierContents(
    CakeTier Tier, IReadOnlyList<RecipePart> Parts, IReadOnlyList<string> Missing, Contents Contents, Label Label, IReadOnlyList<string> Alcohol, IReadOnlyList<string> RawEgg);

/// <summary>What a cake contains, tier by tier, and the whole.</summary>
/// <param name="Tiers">Bottom first.</param>
public sealed record CakeContents(IReadOnlyList<TierContents> Tiers, Contents Whole)
{
    /// <summary>Worked out from the recipes of that cookbook; null while the order has no build sheet.</summary>
    public static CakeContents? Of(Order order, Cookbook book, AllergenRules rules, CakeFigures figures)
    {
        if (BuildSheet.Try(order.Tiers, order.Finish, figures) is not { } sheet)
        {
            return null;
        }

        var parts = CakeParts.Of(order, sheet);
        List<TierContents> tiers = [.. order.Tiers.Select(t => Of(t, parts[t.Id], book, rules))];
        List<Label> labels = [.. tiers.Select(t => t.Label)];
        return new CakeContents([.. tiers.Select(t => t with { Label = t.Label.Beside(labels) })], Contents.Together(tiers.Select(t => t.Contents)));
    }

    /// <summary>Allergens of which nothing may stay unknown and something does, with what they may be in.</summary>
    public IReadOnlyList<(string Allergen, IReadOnlyList<string> In)> NotKnown(AllergenRules rules) =>
        [.. rules.MustKnow.Where(a => Whole.Status(a) == AllergenStatus.Unknown).Select(a => (a, Whole.In(a)))];

    /// <summary>Ids of all ingredients in it, by the recipes of that cookbook.</summary>
    public IReadOnlyCollection<string> Uses(Cookbook book) => Tiers.SelectMany(t => t.Parts).SelectMany(p => book.Needs(p.Recipe).Keys).ToHashSet(StringComparer.Ordinal);

    private static TierContents Of(CakeTier tier, IReadOnlyList<CakePart> parts, Cookbook book, AllergenRules rules)
    {
        // Of whole nuts nobody has said which: a recipe of that name in an older cookbook would assume one.
        var made = parts.Select(p => (Part: p, Recipe: p.Recipe == Dangers.Topping.WholeNuts ? null : book.Recipe(p.Recipe))).ToList();
        List<RecipePart> known = [.. made.Where(m => m.Recipe is not null).Select(m => new RecipePart(m.Recipe!, m.Part.Mass.Grams > 0 ? m.Part.Mass : book.Total(m.Recipe!)))];
        List<string> missing = [.. made.Where(m => m.Recipe is null).Select(m => m.Part.Name)];
        var contents = Contents.Together([Contents.Of(known, book, rules), .. missing.Select(m => Contents.NoRecipe(m, rules))]);
        return new TierContents(
            tier, known, missing, contents, Label.Of(known, missing, book, rules), [.. known.SelectMany(p => AlcoholLeft.In(p.Recipe, book)).Distinct(StringComparer.Ordinal)], [.. Inside(known, book).Where(r => r.Eggs == EggMethod.Raw).Select(r => r.Name).Distinct(StringComparer.Ordinal)]);
    }

    /// <summary>Those recipes and all inside them.</summary>
    private static IEnumerable<Recipe> Inside(List<RecipePart> parts, Cookbook book)
    {
        var open = new Queue<Recipe>(parts.Select(p => p.Recipe));
        var seen = new HashSet<string>(StringComparer.Ordinal);
        while (open.TryDequeue(out var recipe))
        {
            if (seen.Add(recipe.Id))
            {
                yield return recipe;
                recipe.Lines.Where(l => l.IsRecipe).Select(l => book.Recipe(l.Of)!).ToList().ForEach(open.Enqueue);
            }
        }
    }
}
