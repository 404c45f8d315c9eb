namespace Bakehouse.Browser.Tests;

using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

/// <summary>How cold a cake is, on its page, and how warm the shop's places are, on the shop's.</summary>
public sealed class ColdChainTests(OpenShop open) : IClassFixture<OpenShop>
{
    [Theory]
    [InlineData(1280, 800)]
    [InlineData(1024, 768)]
    [InlineData(390, 844)]
    public async Task A_cakes_page_shows_clock_curves_and_waits_and_a_reading_is_learned_from(int width, int height)
    {
        var page = await open.Shop.Screen(width, height);
        await page.IAm("Ines");
        await page.GotoAsync("/cakes/405");
        await page.UntilAlive();
        var tray = page.Locator("#cold-chain");
        await Expect(tray.Locator("svg").First).ToBeVisibleAsync();
        await Expect(tray).ToContainTextAsync("Local rules and licensed practice decide.");
        await Expect(tray.Locator(".chain-waits li").First).ToContainTextAsync("Until it is wrapped: ");
        await tray.ScrollIntoViewIfNeededAsync();
        await page.Picture($"cold-chain-{width}");
        await PagesTests.IsWhole(page);

        await tray.GetByText("Read the middle with a probe").ClickAsync();
        await tray.GetByRole(AriaRole.Button, new() { Name = "Work it out" }).ClickAsync();
        await Expect(tray).ToContainTextAsync("Nobody said since when it stands there.");
        await page.Picture($"probe-{width}");
        await PagesTests.IsWhole(page);
        await page.Context.CloseAsync();
    }

    [Theory]
    [InlineData(1280, 800)]
    [InlineData(390, 844)]
    public async Task The_shop_page_asks_how_warm_its_places_are_and_whose_rules_count(int width, int height)
    {
        var page = await open.Shop.Screen(width, height);
        await page.IAm("Ines");
        await page.GotoAsync("/shop");
        await page.UntilAlive();
        var tray = page.Locator("#cold");
        await tray.GetByLabel("Fridge 1, °C").FillAsync("39");
        await page.GetByRole(AriaRole.Button, new() { Name = "Write the change" }).ClickAsync();
        // 39 is a fridge in Fahrenheit: it is asked about, never turned.
        await Expect(tray).ToContainTextAsync("Say if you mean Fahrenheit: 39 °F are 3.9 °C.");
        await tray.ScrollIntoViewIfNeededAsync();
        await page.Picture($"shop-cold-{width}");
        await PagesTests.IsWhole(page);
        await tray.GetByLabel("Fridge 1, °C").FillAsync("4");
        await page.WaitForTimeoutAsync(1500);
        await page.Context.CloseAsync();
    }
}
