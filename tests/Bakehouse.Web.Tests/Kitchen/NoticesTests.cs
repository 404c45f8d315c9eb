namespace Bakehouse.Web.Tests.Kitchen;

using System.Net;
using Bakehouse.Domain.Reminders;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.Bell;
using NodaTime;

/// <summary>What the screens say about the bell: sound, clock, night, and several late at once.</summary>
public sealed class NoticesTests
{
    /// <summary>Somebody works at 07:30 on a Wednesday; at 20:00 nobody does.</summary>
    [Fact]
    public async Task No_screen_with_sound_for_two_minutes_is_told_to_counter_and_owner_in_working_hours()
    {
        var time = new SteppedTime(KitchenShop.Start);
        await using var app = await KitchenShop.Sample(time);
        Assert.DoesNotContain(NoticeKind.NobodyHears, Said(app, Role.Owner));
        time.Advance(TimeSpan.FromMinutes(2));
        Assert.Contains(NoticeKind.NobodyHears, Said(app, Role.Owner));
        Assert.Contains(NoticeKind.NobodyHears, Said(app, Role.Counter));
        Assert.DoesNotContain(NoticeKind.NobodyHears, Said(app, Role.Baker));
        Assert.DoesNotContain(NoticeKind.NobodyHears, Said(app, null));
        Assert.Equal(HttpStatusCode.NoContent, await Hears(app, "petra"));
        Assert.DoesNotContain(NoticeKind.NobodyHears, Said(app, Role.Owner));
        time.Advance(TimeSpan.FromSeconds(119));
        Assert.DoesNotContain(NoticeKind.NobodyHears, Said(app, Role.Owner));
        time.Advance(TimeSpan.FromSeconds(1));
        Assert.Contains(NoticeKind.NobodyHears, Said(app, Role.Owner));
        time.MoveTo(KitchenShop.Start + Duration.FromHours(12.5));
        Assert.DoesNotContain(NoticeKind.NobodyHears, Said(app, Role.Owner));
    }

    [Fact]
    public async Task A_stranger_or_another_site_does_not_count_as_a_screen()
    {
        await using var app = await KitchenShop.Sample(new SteppedTime(KitchenShop.Start));
        Assert.Equal(HttpStatusCode.Forbidden, await Hears(app, ""));
        var foreign = app.At("petra");
        foreign.DefaultRequestHeaders.Add("Sec-Fetch-Site", "cross-site");
        Assert.Equal(HttpStatusCode.Forbidden, (await foreign.PostAsync("/kitchen/hears", null, TestContext.Current.CancellationToken)).StatusCode);
    }

    [Fact]
    public async Task A_clock_that_was_moved_is_told_on_every_screen_and_one_behind_the_book_too()
    {
        var time = new SteppedTime(KitchenShop.Start);
        await using var app = await KitchenShop.Sample(time);
        await using var screen = await Screen.Open(app.At("petra"));
        time.Jump(Duration.FromHours(-1));
        app.Ringer.Look();
        var said = Notices.Of(app.Ringer.State, app.Book.State.Shop!, null);
        Assert.Equal([NoticeKind.ClockBehind, NoticeKind.ClockMoved], said.Select(n => n.Kind));
        Assert.Contains("shows Wed 14 Oct, 06:30, but the book was written in at Wed 14 Oct, 07:30", said[0].Words, StringComparison.Ordinal);
        Assert.Contains("moved back by 1 h to 06:30", said[1].Words, StringComparison.Ordinal);
        Assert.Contains("moved back by 1 h", await app.At("petra").GetStringAsync("/kitchen", TestContext.Current.CancellationToken), StringComparison.Ordinal);
        app.Ringer.TrustClock();
        Assert.Equal([NoticeKind.ClockBehind], Said(app, null));
    }

    [Fact]
    public async Task At_nine_in_the_evening_the_first_ring_of_the_morning_is_told()
    {
        var time = new SteppedTime(KitchenShop.Start);
        await using var app = await KitchenShop.Sample(time);
        var first = app.Ringer.State.Open.First(r => r.Due > KitchenShop.Start + Duration.FromHours(14) && r.ComesByItself);
        time.MoveTo(KitchenShop.Start + Duration.FromHours(13.5));
        var told = Notices.Of(app.Ringer.Look(), app.Book.State.Shop!, Role.Baker).SingleOrDefault(n => n.Kind == NoticeKind.Night);
        var near = first.Due - app.Ringer.State.Now <= Duration.FromHours(12);
        Assert.Equal(near, told is not null);
        if (told is not null)
        {
            Assert.Matches("^Tomorrow [0-9]{2}:[0-9]{2} the first ring: .+ This machine must be awake then\\.$", told.Words);
        }
    }

    /// <summary>Three hours without power: one list in the order of their due, each with how late it is and what that means.</summary>
    [Fact]
    public async Task Several_late_at_once_stand_in_one_list_and_say_what_the_delay_means()
    {
        var time = new SteppedTime(KitchenShop.Start);
        var folder = KitchenShop.Folder();
        Instant last;
        await using (var before = await KitchenShop.Sample(time, folder))
        {
            last = before.Ringer.State.Open[5].Due;
        }

        await using var app = new KitchenShop(new SteppedTime(last + Duration.FromMinutes(25)), folder);
        var due = app.Ringer.Look().Ringing;
        Assert.InRange(due.Count, 6, RingViewMost);
        var page = await app.At("petra").GetStringAsync("/kitchen", TestContext.Current.CancellationToken);
        Assert.Contains($"{due.Count} waiting, late ones first", page, StringComparison.Ordinal);
        var places = due.Select(r => page.IndexOf($"<li data-ring=\"{r.Id}\" data-late=\"yes\"", StringComparison.Ordinal)).ToList();
        Assert.DoesNotContain(-1, places);
        Assert.Equal(places.Order(), places);
        Assert.Equal(due.Count, page.Split("ring-delay").Length - 1);
        Assert.Equal(due.Count, page.Split("class=\"ring-late\"").Length - 1);
    }

    [Fact]
    public async Task The_owner_is_called_when_nobody_answers_and_the_state_changes_with_each_call()
    {
        var time = new SteppedTime(KitchenShop.Start);
        await using var app = await KitchenShop.Sample(time);
        var ring = app.Next(RingKind.OvenOut);
        time.MoveTo(ring.Due + Duration.FromMinutes(5) - Duration.FromSeconds(1));
        var before = app.Ringer.Look();
        Assert.Equal(0, before.CallsFor(ring));
        time.Advance(TimeSpan.FromSeconds(1));
        var after = app.Ringer.Look();
        Assert.Equal(1, after.CallsFor(ring));
        Assert.False(before.LooksLike(after));
    }

    private const int RingViewMost = TheKitchen.RingView.Most;

    private static async Task<HttpStatusCode> Hears(KitchenShop app, string person) =>
        (await app.At(person).PostAsync("/kitchen/hears", null, TestContext.Current.CancellationToken)).StatusCode;

    private static IEnumerable<NoticeKind> Said(KitchenShop app, Role? role) => Notices.Of(app.Ringer.Look(), app.Book.State.Shop!, role).Select(n => n.Kind);
}
