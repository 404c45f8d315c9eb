namespace Bakehouse.Browser.Tests;

using Bakehouse.Book.Reading;
using Bakehouse.Web.Bell;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using NodaTime;
using static Microsoft.Playwright.Assertions;

/// <summary>The kitchen under hands: two tablets at one step, a page loaded again in the middle, a question, night, large letters.</summary>
public sealed class KitchenTests(OpenShop open) : IClassFixture<OpenShop>
{
    private IBook Book => open.Shop.Services.GetRequiredService<IBook>();

    [Fact]
    public async Task Two_tablets_race_for_one_step_and_it_is_ticked_once()
    {
        var (one, two) = (await Kitchen("Petra"), await Kitchen("Dov"));
        var done = one.Locator(".band-done").First;
        var steps = (await done.GetAttributeAsync("data-steps"))!.Split(' ');
        var key = await done.GetAttributeAsync("data-key");
        var same = two.Locator($".band-done[data-key='{key}']");
        await Task.WhenAll(done.ClickAsync(), same.ClickAsync());
        await Screens.Until(() => steps.All(s => Book.State.Ticks.Any(t => t.Step == s)), "the tick is in the book");
        await Expect(one.Locator(".band-strip:not(.band-doubt)").First).ToContainTextAsync("done ");
        await Expect(two.Locator(".band-strip:not(.band-doubt)").First).ToContainTextAsync("done ");
        Assert.All(steps, s => Assert.Single(Book.State.Ticks, t => t.Step == s));
        await two.Picture("kitchen-race");

        await one.Locator($"[data-do=undo][data-steps*='{steps[0]}']").ClickAsync();
        await Expect(two.Locator($".band-done[data-key='{key}']")).ToHaveAttributeAsync("data-steps", string.Join(' ', steps));
        await Screens.Until(() => !Book.State.Ticks.Any(t => steps.Contains(t.Step)), "the tick is taken back");
        await Close(one, two);
    }

    /// <summary>Whatever the page had heard when it was loaded again: the tap is in the book once, the page shows it, and one more tap takes it back.</summary>
    [Fact]
    public async Task A_page_loaded_again_in_the_middle_of_a_tap_does_not_lose_it()
    {
        var page = await Kitchen("Petra");
        await TellTheTime(page);
        for (var round = 0; round < 3; round++)
        {
            var steps = await TapTheFirst(page);
            await page.ReloadAsync();
            await Screens.Until(() => steps.All(s => Book.State.Ticks.Count(t => t.Step == s) == 1), "the tap is in the book");
            await Expect(page.Locator(".is-sending")).ToHaveCountAsync(0);
            await page.Locator($"[data-do=undo][data-steps*='{steps[0]}']").ClickAsync();
            await Screens.Until(() => !Book.State.Ticks.Any(t => steps.Contains(t.Step)), "the tick is taken back");
            await Expect(page.Locator($"[data-do=undo][data-steps*='{steps[0]}']")).ToHaveCountAsync(0);
        }

        await Close(page);
    }

    /// <summary>A tick kept while there was no connection is sent by the page that comes back, also if that page was opened anew.</summary>
    [Fact]
    public async Task A_tick_kept_without_a_connection_is_sent_by_the_page_that_is_opened_next()
    {
        var page = await Kitchen("Petra");
        await TellTheTime(page);
        await page.RouteAsync("**/kitchen/commands", route => route.AbortAsync());
        var steps = await TapTheFirst(page);
        await Expect(page.Locator("#offline")).ToContainTextAsync("Ticks are kept here");
        Assert.DoesNotContain(Book.State.Ticks, t => steps.Contains(t.Step));
        await page.UnrouteAllAsync();
        await page.ReloadAsync();
        await Screens.Until(() => steps.All(s => Book.State.Ticks.Count(t => t.Step == s) == 1), "the kept tick is in the book");
        await page.Locator($"[data-do=undo][data-steps*='{steps[0]}']").ClickAsync();
        await Screens.Until(() => !Book.State.Ticks.Any(t => steps.Contains(t.Step)), "the tick is taken back");
        await Close(page);
    }

