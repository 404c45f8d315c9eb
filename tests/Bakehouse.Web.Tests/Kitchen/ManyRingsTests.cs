namespace Bakehouse.Web.Tests.Kitchen;

using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Text.RegularExpressions;
using Bakehouse.Book.Entries;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Reminders;
using Bakehouse.Domain.Shops;
using Bakehouse.Testing;
using Bakehouse.Web.Bell;
using NodaTime;

/// <summary>
/// Everything that a full shop has open comes due at one look of the bell, as after weeks without power: 500 rings at full size, on twelve
/// screens. App, book on disk, planner, bell and events are the real ones; the screens listen without a browser.
/// </summary>
[Collection(nameof(ManyRingsTests))]
public sealed partial class ManyRingsTests(ITestOutputHelper output)
{
    private const int Screens = 12;

    // Seconds of processor time from the due moment until the last of twelve screens has drawn it.
    private const double MostSeconds = 2;

    private static readonly string[] Whose = ["all", "petra", "wren", "dov"];
    private static readonly int Most = Seeds.Whole ? 500 : 36;
    private readonly MovableTime time = new(KitchenShop.Start);

    [Fact]
    public async Task All_that_comes_due_at_once_comes_up_once_on_each_of_twelve_screens()
    {
        await using var app = new KitchenShop(time, KitchenShop.Folder());
        await Fill(app);
        var wanted = Due(app);
        var told = new ConcurrentDictionary<(int Screen, string Ring), int>();
        var near = Enumerable.Range(0, Screens).Select(i => new Ear(app.Ringer, ring => told.AddOrUpdate((i, ring), 1, (_, n) => n + 1))).ToList();
        var screens = await Task.WhenAll(Enumerable.Range(0, Screens).Select(async i => new Shown(await Screen.Open(app.At("petra"), Whose[i % Whose.Length]))));
        var (began, watch) = (Processor(), Stopwatch.StartNew());
        time.MoveTo(app.Ringer.State.Open.Max(r => r.Due));
        await Task.WhenAll(screens.Select(s => s.Until(ids => ids.Count > 0)));
        var (seconds, worked) = (watch.Elapsed.TotalSeconds, Processor() - began);

        var ringing = app.Ringer.State.Ringing;
        Assert.Empty(wanted.Except(ringing.SelectMany(r => r.Steps)));
        Assert.Equal(ringing.Count * Screens, told.Count);
        Assert.All(screens, s => Assert.Equal(ringing.Count, s.Count));
        await AnswerAll(app, screens);
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{ringing.Count} rings of {app.Book.State.Orders.Count} cakes at once on {Screens} screens: drawn on the last after {seconds:0.00} s, {worked:0.00} s of processor time; all answered and gone after {watch.Elapsed.TotalSeconds:0} s, {Processor() - began:0} s of processor time"));

        Assert.All(told.Values, times => Assert.Equal(1, times));
        Assert.All(screens, s => Assert.Equal(ringing.Select(r => r.Id).Order(StringComparer.Ordinal), s.CameUp.Order(StringComparer.Ordinal)));
        Assert.InRange(worked, 0, MostSeconds);
        near.ForEach(e => e.Dispose());
        await Task.WhenAll(screens.Select(s => s.DisposeAsync().AsTask()));
    }

    /// <summary>Orders for every day that the shop is open, until so many rings are to come.</summary>
    private static async Task Fill(KitchenShop app)
    {
        var cancel = TestContext.Current.CancellationToken;
        var shop = SampleBakery.Shop with { Version = 0, IsSample = false, Settings = SampleBakery.Shop.Settings with { PlanDays = 60 } };
        Assert.Equal(AnswerKind.Accepted, (await app.Book.Enter(new WriteShop(Guid.NewGuid(), "", "test", shop), cancel)).Kind);
        var days = Enumerable.Range(4, 55).Select(new LocalDate(2026, 10, 14).PlusDays).Where(d => shop.HoursOn(d).Count > 0).ToList();
        for (var i = 0; app.Ringer.Look().Open.Count(r => r.ComesByItself) < Most; i++)
        {
            var order = Testing.Cakes.Good(i + 1, i % 3 == 0 ? [8] : [8, 6]);
            order = order with { Handover = order.Handover with { At = days[i % days.Count] + new LocalTime(11 + (i / days.Count), 0) } };
            var answer = await app.Book.Enter(new WriteOrder(Guid.NewGuid(), "ines", "test", order), cancel);
            Assert.True(answer.Kind == AnswerKind.Accepted || i < 300, $"No room for {Most} rings: {answer.Message}");
        }
    }

