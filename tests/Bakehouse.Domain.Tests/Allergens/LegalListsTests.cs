namespace Bakehouse.Domain.Tests.Allergens;

using Bakehouse.Domain.Allergens;

/// <summary>The lists of two laws, and the owner's own matters.</summary>
public sealed class LegalListsTests
{
    /// <summary>Regulation (EU) No 1169/2011, annex II, in its order: 14 entries; retained in the United Kingdom.</summary>
    [Fact]
    public void The_european_list_has_fourteen_entries()
    {
        Assert.Equal(
            ["Cereals containing gluten", "Crustaceans", "Eggs", "Fish", "Peanuts", "Soybeans", "Milk", "Nuts", "Celery", "Mustard", "Sesame seeds", "Sulphur dioxide and sulphites", "Lupin", "Molluscs"],
            KnownAllergens.Eu.Entries.Select(e => e.Name));
        Assert.Equal(["wheat", "rye", "barley", "oats"], Covers(KnownAllergens.Eu, "gluten"));
        Assert.Equal(["almonds", "hazelnuts", "walnuts", "cashews", "pecans", "brazil-nuts", "pistachios", "macadamias"], Covers(KnownAllergens.Eu, "nuts"));
        Assert.Equal(10, KnownAllergens.SulphitesFrom);
    }

    /// <summary>21 USC 321(qq): the eight of the Act of 2004 and sesame by the FASTER Act of 2021.</summary>
    [Fact]
    public void The_american_list_has_nine_entries()
    {
        Assert.Equal(
            ["milk", "egg", "fish", "crustaceans", "nuts", "wheat", "peanuts", "soya", "sesame"],
            KnownAllergens.Us.Entries.Select(e => e.Word));
        Assert.Equal(["wheat"], Covers(KnownAllergens.Us, "wheat"));
    }

    [Fact]
    public void Every_list_covers_only_what_is_known_and_each_word_finds_it()
    {
        var known = KnownAllergens.All.Select(a => a.Id).ToHashSet();
        Assert.Equal(KnownAllergens.All.Count, known.Count);
        Assert.All(KnownAllergens.Lists.SelectMany(l => l.Entries), e =>
        {
            Assert.Subset(known, e.Covers.ToHashSet());
            Assert.Subset(KnownAllergens.Covered(e.Word).ToHashSet(), e.Covers.ToHashSet());
        });
        Assert.Equal(known, KnownAllergens.Lists.SelectMany(l => l.Entries).SelectMany(e => e.Covers).ToHashSet());
    }

    [Theory]
    [InlineData("Nuts", "walnuts", true)]
    [InlineData("wheat", "wheat", true)]
    [InlineData("wheat", "rye", false)]
    [InlineData("gluten", "rye", true)]
    [InlineData("Brazil nuts", "brazil-nuts", true)]
    [InlineData("peanuts", "walnuts", false)]
    public void A_word_of_the_counter_covers_what_it_means(string word, string allergen, bool covered) =>
        Assert.Equal(covered, AllergenRules.Usual.Covered(word).Contains(allergen));

    [Fact]
    public void A_shop_adds_allergens_of_its_own()
    {
        var rules = AllergenRules.Usual with { Others = [new Allergen("kiwi", "kiwi", "kiwi")], Policies = [new AllergenPolicy("kiwi", KitchenRule.Refuse)] };
        Assert.Empty(rules.Problems());
        Assert.Contains("kiwi", rules.MustKnow);
        Assert.Equal(["kiwi"], rules.Covered("Kiwi"));
        Assert.Equal(KitchenRule.Refuse, rules.RuleFor("kiwi"));
        Assert.Equal(KitchenRule.WithControls, rules.RuleFor("nuts"));
        Assert.Equal("wheat (gluten)", rules.NameOf("wheat"));
        Assert.Equal("wheat", (rules with { Law = "us" }).NameOf("wheat"));
    }

    [Fact]
    public void Everything_wrong_with_the_owners_rules_is_told_at_once()
    {
        var told = new AllergenRules("mars", [new AllergenPolicy("moon dust", KitchenRule.Note)], "All our cakes are nut-free.")
        {
            Others = [new Allergen("milk", "milk"), new Allergen("a b", " ")],
        }.Problems().ToList();
        Assert.Equal(["mars", "-free", "moon dust", "milk", "a b", ""], told.Select(p => p.Value));
        Assert.Equal(["law", "traces", "kitchen rules", "other allergens", "other allergens", "other allergens"], told.Select(p => p.Where));
    }

    private static IReadOnlyList<string> Covers(LegalList list, string word) => list.Entries.Single(e => e.Word == word).Covers;
}
