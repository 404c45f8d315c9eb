namespace Bakehouse.Domain.Shops;

using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Recipes;

/// <summary>
/// Limits that the owner has set herself, such as those of a licence for a home kitchen. They are quoted as hers: what the law of her place asks for, she knows.
/// </summary>
/// <param name="NothingCold">True if nothing that needs the fridge leaves her kitchen.</param>
/// <param name="ColdWords">How she says that; "" for the usual words.</param>
/// <param name="YearlyCap">Most money in a calendar year, by the day of the handover; null for none.</param>
/// <param name="Label">Her sentence on every label; may be empty.</param>
public sealed record OwnLimits(bool NothingCold, string ColdWords, decimal? YearlyCap, string Label)
{
    /// <summary>Longest sentence, in characters.</summary>
    public const int LongestWords = 300;

    /// <summary>Most money of a cap.</summary>
    public const decimal MostMoney = 100_000_000;

    /// <summary>Her words about the fridge.</summary>
    public string SaysCold => ColdWords.Trim().Length > 0 ? ColdWords.Trim() : "Nothing that needs the fridge leaves this kitchen.";

    /// <summary>Everything wrong with them, in one list.</summary>
    public IEnumerable<Problem> Problems()
    {
        foreach (var problem in Said.Text("cold words", "The sentence about the fridge", ColdWords, LongestWords, mayBeEmpty: true)
            .Concat(Said.Text("label", "The sentence on the label", Label, LongestWords, mayBeEmpty: true)))
        {
            yield return problem;
        }

        if (AllergenRules.PromiseIn(Label) is { } promise)
        {
            yield return new Problem("label", promise, "That is a promise which nobody in a kitchen with flour in the air can keep.", "Say where and how it was made.");
        }

        if (YearlyCap is { } cap)
        {
            foreach (var problem in ShopChecks.Between("yearly cap", cap, 1, MostMoney, ""))
            {
                yield return problem with { Try = "Write the whole amount in figures, or leave it empty for no cap." };
            }
        }
    }
}
