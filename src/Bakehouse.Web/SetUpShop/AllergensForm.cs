namespace Bakehouse.Web.SetUpShop;

using System.Text.RegularExpressions;
using Bakehouse.Domain;
using Bakehouse.Domain.Allergens;

/// <summary>The owner's rules about allergens as typed.</summary>
public sealed partial class AllergensForm
{
    /// <summary>Id of the legal list.</summary>
    public string Law { get; set; } = AllergenRules.Usual.Law;

    /// <summary>What is done for each word of the counter; a word without a row goes with controls.</summary>
    public IDictionary<string, KitchenRule> Rules { get; set; } = new Dictionary<string, KitchenRule>(StringComparer.Ordinal);

    /// <summary>The owner's sentence about what is used in the kitchen.</summary>
    public string Traces { get; set; } = "";

    /// <summary>"kiwi (kiwis, kiwifruit), coconut": what is looked for beyond the list, with other words for it; "" for nothing.</summary>
    public string Others { get; set; } = "";

    /// <summary>The form filled with what the shop has.</summary>
    public static AllergensForm Of(AllergenRules? rules) => new()
    {
        Law = (rules ?? AllergenRules.Usual).Law,
        Rules = (rules?.Policies ?? []).GroupBy(p => p.Word, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.First().Rule, StringComparer.Ordinal),
        Traces = rules?.Traces ?? "",
        Others = string.Join(", ", (rules?.Others ?? []).Select(Said)),
    };

    /// <summary>Every word that a rule can be given for, as far as the form can be read, with how it is said.</summary>
    public IReadOnlyList<(string Word, string Said)> Words(AllergenRules? before)
    {
        var rules = AllergenRules.Usual with { Law = Law, Others = ReadOthers(before, []) };
        return [.. rules.AtCounter.Union(Rules.Keys, StringComparer.Ordinal).Select(w => (w, rules.Others.FirstOrDefault(o => o.Id == w)?.Name ?? w))];
    }

    /// <summary>What is done for that word.</summary>
    public KitchenRule RuleFor(string word) => Rules.TryGetValue(word, out var rule) ? rule : KitchenRule.WithControls;

    /// <summary>As the shop has it; what can't stand is added to the problems.</summary>
    /// <param name="before">As it was: what stays on the list keeps its id, by which packs name it.</param>
    internal AllergenRules Read(AllergenRules? before, ICollection<Problem> problems)
    {
        var others = ReadOthers(before, problems);
        var rules = new AllergenRules(Law, [.. Rules.Where(r => r.Value != KitchenRule.WithControls).Select(r => new AllergenPolicy(r.Key, r.Value))], Traces.Trim()) { Others = others };
        // The rule for a word that is taken off the list goes with it.
        rules = rules with { Policies = [.. rules.Policies.Where(p => rules.Covered(p.Word).Count > 0 || before?.Others.Any(o => o.Id == p.Word) != true)] };
        foreach (var problem in rules.Problems())
        {
            problems.Add(ShopFields.OnPage(problem));
        }

        return rules;
    }

    private List<Allergen> ReadOthers(AllergenRules? before, ICollection<Problem> problems)
    {
        List<Allergen> read = [];
        if (Others.Trim().Length == 0)
        {
            return read;
        }

        if (Others.Length > 4000 || List().Match(Others) is not { Success: true } list)
        {
            problems.Add(new Problem("other-allergens", Problem.Shown(Others), "This list can't be read.", "Write kiwi, coconut, each once, other words for it in brackets: kiwi (kiwifruit). Or leave it empty."));
            return read;
        }

        foreach (var one in list.Groups["one"].Captures.Select(c => c.Value))
        {
            var parts = one.Split('(', ')');
            var name = parts[0].Trim();
            var words = parts.Length > 1 ? parts[1].Split(',') : [];
            read.Add(new Allergen(IdOf(name, before, read), name, [name, .. words.Select(w => w.Trim()).Where(w => w.Length > 0 && !Same(w, name)).Distinct(StringComparer.OrdinalIgnoreCase)]));
        }

        return read;
    }

    private static string IdOf(string name, AllergenRules? before, List<Allergen> read)
    {
        if (before?.Others.FirstOrDefault(o => Same(o.Name, name)) is { } was)
        {
            return was.Id;
        }

        // A name in other letters gets a number: packs name it by that.
        var id = string.Join('-', name.ToLowerInvariant().Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(w => string.Concat(w.Where(char.IsAsciiLetterOrDigit))).Where(w => w.Length > 0));
        return id.Length > 0 ? id : Enumerable.Range(1, 100).Select(n => FormattableString.Invariant($"own-{n}")).First(o => (before?.Others ?? []).Concat(read).All(r => r.Id != o));
    }

    private static string Said(Allergen own) => own.Words.Where(w => !Same(w, own.Name)).ToList() is { Count: > 0 } words ? $"{own.Name} ({string.Join(", ", words)})" : own.Name;

    private static bool Same(string a, string b) => string.Equals(a.Trim(), b.Trim(), StringComparison.OrdinalIgnoreCase);

    [GeneratedRegex(@"^(?<one>[^(),]*[^(),\s][^(),]*(\([^()]*\)\s*)?)(,(?<one>[^(),]*[^(),\s][^(),]*(\([^()]*\)\s*)?))*$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex List();
}
