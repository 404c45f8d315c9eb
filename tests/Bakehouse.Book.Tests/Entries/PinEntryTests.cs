namespace Bakehouse.Book.Tests.Entries;

using Bakehouse.Book.Entries;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Planning;
using NodaTime;

/// <summary>Pinning and moving a step by hand: who may, what is refused and in which words, what follows, and the way back.</summary>
public sealed class PinEntryTests
{
    [Fact]
    public async Task A_step_pinned_where_it_stands_moves_nothing()
    {
        using var disk = await WithCakes();
        var (before, step) = (Told(disk), Step(disk, "coat"));

        var answer = await disk.Enter(disk.Pin(step));

        Assert.Equal((AnswerKind.Accepted, 0), (answer.Kind, answer.Late.Count));
        Assert.Equal(before, Told(disk));
        Assert.Equal(step, Assert.Single(disk.Book.State.Pins).Step);
        Assert.Contains(disk.Book.State.Week!.Fixed, f => f.Step == step && f.Why == "pinned");
    }

    [Fact]
    public async Task A_moved_step_stands_there_the_others_make_way_and_the_Judge_agrees()
    {
        using var disk = await WithCakes();
        var (step, later) = Movable(disk);
        var command = disk.Pin(step, later: later);

        var foreseen = await disk.Book.Foresee(command, TestContext.Current.CancellationToken);
        Assert.Empty(disk.Book.State.Pins);
        var answer = await disk.Enter(command);

        Assert.Equal(AnswerKind.Accepted, answer.Kind);
        var state = disk.Book.State;
        Assert.Equal(foreseen.Wall!.From(state.Wall!.Epoch).Steps.OrderBy(r => r.Step, StringComparer.Ordinal).Select(r => (r.Step, r.Start)), state.Wall.Plan.Steps.OrderBy(r => r.Step, StringComparer.Ordinal).Select(r => (r.Step, r.Start)));
        Assert.Equal(command.Start, StartOf(disk, step));
        Assert.Empty(Judge.Examine(state.Week!, state.Wall.From(state.Week!.Epoch)).Breaches);
        disk.Reopen();
        Assert.Equal(command.Start, Assert.Single(disk.Book.State.Pins).Start);
    }

    [Fact]
    public async Task A_pinned_step_stays_when_another_cake_is_taken_and_when_work_is_ticked()
    {
        using var disk = await WithCakes();
        var (step, later) = Movable(disk);
        var command = disk.Pin(step, later: later);
        await disk.Enter(command);

        await disk.Write(BookOnDisk.Order("Third", day: 17, inches: [8, 6]));
        disk.Clock.AdvanceMinutes(20);
        await disk.Enter(new TickStep(BookOnDisk.NewId(), "petra", "tablet", First(disk), "petra"));

        Assert.Equal(command.Start, StartOf(disk, step));
        Assert.Equal(command.People, Row(disk, step).People);
    }

