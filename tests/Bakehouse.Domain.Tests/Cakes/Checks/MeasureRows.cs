namespace Bakehouse.Domain.Tests.Cakes.Checks;

using System.Text.RegularExpressions;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Recipes;
using static Bakehouse.Domain.Recipes.RecipeLine;
using static Bakehouse.Domain.Tests.Cakes.Checks.ShapeRows;

/// <summary>I: kitchen measures, weights, eggs, baker's percent, raising.</summary>
internal static class MeasureRows
{
    private const decimal Ounce = Mass.GramsInOunce;

    public static IReadOnlyList<(string, Action<CheckRow>)> All { get; } =
    [
        ("I-CUP", r => r.Holds(KitchenMeasures.UsCup.Millilitres)),
        ("I-TBSP", r => r.Holds(KitchenMeasures.UsTablespoon.Millilitres)),
        ("I-TSP", r => r.Holds(KitchenMeasures.UsTeaspoon.Millilitres)),
        ("I-CUP-FDA", r => r.Holds(KitchenMeasures.LabelCup.Millilitres, KitchenMeasures.Label.Tablespoon.Millilitres, KitchenMeasures.Label.Teaspoon.Millilitres, KitchenMeasures.Label.FluidOunce.Millilitres)),
        ("I-CUP-METRIC", r => r.Holds(KitchenMeasures.MetricCup.Millilitres)),
        ("I-FLOZ-UK", r => r.Holds(KitchenMeasures.ImperialFluidOunce.Millilitres)),
        ("I-OZ", r => r.Is(Mass.FromOunces(1).Grams)),
        ("I-STICK", r => r.Is(Mass.FromOunces(4).Grams)),
        .. Enumerable.Range(2, 33).Except([5, 12, 17, 23, 26, 27, 28]).Select(n => ($"I-SR{n:00}", (Action<CheckRow>)Weight)),
        ("I-SR36", WholeCake),
        ("I-SR37", WholeCake),
        ("I-FLOUR-DENS", r => r.Holds((double)KitchenAmount.GramsOf(Starter.Sample.Ingredient("plain-flour")!, "cup")!.Value / KitchenMeasures.UsCup.Millilitres)),
        ("I-EGGSWAP", r => r.Holds(Eggs.Instead((int)r.Given[0], "large", "medium"))),
        ("I-USDAEGG-*", r => r.Is(Eggs.InShell.Single(e => e.Size == r.Inputs).DozenOunces, Eggs.EachInShell(r.Inputs).Grams)),
        ("I-BAKERS-1", r => r.Is(Dough[0].Grams)),
        ("I-BAKERS-2", r => r.Is(Dough[1].Grams)),
        ("I-BAKERS-4", r => r.Is(Dough[3].Grams)),
        ("I-BAKERS-5", Percents),
        ("I-LEAV-bp", r => r.Is(Raising.Powder.Least, Raising.Powder.Most)),
        ("I-LEAV-bs", r => r.Is(Raising.Soda)),
        ("I-LEAV-pct", r => r.Is(Raising.PercentOfFlour(1), Raising.PercentOfFlour(1.25m))),
    ];

    private static IReadOnlyList<Mass> Dough => BakersPercent.Weigh(Mass.FromGrams(73 * 390), [100, 67, 2, 1], 0.001m);

    // "NDB 20084; 1 cup unsifted, dipped": the ingredient of that number, in the measure that begins like it.
    private static void Weight(CheckRow r)
    {
        var ndb = Regex.Match(r.Inputs, @"NDB (\d+)").Groups[1].Value;
        var ingredient = Assert.Single(Starter.Sample.Ingredients, i => i.Source.EndsWith(ndb, StringComparison.Ordinal));
        var words = Regex.Match(r.Inputs, @"; 1 (.+)$").Groups[1].Value.Replace("unpacked", "loose", StringComparison.Ordinal).Split(' ', ',');
        var measure = ingredient.Weights.Where(w => w.Measure.Split(' ', ',').Where(m => m.Length > 0).All(words.Contains)).MaxBy(w => w.Measure.Length);
        r.Is(measure!.Grams);
    }

    // Two layers of 1.5 in, 8 or 9 in across: the published cake weighs what the least to the most of our butter cakes do in that size.
    private static void WholeCake(CheckRow r)
    {
        double Weighs(double inches, double density) => density * (new Round(In(inches)).Area * In(3)).Millilitres;
        Assert.InRange(r.Numbers[0], Weighs(8, CakeFigures.ButterCakes.Least), Weighs(9, CakeFigures.ButterCakes.Most));
        Assert.InRange(CakeFigures.Usual.SpongeDensity.GramsPerMillilitre, CakeFigures.ButterCakes.Least, CakeFigures.ButterCakes.Most);
    }

    private static void Percents(CheckRow r)
    {
        var weights = r.Given.Select(g => (decimal)g * Ounce).ToList();
        var dough = new Recipe("dough", 1, "Dough", RecipeKind.Part, [Grams("plain-flour", weights[0]), Grams("salt", weights[1]), Grams("water", weights[2])], EggMethod.None, null, []);
        r.Is([.. BakersPercent.Of(dough, Starter.Sample)!.Skip(1)]);
    }
}
