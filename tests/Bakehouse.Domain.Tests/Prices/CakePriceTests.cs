namespace Bakehouse.Domain.Tests.Prices;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Prices;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Shops;
using Bakehouse.Testing;

/// <summary>What a cake costs in the sample bakery and what is asked for it. Its prices are invented; the sums are checked by hand.</summary>
public sealed class CakePriceTests
{
    private static readonly Order Good = Cakes.Good();
    private static readonly Shop Shop = SampleBakery.Shop;
    private static readonly CakePrice Price = CakePrice.Of(Good, Starter.Sample, Shop)!;

    /// <summary>
    /// By hand: 226 g of butter at 37.50 for 5 kg, 480 g of icing sugar at 14.80 for 10 kg, 45 g of cream at 9.60 for 2.02 kg make 2.6193; twice as much
    /// costs twice as much.
    /// </summary>
    [Fact]
    public void A_recipe_costs_what_its_packs_cost()
    {
        var cream = Starter.Sample.Recipe("buttercream")!;
        var total = Starter.Sample.Total(cream).Grams;
        Assert.Equal(226m + 480 + 45, total);
        Assert.Equal(2.6193m, decimal.Round(RecipeCost.Of(cream, Starter.Sample, total, Shop.Prices!.Packs).Cost!.Value, 4));
        Assert.Equal(5.2385m, decimal.Round(RecipeCost.Of(cream, Starter.Sample, 2 * total, Shop.Prices.Packs).Cost!.Value, 4));
        var without = RecipeCost.Of(cream, Starter.Sample, total, [.. Shop.Prices.Packs.Where(p => p.Ingredient != "butter")]);
        Assert.Null(without.Cost);
        Assert.Equal(["Butter, unsalted"], without.Missing);
    }

    /// <summary>By hand: 60 dessert portions, smooth, at 6.50 are 390, a step of 5 already; the floor is the cost and 15 %.</summary>
    [Fact]
    public void It_is_asked_by_the_list_but_never_under_the_floor()
    {
        Assert.Empty(Price.Missing);
        Assert.Equal(390, Price.Listed);
        Assert.Equal(Cash.Rounded(Price.Cost.Cost * 1.15m), Price.Floor);
        Assert.Equal(Math.Max(390, Cash.UpTo(Price.Floor!.Value, 5)), Price.Asked);
        var cheap = Shop with { Prices = Shop.Prices! with { List = Shop.Prices.List with { Portions = [new(Finish.Smooth, Cut.Dessert, 0.10m)], Least = 0 } } };
        Assert.Equal(Cash.UpTo(Price.Floor.Value, 5), CakePrice.Of(Good, Starter.Sample, cheap)!.Asked);
        var unlisted = Shop with { Prices = Shop.Prices! with { List = new PriceList([], [], 0, 1) } };
        Assert.Equal(Price.Cost.Price, CakePrice.Of(Good, Starter.Sample, unlisted)!.Asked);
    }

    [Fact]
    public void What_is_missing_is_named_and_then_there_is_no_floor()
    {
        var shop = Shop with { Prices = Shop.Prices! with { Wage = null, RodEach = null, Packs = [.. Shop.Prices.Packs.Where(p => p.Ingredient != "butter")] } };
        var price = CakePrice.Of(Good, Starter.Sample, shop)!;
        Assert.Equal(["wage", "Butter, unsalted", "centre rod"], price.Missing);
        Assert.Equal((null, 390m), (price.Floor, price.Asked));
        Assert.Null(CakePrice.Of(Good, Starter.Sample, shop with { Prices = shop.Prices with { List = new PriceList([], [], 0, 1) } })!.Asked);
        Assert.Null(CakePrice.Of(Good, Starter.Sample, Shop with { Prices = null }));
        Assert.Null(CakePrice.Of(Good with { Tiers = [Cakes.Tier(1, 1, 18)] }, Starter.Sample, Shop));
    }

    [Fact]
    public void The_sample_has_a_price_for_each_of_its_ingredients() =>
        Assert.Equal(Starter.Sample.Ingredients.Select(i => i.Id).Order(StringComparer.Ordinal), Shop.Prices!.Packs.Select(p => p.Ingredient).Order(StringComparer.Ordinal));

    [Fact]
    public void Under_the_floor_stands_a_reason_or_the_owner()
    {
        Problem? Told(AgreedPrice? agreed, bool owner = false, Order? before = null) => FloorPrice.Against(Good with { Price = agreed }, before, Starter.Sample, Shop, owner);
        var floor = Price.Floor!.Value;
        Assert.Null(Told(null));
        Assert.Null(Told(new AgreedPrice(floor)));
        Assert.Equal("Price", Told(new AgreedPrice(floor - 0.01m))!.Where);
        Assert.Contains($"{floor:0.00}", Told(new AgreedPrice(1))!.Sentence, StringComparison.Ordinal);
        Assert.Null(Told(new AgreedPrice(1, "A cake broke last time")));
        Assert.NotNull(Told(new AgreedPrice(1, "  ")));
        Assert.Null(Told(new AgreedPrice(1), owner: true));
        // What was agreed stays agreed as long as the cake costs no more.
        Assert.Null(Told(new AgreedPrice(1), before: Good with { Price = new AgreedPrice(1) }));
        Assert.NotNull(Told(new AgreedPrice(1), before: Good with { Price = new AgreedPrice(1), Tiers = [Good.Tiers[0]] }));
        Assert.NotNull(Told(new AgreedPrice(1), before: Good with { Price = new AgreedPrice(2) }));
    }

    [Fact]
    public void Wrong_prices_of_a_shop_are_named()
    {
        Assert.Empty(Shop.Prices!.Problems());
        Assert.Empty(ShopPrices.None.Problems());
        Assert.Empty((ShopPrices.None with { LeastMarkUp = 0.2m }).Problems());
        Assert.Equal(["Packs", "Wage", "Least mark-up"], (Shop.Prices with { Wage = -1, LeastMarkUp = 2, Packs = [new("egg", Mass.FromGrams(1), 1), new("egg", Mass.FromGrams(2), 1)] }).Problems().Select(p => p.Where));
        Assert.Contains(ShopChecks.Problems(Shop with { Prices = Shop.Prices with { Wage = -1 } }), p => p.Where == "Wage");
    }
}
