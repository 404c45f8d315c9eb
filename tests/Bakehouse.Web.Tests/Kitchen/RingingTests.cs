namespace Bakehouse.Web.Tests.Kitchen;

using System.Net;
using System.Net.Http.Json;
using Bakehouse.Book.Entries;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Reminders;
using Bakehouse.Testing;
using Bakehouse.Web.TheKitchen;
using Hangfire;
using Hangfire.Common;
using Hangfire.States;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;
using NodaTime;

/// <summary>The bell in the whole app: shown in time, answered once, withdrawn, late after a night without power.</summary>
public sealed class RingingTests
{
    private static readonly TimeSpan InTime = TimeSpan.FromSeconds(2);

    /// <summary>With Hangfire and without: it is only a rope.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task A_ring_shows_on_two_screens_within_two_seconds_and_goes_from_both_when_one_answers(bool rope)
    {
        var time = new MovableTime(KitchenShop.Start);
        await using var app = await KitchenShop.Sample(time, rope: rope);
        var ring = app.Next();
        await using var wall = await Screen.Open(app.At("petra"));
        await using var office = await Screen.Open(app.At("ines"));
        await wall.Board();
        time.MoveTo(ring.Due);
        var shown = await wall.Until((_, rings) => rings.Contains($"data-ring=\"{ring.Id}\"", StringComparison.Ordinal));
        Assert.InRange(shown.After, TimeSpan.Zero, InTime);
        await office.Until((_, rings) => rings.Contains(ring.Place, StringComparison.Ordinal));

        var answered = KitchenShop.Answer(app.At("petra"), ring.Id);
        var gone = await office.Until((board, rings) => !rings.Contains(ring.Id, StringComparison.Ordinal) && board.Contains("Done by Petra", StringComparison.Ordinal));
        Assert.Equal(HttpStatusCode.OK, (await answered).StatusCode);
        Assert.InRange(gone.After, TimeSpan.Zero, InTime);
        await wall.Until((_, rings) => !rings.Contains(ring.Id, StringComparison.Ordinal));
        TestContext.Current.TestOutputHelper?.WriteLine($"rope {rope}: due to screen {shown.After.TotalMilliseconds:0} ms, answer to other screen {gone.After.TotalMilliseconds:0} ms");
    }

    [Fact]
    public async Task Of_eight_answers_at_once_one_is_accepted_and_the_others_hear_who_it_was()
    {
        var time = new SteppedTime(KitchenShop.Start);
        await using var app = await KitchenShop.Sample(time);
        var ring = app.Next(RingKind.OvenOut);
        time.MoveTo(ring.Due);
        string[] people = ["petra", "ines", "dov", "wren"];
        var screens = Enumerable.Range(0, 8).Select(i => app.At(people[i % 4])).ToList();
        var answers = await Task.WhenAll(screens.Select(s => KitchenShop.Answer(s, ring.Id)));
        Assert.Single(answers, a => a.StatusCode == HttpStatusCode.OK);
        Assert.Equal(7, answers.Count(a => a.StatusCode == HttpStatusCode.Conflict));
        foreach (var late in answers.Where(a => a.StatusCode == HttpStatusCode.Conflict))
        {
            Assert.Contains(" did it at ", (await late.Content.ReadFromJsonAsync<TapAnswer>(TestContext.Current.CancellationToken))!.Message, StringComparison.Ordinal);
        }

        Assert.Single(app.Book.State.Answers, a => a.Ring == ring.Id);
    }

    [Fact]
    public async Task An_order_that_is_cancelled_takes_its_ring_along()
    {
        var time = new MovableTime(KitchenShop.Start);
        await using var app = await KitchenShop.Sample(time);
        var ring = app.Next(RingKind.LeaveFridge);
        await using var wall = await Screen.Open(app.At("wren"));
        time.MoveTo(ring.Due);
        await wall.Until((_, rings) => rings.Contains(ring.Id, StringComparison.Ordinal) || app.Ringer.State.Ringing.Any(r => r.Id == ring.Id));
        var order = app.Book.State.Orders.Single(o => o.Id == StepKey.Parse(ring.Step)!.Value.Order);
        var answer = await app.Book.Enter(new MoveStage(Guid.NewGuid(), "ines", "test", order.Id, order.Version, Stage.Cancelled), TestContext.Current.CancellationToken);
        Assert.Equal(AnswerKind.Accepted, answer.Kind);
        var gone = await wall.Until((_, _) => app.Ringer.State.Ringing.All(r => r.Id != ring.Id));
        Assert.InRange(gone.After, TimeSpan.Zero, InTime);
        Assert.DoesNotContain(app.Ringer.Look().Open, r => r.Id == ring.Id);
        Assert.NotEqual(HttpStatusCode.OK, (await KitchenShop.Answer(app.At("wren"), ring.Id)).StatusCode);
    }

