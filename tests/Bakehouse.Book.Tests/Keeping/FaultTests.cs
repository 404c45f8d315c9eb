namespace Bakehouse.Book.Tests.Keeping;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Tests.Entries;
using Bakehouse.Domain.Freezer;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Reminders;
using Bakehouse.Domain.Slips;
using Microsoft.Data.Sqlite;
using NodaTime;

/// <summary>
/// Every command with its first, second, third … call of the database failing, until none fails: what was said is true, nothing is
/// half, and sent again it is written once. (The loop is how SQLite tests itself: https://www.sqlite.org/testing.html, section 3.2.)
/// </summary>
public sealed class FaultTests(ITestOutputHelper output)
{
    private const int Busy = 5;
    private const int InputOutput = 10;
    private const int Full = 13;

    private static readonly bool Long = Environment.GetEnvironmentVariable("BAKEHOUSE_LONG") is not null;

    /// <summary>The sample is opened in an empty book only; it goes the same way as the others.</summary>
    public static TheoryData<string> Names => [.. RightsTests.Commands.Select(c => c.Name).Where(n => n != nameof(OpenSample))];

    [Theory]
    [MemberData(nameof(Names))]
    public async Task Whichever_call_of_the_database_fails_what_was_said_is_true_and_again_it_is_written_once(string name)
    {
        var runs = await FailEach(name, afterwards: false, Full);
        // What failed when it was carried out already is the fault of which nobody knows: only the look at the book tells.
        if (Long || name is nameof(WriteOrder) or nameof(TickStep) or nameof(KeepDraft))
        {
            runs += await FailEach(name, afterwards: true, InputOutput);
        }

        if (Long)
        {
            runs += await FailEach(name, afterwards: false, InputOutput);
            runs += await FailEach(name, afterwards: false, Busy);
        }

        output.WriteLine($"{name}: {runs} faults");
        Assert.True(runs > 10);
    }

    [Fact]
    public async Task After_a_second_fault_of_the_disk_nothing_more_is_written_until_the_next_start()
    {
        var fault = new FaultAt();
        using var disk = new BookOnDisk(also: o => o.AddInterceptors(fault));
        for (var i = 0; i < 2; i++)
        {
            fault.Arm(1, afterwards: false, InputOutput);
            Assert.Contains("Not saved", (await disk.Write(BookOnDisk.Order(stage: Stage.Enquiry))).Message, StringComparison.Ordinal);
        }

        Assert.Contains("two faults", (await disk.Write(BookOnDisk.Order(stage: Stage.Enquiry))).Message, StringComparison.Ordinal);
        disk.Reopen();
        Assert.Equal(AnswerKind.Accepted, (await disk.Write(BookOnDisk.Order(stage: Stage.Enquiry))).Kind);
        Assert.Single(disk.Book.State.Orders);
    }

    private static async Task<int> FailEach(string name, bool afterwards, int code)
    {
        var fault = new FaultAt();
        using var disk = new BookOnDisk(also: o => o.AddInterceptors(fault));
        await disk.Write(BookOnDisk.Order("Moss", day: 24));
        for (var n = 1; ; n++)
        {
            var (command, tidy) = await Make(disk, name);
            fault.Arm(n, afterwards, code);
            var said = await disk.Enter(command);
            fault.Disarm();
            var isThere = IsThere(disk.Path, command.Id);
            Assert.True(isThere == (said.Kind == AnswerKind.Accepted), $"{name}, call {n}: said {said.Kind} {said.Message}, is in the book: {isThere}");

            var again = await disk.Enter(command);
            Assert.True(again.Kind == AnswerKind.Accepted, $"{name}, call {n}, sent again: {again.Message} {string.Join(' ', again.Problems)}");
            Assert.Equal(Head(disk.Path), disk.Book.State.Head);
            if (tidy is not null)
            {
                Assert.Equal(AnswerKind.Accepted, (await disk.Enter(tidy())).Kind);
            }

            if (!fault.WasReached)
            {
                return n - 1;
            }

            if (code == InputOutput)
            {
                disk.Reopen();
            }
        }
    }

