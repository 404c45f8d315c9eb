namespace Bakehouse.Web.Tests.TheCakes;

using Bakehouse.Book.Reading;
using Bakehouse.Testing;
using Bakehouse.Web.Access;
using Bakehouse.Web.SetUpShop;
using Bakehouse.Web.TheCakes;
using Bunit;
using Microsoft.Extensions.DependencyInjection;

/// <summary>The owner gives a build a name, and takes it off again.</summary>
public sealed class KeepBuildTests : BunitContext
{
    private readonly BookInHand book = new();

    public KeepBuildTests()
    {
        Services.AddSingleton<IBook>(book);
        Services.AddSingleton<TimeProvider>(new MovableTime(Cakes.Now));
    }

    [Fact]
    public void A_build_gets_a_name_and_is_renamed_and_taken_off_on_the_page_of_the_shop()
    {
        var order = book.Write(Cakes.Good(), "ines").Order!;
        var keep = Render<KeepBuild>(p => p.AddCascadingValue(new Who("ines", "office")).Add(k => k.Order, order));
        keep.Find("button").Click();
        keep.Find("#house-name").Input(" Garden party ");
        keep.Find("form").Submit();
        Assert.Contains("Garden party is a house cake now", keep.Markup, StringComparison.Ordinal);
        Assert.Equal("Garden party", Assert.Single(book.State.Shop!.HouseCakes).Name);

        var shop = Render<ShopPage>(p => p.AddCascadingValue(new Who("ines", "office")));
        shop.Find("#house-cakes input").Input("Summer party");
        shop.FindAll("button").Single(b => b.TextContent == "Write the change").Click();
        Assert.Equal(order.Tiers, Assert.Single(book.State.Shop!.HouseCakes, c => c.Name == "Summer party").Tiers);

        var again = Render<ShopPage>(p => p.AddCascadingValue(new Who("ines", "office")));
        again.FindAll("#house-cakes button").Single().Click();
        again.FindAll("button").Single(b => b.TextContent == "Write the change").Click();
        Assert.Empty(book.State.Shop!.HouseCakes);
    }
}
