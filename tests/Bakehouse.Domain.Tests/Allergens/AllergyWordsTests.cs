namespace Bakehouse.Domain.Tests.Allergens;

using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Orders;

/// <summary>
/// A customer's word and the button that covers it. What falls under each entry: Regulation (EU) No 1169/2011, annex II, with the words of its
/// entries; 21 USC 321(qq) for the American list. Everyday words: common practice, no source.
/// </summary>
public sealed class AllergyWordsTests
{
    /// <summary>The fourteen entries of the annex, each by a word that people use.</summary>
    [Theory]
    [InlineData("gluten", "gluten")]
    [InlineData("she is a coeliac", "gluten")]
    [InlineData("spelt", "wheat")]
    [InlineData("king prawns", "crustaceans")]
    [InlineData("Eggs", "egg")]
    [InlineData("salmon", "fish")]
    [InlineData("groundnuts", "peanuts")]
    [InlineData("soy", "soya")]
    [InlineData("dairy", "milk")]
    [InlineData("lactose intolerant", "milk")]
    [InlineData("hazelnuts", "nuts")]
    [InlineData("Brazil nut", "nuts")]
    [InlineData("marzipan", "nuts")]
    [InlineData("celeriac", "celery")]
    [InlineData("mustard seeds", "mustard")]
    [InlineData("tahini", "sesame")]
    [InlineData("sulfites", "sulphites")]
    [InlineData("lupin flour, please", "lupin")]
    [InlineData("oysters", "molluscs")]
    [InlineData("shellfish", "crustaceans,molluscs")]
    public void A_word_leads_to_what_covers_it(string words, string buttons) =>
        Assert.Equal(buttons, string.Join(',', AllergyWords.In(words, AllergenRules.Usual).SelectMany(s => s.Buttons)));

    [Theory]
    [InlineData("coconut")]
    [InlineData("nutmeg and butternut squash")]
    [InlineData("kiwi, strawberries")]
    [InlineData("")]
    public void A_word_that_only_looks_like_one_leads_nowhere(string words) => Assert.Empty(AllergyWords.In(words, AllergenRules.Usual));

    [Fact]
    public void A_longer_phrase_comes_first_and_the_shops_own_allergens_are_found()
    {
        Assert.Equal(["monkey nuts", "nuts"], AllergyWords.In("monkey nuts, and nuts", AllergenRules.Usual).Select(s => s.Said));
        var rules = AllergenRules.Usual with { Others = [new Allergen("kiwi", "kiwi", "kiwi", "kiwi fruit")] };
        Assert.Equal(["kiwi"], AllergyWords.In("kiwi fruit", rules).Single().Buttons);
    }

    /// <summary>21 USC 321(qq) has wheat and no gluten, no celery and no molluscs.</summary>
    [Fact]
    public void The_american_list_leads_to_its_own_buttons()
    {
        var us = AllergenRules.Usual with { Law = "us" };
        Assert.Equal(["wheat"], AllergyWords.In("gluten", us).Single().Buttons);
        Assert.Equal(["crustaceans"], AllergyWords.In("shellfish", us).Single().Buttons);
        Assert.Empty(AllergyWords.In("celery", us));
    }

    /// <summary>Every allergen that a law covers has an everyday word, and every word of the table leads to something that can be ticked.</summary>
    [Fact]
    public void Each_known_allergen_is_found_by_its_own_name() =>
        Assert.All(KnownAllergens.All.Where(a => AllergenRules.Usual.MustKnow.Contains(a.Id)), a =>
            Assert.Contains(AllergyWords.In(a.Name, AllergenRules.Usual), s => s.Buttons.All(b => AllergenRules.Usual.Covered(b).Contains(a.Id))));

    [Fact]
    public void Words_alone_are_led_and_nothing_said_is_no_word()
    {
        var cake = Domain.Allergens.CakeContents.Of(Testing.Cakes.Good(), Domain.Recipes.Starter.Sample, AllergenRules.Usual, Domain.Cakes.CakeFigures.Usual)!;
        var led = Assert.Single(Weighing.Of(new AllergyAnswer(AllergyKind.Avoid, [], "hazelnuts"), cake, AllergenRules.Usual));
        Assert.Equal((Verdict.NotKnown, "Not ticked yet: nuts."), (led.Verdict, led.Reason));
        var nothing = Assert.Single(Weighing.Of(new AllergyAnswer(AllergyKind.Avoid, [], " "), cake, AllergenRules.Usual));
        Assert.Equal(("", "Nobody has said yet what must be avoided."), (nothing.Told, nothing.Reason));
    }
}
