namespace Bakehouse.Domain.Tests.Allergens;

using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;
using static Bakehouse.Domain.Recipes.RecipeLine;

/// <summary>What a cake contains, worked out from the packs up.</summary>
public sealed class ContentsTests
{
    private static readonly AllergenRules Rules = AllergenRules.Usual;

    private static CakeContents Cake(string sponge, string filling, Cookbook? book = null, Decoration decoration = Decoration.Simple, int layers = 4)
    {
        var order = Testing.Cakes.Good(1, 8);
        return CakeContents.Of(order with { Decoration = decoration, Tiers = [.. order.Tiers.Select(t => t with { Sponge = sponge, Filling = filling, Layers = layers })] }, book ?? Starter.Sample, Rules, CakeFigures.Usual)!;
    }

    private static Cookbook With(string ingredient, AllergenFacts? facts) =>
        Starter.Sample.With([Starter.Sample.Ingredient(ingredient)!.Swapped(new Pack("new", facts))], []);

    /// <summary>What the planner keeps apart agrees with the recipes: walnuts are its nuts. Our own words on both sides.</summary>
    [Fact]
    public void The_starter_recipes_have_what_the_planner_keeps_apart()
    {
        foreach (var (id, has) in Sponge.All.Select(s => (s.Id, s.Has)).Concat(Filling.All.Select(f => (f.Id, f.Has))))
        {
            var recipe = Starter.Sample.Recipe(id)!;
            var contents = Contents.Of([new RecipePart(recipe, Mass.FromGrams(1000))], Starter.Sample, Rules);
            Assert.Equal(has.Order().ToList(), contents.Has.Select(a => a == "walnuts" ? "nuts" : a).Order().ToList());
            Assert.Empty(contents.Unknown);
        }
    }

    [Fact]
    public void Sponge_filling_coat_colour_decoration_and_tins_all_count()
    {
        Assert.Equal("Contains egg, milk, wheat (gluten).", ContainsWords.Line(Cake("vanilla", "raspberry-jam").Whole, Rules));
        Assert.Contains("walnuts", Cake("carrot", "raspberry-jam").Whole.Has);
        foreach (var (swapped, cake) in new[] { ("colour-gel", Decoration.Simple), ("sugar-pearls", Decoration.Medium), ("sugar-paste", Decoration.Rich), ("rapeseed-oil", Decoration.Simple), ("raspberries", Decoration.Simple), ("icing-sugar", Decoration.Simple) })
        {
            var book = With(swapped, AllergenFacts.Only([.. Starter.Sample.Ingredient(swapped)!.InUse!.Facts!.Has, "sesame"]));
            Assert.Contains("sesame", Cake("vanilla", "raspberry-jam", book, cake).Whole.Has);
        }
    }

    [Fact]
    public void Paste_and_drip_count_and_without_a_recipe_nothing_is_known_of_them()
    {
        var order = Testing.Cakes.Good(1, 8);
        order = order with { Tiers = [.. order.Tiers.Select(t => t with { Special = new TierSpecial { Paste = Length.FromMillimetres(4), Drip = Length.FromMillimetres(40) } })] };
        var bare = new Cookbook(1, Starter.Sample.Ingredients, [.. Starter.Sample.Recipes.Where(r => r.Id is not (CakeParts.Paste or CakeParts.Drip))]);
        var cake = CakeContents.Of(order, bare, Rules, CakeFigures.Usual)!;
        Assert.Equal(["Drip (recipe drip)", "Sugar paste (recipe paste)"], cake.Tiers[0].Missing.Order());
        Assert.Contains("almonds", cake.Whole.Unknown);
    }

    [Fact]
    public void A_filling_counts_only_where_there_is_one() =>
        Assert.DoesNotContain(Cake("genoise", "lemon-curd", layers: 1).Tiers[0].Parts, p => p.Recipe.Id == "lemon-curd");

