namespace Bakehouse.Domain.Recipes;

using static System.FormattableString;

/// <summary>Something about a recipe that a baker would look at twice. It stops nothing.</summary>
/// <param name="Sentence">With the figure.</param>
/// <param name="Source">Where the figure comes from.</param>
public sealed record RecipeHint(string Sentence, string Source);

/// <summary>Baking powder and soda against the flour.</summary>
public static class Raising
{
    /// <summary>A US cup of all-purpose flour: 125 g (USDA SR28, NDB 20081).</summary>
    public const decimal FlourCup = 125;

    /// <summary>A teaspoon of baking powder (NDB 18369) or of soda (NDB 18372): 4.6 g (USDA SR28).</summary>
    public const decimal Teaspoon = 4.6m;

    /// <summary>Teaspoons of powder for a cup of flour, at least and at most: 1 and 2; 1 to 1 1/4 is usual (common practice, no source).</summary>
    public static readonly (decimal Least, decimal Most) Powder = (1, 2);

    /// <summary>Teaspoons of soda for a cup of flour: 1/4 (common practice, no source).</summary>
    public const decimal Soda = 0.25m;

    private const string Source = "Common practice, no published source; weights of measures: USDA SR28.";

    /// <summary>Powder or soda in teaspoons for each cup of flour, from grams.</summary>
    public static decimal TeaspoonsPerCup(decimal grams, decimal flour) => grams / Teaspoon / (flour / FlourCup);

    /// <summary>The same as a percentage of the flour.</summary>
    public static decimal PercentOfFlour(decimal teaspoonsPerCup) => teaspoonsPerCup * Teaspoon / FlourCup * 100;

    /// <summary>What stands out; empty for a recipe without flour.</summary>
    public static IEnumerable<RecipeHint> Hints(Recipe recipe, Cookbook book)
    {
        var flour = BakersPercent.Flour(recipe, book);
        if (flour == 0)
        {
            yield break;
        }

        var powder = TeaspoonsPerCup(BakersPercent.Grams(recipe, book, IngredientKind.BakingPowder), flour);
        var soda = TeaspoonsPerCup(BakersPercent.Grams(recipe, book, IngredientKind.BakingSoda), flour);
        if (powder > Powder.Most || (powder > 0 && powder < Powder.Least && soda == 0))
        {
            yield return new RecipeHint(Invariant($"Baking powder is {powder:0.##} tsp for a cup of flour ({PercentOfFlour(powder):0.##} % of it); 1 to 1.25 is usual, 1 to 2 in use."), Source);
        }

        if (soda > Soda)
        {
            yield return new RecipeHint(Invariant($"Soda is {soda:0.##} tsp for a cup of flour ({PercentOfFlour(soda):0.##} % of it); 0.25 is usual."), Source);
        }
    }
}
