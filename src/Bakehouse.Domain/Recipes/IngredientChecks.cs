namespace Bakehouse.Domain.Recipes;

using Bakehouse.Domain.Allergens;
using static System.FormattableString;

/// <summary>What can be wrong with one ingredient.</summary>
internal static class IngredientChecks
{
    /// <summary>Most measures, parts or packs.</summary>
    public const int Most = 40;

    /// <summary>Heaviest, g/mL: beyond any metal.</summary>
    public const int Heaviest = 25;

    public static IEnumerable<Problem> Problems(Ingredient ingredient, IReadOnlySet<string> knows)
    {
        var where = Said.Called(ingredient.Name, ingredient.Id, "An ingredient");
        return
        [
            .. Said.Id(where, ingredient.Id),
            .. Said.Text(where, "Its name", ingredient.Name, Said.LongestName, mayBeEmpty: false),
            .. Said.Text(where, "Its name in lists", ingredient.Label, Said.LongestName, mayBeEmpty: false),
            .. Said.Text(where, "The source of its weights", ingredient.Source, Said.LongestName, mayBeEmpty: true),
            .. Figures(ingredient, where),
            .. ingredient.Weights.SelectMany((w, i) => Weight(w, Invariant($"{where}, measure {i + 1}"))),
            .. ingredient.MadeOf.SelectMany((c, i) => Component(c, Invariant($"{where}, part {i + 1}"), knows)),
            .. Packs(ingredient, where, knows),
        ];
    }

    private static IEnumerable<Problem> Figures(Ingredient ingredient, string where)
    {
        if (ingredient.GramsPerMillilitre is { } density and (<= 0 or > Heaviest))
        {
            yield return new Problem(where, Invariant($"{density} g/mL"), $"A density is more than 0 and at most {Heaviest} g/mL.", "Weigh a level cup and divide by its millilitres, or leave it empty.");
        }

        if (ingredient.AlcoholPercent is < 0 or > 100)
        {
            yield return new Problem(where, Invariant($"{ingredient.AlcoholPercent} %"), "Alcohol is 0 to 100 % by volume.", "Give what stands on the bottle.");
        }

        foreach (var (what, count) in new[] { ("measures", ingredient.Weights.Count), ("parts", ingredient.MadeOf.Count), ("packs", ingredient.Packs.Count) }.Where(c => c.Item2 > Most))
        {
            yield return new Problem(where, Invariant($"{count}"), $"An ingredient has at most {Most} {what}.", "Take out what is not used.");
        }
    }

    private static IEnumerable<Problem> Weight(KitchenWeight weight, string where)
    {
        foreach (var problem in Said.Text(where, "A measure", weight.Measure, Said.LongestWord, mayBeEmpty: false))
        {
            yield return problem;
        }

        if (weight.Measure == RecipeLine.Gram || weight.Grams is < RecipeChecks.LeastGrams or > RecipeChecks.MostGrams)
        {
            yield return new Problem(where, Invariant($"{Problem.Shown(weight.Measure)} {weight.Grams} g"), "A measure has a word of its own and weighs more than nothing.", "Weigh it, and write the grams.");
        }
    }

    private static IEnumerable<Problem> Component(Component part, string where, IReadOnlySet<string> knows) =>
        [.. Said.Text(where, "A part", part.Label, Said.LongestName, mayBeEmpty: false), .. Unknown(part.Has, where, knows)];

    private static IEnumerable<Problem> Packs(Ingredient ingredient, string where, IReadOnlySet<string> knows)
    {
        if (ingredient.Packs.Select(p => p.Lot).Distinct(StringComparer.Ordinal).Count() < ingredient.Packs.Count)
        {
            yield return new Problem(where, "", "Two packs bear the same mark.", "Give one of them another.");
        }

        foreach (var pack in ingredient.Packs)
        {
            var at = $"{where}, pack {Problem.Shown(pack.Lot)}";
            foreach (var problem in Said.Text(at, "Its mark", pack.Lot, Said.LongestWord, mayBeEmpty: true).Concat(pack.Facts is { } facts ? Facts(facts, at, knows) : []))
            {
                yield return problem;
            }
        }

        var unsaid = ingredient.InUse?.Facts is { } read ? ingredient.MadeOf.SelectMany(c => c.Has).Except(read.Has, StringComparer.Ordinal).ToList() : [];
        if (unsaid.Count > 0)
        {
            yield return new Problem(where, Problem.Shown(string.Join(", ", unsaid)), "A part of it has that, and the pack is not marked as having it.", "Mark the pack, too.");
        }
    }

    private static IEnumerable<Problem> Facts(AllergenFacts facts, string where, IReadOnlySet<string> knows)
    {
        if (facts.SulphitesMgPerKg is < 0 or > 1_000_000)
        {
            yield return new Problem(where, Invariant($"{facts.SulphitesMgPerKg} mg/kg"), "Sulphites are 0 to 1 000 000 mg/kg.", "Give milligrams of SO2 in a kilogram, or leave it empty.");
        }

        var twice = facts.Has.Concat(facts.May).Concat(facts.HasNot).GroupBy(a => a, StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => g.Key).ToList();
        if (twice.Count > 0)
        {
            yield return new Problem(where, Problem.Shown(string.Join(", ", twice)), "That is marked twice, or with two answers.", "Leave one of them.");
        }

        foreach (var problem in Unknown(facts.Has.Concat(facts.May).Concat(facts.HasNot), where, knows))
        {
            yield return problem;
        }
    }

    private static IEnumerable<Problem> Unknown(IEnumerable<string> allergens, string where, IReadOnlySet<string> knows)
    {
        var none = allergens.Where(a => !knows.Contains(a)).Distinct(StringComparer.Ordinal).ToList();
        return none.Count == 0 ? [] : [new Problem(where, Problem.Shown(string.Join(", ", none)), "The shop's list of allergens has no such word.", $"Use one of {string.Join(", ", knows.Order(StringComparer.Ordinal))}, or add it to the list under Shop.")];
    }
}