    /// <summary>A command that is accepted if nothing fails, and one that puts the book back so that it does not grow.</summary>
    private static async Task<(Command Command, Func<Command>? Tidy)> Make(BookOnDisk disk, string name)
    {
        var (id, shop) = (BookOnDisk.NewId(), disk.Book.State.Shop!);
        switch (name)
        {
            case nameof(WriteShop):
                return (new WriteShop(id, "ines", "office", shop), null);
            case nameof(WriteOrder):
                var written = BookOnDisk.Order("Hale", day: 23);
                return (new WriteOrder(id, "ines", "counter", written), () => Cancel(written.Id));
            case nameof(LetDayGo):
                return (new LetDayGo(id, "", "by itself", await disk.KeptDayIsOver()), null);
            case nameof(MoveStage):
                var asked = (await disk.Write(BookOnDisk.Order("Enquiry", stage: Stage.Enquiry))).Order!;
                return (new MoveStage(id, "ines", "counter", asked.Id, asked.Version, Stage.Quoted), null);
            case nameof(TickStep):
                return (new TickStep(id, "petra", "tablet", First(disk), "petra"), () => Undo(First(disk)));
            case nameof(UndoTick):
                await disk.Enter(new TickStep(BookOnDisk.NewId(), "petra", "tablet", First(disk), "petra"));
                return (new UndoTick(id, "petra", "tablet", First(disk)), null);
            case nameof(AnswerRing):
                var order = (await disk.Write(BookOnDisk.Order("Hale", day: 23))).Order!;
                var state = disk.Book.State;
                var ring = Rings.Of(state.Week!, state.Wall!, state.Orders, shop, state.Ticks, state.Answers).Last(r => StepKey.Parse(r.Step)?.Order == order.Id);
                return (new AnswerRing(id, "ines", "counter", ring.Id, RingAnswerKind.Cannot, "The street is shut."), () => Cancel(order.Id));
            case nameof(KeepDraft):
                return (new KeepDraft(id, "ines", "counter", $"{id}"), null);
            case nameof(TakePlan):
                var (better, _, made) = await disk.PlanMadeWorse();
                return (new TakePlan(id, "ines", "office", better, disk.Book.State.Head), () => Cancel(made));
            case nameof(PlanNear):
                var near = await disk.FarOrderComesNear();
                return (new PlanNear(id, "", "by itself"), () => Cancel(near));
            case nameof(TrustClock):
                return (new TrustClock(id, "ines", "office"), null);
            case nameof(RenewCalendar):
                return (new RenewCalendar(id, "petra", "tablet", "petra", $"{id:N}{id:N}"), null);
            case nameof(StopCalendar):
                return (new StopCalendar(id, "petra", "tablet", "petra"), null);
            case nameof(CorrectTick):
                await disk.Enter(new TickStep(BookOnDisk.NewId(), "petra", "tablet", First(disk), "petra"));
                return (new CorrectTick(id, "petra", "tablet", First(disk), "dov", disk.Clock.GetCurrentInstant(), "It was Dov."), () => new UndoTick(BookOnDisk.NewId(), "ines", "office", First(disk)));
            case nameof(WriteChore):
                return (new WriteChore(id, "ines", "office", BookOnDisk.Chore() with { Id = BookOnDisk.NewId() }), null);
            case nameof(CountSpares):
                return (new CountSpares(id, "petra", "tablet", new SpareSponges("vanilla", 8, new LocalDate(2026, 10, 12), 1 + (id.ToByteArray()[0] % 9))), null);
            case nameof(WriteRecipes):
                return (new WriteRecipes(id, "ines", "office", [], [new Recipe($"r-{id.ToString("N")[..8]}", 0, $"Recipe {id}", RecipeKind.Part, [RecipeLine.Grams(await Sugar(disk), 10)], EggMethod.None, null, [])], "New"), null);
            case nameof(OpenPack):
                return (new OpenPack(id, "petra", "tablet", await Sugar(disk), new Pack("second", null)), null);
            case nameof(LookAtRecipes):
                var looked = (await disk.Write(BookOnDisk.Order("Hale", day: 23))).Order!;
                return (new LookAtRecipes(id, "ines", "office", looked.Id, looked.Version, true, []), () => Cancel(looked.Id));
            case nameof(ReadBackAllergies):
                var avoids = (await disk.Write(BookOnDisk.Avoiding(BookOnDisk.Order("Hale", day: 23), "nuts"))).Order!;
                return (new ReadBackAllergies(id, "petra", "tablet", avoids.Id, avoids.Version), () => Cancel(avoids.Id));
            case nameof(PinStep):
                return (disk.Pin(First(disk), id), () => new UnpinStep(BookOnDisk.NewId(), "ines", "office", First(disk)));
            case nameof(UnpinStep):
                await disk.Enter(disk.Pin(First(disk)));
                return (new UnpinStep(id, "ines", "office", First(disk)), null);
            case nameof(TakeBackMove):
                var pin = disk.Pin(First(disk));
                await disk.Enter(pin);
                return (new TakeBackMove(id, "ines", "office", pin.Id), null);
            case nameof(TellSlip):
                return (disk.Tell(SlipKind.Away, "petra", until: 4, id: id), () => new TakeBackSlip(BookOnDisk.NewId(), "ines", "office", id));
            case nameof(TakeBackSlip):
                var told = disk.Tell(SlipKind.Out, "oven1", until: 2);
                await disk.Enter(told);
                return (new TakeBackSlip(id, "ines", "office", told.Id), null);
            default:
                throw new ArgumentException($"No command is made for {name}: add it here.", nameof(name));
        }

        MoveStage Cancel(Guid order) => new(BookOnDisk.NewId(), "ines", "counter", order, disk.Book.State.Orders.Single(o => o.Id == order).Version, Stage.Cancelled);
        static UndoTick Undo(string step) => new(BookOnDisk.NewId(), "petra", "tablet", step);
    }

    /// <summary>The id of an ingredient that the book knows.</summary>
    private static async Task<string> Sugar(BookOnDisk disk)
    {
        if (disk.Book.State.Cookbook.Version == 0)
        {
            await disk.Enter(BookOnDisk.Recipes());
        }

        return "sugar";
    }

    private static string First(BookOnDisk disk) => disk.Book.State.Wall!.Plan.Steps.OrderBy(s => s.Start).ThenBy(s => s.Step, StringComparer.Ordinal).First().Step;

    private static bool IsThere(string path, Guid command) => Value(path, $"SELECT count(*) FROM done WHERE Id = '{command:N}'") == 1;

    private static long Head(string path) => Value(path, "SELECT Version FROM plan_head");

    private static long Value(string path, string sql)
    {
        using var connection = new SqliteConnection($"Data Source={path};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
#pragma warning disable CA2100 // Constant text and ids of this file.
        command.CommandText = sql;
#pragma warning restore CA2100
        return (long)command.ExecuteScalar()!;
    }
}
