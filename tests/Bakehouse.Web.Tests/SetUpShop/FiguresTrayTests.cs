namespace Bakehouse.Web.Tests.SetUpShop;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Shops;
using Bakehouse.Testing;
using Bakehouse.Web.Access;
using Bakehouse.Web.SetUpShop;
using Bakehouse.Web.TakeOrder;
using Bunit;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;

/// <summary>What the shop has measured itself is typed on its page; what is empty is as usual. Our own rules.</summary>
public sealed class FiguresTrayTests : BunitContext
{
    private readonly BookInHand book = new();

    public FiguresTrayTests()
    {
        Services.AddSingleton<IBook>(book);
        Services.AddSingleton<TimeProvider>(new FakeTimeProvider(Cakes.Now.ToDateTimeOffset()));
    }

    [Fact]
    public void They_are_written_and_read_back_and_empty_is_as_usual_again()
    {
        var page = Open();
        Assert.Contains("Figures for the build: all as usual", page.Find("#figures summary").TextContent, StringComparison.Ordinal);
        Assert.Equal("50", page.Find("#fill").GetAttribute("placeholder"));
        page.Find("#fill").Input("55");
        page.Find("#final-coat").Input("4,5");
        page.Find("#two-lower").Input("6");
        page.Find("#dessert-slice").Change("Large party");
        Write(page);
        Assert.Equal(new ShopFigures { Fill = 0.55m, Coat = Length.FromMillimetres(4.5m), TwoLowerFrom = Mass.FromKilograms(6), Dessert = "Large party" }, book.State.Shop!.Figures);

        var again = Open();
        Assert.Contains("some are yours", again.Find("#figures summary").TextContent, StringComparison.Ordinal);
        Assert.Equal(["55", "4.5", "6", ""], new[] { "fill", "final-coat", "two-lower", "filling" }.Select(f => again.Find($"#{f}").GetAttribute("value")));
        foreach (var field in new[] { "fill", "final-coat", "two-lower" })
        {
            again.Find($"#{field}").Input("");
        }

        again.Find("#dessert-slice").Change("");
        Write(again);
        Assert.Null(book.State.Shop.Figures);
    }

    [Theory]
    [InlineData("fill", "half", "Batter, % of the baked height “half”: This figure can't be read.")]
    [InlineData("fill", "95", "Batter, % of the baked height “95”: This is 95 %; from 30 to 80 % can be.")]
    [InlineData("crumb-coat", "11", "Crumb coat “11”: This is 11 mm; from 0.5 to 10 mm can be.")]
    [InlineData("sponge-density", "0", "Sponge density “0”: This is 0 g/mL; from 0.15 to 0.8 g/mL can be.")]
    [InlineData("cut-short", "-1", "Supports cut short “-1”: This figure can't be read.")]
    public void What_can_not_be_is_named_at_its_field_and_the_tray_opens(string field, string typed, string says)
    {
        var page = Open();
        page.Find($"#{field}").Input(typed);
        Write(page);
        Assert.Contains(page.FindAll(".problems li"), l => l.TextContent.Trim().StartsWith(says, StringComparison.Ordinal));
        Assert.Single(page.FindAll($"#{field}-wrong"));
        Assert.True(page.Find("#figures details").HasAttribute("open"));
        Assert.DoesNotContain(book.Heard, c => c is WriteShop);
    }

    /// <summary>2 × 2 in are 5 × 5 cm to half a centimetre; in an 8 in round π·4²/4 = 12.6 of them.</summary>
    [Theory]
    [InlineData(null, "20 dessert slices", "4 × 5 cm")]
    [InlineData("Large party", "12 dessert slices", "5 × 5 cm")]
    public void The_counter_says_the_size_of_the_slices_by_which_it_counts(string? dessert, string count, string size)
    {
        var sheet = BuildSheet.Of(Cakes.Good(1, 8), CakeFigures.Of(book.State.Shop! with { Figures = new ShopFigures { Dessert = dessert } }));
        var said = Render<TwoCounts>(p => p.Add(c => c.Sheet, sheet)).FindAll(".one-count");
        Assert.Equal([count, size], said[0].QuerySelectorAll("p").Select(l => l.TextContent));
        Assert.EndsWith("2.5 × 5 cm", said[1].TextContent.Trim(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_draft_of_before_leaves_them_as_they_are()
    {
        var shop = book.State.Shop! with { Figures = new ShopFigures { Fill = 0.6m } };
        var form = ShopReader.Form(shop, Cookbook.Empty);
        Assert.Equal(shop.Figures, new ShopReader(shop).Read(form).Shop!.Figures);
        form.Figures = null;
        Assert.Equal(shop.Figures, new ShopReader(shop).Read(form).Shop!.Figures);
    }

    private IRenderedComponent<ShopPage> Open() => Render<ShopPage>(p => p.AddCascadingValue(new Who("ines", "office")));

    private static void Write(IRenderedComponent<ShopPage> page) => page.FindAll("button").First(b => b.TextContent.Trim() == "Write the change").Click();
}
