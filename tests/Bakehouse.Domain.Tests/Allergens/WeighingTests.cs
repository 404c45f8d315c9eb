namespace Bakehouse.Domain.Tests.Allergens;

using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;

/// <summary>The customer's word against the cake and the owner's rule: our own table, cell by cell.</summary>
public sealed class WeighingTests
{
    private static readonly Order Order = Sponges("vanilla");

    private static Order Sponges(string sponge)
    {
        var order = Testing.Cakes.Good(1, 8, 6);
        return order with { Tiers = [.. order.Tiers.Select(t => t with { Sponge = sponge, Filling = "raspberry-jam" })] };
    }

    private static Weighed Weigh(string avoid, CustomersWord told, KitchenRule rule = KitchenRule.WithControls, Cookbook? book = null)
    {
        var rules = AllergenRules.Usual with { Policies = [new AllergenPolicy(avoid, rule)] };
        return Assert.Single(Weighing.Of(Avoid(told, avoid), CakeContents.Of(Order, book ?? Starter.Sample, rules, CakeFigures.Usual)!, rules));
    }

    private static AllergyAnswer Avoid(CustomersWord told, params string[] words) => new(AllergyKind.Avoid, words, words.Length == 0 ? "kiwi" : "") { Told = told };

    private static Cookbook With(AllergenFacts? facts) => Starter.Sample.With([Starter.Sample.Ingredient("sugar")!.Swapped(new Pack("b", facts))], []);

    [Fact]
    public void Words_beside_what_is_ticked_wait_for_a_person_and_other_words_wait_anew()
    {
        var cake = CakeContents.Of(Order, Starter.Sample, AllergenRules.Usual, CakeFigures.Usual)!;
        var told = new AllergyAnswer(AllergyKind.Avoid, ["nuts"], " nuts, and kiwi ");
        Assert.Equal(["nuts", "nuts, and kiwi"], Weighing.Of(told, cake, AllergenRules.Usual).Select(w => w.Told));
        Assert.Equal(Verdict.NotKnown, Weighing.Of(told, cake, AllergenRules.Usual)[1].Verdict);
        Assert.All(StopSign.Of(Order with { Allergies = told }, cake, AllergenRules.Usual), s => Assert.True(s.Met && s.Avoid == "Avoid nuts, “nuts, and kiwi” (allergy)"));

        var judged = told with { Judged = "nuts, and kiwi" };
        Assert.Equal("nuts", Assert.Single(Weighing.Of(judged, cake, AllergenRules.Usual)).Told);
        Assert.All(StopSign.Of(Order with { Allergies = judged }, cake, AllergenRules.Usual), s => Assert.True(!s.Met && s.Avoid == "Avoid nuts (allergy)"));

        Assert.True((judged with { Words = "nuts, and plums" }).MustBeJudged);
        Assert.False((told with { Told = CustomersWord.Dislike }).MustBeJudged);
        Assert.False((told with { Words = "  " }).MustBeJudged);
    }

