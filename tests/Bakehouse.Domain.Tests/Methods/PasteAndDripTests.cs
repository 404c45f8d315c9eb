namespace Bakehouse.Domain.Tests.Methods;

using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Prices;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Shops;
using Bakehouse.Testing;

/// <summary>A cake under sugar paste, and one with a drip: what is done, what they contain and cost.</summary>
public sealed class PasteAndDripTests
{
    private static readonly Shop Shop = SampleBakery.Shop;
    private static readonly Order Paste = Every(new TierSpecial { Paste = Length.FromMillimetres(4) });
    private static readonly Order Dripped = Every(new TierSpecial { Drip = Length.FromCentimetres(4) });

    /// <summary>Covering 15 to 45 min and at least 2 h for a skin; a drip about 10 min on a cold coat, set before it is stacked (both common practice, no source).</summary>
    [Fact]
    public void Paste_takes_the_place_of_the_final_coat_and_gets_a_skin()
    {
        var steps = CakeSteps.Of(Paste, Shop);
        Assert.DoesNotContain(steps.Steps, s => s.Name == "coat");
        Assert.Equal(3, steps.Steps.Count(s => s.Name == "cover"));
        Assert.All(steps.Steps.Where(s => s.Name == "cover"), s => Assert.InRange(s.Minutes, 15, 45));
        Assert.All(steps.Holds.Where(h => h.From.Contains(".cover.", StringComparison.Ordinal)), h => Assert.All(h.In, i => Assert.True(i.Least >= 120)));
        Assert.All(steps.Ages.Where(a => a.From.Contains(".cover.", StringComparison.Ordinal)), a => Assert.Equal(5 * 1440, a.Most));
        Hangs(steps);
    }

    [Fact]
    public void A_drip_goes_on_the_cold_coat_and_sets_before_the_tier_is_stacked()
    {
        var steps = CakeSteps.Of(Dripped, Shop);
        Assert.Equal(3, steps.Steps.Count(s => s.Name == "coat"));
        Assert.Equal(3, steps.Steps.Count(s => s.Name == "drip"));
        Assert.All(steps.Steps.Where(s => s.Name == "drip"), s => Assert.InRange(s.Minutes, 10, 30));
        Assert.All(steps.Holds.Where(h => h.To.Contains(".drip.", StringComparison.Ordinal)), h => Assert.Contains(".coat.", h.From, StringComparison.Ordinal));
        Assert.All(steps.Holds.Where(h => h.From.Contains(".drip.", StringComparison.Ordinal)), h => Assert.Contains(".stack.", h.To, StringComparison.Ordinal));
        Hangs(steps);
        var naked = CakeSteps.Of(Dripped with { Finish = Finish.SemiNaked }, Shop);
        Assert.All(naked.Holds.Where(h => h.To.Contains(".drip.", StringComparison.Ordinal)), h => Assert.Contains(".crumb.", h.From, StringComparison.Ordinal));
        Hangs(naked);
    }

    /// <summary>Grams by USDA SR28, worked by hand: 8 cups of icing sugar at 120, half a cup of corn syrup at 341, a quarter cup of shortening at 205, two envelopes of gelatine at 7, 60 g of water make 1255.75.</summary>
    [Fact]
    public void Our_paste_and_drip_are_weighed_by_the_published_measures()
    {
        Assert.Equal(1255.75m, Starter.Sample.Total(Starter.Sample.Recipe(CakeParts.Paste)!).Grams);
        Assert.Equal(252m + 238, Starter.Sample.Total(Starter.Sample.Recipe(CakeParts.Drip)!).Grams);
        Assert.Equal("USDA SR28, NDB 19350", Starter.Sample.Ingredient("corn-syrup")!.Source);
        Assert.Equal("USDA SR28, NDB 19177", Starter.Sample.Ingredient("gelatine")!.Source);
    }

    [Fact]
    public void What_they_contain_and_cost_is_known()
    {
        var plain = CakePrice.Of(Cakes.Good(), Starter.Sample, Shop)!;
        foreach (var order in new[] { Paste, Dripped })
        {
            var cake = CakeContents.Of(order, Starter.Sample, AllergenRules.Usual, CakeFigures.Usual)!;
            Assert.Empty(cake.NotKnown(AllergenRules.Usual));
            Assert.Empty(CakePrice.Of(order, Starter.Sample, Shop)!.Missing);
        }

        Assert.Contains(CakeContents.Of(Dripped, Starter.Sample, AllergenRules.Usual, CakeFigures.Usual)!.Tiers[0].Parts, p => p.Recipe.Id == CakeParts.Drip);
        Assert.True(CakePrice.Of(Dripped, Starter.Sample, Shop)!.Cost.Of(CostKind.Ingredient) > plain.Cost.Of(CostKind.Ingredient));
        // 60 dessert portions at 6.50 are 390; a quarter more for paste, or 12 for each dripped tier (the sample's own prices).
        Assert.Equal(490, CakePrice.Of(Paste, Starter.Sample, Shop)!.Listed);
        Assert.Equal(430, CakePrice.Of(Dripped, Starter.Sample, Shop)!.Listed);
    }

    private static void Hangs(CakeSteps steps)
    {
        var ids = steps.Steps.Select(s => s.Id).ToHashSet();
        Assert.All(steps.Holds, h => Assert.True(ids.Contains(h.From) && ids.Contains(h.To), h.Id));
        Assert.All(steps.Ages, a => Assert.True(ids.Contains(a.From) && ids.Contains(a.To), a.Id));
    }

    private static Order Every(TierSpecial special) => Cakes.Good() with { Tiers = [.. Cakes.Good().Tiers.Select(t => t with { Special = special })] };
}
