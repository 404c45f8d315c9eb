namespace Bakehouse.Book.Tests.Entries;

using Bakehouse.Book.Entries;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;

public sealed class OrderEntryTests
{
    [Fact]
    public async Task A_new_order_gets_the_next_number_from_401_and_stands_in_the_plan()
    {
        using var disk = new BookOnDisk();

        var first = await disk.Write(BookOnDisk.Order(inches: [10, 8, 6]));
        var second = await disk.Write(BookOnDisk.Order("Hale", 16));

        Assert.Equal((AnswerKind.Accepted, 401, 1), (first.Kind, first.Order!.Number, first.Order.Version));
        Assert.Equal((AnswerKind.Accepted, 402), (second.Kind, second.Order!.Number));
        var state = disk.Book.State;
        Assert.Equal([402, 401], state.Orders.Select(o => o.Number));
        Assert.Equal(state.Week!.Steps.Count, state.Wall!.Plan.Steps.Count);
        Assert.True(Judge.Examine(state.Week, state.Wall.From(state.Week.Epoch)).Feasible);
    }

    [Fact]
    public async Task An_order_among_others_moves_none_of_them()
    {
        using var disk = new BookOnDisk();
        await disk.Write(BookOnDisk.Order("Hale", 16));
        var standing = disk.Book.State.Wall!;

        await disk.Write(BookOnDisk.Order("Moss", 16));

        Assert.Empty(Judge.KeepsEveryRow(standing.Plan, disk.Book.State.Wall!.From(standing.Epoch)));
    }

    [Fact]
    public async Task Everything_wrong_with_an_order_is_told_at_once_and_nothing_is_written()
    {
        using var disk = new BookOnDisk();

        var answer = await disk.Write(BookOnDisk.Order("", day: 13) with { Allergies = AllergyAnswer.NotAsked });

        Assert.Equal(AnswerKind.Refused, answer.Kind);
        Assert.Equal(["When", "Who", "Allergies"], answer.Problems.Select(p => p.Where));
        Assert.Empty(disk.Book.State.Orders);
    }

    [Fact]
    public async Task Under_the_floor_the_counter_gives_a_reason_and_the_owner_need_not()
    {
        using var disk = new BookOnDisk();
        await disk.Enter(BookOnDisk.Recipes());
        var order = BookOnDisk.Order() with { Price = new AgreedPrice(5) };

        var refused = await disk.Write(order, "wren");
        Assert.Equal((AnswerKind.Refused, "Price"), (refused.Kind, Assert.Single(refused.Problems).Where));
        Assert.Empty(disk.Book.State.Orders);

        var taken = (await disk.Write(order with { Price = new AgreedPrice(5, "Her sister's cake broke") }, "wren")).Order!;
        Assert.Equal("Her sister's cake broke", disk.Book.State.Orders.Single().Price!.Reason);
        Assert.Equal(AnswerKind.Accepted, (await disk.Write(taken with { Price = new AgreedPrice(4) }, "ines")).Kind);
        // What the owner agreed holds nobody up who writes something else.
        Assert.Equal(AnswerKind.Accepted, (await disk.Write(disk.Book.State.Orders.Single() with { Inscription = "NOA" }, "wren")).Kind);
        Assert.Equal("Price", Assert.Single((await disk.Write(BookOnDisk.Order("Hale") with { Price = new AgreedPrice(-1) }, "ines")).Problems).Where);
    }

    /// <summary>Slabs, hearts, hexagons and signs bake and stand beside rounds; the Judge finds every pan and board by its own outline.</summary>
    [Fact]
    public async Task Tiers_of_other_outlines_are_planned_among_rounds()
    {
        using var disk = new BookOnDisk();
        (OutlineKind Kind, int Wide, int? Deep, string Sign)[] outlines = [(OutlineKind.Rectangle, 13, 9, ""), (OutlineKind.Heart, 8, null, ""), (OutlineKind.Hexagon, 9, null, ""), (OutlineKind.Sign, 12, null, "4"), (OutlineKind.Petal, 9, null, ""), (OutlineKind.Square, 8, null, "")];
        foreach (var (o, i) in outlines.Select((o, i) => (o, i)))
        {
            var order = BookOnDisk.Order($"Guest {i}", day: 17 + (3 * (i % 2)), hour: 12, inches: o.Wide);
            var outline = new Outline(o.Kind, Length.FromInches(o.Wide), o.Deep is { } deep ? Length.FromInches(deep) : null, Sign: o.Sign);
            var answer = await disk.Write(order with { Portions = new Portions(5, Cut.Dessert), Tiers = [order.Tiers[0] with { Special = new TierSpecial { Outline = outline } }] });
            Assert.True(answer.Kind == AnswerKind.Accepted, $"{o.Kind}: {string.Join(" ", answer.Problems)}");
            await disk.Write(BookOnDisk.Order($"Round {i}", day: 17 + (3 * (i % 2)), inches: [8 + (i % 3)]));
        }

        var state = disk.Book.State;
        Assert.Contains(state.Week!.Steps, s => s.Bake?.Pans.Contains(13009) == true);
        var verdict = Judge.Examine(state.Week, state.Wall!.From(state.Week.Epoch));
        Assert.True(verdict.Feasible, string.Join("; ", verdict.Breaches.Take(3).Select(b => b.Sentence)));
        // A file holds the same week.
        var (read, problems) = WeekFile.Read(WeekFile.Write(state.Week));
        Assert.Empty(problems);
        Assert.True(Judge.Examine(read!, state.Wall.From(state.Week.Epoch)).Feasible);
    }