    [Fact]
    public async Task A_move_is_taken_back_with_all_that_it_moved()
    {
        using var disk = await WithCakes();
        var before = Told(disk);
        var (step, later) = Movable(disk);
        var command = disk.Pin(step, later: later);
        await disk.Enter(command);
        Assert.NotEqual(before, Told(disk));

        var answer = await disk.Enter(new TakeBackMove(BookOnDisk.NewId(), "ines", "counter", command.Id));

        Assert.Equal(AnswerKind.Accepted, answer.Kind);
        Assert.Equal(before, Told(disk));
        Assert.Empty(disk.Book.State.Pins);
        var again = await disk.Enter(new TakeBackMove(BookOnDisk.NewId(), "ines", "counter", command.Id));
        Assert.Contains("does not stand any more", Assert.Single(again.Problems).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_was_looked_at_on_an_older_plan_is_a_clash()
    {
        using var disk = await WithCakes();
        var command = disk.Pin(Step(disk, "coat"));
        await disk.Write(BookOnDisk.Order("Third", day: 20));

        var answer = await disk.Enter(command);

        Assert.Equal(AnswerKind.Clash, answer.Kind);
        Assert.StartsWith("The plan moved meanwhile: “", answer.Message, StringComparison.Ordinal);
        Assert.Empty(disk.Book.State.Pins);
    }

    [Fact]
    public async Task A_baker_may_for_steps_of_her_own_the_owner_for_all()
    {
        using var disk = await WithCakes();
        var hers = disk.Book.State.Wall!.Plan.Steps.First(r => r.People is ["petra"]).Step;
        var his = disk.Book.State.Wall.Plan.Steps.First(r => r.People is ["dov"]).Step;

        Assert.Equal(AnswerKind.NotAllowed, (await disk.Enter(disk.Pin(his, person: "petra"))).Kind);
        Assert.Equal("Petra has that step. Ask the owner.", (await disk.Enter(disk.Pin(hers, person: "dov"))).Message);
        Assert.Equal(AnswerKind.NotAllowed, (await disk.Enter(disk.Pin(hers, person: "petra", people: ["ines"]))).Kind);
        Assert.Equal(AnswerKind.NotAllowed, (await disk.Enter(disk.Pin(hers, person: "wren"))).Kind);
        Assert.Equal(AnswerKind.Accepted, (await disk.Enter(disk.Pin(hers, person: "petra"))).Kind);
        Assert.Equal(AnswerKind.NotAllowed, (await disk.Enter(new UnpinStep(BookOnDisk.NewId(), "dov", "tablet", hers))).Kind);
        Assert.Equal(AnswerKind.Accepted, (await disk.Enter(new UnpinStep(BookOnDisk.NewId(), "ines", "counter", hers))).Kind);
        Assert.Empty(disk.Book.State.Pins);
    }

    [Fact]
    public async Task Where_it_can_not_stand_the_book_says_why_with_who_and_when()
    {
        using var disk = await WithCakes();
        var row = disk.Book.State.Wall!.Plan.Steps.First(r => r.People is ["dov"] && StepKey.Parse(r.Step)!.Value.Operation == "coat");
        var evening = (24 * 60) - (row.Start % (24 * 60));

        var away = await disk.Enter(disk.Pin(row.Step, later: evening - 120, people: ["dov"]));
        var before = await disk.Enter(disk.Pin(row.Step, later: -row.Start));
        var nobody = await disk.Enter(disk.Pin(row.Step, people: ["sal"]));

        Assert.All([away, before, nobody], a => Assert.Equal(AnswerKind.Refused, a.Kind));
        Assert.Matches(@"^(Dov is away from \w{3} \d\d:\d\d\.|It must end by .*)$", away.Problems[0].Sentence);
        Assert.Matches(@"\w{3} \d\d:\d\d", before.Problems[0].Sentence);
        Assert.Contains("can’t be done by Sal", nobody.Problems[0].Sentence, StringComparison.Ordinal);
        Assert.Empty(disk.Book.State.Pins);
    }

    [Fact]
    public async Task A_done_step_stays_and_an_unpinned_one_can_not_be_let_go()
    {
        using var disk = await WithCakes();
        var first = First(disk);
        disk.Clock.AdvanceMinutes(30);
        await disk.Enter(new TickStep(BookOnDisk.NewId(), "petra", "tablet", first, "petra"));

        Assert.Contains("done or running", (await disk.Enter(disk.Pin(first))).Problems[0].Sentence, StringComparison.Ordinal);
        Assert.Equal(AnswerKind.Refused, (await disk.Enter(new UnpinStep(BookOnDisk.NewId(), "ines", "counter", first))).Kind);
    }

    /// <summary>Two cakes for the same Saturday, on a Wednesday morning.</summary>
    private static async Task<BookOnDisk> WithCakes()
    {
        var disk = new BookOnDisk();
        await disk.Write(BookOnDisk.Order("Moss", day: 17, inches: [10, 8]));
        await disk.Write(BookOnDisk.Order("Hale", day: 17, inches: [8, 6]));
        return disk;
    }

    /// <summary>A step with hands and how many minutes earlier or later it may stand, as far as that goes and the book agrees.</summary>
    private static (string Step, int Later) Movable(BookOnDisk disk)
    {
        var (week, plan) = (disk.Book.State.Week!, disk.Book.State.Wall!.From(disk.Book.State.Week!.Epoch));
        foreach (var row in plan.Steps.Where(r => r.People.Count == 1 && StepKey.Parse(r.Step)!.Value.Operation is "coat" or "fill" or "crumb"))
        {
            foreach (var start in Reach.Of(week, plan, row.Step)!.Starts(row.People, row.Machine).SelectMany(s => new[] { s.From, s.To }).Where(s => s != row.Start))
            {
                var command = disk.Pin(row.Step, later: start - row.Start);
                if (disk.Book.Foresee(command).GetAwaiter().GetResult().Answer.Kind == AnswerKind.Accepted)
                {
                    return (row.Step, start - row.Start);
                }
            }
        }

        throw new InvalidOperationException("No step can be moved.");
    }

    private static string Step(BookOnDisk disk, string operation) =>
        disk.Book.State.Wall!.Plan.Steps.First(r => StepKey.Parse(r.Step)!.Value.Operation == operation).Step;

    private static string First(BookOnDisk disk) => disk.Book.State.Wall!.Plan.Steps.MinBy(s => s.Start)!.Step;

    private static StepRow Row(BookOnDisk disk, string step) => disk.Book.State.Wall!.Plan.Steps.Single(r => r.Step == step);

    private static Instant StartOf(BookOnDisk disk, string step) => disk.Book.State.Wall!.Epoch + Duration.FromMinutes(Row(disk, step).Start);

    private static string Told(BookOnDisk disk) => string.Join('\n', disk.Book.State.Wall!.Plan is var p
        ? p.Steps.OrderBy(r => r.Step, StringComparer.Ordinal).Select(r => $"{r.Step} {r.Start} {string.Join('+', r.People)} {r.Machine} {r.Batch}")
            .Concat(p.Holds.OrderBy(h => h.Hold, StringComparer.Ordinal).Select(h => $"{h.Hold} {h.Store}"))
            .Concat(p.Cleans.Select(c => $"{c.Machine} {c.Start}"))
        : []);
}
