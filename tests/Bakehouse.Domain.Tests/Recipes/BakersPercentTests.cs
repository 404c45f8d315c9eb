namespace Bakehouse.Domain.Tests.Recipes;

using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Recipes;
using static Bakehouse.Domain.Recipes.RecipeLine;

/// <summary>Baker's percent, raising and eggs against published figures.</summary>
public sealed class BakersPercentTests
{
    /// <summary>I-BAKERS-1, -2, -4: 73 pieces of 390 g at 100/67/2/1, a worked training sheet; it prints 16747, 11220.528, 167.470 g.</summary>
    [Fact]
    public void A_formula_weighed_for_a_mass_gives_the_worked_weights()
    {
        var weighed = BakersPercent.Weigh(Mass.FromGrams(73 * 390), [100, 67, 2, 1], 0.001m);
        Assert.Equal([16747.059m, 11220.529m, 334.941m, 167.471m], weighed.Select(m => m.Grams));
        Assert.Equal(28470, weighed.Sum(m => m.Grams));
    }

    /// <summary>I-BAKERS-5: 640 oz flour, 11.2 oz salt, 371.2 oz water are 1.75 % and 58 %, a worked example of a trade journal.</summary>
    [Fact]
    public void Percents_are_of_the_flour()
    {
        const decimal ounce = 28.349523125m;
        var dough = new Recipe("dough", 1, "Dough", RecipeKind.Part, [Grams("plain-flour", 640 * ounce), Grams("salt", 11.2m * ounce), Grams("water", 371.2m * ounce)], EggMethod.None, null, []);
        Assert.Equal([100m, 1.75m, 58m], BakersPercent.Of(dough, Starter.Sample)!.Select(p => decimal.Round(p, 9)));
    }

    [Fact]
    public void A_recipe_without_flour_has_no_percents() => Assert.Null(BakersPercent.Of(Starter.Sample.Recipe("ganache")!, Starter.Sample));

    /// <summary>I-LEAV-pct: 1 to 1 1/4 tsp of 4.6 g for a cup of 125 g are 3.68 to 4.6 % of the flour (weights: SR28).</summary>
    [Theory]
    [InlineData(1, 3.68)]
    [InlineData(1.25, 4.6)]
    public void Teaspoons_for_a_cup_are_percents_of_the_flour(double teaspoons, double percent)
    {
        Assert.Equal(percent, (double)Raising.PercentOfFlour((decimal)teaspoons), 0.005);
        Assert.Equal(teaspoons, (double)Raising.TeaspoonsPerCup((decimal)percent, 100), 0.001);
    }

    /// <summary>I-LEAV-bp: 1 to 1 1/4 tsp of powder for a cup, outer band 1 to 2; I-LEAV-bs: 1/4 tsp of soda (common practice, no published source).</summary>
    [Theory]
    [InlineData(0.9, 0, true)]
    [InlineData(1, 0, false)]
    [InlineData(1.25, 0, false)]
    [InlineData(2, 0, false)]
    [InlineData(2.1, 0, true)]
    [InlineData(0, 0.25, false)]
    [InlineData(0, 0.3, true)]
    [InlineData(0.6, 0.25, false)]
    public void Raising_outside_the_usual_is_told_with_its_figure(double powder, double soda, bool told)
    {
        List<RecipeLine> lines = [Kitchen("plain-flour", 1, "cup")];
        lines.AddRange(powder > 0 ? [Kitchen("baking-powder", (decimal)powder, "tsp")] : []);
        lines.AddRange(soda > 0 ? [Kitchen("baking-soda", (decimal)soda, "tsp")] : []);
        var hints = Raising.Hints(new Recipe("x", 1, "X", RecipeKind.Part, lines, EggMethod.None, null, []), Starter.Sample).ToList();
        Assert.Equal(told, hints.Count > 0);
        Assert.All(hints, h => Assert.Contains("tsp for a cup of flour", h.Sentence, StringComparison.Ordinal));
        Assert.All(hints, h => Assert.Contains("no published source", h.Source, StringComparison.Ordinal));
    }

    /// <summary>I-EGGSWAP: 4 large are replaced by 5 medium; F-15: 612 g are 13 large (edible weights: SR28, NDB 01123).</summary>
    [Fact]
    public void Eggs_of_another_size_are_counted_by_their_edible_grams()
    {
        Assert.Equal(5, Eggs.Instead(4, "large", "medium"));
        Assert.Equal(13, Eggs.For(Mass.FromGrams(612), "large"));
        Assert.Throws<ArgumentOutOfRangeException>(() => Eggs.For(Mass.FromGrams(1), "huge"));
    }

    /// <summary>Alcohol left: USDA Table of Nutrient Retention Factors, release 6. Between rows the longer time is not yet reached.</summary>
    [Theory]
    [InlineData(0, 70)]
    [InlineData(15, 40)]
    [InlineData(29, 40)]
    [InlineData(30, 35)]
    [InlineData(60, 25)]
    [InlineData(90, 20)]
    [InlineData(120, 10)]
    [InlineData(150, 5)]
    [InlineData(400, 5)]
    public void Alcohol_is_left_as_the_table_says(int minutes, int percent) => Assert.Equal(percent, AlcoholLeft.Percent(minutes));

    /// <summary>Raw egg is told (Food Standards Agency advice 2017; US practice pasteurised); a method without egg is looked at, too.</summary>
    [Theory]
    [InlineData(true, EggMethod.Raw, "Raw egg")]
    [InlineData(true, EggMethod.None, "not said how")]
    [InlineData(true, EggMethod.Cooked, null)]
    [InlineData(true, EggMethod.Pasteurised, null)]
    [InlineData(false, EggMethod.None, null)]
    [InlineData(false, EggMethod.Raw, "has none of its own")]
    public void How_eggs_are_treated_is_looked_at(bool egg, EggMethod method, string? told)
    {
        var mousse = new Recipe("x", 1, "X", RecipeKind.Filling, [Grams(egg ? "egg" : "cream", 100)], method, null, []);
        var hints = Eggs.Hints(mousse, Starter.Sample).Select(h => h.Sentence).ToList();
        Assert.Equal(told is null ? 0 : 1, hints.Count);
        Assert.All(hints, h => Assert.Contains(told!, h, StringComparison.Ordinal));
    }
}
