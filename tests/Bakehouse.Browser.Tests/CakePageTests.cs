namespace Bakehouse.Browser.Tests;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using NodaTime;
using static Microsoft.Playwright.Assertions;

/// <summary>One cake in a real browser: its face, the working behind a tap, and tiers of other outlines drawn three ways.</summary>
public sealed class CakePageTests(OpenShop open) : IClassFixture<OpenShop>
{
    private static readonly (string Name, CakeTier[] Tiers)[] Builds =
    [
        ("square-hexagon", [Cut(12, new(OutlineKind.Square, In(12))), Cut(9, new(OutlineKind.Hexagon, In(9)))]),
        ("petal-heart", [Cut(12, new(OutlineKind.Petal, In(12))), Cut(8, new(OutlineKind.Heart, In(8)))]),
        ("slab", [Cut(14, new(OutlineKind.Rectangle, In(14), In(10)))]),
        ("eight", [Cut(12, new(OutlineKind.Sign, In(12), Sign: "8"))]),
        ("letter", [Cut(12, new(OutlineKind.Sign, In(12), Sign: "R"))]),
        ("pillars", [Round(10), Round(8) with { Special = new TierSpecial { Separator = Length.FromCentimetres(6) } }, Round(6) with { Special = new TierSpecial { IsFalse = true } }]),
        ("heavy", [Round(14), Round(12), Round(10), Round(8)]),
    ];

    public static TheoryData<int, int> Sizes => new() { { 1280, 800 }, { 1024, 768 }, { 390, 844 } };