    [Fact]
    public async Task Due_while_the_app_was_off_it_is_shown_at_the_start_first_and_with_how_late()
    {
        var folder = KitchenShop.Folder();
        Ring ring;
        await using (var first = await KitchenShop.Sample(new SteppedTime(KitchenShop.Start), folder))
        {
            ring = first.Next();
        }

        await using var app = new KitchenShop(new SteppedTime(ring.Due + Duration.FromMinutes(25)), folder);
        var page = await app.At("petra").GetStringAsync("/kitchen", TestContext.Current.CancellationToken);
        var due = ring.Due.InZone(DateTimeZoneProviders.Tzdb["Europe/London"]).ToString("HH:mm", System.Globalization.CultureInfo.InvariantCulture);
        Assert.Contains($"due {due}, 25 min ago", page, StringComparison.Ordinal);
        Assert.Contains($"data-ring=\"{ring.Id}\" data-late=\"yes\"", page, StringComparison.Ordinal);
        Assert.Equal(app.Ringer.State.Ringing.Select(r => r.Due).Order(), app.Ringer.State.Ringing.Select(r => r.Due));
        Assert.Single(app.Ringer.State.Ringing, r => r.Id == ring.Id);
    }

    [Fact]
    public async Task Later_is_refused_where_there_is_no_slack_and_cannot_says_why()
    {
        var time = new SteppedTime(KitchenShop.Start);
        await using var app = await KitchenShop.Sample(time);
        var ring = app.Next(RingKind.OvenOut);
        time.MoveTo(ring.Due);
        var screen = app.At("petra");
        Assert.DoesNotContain("+10 min", await screen.GetStringAsync("/kitchen", TestContext.Current.CancellationToken), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await KitchenShop.Answer(screen, ring.Id, "Later")).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await KitchenShop.Answer(screen, ring.Id, "Cannot", "Too soft")).StatusCode);
        app.Ringer.Look();
        Assert.DoesNotContain(app.Ringer.State.Ringing, r => r.Id == ring.Id);
    }

    [Fact]
    public async Task The_rope_holds_a_job_for_each_ring_of_two_days_and_a_sweep()
    {
        var time = new MovableTime(KitchenShop.Start);
        await using var app = await KitchenShop.Sample(time, rope: true);
        var storage = app.Services.GetRequiredService<JobStorage>();
        var wanted = app.Ringer.Look().Open.Count(r => r.Due > KitchenShop.Start + Duration.FromMinutes(1) && r.Due < KitchenShop.Start + Duration.FromHours(47));
        Assert.NotEqual(0, wanted);
        for (var tries = 0; storage.GetMonitoringApi().ScheduledCount() < wanted && tries < 100; tries++)
        {
            await Task.Delay(100, TestContext.Current.CancellationToken);
        }

        Assert.InRange(storage.GetMonitoringApi().ScheduledCount(), wanted, app.Ringer.State.Open.Count);
        Assert.Contains("sweep", storage.GetConnection().GetAllItemsFromSet("recurring-jobs"));
    }

    /// <summary>Hangfire that takes no job: the loop rings, and whoever listens to the bell hears it.</summary>
    [Fact]
    public async Task A_rope_that_tears_takes_no_ring_along()
    {
        var time = new MovableTime(KitchenShop.Start);
        await using var app = await KitchenShop.Sample(time, rope: true, also: builder => builder.ConfigureTestServices(services =>
            services.Replace(ServiceDescriptor.Singleton<IBackgroundJobClient>(new TornRope()))));
        var ring = app.Next();
        await using var wall = await Screen.Open(app.At("petra"));
        await wall.Board();
        time.MoveTo(ring.Due);
        await wall.Until((_, rings) => rings.Contains($"data-ring=\"{ring.Id}\"", StringComparison.Ordinal));
    }

    private sealed class TornRope : IBackgroundJobClient
    {
        public string Create(Job job, IState state) => throw new BackgroundJobClientException("Torn.", new ObjectDisposedException("rope"));

        public bool ChangeState(string jobId, IState state, string expectedState) => false;
    }
}
