namespace Bakehouse.Browser.Tests;

using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

/// <summary>A new pack is opened and nobody has read it: the cake has no label, and a link leads to the pack.</summary>
public sealed class NoLabelTests(OpenShop open) : IClassFixture<OpenShop>
{
    [Fact]
    public async Task A_cake_with_an_unread_pack_has_no_label_and_says_which_pack_to_read()
    {
        var page = await open.Shop.At("Ines", "/recipes/ingredient/butter");
        await page.Locator("#lot").FillAsync("lot 77");
        await page.GetByRole(AriaRole.Button, new() { Name = "Use this pack" }).ClickAsync();
        await page.GotoAsync("/cakes/405");
        await page.UntilAlive();
        await Expect(page.Locator("#contains .no-label")).ToContainTextAsync("What it is made from has changed.");
        await page.Locator("#contains").ScrollIntoViewIfNeededAsync();
        await page.Picture("no-label-changed-1280");
        await page.GetByRole(AriaRole.Button, new() { Name = "Make it from the new recipes" }).ClickAsync();
        await Expect(page.Locator("#contains .no-label")).ToContainTextAsync("Pack not read");
        foreach (var (width, height) in ((int, int)[])[(1280, 800), (1024, 768), (390, 844)])
        {
            await page.SetViewportSizeAsync(width, height);
            foreach (var path in (string[])["/cakes/405", "/recipes/vanilla"])
            {
                await page.GotoAsync(path);
                await page.UntilAlive();
                await Expect(page.Locator(".no-label")).ToContainTextAsync("No label yet.");
                await Expect(page.Locator(".no-label a[href='/recipes/ingredient/butter']")).ToBeVisibleAsync();
                await Expect(page.Locator(".label-text")).ToHaveCountAsync(0);
                await page.Locator(".no-label").ScrollIntoViewIfNeededAsync();
                await page.Picture($"no-label{path.Replace('/', '-')}-{width}");
                await PagesTests.StaysInside(page);
            }
        }

        await page.Context.CloseAsync();
    }
}