    [Fact]
    public async Task A_tier_of_foam_and_one_on_pillars_are_planned_as_they_are_built()
    {
        using var disk = new BookOnDisk();
        var order = BookOnDisk.Order(inches: [10, 8, 6]);
        var answer = await disk.Write(order with { Tiers = [order.Tiers[0], order.Tiers[1] with { Special = new TierSpecial { IsFalse = true } }, order.Tiers[2] with { Special = new TierSpecial { Separator = Length.FromCentimetres(6) } }] });
        Assert.True(answer.Kind == AnswerKind.Accepted, string.Join(" ", answer.Problems));
        var state = disk.Book.State;
        Assert.Equal(["crumb", "coat"], state.Week!.Steps.Where(s => s.Tier == order.Tiers[1].Id.ToString("N")).Select(s => s.Name));
        var verdict = Judge.Examine(state.Week, state.Wall!.From(state.Week.Epoch));
        Assert.True(verdict.Feasible, string.Join("; ", verdict.Breaches.Take(3).Select(b => b.Sentence)));
    }

    [Fact]
    public async Task Two_people_save_at_once_and_the_second_sees_what_stands()
    {
        using var disk = new BookOnDisk();
        var read = (await disk.Write(BookOnDisk.Order())).Order!;

        var petras = await disk.Write(read with { Inscription = "NOA" }, "petra");
        var wrens = await disk.Write(read with { Inscription = "NOAH" }, "wren");

        Assert.Equal(AnswerKind.Accepted, petras.Kind);
        Assert.Equal((AnswerKind.Clash, "NOA", 2), (wrens.Kind, wrens.Order!.Inscription, wrens.Order.Version));
        var history = await disk.Book.History(read.Id, TestContext.Current.CancellationToken);
        Assert.Equal([("ines", ""), ("petra", "NOA")], history.Select(v => (v.Person, v.Order.Inscription)));
    }

    [Fact]
    public async Task A_corrected_name_moves_no_row_and_a_new_hour_moves_only_its_own()
    {
        using var disk = new BookOnDisk();
        await disk.Write(BookOnDisk.Order("Hale", 16));
        var order = (await disk.Write(BookOnDisk.Order("Mos"))).Order!;
        var before = disk.Book.State.Wall!;

        var named = await disk.Write(order with { Customer = order.Customer with { Name = "Moss" } });
        Assert.Empty(Judge.KeepsEveryRow(before.Plan, disk.Book.State.Wall!.From(before.Epoch)));

        var moved = await disk.Write(named.Order! with { Handover = order.Handover with { At = order.Handover.At.PlusHours(-4) } });
        Assert.Equal(AnswerKind.Accepted, moved.Kind);
        var breaches = Judge.KeepsEveryRow(before.Plan, disk.Book.State.Wall!.From(before.Epoch));
        Assert.NotEmpty(breaches);
        Assert.All(breaches, b => Assert.Contains(order.Id.ToString("N"), b.Step, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_cancelled_order_frees_its_rows_and_can_come_back_as_an_enquiry()
    {
        using var disk = new BookOnDisk();
        await disk.Write(BookOnDisk.Order("Hale", 16));
        var alone = disk.Book.State.Wall!;
        var order = (await disk.Write(BookOnDisk.Order())).Order!;

        var gone = await disk.Enter(new MoveStage(BookOnDisk.NewId(), "wren", "counter", order.Id, order.Version, Stage.Cancelled));

        Assert.Equal((AnswerKind.Accepted, Stage.Cancelled), (gone.Kind, gone.Order!.Stage));
        Assert.Equal(alone.Plan.Steps.Select(s => s.Step).Order(), disk.Book.State.Wall!.Plan.Steps.Select(s => s.Step).Order());
        var back = await disk.Enter(new MoveStage(BookOnDisk.NewId(), "wren", "counter", order.Id, 2, Stage.Enquiry));
        Assert.Equal(AnswerKind.Accepted, back.Kind);
    }

    [Fact]
    public async Task A_move_that_the_stages_do_not_know_is_refused_with_those_that_can_follow()
    {
        using var disk = new BookOnDisk();
        var order = (await disk.Write(BookOnDisk.Order(stage: Stage.Enquiry))).Order!;
        Assert.Null(disk.Book.State.Wall);

        var answer = await disk.Enter(new MoveStage(BookOnDisk.NewId(), "wren", "counter", order.Id, 1, Stage.Ready));

        Assert.Equal(AnswerKind.Refused, answer.Kind);
        Assert.Contains("quoted, kept, booked, cancelled", answer.Problems.Single().Try, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(7)]
    [InlineData(28)]
    public async Task An_order_that_nobody_fetched_does_not_stop_the_others_weeks_later(int days)
    {
        using var disk = new BookOnDisk();
        await disk.Write(BookOnDisk.Order("Hale", 16));
        disk.Clock.AdvanceDays(days);
        disk.Reopen();

        var answer = await disk.Write(BookOnDisk.Order() with { Handover = new Handover(Way.Collect, new NodaTime.LocalDateTime(2026, 10, 14, 12, 0).PlusDays(days + 10), "", 0) });

        Assert.True(answer.Kind == AnswerKind.Accepted, string.Join(' ', answer.Problems));
    }
}
