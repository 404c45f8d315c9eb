namespace Bakehouse.Domain.Allergens;

/// <summary>What is known about one allergen in something, the least trouble first. Not known is not "no".</summary>
public enum AllergenStatus
{
    /// <summary>Somebody has read that it is not in it.</summary>
    HasNot,

    /// <summary>The pack says that it may be in it; or sulphites that stay under the limit.</summary>
    May,

    /// <summary>Nobody has said. It blocks whatever must be sure.</summary>
    Unknown,

    /// <summary>It is in it.</summary>
    Has,
}

/// <summary>What a pack's label says. An allergen in none of the three lists is not known.</summary>
/// <param name="Has">Ids of what is in it.</param>
/// <param name="May">Ids of what the pack says that it may contain.</param>
/// <param name="HasNot">Ids of what is not in it.</param>
/// <param name="SulphitesMgPerKg">Milligrams of SO2 in a kilogram; null if not known. Sulphites go by this figure, unless they are in a list.</param>
public sealed record AllergenFacts(IReadOnlyList<string> Has, IReadOnlyList<string> May, IReadOnlyList<string> HasNot, decimal? SulphitesMgPerKg)
{
    /// <summary>A label read against every known allergen: those are in it, no other.</summary>
    public static AllergenFacts Only(params IReadOnlyList<string> has) =>
        new(has, [], [.. KnownAllergens.All.Select(a => a.Id).Where(a => a != KnownAllergens.Sulphites).Except(has, StringComparer.Ordinal)], 0);

    /// <summary>What is known of one allergen; of sulphites under a limit of amount, see <see cref="SulphitesMgPerKg"/>.</summary>
    public AllergenStatus Of(string allergen) =>
        Has.Contains(allergen) ? AllergenStatus.Has
        : May.Contains(allergen) ? AllergenStatus.May
        : HasNot.Contains(allergen) ? AllergenStatus.HasNot
        : AllergenStatus.Unknown;

    /// <summary>True if the other says the same of every allergen.</summary>
    public bool Says(AllergenFacts? other) => other is not null && SulphitesMgPerKg == other.SulphitesMgPerKg
        && Has.ToHashSet(StringComparer.Ordinal).SetEquals(other.Has) && May.ToHashSet(StringComparer.Ordinal).SetEquals(other.May) && HasNot.ToHashSet(StringComparer.Ordinal).SetEquals(other.HasNot);
}