    /// <summary>The clock of the screen is an hour off: what is in the book is when it was tapped by the shop's clock, a quarter of an hour before it was sent.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(-1)]
    public async Task A_kept_tick_of_a_screen_whose_clock_is_an_hour_off_counts_from_when_it_was_tapped(int hours)
    {
        var page = await Kitchen("Petra");
        var tapped = open.Shop.Clock.GetCurrentInstant();
        await page.Clock.SetFixedTimeAsync((tapped + Duration.FromHours(hours)).ToDateTimeUtc());
        await page.RouteAsync("**/kitchen/commands", route => route.AbortAsync());
        var steps = await TapTheFirst(page);
        await Expect(page.Locator("#offline")).ToContainTextAsync("Ticks are kept here");

        open.Shop.Clock.MoveTo(tapped + Duration.FromMinutes(15));
        await page.Clock.SetFixedTimeAsync((tapped + Duration.FromHours(hours) + Duration.FromMinutes(15)).ToDateTimeUtc());
        await page.UnrouteAllAsync();
        await page.ReloadAsync();
        await Screens.Until(() => steps.All(s => Book.State.Ticks.Count(t => t.Step == s) == 1), "the kept tick is in the book");
        Assert.All(Book.State.Ticks.Where(t => steps.Contains(t.Step)), t => Assert.InRange(t.Done - tapped, -Duration.FromSeconds(5), Duration.FromSeconds(5)));
        await Expect(page.Locator("#refused")).ToBeHiddenAsync();
        await TakeBack(steps);
        await Close(page);
    }

    /// <summary>While this screen was away another ticked the step: why, and what to do, stays to be read, also on a page that is opened anew, until somebody lets it go.</summary>
    [Theory]
    [InlineData(1280, 800)]
    [InlineData(1024, 768)]
    [InlineData(390, 844)]
    public async Task A_kept_tick_that_is_refused_is_told_until_somebody_lets_it_go(int width, int height)
    {
        var page = await Kitchen("Petra", width, height);
        await TellTheTime(page);
        await page.RouteAsync("**/kitchen/commands", route => route.AbortAsync());
        var steps = await TapTheFirst(page);
        await Expect(page.Locator("#offline")).ToContainTextAsync("Ticks are kept here");
        foreach (var step in steps)
        {
            await Book.Enter(new Book.Entries.TickStep(Guid.NewGuid(), "dov", "wall", step, "dov"), TestContext.Current.CancellationToken);
        }

        await page.UnrouteAllAsync();
        await page.ReloadAsync();
        var told = page.Locator("#refused");
        await Expect(told).ToContainTextAsync("Done: ");
        await Expect(told).ToContainTextAsync("Dov did it at ");
        await Expect(told).ToContainTextAsync("If it was done, tick it on the list; then let this go.");
        await page.Picture($"refused-{width}");
        await PagesTests.IsWhole(page);
        await page.ReloadAsync();
        await Expect(told).ToContainTextAsync("Dov did it at ");
        await told.GetByRole(AriaRole.Button, new() { Name = "Let it go" }).ClickAsync();
        await Expect(told).ToBeHiddenAsync();
        await page.ReloadAsync();
        await Expect(page.Locator("#board")).ToBeVisibleAsync();
        await Expect(told).ToBeHiddenAsync();
        await TakeBack(steps);
        await Close(page);
    }

    /// <summary>Who somebody is was forgotten while the screen was away: the tick waits until that is said again.</summary>
    [Fact]
    public async Task A_kept_tick_of_nobody_waits_until_somebody_says_who_they_are_and_sends_it_again()
    {
        var page = await Kitchen("Petra");
        await TellTheTime(page);
        await page.RouteAsync("**/kitchen/commands", route => route.AbortAsync());
        var steps = await TapTheFirst(page);
        await Expect(page.Locator("#offline")).ToContainTextAsync("Ticks are kept here");
        await page.UnrouteAllAsync();
        await page.RouteAsync("**/kitchen/commands", route => route.FulfillAsync(new() { Status = 403, ContentType = "application/json", Body = """{"accepted":false,"message":"This screen may not do that. Say who you are first."}""" }));
        await page.ReloadAsync();
        await Expect(page.Locator("#refused")).ToContainTextAsync("Say who you are first.");
        await page.UnrouteAllAsync();
        await page.Locator("#refused").GetByRole(AriaRole.Button, new() { Name = "Send again" }).ClickAsync();
        await Expect(page.Locator("#refused")).ToBeHiddenAsync();
        await Screens.Until(() => steps.All(s => Book.State.Ticks.Count(t => t.Step == s) == 1), "the kept tick is in the book");
        await TakeBack(steps);
        await Close(page);
    }

