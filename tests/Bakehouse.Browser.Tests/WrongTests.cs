namespace Bakehouse.Browser.Tests;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;
using Bakehouse.Domain.Freezer;
using Bakehouse.Domain.Slips;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using NodaTime;
using static Microsoft.Playwright.Assertions;

/// <summary>
/// Something goes wrong in the kitchen: what went wrong in big buttons, what it would do, one tap, and the kitchen's and the office's
/// screens show the new plan without a reload; taken back, they show the old one. On a wall tablet and on a phone.
/// </summary>
public sealed class WrongTests(OpenShop open) : IClassFixture<OpenShop>
{
    /// <summary>A busy machine may take longer; what is slow is measured elsewhere.</summary>
    private static LocatorAssertionsToBeVisibleOptions Patient => new() { Timeout = 30_000 };

    private IBook Book => open.Shop.Services.GetRequiredService<IBook>();

    [Theory]
    [InlineData(1280, 800)]
    [InlineData(390, 844)]
    public async Task Somebody_is_ill_is_told_in_four_taps_mends_the_plan_on_both_screens_and_is_taken_back(int width, int height)
    {
        await NothingWrong();
        var before = Plan();
        var wall = await open.Shop.Screen(1280, 800, touch: true);
        await wall.IAm("Petra");
        await wall.GotoAsync("/kitchen?for=all");
        var office = await open.Shop.At("Ines", "/week", 1440, 900);
        var (boardThen, weekThen) = (await wall.Locator(".then ul").InnerTextAsync(), await Drawn(office));

        var hand = await open.Shop.Screen(width, height, touch: true);
        await hand.IAm("Dov");
        await hand.GotoAsync("/kitchen?for=all");
        await hand.GetByRole(AriaRole.Link, new() { Name = "Something’s wrong" }).ClickAsync();
        await Expect(hand.GetByRole(AriaRole.Heading, new() { Name = "Something’s wrong" })).ToBeVisibleAsync();
        await See(hand, $"wrong-{width}");
        await Bigs(hand);
        await hand.GetByRole(AriaRole.Link, new() { Name = "Somebody is ill" }).ClickAsync();
        await hand.GetByRole(AriaRole.Link, new() { Name = "Dov", Exact = true }).ClickAsync();
        await See(hand, $"wrong-until-{width}");
        await hand.GetByRole(AriaRole.Link, new() { Name = "Rest of the day" }).ClickAsync();

        await Expect(hand.GetByText("Dov is not here from 10:")).ToBeVisibleAsync(Patient);
        Assert.Equal(before, Plan());
        await See(hand, $"wrong-foretold-{width}");
        await Expect(hand.Locator(".wrong-facts")).ToContainTextAsync("not Dov");
        await Expect(hand.Locator(".wrong-facts")).Not.ToContainTextAsync("Dov: ");
        await hand.GetByRole(AriaRole.Button, new() { Name = "Do it" }).ClickAsync();
        await Expect(hand.GetByText("Done.")).ToBeVisibleAsync(Patient);
        await Expect(hand.Locator(".wrong-tell")).ToContainTextAsync("Petra");
        await Expect(hand.Locator(".wrong-tell")).Not.ToContainTextAsync("Dov");
        await Expect(wall.Locator("#notices")).ToContainTextAsync("Dov is not here", new() { Timeout = 30_000 });
        await See(hand, $"wrong-done-{width}");

        Assert.Equal(SlipKind.Away, Assert.Single(Book.State.Slips).Kind);
        Assert.NotEqual(before, Plan());
        await Expect(wall.Locator(".then ul")).Not.ToHaveTextAsync(boardThen, new() { UseInnerText = true, Timeout = 30_000 });
        await Changes(office, weekThen);

        await hand.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(hand.GetByText("Done.")).ToHaveCountAsync(0, new() { Timeout = 30_000 });
        Assert.Empty(Book.State.Slips);
        Assert.Equal(before, Plan());
        await Expect(wall.Locator(".then ul")).ToHaveTextAsync(boardThen, new() { UseInnerText = true, Timeout = 30_000 });
        await Task.WhenAll(wall.Context.CloseAsync(), office.Context.CloseAsync(), hand.Context.CloseAsync());
    }

    /// <summary>A baker says in three taps that a layer cracked and sees the repair; spare layers are one tap away.</summary>
    [Fact]
    public async Task A_cracked_layer_is_three_taps_and_spare_layers_one_more()
    {
        var page = await open.Shop.Screen(1280, 800, touch: true);
        await page.IAm("Petra");
        await page.GotoAsync("/kitchen?for=all");
        await page.GetByRole(AriaRole.Link, new() { Name = "Something’s wrong" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Link, new() { Name = "I’ll do it anyway" })).ToHaveCountAsync(0);
        await page.GetByRole(AriaRole.Link, new() { Name = "Cracked or sunk" }).ClickAsync();
        await page.Locator(".wrong-picks a").First.ClickAsync();
        await Expect(page.GetByText("baked again.")).ToBeVisibleAsync(Patient);
        await Expect(page.Locator(".wrong-facts")).ToContainTextAsync("New ");
        await See(page, "wrong-cracked-1280");
        await page.GetByRole(AriaRole.Link, new() { Name = "Spare layers instead" }).ClickAsync();
        await Expect(page.GetByText("spare layers take their place.")).ToBeVisibleAsync(Patient);
        await Expect(page.Locator(".wrong-facts")).Not.ToContainTextAsync("New ");
        Assert.Empty(Book.State.Slips);
        await page.Context.CloseAsync();
    }

