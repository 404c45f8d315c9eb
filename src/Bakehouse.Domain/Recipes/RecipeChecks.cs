namespace Bakehouse.Domain.Recipes;

using static System.FormattableString;

/// <summary>What can be wrong with one recipe.</summary>
internal static class RecipeChecks
{
    /// <summary>Most rows of a recipe.</summary>
    public const int MostLines = 60;

    /// <summary>Most grams of a row: a tonne.</summary>
    public const decimal MostGrams = 1_000_000;

    /// <summary>Least grams of a row or measure: a milligram.</summary>
    public const decimal LeastGrams = 0.001m;

    /// <summary>Longest notes, characters as people count them.</summary>
    public const int LongestNotes = 4000;

    public static IEnumerable<Problem> Problems(Recipe recipe, Cookbook book)
    {
        var where = Said.Called(recipe.Name, recipe.Id, "A recipe");
        return
        [
            .. Said.Id(where, recipe.Id),
            .. Said.Text(where, "Its name", recipe.Name, Said.LongestName, mayBeEmpty: false),
            .. Said.Text(where, "Its notes", recipe.Notes, LongestNotes, mayBeEmpty: true),
            .. Rows(recipe, where),
            .. recipe.Lines.SelectMany((line, i) => Line(line, Invariant($"{where}, row {i + 1}"), book)),
            .. Heat(recipe, where),
            .. Kept(recipe, where),
        ];
    }

    private static IEnumerable<Problem> Rows(Recipe recipe, string where)
    {
        if (recipe.Lines.Count is < 1 or > MostLines)
        {
            yield return new Problem(where, Invariant($"{recipe.Lines.Count}"), $"A recipe has 1 to {MostLines} rows.", recipe.Lines.Count == 0 ? "Say what goes in." : "Make a part of it a recipe of its own.");
        }

        if (recipe.LossPercent is < 0 or > 50)
        {
            yield return new Problem(where, Invariant($"{recipe.LossPercent} %"), "What is lost while it is made is 0 to 50 %.", "Weigh a batch before and after; a cake loses about a tenth in the oven.");
        }
    }

    private static IEnumerable<Problem> Line(RecipeLine line, string where, Cookbook book)
    {
        if (line.IsRecipe ? book.Recipe(line.Of) is null : book.Ingredient(line.Of) is null)
        {
            yield return new Problem(where, Problem.Shown(line.Of), line.IsRecipe ? "There is no such recipe." : "There is no such ingredient.", "Choose one of the list, or write it first.");
            yield break;
        }

        if (line.Amount <= 0)
        {
            yield return new Problem(where, Invariant($"{line.Amount} {Problem.Shown(line.Measure)}"), $"An amount is more than zero ({book.NameOf(line)}).", "Give the amount, or take the row out.");
            yield break;
        }

        if (Weight(line, book) is not { } one)
        {
            yield return NoWeight(line, where, book);
        }
        else if (one < LeastGrams || line.Amount > MostGrams / one || line.Amount < LeastGrams / one)
        {
            yield return new Problem(where, Invariant($"{line.Amount} {Problem.Shown(line.Measure)}"), Invariant($"A row weighs a milligram at least and {MostGrams / 1000:0} kg at most ({book.NameOf(line)})."), "Look at the amount and its measure.");
        }
    }

    private static decimal? Weight(RecipeLine line, Cookbook book) =>
        line.IsRecipe ? (line.Measure == RecipeLine.Gram ? 1 : null) : KitchenAmount.GramsOf(book.Ingredient(line.Of)!, line.Measure);

    private static Problem NoWeight(RecipeLine line, string where, Cookbook book)
    {
        var name = book.NameOf(line);
        var measures = line.IsRecipe ? RecipeLine.Gram : string.Join(", ", KitchenAmount.Of(book.Ingredient(line.Of)!));
        return new Problem(where, Problem.Shown(line.Measure), $"Nobody knows what that measure of {name} weighs.", $"Give it in {measures}{(line.IsRecipe ? "" : $", or write the weight of that measure beside {name}")}.");
    }

    private static IEnumerable<Problem> Heat(Recipe recipe, string where)
    {
        if (recipe.Bakes is { Heat: < 50 or > 300 } wrong)
        {
            yield return new Problem(where, Invariant($"{wrong.Heat} °C"), "An oven is set to 50 to 300 °C.", "Give degrees Celsius, not Fahrenheit.");
        }

        if (recipe.Bakes is { } bakes && (bakes.Times.Count == 0 || bakes.Times.Any(t => t.Minutes is < 1 or > 720 || t.ToInches < 1 || t.ToCentimetres <= 0)))
        {
            yield return new Problem(where, Invariant($"{bakes.Times.Count} rows"), "Baking needs minutes (1 to 720) for at least one size.", "Give size, height and minutes.");
        }

        if (recipe.Kind == RecipeKind.Sponge && recipe.Bakes is null)
        {
            yield return new Problem(where, "", "A sponge is baked, and no heat is given.", "Give degrees and minutes.");
        }
    }

    private static IEnumerable<Problem> Kept(Recipe recipe, string where)
    {
        foreach (var kept in recipe.Keeps.Where(k => k.Hours is < 1 or > 17520))
        {
            yield return new Problem(where, Invariant($"{kept.Hours} h"), "Something keeps 1 hour to 2 years.", "Give the hours for that place, or take the row out.");
        }

        if (recipe.Keeps.Select(k => k.Place).Distinct().Count() < recipe.Keeps.Count)
        {
            yield return new Problem(where, "", "A place has two keeping times.", "Leave the shorter one.");
        }
    }
}
