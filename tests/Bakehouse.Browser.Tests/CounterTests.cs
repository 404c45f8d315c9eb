namespace Bakehouse.Browser.Tests;

using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

/// <summary>The counter by taps: how many until "can we?" is answered, how long after the last, and a message that becomes a draft.</summary>
public sealed class CounterTests(OpenShop open, ITestOutputHelper output) : IClassFixture<OpenShop>
{
    /// <summary>Milliseconds that a shared machine may take; what it took is printed.</summary>
    private const int Patience = 1_000;

    private const string UntilAnswered = """
        async button => {
            const until = is => new Promise(done => { const look = () => is() ? done() : requestAnimationFrame(look); look(); });
            const old = () => document.querySelector('.answer.is-old');
            const began = performance.now();
            button.click();
            await until(old);
            await until(() => !old());
            return performance.now() - began;
        }
        """;

    [Fact]
    public async Task Two_tiers_for_forty_on_friday_at_two_are_answered_after_four_taps_and_two_numbers()
    {
        var page = await open.Shop.At("Wren", "/order");
        var taps = 0;
        async Task Tap(ILocator what)
        {
            await what.ClickAsync();
            taps++;
        }

        await Tap(page.Locator("#count"));
        await page.Locator("#count").FillAsync("40");
        await Expect(page.Locator(".day .mark").First).ToBeVisibleAsync();
        await Tap(page.Locator(".day", new() { HasText = "23" }));
        await Tap(page.Locator("#hour"));
        await page.Locator("#hour").FillAsync("14");
        await Tap(page.Build("6+10"));
        await Expect(page.Locator(".answer:not(.is-old) .answer-word")).ToContainTextAsync("Yes");
        await Expect(page.Locator(".answer-says")).ToContainTextAsync("Friday 23 October at 14:00");
        Assert.Equal(4, taps);
        await Expect(page.GetByText("not known yet")).ToHaveCountAsync(0, new() { Timeout = 60_000 });
        await page.Picture("days-1280");

        List<double> took = [];
        foreach (var build in (string[])["one 8", "6+10", "one 12", "6+8+10", "6+10"])
        {
            took.Add(await page.Build(build).EvaluateAsync<double>(UntilAnswered));
        }

        output.WriteLine($"from the tap to the answer: {string.Join(", ", took.Select(t => $"{t:0} ms"))}");
        Assert.True(took.Order().ElementAt(2) < Patience, $"{took.Order().ElementAt(2):0} ms");
        await page.GetByRole(AriaRole.Button, new() { Name = "Start again" }).ClickAsync();
        await page.Context.CloseAsync();
    }

    [Theory]
    [InlineData(1280, 800)]
    [InlineData(390, 844)]
    public async Task A_message_is_a_draft_with_what_is_still_to_ask(int width, int height)
    {
        var page = await open.Shop.At("Wren", "/order", width, height);
        await page.Locator(".paste summary").ClickAsync();
        await page.Locator("#message").FillAsync("Hello,\ncould you make a two-tier lemon cake for about 40 on Saturday 24 October? My nephew is allergic to hazelnuts.\nThanks, Amara Okafor");
        await page.GetByRole(AriaRole.Button, new() { Name = "Read it" }).ClickAsync();
        await Expect(page.Locator("#name")).ToHaveValueAsync("Amara Okafor");
        await Expect(page.Locator("#day")).ToHaveValueAsync("2026-10-24");
        await Expect(page.Locator(".paste li")).ToHaveCountAsync(3);
        await Expect(page.Locator(".danger").First).ToContainTextAsync("Avoid nuts");
        await page.Locator("#reply").ScrollIntoViewIfNeededAsync();
        await page.Picture($"message-{width}");
        await PagesTests.IsWhole(page);
        await page.GetByRole(AriaRole.Button, new() { Name = "Start again" }).ClickAsync();
        await page.Context.CloseAsync();
    }

    /// <summary>A hundred at a wedding: two chips, a number, and one of three builds; nothing reaches beyond the screen.</summary>
    [Theory]
    [InlineData(1280, 800)]
    [InlineData(1024, 768)]
    [InlineData(390, 844)]
    public async Task Guests_become_a_build_by_one_tap(int width, int height)
    {
        var page = await open.Shop.At("Ines", "/order", width, height);
        await page.Locator("#day").FillAsync("tue");
        await page.Locator("#hour").FillAsync("14");
        await page.GetByRole(AriaRole.Button, new() { Name = "Guests", Exact = true }).ClickAsync();
        await page.Locator("#count").FillAsync("80");
        await page.Locator("#occasion").SelectOptionAsync("Wedding");
        await page.GetByRole(AriaRole.Button, new() { Name = "Top kept", Exact = true }).ClickAsync();
        await Expect(page.GetByText("64 portions to cut")).ToBeVisibleAsync();
        var builds = page.Locator(".for-guests .build", new() { Has = page.Locator(".over") });
        await Expect(builds.First).ToBeVisibleAsync();
        await Expect(builds.First).ToContainTextAsync("top kept:");
        await builds.First.ClickAsync();
        await Expect(page.Locator(".answer:not(.is-old) .answer-word")).Not.ToContainTextAsync("Short");
        await page.EvaluateAsync("() => window.scrollTo(0, 0)");
        await page.Picture($"guests-{width}");
        await page.Locator(".for-guests").ScrollIntoViewIfNeededAsync();
        await page.Picture($"guests-builds-{width}");
        await page.Locator("#tier-2").GetByRole(AriaRole.Button, new() { Name = "More" }).ClickAsync();
        await page.GetByLabel("Tier 2: false tier").CheckAsync();
        await page.GetByLabel("Tier 2: pillars in cm").FillAsync("6");
        await Expect(page.Locator("#tier-2")).ToContainTextAsync("foam, coated, not eaten");
        await Expect(page.Locator("#short")).ToBeVisibleAsync();
        await page.Locator("#tier-2").ScrollIntoViewIfNeededAsync();
        await page.Picture($"false-tier-{width}");
        await PagesTests.IsWhole(page);
        await page.GetByRole(AriaRole.Button, new() { Name = "Start again" }).ClickAsync();
        await page.Context.CloseAsync();
    }

    /// <summary>More guests on a cake that was agreed: its tiers stay, and what is cut beside it is said at once.</summary>
    [Theory]
    [InlineData(1280, 800)]
    [InlineData(390, 844)]
    public async Task More_guests_than_the_tiers_serve_are_said_at_once(int width, int height)
    {
        var page = await open.Shop.At("Ines", "/cakes/405", width, height);
        await page.GetByRole(AriaRole.Link, new() { Name = "Change the order" }).ClickAsync();
        await page.WaitForURLAsync("**/order/**");
        await Expect(page.Locator("#name")).Not.ToHaveValueAsync("");
        await page.Locator("#count").FillAsync("85");
        await Expect(page.Locator("#short")).ToContainTextAsync("25 short of 85");
        await Expect(page.Locator("#short")).ToContainTextAsync("The tiers stay.");
        await page.Locator("#short").ScrollIntoViewIfNeededAsync();
        await page.Picture($"more-guests-{width}");
        await PagesTests.IsWhole(page);
        await page.GetByRole(AriaRole.Button, new() { Name = "Start again" }).ClickAsync();
        await page.Context.CloseAsync();
    }
}
