namespace Bakehouse.Browser.Tests;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using NodaTime;
using static Microsoft.Playwright.Assertions;

/// <summary>Cupcakes alone and beside a cake in a real browser: the cake's page, its cards, the week and the kitchen.</summary>
public sealed class CupcakeTests(OpenShop open) : IClassFixture<OpenShop>
{
    private static readonly LocalDateTime Later = new(2026, 10, 28, 15, 0);

    public static TheoryData<int, int> Sizes => new() { { 1280, 800 }, { 1024, 768 }, { 390, 844 } };

    [Theory]
    [MemberData(nameof(Sizes))]
    public async Task Their_page_shows_what_they_take(int width, int height)
    {
        foreach (var (name, order) in new[] { ("alone", await Taken(24, Later)), ("beside", await Taken(36, Later, 9, 6)) })
        {
            var page = await open.Shop.At("Ines", $"/cakes/{order.Number}", width, height);
            await Expect(page.Locator("h1")).ToContainTextAsync("cupcakes");
            await Expect(page.Locator(".cake-right")).ToContainTextAsync(name == "alone" ? "2 × 12" : "3 × 12");
            await page.Picture($"cupcakes-{name}-{width}");
            if (name == "beside")
            {
                await page.GetByRole(AriaRole.Button, new() { Name = "Cupcakes", Exact = true }).ClickAsync();
                await page.Picture($"cupcakes-{name}-drawn-{width}");
            }

            await Expect(page.Locator("#contains")).ToContainTextAsync("cupcakes");
            await PagesTests.IsWhole(page);
            await page.Context.CloseAsync();
        }
    }

    /// <summary>A day on which nothing else leaves, an hour, one tap: the counter answers for cupcakes alone; one tap more and they stand beside a cake, with one price.</summary>
    [Theory]
    [MemberData(nameof(Sizes))]
    public async Task The_counter_takes_them_in_a_tap(int width, int height)
    {
        var page = await open.Shop.At("Wren", "/order", width, height);
        await page.Locator("#day").FillAsync("30 oct");
        await page.Locator("#hour").FillAsync("15");
        await page.GetByRole(AriaRole.Button, new() { Name = "24 cupcakes" }).ClickAsync();
        await Expect(page.Locator("#count")).ToHaveValueAsync("24");
        await Expect(page.Locator(".answer:not(.is-old) .answer-word")).ToContainTextAsync(new System.Text.RegularExpressions.Regex("Yes|Tight"), new() { Timeout = 30_000 });
        await Expect(page.Locator(".price-asked")).ToContainTextAsync("£105");
        await Expect(page.Locator(".two-counts")).ToContainTextAsync("24 portions");
        await page.Locator("#cupcakes").EvaluateAsync("e => e.scrollIntoView({ block: 'center' })");
        await page.Picture($"counter-cupcakes-alone-{width}");
        await PagesTests.IsWhole(page);

        await page.Build("6+10").ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "36 cupcakes" }).ClickAsync();
        await Expect(page.Locator(".cake-side h2")).ToContainTextAsync("6+10 round, two tiers and 36 cupcakes");
        await Expect(page.Locator(".answer:not(.is-old) .answer-word")).ToContainTextAsync(new System.Text.RegularExpressions.Regex("Yes|Tight"), new() { Timeout = 30_000 });
        await page.EvaluateAsync("() => window.scrollTo(0, 0)");
        await page.Picture($"counter-cupcakes-beside-{width}");
        await page.Locator("#cupcakes").EvaluateAsync("e => e.scrollIntoView({ block: 'center' })");
        await page.Picture($"counter-cupcakes-fields-{width}");
        await PagesTests.IsWhole(page);
        await page.GetByRole(AriaRole.Button, new() { Name = "Start again" }).ClickAsync();
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task The_kitchen_pipes_them_by_the_tray()
    {
        var order = await Taken(36, new LocalDateTime(2026, 10, 17, 15, 0));
        var (week, wall) = (State.Week!, State.Wall!);
        var pipe = week.Steps.First(s => s.Name == "pipe" && s.Order == order.Id.ToString("N")).Id;
        var rows = wall.From(week.Epoch).Steps;
        var start = rows.First(r => r.Step == pipe).Start;
        var minutes = week.Steps.ToDictionary(s => s.Id, s => s.Minutes);
        foreach (var row in rows.Where(r => r.Start + minutes[r.Step] <= start && State.Ticks.All(t => t.Step != r.Step)).OrderBy(r => r.Start + minutes[r.Step]))
        {
            open.Shop.Clock.MoveTo(week.Epoch + Duration.FromMinutes(row.Start + minutes[row.Step]));
            await Book.Enter(new TickStep(Guid.NewGuid(), "ines", "office", row.Step, row.People.Count > 0 ? row.People[0] : "petra"), TestContext.Current.CancellationToken);
        }

        open.Shop.Clock.MoveTo(week.Epoch + Duration.FromMinutes(start));
        foreach (var (width, height) in new[] { (1280, 800), (1024, 768), (390, 844) })
        {
            var page = await open.Shop.Screen(width, height);
            await page.IAm("Ines");
            await page.GotoAsync($"/kitchen/step/{pipe}");
            await Expect(page.Locator("h1")).ToContainTextAsync("Pipe 24 cupcakes");
            await page.Picture($"cupcakes-card-{width}");
            await PagesTests.IsWhole(page);
            await page.GotoAsync("/kitchen?for=all");
            await Expect(page.Locator("#board")).ToContainTextAsync("cupcakes");
            await page.Picture($"cupcakes-kitchen-{width}");
            await PagesTests.IsWhole(page);
            await page.GotoAsync("/week");
            await page.UntilAlive();
            await page.Picture($"cupcakes-week-{width}");
            await page.Context.CloseAsync();
        }
    }

    private IBook Book => open.Shop.Services.GetRequiredService<IBook>();

    private BookState State => Book.State;

    private async Task<Order> Taken(int cupcakes, LocalDateTime at, params int[] inches)
    {
        var like = State.Orders.Single(o => o.Number == 405);
        IReadOnlyList<CakeTier> tiers =
        [
            .. inches.Select(i => like.Tiers[0] with { Id = Guid.NewGuid(), Diameter = Domain.Measures.Length.FromInches(i) }),
            Cupcakes.Batch(Guid.NewGuid(), cupcakes, "vanilla", [new CoatColour("Blush", "#EAD0CC", 0.5m), new CoatColour("Sage", "#D5DDC8", 0.5m)]),
        ];
        var order = like with
        {
            Id = Guid.NewGuid(), Number = 0, Version = 0, Stage = Stage.Booked, Tiers = tiers, MadeFrom = null, Decoration = Decoration.Simple, Portions = new Portions(cupcakes, Cut.Dessert),
            Handover = new Handover(Way.Collect, at, "", 0), Inscription = "",
        };
        var answer = await Book.Enter(new WriteOrder(Guid.NewGuid(), "ines", "office", order), TestContext.Current.CancellationToken);
        Assert.True(answer.Kind == AnswerKind.Accepted, answer.Message + string.Join(" ", answer.Problems));
        return answer.Order!;
    }
}
