namespace Bakehouse.Book.Tests.Entries;

using Bakehouse.Book.Entries;
using Bakehouse.Domain.Orders;
using NodaTime;

/// <summary>A clock that stands before what is written already: facts are taken, plans are not.</summary>
public sealed class ClockEntryTests
{
    [Theory]
    [InlineData(0, 2, 0, AnswerKind.Accepted)]
    [InlineData(0, 2, 1, AnswerKind.Refused)]
    [InlineData(24, 0, 0, AnswerKind.Refused)]
    public async Task No_plan_is_made_while_the_clock_is_more_than_two_minutes_before_the_newest_fact(int hours, int minutes, int seconds, AnswerKind expected)
    {
        using var disk = new BookOnDisk();
        Back(disk, Duration.FromHours(hours) + Duration.FromMinutes(minutes) + Duration.FromSeconds(seconds));
        var answer = await disk.Write(BookOnDisk.Order());
        Assert.Equal(expected, answer.Kind);
    }

    /// <summary>The book was set up on Wednesday 14 October 2026 at 07:00 UTC, 08:00 in London.</summary>
    [Fact]
    public async Task It_says_both_times_and_what_to_do_and_the_newest_fact_is_known_after_a_restart()
    {
        using var disk = new BookOnDisk();
        Back(disk, Duration.FromHours(25));
        disk.Reopen();
        var problem = Assert.Single((await disk.Write(BookOnDisk.Order())).Problems);
        Assert.Equal("clock", problem.Where);
        Assert.Contains("Tue 13 Oct 2026, 07:00", problem.Sentence, StringComparison.Ordinal);
        Assert.Contains("Wed 14 Oct 2026, 08:00", problem.Sentence, StringComparison.Ordinal);
        Assert.StartsWith("Set the clock", problem.Try, StringComparison.Ordinal);
        Assert.Empty(disk.Book.State.Orders);
    }

    [Fact]
    public async Task A_tick_is_a_fact_and_is_written_while_the_plan_waits()
    {
        using var disk = new BookOnDisk();
        await disk.Write(BookOnDisk.Order());
        var wall = disk.Book.State.Wall!;
        var first = wall.Plan.Steps.MinBy(s => s.Start)!;
        Back(disk, Duration.FromHours(3));
        var answer = await disk.Enter(new TickStep(BookOnDisk.NewId(), "petra", "tablet", first.Step, "petra"));
        Assert.Equal(AnswerKind.Accepted, answer.Kind);
        Assert.Contains("clock", answer.Message, StringComparison.Ordinal);
        Assert.Single(disk.Book.State.Ticks);
        Assert.Equal(wall.From(wall.Epoch).Steps.Select(s => (s.Step, s.Start)), disk.Book.State.Wall!.From(wall.Epoch).Steps.Select(s => (s.Step, s.Start)));
    }

    /// <summary>An enquiry holds no place in the plan; a quote neither.</summary>
    [Fact]
    public async Task What_needs_no_plan_is_written()
    {
        using var disk = new BookOnDisk();
        Back(disk, Duration.FromDays(1));
        Assert.Equal(AnswerKind.Accepted, (await disk.Write(BookOnDisk.Order(stage: Stage.Enquiry))).Kind);
    }

    /// <summary>A fact of ten years ahead, written while the clock was wrong, would hold back every plan for ten years.</summary>
    [Fact]
    public async Task The_owner_says_that_the_clock_is_right_and_plans_are_made_again()
    {
        using var disk = new BookOnDisk();
        Back(disk, -Duration.FromDays(3653));
        await disk.Enter(new RenewCalendar(BookOnDisk.NewId(), "petra", "phone", "petra", new string('A', 64)));
        Back(disk, Duration.FromDays(3653));
        Assert.True(disk.Book.State.IsAhead(disk.Clock.GetCurrentInstant()));
        Assert.Equal(AnswerKind.NotAllowed, (await disk.Enter(new TrustClock(BookOnDisk.NewId(), "petra", "tablet"))).Kind);
        Assert.Equal(AnswerKind.Accepted, (await disk.Enter(new TrustClock(BookOnDisk.NewId(), "ines", "office"))).Kind);
        Assert.False(disk.Book.State.IsAhead(disk.Clock.GetCurrentInstant()));
        disk.Reopen();
        Assert.Equal(AnswerKind.Accepted, (await disk.Write(BookOnDisk.Order())).Kind);
    }

    /// <summary>Somebody who was refused in the future left no fact there.</summary>
    [Fact]
    public async Task What_was_refused_is_no_fact()
    {
        using var disk = new BookOnDisk();
        Back(disk, -Duration.FromDays(1));
        await disk.Write(BookOnDisk.Order(), "sal");
        Back(disk, Duration.FromDays(1));
        disk.Reopen();
        Assert.Equal(AnswerKind.Accepted, (await disk.Write(BookOnDisk.Order())).Kind);
    }

    private static void Back(BookOnDisk disk, Duration by) => disk.Clock.Reset(disk.Clock.GetCurrentInstant() - by);
}
