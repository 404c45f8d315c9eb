namespace Bakehouse.Browser.Tests;

using System.Text.RegularExpressions;
using Bakehouse.Domain.Orders;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

/// <summary>The counter's screen under a real hand: what is typed is never lost, and what is wrong is said once and whole.</summary>
public sealed class OrderScreenTests(OpenShop open) : IClassFixture<OpenShop>
{
    [Fact]
    public async Task What_is_typed_survives_a_reload_and_all_that_is_wrong_is_said_at_once()
    {
        var page = await open.Shop.At("Wren", "/order");
        var asked = false;
        page.Dialog += (_, dialog) =>
        {
            asked = true;
            _ = dialog.DismissAsync();
        };
        const string Name = "<script>alert(1)</script> Ångström 家 🎂";
        await page.Locator("#name").FillAsync(Name);
        await page.Locator("#inscription").FillAsync(new string('n', 2000));
        await page.Locator("#day").FillAsync("sun");
        await page.Locator("#hour").FillAsync("3:00");
        await page.Locator("#count").FillAsync("10000");
        await page.Build("6+8+10").ClickAsync();
        await page.GetByLabel("Tier 1: height in cm").FillAsync("10,5");
        await page.GetByLabel("Tier 1: share of Ivory in percent").FillAsync("90");
        await Expect(page.Locator(".readback")).ToContainTextAsync("Sunday 18 October");

        // What is typed is kept within two seconds.
        await Task.Delay(TimeSpan.FromSeconds(2), TestContext.Current.CancellationToken);
        await page.ReloadAsync();
        await page.UntilAlive();
        await Expect(page.Locator("#name")).ToHaveValueAsync(Name);
        await Expect(page.GetByLabel("Tier 1: height in cm")).ToHaveValueAsync("10,5");

        await page.GetByRole(AriaRole.Button, new() { Name = "Take the order" }).ClickAsync();
        var list = page.Locator(".problems");
        await Expect(list).ToBeVisibleAsync();
        await Expect(list.Locator("li")).Not.ToHaveCountAsync(1);
        foreach (var said in (string[])["When", "10000", "90 %", "Allergies", "120"])
        {
            await Expect(list).ToContainTextAsync(said);
        }

        await page.Picture("order-wrong-1280");
        await Expect(page.Locator("#name")).ToHaveValueAsync(Name);
        await PagesTests.IsWhole(page);
        Assert.False(asked, "What was typed ran as a script.");
    }

    /// <summary>"A two-tier for 40 on Saturday at two, can you?" is answered before a name is known, and an offer is taken with one tap.</summary>
    [Theory]
    [InlineData(1280, 800)]
    [InlineData(390, 844)]
    public async Task Can_we_is_answered_while_the_customer_waits_and_an_offer_is_one_tap(int width, int height)
    {
        var page = await open.Shop.At("Wren", "/order", width, height);
        await page.Locator("#day").FillAsync("tue");
        await page.Locator("#hour").FillAsync("14");
        await page.Locator("#count").FillAsync("40");
        await Expect(page.Locator(".answer-word")).ToContainTextAsync("Yes");
        await Expect(page.Locator(".answer-says")).ToContainTextAsync("Tuesday 20 October at 14:00");
        await Expect(page.Locator(".answer-says")).ToContainTextAsync("to spare");
        await Expect(page.Locator(".answer-says")).ToContainTextAsync("The earliest is");
        await page.Picture($"can-yes-{width}");
        await PagesTests.IsWhole(page);

        await page.Locator("#day").FillAsync("fri");
        await page.Build("6+8+10").ClickAsync();
        await page.Locator("#decoration").SelectOptionAsync("Rich");
        await Expect(page.Locator(".answer-word")).ToContainTextAsync("Other time");
        await Expect(page.Locator(".offer").First).ToBeVisibleAsync(new() { Timeout = 60_000 });
        await page.EvaluateAsync("() => window.scrollTo(0, 0)");
        await page.Picture($"can-other-{width}");
        await PagesTests.IsWhole(page);
        await page.Locator(".offer[data-kind=Time] button").ClickAsync();
        await Expect(page.Locator(".answer-word")).ToContainTextAsync(new Regex("Yes|Tight"));
        await Expect(page.Locator("#day")).Not.ToHaveValueAsync("fri");
        await page.GetByRole(AriaRole.Button, new() { Name = "Start again" }).ClickAsync();
        await page.Context.CloseAsync();
    }

