namespace Bakehouse.Browser.Tests;

using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

/// <summary>The counter's screen with everything open: at most one part scrolls beside the page, and the answer stays in sight.</summary>
public sealed class CounterLookTests(OpenShop open) : IClassFixture<OpenShop>
{
    private const string Scrollers = """
        () => [...document.querySelectorAll('body *')].filter(e => {
            const o = getComputedStyle(e).overflowY;
            return (o === 'auto' || o === 'scroll') && e.scrollHeight > e.clientHeight + 1 && e.clientHeight > 0 && e.tagName !== 'TEXTAREA';
        }).length
        """;

    private const string Cut = """
        () => [...document.querySelectorAll('.page.order select, .page.order button, .bar-name')].filter(e => e.offsetParent !== null).filter(e => {
            const r = e.getBoundingClientRect();
            return r.right > document.documentElement.clientWidth + 1 || r.left < -1;
        }).map(e => e.textContent.trim().slice(0, 30))
        """;

    [Theory]
    [InlineData(1280, 800)]
    [InlineData(1024, 768)]
    [InlineData(390, 844)]
    public async Task With_all_of_it_open_one_part_scrolls_at_most_and_the_answer_stays(int width, int height)
    {
        var page = await open.Shop.At("Wren", "/order", width, height);
        await page.Locator("#day").FillAsync("tue");
        await page.Locator("#hour").FillAsync("14");
        await page.Locator("#count").FillAsync("40");
        await page.Build("6+8+10").ClickAsync();
        await page.Locator("#finish").SelectOptionAsync("Paste");
        await page.Locator("#drip").SelectOptionAsync("Top");
        await Expect(page.Locator(".answer:not(.is-old) .answer-word")).ToContainTextAsync(new System.Text.RegularExpressions.Regex("Yes|Tight|Other time"), new() { Timeout = 30_000 });
        await page.Picture($"counter-closed-{width}");
        await page.Locator("#on-top-asked").ClickAsync();
        await page.Locator("#topping").SelectOptionAsync("whole-nuts");
        await page.GetByRole(AriaRole.Button, new() { Name = "Avoid …" }).ClickAsync();
        await page.Locator("#allergy-words").FillAsync("hazelnuts and dairy");
        await Expect(page.Locator(".lead")).ToHaveCountAsync(2);
        await Expect(page.Locator(".answer-word")).ToContainTextAsync("Not");
        await page.Picture($"counter-open-{width}");
        Assert.InRange(await page.EvaluateAsync<int>(Scrollers), 0, 1);
        Assert.Empty(await page.EvaluateAsync<string[]>(Cut));

        await page.EvaluateAsync("() => window.scrollTo(0, document.body.scrollHeight)");
        await Task.Delay(200, TestContext.Current.CancellationToken);
        await page.Picture($"counter-foot-{width}");
        await Expect(page.Locator(width > 900 ? ".answer" : ".answer-foot")).ToBeInViewportAsync();
        await PagesTests.IsWhole(page);
        // While the next answer is awaited, the last one is dimmed and can still be read.
        await page.Locator(".answer").EvaluateAsync("e => e.classList.add('is-old')");
        await PagesTests.IsWhole(page);
        await page.EvaluateAsync("() => window.scrollTo(0, 0)");
        await page.GetByRole(AriaRole.Button, new() { Name = "Start again" }).ClickAsync();
        await page.Context.CloseAsync();
    }
}
