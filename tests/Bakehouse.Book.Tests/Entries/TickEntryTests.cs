namespace Bakehouse.Book.Tests.Entries;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Keeping;
using Bakehouse.Book.Reading;
using Bakehouse.Book.Tables;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using NodaTime;

public sealed class TickEntryTests
{
    /// <summary>One tap too many must not take the filling and the coats of a cake off everybody's list.</summary>
    [Fact]
    public async Task A_cake_is_not_boxed_and_does_not_leave_while_work_on_it_is_still_to_come()
    {
        using var disk = new BookOnDisk();
        await disk.Write(BookOnDisk.Order());
        foreach (var word in new[] { "box", "handover" })
        {
            var early = await disk.Enter(new TickStep(BookOnDisk.NewId(), "wren", "tablet", SlipEntryTests.Row(disk, word).Step, "wren"));
            Assert.Equal(AnswerKind.Refused, early.Kind);
            Assert.Contains("comes before it and is planned for", early.Message, StringComparison.Ordinal);
        }

        Assert.Empty(disk.Book.State.Ticks);
        var box = SlipEntryTests.Row(disk, "box");
        disk.Clock.Reset(disk.Book.State.Wall!.Epoch + NodaTime.Duration.FromMinutes(box.Start + 5));
        Assert.Equal(AnswerKind.Accepted, (await disk.Enter(new TickStep(BookOnDisk.NewId(), "wren", "tablet", box.Step, "wren"))).Kind);
    }

    [Fact]
    public async Task The_first_step_puts_an_order_in_work_boxing_makes_it_ready_and_handing_over_ends_it()
    {
        using var disk = new BookOnDisk();
        var order = (await disk.Write(BookOnDisk.Order())).Order!;
        var ends = disk.Book.State.Week!.Orders.Single();
        var stages = new List<Stage>();
        foreach (var row in disk.Book.State.Wall!.Plan.Steps.OrderBy(s => s.Start).Select(s => (s.Step, End: End(disk, s))).ToList())
        {
            disk.Clock.Reset(Instant.Max(disk.Clock.GetCurrentInstant(), row.End));
            var answer = await Tick(disk, row.Step);
            Assert.Equal((AnswerKind.Accepted, ""), (answer.Kind, answer.Message));
            stages.Add(answer.Order!.Stage);
            Assert.Equal(row.Step == ends.Out ? Stage.HandedOver : stages[^1], stages[^1]);
        }

        Assert.Equal([Stage.InWork, Stage.Ready, Stage.HandedOver], stages.Distinct());
        Assert.Null(disk.Book.State.Wall);
        var history = await disk.Book.History(order.Id, TestContext.Current.CancellationToken);
        Assert.Equal([Stage.Booked, Stage.InWork, Stage.Ready, Stage.HandedOver], history.Select(v => v.Order.Stage));
    }

    [Fact]
    public async Task The_first_to_tick_a_step_wins_and_the_second_is_told_who_and_when()
    {
        using var disk = new BookOnDisk();
        await disk.Write(BookOnDisk.Order());
        var step = First(disk);

        disk.Clock.AdvanceMinutes(11);
        await Tick(disk, step);
        disk.Clock.AdvanceMinutes(5);
        var second = await Tick(disk, step, "dov");

        // 07:11 UTC is 08:11 in London in summer time.
        Assert.Equal((AnswerKind.Clash, "Petra did it at 08:11."), (second.Kind, second.Message));
        Assert.Equal("petra", disk.Book.State.Ticks.Single().Person);
    }

    [Fact]
    public async Task A_late_tick_pushes_what_follows_and_leaves_other_cakes_alone()
    {
        using var disk = new BookOnDisk();
        await disk.Write(BookOnDisk.Order("Hale", 17));
        await disk.Write(BookOnDisk.Order("Moss", 24));
        var before = disk.Book.State.Wall!;
        var first = before.Plan.Steps.MinBy(s => s.Start)!;
        disk.Clock.Reset(before.Epoch + Duration.FromMinutes(first.Start + 240));

        var answer = await Tick(disk, first.Step);

        Assert.Equal((AnswerKind.Accepted, ""), (answer.Kind, answer.Message));
        var moss = disk.Book.State.Orders.Single(o => o.Customer.Name == "Moss").Id;
        var breaches = Judge.KeepsEveryRow(before.Plan, disk.Book.State.Wall!.From(before.Epoch));
        Assert.Contains(breaches, b => b.Step == first.Step);
        Assert.DoesNotContain(breaches, b => StepKey.Parse(b.Step!)?.Order == moss);
        Assert.True(Judge.Examine(disk.Book.State.Week!, disk.Book.State.Wall!.From(disk.Book.State.Week!.Epoch)).Feasible);
    }

