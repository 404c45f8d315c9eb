namespace Bakehouse.Book.Tests.Keeping;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Keeping;
using Bakehouse.Book.Keeping.Auditing;
using Bakehouse.Domain.Freezer;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Reminders;
using Bakehouse.Domain.Slips;
using Microsoft.Data.Sqlite;
using NodaTime;

/// <summary>
/// A book in which each kind of thing was written once; faults are planted in copies of it, and the audit must find each by the rule
/// that is meant for it. That every other test's book is clean is looked at where those are closed.
/// </summary>
public sealed class AuditTests(AuditTests.UsedBook used) : IClassFixture<AuditTests.UsedBook>
{
    /// <summary>Rule, and the SQL that breaks it.</summary>
    private static readonly (string Rule, string Fault)[] Faults =
    [
        ("A1", "UPDATE plan_head SET Version = Version + 1"),
        ("A1", "DELETE FROM plan_head"),
        ("A2", "DELETE FROM done WHERE Id = (SELECT max(Id) FROM done)"),
        ("A2", "DELETE FROM audit WHERE Counter = 3"),
        ("A2", "DROP INDEX IX_audit_CommandId; INSERT INTO audit SELECT 999, At, Person, Device, Command, CommandId, Subject, Outcome FROM audit WHERE Counter = 2"),
        ("A3", "UPDATE audit SET Counter = 900 WHERE Counter = 3"),
        ("A4", "UPDATE audit SET Outcome = 'Refused' WHERE Counter = 3"),
        ("A4", "UPDATE done SET At = At + 1 WHERE Id = (SELECT CommandId FROM audit WHERE Counter = 3)"),
        ("B1", "DELETE FROM orders WHERE Version = 1 AND Id IN (SELECT Id FROM orders WHERE Version = 2)"),
        ("B2", "DROP INDEX IX_orders_Number_Version; UPDATE orders SET Number = 401 WHERE Number = 402"),
        ("B2", "UPDATE orders SET Number = 777 WHERE Seq = (SELECT min(Seq) FROM orders WHERE Version = 2)"),
        ("B3", "UPDATE orders SET Stage = 'Cancelled' WHERE Seq = 1"),
        ("B3", "UPDATE orders SET Document = substr(Document, 1, 100) WHERE Seq = (SELECT max(Seq) FROM orders WHERE Stage = 'Enquiry')"),
        ("B4", "UPDATE orders SET Person = 'wren' WHERE Seq = 1"),
        ("B5", "DELETE FROM orders WHERE Stage = 'Enquiry'"),
        ("B6", "DELETE FROM orders WHERE Stage = 'Enquiry'"),
        ("B7", "UPDATE shops SET Version = 3"),
        ("B8", "UPDATE shops SET Written = Written + 1"),
        ("B9", "DELETE FROM calendars WHERE Ended IS NOT NULL"),
        ("B9", "DROP INDEX IX_calendars_Person; UPDATE calendars SET Ended = NULL"),
        ("C1", "UPDATE ticks SET Step = substr(Step, 1, 33) || 'feedfeedfeedfeedfeedfeedfeedfeed' || substr(Step, 66)"),
        ("C1", "UPDATE ticks SET \"Order\" = 'feedfeedfeedfeedfeedfeedfeedfeed'"),
        ("C2", "DROP INDEX IX_ticks_Step; INSERT INTO ticks SELECT 99, Step, \"Order\", Done, \"By\", Person, Device, Written, UndonePerson, Undone, Reason FROM ticks WHERE Undone IS NULL LIMIT 1"),
        ("C3", "UPDATE ticks SET Written = Written + 60000000"),
        ("C4", "DELETE FROM ticks WHERE Undone IS NULL"),
        ("C5", "DROP INDEX IX_ticks_Step; UPDATE ticks SET Undone = NULL, UndonePerson = NULL WHERE Undone IS NOT NULL"),
        ("C5", "DROP INDEX IX_ticks_Step; UPDATE ticks SET UndonePerson = 'petra' WHERE Undone IS NULL"),
        ("C6", "UPDATE ring_answers SET Turn = Turn + 1"),
        ("C6", "UPDATE ring_answers SET \"Order\" = 'feedfeedfeedfeedfeedfeedfeedfeed'"),
        ("C7", "DELETE FROM ring_answers WHERE Kind = 'Done'"),
        ("C7", "UPDATE ring_answers SET At = At + 1"),
        ("C8", "UPDATE ring_answers SET Reason = ' ' WHERE Kind = 'Cannot'"),
        ("C8", "DELETE FROM ticks WHERE Step IN (SELECT substr(Ring, instr(Ring, ':') + 1) FROM ring_answers WHERE Kind = 'Done')"),
        ("D1", "DELETE FROM wall_steps WHERE Step LIKE (SELECT substr(max(Step), 1, 65) || '%' FROM wall_steps WHERE Step NOT LIKE '%.cake.%')"),
        ("D2", "INSERT INTO wall_steps SELECT Id || '.cake.box.1', 0, '', NULL, NULL FROM orders WHERE Stage = 'Enquiry'"),
        ("D3", "DELETE FROM wall_steps WHERE Step = (SELECT substr(Hold, 1, instr(Hold, '>') - 1) FROM wall_holds LIMIT 1)"),
        ("D4", "UPDATE wall_steps SET Batch = 'one load' WHERE Machine IN (SELECT Machine FROM wall_steps GROUP BY Machine HAVING count(DISTINCT Start) > 1)"),
        ("D5", "UPDATE wall_steps SET People = 'petra', Start = (SELECT max(Start) FROM wall_steps WHERE People <> '') WHERE Step IN (SELECT Step FROM wall_steps WHERE People <> '' ORDER BY Start DESC LIMIT 2)"),
        ("D6", "UPDATE wall_steps SET Batch = NULL, Machine = 'oven1', Start = (SELECT max(Start) FROM wall_steps) WHERE Machine LIKE 'oven%'"),
        ("D7", "UPDATE wall_steps SET People = 'nobody' WHERE People <> ''"),
        ("D7", "UPDATE wall_steps SET Machine = 'oven99' WHERE Machine <> ''"),
        ("D8", "UPDATE plan_head SET Epoch = NULL"),
        ("D8", "UPDATE wall_steps SET Start = Start + 1 WHERE Step = (SELECT max(Step) FROM wall_steps)"),
        ("H1", "DROP INDEX IX_pins_Step; UPDATE pins SET Undone = NULL, UndonePerson = NULL"),
        ("H1", "UPDATE pins SET \"Order\" = 'feedfeedfeedfeedfeedfeedfeedfeed'"),
        ("H2", "DELETE FROM pins WHERE Undone IS NULL"),
        ("H2", "UPDATE pins SET Written = Written + 1"),
        ("H2", "UPDATE pins SET UndonePerson = 'petra' WHERE Undone IS NULL"),
        ("H3", "DELETE FROM chores WHERE Version = 1"),
        ("H3", "UPDATE chores SET Document = substr(Document, 1, 40)"),
        ("H4", "DELETE FROM chores WHERE Version = 2"),
        ("H4", "UPDATE chores SET Person = 'wren'"),
        ("H5", "DELETE FROM slips WHERE Undone IS NULL"),
        ("H5", "UPDATE slips SET Kind = 'Cracked'"),
        ("H5", "UPDATE slips SET Document = substr(Document, 1, 30)"),
        ("H7", "DELETE FROM spares"),
        ("H7", "UPDATE spares SET Person = 'dov'"),
        ("H7", "UPDATE spares SET Document = substr(Document, 1, 10)"),
        ("H6", "UPDATE slips SET Undone = NULL, UndonePerson = NULL"),
        ("H6", "UPDATE slips SET UndonePerson = 'petra' WHERE Undone IS NULL"),
        ("R1", "DELETE FROM cookbooks WHERE Version = 1"),
        ("R1", "UPDATE cookbooks SET Document = substr(Document, 1, 40)"),
        ("R2", "DELETE FROM cookbooks WHERE Version = (SELECT max(Version) FROM cookbooks)"),
        ("R2", "UPDATE cookbooks SET Written = Written + 1"),
        ("R2", "UPDATE cookbooks SET Why = ' '"),
        ("R3", "UPDATE orders SET Document = json_set(Document, '$.madeFrom.cookbook', 99) WHERE json_extract(Document, '$.madeFrom') IS NOT NULL"),
        ("R3", "UPDATE orders SET Document = json_set(Document, '$.madeFrom.lookedAt', 0) WHERE json_extract(Document, '$.madeFrom.cookbook') > 0"),
        ("R4", "UPDATE orders SET Document = json_set(Document, '$.statement.readBackBy', 'dov') WHERE json_extract(Document, '$.statement.readBack') IS NOT NULL"),
    ];

