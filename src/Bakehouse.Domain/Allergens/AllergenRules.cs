namespace Bakehouse.Domain.Allergens;

using Bakehouse.Domain.Recipes;

/// <summary>What the owner does when a customer must avoid something that is used in the kitchen, though not in this cake.</summary>
public enum KitchenRule
{
    /// <summary>No order is taken for it.</summary>
    Refuse,

    /// <summary>Taken, with a wet clean-down, clean kit and a stop sign on every step.</summary>
    WithControls,

    /// <summary>Taken; it is written on the card and told.</summary>
    Note,
}

/// <summary>The owner's rule for one word of the counter.</summary>
/// <param name="Word">E.g. nuts.</param>
public sealed record AllergenPolicy(string Word, KitchenRule Rule);

/// <summary>The shop's own matters about allergens. Local rules come first.</summary>
/// <param name="Law">Id of the legal list that counts here.</param>
/// <param name="Policies">A word without a row goes with controls.</param>
/// <param name="Traces">The owner's sentence about what is used in this kitchen; printed as it is, may be empty.</param>
public sealed record AllergenRules(string Law, IReadOnlyList<AllergenPolicy> Policies, string Traces)
{
    /// <summary>What a new shop starts with.</summary>
    public static AllergenRules Usual { get; } = new("eu", [], "");

    /// <summary>Allergens that the shop has added to those that are known.</summary>
    public IReadOnlyList<Allergen> Others { get; init; } = [];

    /// <summary>The legal list that counts; of the European Union if the id is none.</summary>
    public LegalList Legal => KnownAllergens.Lists.FirstOrDefault(l => l.Id == Law) ?? KnownAllergens.Eu;

    /// <summary>Every allergen that may be named here.</summary>
    public IEnumerable<Allergen> All => KnownAllergens.All.Concat(Others);

    /// <summary>Ids of those about which nothing may stay unknown: the legal list's and the shop's own.</summary>
    public IEnumerable<string> MustKnow => Legal.Entries.SelectMany(e => e.Covers).Concat(Others.Select(o => o.Id)).Distinct(StringComparer.Ordinal);

    /// <summary>Words to choose from at the counter.</summary>
    public IEnumerable<string> Words => Legal.Entries.Select(e => e.Word).Concat(Others.Select(o => o.Id));

    /// <summary>What can be ticked at the counter: what is told most often first, then the rest of the list and the shop's own.</summary>
    public IEnumerable<string> AtCounter => Often.Union(Words, StringComparer.Ordinal);

    private static readonly string[] Often = ["wheat", "egg", "milk", "nuts", "peanuts", "sesame", "soya", KnownAllergens.Sulphites];

    /// <summary>Ids that a word of the counter covers; empty for a word that nobody knows.</summary>
    public IReadOnlyList<string> Covered(string word) =>
        Others.FirstOrDefault(o => Same(o.Id, word) || Same(o.Name, word)) is { } own ? [own.Id] : KnownAllergens.Covered(word);

    /// <summary>The owner's rule for a word.</summary>
    public KitchenRule RuleFor(string word) => Policies.FirstOrDefault(p => Same(p.Word, word))?.Rule ?? KitchenRule.WithControls;

    /// <summary>How an allergen is said; cereals name their gluten where the list has it.</summary>
    public string NameOf(string allergen)
    {
        var name = All.FirstOrDefault(a => a.Id == allergen)?.Name ?? allergen;
        return Legal.Entries.Any(e => e.Word == "gluten" && e.Covers.Contains(allergen)) ? $"{name} (gluten)" : name;
    }

    /// <summary>Everything wrong with them, in one list.</summary>
    public IEnumerable<Problem> Problems()
    {
        if (KnownAllergens.Lists.All(l => l.Id != Law))
        {
            yield return new Problem("law", Problem.Shown(Law), "There is no such list.", $"Choose {string.Join(" or ", KnownAllergens.Lists.Select(l => l.Name))}.");
        }

        foreach (var problem in Said.Text("traces", "The sentence about the kitchen", Traces, 300, mayBeEmpty: true))
        {
            yield return problem;
        }

        if (PromiseIn(Traces) is { } promise)
        {
            yield return new Problem("traces", promise, "That is a promise which nobody in a kitchen with flour in the air can keep.", "Say what is used in this kitchen.");
        }

        foreach (var word in Policies.Select(p => p.Word).Where(w => Covered(w).Count == 0))
        {
            yield return new Problem("kitchen rules", Problem.Shown(word), "There is a rule for a word that the list does not have.", "Take the rule away, or add the word.");
        }

        foreach (var problem in Others.SelectMany(Own).Concat(Others.Count > 40 ? [new Problem("other allergens", "", "At most 40 can be added.", "Take out what is not asked for.")] : []))
        {
            yield return problem;
        }
    }

    /// <summary>The words of a sentence that promise what no kitchen can keep, or null.</summary>
    internal static string? PromiseIn(string sentence) => Promises.FirstOrDefault(p => sentence.Contains(p, StringComparison.OrdinalIgnoreCase));

    private static readonly string[] Promises = ["free from", "free of", "-free", "safe", "no allergens"];

    private IEnumerable<Problem> Own(Allergen own) =>
    [
        .. Said.Id("other allergens", own.Id),
        .. Said.Text("other allergens", "A name", own.Name, Said.LongestWord, mayBeEmpty: false),
        .. KnownAllergens.All.Any(a => a.Id == own.Id) || Others.Count(o => o.Id == own.Id) > 1 ? [new Problem("other allergens", Problem.Shown(own.Id), "That is on the list already.", "Take the second one away.")] : (Problem[])[],
    ];

    private static bool Same(string a, string b) => string.Equals(a, b.Trim(), StringComparison.OrdinalIgnoreCase);
}
