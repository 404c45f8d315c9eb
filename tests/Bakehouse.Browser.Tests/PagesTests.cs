namespace Bakehouse.Browser.Tests;

using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

/// <summary>Each page at counter and phone size: nothing serious for axe, no sideways scroll, nothing from elsewhere, and its picture.</summary>
public sealed class PagesTests(OpenShop open) : IClassFixture<OpenShop>
{
    /// <summary>Stacking cake 405, a step of the sample.</summary>
    private const string Stacking = "5a3b1e04000004c10102030405060708.cake.stack.1";

    /// <summary>Each page's name in pictures and its address; cake 405 is one of the sample's.</summary>
    public static TheoryData<string, string, int, int> Pages
    {
        get
        {
            var data = new TheoryData<string, string, int, int>();
            foreach (var (name, path) in ((string, string)[])[("order", "/order"), ("cakes", "/cakes"), ("one-cake", "/cakes/405"), ("week", "/week"), ("kitchen", "/kitchen?for=all"), ("card", $"/kitchen/step/{Stacking}"), ("wrong", "/kitchen/wrong"), ("recipes", "/recipes/vanilla"), ("ingredient", "/recipes/ingredient/butter"), ("shop", "/shop"), ("well", "/well"), ("who", "/who"), ("calendar", "/calendar")])
            {
                data.Add(name, path, 1280, 800);
                data.Add(name, path, 390, 844);
                if (path.StartsWith("/recipes", StringComparison.Ordinal))
                {
                    data.Add(name, path, 1024, 768); // three columns become two
                }
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task A_page_is_whole(string name, string path, int width, int height)
    {
        var page = await open.Shop.Screen(width, height);
        await page.IAm("Ines");
        var calls = new List<IResponse>();
        page.Response += (_, response) => calls.Add(response);
        await page.GotoAsync(path);
        if (name is not ("kitchen" or "card" or "wrong" or "who"))
        {
            await page.UntilAlive(); // those are static pages
        }

        if (name == "order")
        {
            await Fill(page);
        }

        await Settle(page);
        await page.Picture($"{name}-{width}");
        await IsWhole(page);
        Assert.All(calls, c => Assert.StartsWith(open.Shop.Address, c.Url.Replace("ws:", "http:", StringComparison.Ordinal), StringComparison.Ordinal));
        Assert.All(calls, c => Assert.True(c.Status < 400, $"{c.Url} answered {c.Status}."));
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Styles_and_scripts_have_a_body()
    {
        var page = await open.Shop.Screen(1280, 800);
        var lengths = new List<(string Url, int Length)>();
        foreach (var path in (string[])["/order", "/kitchen"])
        {
            await page.IAm("Ines");
            await page.GotoAsync(path);
            var assets = await page.EvaluateAsync<string[]>("() => [...document.querySelectorAll('link[rel=stylesheet],script[src]')].map(e => e.href || e.src)");
            foreach (var asset in assets)
            {
                var answer = await page.APIRequest.GetAsync(asset);
                lengths.Add((asset, (await answer.BodyAsync()).Length));
            }
        }

        Assert.True(lengths.Count > 5);
        Assert.All(lengths, l => Assert.True(l.Length > 50, l.Url));
    }

    private static async Task Fill(IPage page)
    {
        await page.Locator("#day").FillAsync("sat");
        await page.Locator("#hour").FillAsync("14:00");
        await page.Locator("#count").FillAsync("60");
        await page.Build("6+8+10").ClickAsync();
        await Expect(page.Locator(".readback")).ToContainTextAsync("In ");
        await page.EvaluateAsync("() => window.scrollTo(0, 0)");
    }

    /// <summary>Lets what slides or fades in come to rest: axe would measure a colour half way.</summary>
    private static Task Settle(IPage page) =>
        page.EvaluateAsync("async () => { await document.fonts.ready; await Promise.all(document.getAnimations().filter(a => a.effect.getTiming().iterations !== Infinity).map(a => a.finished.catch(() => null))); }");

    /// <summary>The innermost elements that reach beyond the window.</summary>
    private const string Widest = "() => [...document.body.querySelectorAll('*')].filter(e => e.getBoundingClientRect().right > document.documentElement.clientWidth + 1).slice(-4).map(e => e.outerHTML.slice(0, 120)).join(' | ')";

    internal static async Task StaysInside(IPage page)
    {
        var wide = await page.EvaluateAsync<int>("() => document.documentElement.scrollWidth - document.documentElement.clientWidth");
        Assert.True(wide <= 0, $"{page.Url} scrolls sideways by {wide} px: {(wide > 0 ? await page.EvaluateAsync<string>(Widest) : "")}");
    }

    internal static async Task IsWhole(IPage page)
    {
        await StaysInside(page);
        var serious = (await Axe.Violations(page)).Where(v => v.Impact is "serious" or "critical").ToList();
        Assert.True(serious.Count == 0, string.Join('\n', serious.Select(Told)));
    }

    private static string Told(AxeViolation found) =>
        $"{found.Id}: {found.Help}\n  {string.Join("\n  ", found.Nodes.Take(5).Select(n => n.Html))}";
}

/// <summary>The first page of an empty book.</summary>
public sealed class WelcomeTests(RunningShop shop) : IClassFixture<RunningShop>
{
    [Theory]
    [InlineData(1280, 800)]
    [InlineData(390, 844)]
    public async Task An_empty_book_says_that_it_is_for_practice_and_how_to_begin(int width, int height)
    {
        var page = await shop.Screen(width, height);
        await page.GotoAsync("/");
        await page.UntilAlive();
        await Expect(page.GetByText("A practice book. What a cake contains is worked out from recipes and packs")).ToBeVisibleAsync();
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Open the sample bakery" })).ToBeVisibleAsync();
        await Expect(page.GetByRole(AriaRole.Link, new() { Name = "Set up your own" })).ToBeVisibleAsync();
        await page.Picture($"welcome-{width}");
        await PagesTests.IsWhole(page);
    }
}
