namespace Bakehouse.Web.Tests.BetterPlan;

using Bakehouse.Book.Reading;
using Bakehouse.Domain.Planning;
using Bakehouse.Planner.Solver;
using Bakehouse.Web.BetterPlan;
using Bakehouse.Web.Tests.TheWeek;
using Microsoft.Extensions.Logging.Abstractions;
using Microsoft.Extensions.Time.Testing;
using NodaTime;

/// <summary>What is offered and when it is looked for. Our own rules; the cake worked out by hand is an hour late, or not.</summary>
public sealed class PlanSearchTests
{
    private readonly BookInHand book = new() { State = OnTheWall(900) };
    private readonly FakeTimeProvider time = new(WeeksInHand.Midnight.ToDateTimeOffset());
    private readonly List<Week> asked = [];

    [Fact]
    public async Task A_plan_that_brings_a_late_cake_in_time_is_offered_and_the_calm_hours_were_not_its_to_move()
    {
        var better = WeeksInHand.ByHand(820).Wall!;
        var search = Search(better.Plan);
        await search.Look(TestContext.Current.CancellationToken);
        Assert.Equal((better.Epoch, better.Plan), (search.Last!.Plan!.Epoch, search.Last.Plan.Plan));
        Assert.Equal((60, 0), (search.Last.Was.Late, search.Last.Becomes.Late));
        Assert.Equal(180, Assert.Single(asked).FreeFrom);
        search.PutAside();
        Assert.Null(search.Last);
    }

    [Fact]
    public async Task A_plan_that_is_no_better_or_only_a_little_fresher_for_its_moves_is_not_offered()
    {
        var search = Search(book.State.Wall!.Plan);
        await search.Look(TestContext.Current.CancellationToken);
        Assert.Equal((WeeksInHand.Midnight, null), (search.Last!.At, search.Last.Plan));

        // In time both: five minutes more or less in hand are worth no new hours for two steps.
        book.State = OnTheWall(830);
        var nearly = Search(WeeksInHand.ByHand(825).Wall!.Plan);
        await nearly.Look(TestContext.Current.CancellationToken);
        Assert.True(nearly.Last!.Becomes.CompareTo(nearly.Last.Was) < 0, "It is better.");
        Assert.Null(nearly.Last.Plan);
    }

    [Fact]
    public async Task Of_two_who_ask_at_once_one_search_serves_both_and_both_hear_of_it()
    {
        var goesOn = new TaskCompletionSource();
        var calls = 0;
        var search = new PlanSearch(book, new ClockOf(time), Wait, NullLogger<PlanSearch>.Instance);
        var heard = 0;
        search.Changed += () => heard++;
        var first = search.Look(TestContext.Current.CancellationToken);
        Assert.True(search.IsLooking);
        await search.Look(TestContext.Current.CancellationToken);
        goesOn.SetResult();
        await first;
        Assert.Equal((1, 2, false), (calls, heard, search.IsLooking));

        async Task<Improved> Wait(Week week, Plan plan, CancellationToken cancel)
        {
            calls++;
            await goesOn.Task;
            return new Improved(plan, Judge.Examine(week, plan).Levels, false, "It was cut short.");
        }
    }

    [Fact]
    public async Task Once_a_day_it_is_looked_for_when_nobody_has_entered_anything_for_ten_minutes()
    {
        var search = Search(book.State.Wall!.Plan);
        var each = new LookOnceADay(book, search, new ClockOf(time), time, NullLogger<LookOnceADay>.Instance);
        book.State = book.State with { Newest = WeeksInHand.Midnight };
        await each.Look(TestContext.Current.CancellationToken);
        Assert.Empty(asked);
        time.Advance(TimeSpan.FromMinutes(10));
        await each.Look(TestContext.Current.CancellationToken);
        await each.Look(TestContext.Current.CancellationToken);
        Assert.Single(asked);
        time.Advance(TimeSpan.FromHours(24));
        await each.Look(TestContext.Current.CancellationToken);
        Assert.Equal(2, asked.Count);

        book.State = new BookState(1, book.State.Shop, [], [], null, null, []);
        time.Advance(TimeSpan.FromHours(24));
        await each.Look(TestContext.Current.CancellationToken);
        Assert.Equal(2, asked.Count);
    }

    /// <summary>The week compiled from a book knows the plan on its wall.</summary>
    private static BookState OnTheWall(int boxed)
    {
        var state = WeeksInHand.ByHand(boxed);
        return state with { Week = state.Week! with { Reference = state.Wall!.Plan } };
    }

    private PlanSearch Search(Plan found) => new(book, new ClockOf(time), (week, _, _) => Found(week, found), NullLogger<PlanSearch>.Instance);

    private Task<Improved> Found(Week week, Plan found)
    {
        asked.Add(week);
        return Task.FromResult(new Improved(found, Judge.Examine(week, found).Levels, false, null));
    }
}
