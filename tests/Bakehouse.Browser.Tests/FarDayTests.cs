namespace Bakehouse.Browser.Tests;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;
using Bakehouse.Domain.Orders;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using NodaTime;
using static Microsoft.Playwright.Assertions;

/// <summary>A wedding next year, in a real browser at three sizes: answered by a budget, taken, and seen in the lists; then a day that is full.</summary>
public sealed class FarDayTests(OpenShop open) : IClassFixture<OpenShop>
{
    private static readonly LocalDate Full = new(2027, 4, 17);

    [Theory]
    [InlineData(1280, 800, "Counter")]
    [InlineData(1024, 768, "Tablet")]
    [InlineData(390, 844, "Phone")]
    public async Task A_far_day_is_answered_by_a_budget_and_its_order_says_when_it_is_planned(int width, int height, string name)
    {
        var page = await open.Shop.At("Ines", "/order", width, height);
        await Say(page, "6 mar 2027");
        await Expect(page.Locator(".answer:not(.is-old) .answer-word")).ToContainTextAsync("Yes");
        await Expect(page.Locator(".answer-says")).ToContainTextAsync("Saturday 6 March 2027 at 14:00");
        await Expect(page.Locator(".answer-says")).ToContainTextAsync("A budget, no plan yet");
        await page.EvaluateAsync("() => scrollTo(0, 0)");
        await page.Picture($"far-yes-{width}");
        await PagesTests.IsWhole(page);

        await page.TakeTheOrder("6 mar 2027", "14", "6+8+10", $"{name} wedding");
        await Expect(page.Locator(".answer-says")).ToContainTextAsync("its plan is made on Sat 13 Feb 2027");
        await page.Picture($"far-taken-{width}");

        await page.GotoAsync("/cakes");
        await page.UntilAlive();
        await Expect(page.Locator(".cake-line", new() { HasText = $"{name} wedding" })).ToContainTextAsync("planned from Sat 13 Feb 2027");
        await page.Locator(".cake-line", new() { HasText = $"{name} wedding" }).ScrollIntoViewIfNeededAsync();
        await page.Picture($"far-cakes-{width}");
        await PagesTests.IsWhole(page);

        await FillTheDay();
        await page.GotoAsync("/order");
        await page.UntilAlive();
        await Say(page, "17 apr 2027");
        await Expect(page.Locator(".offer").First).ToContainTextAsync("by a budget of hours", new() { Timeout = 30_000 });
        await Expect(page.Locator(".answer-says")).ToContainTextAsync("Not Sat 17 Apr 2027, 14:00");
        await page.EvaluateAsync("() => scrollTo(0, 0)");
        await page.Picture($"far-no-{width}");
        await PagesTests.IsWhole(page);
        await page.GetByRole(AriaRole.Button, new() { Name = "Start again" }).ClickAsync();
        await page.Context.CloseAsync();
    }

    private static async Task Say(IPage page, string day)
    {
        await page.Locator("#day").FillAsync(day);
        await page.Locator("#hour").FillAsync("14");
        await page.Locator("#count").FillAsync("60");
        await page.Build("6+8+10").ClickAsync();
    }

    /// <summary>Twelve three-tier cakes for one Saturday, as the sample's first of that kind.</summary>
    private async Task FillTheDay()
    {
        var book = open.Shop.Services.GetRequiredService<IBook>();
        var like = book.State.Orders.First(o => o.Tiers.Count == 3);
        for (var n = book.State.Orders.Count(o => o.Handover.At.Date == Full); n < 12; n++)
        {
            var order = like with { Id = Guid.NewGuid(), Number = 0, Version = 0, Stage = Stage.Booked, Cutting = null, Handover = new Handover(Way.Collect, Full.At(new LocalTime(14, 0)), "", 0) };
            var answer = await book.Enter(new WriteOrder(Guid.NewGuid(), "ines", "counter", order), TestContext.Current.CancellationToken);
            Assert.True(answer.Kind == AnswerKind.Accepted, string.Join(' ', answer.Problems));
        }
    }
}
