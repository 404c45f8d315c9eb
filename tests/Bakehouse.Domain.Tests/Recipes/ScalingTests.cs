namespace Bakehouse.Domain.Tests.Recipes;

using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Shops;
using Bakehouse.Testing;
using CsCheck;

/// <summary>Nothing is lost or added when a recipe is scaled, shared out over bowls and put together again.</summary>
public sealed class ScalingTests
{
    /// <summary>F-13: 100.00 in three is 33.34, 33.33, 33.33 (largest remainder, computed).</summary>
    [Fact]
    public void A_hundred_in_three() => Assert.Equal([33.34m, 33.33m, 33.33m], Shares.Split(100, [1, 1, 1], 0.01m));

    [Fact]
    public void What_is_less_than_a_step_goes_to_the_largest_part() => Assert.Equal([7.5m, 3m], Shares.Split(10.5m, [2, 1], 1));

    [Fact]
    public void Shares_of_nothing_and_below_nothing_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Shares.Split(1, [0, 0], 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Shares.Split(1, [2, -1], 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Shares.Split(-1, [1], 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Shares.Split(1, [1], 0));
    }

    [Fact]
    public void Shares_add_up_to_the_whole_and_each_is_within_a_step_of_its_due() =>
        Gen.Select(Gen.Int[0, 10_000_000], Gen.Int[1, 1_000_000].List[1, 30], Gen.Int[0, 2]).Each(2000, drawn =>
        {
            var (thousandths, weights, fine) = drawn;
            var step = new[] { 0.1m, 1m, 0.001m }[fine];
            var whole = thousandths / 1000m;
            var parts = Shares.Split(whole, [.. weights.Select(w => (decimal)w)], step);
            Assert.Equal(whole, parts.Sum());
            var sum = weights.Sum(w => (decimal)w);
            Assert.All(parts.Select((p, i) => Math.Abs(p - (whole * weights[i] / sum))), off => Assert.True(off < 2 * step));
        });

    /// <summary>The mass of batter is the sum of what is weighed, for every recipe of the starter and any mass.</summary>
    [Fact]
    public void A_scaled_recipe_weighs_what_was_asked() =>
        Gen.Select(Gen.Int[0, Starter.Sample.Recipes.Count - 1], Gen.Int[10, 4_000_000]).Each(2000, drawn =>
        {
            var recipe = Starter.Sample.Recipes[drawn.Item1];
            var whole = Mass.FromGrams(drawn.Item2 / 100m);
            var scaled = Scaled.To(recipe, Starter.Sample, whole);
            Assert.Equal(whole.Grams, scaled.Lines.Sum(l => l.Mass.Grams));
            var total = Starter.Sample.Total(recipe).Grams;
            Assert.All(scaled.Lines, l => Assert.True(Math.Abs(l.Mass.Grams - (whole.Grams * Starter.Sample.Grams(l.Line) / total)) < 2));
        });

    /// <summary>Rounded to what scales show: whole grams from 20 g, tenths below.</summary>
    [Fact]
    public void Twice_the_recipe_is_twice_every_line_to_the_gram()
    {
        var recipe = Starter.Sample.Recipe("vanilla")!;
        var scaled = Scaled.To(recipe, Starter.Sample, Starter.Sample.Total(recipe) * 2);
        Assert.All(scaled.Lines, l => Assert.Equal((double)Starter.Sample.Grams(l.Line) * 2, (double)l.Mass.Grams, 1));
        Assert.All(scaled.Lines.Where(l => l.Mass.Grams < 20), l => Assert.Equal(l.Mass.Grams, decimal.Round(l.Mass.Grams, 1)));
        Assert.True(scaled.Lines.Count(l => l.Mass.Grams >= 20 && l.Mass.Grams != decimal.Floor(l.Mass.Grams)) <= 1);
        Assert.Throws<ArgumentOutOfRangeException>(() => Scaled.To(recipe, Starter.Sample, Mass.FromGrams(0)));
    }

    [Fact]
    public void Bowl_loads_add_up_keep_to_the_limit_and_are_as_few_as_can_be() =>
        Gen.Select(Gen.Int[0, 30_000_000], Gen.Int[100_000, 3_000_000]).Each(2000, drawn =>
        {
            var (mass, limit) = (Mass.FromGrams(drawn.Item1 / 1000m), Mass.FromGrams(drawn.Item2 / 1000m));
            var loads = BowlLoads.Of(mass, limit);
            Assert.Equal(mass.Grams, loads.Sum(l => l.Grams));
            Assert.All(loads, l => Assert.True(l <= limit, $"{l.Grams} > {limit.Grams}"));
            Assert.True(loads.Count <= decimal.Ceiling(mass.Grams / (decimal.Floor(limit.Grams * 10) / 10)));
            Assert.All(loads, l => Assert.True(loads.Max().Grams - l.Grams <= 0.2m));
        });

    /// <summary>Own bowls of the sample bakery: 2 kg and 9 kg of batter.</summary>
    [Fact]
    public void Four_and_a_half_kilograms_are_three_small_bowls_or_one_large()
    {
        var batter = Mass.FromKilograms(4.5m);
        Assert.Equal([1500m, 1500m, 1500m], BowlLoads.Of(batter, SampleBakery.Shop.Bowls[0].Batter).Select(l => l.Grams));
        Assert.Single(BowlLoads.Of(batter, SampleBakery.Shop.Bowls[1].Batter));
        Assert.Empty(BowlLoads.Of(Mass.FromGrams(0), batter));
        Assert.Throws<ArgumentOutOfRangeException>(() => BowlLoads.Of(batter, Mass.FromGrams(0)));
    }

    /// <summary>A butter cake of 8 in in a pan of 2 in: 37 to 42 min at 177 °C (a pan maker's published guide); a fan 15 to 20 lower (common practice).</summary>
    [Fact]
    public void Heat_and_minutes_go_by_size_and_kind_of_oven()
    {
        var bakes = Starter.Sample.Recipe("vanilla")!.Bakes!;
        Assert.Equal(new OvenHeat(177, 177), OvenHeat.For(bakes, OvenKind.Static));
        Assert.Equal(new OvenHeat(177, 177), OvenHeat.For(bakes, OvenKind.Deck));
        Assert.Equal(new OvenHeat(157, 162), OvenHeat.For(bakes, OvenKind.Fan));
        Assert.Equal(42, OvenHeat.Minutes(bakes, 8, Length.FromCentimetres(5)));
        Assert.Equal(85, OvenHeat.Minutes(bakes, 30, Length.FromCentimetres(40)));
        Assert.Equal(Sponge.Of("vanilla")!.BakeMinutes(12, Length.FromCentimetres(5)), OvenHeat.Minutes(bakes, 12, Length.FromCentimetres(5)));
    }
}
