namespace Bakehouse.Web.Tests.Kitchen;

using System.Diagnostics;
using System.Net;
using System.Net.Http.Json;
using System.Text;
using System.Text.RegularExpressions;
using Bakehouse.Testing;

/// <summary>Taps over HTTP, and what the screens hear.</summary>
public sealed partial class TapTests
{
    [Fact]
    public async Task The_events_have_the_form_of_the_standard_and_a_beat_keeps_the_line_open()
    {
        var time = new SteppedTime(KitchenShop.Start);
        await using var app = await KitchenShop.Sample(time);
        await using var screen = await Screen.Open(app.At("petra"));
        Assert.Equal("text/event-stream", screen.ContentType); // WHATWG HTML, 9.2 Server-sent events
        var first = await screen.Next();
        Assert.Equal("event: board", first[0]);
        Assert.StartsWith("data: {", first[1], StringComparison.Ordinal);
        var next = screen.Next();
        for (var seconds = 0; !next.IsCompleted && seconds < 30; seconds += 5)
        {
            await Task.Delay(100, TestContext.Current.CancellationToken);
            time.Advance(TimeSpan.FromSeconds(5));
        }

        Assert.Equal("event: beat", (await next)[0]);
    }

    [Fact]
    public async Task The_same_tap_twice_is_one_tick_and_undo_takes_it_back()
    {
        await using var app = await KitchenShop.Sample(new SteppedTime(KitchenShop.Start));
        var screen = app.At("petra");
        var (steps, by) = await AtHand(screen);
        var id = Guid.NewGuid();
        Assert.Equal(HttpStatusCode.OK, (await KitchenShop.Tick(screen, steps, by, id)).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await KitchenShop.Tick(screen, steps, by, id)).StatusCode);
        Assert.All(steps, s => Assert.Single(app.Book.State.Ticks, t => t.Step == s));
        Assert.Equal(HttpStatusCode.Conflict, (await KitchenShop.Tick(screen, steps, by)).StatusCode);
        var page = await screen.GetStringAsync("/kitchen?for=" + by, TestContext.Current.CancellationToken);
        Assert.Contains("data-do=\"undo\"", page, StringComparison.Ordinal);
        Assert.Contains(", done 07:30, ", page, StringComparison.Ordinal);
        var undone = await screen.PostAsJsonAsync("/kitchen/commands", new { id = Guid.NewGuid(), @do = "undo", steps }, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, undone.StatusCode);
        Assert.DoesNotContain(app.Book.State.Ticks, t => steps.Contains(t.Step));
        Assert.Equal(steps, (await AtHand(screen)).Steps);
    }

    /// <summary>Until half past ten nobody ticks anything: what was mixed is asked about before the first step that may not be guessed.</summary>
    [Fact]
    public async Task Yes_ticks_what_was_assumed_as_planned_and_not_yet_takes_it_back()
    {
        var time = new SteppedTime(KitchenShop.Start);
        await using var app = await KitchenShop.Sample(time);
        time.MoveTo(KitchenShop.Start + NodaTime.Duration.FromHours(6));
        app.Ringer.Look();
        var state = app.Book.State;
        var assumed = new Domain.Reminders.AssumedNow(state.Week!, state.Wall!, state.Ticks, app.Ringer.State.Now, state.NotDone).Steps.Take(2).ToList();
        var screen = app.At("petra");
        Assert.Equal(HttpStatusCode.OK, (await Tap(screen, "confirm", assumed[0])).StatusCode);
        var tick = Assert.Single(app.Book.State.Ticks, t => t.Step == assumed[0]);
        Assert.True(tick.Done < app.Ringer.State.Now);
        Assert.Equal(HttpStatusCode.OK, (await Tap(screen, "undo", assumed[1])).StatusCode);
        Assert.Contains(assumed[1], app.Book.State.NotDone.Keys);
        Assert.DoesNotContain(app.Book.State.Week!.Fixed, f => f.Step == assumed[1] && f.Why == Domain.Planning.Assumed.Why);
    }

    private static Task<HttpResponseMessage> Tap(HttpClient screen, string what, string step) =>
        screen.PostAsJsonAsync("/kitchen/commands", new { id = Guid.NewGuid(), @do = what, steps = new[] { step }, by = "petra" }, TestContext.Current.CancellationToken);

    /// <summary>Kept for twenty minutes by a screen that is an hour ahead or behind, or years: the minutes between count. By elapsed time, worked out by hand.</summary>
    [Theory]
    [InlineData("2026-10-14T07:10:00Z", "2026-10-14T07:30:00Z")]
    [InlineData("2026-10-14T05:10:00Z", "2026-10-14T05:30:00Z")]
    [InlineData("1970-01-01T00:00:00.250Z", "1970-01-01T00:20:00.250Z")]
    public async Task A_kept_tick_counts_from_when_it_was_tapped_whatever_the_clock_of_its_screen_shows(string done, string now)
    {
        await using var app = await KitchenShop.Sample(new SteppedTime(KitchenShop.Start));
        var screen = app.At("petra");
        var (steps, by) = await AtHand(screen);
        Assert.Equal(HttpStatusCode.OK, (await Kept(screen, steps, by, done, now)).StatusCode);
        Assert.All(steps, s => Assert.Equal(KitchenShop.Start - NodaTime.Duration.FromMinutes(20), app.Book.State.Ticks.Single(t => t.Step == s).Done));
    }

    [Fact]
    public async Task A_kept_tick_of_a_clock_that_was_set_back_meanwhile_counts_as_of_now_and_says_so()
    {
        await using var app = await KitchenShop.Sample(new SteppedTime(KitchenShop.Start));
        var screen = app.At("petra");
        var (steps, by) = await AtHand(screen);
        var answer = await Kept(screen, steps, by, "2026-10-14T07:25:00Z", "2026-10-14T06:30:00Z");
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Contains("Written as done now", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
        Assert.All(steps, s => Assert.Equal(KitchenShop.Start, app.Book.State.Ticks.Single(t => t.Step == s).Done));
    }

    private static Task<HttpResponseMessage> Kept(HttpClient screen, string[] steps, string by, string done, string now) =>
        screen.PostAsJsonAsync("/kitchen/commands", new { id = Guid.NewGuid(), @do = "tick", steps, by, done, now }, TestContext.Current.CancellationToken);

    [Fact]
    public async Task A_tap_from_elsewhere_or_from_nobody_is_not_taken()
    {
        await using var app = await KitchenShop.Sample(new SteppedTime(KitchenShop.Start));
        var (steps, by) = await AtHand(app.At("petra"));
        Assert.Equal(HttpStatusCode.Forbidden, (await KitchenShop.Tick(app.At(""), steps, by)).StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, (await KitchenShop.Tick(app.At("sal"), steps, by)).StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, (await app.At("").GetAsync("/kitchen/events", TestContext.Current.CancellationToken)).StatusCode);
        var bare = app.At("petra");
        bare.DefaultRequestHeaders.Remove("X-Bakehouse");
        Assert.Equal(HttpStatusCode.Forbidden, (await KitchenShop.Tick(bare, steps, by)).StatusCode);
        var foreign = app.At("petra");
        foreign.DefaultRequestHeaders.Add("Origin", "http://elsewhere.example");
        Assert.Equal(HttpStatusCode.Forbidden, (await KitchenShop.Tick(foreign, steps, by)).StatusCode);
        var site = app.At("petra");
        site.DefaultRequestHeaders.Add("Sec-Fetch-Site", "cross-site");
        Assert.Equal(HttpStatusCode.Forbidden, (await KitchenShop.Tick(site, steps, by)).StatusCode);
        Assert.DoesNotContain(app.Book.State.Ticks, t => steps.Contains(t.Step));
    }

    [Theory]
    [InlineData("{")]
    [InlineData("null")]
    [InlineData("""{"id":"00000000-0000-0000-0000-000000000000","do":"tick","steps":["a"]}""")]
    [InlineData("""{"id":"7d444840-9dc0-11d1-b245-5ffdce74fad2","do":"sing"}""")]
    [InlineData("""{"id":"7d444840-9dc0-11d1-b245-5ffdce74fad2","do":"tick","steps":[]}""")]
    [InlineData("""{"id":"7d444840-9dc0-11d1-b245-5ffdce74fad2","do":"tick","steps":["a"],"done":"yesterday"}""")]
    [InlineData("""{"id":"7d444840-9dc0-11d1-b245-5ffdce74fad2","do":"tick","steps":["a"],"done":"2026-10-14T06:30:00Z","now":"later"}""")]
    [InlineData("""{"id":"7d444840-9dc0-11d1-b245-5ffdce74fad2","do":"answer","ring":"x","kind":"Maybe"}""")]
    public async Task A_tap_that_can_not_be_read_says_so(string body)
    {
        await using var app = await KitchenShop.Sample(new SteppedTime(KitchenShop.Start));
        using var content = new StringContent(body, Encoding.UTF8, "application/json");
        var answer = await app.At("petra").PostAsync("/kitchen/commands", content, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
    }

    /// <summary>The wish is under 300 ms; a shared machine may be slower, so the figure is printed and only a stall fails.</summary>
    [Fact]
    public async Task A_tick_is_a_new_work_list_at_once()
    {
        await using var app = await KitchenShop.Sample(new MovableTime(KitchenShop.Start));
        var client = app.At("petra");
        await using var screen = await Screen.Open(client);
        var board = (await screen.Board()).Board;
        var took = new List<double>();
        for (var i = 0; i < 7; i++)
        {
            var (steps, by) = AtHand(board);
            var clock = Stopwatch.StartNew();
            var sent = KitchenShop.Tick(client, steps, by);
            board = (await screen.Until((b, _) => !Done().Matches(b).SelectMany(m => m.Groups["steps"].Value.Split(' ')).Intersect(steps).Any())).Board;
            took.Add(clock.Elapsed.TotalMilliseconds);
            Assert.Equal(HttpStatusCode.OK, (await sent).StatusCode);
        }

        var warm = took.Skip(2).Order().ToList();
        TestContext.Current.TestOutputHelper?.WriteLine($"tick to new work list: median {warm[warm.Count / 2]:0} ms, most {warm[^1]:0} ms; {warm[warm.Count / 2] / FixedLoop():0.0} times a fixed loop");
        Assert.InRange(warm[warm.Count / 2], 0, 2000);
    }

    private static double FixedLoop()
    {
        var clock = Stopwatch.StartNew();
        var sum = 0UL;
        for (var i = 1UL; i < 50_000_000; i++)
        {
            sum = unchecked((sum * 6364136223846793005UL) + i);
        }

        return sum == 0 ? 1 : clock.Elapsed.TotalMilliseconds;
    }

    private static async Task<(string[] Steps, string By)> AtHand(HttpClient screen) =>
        AtHand(await screen.GetStringAsync("/kitchen", TestContext.Current.CancellationToken));

    private static (string[] Steps, string By) AtHand(string html)
    {
        var match = Done().Match(html);
        Assert.True(match.Success, "Nobody has a step to tick: " + html);
        return (match.Groups["steps"].Value.Split(' '), match.Groups["by"].Value);
    }

    [GeneratedRegex("data-do=\"tick\" data-by=\"(?<by>[a-z]+)\" data-steps=\"(?<steps>[^\"]+)\"", RegexOptions.None, 1000)]
    private static partial Regex Done();
}