    /// <summary>By another screen: the line with Undo stands for ten seconds after a step was done, not after it was sent.</summary>
    private async Task TakeBack(IEnumerable<string> steps)
    {
        foreach (var step in steps)
        {
            await Book.Enter(new Book.Entries.UndoTick(Guid.NewGuid(), "dov", "wall", step), TestContext.Current.CancellationToken);
        }

        Assert.DoesNotContain(Book.State.Ticks, t => steps.Contains(t.Step));
    }

    [Theory]
    [InlineData(1280, 800)]
    [InlineData(390, 844)]
    public async Task One_quiet_question_is_answered_with_one_tap(int width, int height)
    {
        var person = await MoveToAQuestion();
        var page = await Kitchen("Ines", width, height, person);
        var question = page.Locator(".band-doubt").First;
        await Expect(question).ToContainTextAsync("Done?");
        var steps = (await question.GetByRole(AriaRole.Button, new() { Name = "Yes" }).GetAttributeAsync("data-steps"))!.Split(' ');
        await page.Picture($"question-{width}");
        await PagesTests.IsWhole(page);
        await question.GetByRole(AriaRole.Button, new() { Name = "Yes" }).ClickAsync();
        await Expect(page.Locator($".band-doubt [data-steps='{string.Join(' ', steps)}']")).ToHaveCountAsync(0);
        await Screens.Until(() => steps.All(s => Book.State.Ticks.Any(t => t.Step == s)), "the answer is in the book");
        Assert.All(steps, s => Assert.Single(Book.State.Ticks, t => t.Step == s));
        await Close(page);
    }

    /// <summary>"Petra did it at half past nine": a step of cake 405 is ticked with that, corrected with a reason, and the log says both.</summary>
    [Theory]
    [InlineData(1280, 800)]
    [InlineData(390, 844)]
    public async Task A_step_is_ticked_for_somebody_else_and_corrected_and_the_log_says_so(int width, int height)
    {
        var page = await open.Shop.At("Ines", "/cakes/405", width, height);
        await page.GetByText("Show the steps").ClickAsync();
        var row = page.Locator(".steps li").Filter(new() { Has = page.GetByRole(AriaRole.Button, new() { NameRegex = new("^Say when it was done") }) }).First;
        await row.GetByRole(AriaRole.Button).ClickAsync();
        await page.Locator("#done-at").FillAsync("9:30");
        await page.Locator("#done-by").SelectOptionAsync("petra");
        await page.Picture($"correct-{width}");
        await PagesTests.IsWhole(page);
        await page.GetByRole(AriaRole.Button, new() { Name = "Write it down" }).ClickAsync();
        await Expect(page.GetByText("09:30, Petra").First).ToBeVisibleAsync();

        await page.Locator(".steps li").Filter(new() { HasText = "09:30, Petra" }).First.GetByRole(AriaRole.Button).ClickAsync();
        await page.Locator("#done-by").SelectOptionAsync("dov");
        await page.GetByRole(AriaRole.Button, new() { Name = "Write it down" }).ClickAsync();
        await Expect(page.Locator(".correct")).ToContainTextAsync("needs a reason");
        await page.Locator("#done-why").FillAsync("It was Dov");
        await page.GetByRole(AriaRole.Button, new() { Name = "Write it down" }).ClickAsync();
        await page.GetByText("What was done").ClickAsync();
        await Expect(page.Locator("#log")).ToContainTextAsync("It was Dov");
        await page.Picture($"log-{width}");
        await PagesTests.IsWhole(page);
        await Close(page);
    }

    [Theory]
    [InlineData(1280, 800)]
    [InlineData(390, 844)]
    public async Task At_night_all_can_be_read(int width, int height)
    {
        var page = await Kitchen("Petra", width, height);
        await page.Locator("#screen summary").ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Night", Exact = true }).ClickAsync();
        await page.Locator("#screen summary").ClickAsync();
        await Expect(page.Locator("#kitchen.night")).ToBeVisibleAsync();
        await page.Picture($"kitchen-night-{width}");
        await PagesTests.IsWhole(page);
        await Close(page);
    }

