namespace Bakehouse.Book.Tests.Keeping;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Tests.Entries;
using Bakehouse.Book.Keeping;
using Bakehouse.Book.Tables;
using Bakehouse.Domain.Freezer;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Reminders;
using Bakehouse.Domain.Slips;
using NodaTime;

/// <summary>A command sent again, by a double tap, a lost connection or a restart, hears its first answer and changes nothing.</summary>
public sealed class AnsweredOnceTests
{
    public static TheoryData<string> Names => [.. RightsTests.Commands.Select(c => c.Name), "a refused order", "a stranger's order"];

    [Theory]
    [MemberData(nameof(Names))]
    public async Task Sent_twice_it_is_answered_alike_and_written_once(string name)
    {
        using var disk = new BookOnDisk(withShop: name is not (nameof(WriteShop) or nameof(OpenSample)));
        var command = await Made(disk, name);

        var first = Document.Write(await disk.Enter(command));
        var written = Counts(disk);
        var second = Document.Write(await disk.Enter(command));
        disk.Reopen();
        var third = Document.Write(await disk.Enter(command));

        Assert.Equal(first, second);
        Assert.Equal(first, third);
        Assert.Equal(written, Counts(disk));
    }

    [Fact]
    public async Task Sent_by_eight_threads_at_once_it_is_written_once()
    {
        using var disk = new BookOnDisk();
        var command = await Made(disk, nameof(WriteOrder));

        var answers = await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => Task.Run(() => disk.Enter(command))));

        Assert.Single(answers.Select(a => a.Order!.Number).Distinct());
        Assert.Single(disk.Book.State.Orders);
    }

    [Fact]
    public async Task Four_writers_with_twenty_five_commands_each_lose_nothing()
    {
        using var disk = new BookOnDisk();
        var head = disk.Book.State.Head;

        await Task.WhenAll(Enumerable.Range(0, 4).Select(w => Task.Run(async () =>
        {
            for (var i = 0; i < 25; i++)
            {
                var stage = i % 12 == 0 ? Stage.Booked : Stage.Enquiry;
                var answer = await disk.Write(BookOnDisk.Order($"Writer {w} {i}", day: 20 + w, stage: stage));
                Assert.Equal(AnswerKind.Accepted, answer.Kind);
            }
        })));

        Assert.Equal(Enumerable.Range(401, 100), disk.Book.State.Orders.Select(o => o.Number).Order());
        Assert.Equal(100, disk.Book.State.Orders.Select(o => o.Customer.Name).Distinct().Count());
        Assert.Equal(head + 100, disk.Book.State.Head);
    }

    [Fact]
    public async Task What_was_decided_on_an_older_head_is_not_written()
    {
        using var disk = new BookOnDisk();
        var stale = disk.Book.State;
        await disk.Write(BookOnDisk.Order(stage: Stage.Enquiry));
        var path = disk.Path;
        disk.Book.Dispose();
        using (var file = BookFile.Open(path))
        {
            var late = new WriteOrder(BookOnDisk.NewId(), "ines", "counter", BookOnDisk.Order());
            var outcome = Entry.Decide(late, new Desk(stale, new Planner.Quick.QuickPlanner(), disk.Clock.GetCurrentInstant(), file));
            Assert.Equal(401, outcome.Answer.Order!.Number);

            Assert.Throws<LostRaceException>(() => new Ledger(file).Write(late, outcome, stale, disk.Clock.GetCurrentInstant()));

            Assert.Null(new Ledger(file).AnswerTo(late));
        }

        disk.Reopen();
        Assert.Single(disk.Book.State.Orders);
    }

    private static async Task<Command> Made(BookOnDisk disk, string name)
    {
        var (id, person, device) = (BookOnDisk.NewId(), "ines", "counter");
        switch (name)
        {
            case nameof(WriteShop):
                return new WriteShop(id, "", device, BookOnDisk.Shop);
            case nameof(OpenSample):
                return new OpenSample(id, "", device);
            case nameof(WriteOrder):
                return new WriteOrder(id, person, device, BookOnDisk.Order());
            case nameof(KeepDraft):
                return new KeepDraft(id, person, device, "{\"name\":\"Mo");
            case nameof(TakePlan):
                var (better, _, _) = await disk.PlanMadeWorse();
                return new TakePlan(id, person, device, better, disk.Book.State.Head);
            case nameof(PlanNear):
                await disk.FarOrderComesNear();
                return new PlanNear(id, person, device);
            case nameof(TrustClock):
                return new TrustClock(id, person, device);
            case nameof(RenewCalendar):
                return new RenewCalendar(id, person, device, person, new string('A', 64));
            case nameof(WriteChore):
                return new WriteChore(id, person, device, BookOnDisk.Chore());
            case nameof(CountSpares):
                return new CountSpares(id, person, device, new SpareSponges("vanilla", 8, new LocalDate(2026, 10, 12), 4));
            case nameof(WriteRecipes):
                return BookOnDisk.Recipes(id);
            case nameof(OpenPack):
                await disk.Enter(BookOnDisk.Recipes());
                return new OpenPack(id, person, device, "sugar", new Pack("second", null));
            case nameof(ReadBackAllergies):
                var told = (await disk.Write(BookOnDisk.Avoiding(BookOnDisk.Order(), "nuts"))).Order!;
                return new ReadBackAllergies(id, "petra", device, told.Id, told.Version);
            case nameof(StopCalendar):
                return new StopCalendar(id, person, device, person);
            case "a refused order":
                return new WriteOrder(id, person, device, BookOnDisk.Order(""));
            case "a stranger's order":
                return new WriteOrder(id, "nobody", device, BookOnDisk.Order());
        }

        var order = (await disk.Write(BookOnDisk.Order())).Order!;
        var step = disk.Book.State.Wall!.Plan.Steps.MinBy(s => s.Start)!.Step;
        switch (name)
        {
            case nameof(LookAtRecipes):
                return new LookAtRecipes(id, person, device, order.Id, order.Version, true, []);
            case nameof(LetDayGo):
                return new LetDayGo(id, person, device, await disk.KeptDayIsOver());
            case nameof(MoveStage):
                return new MoveStage(id, person, device, order.Id, order.Version, Stage.Cancelled);
            case nameof(TickStep):
                return new TickStep(id, person, device, step, person);
            case nameof(AnswerRing):
                var ring = $"{RingKind.Handover}:{disk.Book.State.Week!.Orders.Single().Out}";
                return new AnswerRing(id, person, device, ring, RingAnswerKind.Cannot, "The street is shut.");
            case nameof(CorrectTick):
                await disk.Enter(new TickStep(BookOnDisk.NewId(), person, device, step, person));
                return new CorrectTick(id, person, device, step, "petra", disk.Clock.GetCurrentInstant(), "It was Petra.");
            case nameof(PinStep):
                return disk.Pin(step, id);
            case nameof(UnpinStep):
                await disk.Enter(disk.Pin(step));
                return new UnpinStep(id, person, device, step);
            case nameof(TakeBackMove):
                var pin = disk.Pin(step);
                await disk.Enter(pin);
                return new TakeBackMove(id, person, device, pin.Id);
            case nameof(TellSlip):
                return disk.Tell(SlipKind.Away, "petra", until: 4, id: id);
            case nameof(TakeBackSlip):
                var slip = disk.Tell(SlipKind.Away, "petra", until: 4);
                await disk.Enter(slip);
                return new TakeBackSlip(id, person, device, slip.Id);
            default:
                Assert.Equal(nameof(UndoTick), name);
                await disk.Enter(new TickStep(BookOnDisk.NewId(), person, device, step, person));
                return new UndoTick(id, person, device, step);
        }
    }

    private static (int Head, int Done, int Audit, int Orders, int Ticks, int Undone, int Answers, int Pins, int Chores, int Slips, int Back, int Cookbooks) Counts(BookOnDisk disk)
    {
        using var book = new BookContext(BookFile.Options(disk.Path));
        return (disk.Book.State.Head, book.Done.Count(), book.Audit.Count(), book.Orders.Count(), book.Ticks.Count(),
            book.Ticks.Count(t => t.Undone != null), book.RingAnswers.Count(), book.Pins.Count(), book.Chores.Count(), book.Slips.Count(), book.Slips.Count(s => s.Undone != null), book.Cookbooks.Count());
    }
}