    [Fact]
    public void Not_known_is_not_no()
    {
        var cake = Cake("vanilla", "raspberry-jam", With("icing-sugar", null));
        Assert.Contains("almonds", cake.Whole.Unknown);
        Assert.Equal(AllergenStatus.Has, cake.Whole.Status("milk"));
        Assert.Equal(["Icing sugar"], cake.Whole.In("almonds"));
        Assert.Equal("Contains egg, milk, wheat (gluten). Not known yet: read the packs.", ContainsWords.Line(cake.Whole, Rules));
        Assert.NotEmpty(cake.NotKnown(Rules));
        Assert.Empty(Cake("vanilla", "raspberry-jam").NotKnown(Rules));
    }

    [Fact]
    public void A_part_without_a_recipe_is_not_known()
    {
        var book = new Cookbook(1, Starter.Sample.Ingredients, [.. Starter.Sample.Recipes.Where(r => r.Id != "vanilla")]);
        var tier = Cake("vanilla", "raspberry-jam", book).Tiers[0];
        Assert.Equal(["Vanilla butter cake"], tier.Missing);
        Assert.Contains("Vanilla butter cake (no recipe)", tier.Contents.In("soya"));
    }

    /// <summary>A list with a part missing would read like a promise: one unread pack, one read in part or one missing recipe, and no tier has a label. Our own rule.</summary>
    [Fact]
    public void While_something_is_not_known_no_tier_has_a_label_and_what_it_waits_for_is_named()
    {
        var order = Testing.Cakes.Good(1, 10, 8);
        order = order with { Tiers = [order.Tiers[0] with { Sponge = "chocolate", Filling = "ganache" }, order.Tiers[1] with { Sponge = "vanilla", Filling = "raspberry-jam" }] };
        List<TierContents> Tiers(Cookbook book) => [.. CakeContents.Of(order, book, Rules, CakeFigures.Usual)!.Tiers];
        Assert.All(Tiers(Starter.Sample), t => Assert.True(t.Label.Waits.Count == 0 && t.Label.Text.Contains("MILK", StringComparison.Ordinal)));

        Waits(new LabelWaits(LabelGap.NotRead, "raspberries", "Raspberries"), With("raspberries", null));
        Waits(new LabelWaits(LabelGap.ReadInPart, "raspberries", "Raspberries", "soya"), With("raspberries", AllergenFacts.Only() is var read ? read with { HasNot = [.. read.HasNot.Where(a => a != "soya")] } : null));
        Waits(new LabelWaits(LabelGap.ReadInPart, "raspberries", "Raspberries", "sulphites"), With("raspberries", AllergenFacts.Only() with { SulphitesMgPerKg = null }));
        Waits(new LabelWaits(LabelGap.NoRecipe, "", "Raspberry jam"), new Cookbook(1, Starter.Sample.Ingredients, [.. Starter.Sample.Recipes.Where(r => r.Id != "raspberry-jam")]));

        void Waits(LabelWaits wanted, Cookbook book) => Assert.All(Tiers(book), t =>
        {
            Assert.Equal([wanted], t.Label.Waits);
            Assert.Empty(t.Label.Runs);
            Assert.Equal("", t.Label.Text);
        });
    }

    [Fact]
    public void A_new_pack_asks_for_its_label_and_an_old_one_can_be_locked()
    {
        var book = With("dark-chocolate", null);
        Assert.Contains("soya", Cake("chocolate", "ganache", book).Whole.Unknown);
        var locked = book.Using([new PackLock("dark-chocolate", "sample")]);
        Assert.Empty(Cake("chocolate", "ganache", locked).Whole.Unknown);
        Assert.Throws<ArgumentOutOfRangeException>(() => book.Using([new PackLock("dark-chocolate", "no such lot")]));
        Assert.Equal(["new", "sample"], book.Ingredient("dark-chocolate")!.Packs.Select(p => p.Lot));
    }