    /// <summary>Spares are put in on the freezer's page; what cracks then takes them, and gives them back with its Undo.</summary>
    [Theory]
    [InlineData(1280, 800)]
    [InlineData(390, 844)]
    public async Task Spare_sponges_are_counted_and_what_cracks_takes_them(int width, int height)
    {
        await NothingWrong();
        await NothingFrozen();
        var freezer = await open.Shop.At("Petra", "/freezer", width, height);
        await Expect(freezer.GetByText("No spare sponges are counted.")).ToBeVisibleAsync();
        await See(freezer, $"freezer-empty-{width}");
        await freezer.Locator("#count").FillAsync("0");
        await freezer.GetByRole(AriaRole.Button, new() { Name = "Put in" }).ClickAsync();
        await Expect(freezer.GetByText("That is no number of sponges.")).ToBeVisibleAsync();
        await freezer.Locator("#count").FillAsync("3");
        await freezer.GetByRole(AriaRole.Button, new() { Name = "Put in" }).ClickAsync();
        await freezer.GetByRole(AriaRole.Button, new() { Name = "One more: Vanilla butter cake, 8 in" }).ClickAsync();
        await Expect(freezer.Locator(".spares-count")).ToHaveTextAsync("4");
        await freezer.GetByRole(AriaRole.Button, new() { Name = "None left" }).ClickAsync();
        await Expect(freezer.Locator(".spares li")).ToHaveCountAsync(0);
        await freezer.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(freezer.Locator(".spares-count")).ToHaveTextAsync("4");
        await PutInOfEach();
        await Expect(freezer.Locator(".spares li")).ToHaveCountAsync(Book.State.Freezer.Count);
        await See(freezer, $"freezer-{width}");

        var before = Book.State.Freezer;
        var hand = await open.Shop.Screen(width, height, touch: true);
        await hand.IAm("Petra");
        await hand.GotoAsync("/kitchen/wrong?kind=Cracked");
        await hand.Locator(".wrong-picks a").First.ClickAsync();
        await Expect(hand.GetByRole(AriaRole.Link, new() { Name = "Bake it again instead" })).ToBeVisibleAsync(Patient);
        await Expect(hand.Locator(".wrong-freezer")).ToContainTextAsync("Take ", new() { Timeout = 30_000 });
        await See(hand, $"wrong-spare-{width}");
        await hand.GetByRole(AriaRole.Button, new() { Name = "Do it" }).ClickAsync();
        await Expect(hand.GetByText("Done.")).ToBeVisibleAsync(Patient);
        Assert.Equal(before.Sum(s => s.Count) - Assert.Single(Book.State.Slips).Took!.Sum(t => t.Count), Book.State.Freezer.Sum(s => s.Count));
        await hand.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(hand.GetByText("Done.")).ToHaveCountAsync(0, new() { Timeout = 30_000 });
        Assert.Equal(before, Book.State.Freezer);
        await NothingFrozen();
        await Task.WhenAll(freezer.Context.CloseAsync(), hand.Context.CloseAsync());
    }

    /// <summary>Some of every sponge and common pan, the oldest past its best.</summary>
    private async Task PutInOfEach()
    {
        foreach (var (sponge, pan) in from sponge in new[] { "vanilla", "chocolate", "lemon", "carrot" } from pan in new[] { 6, 8, 9, 10 } select (sponge, pan))
        {
            await Count(new SpareSponges(sponge, pan, new LocalDate(2026, 10, 6).PlusDays(pan == 6 ? -40 : 0), 5));
        }
    }

    private async Task NothingFrozen()
    {
        foreach (var spares in Book.State.Freezer)
        {
            await Count(spares with { Count = 0 });
        }
    }

    private Task Count(SpareSponges spares) => Book.Enter(new CountSpares(Guid.NewGuid(), "ines", "office", spares), TestContext.Current.CancellationToken);

    /// <summary>Every button can be hit with floury hands: 15 mm at the size of a 10 in tablet, here 96 px; 44 px at least on a phone (WCAG 2.2, 2.5.5).</summary>
    private static async Task Bigs(IPage page)
    {
        var least = page.ViewportSize!.Width > 700 ? 90 : 66;
        foreach (var box in await Task.WhenAll((await page.Locator(".wrong-picks a").AllAsync()).Select(a => a.BoundingBoxAsync())))
        {
            Assert.True(box!.Height >= least, $"A button is {box.Height} px high.");
        }
    }

    /// <summary>Whatever another test told is taken back.</summary>
    private async Task NothingWrong()
    {
        foreach (var slip in Book.State.Slips)
        {
            await Book.Enter(new TakeBackSlip(Guid.NewGuid(), "ines", "office", slip.Id), TestContext.Current.CancellationToken);
        }
    }

    /// <summary>What is to come; what is done says what happened.</summary>
    private string Plan() => string.Join('\n', Book.State.Wall!.Plan.Steps
        .Select(r => (Row: r, At: Book.State.Wall.Epoch + Duration.FromMinutes(r.Start))).Where(r => r.At >= Instant.FromUtc(2026, 10, 15, 9, 55))
        .Select(r => $"{r.Row.Step} {r.At} {string.Join('+', r.Row.People)} {r.Row.Machine}").Order(StringComparer.Ordinal));

    private static Task<string> Drawn(IPage office) => office.Locator("main").InnerHTMLAsync();

    private static async Task Changes(IPage office, string before)
    {
        for (var i = 0; i < 100 && await Drawn(office) == before; i++)
        {
            await Task.Delay(100, TestContext.Current.CancellationToken);
        }

        Assert.NotEqual(before, await Drawn(office));
    }

    private static async Task See(IPage page, string name)
    {
        await page.Picture(name);
        await PagesTests.IsWhole(page);
    }
}
