namespace Bakehouse.Domain.Recipes;

using Bakehouse.Domain.Allergens;

/// <summary>What an ingredient does in a recipe, as far as it is counted.</summary>
public enum IngredientKind
{
    /// <summary>Anything else.</summary>
    Other,

    /// <summary>Counts as flour: 100 in baker's percent.</summary>
    Flour,

    /// <summary>Sugars and syrups.</summary>
    Sugar,

    /// <summary>Butter, oil, shortening.</summary>
    Fat,

    /// <summary>Water, milk, cream, juice.</summary>
    Liquid,

    /// <summary>Whole egg, white or yolk, out of the shell.</summary>
    Egg,

    /// <summary>Baking powder.</summary>
    BakingPowder,

    /// <summary>Baking soda.</summary>
    BakingSoda,
}

/// <summary>What one kitchen measure of an ingredient weighs: "cup", "cup, packed", "tsp", "stick", "large".</summary>
/// <param name="Measure">Each kind of cup is a measure of its own: sifted and unsifted differ by a fifth.</param>
public sealed record KitchenWeight(string Measure, decimal Grams);

/// <summary>A part of a bought ingredient, as its label names it.</summary>
/// <param name="Has">Ids of the allergens in it.</param>
public sealed record Component(string Label, IReadOnlyList<string> Has);

/// <summary>A pack of an ingredient: another lot or another maker is another pack.</summary>
/// <param name="Lot">What stands on it, so that it can be told from the others.</param>
/// <param name="Facts">What its label says, or null as long as nobody has read it.</param>
public sealed record Pack(string Lot, AllergenFacts? Facts);

/// <summary>Something that is bought and weighed in.</summary>
/// <param name="Id">Short, lower case; stands in recipes.</param>
/// <param name="Version">1 and up; each saved change adds one.</param>
/// <param name="Name">As it is called in the kitchen.</param>
/// <param name="Label">As it is called in a list of ingredients.</param>
/// <param name="Weights">Grams of its kitchen measures.</param>
/// <param name="Source">Where the weights come from, e.g. "USDA SR28, NDB 20081"; "" if they are the shop's own.</param>
/// <param name="Packs">The one in use first.</param>
public sealed record Ingredient(
    string Id, int Version, string Name, string Label, IngredientKind Kind, IReadOnlyList<KitchenWeight> Weights, string Source, IReadOnlyList<Pack> Packs)
{
    /// <summary>Grams in a millilitre, more than zero; null if nobody has measured it.</summary>
    public decimal? GramsPerMillilitre { get; init; }

    /// <summary>Alcohol, percent by volume; 0 to 100.</summary>
    public decimal AlcoholPercent { get; init; }

    /// <summary>What a compound ingredient is made of, most first as on its pack; empty for a simple one.</summary>
    public IReadOnlyList<Component> MadeOf { get; init; } = [];

    /// <summary>The pack that is used, or null if there is none.</summary>
    public Pack? InUse => Packs.Count > 0 ? Packs[0] : null;

    /// <summary>The same with that pack in use; throws if there is none of that lot.</summary>
    public Ingredient Using(string lot)
    {
        var pack = Packs.FirstOrDefault(p => p.Lot == lot) ?? throw new ArgumentOutOfRangeException(nameof(lot), lot, $"{Name} has no such pack.");
        return this with { Packs = [pack, .. Packs.Where(p => p != pack)] };
    }

    /// <summary>The same with a new pack in use; until somebody reads its label nothing is known about it.</summary>
    public Ingredient Swapped(Pack pack) => this with { Packs = [pack, .. Packs.Where(p => p.Lot != pack.Lot)] };
}
