namespace Bakehouse.Domain.Tests.Allergens;

using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Dangers;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Shops;
using Bakehouse.Testing;
using CsCheck;

/// <summary>What stands beside the cake is eaten, too: nothing that looks at what an order contains may pass it by.</summary>
public sealed class BesideTheCakeTests
{
    private static readonly Shop Shop = SampleBakery.Shop;

    /// <summary>A plain vanilla cake, and carrot cupcakes with walnuts beside it.</summary>
    private static readonly Order Nuts = Cakes.Good(2, 9, 6) is var cake ? Cakes.With(cake) with { Tiers = [.. cake.Tiers, Cakes.Batch(cake, 1, 24, "carrot")], Allergies = new AllergyAnswer(AllergyKind.Avoid, ["nuts"], "") } : throw new InvalidOperationException();

    /// <summary>Our own law: the contents of the whole are never less than those of any batch or tier alone, for every allergen.</summary>
    [Fact]
    public void The_whole_is_never_less_than_any_batch_alone() =>
        Gen.Select(Gen.Int[0, Sponge.All.Count - 1].Select(i => Sponge.All[i].Id).Array[0, 3], Gen.Int[0, Sponge.All.Count - 1].Select(i => Sponge.All[i].Id).Array[1, 4], Gen.Int[1, 60]).Each(150, drawn =>
        {
            var (tiers, batches, count) = drawn;
            var plain = Cakes.Good(3);
            var order = plain with { Tiers = [.. tiers.Select((s, i) => Cakes.Tier(3, i + 1, 10 - (2 * i)) with { Sponge = s }), .. batches.Select((s, i) => Cakes.Batch(plain, i + 1, count, s))] };
            var whole = Of(order);
            Assert.Equal(order.Tiers.Select(t => t.Id), whole.Tiers.Select(t => t.Tier.Id));
            foreach (var alone in order.Tiers.Select(t => Of(order with { Tiers = [t] })))
            {
                Assert.All(KnownAllergens.All, a => Assert.True(whole.Whole.Status(a.Id) >= alone.Whole.Status(a.Id), a.Id));
            }

            var steps = CakeSteps.Of(order, Shop).Steps;
            Assert.All(order.Beside, b => Assert.All(steps.Where(s => s.Mix is not null && s.Tier == b.Id.ToString("N")), s => Assert.Equal(Sponge.Of(b.Sponge)!.Has, s.Has)));
        });

    [Fact]
    public void A_batch_with_what_must_be_avoided_stops_the_order()
    {
        Assert.Equal(AllergenStatus.Has, Of(Nuts).Whole.Status("walnuts"));
        Assert.NotEqual(AllergenStatus.Has, Of(Nuts with { Tiers = Nuts.Stack }).Whole.Status("walnuts"));
        Assert.NotEmpty(AllergyChecks.Problems(Nuts, Starter.Sample, Shop));
        Assert.Empty(AllergyChecks.Problems(Nuts with { Tiers = Nuts.Stack }, Starter.Sample, Shop));
        Assert.Contains(BeforeWork.Stops(Nuts, Starter.Sample, Starter.Sample, Shop), p => p.Sentence.Contains("nuts", StringComparison.OrdinalIgnoreCase) || p.Value.Contains("nuts", StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>Without recipes the methods' own words are all there is: carrot is made with nuts.</summary>
    [Fact]
    public void It_stops_without_recipes_too() =>
        Assert.Contains(OrderChecks.Problems(Nuts, Shop, Cakes.Now, false), p => p is { Where: "Allergies", Value: "nuts" });

    /// <summary>Another sponge in a batch is another content: work waits until the owner has looked.</summary>
    [Fact]
    public void A_changed_recipe_of_a_batch_touches_the_order()
    {
        var carrot = Starter.Sample.Recipe("carrot")!;
        var plain = Nuts with { Allergies = AllergyAnswer.NoneTold };
        var changed = new Cookbook(
            Starter.Sample.Version + 1, Starter.Sample.Ingredients, [.. Starter.Sample.Recipes.Select(r => r.Id == "carrot" ? carrot with { Lines = [.. carrot.Lines, new RecipeLine("ground-almonds", false, 20)] } : r)]);
        Assert.True(BeforeWork.IsHit(plain, Starter.Sample, changed, Shop));
        Assert.False(BeforeWork.IsHit(plain with { Tiers = plain.Stack }, Starter.Sample, changed, Shop));
    }

    /// <summary>Each making step of a batch waits for the read-back, and its cards carry what must be avoided.</summary>
    [Fact]
    public void Every_step_of_a_batch_is_held_and_warned()
    {
        var making = CakeSteps.Of(Nuts, Shop).Steps.Where(s => s.Tier == Nuts.Beside[0].Id.ToString("N") && s.Name is not ("bake" or "turnout")).Select(s => s.Name).Distinct().ToList();
        Assert.Equal(["mix", "pipe", "box"], making);
        Assert.All(making, name => Assert.True(BeforeWork.IsMaking(name), name));
        var milk = Nuts with { Tiers = Nuts.Stack, Allergies = new AllergyAnswer(AllergyKind.Avoid, ["peanuts"], "") };
        var cautions = Caution.Of(milk with { Tiers = [Cakes.Batch(milk, 1, 24)] }, null, Shop, Starter.Sample).Where(c => c.First.StartsWith("Avoid", StringComparison.Ordinal)).ToList();
        Assert.All(cautions, c => Assert.All(making, name => Assert.Contains(name, c.Steps)));
        Assert.NotEmpty(cautions);
    }

    private static CakeContents Of(Order order) => CakeContents.Of(order, Starter.Sample, Shop.Allergens, CakeFigures.Of(Shop))!;
}