    /// <summary>WCAG 2.2, 1.4.4 and 1.4.10: at twice the size (a window half as wide for the page) nothing is lost and nothing goes sideways.</summary>
    [Theory]
    [InlineData("/kitchen?for=all")]
    [InlineData("/order")]
    [InlineData("/cakes")]
    [InlineData("/cakes/405")]
    [InlineData("/week")]
    public async Task At_twice_the_size_nothing_goes_sideways(string path)
    {
        var page = await open.Shop.Screen(640, 400);
        await page.IAm("Petra");
        await page.GotoAsync(path);
        await (path.StartsWith("/kitchen", StringComparison.Ordinal) ? Expect(page.Locator("#board")).ToBeVisibleAsync() : page.UntilAlive());
        await page.Picture($"twice{path.Replace('/', '-').Replace("?for=all", "", StringComparison.Ordinal)}");
        await PagesTests.IsWhole(page);
        if (path.StartsWith("/kitchen", StringComparison.Ordinal))
        {
            await page.Locator(".band-done").First.ScrollIntoViewIfNeededAsync();
            await Expect(page.Locator(".band-done").First).ToBeInViewportAsync(new() { Ratio = 1 });
        }

        await Close(page);
    }

    /// <summary>Moves the clock on, nobody ticking, until somebody is asked; returns who.</summary>
    private async Task<string> MoveToAQuestion()
    {
        var ringer = open.Shop.Services.GetRequiredService<Ringer>();
        for (var quarter = 0; quarter < 60; quarter++)
        {
            var now = ringer.Look();
            var view = Book.State is { Week: { } week, Wall: { } wall } state
                ? Domain.Reminders.WorkList.Of(week, wall, state.Ticks, now.Now, state.NotDone).FirstOrDefault(p => p.AtHand is { Doubts.Count: > 0 } a && a.Start - now.Now < Duration.FromMinutes(60))
                : null;
            if (view is not null && now.Ringing.Count == 0)
            {
                return view.Person;
            }

            foreach (var ring in now.Ringing)
            {
                await Book.Enter(new Book.Entries.AnswerRing(Guid.NewGuid(), "petra", "wall", ring.Id, Domain.Reminders.RingAnswerKind.Done, ""), TestContext.Current.CancellationToken);
            }

            open.Shop.Clock.MoveTo(open.Shop.Clock.GetCurrentInstant() + Duration.FromMinutes(15));
        }

        throw new InvalidOperationException("Nobody is asked in fifteen hours.");
    }

    private async Task<IPage> Kitchen(string name, int width = 1280, int height = 800, string whose = "all")
    {
        var page = await open.Shop.Screen(width, height, touch: true);
        await page.IAm(name);
        await page.GotoAsync($"/kitchen?for={whose}");
        await Expect(page.Locator("#board")).ToBeVisibleAsync();
        await Quiet(page);
        return page;
    }

    /// <summary>Whatever rings by the hour that another test left behind is answered: it lies over the list.</summary>
    private static async Task Quiet(IPage page)
    {
        var done = page.Locator("[role=alertdialog] [data-kind=Done]");
        for (var i = 0; i < 20 && await done.CountAsync() > 0; i++)
        {
            var ids = await page.Locator("[role=alertdialog]").GetAttributeAsync("data-ids");
            await done.First.ClickAsync();
            await Expect(page.Locator($"[role=alertdialog][data-ids='{ids}']")).ToHaveCountAsync(0);
        }
    }

    /// <summary>The clock of the screen is that of the shop: a kept tick says when it was done.</summary>
    private Task TellTheTime(IPage page) => page.Clock.SetFixedTimeAsync(open.Shop.Clock.GetUtcNow().UtcDateTime);

    /// <summary>Taps the first Done and returns its steps, in one go: the board may be drawn again at any moment.</summary>
    private static async Task<string[]> TapTheFirst(IPage page) => (await page.Locator(".band-done").First
        .EvaluateAsync<string>("button => { const steps = button.dataset.steps; button.click(); return steps; }")).Split(' ');

    private static async Task Close(params IPage[] pages)
    {
        foreach (var page in pages)
        {
            await page.Context.CloseAsync();
        }
    }
}
