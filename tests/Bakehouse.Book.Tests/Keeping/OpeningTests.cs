namespace Bakehouse.Book.Tests.Keeping;

using System.Globalization;
using System.Security.Cryptography;
using Bakehouse.Book.Entries;
using Bakehouse.Book.Keeping;
using Bakehouse.Book.Tables;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

public sealed class OpeningTests
{
    [Fact]
    public void The_settings_that_keep_an_entry_through_a_pulled_plug_read_back()
    {
        using var disk = new BookOnDisk();
        using var context = new BookContext(BookFile.Options(disk.Path));
        context.Database.OpenConnection();

        var read = Pragmas.Read(context.Database.GetDbConnection());

        Assert.Equal("wal", read["journal_mode"]);
        Assert.Equal("2", read["synchronous"]);
        Assert.Equal("1", read["foreign_keys"]);
        Assert.Equal("5000", read["busy_timeout"]);
    }

    [Fact]
    public void The_migrations_make_what_the_model_says()
    {
        using var disk = new BookOnDisk(withShop: false);
        using var context = new BookContext(BookFile.Options(disk.Path));

        Assert.False(context.Database.HasPendingModelChanges());
        Assert.Empty(context.Database.GetPendingMigrations());
        Assert.Equal(0, disk.Book.State.Head);
        Assert.Null(disk.Book.State.Shop);
    }

    [Fact]
    public void A_second_Bakehouse_on_the_same_book_is_refused_and_told_the_process()
    {
        using var disk = new BookOnDisk(withShop: false);

        var refused = Assert.Throws<BookClosedException>(disk.Open);

        Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"process {Environment.ProcessId} on {Environment.MachineName}"), refused.Message, StringComparison.Ordinal);
        Assert.Equal(WhyClosed.OpenElsewhere, refused.Why);
    }

    // A process killed while it migrates leaves exactly this behind: the row, and nothing of the migration.
    [Fact]
    public async Task Killed_in_a_migration_the_next_start_goes_on()
    {
        var folder = Directory.CreateTempSubdirectory("bakehouse-killed-").FullName;
        var path = Path.Combine(folder, "book.db");
        Run(path, "CREATE TABLE \"__EFMigrationsLock\" (\"Id\" INTEGER NOT NULL CONSTRAINT \"PK___EFMigrationsLock\" PRIMARY KEY, \"Timestamp\" TEXT NOT NULL)");
        Run(path, "INSERT INTO \"__EFMigrationsLock\" VALUES (1, '2026-10-14 07:00:00')");

        var opening = Task.Run(() => OrderBook.Open(path, new Planner.Quick.QuickPlanner(), new NodaTime.Testing.FakeClock(NodaTime.Instant.FromUtc(2026, 10, 14, 7, 0))));

        using (await opening.WaitAsync(TimeSpan.FromSeconds(20), TestContext.Current.CancellationToken))
        {
            Assert.True(File.Exists(path));
        }

        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public void A_book_of_a_newer_version_is_refused_and_not_touched()
    {
        using var disk = new BookOnDisk();
        disk.Book.Dispose();
        Run(disk.Path, "INSERT INTO __EFMigrationsHistory VALUES ('29991231235959_FarFuture', '99.0.0')");
        Run(disk.Path, "PRAGMA wal_checkpoint(TRUNCATE)");
        var before = SHA256.HashData(File.ReadAllBytes(disk.Path));

        var refused = Assert.Throws<BookClosedException>(disk.Open);

        Assert.Contains("newer", refused.Message, StringComparison.Ordinal);
        Assert.Equal(before, SHA256.HashData(File.ReadAllBytes(disk.Path)));
        Run(disk.Path, "DELETE FROM __EFMigrationsHistory WHERE ProductVersion = '99.0.0'");
        disk.Reopen();
    }

    [Fact]
    public void A_file_that_is_no_book_is_refused_with_its_name()
    {
        var folder = Directory.CreateTempSubdirectory("bakehouse-nobook-").FullName;
        var path = Path.Combine(folder, "shopping list.db");
        File.WriteAllText(path, string.Concat(Enumerable.Repeat("two dozen eggs\n", 1000)));

        var refused = Assert.Throws<BookClosedException>(() => OrderBook.Open(
            path, new Planner.Quick.QuickPlanner(), new NodaTime.Testing.FakeClock(NodaTime.Instant.FromUtc(2026, 10, 14, 7, 0))));

        Assert.Contains(path, refused.Message, StringComparison.Ordinal);
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public async Task A_book_held_by_another_program_is_told_and_takes_the_same_command_later()
    {
        using var disk = new BookOnDisk();
        var command = new WriteOrder(BookOnDisk.NewId(), "ines", "counter", BookOnDisk.Order(stage: Domain.Orders.Stage.Enquiry));
        using (var other = new SqliteConnection($"Data Source={disk.Path};Pooling=False"))
        {
            other.Open();
            using var hold = other.BeginTransaction();

            var refused = await disk.Enter(command);

            Assert.Equal(AnswerKind.Refused, refused.Kind);
            Assert.Contains("another program", refused.Message, StringComparison.Ordinal);
        }

        Assert.Equal(AnswerKind.Accepted, (await disk.Enter(command)).Kind);
        Assert.Single(disk.Book.State.Orders);
    }

    private static void Run(string path, string sql)
    {
        using var connection = new SqliteConnection($"Data Source={path};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
#pragma warning disable CA2100 // Constant text of this file.
        command.CommandText = sql;
#pragma warning restore CA2100
        command.ExecuteNonQuery();
    }
}
