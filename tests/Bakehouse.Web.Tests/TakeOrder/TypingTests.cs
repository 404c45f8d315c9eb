namespace Bakehouse.Web.Tests.TakeOrder;

using Bakehouse.Book.Entries;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.TakeOrder;
using Bunit;

/// <summary>
/// What a key costs while somebody types. Each render of the page goes over the wire, so over a slow link they add up: a key is one render, and
/// only what changes the cake or its day is asked and drawn anew.
/// </summary>
public sealed class TypingTests : CounterContext
{
    private int asked;

    public TypingTests()
    {
        Book.State = Book.State with { Cookbook = Starter.Sample, Shop = Book.State.Shop! with { Prices = SampleBakery.Shop.Prices } };
        var answer = Book.Asked;
        Book.Asked = order =>
        {
            asked++;
            return answer(order);
        };
    }

    [Theory]
    [InlineData("name", "Amara Okafor")]
    [InlineData("phone", "020 7946 0182")]
    [InlineData("notes", "Ribbon from the customer.")]
    [InlineData("price", "385.50")]
    public void A_key_that_changes_no_cake_is_one_render_and_asks_nothing(string field, string text)
    {
        var page = Settled();
        var (renders, before) = (Renders(page), asked);
        for (var i = 1; i <= text.Length; i++)
        {
            Type(page, field, text[..i]);
        }

        Time.Advance(TimeSpan.FromSeconds(1));
        Assert.Equal(text.Length, Renders(page) - renders);
        Assert.Equal(before, asked);
        Assert.Equal(text, page.Find($"#{field}").GetAttribute("value"));
    }

    [Fact]
    public void Whoever_types_on_and_on_is_kept_within_two_seconds_of_the_first_letter()
    {
        var page = Settled();
        for (var i = 1; i <= 4; i++)
        {
            Type(page, "name", new string('a', i));
            Time.Advance(TimeSpan.FromSeconds(0.5));
        }

        page.WaitForAssertion(() => Assert.Contains(Book.Heard, c => c is KeepDraft { Text: { } text } && text.Contains("aaa", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_size_that_is_typed_is_one_render_a_key_and_asked_once_at_its_end()
    {
        var page = Settled();
        var (renders, before) = (Renders(page), asked);
        foreach (var typed in new[] { "1", "10", "10.", "10.5" })
        {
            page.Find("[aria-label='Tier 1: diameter']").Input(typed);
        }

        Assert.Equal(4, Renders(page) - renders);
        Assert.Equal(before, asked);
        Time.Advance(TimeSpan.FromSeconds(1));
        page.WaitForAssertion(() => Assert.True(asked > before));
    }

    /// <summary>Renders of the page, counted at a part that renders with it each time and has no parts of its own: the page's own count grows with every part that is drawn in one go.</summary>
    private static int Renders(IRenderedComponent<OrderPage> page) => page.FindComponent<FinishFields>().RenderCount;

    private IRenderedComponent<OrderPage> Settled()
    {
        var page = Filled("sat", "14:00");
        Time.Advance(TimeSpan.FromSeconds(5));
        page.WaitForAssertion(() => Assert.True(asked > 0));
        var last = -1;
        while (last != Renders(page))
        {
            last = Renders(page);
            Thread.Sleep(200);
        }

        return page;
    }
}
