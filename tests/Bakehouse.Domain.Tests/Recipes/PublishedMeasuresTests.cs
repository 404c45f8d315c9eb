namespace Bakehouse.Domain.Tests.Recipes;

using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Recipes;

/// <summary>
/// Weights and rooms of kitchen measures, as published. Left out: minimum weights of eggs in the shell (USDA weight classes), since we
/// count edible grams; weights of whole cakes (NDB 18101, 18139), which the densities of sponges came from already.
/// </summary>
public sealed class PublishedMeasuresTests
{
    /// <summary>USDA National Nutrient Database SR28, weight file, by its number.</summary>
    [Theory]
    [InlineData("table", "20081", "cup", 125)]
    [InlineData("I-SR02", "20084", "cup", 137)]
    [InlineData("I-SR03", "20083", "cup", 137)]
    [InlineData("I-SR04", "20080", "cup", 120)]
    [InlineData("table", "19335", "cup", 200)]
    [InlineData("I-SR06", "19336", "cup, unsifted", 120)]
    [InlineData("I-SR07", "19336", "cup, sifted", 100)]
    [InlineData("I-SR08", "19334", "cup, packed", 220)]
    [InlineData("I-SR09", "19334", "cup, loose", 145)]
    [InlineData("I-SR10", "19165", "cup", 86)]
    [InlineData("I-SR11", "01145", "cup", 227)]
    [InlineData("I-STICK", "01145", "stick", 113)]
    [InlineData("table", "01077", "cup", 244)]
    [InlineData("I-SR13", "01053", "cup", 238)]
    [InlineData("I-SR14", "01088", "cup", 245)]
    [InlineData("I-SR15", "01056", "cup", 230)]
    [InlineData("I-SR16", "01017", "cup", 232)]
    [InlineData("table", "04582", "cup", 218)]
    [InlineData("I-SR18", "04615", "cup", 205)]
    [InlineData("I-SR19", "20027", "cup", 128)]
    [InlineData("I-SR20", "18369", "tsp", 4.6)]
    [InlineData("I-SR21", "18372", "tsp", 4.6)]
    [InlineData("I-SR22", "18373", "tsp", 3)]
    [InlineData("table", "02047", "tsp", 6)]
    [InlineData("I-SR24", "02050", "tsp", 4.2)]
    [InlineData("I-SR25", "19296", "cup", 339)]
    [InlineData("table", "01123", "small", 38)]
    [InlineData("I-SR29", "01123", "large", 50)]
    [InlineData("I-SR30", "01123", "medium", 44)]
    [InlineData("I-SR31", "01123", "extra large", 56)]
    [InlineData("I-SR32", "01123", "jumbo", 63)]
    [InlineData("I-SR33", "01124", "large", 33)]
    [InlineData("I-SR34", "01125", "large", 17)]
    public void A_measure_weighs_what_the_table_says(string id, string ndb, string measure, double grams)
    {
        var ingredient = Assert.Single(Starter.Sample.Ingredients, i => i.Source.EndsWith($"NDB {ndb}", StringComparison.Ordinal));
        Assert.True(KitchenAmount.GramsOf(ingredient, measure) == (decimal)grams, id);
    }

    /// <summary>The same file; of these numbers there are several ingredients, whole ones beside ground and chopped.</summary>
    [Theory]
    [InlineData("whole-almonds", "12061", "cup", 143)]
    [InlineData("whole-hazelnuts", "12120", "cup", 135)]
    [InlineData("whole-walnuts", "12155", "cup", 100)]
    [InlineData("whole-pecans", "12142", "cup", 99)]
    [InlineData("whole-cashews", "12586", "cup", 129)]
    [InlineData("whole-brazil-nuts", "12078", "cup", 133)]
    [InlineData("whole-pistachios", "12151", "cup", 123)]
    [InlineData("whole-macadamias", "12131", "cup", 134)]
    public void A_whole_nut_weighs_what_the_table_says(string id, string ndb, string measure, double grams)
    {
        var nut = Starter.Sample.Ingredient(id)!;
        Assert.Equal(($"USDA SR28, NDB {ndb}", (decimal)grams), (nut.Source, KitchenAmount.GramsOf(nut, measure)));
    }

    /// <summary>Cups, spoons: 231 in³ to the gallon (NIST Handbook 44, appendix C); label cup 21 CFR 101.9(b)(5)(viii); metric cup common practice.</summary>
    [Theory]
    [InlineData("I-CUP", "cup", 236.5882365)]
    [InlineData("I-TBSP", "tbsp", 14.78676478)]
    [InlineData("I-TSP", "tsp", 4.92892159)]
    [InlineData("I-CUP-FDA", "label cup", 240)]
    [InlineData("I-CUP-METRIC", "metric cup", 250)]
    public void What_has_a_density_is_measured_by_room_and_each_cup_is_its_own(string id, string measure, double millilitres)
    {
        var water = new Ingredient("x", 1, "X", "x", IngredientKind.Liquid, [], "", []) { GramsPerMillilitre = 1 };
        Assert.True(Math.Abs((double)KitchenAmount.GramsOf(water, measure)!.Value - millilitres) <= 0.0005, id);
    }

    /// <summary>I-STICK: a quarter pound is 113.3980925 g exactly; the weight file prints 113.</summary>
    [Fact]
    public void A_printed_stick_of_butter_is_a_quarter_pound_to_the_gram() =>
        Assert.Equal(113, decimal.Round(28.349523125m * 4));

    /// <summary>I-FLOUR-DENS: 125 g a cup is 0.52834 g/mL (SR28 and the customary cup).</summary>
    [Fact]
    public void A_density_and_the_cup_give_the_published_weight_back()
    {
        var flour = new Ingredient("x", 1, "X", "x", IngredientKind.Flour, [], "", []) { GramsPerMillilitre = 0.52834m };
        Assert.Equal(125, (double)KitchenAmount.GramsOf(flour, "cup")!.Value, 0.002);
    }

    /// <summary>C-D-abc: 227 g butter, 480 g icing sugar and 45 g cream give 3 US cups, 1.0595 g/mL (yield from memory).</summary>
    [Fact]
    public void The_starters_buttercream_has_the_proportions_of_the_common_one()
    {
        var total = Starter.Sample.Total(Starter.Sample.Recipe("buttercream")!);
        Assert.Equal(1.0595, (double)total.Grams / (KitchenMeasures.UsCup * 3).Millilitres, 0.005);
    }

    /// <summary>No weight of a stick is published for flour: then nobody knows it.</summary>
    [Fact]
    public void A_measure_that_nobody_weighed_is_not_guessed()
    {
        var flour = Starter.Sample.Ingredient("plain-flour")!;
        Assert.Null(KitchenAmount.GramsOf(flour, "stick"));
        Assert.Null(KitchenAmount.GramsOf(flour, "metric cup"));
        Assert.Equal(["g", "cup"], KitchenAmount.Of(flour));
    }

    [Theory]
    [InlineData(281.25, "2 1/4 cups")]
    [InlineData(62, "1/2 cup")]
    [InlineData(20, "")]
    public void Grams_stand_beside_their_kitchen_measure_in_quarters(double grams, string said) =>
        Assert.Equal(said, KitchenAmount.Beside(Starter.Sample.Ingredient("plain-flour")!, Mass.FromGrams((decimal)grams)));
}
