namespace Bakehouse.Book.Tests.Entries;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Keeping;
using Bakehouse.Book.Tables;
using Bakehouse.Domain.Reminders;
using Microsoft.EntityFrameworkCore;
using NodaTime;

public sealed class RingEntryTests
{
    [Fact]
    public async Task Of_eight_screens_that_answer_at_once_one_wins_and_the_others_hear_who()
    {
        using var disk = new BookOnDisk();
        await disk.Write(BookOnDisk.Order());
        var ring = Rung(disk, RingKind.OvenOut);
        disk.Clock.Reset(ring.Due);

        var answers = await Task.WhenAll(Enumerable.Range(0, 8).Select(i =>
            Task.Run(() => Answer(disk, ring, RingAnswerKind.Done, i % 2 == 0 ? "petra" : "dov"))));

        Assert.Single(answers, a => a.Kind == AnswerKind.Accepted);
        var who = disk.Book.State.Ticks.Select(t => t.Person).Distinct().Single() == "petra" ? "Petra" : "Dov";
        Assert.All(answers.Where(a => a.Kind != AnswerKind.Accepted), a => Assert.StartsWith($"{who} did it at ", a.Message, StringComparison.Ordinal));
        Assert.Equal(ring.Steps.Order(), disk.Book.State.Ticks.Select(t => t.Step).Order());
        Assert.DoesNotContain(Rings(disk), r => r.Id == ring.Id);
    }

    [Fact]
    public async Task Ten_minutes_later_it_may_be_answered_again_and_before_that_others_hear_who_moved_it()
    {
        using var disk = new BookOnDisk();
        await disk.Write(BookOnDisk.Order());
        TakeOutEarlier(disk, minutes: 15);
        var ring = Rings(disk).First(r => r.MayWait(r.Due));
        disk.Clock.Reset(ring.Due);

        Assert.Equal(AnswerKind.Accepted, (await Answer(disk, ring, RingAnswerKind.Later)).Kind);
        var early = await Answer(disk, ring, RingAnswerKind.Done, "dov");
        disk.Clock.AdvanceMinutes(10);
        var then = await Answer(disk, ring, RingAnswerKind.Done, "dov");

        Assert.Equal(AnswerKind.Clash, early.Kind);
        Assert.StartsWith("Petra moved it to ", early.Message, StringComparison.Ordinal);
        Assert.Equal(AnswerKind.Accepted, then.Kind);
    }

    [Fact]
    public async Task An_oven_does_not_wait()
    {
        using var disk = new BookOnDisk();
        await disk.Write(BookOnDisk.Order());
        var ring = Rung(disk, RingKind.OvenOut);
        disk.Clock.Reset(ring.Due);

        var answer = await Answer(disk, ring, RingAnswerKind.Later);

        Assert.Equal((AnswerKind.Refused, "It can't wait."), (answer.Kind, answer.Message));
    }

    [Fact]
    public async Task Cannot_needs_a_reason_and_the_next_one_hears_it()
    {
        using var disk = new BookOnDisk();
        await disk.Write(BookOnDisk.Order());
        var ring = Rung(disk, RingKind.LeaveFridge);
        disk.Clock.Reset(ring.Due);

        var silent = await disk.Enter(new AnswerRing(BookOnDisk.NewId(), "petra", "tablet", ring.Id, RingAnswerKind.Cannot, " "));
        var told = await Answer(disk, ring, RingAnswerKind.Cannot);
        var second = await Answer(disk, ring, RingAnswerKind.Done, "dov");

        Assert.Equal("reason", silent.Problems.Single().Where);
        Assert.Equal(AnswerKind.Accepted, told.Kind);
        Assert.Equal(AnswerKind.Clash, second.Kind);
        Assert.EndsWith("that it can't be done: The street is shut.", second.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_tick_taken_back_lets_the_ring_ring_again()
    {
        using var disk = new BookOnDisk();
        await disk.Write(BookOnDisk.Order());
        var ring = Rung(disk, RingKind.LeaveFridge);
        disk.Clock.Reset(ring.Due);
        await Answer(disk, ring, RingAnswerKind.Done);
        Assert.DoesNotContain(Rings(disk), r => r.Id == ring.Id);

        await disk.Enter(new UndoTick(BookOnDisk.NewId(), "petra", "tablet", ring.Step));

        Assert.Contains(Rings(disk), r => r.Id == ring.Id);
        Assert.Empty(disk.Book.State.Answers);
    }

    [Fact]
    public async Task A_ring_of_a_plan_that_was_withdrawn_is_told_so()
    {
        using var disk = new BookOnDisk();
        var order = (await disk.Write(BookOnDisk.Order())).Order!;
        var ring = Rung(disk, RingKind.LeaveFridge);
        await disk.Enter(new MoveStage(BookOnDisk.NewId(), "wren", "counter", order.Id, 1, Domain.Orders.Stage.Cancelled));

        var answer = await Answer(disk, ring, RingAnswerKind.Done);

        Assert.Equal((AnswerKind.Clash, "The plan has changed: this ring is withdrawn."), (answer.Kind, answer.Message));
        Assert.Equal(AnswerKind.Refused, (await disk.Enter(new AnswerRing(BookOnDisk.NewId(), "petra", "tablet", "Bell:1", RingAnswerKind.Done, ""))).Kind);
    }

    /// <summary>Hangs up a plan in which the cake may stand outside a little before it is handed over.</summary>
    private static void TakeOutEarlier(BookOnDisk disk, int minutes)
    {
        disk.Book.Dispose();
        using (var book = new BookContext(BookFile.Options(disk.Path)))
        {
            var row = book.WallSteps.AsNoTracking().Single(s => s.Step.Contains(".leavefridge."));
            book.Update(row with { Start = row.Start - Duration.FromMinutes(minutes) });
            book.SaveChanges();
        }

        disk.Reopen();
    }

    private static IReadOnlyList<Ring> Rings(BookOnDisk disk) => Domain.Reminders.Rings.Of(
        disk.Book.State.Week!, disk.Book.State.Wall!, disk.Book.State.Orders, disk.Book.State.Shop!, disk.Book.State.Ticks, disk.Book.State.Answers);

    private static Ring Rung(BookOnDisk disk, RingKind kind) => Rings(disk).First(r => r.Kind == kind);

    private static Task<Answer> Answer(BookOnDisk disk, Ring ring, RingAnswerKind kind, string person = "petra") => disk.Enter(
        new AnswerRing(BookOnDisk.NewId(), person, "tablet", ring.Id, kind, kind == RingAnswerKind.Cannot ? "The street is shut." : ""));
}
