namespace Bakehouse.Browser.Tests;

using System.Diagnostics;
using System.Text.RegularExpressions;
using Bakehouse.Book.Reading;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Reminders;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using NodaTime;
using static Microsoft.Playwright.Assertions;

/// <summary>Counter, week and kitchen tablet side by side: the first cake, from the order to the ring.</summary>
public sealed class FirstCakeTests(RunningShop shop, ITestOutputHelper output) : IClassFixture<RunningShop>
{
    [Fact]
    public async Task A_cake_is_taken_at_the_counter_and_the_tablet_rings_when_it_must_leave_the_fridge()
    {
        var counter = await shop.Screen(1280, 800);
        await counter.OpenTheSample();
        await counter.IAm("Wren");
        var tablet = await shop.Screen(1280, 800, touch: true);
        await tablet.IAm("Petra");
        await tablet.GotoAsync("/kitchen?for=all");
        var week = await shop.Screen(1440, 900);
        await week.IAm("Ines");
        await week.GotoAsync("/week");
        await Expect(week.Locator("svg").First).ToBeVisibleAsync();
        Assert.DoesNotContain("Quillon", await week.ContentAsync(), StringComparison.Ordinal);

        await counter.TakeTheOrder("sat", "14:00", "6+8+10", "Quillon");
        await Expect(week.GetByText(new Regex("Quillon")).First).ToBeAttachedAsync();

        await TickTwoSteps(tablet);
        await RingAndAnswer(tablet, week);
    }

    private async Task TickTwoSteps(IPage tablet)
    {
        shop.Clock.MoveTo(RunningShop.Start + Duration.FromMinutes(10));
        for (var i = 0; i < 2; i++)
        {
            var before = Book.State.Ticks.Count;
            await tablet.Locator(".band-done.is-due, .band-done[data-do=tick]").First.ClickAsync();
            await Until(() => Book.State.Ticks.Count > before, "the tick is in the book");
        }
    }

    private async Task RingAndAnswer(IPage tablet, IPage week)
    {
        var second = await shop.Screen(1280, 800);
        await second.IAm("Dov");
        await second.GotoAsync("/kitchen?for=all");
        var state = Book.State;
        var ring = state.Wall!.Plan.Steps.Where(s => s.Step.Contains(".leavefridge.", StringComparison.Ordinal)).MinBy(s => s.Start)!;
        var due = state.Wall.Epoch + Duration.FromMinutes(ring.Start);

        shop.Clock.MoveTo(due);
        var watch = Stopwatch.StartNew();
        var dialog = tablet.GetByRole(AriaRole.Alertdialog);
        await Expect(dialog).ToBeVisibleAsync(new() { Timeout = 10_000 });
        output.WriteLine($"due to visible: {watch.ElapsedMilliseconds} ms");
        Assert.True(watch.ElapsedMilliseconds < 2_000 * Slowness, $"The ring took {watch.ElapsedMilliseconds} ms.");
        await Expect(second.GetByRole(AriaRole.Alertdialog)).ToBeVisibleAsync();

        // Everything that is due by then is answered on one screen; the other follows.
        watch.Restart();
        for (var i = 0; i < 30 && await dialog.CountAsync() > 0; i++)
        {
            var id = await dialog.GetAttributeAsync("data-ring");
            await dialog.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^Done") }).ClickAsync();
            await Expect(tablet.Locator($"[data-ring='{id}']")).ToHaveCountAsync(0);
            watch.Restart();
            await Expect(second.Locator($"[data-ring='{id}']")).ToHaveCountAsync(0, new() { Timeout = 10_000 });
            output.WriteLine($"gone on the other screen: {watch.ElapsedMilliseconds} ms");
            Assert.True(watch.ElapsedMilliseconds < 2_000 * Slowness);
        }

        Assert.NotEmpty(Book.State.Answers);
    }

    /// <summary>A busy machine is not the app's fault: the bound of 2 s is for an idle one, CI allows three times that.</summary>
    private static int Slowness => Environment.GetEnvironmentVariable("CI") is null ? 1 : 3;

    private IBook Book => shop.Services.GetRequiredService<IBook>();

    private static async Task Until(Func<bool> holds, string what)
    {
        for (var i = 0; i < 100 && !holds(); i++)
        {
            await Task.Delay(100, TestContext.Current.CancellationToken);
        }

        Assert.True(holds(), what);
    }
}