    /// <summary>A no comes with what fails and what else could be; what must be avoided comes before any yes of the plan.</summary>
    [Theory]
    [InlineData(1280, 800)]
    [InlineData(390, 844)]
    public async Task A_no_says_why_and_an_allergy_comes_before_the_plan(int width, int height)
    {
        var page = await open.Shop.At("Wren", "/order", width, height);
        await page.Locator("#day").FillAsync("tue");
        await page.Locator("#hour").FillAsync("14");
        await page.Locator("#count").FillAsync("40");
        await page.Build("one 12").ClickAsync();
        await page.GetByLabel("Tier 1: diameter").FillAsync("17");
        await Expect(page.Locator(".answer:not(.is-old) .answer-word")).ToHaveTextAsync("No");
        await Expect(page.Locator(".answer-says")).ToContainTextAsync("of shelf both ways");
        await page.EvaluateAsync("() => window.scrollTo(0, 0)");
        await page.Picture($"can-no-{width}");
        await PagesTests.IsWhole(page);

        await page.GetByLabel("Tier 1: diameter").FillAsync("8");
        await Expect(page.Locator(".answer:not(.is-old) .answer-word")).ToContainTextAsync("Short");
        await Expect(page.Locator("#short")).ToContainTextAsync("Serves 20: 20 short of 40");
        await page.EvaluateAsync("() => window.scrollTo(0, 0)");
        await page.Picture($"short-{width}");
        await PagesTests.IsWhole(page);
        await page.Locator("#short button").ClickAsync();
        await Expect(page.Locator(".answer:not(.is-old) .answer-word")).ToContainTextAsync("Yes");
        await page.GetByRole(AriaRole.Button, new() { Name = "Avoid …" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "milk", Exact = true }).ClickAsync();
        await Expect(page.Locator(".answer-word")).ToContainTextAsync("Not this");
        await Expect(page.Locator(".answer-says")).ToContainTextAsync("Avoid milk. It contains milk");
        await page.EvaluateAsync("() => window.scrollTo(0, 0)");
        await page.Picture($"can-avoid-{width}");
        await PagesTests.IsWhole(page);
        await page.GetByRole(AriaRole.Button, new() { Name = "Start again" }).ClickAsync();
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Two_screens_change_one_order_and_the_second_sees_both_and_chooses()
    {
        var (first, second) = (await Change("Ines"), await Change("Wren"));
        await first.Locator("#inscription").FillAsync("Ten years");
        await second.Locator("#inscription").FillAsync("Happy birthday");
        await first.GetByRole(AriaRole.Button, new() { Name = "Write the change" }).ClickAsync();
        await Expect(first.GetByText("is changed, version").First).ToBeVisibleAsync(new() { Timeout = 30_000 });

        await second.GetByRole(AriaRole.Button, new() { Name = "Write the change" }).ClickAsync();
        var clash = second.Locator(".clash");
        await Expect(clash).ToContainTextAsync("Ten years");
        await Expect(clash).ToContainTextAsync("Happy birthday");
        await second.Picture("clash-1280");
        await clash.GetByRole(AriaRole.Button, new() { Name = "Write mine over it" }).ClickAsync();
        await Expect(second.GetByText("is changed, version").First).ToBeVisibleAsync(new() { Timeout = 30_000 });
    }

    [Fact]
    public async Task The_longest_name_without_a_space_pushes_no_page_sideways()
    {
        var page = await Change("Ines");
        await page.Locator("#name").FillAsync(new string('W', OrderChecks.LongestName));
        await page.Locator("#inscription").FillAsync(new string('M', OrderChecks.LongestInscription));
        await page.GetByRole(AriaRole.Button, new() { Name = "Write the change" }).ClickAsync();
        await Expect(page.GetByText("is changed, version").First).ToBeVisibleAsync(new() { Timeout = 30_000 });
        foreach (var width in (int[])[1280, 390])
        {
            await page.SetViewportSizeAsync(width, 844);
            foreach (var path in (string[])["/cakes", "/cakes/405", "/week"])
            {
                await page.GotoAsync(path);
                await page.UntilAlive();
                await Expect(page.GetByText(new Regex("W{5,}")).First).ToBeAttachedAsync();
                await page.Picture($"long{path.Replace('/', '-')}-{width}");
                await PagesTests.StaysInside(page);
            }
        }
    }

    private async Task<IPage> Change(string who)
    {
        var page = await open.Shop.At(who, "/cakes/405");
        await page.GetByRole(AriaRole.Link, new() { Name = "Change the order" }).ClickAsync();
        await page.WaitForURLAsync("**/order/**");
        await Expect(page.Locator("#name")).Not.ToHaveValueAsync("");
        return page;
    }
}