    [Fact]
    public void What_a_real_shop_starts_with_is_known_to_have_what_it_has_and_no_more()
    {
        var cake = Cake("vanilla", "raspberry-jam", Starter.ToBeRead);
        Assert.Equal(["egg", "milk", "wheat"], cake.Whole.Has);
        Assert.Equal(Rules.MustKnow.Except(["egg", "milk", "wheat"]).Order(), cake.NotKnown(Rules).Select(n => n.Allergen).Order());
    }

    /// <summary>Alcohol in the vanilla is told (35 % by volume at least: 21 CFR 169.175, from memory); raw egg by the recipe inside.</summary>
    [Fact]
    public void Alcohol_and_raw_egg_are_found_inside()
    {
        Assert.Equal(["Vanilla extract"], Cake("vanilla", "raspberry-jam").Tiers[0].Alcohol);
        Assert.Empty(Cake("lemon", "raspberry-jam").Tiers[0].Alcohol);
        var mousse = new Recipe("mousse", 1, "Mousse", RecipeKind.Part, [Grams("egg-white", 50)], EggMethod.Raw, null, []);
        var ganache = Starter.Sample.Recipe("ganache")! with { Lines = [Grams("dark-chocolate", 10), Part("mousse", 5)] };
        Assert.Equal(["Mousse"], Cake("lemon", "ganache", Starter.Sample.With([], [mousse, ganache])).Tiers[0].RawEgg);
    }

    /// <summary>
    /// From 10 mg/kg of SO2 on in what is eaten (21 CFR 101.100(a)(4); Regulation (EU) 1169/2011, annex II, entry 12 says more than 10: the
    /// more careful counts). 20 g of 100 mg/kg in 200 g are 10 mg/kg.
    /// </summary>
    [Theory]
    [InlineData(99.9, 0, AllergenStatus.May)]
    [InlineData(100, 0, AllergenStatus.Has)]
    [InlineData(90.1, 10, AllergenStatus.Has)]
    [InlineData(89.9, 10, AllergenStatus.May)]
    [InlineData(0, 0, AllergenStatus.HasNot)]
    public void Sulphites_are_told_by_their_amount_in_what_is_eaten(double mgPerKg, double loss, AllergenStatus status)
    {
        var (book, parts) = Cherries((decimal)mgPerKg, (decimal)loss);
        Assert.Equal(status, Contents.Of(parts, book, Rules).Status("sulphites"));
        Assert.Equal(mgPerKg / 10 / (1 - (loss / 100)), (double)Contents.SulphitesMgPerKg(parts, book)!.Value, 6);
    }

    [Fact]
    public void Sulphites_without_a_figure_are_not_known_unless_the_pack_lists_them()
    {
        var (book, parts) = Cherries(null, 0);
        Assert.Equal(AllergenStatus.Unknown, Contents.Of(parts, book, Rules).Status("sulphites"));
        Assert.Null(Contents.SulphitesMgPerKg(parts, book));
        var listed = book.Ingredient("cherries")!.Swapped(new Pack("b", new AllergenFacts(["sulphites"], [], [], null)));
        Assert.Equal(AllergenStatus.Has, Contents.Of(parts, book.With([listed], []), Rules).Status("sulphites"));
    }

    private static (Cookbook Book, IReadOnlyList<RecipePart> Parts) Cherries(decimal? mgPerKg, decimal loss)
    {
        var cherries = new Ingredient("cherries", 1, "Cherries", "glacé cherries", IngredientKind.Other, [], "", [new Pack("a", AllergenFacts.Only() with { SulphitesMgPerKg = mgPerKg })]);
        var book = Starter.Sample.With([cherries], [new Recipe("x", 1, "X", RecipeKind.Part, [Grams("cherries", 10), Grams("sugar", 90)], EggMethod.None, null, [], loss)]);
        return (book, [new RecipePart(book.Recipe("x")!, Mass.FromGrams(200))]);
    }
}
