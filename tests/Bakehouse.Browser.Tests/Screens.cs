namespace Bakehouse.Browser.Tests;

using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

/// <summary>What a person does at a screen, found by label and role as a person finds it.</summary>
internal static class Screens
{
    /// <summary>From the empty book's welcome to the sample bakery.</summary>
    public static async Task OpenTheSample(this IPage page)
    {
        await page.GotoAsync("/");
        await page.UntilAlive();
        await page.GetByRole(AriaRole.Button, new() { Name = "Open the sample bakery" }).ClickAsync();
        await page.WaitForURLAsync("**/who**", new() { Timeout = 60_000 });
    }

    /// <summary>One tap on picture and name.</summary>
    public static async Task TapsWho(this IPage page, string name)
    {
        await page.GotoAsync("/who");
        await page.GetByRole(AriaRole.Button, new() { Name = name }).ClickAsync();
        await page.WaitForURLAsync(url => !url.EndsWith("/who", StringComparison.Ordinal));
    }

    /// <summary>This person tapped picture and name on this screen before, and it remembers.</summary>
    public static Task IAm(this IPage page, string name) =>
        page.Context.AddCookiesAsync([new() { Name = "bakehouse-person", Value = name.ToLowerInvariant(), Domain = RunningShop.Host, Path = "/", HttpOnly = true, SameSite = SameSiteAttribute.Strict }]);

    /// <summary>A screen of that size at which somebody stands, on a page that answers.</summary>
    public static async Task<IPage> At(this RunningShop shop, string name, string path, int width = 1280, int height = 800)
    {
        var page = await shop.Screen(width, height);
        await page.IAm(name);
        await page.GotoAsync(path);
        await page.UntilAlive();
        return page;
    }

    /// <summary>Fills the order page and takes the order.</summary>
    public static async Task TakeTheOrder(this IPage page, string day, string hour, string build, string name)
    {
        await page.GotoAsync("/order");
        await page.UntilAlive();
        await page.Locator("#day").FillAsync(day);
        await page.Locator("#hour").FillAsync(hour);
        await Expect(page.Locator(".readback")).ToContainTextAsync("In ");
        await page.Locator("#count").FillAsync("60");
        await page.Build(build).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "None told" }).Or(page.GetByRole(AriaRole.Radio, new() { Name = "None told" })).ClickAsync();
        await page.Locator("#name").FillAsync(name);
        await page.Locator("#phone").FillAsync("020 7946 0182");
        await page.GetByRole(AriaRole.Button, new() { Name = "Take the order" }).ClickAsync();
        var taken = page.GetByText(new Regex("is taken", RegexOptions.IgnoreCase)).First;
        await taken.Or(page.Locator(".problems, [role=alert]").First).First.WaitForAsync(new() { Timeout = 60_000 });
        Assert.True(await taken.CountAsync() > 0, await page.Locator(".problems").AllInnerTextsAsync() is [var text] ? text : "no list");
    }

    /// <summary>The button of a usual build, found by the sizes on it.</summary>
    public static ILocator Build(this IPage page, string sizes) =>
        page.Locator("button.build", new() { Has = page.GetByText(sizes, new() { Exact = true }) });

    /// <summary>Keeps a picture of the screen in the folder that BAKEHOUSE_PICTURES names; without one, none is kept.</summary>
    public static async Task Picture(this IPage page, string name)
    {
        if (Environment.GetEnvironmentVariable("BAKEHOUSE_PICTURES") is { Length: > 0 } folder)
        {
            await page.ScreenshotAsync(new() { Path = Path.Combine(folder, $"{name}.png") });
        }
    }

    /// <summary>Waits until the page answers to hands: its circuit stands.</summary>
    public static async Task UntilAlive(this IPage page) =>
        await page.WaitForFunctionAsync("() => document.querySelector('[data-alive]') !== null", null, new() { Timeout = 30_000 });

    /// <summary>Waits up to fifteen seconds for what the book must say.</summary>
    public static async Task Until(Func<bool> holds, string what)
    {
        for (var i = 0; i < 150 && !holds(); i++)
        {
            await Task.Delay(100, TestContext.Current.CancellationToken);
        }

        Assert.True(holds(), what);
    }
}
