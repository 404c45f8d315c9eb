namespace Bakehouse.Domain.Allergens;

using Bakehouse.Domain.Orders;

/// <summary>What follows from a customer's word, the least trouble first.</summary>
public enum Verdict
{
    /// <summary>Taken; it is written on the card and told.</summary>
    Note,

    /// <summary>Taken with a wet clean-down, clean kit and a stop sign on every step.</summary>
    WithControls,

    /// <summary>Nobody can say yet: it may only be kept.</summary>
    NotKnown,

    /// <summary>Not taken as it is.</summary>
    Refuse,
}

/// <summary>One thing told, weighed against what the cake contains and the owner's rule.</summary>
/// <param name="Told">The word of the counter, or the customer's own.</param>
/// <param name="Reason">Why, in a sentence.</param>
/// <param name="Try">What to do.</param>
public sealed record Weighed(string Told, Verdict Verdict, string Reason, string Try);

/// <summary>
/// Weighs the customer's word against the cake and the owner's rule (our own rules). No verdict says that a cake may be eaten: that is
/// for the customer, who hears what it contains and what is used in the kitchen.
/// </summary>
public static class Weighing
{
    /// <summary>One verdict for each thing told; empty if none was told.</summary>
    public static IReadOnlyList<Weighed> Of(AllergyAnswer answer, CakeContents cake, AllergenRules rules)
    {
        if (answer.Kind != AllergyKind.Avoid)
        {
            return [];
        }

        return answer.Avoid.Count > 0
            ? [.. answer.Avoid.Select(word => One(word, answer.Told, cake.Whole, rules)), .. answer.MustBeJudged ? [NotJudged(answer.Words.Trim())] : (Weighed[])[]]
            : answer.Words.Trim().Length == 0 ? [NothingSaid] : [NoSuchWord(answer.Words.Trim(), answer.Told, rules)];
    }

    private static Weighed One(string word, CustomersWord told, Contents whole, AllergenRules rules)
    {
        var covered = rules.Covered(word);
        if (covered.Count == 0)
        {
            return NoSuchWord(word, told, rules);
        }

        var worst = covered.MaxBy(whole.Status)!;
        var (name, where) = (rules.NameOf(worst), string.Join(", ", whole.In(worst)));
        return whole.Status(worst) switch
        {
            AllergenStatus.Has => InIt(word, told, $"It contains {name}: {where}."),
            AllergenStatus.Unknown => NotKnown(word, told, $"Nobody has said whether there is {name} in {where}."),
            AllergenStatus.May => MayBe(word, told, $"It may contain {name}: {where}."),
            _ => NotInIt(word, told, rules),
        };
    }

    private static Weighed InIt(string word, CustomersWord told, string reason) => told == CustomersWord.Dislike
        ? new(word, Verdict.Note, reason, "Say so, and offer another sponge, filling or decoration.")
        : new(word, Verdict.Refuse, reason, "Choose another sponge, filling or decoration, or don't take it.");

    private static Weighed NotKnown(string word, CustomersWord told, string reason) => told == CustomersWord.Dislike
        ? new(word, Verdict.Note, reason, "Say so.")
        : new(word, Verdict.NotKnown, reason, "Keep the day only, and read the pack. Take it once that is known.");

    private static Weighed MayBe(string word, CustomersWord told, string reason) => told switch
    {
        CustomersWord.Dislike => new(word, Verdict.Note, reason, "Say so."),
        CustomersWord.Intolerance => new(word, Verdict.WithControls, reason, "Tell the customer, who decides; write down who said yes."),
        _ => new(word, Verdict.Refuse, reason, "Use another pack or another recipe, or don't take it."),
    };

    /// <summary>Not in the cake, but perhaps in the kitchen: the owner's rule, a step more careful for anaphylaxis and a step less for a dislike.</summary>
    private static Weighed NotInIt(string word, CustomersWord told, AllergenRules rules)
    {
        var verdict = (rules.RuleFor(word), told) switch
        {
            (_, CustomersWord.Dislike) => Verdict.Note,
            (KitchenRule.Refuse, CustomersWord.Intolerance) => Verdict.WithControls,
            (KitchenRule.Refuse, _) => Verdict.Refuse,
            (KitchenRule.Note, CustomersWord.Anaphylaxis) => Verdict.WithControls,
            (KitchenRule.Note, _) => Verdict.Note,
            _ => Verdict.WithControls,
        };
        var reason = $"No recipe of this cake lists {word}. What is used in this kitchen can still get in.";
        return verdict switch
        {
            Verdict.Refuse => new(word, verdict, $"{reason} The owner's rule is to refuse.", "Don't take it, or ask the owner."),
            Verdict.WithControls => new(word, verdict, reason, "Wet clean-down before, clean kit, stop sign on every step. Tell the customer what is used in this kitchen."),
            _ => new(word, verdict, reason, "Tell the customer what is used in this kitchen."),
        };
    }