    [Theory]
    [MemberData(nameof(Sizes))]
    public async Task Its_face_is_whole_and_the_working_opens(int width, int height)
    {
        var page = await open.Shop.At("Ines", "/cakes/405", width, height);
        await page.Picture($"cake-{width}");
        await page.GetByText("Show the working").ClickAsync();
        await Expect(page.Locator("#working")).ToContainTextAsync("Lifting index");
        await page.Locator("#working").ScrollIntoViewIfNeededAsync();
        await page.Locator("#working").EvaluateAsync("e => e.scrollIntoView()");
        await page.Picture($"cake-working-{width}");
        await PagesTests.IsWhole(page);
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Other_outlines_are_drawn_three_ways()
    {
        var book = open.Shop.Services.GetRequiredService<IBook>();
        foreach (var (name, tiers) in Builds)
        {
            var number = await Write(book, tiers);
            var page = await open.Shop.At("Ines", $"/cakes/{number}");
            await page.Picture($"cake-{name}");
            foreach (var view in (string[])["Outside", "From above"])
            {
                await page.GetByRole(AriaRole.Button, new() { Name = view }).ClickAsync();
                await Expect(page.Locator(".cake-views svg title")).ToContainTextAsync(view == "Outside" ? "from the front" : "above");
                await page.Picture($"cake-{name}-{view.Replace(' ', '-')}");
            }

            await PagesTests.IsWhole(page);
            await page.Context.CloseAsync();
        }
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public async Task A_heart_is_taken_at_the_counter_with_its_price(int width, int height)
    {
        var page = await open.Shop.At("Wren", "/order", width, height);
        await page.Locator("#day").FillAsync("sat");
        await page.Locator("#hour").FillAsync("14:00");
        await page.Locator("#count").FillAsync("20");
        await page.GetByRole(AriaRole.Button, new() { Name = "Other shapes" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Slab" }).ClickAsync();
        await Expect(page.Locator(".cake-side h2")).ToContainTextAsync("13×9");
        await page.GetByRole(AriaRole.Button, new() { Name = "Other shapes" }).ClickAsync();
        await page.Picture($"order-slab-{width}");
        await page.GetByRole(AriaRole.Button, new() { Name = "Heart" }).ClickAsync();
        await Expect(page.Locator(".price-asked")).ToContainTextAsync("£");
        await page.GetByText("How it comes about").ClickAsync();
        await page.Locator("#price").FillAsync("20");
        await Expect(page.Locator(".price-tray")).ToContainTextAsync("Under the floor of £");
        await page.Locator(".price-tray").ScrollIntoViewIfNeededAsync();
        await page.Picture($"order-heart-{width}");
        await PagesTests.IsWhole(page);
        await page.GetByRole(AriaRole.Button, new() { Name = "Start again" }).ClickAsync();
        await page.Context.CloseAsync();
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public async Task Her_prices_stand_on_the_shop_page(int width, int height)
    {
        var page = await open.Shop.At("Ines", "/shop", width, height);
        await page.Locator("#prices summary").ClickAsync();
        await page.Locator("#prices").EvaluateAsync("e => window.scrollTo(0, e.getBoundingClientRect().top + window.scrollY - 70)");
        await page.Picture($"shop-prices-{width}");
        await PagesTests.IsWhole(page);
        await page.Context.CloseAsync();
    }

    /// <summary>Halves, thin layers, a ring, beads and sugar paste in two colours: the page stays whole at every width, and so do the cards.</summary>
    [Theory]
    [MemberData(nameof(Sizes))]
    public async Task A_cake_with_all_there_is_to_say_is_whole(int width, int height)
    {
        var book = open.Shop.Services.GetRequiredService<IBook>();
        var trimmed = new TierSpecial { Dam = Length.FromCentimetres(1.2m), FootBead = Length.FromCentimetres(1), TopBead = Length.FromCentimetres(0.8m) };
        CakeTier[] tiers = [Round(15), Round(12) with { Special = trimmed, Layers = 5 }, Round(8) with { Special = new TierSpecial { Paste = PasteSheet.Usual } }, Round(6) with { Height = Length.FromCentimetres(8), Layers = 3 }];
        var number = await Write(book, tiers);
        var page = await open.Shop.At("Ines", $"/cakes/{number}", width, height);
        await Expect(page.Locator(".tier-row").Last).ToBeVisibleAsync();
        await page.Picture($"cake-all-{width}");
        await page.Locator(".cake-facts").EvaluateAsync("e => window.scrollTo(0, e.getBoundingClientRect().top + window.scrollY - 70)");
        await page.Picture($"cake-all-facts-{width}");
        await page.GetByText("Show the working").ClickAsync();
        await page.Locator("#working h3").Last.EvaluateAsync("e => window.scrollTo(0, e.getBoundingClientRect().top + window.scrollY - 70)");
        await page.Picture($"cake-all-working-{width}");
        await PagesTests.IsWhole(page);
        await page.Context.CloseAsync();
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public async Task What_few_tiers_need_is_folded_open_at_the_counter(int width, int height)
    {
        var page = await open.Shop.At("Wren", "/order", width, height);
        await page.GetByRole(AriaRole.Button, new() { Name = "6+8+10" }).First.ClickAsync();
        await page.Locator("#tier-2 [aria-expanded]").ClickAsync();
        await page.GetByLabel("Tier 2: each layer from the foot in cm").FillAsync("3 2 3.73");
        await page.GetByLabel("Tier 2: bead at the foot in cm").FillAsync("0.8");
        await page.Locator("#tier-1").EvaluateAsync("e => window.scrollTo(0, e.getBoundingClientRect().top + window.scrollY - 120)");
        await page.Picture($"order-more-{width}");
        await PagesTests.IsWhole(page);
        await page.GetByRole(AriaRole.Button, new() { Name = "Start again" }).ClickAsync();
        await page.Context.CloseAsync();
    }

    private static async Task<int> Write(IBook book, CakeTier[] tiers)
    {
        var like = book.State.Orders.Single(o => o.Number == 405);
        var order = like with { Id = Guid.NewGuid(), Number = 0, Version = 0, Stage = Stage.Enquiry, Tiers = tiers, MadeFrom = null };
        var answer = await book.Enter(new WriteOrder(Guid.NewGuid(), "ines", "office", order), TestContext.Current.CancellationToken);
        Assert.True(answer.Kind == AnswerKind.Accepted, answer.Message + string.Join(" ", answer.Problems));
        return answer.Order!.Number;
    }

    private static Length In(int inches) => Length.FromInches(inches);

    private static CakeTier Round(int inches) =>
        new(Guid.NewGuid(), In(inches), Length.FromCentimetres(10), 4, "vanilla", "raspberry-jam", [new CoatColour("Ivory", "#F7F0E1", 0.6m), new CoatColour("Sage", "#D5DDC8", 0.4m)]);

    private static CakeTier Cut(int inches, Outline outline) => Round(inches) with { Special = new TierSpecial { Outline = outline } };
}
