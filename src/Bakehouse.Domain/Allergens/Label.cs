namespace Bakehouse.Domain.Allergens;

using Bakehouse.Domain.Recipes;

/// <summary>Why there is no label yet.</summary>
public enum LabelGap
{
    /// <summary>A part has no recipe.</summary>
    NoRecipe,

    /// <summary>No pack of an ingredient is open, or nobody has read its label.</summary>
    NotRead,

    /// <summary>A pack was read, but not for everything that the law's list or the shop asks for.</summary>
    ReadInPart,
}

/// <summary>One thing that a label waits for.</summary>
/// <param name="Id">Of the ingredient; "" for a part without a recipe.</param>
/// <param name="Name">As it is called in the kitchen.</param>
/// <param name="Unknown">How the allergens are said of which its pack was not read; "" if those are many or all.</param>
public sealed record LabelWaits(LabelGap Gap, string Id, string Name, string Unknown = "");

/// <summary>
/// The list of ingredients as it may be printed: the whole of it, or nothing and what it waits for. A list in which something is
/// missing would read like a promise, so there is no way to get a part of one.
/// </summary>
public sealed class Label
{
    private const int MostSaid = 4;

    private readonly IReadOnlyList<LabelRun> listed;

    private Label(IReadOnlyList<LabelRun> listed, IReadOnlyList<LabelWaits> waits) => (this.listed, Waits) = (listed, waits);

    /// <summary>What it waits for; empty if it may be printed.</summary>
    public IReadOnlyList<LabelWaits> Waits { get; }

    /// <summary>The whole list; empty as long as it waits for something.</summary>
    public IReadOnlyList<LabelRun> Runs => Waits.Count > 0 ? [] : listed;

    /// <summary>The whole list as plain text, stressed words in capitals; "" as long as it waits for something.</summary>
    public string Text => string.Concat(Runs.Select(r => r.Stressed ? r.Text.ToUpperInvariant() : r.Text));

    /// <summary>The label of parts that are sold as one.</summary>
    /// <param name="noRecipe">Names of parts that no recipe describes.</param>
    public static Label Of(IReadOnlyList<RecipePart> parts, IReadOnlyList<string> noRecipe, Cookbook book, AllergenRules rules)
    {
        var used = parts.SelectMany(p => book.Needs(p.Recipe).Keys).Distinct(StringComparer.Ordinal).Select(id => book.Ingredient(id)!).OrderBy(i => i.Name, StringComparer.Ordinal);
        return new Label(
            IngredientList.Of(parts, book, rules),
            [.. noRecipe.Distinct(StringComparer.Ordinal).Select(name => new LabelWaits(LabelGap.NoRecipe, "", name)), .. used.Select(i => Waiting(i, rules)).OfType<LabelWaits>()]);
    }

    /// <summary>The same, waiting for whatever any of those waits for: of a cake with an unread pack no tier has a label.</summary>
    internal Label Beside(IEnumerable<Label> others) => new(listed, [.. others.SelectMany(o => o.Waits).Distinct().OrderBy(w => w.Gap).ThenBy(w => w.Name, StringComparer.Ordinal)]);

    /// <summary>True if the other lists the same, whether or not either may be printed.</summary>
    internal bool ListsTheSame(Label other) => listed.SequenceEqual(other.listed);

    private static LabelWaits? Waiting(Ingredient ingredient, AllergenRules rules)
    {
        if (ingredient.InUse?.Facts is not { } facts)
        {
            return new LabelWaits(LabelGap.NotRead, ingredient.Id, ingredient.Name);
        }

        List<string> unknown = [.. rules.MustKnow.Where(a => !Knows(facts, a))];
        return unknown.Count == 0 ? null : new LabelWaits(LabelGap.ReadInPart, ingredient.Id, ingredient.Name, unknown.Count > MostSaid ? "" : string.Join(", ", unknown.Select(rules.NameOf)));
    }

    private static bool Knows(AllergenFacts facts, string allergen) =>
        facts.Of(allergen) != AllergenStatus.Unknown || (allergen == KnownAllergens.Sulphites && facts.SulphitesMgPerKg is not null);
}