    [Fact]
    public async Task A_step_nobody_knows_a_person_nobody_knows_and_a_time_to_come_are_told()
    {
        using var disk = new BookOnDisk();
        await disk.Write(BookOnDisk.Order());

        var unknown = await Tick(disk, "stir");
        var both = await disk.Enter(new TickStep(
            BookOnDisk.NewId(), "petra", "tablet", First(disk), "zoe", disk.Clock.GetCurrentInstant() + Duration.FromHours(1)));

        Assert.Equal("The book knows no such step.", unknown.Message);
        Assert.Equal(["by", "done"], both.Problems.Select(p => p.Where));
        Assert.Empty(disk.Book.State.Ticks);
    }

    [Fact]
    public async Task A_tick_taken_back_is_kept_with_who_and_when_and_the_order_goes_back()
    {
        using var disk = new BookOnDisk();
        await disk.Write(BookOnDisk.Order());
        var step = First(disk);
        await Tick(disk, step);

        var undone = await disk.Enter(new UndoTick(BookOnDisk.NewId(), "dov", "tablet", step));

        Assert.Equal((AnswerKind.Accepted, Stage.Booked), (undone.Kind, undone.Order!.Stage));
        Assert.Empty(disk.Book.State.Ticks);
        using var book = new BookContext(BookFile.Options(disk.Path));
        Assert.Equal("dov", book.Ticks.Single().UndonePerson);
        Assert.Equal(AnswerKind.Accepted, (await Tick(disk, step)).Kind);
        Assert.Equal(AnswerKind.Refused, (await disk.Enter(new UndoTick(BookOnDisk.NewId(), "dov", "tablet", "stir"))).Kind);
    }

    /// <summary>Dov ticked at 08:30 what Petra did at 08:10; the log keeps both, with the reason.</summary>
    [Fact]
    public async Task A_tick_is_corrected_with_a_reason_and_the_log_keeps_both()
    {
        using var disk = new BookOnDisk();
        var order = (await disk.Write(BookOnDisk.Order())).Order!;
        var step = First(disk);
        var petra = disk.Clock.GetCurrentInstant() + Duration.FromMinutes(10);
        disk.Clock.AdvanceMinutes(30);
        await Tick(disk, step, "dov");

        Assert.Equal(["reason"], (await Correct(disk, step, petra, " ")).Problems.Select(p => p.Where));
        Assert.Equal(["by", "done"], (await Correct(disk, step, petra + Duration.FromHours(1), "Was Zoe", "zoe")).Problems.Select(p => p.Where));
        var answer = await Correct(disk, step, petra, "Dov tapped for Petra");

        Assert.Equal((AnswerKind.Accepted, ""), (answer.Kind, answer.Message));
        Assert.Equal(new Tick(step, petra, "petra"), Assert.Single(disk.Book.State.Ticks));
        var log = await disk.Book.Log(order.Id, TestContext.Current.CancellationToken);
        Assert.Equal([(CakeDeed.Ticked, "dov", ""), (CakeDeed.Corrected, "dov", "Dov tapped for Petra"), (CakeDeed.Ticked, "petra", "")], log.Select(l => (l.Deed, l.By, l.Reason)));
        Assert.Equal("That is what the book has already.", (await Correct(disk, step, petra, "Again")).Message);
        Assert.Equal("This step is not ticked.", (await Correct(disk, disk.Book.State.Week!.Orders.Single().Out, petra, "Again")).Message);
    }

    private static Task<Answer> Correct(BookOnDisk disk, string step, Instant done, string reason, string by = "petra") =>
        disk.Enter(new CorrectTick(BookOnDisk.NewId(), "ines", "office", step, by, done, reason));

