namespace Bakehouse.Browser.Tests;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;
using Bakehouse.Domain.Reminders;
using Bakehouse.Web.Bell;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using NodaTime;
using static Microsoft.Playwright.Assertions;

/// <summary>What only a browser proves of the bell: sound needs a tap, and what is late stands whole on wall and phone.</summary>
public sealed class BellTests(OpenShop open) : IClassFixture<OpenShop>
{
    [Fact]
    public async Task Sound_needs_a_tap_and_the_office_hears_whether_anybody_hears_and_what_is_late_stands_in_one_list()
    {
        var office = await open.Shop.At("Ines", "/cakes");
        open.Shop.Clock.MoveTo(open.Shop.Clock.GetCurrentInstant() + Duration.FromMinutes(3));
        var silent = office.GetByText("No kitchen screen has its sound on.");
        await Expect(silent).ToBeVisibleAsync();

        var wall = await open.Shop.Screen(1280, 800, touch: true);
        await wall.IAm("Petra");
        await wall.GotoAsync("/kitchen?for=all");
        var sound = wall.GetByRole(AriaRole.Button, new() { Name = "Sound is off" });
        await Expect(sound).ToBeVisibleAsync();
        await sound.ClickAsync();
        await Expect(sound).ToBeHiddenAsync();
        await Expect(silent).ToBeHiddenAsync();
        Assert.True(await wall.EvaluateAsync<bool>("() => isSecureContext && 'wakeLock' in navigator"));

        open.Shop.Clock.MoveTo(Instant.FromUtc(2026, 10, 15, 20, 10));
        await Expect(wall.Locator(".ring-list")).ToBeVisibleAsync(new() { Timeout = 15_000 });
        await Expect(office.GetByText("Nobody has answered")).ToBeVisibleAsync();
        await Expect(office.Locator(".cake-line", new() { HasText = "Hale" })).ToContainTextAsync("6 h 10 late");
        await office.Picture("called-1280");
        await See(wall, "late-list-1280");
        var phone = await open.Shop.Screen(390, 844, touch: true);
        await phone.IAm("Dov");
        await phone.GotoAsync("/kitchen?for=dov");
        await Expect(phone.Locator(".ring-list")).ToBeVisibleAsync();
        await See(phone, "late-list-390");
        await Night(wall, phone);
    }

    /// <summary>The first is answered from the list, the others at once; under it is what the evening says.</summary>
    private async Task Night(IPage wall, IPage phone)
    {
        var ringer = open.Shop.Services.GetRequiredService<Ringer>();
        var first = ringer.Look().Ringing[0];
        var row = wall.Locator($"li[data-ring='{first.Id}']");
        await row.Locator("[data-kind=Done]").ClickAsync();
        await Expect(row).ToHaveCountAsync(0);
        foreach (var ring in ringer.Look().Ringing)
        {
            await open.Shop.Services.GetRequiredService<IBook>().Enter(new AnswerRing(Guid.NewGuid(), "petra", "wall", ring.Id, RingAnswerKind.Cannot, "Not there"), TestContext.Current.CancellationToken);
        }

        await Expect(wall.Locator(".ring")).ToHaveCountAsync(0);
        open.Shop.Clock.SetClock(open.Shop.Clock.GetCurrentInstant() + Duration.FromHours(1));
        await Expect(wall.GetByText("The clock moved on by 1 h")).ToBeVisibleAsync();
        await See(wall, "night-1280");
        await See(phone, "night-390");
    }

    private static async Task See(IPage page, string name)
    {
        await page.Picture(name);
        await PagesTests.StaysInside(page);
    }
}
