namespace Bakehouse.Web.TheRecipes;

using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Recipes;

/// <summary>What is said about a pack.</summary>
internal static class PackWords
{
    /// <summary>"Contains milk." as far as the pack in use was read.</summary>
    public static string Line(Ingredient ingredient, AllergenRules rules) => ContainsWords.Line(Contents(ingredient, rules), rules);

    /// <summary>What stands on a pack, in words: "pack L204" or "the pack without a mark".</summary>
    public static string Mark(string lot) => lot.Length == 0 ? "the pack without a mark" : $"pack {lot}";

    /// <summary>The findings of the pack in use alone.</summary>
    public static Contents Contents(Ingredient ingredient, AllergenRules rules) => new(
        [.. rules.All.Select(a => new Finding(a.Id, StatusOf(ingredient.InUse?.Facts, a.Id), ingredient.Name)).Where(f => f.Status != AllergenStatus.HasNot)]);

    /// <summary>Of sulphites by the figure of the pack, of all others by its lists.</summary>
    public static AllergenStatus StatusOf(AllergenFacts? facts, string allergen) =>
        facts is null ? AllergenStatus.Unknown
        : allergen != KnownAllergens.Sulphites || facts.SulphitesMgPerKg is not { } milligrams ? facts.Of(allergen)
        : milligrams >= KnownAllergens.SulphitesFrom ? AllergenStatus.Has
        : milligrams > 0 ? AllergenStatus.May
        : AllergenStatus.HasNot;
}
