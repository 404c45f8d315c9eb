namespace Bakehouse.Domain.Tests.Dangers;

using Bakehouse.Domain.Dangers;

public sealed class FlowerTests
{
    /// <summary>Colorado State University Extension, fact sheet 7.237, table 1 (revised October 2020): plants with poisonous parts or flowers, by its scientific names.</summary>
    [Theory]
    [InlineData("Convallaria majalis")]
    [InlineData("Delphinium")]
    [InlineData("Dicentra formosa")]
    [InlineData("Digitalis purpurea")]
    [InlineData("Hyacinthus")]
    [InlineData("Lathyrus")]
    [InlineData("Narcissus")]
    [InlineData("Nerium oleander")]
    [InlineData("Rhododendron")]
    [InlineData("Zantedeschia aethiopica")]
    [InlineData("Hippeastrum")]
    [InlineData("Clematis")]
    [InlineData("Lobelia")]
    [InlineData("Lantana camara")]
    [InlineData("Achillea millefolium")]
    public void What_colorado_lists_as_poisonous_is(string botanical) => Assert.Equal(FlowerKnown.Poisonous, Flower.Named(botanical)?.Known);

    /// <summary>Maryland Poison Center, common poisonous plants (2012), by its everyday names.</summary>
    [Theory]
    [InlineData("Daffodil")]
    [InlineData("English ivy")]
    [InlineData("Hyacinth")]
    [InlineData("Iris")]
    [InlineData("Lily-of-the-valley")]
    [InlineData("Mistletoe")]
    [InlineData("Monkshood")]
    [InlineData("Mountain laurel")]
    [InlineData("Peace lily")]
    [InlineData("Hydrangea")]
    [InlineData("Wisteria")]
    [InlineData("Holly")]
    [InlineData("Cyclamen")]
    public void What_maryland_lists_as_poisonous_is(string name) => Assert.Equal(FlowerKnown.Poisonous, Flower.Named(name)?.Known);

    /// <summary>Flowers that makers keep off cakes (common practice; makers' own lists, from memory where no other is named).</summary>
    [Theory]
    [InlineData("ranunculus")]
    [InlineData("anemone")]
    [InlineData("tulip")]
    [InlineData("poinsettia")]
    [InlineData("gypsophila")]
    public void What_makers_keep_off_cakes_is_not_eaten_here(string name) => Assert.True(Flower.Named(name)?.Known < FlowerKnown.GrownToEat);

    /// <summary>
    /// North Carolina Extension, leaflet 8513, table 1 (bachelor's button, bee balm, borage, calendula), Iowa State University Extension RG 302 (roses, violets,
    /// Johnny-jump-ups, pansies, calendula, borage), and CSU 7.237 table 2 as quoted (nasturtium, lavender).
    /// </summary>
    [Theory]
    [InlineData("Rose")]
    [InlineData("white roses")]
    [InlineData("Pansies")]
    [InlineData("Johnny-jump-up")]
    [InlineData("Calendula officinalis")]
    [InlineData("nasturtiums")]
    [InlineData("Bachelor's button")]
    [InlineData("borage")]
    [InlineData("lavender")]
    public void What_extensions_list_as_eaten_may_be(string name) => Assert.Equal(FlowerKnown.GrownToEat, Flower.Named(name)?.Known);

    /// <summary>Maryland lists chrysanthemum and gladiolus as poisonous; North Carolina and Texas A&amp;M list them among those eaten.</summary>
    [Theory]
    [InlineData("chrysanthemums")]
    [InlineData("gladiolus")]
    [InlineData("carnation")]
    public void Where_lists_disagree_it_is_doubtful_and_both_are_named(string name)
    {
        var flower = Flower.Named(name)!;
        Assert.Equal(FlowerKnown.Doubtful, flower.Known);
        Assert.Contains("poisonous", flower.Source, StringComparison.Ordinal);
        Assert.Contains("eaten", flower.Source, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("christmas rose", FlowerKnown.Poisonous)]
    [InlineData("Lenten roses", FlowerKnown.Poisonous)]
    [InlineData("white calla lilies", FlowerKnown.Poisonous)]
    [InlineData("pink and blue hydrangea heads", FlowerKnown.Poisonous)]
    [InlineData("stargazer lily", FlowerKnown.Doubtful)]
    [InlineData("Baby’s breath", FlowerKnown.Doubtful)]
    public void A_poisonous_name_is_found_in_many_words_and_the_longer_name_counts(string typed, FlowerKnown known) => Assert.Equal(known, Flower.Named(typed)?.Known);

    [Theory]
    [InlineData("rose of Sharon")]
    [InlineData("rosemary flowers")]
    [InlineData("African violet")]
    [InlineData("freesia")]
    [InlineData("something blue")]
    [InlineData("")]
    [InlineData("🌸")]
    public void What_is_not_surely_one_of_the_list_is_not_known(string typed) => Assert.Null(Flower.Named(typed));

    [Fact]
    public void Each_has_a_source_and_one_name_for_one_flower()
    {
        Assert.All(FlowerList.All, f => Assert.NotEmpty(f.Source));
        Assert.All(FlowerList.All, f => Assert.Same(f, Flower.Named(f.Name)));
        Assert.All(FlowerList.All, f => Assert.Same(f, Flower.Named(f.Botanical)));
        Assert.All(FlowerList.All.SelectMany(f => f.AlsoCalled.Select(n => (f, n))), p => Assert.Same(p.f, Flower.Named(p.n)));
    }
}