    /// <summary>A tap on the wrong step, hours too early, taken back at once: the plan is what it was.</summary>
    [Fact]
    public async Task A_tick_by_mistake_taken_back_leaves_the_plan_as_it_was()
    {
        using var disk = new BookOnDisk();
        await disk.Write(BookOnDisk.Order("Hale", 17));
        await disk.Write(BookOnDisk.Order("Moss", 17));
        var before = disk.Book.State.Wall!;
        foreach (var step in before.Plan.Steps.Where(s => s.People.Count > 0).Select(s => s.Step).Where((_, i) => i % 4 == 0).ToList())
        {
            await Tick(disk, step);
            await disk.Enter(new UndoTick(BookOnDisk.NewId(), "petra", "tablet", step));
            Assert.Empty(Judge.KeepsEveryRow(before.Plan, disk.Book.State.Wall!.From(before.Epoch)));
        }
    }

    /// <summary>Nobody ticks the first mix; when its time has passed, later writing moves nothing. "Not yet" moves it to now.</summary>
    [Fact]
    public async Task A_step_nobody_ticked_is_assumed_and_somebody_may_say_not_yet()
    {
        using var disk = new BookOnDisk();
        var order = (await disk.Write(BookOnDisk.Order("Hale", 17))).Order!;
        var hung = disk.Book.State.Wall!;
        var mix = hung.Plan.Steps.MinBy(s => s.Start)!;
        var ends = hung.Epoch + Duration.FromMinutes(mix.Start + disk.Book.State.Week!.Steps.Single(s => s.Id == mix.Step).Minutes);
        disk.Clock.Reset(ends);
        await disk.Write(order with { Inscription = "Ada" });
        Assert.Contains(disk.Book.State.Week!.Fixed, f => f.Step == mix.Step && f.Why == Assumed.Why);
        Assert.Equal(mix.Start, disk.Book.State.Wall!.From(hung.Epoch).Steps.Single(s => s.Step == mix.Step).Start);
        Assert.Empty(disk.Book.State.Ticks);

        var denied = await disk.Enter(new UndoTick(BookOnDisk.NewId(), "dov", "tablet", mix.Step));

        Assert.Equal((AnswerKind.Accepted, ""), (denied.Kind, denied.Message));
        Assert.DoesNotContain(disk.Book.State.Week!.Fixed, f => f.Step == mix.Step && f.Why == Assumed.Why);
        var again = disk.Book.State.Wall!;
        Assert.True(again.Epoch + Duration.FromMinutes(again.Plan.Steps.Single(s => s.Step == mix.Step).Start) >= ends);
        Assert.Equal(AnswerKind.Refused, (await disk.Enter(new UndoTick(BookOnDisk.NewId(), "dov", "tablet", mix.Step))).Kind);
        Assert.Equal(AnswerKind.Accepted, (await Tick(disk, mix.Step)).Kind);
    }

    [Fact]
    public async Task A_handover_ticked_by_mistake_is_taken_back()
    {
        using var disk = new BookOnDisk();
        await disk.Write(BookOnDisk.Order());
        var ends = disk.Book.State.Week!.Orders.Single();
        disk.Clock.Reset(End(disk, disk.Book.State.Wall!.Plan.Steps.Single(s => s.Step == ends.Ready)));
        await Tick(disk, ends.Ready);
        Assert.Equal(Stage.HandedOver, (await Tick(disk, ends.Out)).Order!.Stage);

        var undone = await disk.Enter(new UndoTick(BookOnDisk.NewId(), "wren", "tablet", ends.Out));

        Assert.Equal((AnswerKind.Accepted, Stage.Ready, ""), (undone.Kind, undone.Order!.Stage, undone.Message));
        Assert.NotNull(disk.Book.State.Wall);
    }

    private static string First(BookOnDisk disk) => disk.Book.State.Wall!.Plan.Steps.MinBy(s => s.Start)!.Step;

    private static Instant End(BookOnDisk disk, StepRow row) =>
        disk.Book.State.Wall!.Epoch + Duration.FromMinutes(row.Start + disk.Book.State.Week!.Steps.Single(s => s.Id == row.Step).Minutes);

    private static Task<Answer> Tick(BookOnDisk disk, string step, string person = "petra") =>
        disk.Enter(new TickStep(BookOnDisk.NewId(), person, "tablet", step, person));
}
