namespace Bakehouse.Browser.Tests;

using Bakehouse.Book.Reading;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

/// <summary>Flowers, things on top and who eats under a real hand, from the counter to the cards in the kitchen; and the owner's own limits.</summary>
public sealed class DangersTests(OpenShop open) : IClassFixture<OpenShop>
{
    [Theory]
    [InlineData(1280, 800, "+8")]
    [InlineData(1024, 768, "+12")]
    [InlineData(390, 844, "+14")]
    public async Task From_the_counter_to_the_card_it_is_the_same_sentence(int width, int height, string day)
    {
        var page = await open.Shop.At("Ines", "/order", width, height);
        await Expect(page.Locator("#fresh-flowers, #small-children")).ToHaveCountAsync(0);
        await page.Locator("#day").FillAsync(day);
        await page.Locator("#hour").FillAsync("14");
        await page.Locator("#count").FillAsync("40");
        await page.Build("6+10").ClickAsync();
        await page.Locator("#on-top-asked").ClickAsync();
        await page.Locator("#fresh-flowers").ClickAsync();
        await page.GetByLabel("Flower 1: which").FillAsync("foxglove");
        await Expect(page.Locator(".answer-word")).ToContainTextAsync("Not yet");
        await Expect(page.Locator(".answer-says")).ToContainTextAsync("is listed as poisonous");
        await page.Locator("#on-top").ScrollIntoViewIfNeededAsync();
        await page.Picture($"on-top-asks-{width}");
        await PagesTests.IsWhole(page);

        await page.GetByLabel("Flower 1: how it goes on").SelectOptionAsync("Pick");
        await page.GetByLabel("Flower 1: stems").FillAsync("5");
        await page.Locator("#florist").FillAsync("Tansy Lane");
        await page.Locator("#topping").SelectOptionAsync("topper");
        await page.Locator("#who-eats").ClickAsync();
        await page.Locator("#small-children").CheckAsync();
        await Expect(page.Locator(".eaters .danger")).ToContainTextAsync("flower picks");
        await page.Picture($"on-top-eaters-{width}");
        await PagesTests.IsWhole(page);
        await page.Locator("#eaters-asked").CheckAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "None told" }).ClickAsync();
        await page.Locator("#name").FillAsync($"Amara {width}");
        await page.GetByRole(AriaRole.Button, new() { Name = "Take the order" }).ClickAsync();
        await Expect(page.GetByText("is taken").First).ToBeVisibleAsync(new() { Timeout = 30_000 });
        await page.GetByRole(AriaRole.Link, new() { Name = "See the cake" }).ClickAsync();

        await Expect(page.Locator(".cake-facts .danger").First).ToContainTextAsync("Take off before cutting: 5 stems of foxglove, acrylic or wooden topper.");
        await page.Locator(".cake-facts").ScrollIntoViewIfNeededAsync();
        await page.Picture($"on-top-cake-{width}");
        await PagesTests.IsWhole(page);
        await page.Context.CloseAsync();
    }

    [Theory]
    [InlineData(1280, 800)]
    [InlineData(390, 844)]
    public async Task The_decorators_card_says_what_comes_off_and_how_the_flowers_go_on(int width, int height)
    {
        var order = open.Shop.Services.GetRequiredService<IBook>().State.Orders.First(o => o.OnTop is not null && o.Customer.Name == "Marchetti");
        var page = await open.Shop.Screen(width, height);
        await page.IAm("Dov");
        await page.GotoAsync($"/kitchen/step/{new Domain.Methods.StepKey(order.Id, null, "decorate", 1)}");
        await Expect(page.Locator(".card-danger")).ToContainTextAsync("Take off before cutting: 12 stems of rose.");
        await Expect(page.Locator(".card-danger")).ToContainTextAsync("Hidden inside: 11 dowels, 2 boards, 1 rod, 12 picks. 26 parts in all");
        await page.Picture($"on-top-card-{width}");
        await PagesTests.IsWhole(page);
        await page.Context.CloseAsync();
    }

    [Theory]
    [InlineData(1280, 800)]
    [InlineData(390, 844)]
    public async Task The_owners_limits_are_hers_to_set(int width, int height)
    {
        var page = await open.Shop.At("Ines", "/shop", width, height);
        await page.Locator("#nothing-cold").CheckAsync();
        await Expect(page.Locator("#cold-words")).ToBeVisibleAsync();
        await page.Locator("#yearly-cap").FillAsync("50,000");
        await page.Locator("#own-limits").ScrollIntoViewIfNeededAsync();
        await page.Picture($"own-limits-{width}");
        await PagesTests.IsWhole(page);
        await page.GetByRole(AriaRole.Button, new() { Name = "Throw away what I typed" }).ClickAsync();
        await page.Context.CloseAsync();
    }
}