    /// <summary>The customer's words beside what is ticked: a person reads them, no program does.</summary>
    internal static Weighed NotJudged(string words) =>
        new(Problem.Shown(words), Verdict.NotKnown, "Nobody has said yet whether these words name something that is not ticked.", "Ask the customer, tick everything that must be avoided, then say that nothing else is in the words.");

    /// <summary>"Avoid" is chosen and nobody has said what.</summary>
    private static Weighed NothingSaid { get; } =
        new("", Verdict.NotKnown, "Nobody has said yet what must be avoided.", "Ask, and tick each thing, or write it in the customer's words.");

    private static Weighed NoSuchWord(string word, CustomersWord told, AllergenRules rules) => AllergyWords.In(word, rules) is { Count: > 0 } known
        ? new(Problem.Shown(word), told == CustomersWord.Dislike ? Verdict.Note : Verdict.NotKnown, $"Not ticked yet: {string.Join(", ", known.SelectMany(k => k.Buttons).Distinct(StringComparer.Ordinal))}.", "Tick what covers the words, then judge them yourself.")
        : told == CustomersWord.Dislike
        ? new(word, Verdict.Note, "It is not on the list of allergens: nobody has looked for it in the recipes.", "Look at the recipes yourself.")
        : new(word, Verdict.NotKnown, "It is not on the list of allergens: nobody has looked for it in the recipes.", $"Choose what it is ({string.Join(", ", rules.Words)}), or keep the day only until the owner has added it under Shop and the packs are read for it.");
}

/// <summary>The stop sign of a tier: for the card of each of its steps.</summary>
/// <param name="Tier">Id of the tier.</param>
/// <param name="Avoid">"Avoid nuts (allergy)".</param>
/// <param name="Contains">"This tier contains egg, milk, wheat (gluten)."</param>
/// <param name="Met">True if the tier has, or may have, what must be avoided, or nobody knows: nobody works on.</param>
public sealed record StopSign(Guid Tier, string Avoid, string Contains, bool Met)
{
    /// <summary>One for each tier of an order with an allergy or intolerance; none for a dislike.</summary>
    public static IReadOnlyList<StopSign> Of(Order order, CakeContents cake, AllergenRules rules)
    {
        if (order.Allergies is not { Kind: AllergyKind.Avoid, Told: not CustomersWord.Dislike } told)
        {
            return [];
        }

        var words = told.Avoid.Count == 0 || told.MustBeJudged ? [$"“{told.Words.Trim()}”"] : (string[])[];
        var avoid = $"Avoid {string.Join(", ", told.Avoid.Concat(words))} ({told.Told.ToString().ToLowerInvariant()})";
        return [.. cake.Tiers.Select(t => new StopSign(t.Tier.Id, avoid, ContainsWords.Line(t.Contents, rules, "This tier contains"), Meets(told, t, rules)))];
    }

    private static bool Meets(AllergyAnswer told, TierContents tier, AllergenRules rules) =>
        told.Avoid.Count == 0 || told.MustBeJudged || told.Avoid.Any(word => rules.Covered(word) is var covered && (covered.Count == 0 || covered.Any(a => tier.Contents.Status(a) != AllergenStatus.HasNot)));
}

/// <summary>How contents are said. Never that something is not in it.</summary>
public static class ContainsWords
{
    /// <summary>"Contains egg, milk, wheat (gluten). May contain almonds. Not known yet: soya." or "None listed."</summary>
    public static string Line(Contents contents, AllergenRules rules, string contains = "Contains")
    {
        string Names(IEnumerable<string> allergens) => string.Join(", ", allergens.Select(rules.NameOf).Order(StringComparer.Ordinal));
        var unknown = contents.Unknown.Where(rules.MustKnow.Contains).ToList();
        List<string> said = [];
        if (contents.Has.Any())
        {
            said.Add($"{contains} {Names(contents.Has)}.");
        }

        if (contents.May.Any())
        {
            said.Add($"May contain {Names(contents.May)}.");
        }

        if (unknown.Count > 0)
        {
            said.Add($"Not known yet: {(unknown.Count > 4 ? "read the packs" : Names(unknown))}.");
        }

        return said.Count > 0 ? string.Join(' ', said) : "None listed.";
    }
}
