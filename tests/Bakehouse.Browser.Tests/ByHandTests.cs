namespace Bakehouse.Browser.Tests;

using Bakehouse.Book.Reading;
using Bakehouse.Domain.Methods;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using NodaTime;
using static Microsoft.Playwright.Assertions;

/// <summary>The owner's hand on the week, in a real browser: two taps move a step, a chore is written down, both are taken back.</summary>
public sealed class ByHandTests(OpenShop open) : IClassFixture<OpenShop>
{
    [Theory]
    [InlineData(1440, 900)]
    [InlineData(1280, 800)]
    [InlineData(390, 844)]
    public async Task Two_taps_move_a_step_and_one_takes_it_back(int width, int height)
    {
        var page = await Week(width, height);
        var (cake, what) = Coat();
        await page.Locator("g.head", new() { HasText = cake }).ClickAsync();
        await page.Locator(".week-steps button", new() { HasText = what }).First.ClickAsync();
        await page.Picture($"hand-step-{width}");
        await page.GetByRole(AriaRole.Button, new() { Name = "Move", Exact = true }).ClickAsync();
        await Expect(page.Locator(".week-stops")).ToContainTextAsync("Not ");
        await page.Picture($"hand-lit-{width}");

        await PickALitPlace(page, width);
        var put = page.GetByRole(AriaRole.Button, new() { Name = "Put it there" });
        await Expect(put).ToBeEnabledAsync(new() { Timeout = 20_000 });
        await page.Picture($"hand-picked-{width}");
        await put.ClickAsync();
        await Expect(page.Locator(".week-put")).ToContainTextAsync("Moved and pinned");
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Unpin" })).ToBeVisibleAsync();
        await page.Picture($"hand-put-{width}");
        Assert.Single(Book.State.Pins);

        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Pin here" })).ToBeVisibleAsync();
        Assert.Empty(Book.State.Pins);
        await page.Context.CloseAsync();
    }

    [Theory]
    [InlineData(1440, 900)]
    [InlineData(1280, 800)]
    [InlineData(390, 844)]
    public async Task Other_work_is_looked_at_written_down_and_taken_away(int width, int height)
    {
        var page = await Week(width, height);
        await page.GetByRole(AriaRole.Button, new() { Name = "Other work" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Write some down" }).ClickAsync();
        await page.Locator("#from").FillAsync("13:30");
        await page.Locator("#to").FillAsync("15:30");
        await page.GetByRole(AriaRole.Button, new() { Name = "Oven 2" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Fridge 1, shelf 3" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "What does it move?" }).ClickAsync();
        await Expect(page.Locator(".week-foretold")).ToContainTextAsync("move", new() { Timeout = 30_000 });
        await page.Picture($"chore-form-{width}");
        await page.GetByRole(AriaRole.Button, new() { Name = "Write it" }).ClickAsync();
        await Expect(page.Locator(".week-chore")).ToContainTextAsync("Counter bake", new() { Timeout = 30_000 });
        await page.GetByRole(AriaRole.Button, new() { Name = "Close" }).First.ClickAsync();
        await Expect(page.Locator("rect.w-chore").First).ToBeAttachedAsync();
        await page.Picture($"chore-week-{width}");

        await page.GetByRole(AriaRole.Button, new() { Name = "Other work" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Change Counter bake" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Take it away" }).ClickAsync();
        await Expect(page.Locator(".week-chores")).ToContainTextAsync("taken away", new() { Timeout = 30_000 });
        Assert.Empty(Book.State.Chores);
        await page.Context.CloseAsync();
    }

    private IBook Book => open.Shop.Services.GetRequiredService<IBook>();

    private async Task<IPage> Week(int width, int height)
    {
        var page = await open.Shop.At("Ines", "/week", width, height);
        return page;
    }

    /// <summary>In the drawing where it can be seen, else by its button.</summary>
    private static async Task PickALitPlace(IPage page, int width)
    {
        if (width > 900)
        {
            var lit = page.Locator(".wk-rows rect.w-lit").Last;
            await lit.ScrollIntoViewIfNeededAsync();
            await lit.ClickAsync(new() { Force = true });
        }
        else
        {
            await page.Locator(".week-places button").Last.ClickAsync();
        }
    }

    /// <summary>A cake with a final coat still to come, drawn on these days.</summary>
    private (string Cake, string What) Coat()
    {
        var state = Book.State;
        var now = Instant.FromUtc(2026, 10, 15, 9, 40);
        var row = state.Wall!.Plan.Steps
            .Where(r => StepKey.Parse(r.Step) is { Operation: "coat" } && state.Wall.Epoch + Duration.FromMinutes(r.Start) > now + Duration.FromHours(2))
            .OrderBy(r => r.Start).First();
        return (state.Orders.First(o => o.Id == StepKey.Parse(row.Step)!.Value.Order).Customer.Name, "Final coat");
    }
}