    [Theory]
    [InlineData(CustomersWord.Dislike, Verdict.Note)]
    [InlineData(CustomersWord.Intolerance, Verdict.Refuse)]
    [InlineData(CustomersWord.Allergy, Verdict.Refuse)]
    [InlineData(CustomersWord.Anaphylaxis, Verdict.Refuse)]
    public void In_the_cake(CustomersWord told, Verdict verdict)
    {
        Assert.All(Enum.GetValues<KitchenRule>(), rule => Assert.Equal(verdict, Weigh("milk", told, rule).Verdict));
        Assert.StartsWith("It contains milk: Butter, unsalted, Cream, heavy, Milk, whole.", Weigh("milk", told).Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(CustomersWord.Dislike, Verdict.Note)]
    [InlineData(CustomersWord.Intolerance, Verdict.WithControls)]
    [InlineData(CustomersWord.Allergy, Verdict.Refuse)]
    [InlineData(CustomersWord.Anaphylaxis, Verdict.Refuse)]
    public void Perhaps_in_the_pack(CustomersWord told, Verdict verdict) =>
        Assert.Equal(verdict, Weigh("nuts", told, book: With(AllergenFacts.Only() with { May = ["almonds"] })).Verdict);

    [Theory]
    [InlineData(CustomersWord.Dislike, Verdict.Note)]
    [InlineData(CustomersWord.Intolerance, Verdict.NotKnown)]
    [InlineData(CustomersWord.Allergy, Verdict.NotKnown)]
    [InlineData(CustomersWord.Anaphylaxis, Verdict.NotKnown)]
    public void Not_known(CustomersWord told, Verdict verdict)
    {
        Assert.Equal(verdict, Weigh("nuts", told, book: With(null)).Verdict);
        Assert.Equal(verdict, Weigh("moon dust", told).Verdict);
    }

    [Theory]
    [InlineData(KitchenRule.Refuse, CustomersWord.Dislike, Verdict.Note)]
    [InlineData(KitchenRule.Refuse, CustomersWord.Intolerance, Verdict.WithControls)]
    [InlineData(KitchenRule.Refuse, CustomersWord.Allergy, Verdict.Refuse)]
    [InlineData(KitchenRule.Refuse, CustomersWord.Anaphylaxis, Verdict.Refuse)]
    [InlineData(KitchenRule.WithControls, CustomersWord.Dislike, Verdict.Note)]
    [InlineData(KitchenRule.WithControls, CustomersWord.Intolerance, Verdict.WithControls)]
    [InlineData(KitchenRule.WithControls, CustomersWord.Allergy, Verdict.WithControls)]
    [InlineData(KitchenRule.WithControls, CustomersWord.Anaphylaxis, Verdict.WithControls)]
    [InlineData(KitchenRule.Note, CustomersWord.Dislike, Verdict.Note)]
    [InlineData(KitchenRule.Note, CustomersWord.Intolerance, Verdict.Note)]
    [InlineData(KitchenRule.Note, CustomersWord.Allergy, Verdict.Note)]
    [InlineData(KitchenRule.Note, CustomersWord.Anaphylaxis, Verdict.WithControls)]
    public void Not_in_the_cake_but_perhaps_in_the_kitchen(KitchenRule rule, CustomersWord told, Verdict verdict)
    {
        var weighed = Weigh("nuts", told, rule);
        Assert.Equal(verdict, weighed.Verdict);
        Assert.Contains("used in this kitchen", weighed.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Each_thing_told_is_weighed_by_itself_and_words_alone_are_not_known()
    {
        var cake = CakeContents.Of(Order, Starter.Sample, AllergenRules.Usual, CakeFigures.Usual)!;
        Assert.Equal([Verdict.WithControls, Verdict.Refuse], Weighing.Of(Avoid(CustomersWord.Allergy, "nuts", "egg"), cake, AllergenRules.Usual).Select(w => w.Verdict));
        Assert.Equal(Verdict.NotKnown, Assert.Single(Weighing.Of(Avoid(CustomersWord.Allergy), cake, AllergenRules.Usual)).Verdict);
        Assert.Empty(Weighing.Of(AllergyAnswer.NoneTold, cake, AllergenRules.Usual));
        Assert.Equal(CustomersWord.Allergy, new AllergyAnswer(AllergyKind.Avoid, ["nuts"], "").Told);
    }

    [Fact]
    public void Each_tier_bears_its_own_stop_sign()
    {
        var order = Order with { Allergies = Avoid(CustomersWord.Allergy, "nuts"), Tiers = [Sponges("carrot").Tiers[0], Order.Tiers[1]] };
        var signs = StopSign.Of(order, CakeContents.Of(order, Starter.Sample, AllergenRules.Usual, CakeFigures.Usual)!, AllergenRules.Usual);
        Assert.Equal([true, false], signs.Select(s => s.Met));
        Assert.All(signs, s => Assert.Equal("Avoid nuts (allergy)", s.Avoid));
        Assert.Equal("This tier contains egg, milk, walnuts, wheat (gluten).", signs[0].Contains);
        Assert.Empty(StopSign.Of(order with { Allergies = Avoid(CustomersWord.Dislike, "nuts") }, CakeContents.Of(order, Starter.Sample, AllergenRules.Usual, CakeFigures.Usual)!, AllergenRules.Usual));
    }

    [Fact]
    public void No_verdict_promises_anything()
    {
        var said = Enum.GetValues<CustomersWord>().SelectMany(told => Enum.GetValues<KitchenRule>().SelectMany(rule => new[] { "milk", "nuts", "moon dust" }.Select(word => Weigh(word, told, rule))))
            .Select(w => $"{w.Reason} {w.Try}").ToList();
        Assert.All(said, s => Assert.All(new[] { "free from", "safe", "no allergens" }, word => Assert.DoesNotContain(word, s, StringComparison.OrdinalIgnoreCase)));
    }
}
