namespace Bakehouse.Domain.Allergens;

using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Recipes;
using static System.FormattableString;

/// <summary>Why an allergen counts as it does: what it is in.</summary>
/// <param name="In">Name of the ingredient, or of the recipe that is missing.</param>
public sealed record Finding(string Allergen, AllergenStatus Status, string In);

/// <summary>So much of a recipe in something; at the mixing bowl.</summary>
public sealed record RecipePart(Recipe Recipe, Mass Mass);

/// <summary>What is known about the allergens of something made. An allergen without a finding was read to be in none of it.</summary>
public sealed record Contents(IReadOnlyList<Finding> Findings)
{
    /// <summary>Nothing is in it.</summary>
    public static Contents Nothing { get; } = new([]);

    /// <summary>Allergens that are in it, by id.</summary>
    public IEnumerable<string> Has => Of(AllergenStatus.Has);

    /// <summary>Allergens that may be in it, as packs say.</summary>
    public IEnumerable<string> May => Of(AllergenStatus.May);

    /// <summary>Allergens of which nobody knows.</summary>
    public IEnumerable<string> Unknown => Of(AllergenStatus.Unknown);

    /// <summary>What is known of one.</summary>
    public AllergenStatus Status(string allergen) => Findings.Where(f => f.Allergen == allergen).Select(f => f.Status).DefaultIfEmpty(AllergenStatus.HasNot).Max();

    /// <summary>In what it is, by name.</summary>
    public IReadOnlyList<string> In(string allergen)
    {
        var status = Status(allergen);
        return [.. Findings.Where(f => f.Allergen == allergen && f.Status == status).Select(f => f.In).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
    }

    /// <summary>All of them together.</summary>
    public static Contents Together(IEnumerable<Contents> contents) => new([.. contents.SelectMany(c => c.Findings).Distinct()]);

    /// <summary>Nothing is known about something, since it has no recipe.</summary>
    public static Contents NoRecipe(string name, AllergenRules rules) => new([.. rules.All.Select(a => new Finding(a.Id, AllergenStatus.Unknown, $"{name} (no recipe)"))]);

    /// <summary>What is known about parts that are eaten together, through every recipe inside them.</summary>
    public static Contents Of(IReadOnlyList<RecipePart> parts, Cookbook book, AllergenRules rules)
    {
        var used = parts.SelectMany(p => book.Needs(p.Recipe).Keys).Distinct(StringComparer.Ordinal).Select(id => book.Ingredient(id)!).ToList();
        var found = used.SelectMany(i => rules.All.Where(a => a.Id != KnownAllergens.Sulphites).Select(a => new Finding(a.Id, i.InUse?.Facts?.Of(a.Id) ?? AllergenStatus.Unknown, i.Name)))
            .Where(f => f.Status != AllergenStatus.HasNot);
        return new Contents([.. found, .. Sulphites(parts, used, book)]);
    }

    /// <summary>
    /// Sulphites of what is eaten, mg/kg: those of all ingredients together over what comes out. Null if some figure is not known.
    /// Nothing is taken off for what leaves in the oven.
    /// </summary>
    public static decimal? SulphitesMgPerKg(IReadOnlyList<RecipePart> parts, Cookbook book)
    {
        var comesOut = parts.Sum(ComesOut);
        var sum = 0m;
        foreach (var part in parts)
        {
            foreach (var (id, share) in book.Needs(part.Recipe))
            {
                if (book.Ingredient(id)!.InUse?.Facts?.SulphitesMgPerKg is not { } milligrams)
                {
                    return null;
                }

                sum += milligrams * share * ComesOut(part);
            }
        }

        return comesOut == 0 ? 0 : sum / comesOut;
    }

    private static decimal ComesOut(RecipePart part) => part.Mass.Grams * (1 - (part.Recipe.LossPercent / 100));

    private IEnumerable<string> Of(AllergenStatus status) =>
        Findings.Select(f => f.Allergen).Distinct(StringComparer.Ordinal).Where(a => Status(a) == status).Order(StringComparer.Ordinal);

    private static IEnumerable<Finding> Sulphites(IReadOnlyList<RecipePart> parts, List<Ingredient> used, Cookbook book)
    {
        var (id, all) = (KnownAllergens.Sulphites, SulphitesMgPerKg(parts, book));
        foreach (var ingredient in used)
        {
            var facts = ingredient.InUse?.Facts;
            if (facts is { SulphitesMgPerKg: null } && facts.Of(id) != AllergenStatus.Unknown)
            {
                yield return new Finding(id, facts.Of(id), ingredient.Name);
            }
            else if (facts?.SulphitesMgPerKg is null)
            {
                yield return new Finding(id, AllergenStatus.Unknown, ingredient.Name);
            }
            else if (facts.SulphitesMgPerKg > 0)
            {
                var over = all >= KnownAllergens.SulphitesFrom || facts.Has.Contains(id);
                yield return new Finding(id, over ? AllergenStatus.Has : AllergenStatus.May, all is null ? ingredient.Name : Invariant($"{ingredient.Name} ({all:0.#} mg/kg of the whole)"));
            }
        }
    }
}
