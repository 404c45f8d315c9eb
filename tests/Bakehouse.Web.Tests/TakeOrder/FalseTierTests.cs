namespace Bakehouse.Web.Tests.TakeOrder;

using Bunit;

/// <summary>A tier of foam and one on pillars, under the tier's own "More".</summary>
public sealed class FalseTierTests : CounterContext
{
    [Fact]
    public void Foam_and_pillars_are_folded_away_and_written_as_tapped()
    {
        var page = Filled("sat", "14:00");
        Tap(page, "6+8+10");
        Assert.Empty(page.FindAll(".tier-more"));
        More(page, 2);
        page.Find("[aria-label='Tier 2: false tier']").Change(true);
        page.Find("[aria-label='Tier 2: pillars in cm']").Input("6");
        Assert.Contains("foam, coated, not eaten", page.Find("#tier-2").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.Find("#tier-2").QuerySelectorAll("[aria-label='Tier 2: sponge']"));
        Assert.Contains("40 dessert", page.Find(".two-counts").TextContent.Replace("\n", "", StringComparison.Ordinal).Replace("  ", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Tap(page, "Take the order");
        var tiers = Assert.Single(Book.State.Orders).Tiers;
        Assert.Equal((true, 6m), (tiers[1].IsFalse, tiers[1].Special!.Separator.Centimetres));
        Assert.All([tiers[0], tiers[2]], t => Assert.Null(t.Special));
    }

    [Fact]
    public void The_bottom_stands_on_its_board_and_a_change_shows_what_was_special()
    {
        var page = Filled("sat", "14:00");
        More(page, 1);
        Assert.Empty(page.FindAll("[aria-label='Tier 1: pillars in cm']"));
        Tap(page, "6+10");
        Type(page, "count", "12");
        page.Find("[aria-label='Tier 2: false tier']").Change(true);
        Tap(page, "Take the order");
        var change = Open(Assert.Single(Book.State.Orders).Id);
        Assert.Contains("False tier", change.Find("#tier-2").TextContent, StringComparison.Ordinal);
        More(change, 2);
        change.Find("[aria-label='Tier 2: false tier']").Change(false);
        Tap(change, "Write the change");
        Assert.Null(Book.State.Orders.Single().Tiers[0].Special);
    }

    /// <summary>Layers of 3, 2 and 3.73 cm with two fillings of 0.635 cm make 10 cm (worked by hand).</summary>
    [Fact]
    public void Unequal_layers_a_ring_and_beads_are_written_as_typed_and_come_back()
    {
        var page = Filled("sat", "14:00");
        Tap(page, "6+10");
        Type(page, "count", "12");
        More(page, 2);
        page.Find("[aria-label='Tier 2: layers']").Input("3");
        page.Find("[aria-label='Tier 2: each layer from the foot in cm']").Input("3 2,0 3.73");
        page.Find("[aria-label='Tier 2: ring around the filling in cm']").Input("1.2");
        page.Find("[aria-label='Tier 2: bead at the foot in cm']").Input("0.8");
        page.Find("[aria-label='Tier 2: bead on top in cm']").Input("0.5");
        Tap(page, "Take the order");
        var order = Assert.Single(Book.State.Orders);
        var special = order.Tiers[0].Special!;
        Assert.Equal([3m, 2m, 3.73m], special.LayerHeights.Select(l => l.Centimetres));
        Assert.Equal((1.2m, 0.8m, 0.5m), (special.Dam.Centimetres, special.FootBead.Centimetres, special.TopBead.Centimetres));
        Assert.Null(order.Tiers[1].Special);
        var change = Open(order.Id);
        Assert.Equal("3 2 3.73", change.Find("[aria-label='Tier 2: each layer from the foot in cm']").GetAttribute("value"));
        Type(change, "inscription", "NOA");
        Tap(change, "Write the change");
        Assert.Equal(special with { LayerHeights = [] }, Book.State.Orders.Single().Tiers[0].Special! with { LayerHeights = [] });
    }

    [Fact]
    public void What_cannot_be_read_or_does_not_fit_is_named_with_its_tier()
    {
        var page = Filled("sat", "14:00");
        Tap(page, "6+10");
        More(page, 2);
        page.Find("[aria-label='Tier 2: ring around the filling in cm']").Input("wide");
        page.Find("[aria-label='Tier 2: bead at the foot in cm']").Input("9");
        Tap(page, "Take the order");
        Assert.Contains("A figure in cm for the ring around the filling is needed here.", page.Markup, StringComparison.Ordinal);
        page.Find("[aria-label='Tier 2: ring around the filling in cm']").Input("1");
        page.Find("[aria-label='Tier 2: each layer from the foot in cm']").Input("3 3");
        Tap(page, "Take the order");
        foreach (var said in (string[])["A bead is at most 5 cm across.", "There are 3 layers.", "Tier 2 from the top"])
        {
            Assert.Contains(said, page.Markup, StringComparison.Ordinal);
        }

        Assert.Empty(Book.State.Orders);
    }

    private static void More(IRenderedComponent<Bakehouse.Web.TakeOrder.OrderPage> page, int tier) =>
        page.Find($"#tier-{tier} [aria-expanded]").Click();
}
