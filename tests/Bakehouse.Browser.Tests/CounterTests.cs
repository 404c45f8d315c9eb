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

    /// <summary>Somebody who was here before: name, their cake, a day of the twelve, none told, taken. Five taps and three letters; the telephone is known.</summary>
    [Fact]
    public async Task The_same_again_is_taken_in_five_taps_and_three_letters()
    {
        var page = await open.Shop.At("Wren", "/order");
        var taps = 0;
        async Task Tap(ILocator what)
        {
            await what.ClickAsync();
            taps++;
        }

        await Tap(page.Locator("#name"));
        await page.Locator("#name").PressSequentiallyAsync("Hal");
        await Tap(page.Locator(".same-again button").First);
        var day = page.Locator(".day", new() { HasText = "23" });
        await Expect(day.Locator(".mark")).ToBeVisibleAsync();
        await Expect(day).Not.ToContainTextAsync("not known yet", new() { Timeout = 60_000 });
        await Tap(day);
        await Tap(page.GetByRole(AriaRole.Radio, new() { Name = "None told" }).Or(page.GetByRole(AriaRole.Button, new() { Name = "None told" })));
        await Expect(page.Locator(".answer:not(.is-old) [data-takes].main")).ToBeVisibleAsync();
        await page.Picture("same-again-1280");
        await Tap(page.Locator("[data-takes].main"));
        await Expect(page.Locator(".answer-says")).ToContainTextAsync("is taken");
        Assert.Equal(5, taps);
        await page.Context.CloseAsync();
    }

    /// <summary>A whole order without a pointer: the letters jump, Enter leads on, a field keeps what is typed into it, Ctrl and Enter take it.</summary>
    [Fact]
    public async Task An_order_is_taken_by_keys_alone()
    {
        var page = await open.Shop.At("Wren", "/order");
        await Expect(page.Locator("#order-head")).ToBeFocusedAsync();
        await Press(page, "n", "#count");
        await page.Keyboard.TypeAsync("20");
        await page.Keyboard.PressAsync("Escape");
        await Press(page, "d", "#day");
        await page.Keyboard.TypeAsync("fri 23 oct");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#hour")).ToBeFocusedAsync();
        await page.Keyboard.TypeAsync("14");
        await page.Keyboard.PressAsync("Escape");
        await Press(page, "t", "#tiers button >> nth=0");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#tier-1")).ToBeVisibleAsync();
        await Press(page, "f", "#tier-1 select >> nth=0");
        await page.Keyboard.PressAsync("Escape");
        await Press(page, "c", "#finish");
        await page.Keyboard.PressAsync("Escape");
        await Press(page, "a", "#allergies button >> nth=0");
        await page.Keyboard.PressAsync("Enter");
        await Press(page, "w", "#name");
        await page.Keyboard.TypeAsync("Wanda Dint 1");
        await Expect(page.Locator("#name")).ToHaveValueAsync("Wanda Dint 1");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#phone")).ToBeFocusedAsync();
        await page.Keyboard.TypeAsync("020 7946 0182");
        await Expect(page.Locator(".answer:not(.is-old) [data-takes].main")).ToBeVisibleAsync();
        await page.Keyboard.PressAsync("Control+Enter");
        await Expect(page.Locator(".answer-says")).ToContainTextAsync("is taken");
        await page.Context.CloseAsync();
    }

    /// <summary>A figure takes its offer, but not while somebody writes; what can't be taken as it is, the keys don't take.</summary>
    [Fact]
    public async Task A_figure_takes_its_offer_unless_somebody_writes()
    {
        var page = await open.Shop.At("Wren", "/order");
        await page.Locator("#count").FillAsync("40");
        await page.Locator("#day").FillAsync("fri 16 oct");
        await page.Locator("#hour").FillAsync("8");
        await page.Build("6+8+10").ClickAsync();
        await Expect(page.Locator(".offer").First).ToBeVisibleAsync(new() { Timeout = 60_000 });
        await page.Picture("offers-1280");
        var hour = await page.Locator("#hour").InputValueAsync() + await page.Locator("#day").InputValueAsync();
        await page.Locator("#name").FocusAsync();
        await page.Keyboard.TypeAsync("1");
        await page.Keyboard.PressAsync("Control+Enter");
        await Expect(page.Locator("#name")).ToHaveValueAsync("1");
        Assert.Equal(hour, await page.Locator("#hour").InputValueAsync() + await page.Locator("#day").InputValueAsync());
        await page.Keyboard.PressAsync("Escape");
        await page.Keyboard.PressAsync("1");
        await Expect(page.Locator(".answer:not(.is-old) .answer-word")).ToContainTextAsync(new System.Text.RegularExpressions.Regex("Yes|Tight"));
        await page.GetByRole(AriaRole.Button, new() { Name = "Start again" }).ClickAsync();
        await page.Context.CloseAsync();
    }

    /// <summary>WCAG 2.2, 2.1.4: single keys can be switched off, and stay so on this device.</summary>
    [Theory]
    [InlineData(1280, 800)]
    [InlineData(390, 844)]
    public async Task The_single_keys_are_switched_off_in_help(int width, int height)
    {
        var page = await open.Shop.At("Wren", "/order", width, height);
        await page.GetByText("Help", new() { Exact = true }).ClickAsync();
        var off = page.GetByRole(AriaRole.Button, new() { Name = "Switch the single keys off" });
        await off.ScrollIntoViewIfNeededAsync();
        await page.Picture($"keys-{width}");
        await off.ClickAsync();
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Switch the single keys on" })).ToBeVisibleAsync();
        await page.ReloadAsync();
        await page.UntilAlive();
        await page.Keyboard.PressAsync("d");
        await Expect(page.Locator("#day")).Not.ToBeFocusedAsync();
        await page.GetByText("Help", new() { Exact = true }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Switch the single keys on" }).ClickAsync();
        await page.Keyboard.PressAsync("d");
        await Expect(page.Locator("#day")).ToBeFocusedAsync();
        await page.Context.CloseAsync();
    }

    private static async Task Press(IPage page, string key, string place)
    {
        await page.Keyboard.PressAsync(key);
        await Expect(page.Locator(place)).ToBeFocusedAsync();
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
