namespace Bakehouse.Browser.Tests;

using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

/// <summary>The owner's allergen rules and figures in a real browser: typed, kept over a reload, and told at the counter.</summary>
public sealed class OwnFiguresTests(OpenShop open) : IClassFixture<OpenShop>
{
    [Fact]
    public async Task They_are_written_read_again_and_counted_by_at_the_counter()
    {
        var page = await open.Shop.At("Ines", "/shop");
        await page.Locator("#traces").FillAsync("Almond and sesame are used in this kitchen.");
        await page.Locator("#kitchen-rules summary").ClickAsync();
        await page.Locator("#rule-nuts").SelectOptionAsync("Refuse");
        await page.Locator("#figures summary").ClickAsync();
        await page.Locator("#fill").FillAsync("55");
        await page.Locator("#dessert-slice").SelectOptionAsync("Large party");
        foreach (var (width, height) in ((int, int)[])[(1280, 800), (1024, 768), (390, 844)])
        {
            await page.SetViewportSizeAsync(width, height);
            foreach (var tray in (string[])["#allergen-rules", "#figures"])
            {
                await page.Locator(tray).EvaluateAsync("e => e.scrollIntoView()");
                await page.EvaluateAsync("() => window.scrollBy(0, -70)");
                await page.Picture($"shop{tray.Replace('#', '-')}-{width}");
            }

            await PagesTests.IsWhole(page);
        }

        await page.GetByRole(AriaRole.Button, new() { Name = "Write the change" }).ClickAsync();
        var written = page.GetByText("Written, version");
        var costs = page.GetByRole(AriaRole.Button, new() { Name = "Write it all the same" });
        await written.Or(costs).First.WaitForAsync(new() { Timeout = 60_000 });
        await page.Picture("shop-figures-cost-1280");
        if (await costs.CountAsync() > 0)
        {
            await costs.ClickAsync();
        }

        await Expect(written).ToBeVisibleAsync(new() { Timeout = 60_000 });
        await page.ReloadAsync();
        await page.UntilAlive();
        await Expect(page.Locator("#kitchen-rules summary")).ToContainTextAsync("1 refused, the rest with controls");

        // By slices of 2 x 2 in rounds of 6 and 10 in give 7 + 19.
        await page.SetViewportSizeAsync(1280, 800);
        await page.GotoAsync("/order");
        await page.UntilAlive();
        await page.Locator("#day").FillAsync("sat");
        await page.Locator("#hour").FillAsync("14");
        await page.Build("6+10").ClickAsync();
        await Expect(page.Locator(".cake-side")).ToContainTextAsync("26");
        await page.Picture("order-own-slices-1280");
        await page.Context.CloseAsync();
    }
}
