namespace Bakehouse.Web.Tests.Kitchen;

using Bakehouse.Book;
using Bakehouse.Book.Entries;
using Bakehouse.Domain.Orders;
using Bakehouse.Planner.Quick;
using Bakehouse.Testing;
using Bakehouse.Web.Bell;
using Microsoft.Extensions.Logging.Abstractions;
using NodaTime;

/// <summary>Clocks that jump: nothing that was due is un-rung, nothing is lost or doubled, and it is said.</summary>
public sealed class ClockWatchTests(ITestOutputHelper output)
{
    private static readonly Instant Start = KitchenShop.Start;

    private static readonly Duration[] Jumps =
    [
        Duration.FromMinutes(1), Duration.FromMinutes(-1), Duration.FromHours(1), Duration.FromHours(-1), Duration.FromDays(1), Duration.FromDays(-1),
        Duration.FromDays(3652), Instant.FromUnixTimeTicks(0) - Start,
    ];

    private static int Cases => Seeds.Whole ? 20_000 : 500;

    [Fact]
    public void Five_seconds_are_no_jump_and_more_is_one_that_is_told_for_ten_minutes()
    {
        var time = new SteppedTime(Start);
        var watch = new ClockWatch(time, time);
        time.Jump(Duration.FromSeconds(5));
        Assert.Null(watch.Look().Moved);
        time.Jump(Duration.FromSeconds(-6));
        Assert.Equal(Duration.FromSeconds(-6), watch.Look().Moved!.By);
        time.Advance(TimeSpan.FromMinutes(10) - TimeSpan.FromSeconds(1));
        Assert.NotNull(watch.Look().Moved);
        time.Advance(TimeSpan.FromSeconds(1));
        Assert.Null(watch.Look().Moved);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    public void Set_back_time_goes_on_as_it_passed_and_set_forward_as_the_clock_shows(int jump)
    {
        var by = Jumps[jump];
        var time = new SteppedTime(Start);
        var watch = new ClockWatch(time, time);
        time.Advance(TimeSpan.FromMinutes(3));
        time.Jump(by);
        time.Advance(TimeSpan.FromMinutes(4));
        var look = watch.Look();
        Assert.Equal(Start + Duration.FromMinutes(7) + by, look.Wall);
        Assert.Equal(Start + Duration.FromMinutes(7) + Duration.Max(by, Duration.Zero), look.Reached);
        time.Jump(-by);
        Assert.Equal((Start + Duration.FromMinutes(7), Start + Duration.FromMinutes(7)), (watch.Look().Wall, watch.Look().Reached));
    }

    /// <summary>A clock that was wrong when the app was opened: the owner says that it is right now.</summary>
    [Fact]
    public void Trusted_the_clock_alone_counts_again()
    {
        var time = new SteppedTime(Start + Duration.FromDays(365));
        var watch = new ClockWatch(time, time);
        time.Jump(Duration.FromDays(-365));
        Assert.Equal(Start + Duration.FromDays(365), watch.Look().Reached);
        watch.Trust();
        Assert.Equal(new Moment(Start, Start, null), watch.Look());
    }

    /// <summary>
    /// Random jumps while the sample bakery rings: at each look every ring that has come due by the time that passed rings, once, and the
    /// answers keep their order. What is due is read from the plan here, not asked of the bell.
    /// </summary>
    [Fact]
    public async Task Five_hundred_jumps_lose_and_double_nothing()
    {
        var time = new SteppedTime(Start);
        using var book = OrderBook.Open(Path.Combine(KitchenShop.Folder(), "book.db"), new QuickPlanner(), time);
        await book.Enter(new OpenSample(Guid.NewGuid(), "", "test"), TestContext.Current.CancellationToken);
        using var ringer = new Ringer(book, new ClockWatch(time, time), new Ears(time), time, NullLogger<Ringer>.Instance);
        var seed = Seeds.Of();
        output.WriteLine($"seed {seed}, {Cases} jumps");
        var dice = new Random(seed);
        var answered = new List<string>();
        var passed = Start;
        for (var i = 0; i < Cases; i++)
        {
            var (by, minutes) = (Jumps[dice.Next(Jumps.Length)], dice.Next(1, 40));
            time.Jump(by);
            Holds(ringer.Look(), book, passed);
            time.Advance(TimeSpan.FromMinutes(minutes));
            passed += Duration.FromMinutes(minutes);
            Holds(ringer.Look(), book, passed);
            time.Jump(-by);
            var state = ringer.Look();
            Holds(state, book, passed);
            if (state.Ringing.FirstOrDefault(r => r.Due <= passed) is { } ring)
            {
                answered.Add(ring.Id);
                Assert.Equal(AnswerKind.Accepted, (await book.Enter(new AnswerRing(Guid.NewGuid(), "petra", "wall", ring.Id, Domain.Reminders.RingAnswerKind.Done, ""), TestContext.Current.CancellationToken)).Kind);
            }

            // Answers of cakes that were handed over are in the book, but not in what stands.
            var planned = book.State.Orders.Where(o => Stages.IsPlanned(o.Stage)).Select(o => o.Id.ToString("N")).ToList();
            Assert.Equal(answered.Where(a => planned.Exists(o => a.Contains(o, StringComparison.Ordinal))), book.State.Answers.Select(a => a.Ring));
        }

        Assert.Distinct(answered);
        Assert.NotEmpty(answered);
        output.WriteLine($"{answered.Count} rings answered");
    }

    private static void Holds(WhatRings state, OrderBook book, Instant passed)
    {
        var ringing = state.Ringing.Select(r => r.Id).ToList();
        Assert.Distinct(ringing);
        var due = DueSteps.Of(book.State.Week, book.State.Wall, book.State.Orders, book.State.Ticks, passed);
        Assert.Empty(due.Except(state.Ringing.SelectMany(r => r.Steps)));
        Assert.Empty(state.Ringing.SelectMany(r => r.Steps).Except(DueSteps.Of(book.State.Week, book.State.Wall, book.State.Orders, book.State.Ticks, Instant.Max(passed, state.Now))));
    }
}
