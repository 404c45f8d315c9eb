namespace Bakehouse.Domain.Tests.Dangers;

using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Dangers;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Shops;
using Bakehouse.Testing;

public sealed class EaterQuestionsTests
{
    private static readonly Eaters Children = new(SmallChildren: true, Vulnerable: false);
    private static readonly Eaters Old = new(SmallChildren: false, Vulnerable: true);

    /// <summary>
    /// Whole nuts, popcorn, hard sweets, whole grapes: American Academy of Pediatrics, as quoted; marshmallows and cherries: Illinois Extension, prevent choking. Pearls,
    /// small toppers and picks: common practice, no source.
    /// </summary>
    [Theory]
    [InlineData("whole-nuts")]
    [InlineData("popcorn")]
    [InlineData("hard-sweets")]
    [InlineData("marshmallows")]
    [InlineData("whole-grapes-or-cherries")]
    [InlineData("sugar-pearls")]
    [InlineData("small-toppers")]
    [InlineData("flags")]
    public void What_a_small_child_can_choke_on_is_named(string topping)
    {
        var order = OnTopChecksTests.Topped(new OrderedTopping(topping)) with { Eaters = Children };
        Assert.Contains(Topping.Of(topping)!.Name, Ask(order)!.Words, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Nuts_in_a_sponge_and_pearls_of_a_decoration_are_found_in_the_recipes_and_ground_ones_are_not()
    {
        var carrot = Cakes.Good(1, 8) with { Eaters = Children, Decoration = Decoration.Medium };
        carrot = carrot with { Tiers = [carrot.Tiers[0] with { Sponge = "carrot" }] };
        Assert.Equal(["sugar pearls", "walnuts, chopped"], Ask(carrot)!.Chokes);
        var ground = Starter.Sample.With([], [Starter.Sample.Recipe("vanilla")! with { Lines = [.. Starter.Sample.Recipe("vanilla")!.Lines, RecipeLine.Grams("ground-almonds", 100)] }]);
        Assert.Empty(Ask(Cakes.Good() with { Eaters = Children }, ground)!.Chokes);
    }

    /// <summary>USDA Table of Nutrient Retention Factors, release 6: of alcohol that is baked an hour 25 % is left, so baking is no answer.</summary>
    [Fact]
    public void Alcohol_is_asked_about_though_it_is_baked() => Assert.Equal(["Vanilla extract"], Ask(Cakes.Good() with { Eaters = Children })!.Alcohol);

    /// <summary>Food Standards Agency, advice on eggs of 2017, and US practice: raw egg that is not pasteurised is the question for the very young, the pregnant, the old and the ill.</summary>
    [Theory]
    [InlineData(EggMethod.Raw, true)]
    [InlineData(EggMethod.Pasteurised, false)]
    [InlineData(EggMethod.Cooked, false)]
    public void Raw_egg_stops_unless_it_is_pasteurised_or_cooked_or_the_owner_serves_it(EggMethod eggs, bool stops)
    {
        var book = Starter.Sample.With([], [Starter.Sample.Recipe("raspberry-jam")! with { Lines = [.. Starter.Sample.Recipe("raspberry-jam")!.Lines, RecipeLine.Kitchen("egg-white", 2, "large")], Eggs = eggs }]);
        var order = Cakes.Good() with { Eaters = Old };
        var asked = order with { Eaters = Old with { Asked = Ask(order, book)!.Words } };
        Assert.Equal(stops, Problems(asked, book, owner: false).Any());
        var agreed = asked with { Eaters = asked.Eaters! with { RawEggAgreed = true } };
        Assert.Empty(Problems(agreed, book, owner: true));
        Assert.Equal(stops, Problems(agreed, book, owner: false).Any());
    }

    [Fact]
    public void It_is_taken_once_asked_and_asked_anew_when_something_comes_in()
    {
        var order = OnTopChecksTests.Topped(new OrderedTopping("topper")) with { Eaters = Children };
        var asked = order with { Eaters = Children with { Asked = Ask(order)!.Words } };
        Assert.NotEmpty(Problems(order, Starter.Sample));
        Assert.Empty(Problems(order with { Stage = Stage.Kept }, Starter.Sample));
        Assert.Empty(Problems(asked, Starter.Sample));
        Assert.NotEmpty(Problems(asked with { OnTop = new OnTop(null, [new OrderedTopping("popcorn")]) }, Starter.Sample));
    }

    [Fact]
    public void Nobody_is_asked_where_nobody_was_named_and_no_recipes_say_so()
    {
        Assert.Null(Ask(Cakes.Good()));
        Assert.Null(Ask(Cakes.Good() with { Eaters = new Eaters(false, false) }));
        Assert.Contains("look yourself", Ask(Cakes.Good() with { Eaters = Old }, Cookbook.Empty)!.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Children_alone_bring_what_chokes_and_others_do_not()
    {
        var order = OnTopChecksTests.Topped(new OrderedTopping("popcorn"));
        Assert.Empty(Ask(order with { Eaters = Old })!.Chokes);
        Assert.Equal(["popcorn"], Ask(order with { Eaters = Children })!.Chokes.Distinct());
    }

    private static EaterQuestions? Ask(Order order, Cookbook? recipes = null) =>
        EaterQuestions.Of(order, (recipes ?? Starter.Sample).Version == 0 ? null : CakeContents.Of(order, recipes ?? Starter.Sample, AllergenRules.Usual, CakeFigures.Usual), recipes ?? Starter.Sample);

    private static IReadOnlyList<Problem> Problems(Order order, Cookbook recipes, bool owner = true) =>
        [.. OrderChecks.Problems(order, SampleBakery.Shop, Cakes.Now, owner, recipes).Where(p => p.Where == "Eaters")];
}
