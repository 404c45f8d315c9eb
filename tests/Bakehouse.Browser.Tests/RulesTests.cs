namespace Bakehouse.Browser.Tests;

using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

/// <summary>The owner's rules in a real browser: typed, kept over a reload, and told at the counter.</summary>
public sealed class RulesTests(OpenShop open) : IClassFixture<OpenShop>
{
    [Theory]
    [InlineData(1280, 800)]
    [InlineData(390, 844)]
    public async Task Hers_are_kept_over_a_reload_and_a_full_day_is_told_at_the_counter(int width, int height)
    {
        var page = await open.Shop.At("Ines", "/shop", width, height);
        await page.Locator("#caps").FillAsync("Sat 2");
        await page.Locator("#oven-1-decks").FillAsync("lots");
        await Write(page).ClickAsync();
        await Expect(page.Locator(".problems")).ToContainTextAsync("Oven 1, decks “lots”");
        await page.Picture($"shop-wrong-{width}");
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Throw away what I typed" })).ToBeVisibleAsync();

        await page.ReloadAsync();
        await page.UntilAlive();
        await Expect(page.Locator("#caps")).ToHaveValueAsync("Sat 2");
        await Expect(page.Locator("#oven-1-decks")).ToHaveValueAsync("lots");
        await page.Locator("#oven-1-decks").FillAsync("3");
        await Write(page).ClickAsync();
        await Expect(page.Locator(".list-head")).ToContainTextAsync("Written, version", new() { Timeout = 30_000 });
        await page.Picture($"shop-rules-{width}");

        // The sample's Saturday has two tiered cakes already.
        await page.GotoAsync("/order");
        await page.UntilAlive();
        await page.Locator("#day").FillAsync("sat");
        await page.Locator("#hour").FillAsync("14");
        await page.Build("6+10").ClickAsync();
        await Expect(page.Locator(".day-full")).ToContainTextAsync("2 tiered cakes leave that day already (405, 406)");
        await Expect(page.Locator("#beyond-cap")).ToBeVisibleAsync();
        await page.Locator(".day-full").ScrollIntoViewIfNeededAsync();
        await page.Picture($"order-full-{width}");
        await page.GetByRole(AriaRole.Button, new() { Name = "Start again" }).ClickAsync();
        await page.Context.CloseAsync();
    }

    private static ILocator Write(IPage page) => page.GetByRole(AriaRole.Button, new() { Name = "Write the change" });
}
