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

    private static void More(IRenderedComponent<Bakehouse.Web.TakeOrder.OrderPage> page, int tier) =>
        page.Find($"#tier-{tier} [aria-expanded]").Click();
}