    private static IEnumerable<string> Due(KitchenShop app) => app.Book.State is var book
        ? DueSteps.Of(book.Week, book.Wall, book.Orders, book.Ticks, Instant.MaxValue)
        : [];

    /// <summary>A handful at a time, and only what every screen has drawn.</summary>
    private static async Task AnswerAll(KitchenShop app, IReadOnlyList<Shown> screens)
    {
        using var hand = app.At("petra");
        while (screens[0].Now.Count > 0)
        {
            var shown = screens[0].Now.ToList();
            await Task.WhenAll(screens.Select(s => s.Until(ids => ids.IsSupersetOf(shown))));
            foreach (var ring in shown)
            {
                using var said = await KitchenShop.Answer(hand, ring, "Cannot", "No power");
                Assert.Equal(HttpStatusCode.OK, said.StatusCode);
            }

            await Task.WhenAll(screens.Select(s => s.Until(ids => !ids.Overlaps(shown))));
        }

        Assert.Empty(app.Ringer.State.Ringing);
    }

    private static double Processor()
    {
        using var here = Process.GetCurrentProcess();
        return here.TotalProcessorTime.TotalSeconds;
    }

    /// <summary>Somebody who hears the bell itself, and calls out each ring that did not ring a moment before.</summary>
    private sealed class Ear : IDisposable
    {
        private readonly Ringer ringer;
        private readonly Action<string> hear;
        private HashSet<string> before = [];

        public Ear(Ringer ringer, Action<string> hear)
        {
            (this.ringer, this.hear) = (ringer, hear);
            ringer.Changed += Listen;
        }

        public void Dispose() => ringer.Changed -= Listen;

        private void Listen(WhatRings state)
        {
            lock (hear)
            {
                var now = state.Ringing.Select(r => r.Id).ToHashSet(StringComparer.Ordinal);
                now.Except(before).ToList().ForEach(hear);
                before = now;
            }
        }
    }

    /// <summary>What one screen shows: the ids that its page gives the sound, and each time that one came up anew.</summary>
    private sealed partial class Shown(Screen screen) : IAsyncDisposable
    {
        public HashSet<string> Now { get; private set; } = [];

        /// <summary>Every ring that came up, as often as it did.</summary>
        public List<string> CameUp { get; } = [];

        /// <summary>How many the screen says there are.</summary>
        public int Count { get; private set; }

        public async Task Until(Func<HashSet<string>, bool> wanted)
        {
            while (!wanted(Now))
            {
                var (_, rings) = await screen.Board().WaitAsync(TimeSpan.FromMinutes(3), TestContext.Current.CancellationToken);
                var ids = Ids().Match(rings) is { Success: true } found ? found.Groups[1].Value.Split(' ').ToHashSet(StringComparer.Ordinal) : [];
                CameUp.AddRange(ids.Except(Now));
                Now = ids;
                Count = Waiting().Match(rings) is { Success: true } all ? int.Parse(all.Groups[1].Value, CultureInfo.InvariantCulture) : ids.Count;
            }
        }

        public ValueTask DisposeAsync() => screen.DisposeAsync();

        [GeneratedRegex("data-ids=\"([^\"]+)\"")]
        private static partial Regex Ids();

        [GeneratedRegex("(\\d+) waiting")]
        private static partial Regex Waiting();
    }
}

/// <summary>Alone: what others do meanwhile would count as its processor time.</summary>
[CollectionDefinition(nameof(ManyRingsTests), DisableParallelization = true)]
public sealed class ManyRingsAlone;