    public static TheoryData<int> Planted => [.. Enumerable.Range(0, Faults.Length)];

    [Theory]
    [MemberData(nameof(Planted))]
    public void A_planted_fault_is_found_by_its_rule(int planted)
    {
        var (rule, fault) = Faults[planted];
        var path = used.Copy();
        Assert.True(Run(path, fault) > 0, fault);

        var found = BookAudit.Examine(path);

        Assert.Contains(rule, found.Select(f => f.Rule.Id));
    }

    [Fact]
    public void Every_rule_has_a_fault_that_it_finds_and_a_clean_book_has_none()
    {
        Assert.Equal(BookAudit.Rules.Select(r => r.Id), Faults.Select(f => f.Rule).Distinct().Order());
        Assert.Empty(BookAudit.Examine(used.Copy()));
    }

    [Fact]
    public void What_it_finds_names_no_customer()
    {
        var path = used.Copy();
        Run(path, "UPDATE orders SET Stage = 'Quoted', Person = 'wren'; UPDATE ring_answers SET At = At + 1; DELETE FROM wall_steps");

        var said = string.Join('\n', BookAudit.Examine(path));

        Assert.NotEmpty(said);
        Assert.DoesNotContain("Moss", said, StringComparison.Ordinal);
        Assert.DoesNotContain("street", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_damaged_page_that_holds_anything_is_found()
    {
        // Random 64 bytes in random places of the file: found, or in room that holds nothing.
        var random = new Random(20261014);
        var flips = Environment.GetEnvironmentVariable("BAKEHOUSE_LONG") is null ? 20 : 200;
        var (found, unseen) = (0, 0);
        var before = UsedBook.Told(used.Copy());
        for (var i = 0; i < flips; i++)
        {
            var path = used.Copy();
            Damage(path, random);
            if (IsFound(path))
            {
                found++;
            }
            else
            {
                unseen++;
                Assert.Equal(before, UsedBook.Told(path));
            }
        }

        TestContext.Current.TestOutputHelper?.WriteLine($"{flips} damaged places: {found} found, {unseen} changed nothing that is stored");
        Assert.True(found > 0);
    }

    [Fact]
    public void What_is_no_book_is_told_with_its_path()
    {
        var nowhere = Path.Combine(used.Folder, "nowhere.db");
        Assert.Contains(nowhere, Assert.Throws<BookClosedException>(() => BookAudit.Examine(nowhere)).Message, StringComparison.Ordinal);
        var list = Path.Combine(used.Folder, "list.db");
        File.WriteAllText(list, string.Concat(Enumerable.Repeat("two dozen eggs\n", 1000)));
        Assert.Contains(list, Assert.Throws<BookClosedException>(() => BookAudit.Examine(list)).Message, StringComparison.Ordinal);
    }

    private static bool IsFound(string path)
    {
        try
        {
            return BookAudit.Examine(path).Count > 0;
        }
        catch (BookClosedException)
        {
            return true;
        }
    }

    private static void Damage(string path, Random random)
    {
        using var file = new FileStream(path, FileMode.Open, FileAccess.ReadWrite);
        var bytes = new byte[64];
        random.NextBytes(bytes);
        file.Position = random.NextInt64(file.Length - bytes.Length);
        file.Write(bytes);
    }

    private static int Run(string path, string sql)
    {
        using var connection = new SqliteConnection($"Data Source={path};Pooling=False;Foreign Keys=False");
        connection.Open();
        using var command = connection.CreateCommand();
#pragma warning disable CA2100 // Constant text of this file.
        command.CommandText = sql;
#pragma warning restore CA2100
        return command.ExecuteNonQuery();
    }

    /// <summary>Shop, orders of both kinds, an edit, ticks, one taken back, three answers to rings, a draft, a refusal.</summary>
    public sealed class UsedBook : IDisposable
    {
        private readonly string book;
        private int copies;

        public UsedBook()
        {
            book = Path.Combine(Folder, "used.db");
            using var disk = new BookOnDisk();
            Use(disk).GetAwaiter().GetResult();
            disk.Book.Dispose();
            Run(disk.Path, "PRAGMA wal_checkpoint(TRUNCATE)");
            File.Copy(disk.Path, book);
        }

        public string Folder { get; } = Directory.CreateTempSubdirectory("bakehouse-audit-").FullName;

        public string Copy()
        {
            var copy = Path.Combine(Folder, $"copy{Interlocked.Increment(ref copies)}.db");
            File.Copy(book, copy);
            return copy;
        }

        /// <summary>Everything that a book says, table by table.</summary>
        public static string Told(string path)
        {
            using var connection = new SqliteConnection($"Data Source={path};Pooling=False;Mode=ReadOnly");
            connection.Open();
            return string.Join('\n', Tables(connection).Select(t => string.Join('\n', Rows(connection, $"SELECT * FROM \"{t}\""))));
        }

        public void Dispose() => Directory.Delete(Folder, recursive: true);

        private static List<string> Tables(SqliteConnection connection) => Rows(connection, "SELECT name FROM sqlite_master WHERE type = 'table' ORDER BY name");

        private static List<string> Rows(SqliteConnection connection, string sql)
        {
            using var command = connection.CreateCommand();
#pragma warning disable CA2100 // Names of our own tables.
            command.CommandText = sql;
#pragma warning restore CA2100
            using var reader = command.ExecuteReader();
            var rows = new List<string>();
            while (reader.Read())
            {
                rows.Add(string.Join('|', Enumerable.Range(0, reader.FieldCount).Select(reader.GetValue)));
            }

            return rows;
        }

        private static async Task Use(BookOnDisk disk)
        {
            await UseRecipes(disk);
            await Accepted(disk, new WriteOrder(BookOnDisk.NewId(), "ines", "counter", BookOnDisk.Order("Enquiry", stage: Stage.Enquiry)));
            var moss = (await Accepted(disk, new WriteOrder(BookOnDisk.NewId(), "ines", "counter", BookOnDisk.Order("Moss", day: 17, inches: [10, 8, 6])))).Order!;
            await Accepted(disk, new WriteOrder(BookOnDisk.NewId(), "ines", "counter", moss with { Notes = "By the side door." }));
            await Accepted(disk, new WriteOrder(BookOnDisk.NewId(), "ines", "counter", BookOnDisk.Order("Hale", day: 17)));
            await Accepted(disk, new RenewCalendar(BookOnDisk.NewId(), "petra", "tablet", "petra", new string('A', 64)));
            await Accepted(disk, new RenewCalendar(BookOnDisk.NewId(), "petra", "tablet", "petra", new string('B', 64)));
            await Accepted(disk, new KeepDraft(BookOnDisk.NewId(), "ines", "counter", "{}"));
            Assert.Equal(AnswerKind.Refused, (await disk.Enter(new WriteOrder(BookOnDisk.NewId(), "ines", "counter", BookOnDisk.Order("")))).Kind);
            await SetByHand(disk);
            var first = disk.Book.State.Wall!.Plan.Steps.MinBy(s => s.Start)!.Step;
            disk.Clock.AdvanceMinutes(10);
            await Accepted(disk, new TickStep(BookOnDisk.NewId(), "petra", "tablet", first, "petra"));
            disk.Clock.AdvanceMinutes(1);
            await Accepted(disk, new UndoTick(BookOnDisk.NewId(), "petra", "tablet", first));
            disk.Clock.AdvanceMinutes(1);
            await Accepted(disk, new TickStep(BookOnDisk.NewId(), "petra", "tablet", first, "petra"));
            await AnswerRings(disk);
        }

        /// <summary>Recipes, a new pack, and a cake whose allergy was read back and whose recipes were looked at.</summary>
        private static async Task UseRecipes(BookOnDisk disk)
        {
            await Accepted(disk, BookOnDisk.Recipes());
            await Accepted(disk, new OpenPack(BookOnDisk.NewId(), "petra", "tablet", "pecans", new Pack("second", null)));
            var told = (await Accepted(disk, new WriteOrder(BookOnDisk.NewId(), "ines", "counter", BookOnDisk.Avoiding(BookOnDisk.Order("Nuts", day: 21), "nuts")))).Order!;
            var read = (await Accepted(disk, new ReadBackAllergies(BookOnDisk.NewId(), "petra", "tablet", told.Id, told.Version))).Order!;
            await Accepted(disk, new LookAtRecipes(BookOnDisk.NewId(), "ines", "counter", read.Id, read.Version, true, []));
        }

        /// <summary>A chore in two versions; a step pinned, let go and pinned again.</summary>
        private static async Task SetByHand(BookOnDisk disk)
        {
            var chore = BookOnDisk.Chore();
            await Accepted(disk, new WriteChore(BookOnDisk.NewId(), "ines", "counter", chore));
            await Accepted(disk, new WriteChore(BookOnDisk.NewId(), "ines", "counter", chore with { Version = 1, To = new LocalTime(7, 0) }));
            var last = disk.Book.State.Wall!.Plan.Steps.MaxBy(s => s.Start)!.Step;
            await Accepted(disk, disk.Pin(last));
            await Accepted(disk, new UnpinStep(BookOnDisk.NewId(), "ines", "counter", last));
            await Accepted(disk, disk.Pin(last));
            var ill = disk.Tell(SlipKind.Away, "dov", until: 2);
            await Accepted(disk, ill);
            await Accepted(disk, new TakeBackSlip(BookOnDisk.NewId(), "ines", "counter", ill.Id));
            await Accepted(disk, disk.Tell(SlipKind.RanOut, "lemon-curd", until: 3));
            await Accepted(disk, new CountSpares(BookOnDisk.NewId(), "petra", "tablet", new SpareSponges("vanilla", 8, new LocalDate(2026, 10, 12), 4)));
        }

        /// <summary>The first ring is done, the last can't be done.</summary>
        private static async Task AnswerRings(BookOnDisk disk)
        {
            var state = disk.Book.State;
            var rings = Rings.Of(state.Week!, state.Wall!, state.Orders, state.Shop!, state.Ticks, state.Answers);
            var first = rings.First(r => r.Steps.Count > 0);
            disk.Clock.Reset(first.Due);
            await Accepted(disk, new AnswerRing(BookOnDisk.NewId(), "petra", "tablet", first.Id, RingAnswerKind.Done, ""));
            var other = rings.Last(r => r.Steps.Count > 0 && !first.Steps.Contains(r.Step));
            disk.Clock.Reset(Instant.Max(other.Due, first.Due));
            await Accepted(disk, new AnswerRing(BookOnDisk.NewId(), "wren", "counter", other.Id, RingAnswerKind.Cannot, "The street is shut."));
        }

        private static async Task<Answer> Accepted(BookOnDisk disk, Command command)
        {
            var answer = await disk.Enter(command);
            Assert.True(answer.Kind == AnswerKind.Accepted, $"{command.GetType().Name}: {answer.Message} {string.Join(' ', answer.Problems)}");
            return answer;
        }
    }
}
