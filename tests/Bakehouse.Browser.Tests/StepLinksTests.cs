namespace Bakehouse.Browser.Tests;

using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

/// <summary>Every step leads to its card, from the cake and from the week, and the way back leads where one came from; the week stands whole on a tablet.</summary>
public sealed class StepLinksTests(OpenShop open) : IClassFixture<OpenShop>
{
    [Fact]
    public async Task A_step_of_another_day_leads_to_its_card_and_back()
    {
        var page = await open.Shop.At("Ines", "/cakes/405");
        await page.GetByText("Show the steps").ClickAsync();
        await page.Picture("steps-1280");
        await page.Locator(".steps li a").Last.ClickAsync();
        await Expect(page.GetByText("Right when")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Back" }).ClickAsync();
        await page.WaitForURLAsync("**/cakes/405");

        await page.GotoAsync("/week");
        await page.UntilAlive();
        await page.Locator("g.head").First.ClickAsync();
        await page.Picture("week-steps-1280");
        await page.Locator(".week-card").First.ClickAsync();
        await Expect(page.GetByText("Right when")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Back" }).ClickAsync();
        await page.WaitForURLAsync("**/week");

        // An address of somebody else's is no way back.
        await page.GotoAsync(Regex.Replace((await page.Context.Pages[0].EvaluateAsync<string>("() => location.origin")), "/$", "") + "/kitchen/step/5a3b1e04000004c10102030405060708.cake.stack.1?from=//elsewhere");
        await Expect(page.GetByRole(AriaRole.Link, new() { Name = "Back" })).ToHaveAttributeAsync("href", "/kitchen");
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task No_flag_of_the_four_days_is_cut_on_a_tablet()
    {
        var page = await open.Shop.At("Ines", "/week", 1024, 768);
        await Expect(page.Locator(".wk")).ToBeVisibleAsync();
        await Expect(page.Locator(".wk-grid")).ToBeVisibleAsync();
        await page.WaitForFunctionAsync("() => { const g = document.querySelector('.wk-grid'); return g.scrollWidth <= g.clientWidth + 1; }");
        await page.Picture("week-1024");
        await PagesTests.IsWhole(page);
        await page.Context.CloseAsync();
    }
}
