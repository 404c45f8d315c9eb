namespace Bakehouse.Domain.Recipes;

using Bakehouse.Domain.Measures;

/// <summary>Grams of an amount in a kitchen measure.</summary>
public static class KitchenAmount
{
    /// <summary>Measures of room: by them whatever has a density can be measured. Three cups go by one name; each has its own word here.</summary>
    private static readonly Dictionary<string, Volume> Rooms = new(StringComparer.Ordinal)
    {
        ["cup"] = KitchenMeasures.UsCup,
        ["tbsp"] = KitchenMeasures.UsTablespoon,
        ["tsp"] = KitchenMeasures.UsTeaspoon,
        ["label cup"] = KitchenMeasures.LabelCup,
        ["metric cup"] = KitchenMeasures.MetricCup,
        ["mL"] = Volume.FromMillilitres(1),
    };

    /// <summary>
    /// Grams of one such measure: what it is known to weigh, else its room times the density. Null if neither is known.
    /// </summary>
    public static decimal? GramsOf(Ingredient ingredient, string measure) =>
        measure == RecipeLine.Gram ? 1
        : ingredient.Weights.FirstOrDefault(w => w.Measure == measure) is { } weighed ? weighed.Grams
        : ingredient.GramsPerMillilitre is { } density and > 0 and <= IngredientChecks.Heaviest && Rooms.TryGetValue(measure, out var room)
            ? (Density.FromGramsPerMillilitre((double)density) * room).Grams
        : null;

    /// <summary>Every measure in which the ingredient can be given, grams first.</summary>
    public static IReadOnlyList<string> Of(Ingredient ingredient) =>
        [.. new[] { RecipeLine.Gram }.Concat(ingredient.Weights.Select(w => w.Measure)).Concat(ingredient.GramsPerMillilitre > 0 ? Rooms.Keys : []).Distinct(StringComparer.Ordinal)];

    /// <summary>
    /// The same mass in the largest kitchen measure of which there is at least a quarter, in quarters: "2 1/4 cups". Empty if it has none.
    /// </summary>
    public static string Beside(Ingredient ingredient, Mass mass)
    {
        var fits = Fitting(ingredient, mass);
        return fits is null ? "" : Said(mass.Grams / fits.Grams, fits.Measure);
    }

    /// <summary>Eggs are counted, large ones if the book knows them; nobody measures them by the cup.</summary>
    private static KitchenWeight? Fitting(Ingredient ingredient, Mass mass) =>
        ingredient.Kind == IngredientKind.Egg && ingredient.Weights.FirstOrDefault(w => w.Measure == "large" && mass.Grams >= w.Grams / 4) is { } large
            ? large
            : ingredient.Weights.Where(w => mass.Grams >= w.Grams / 4).OrderByDescending(w => w.Grams).FirstOrDefault();

    /// <summary>"2 1/4 cups", "1 cup", "3 tsp": only whole words have a plural.</summary>
    private static string Said(decimal amount, string measure)
    {
        var word = amount > 1.125m && (measure == "cup" || measure == "stick" || measure.EndsWith(" cup", StringComparison.Ordinal)) ? $"{measure}s"
            : amount > 1.125m && measure.StartsWith("cup,", StringComparison.Ordinal) ? $"cups{measure[3..]}"
            : measure;
        return $"{Quarters(amount)} {word}";
    }

    private static string Quarters(decimal amount)
    {
        var quarters = (int)decimal.Round(amount * 4, MidpointRounding.AwayFromZero);
        var (whole, rest) = (quarters / 4, (quarters % 4) switch { 1 => "1/4", 2 => "1/2", 3 => "3/4", _ => "" });
        return rest.Length == 0 ? FormattableString.Invariant($"{whole}") : whole == 0 ? rest : FormattableString.Invariant($"{whole} {rest}");
    }
}
