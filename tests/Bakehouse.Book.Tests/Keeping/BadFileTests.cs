namespace Bakehouse.Book.Tests.Keeping;

using System.Security.Cryptography;
using Bakehouse.Book.Entries;
using Bakehouse.Book.Keeping;
using Bakehouse.Book.Keeping.Auditing;
using Bakehouse.Book.Tables;
using Bakehouse.Domain.Orders;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using NodaTime;
using static Bakehouse.Book.Tests.Keeping.BookAt;

/// <summary>Disks and files on which a book can't be opened or written: one message each, a code of its own, and nothing lost.</summary>
public sealed class BadFileTests : IDisposable
{
    private const string FirstTables = "20261125123536_FirstBook";
    private readonly string folder = Directory.CreateTempSubdirectory("bakehouse-badfile-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void On_a_disk_that_may_only_be_read_the_mount_is_named_and_nothing_is_touched()
    {
        using var small = SmallDisk.OrSkip(3);
        var path = Path.Combine(small.Path, "book.db");
        Open(path).Dispose();
        var before = Hash(path);
        small.MakeReadOnly();

        var refused = Assert.Throws<BookClosedException>(() => Open(path));

        Assert.Equal(WhyClosed.ReadOnly, refused.Why);
        Assert.Contains(path, refused.Message, StringComparison.Ordinal);
        Assert.Contains($"the disk {small.Path} is mounted read-only", refused.Message, StringComparison.Ordinal);
        Assert.Equal(before, Hash(path));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_file_or_folder_that_may_only_be_read_is_named_with_its_owner(bool isFile)
    {
        var path = Path.Combine(folder, "book.db");
        Open(path).Dispose();
        using var locked = ReadOnly(isFile ? path : folder, isFile);
        if (!isFile)
        {
            path = Path.Combine(folder, "other.db");
        }

        var refused = Assert.Throws<BookClosedException>(() => Open(path));

        Assert.Equal(WhyClosed.ReadOnly, refused.Why);
        Assert.Contains(path, refused.Message, StringComparison.Ordinal);
        Assert.Contains($"is {Environment.UserName}'s, mode ", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_another_program_keeps_to_itself_is_told_as_that()
    {
        var path = Path.Combine(folder, "book.db");
        Open(path).Dispose();
        using var other = new SqliteConnection($"Data Source={path};Pooling=False");
        other.Open();
        Run(other, "PRAGMA locking_mode = EXCLUSIVE; PRAGMA journal_mode = DELETE; BEGIN EXCLUSIVE");

        var refused = Assert.Throws<BookClosedException>(() => Open(path));

        Assert.Equal(WhyClosed.Held, refused.Why);
        Run(other, "ROLLBACK");
    }

    [Fact]
    public void A_newer_book_is_refused_with_its_log_and_neither_is_touched()
    {
        var path = Path.Combine(folder, "book.db");
        Open(path).Dispose();
        using var other = new SqliteConnection($"Data Source={path};Pooling=False");
        other.Open();
        Run(other, "PRAGMA user_version = 99");
        var before = (Hash(path), Hash(path + "-wal"));

        var refused = Assert.Throws<BookClosedException>(() => Open(path));

        Assert.Equal(WhyClosed.Newer, refused.Why);
        Assert.Equal(before, (Hash(path), Hash(path + "-wal")));
    }

    [Fact]
    public void A_database_of_something_else_is_refused_and_not_touched()
    {
        var path = Path.Combine(folder, "music.db");
        using (var other = new SqliteConnection($"Data Source={path};Pooling=False"))
        {
            other.Open();
            Run(other, "CREATE TABLE songs (name TEXT)");
        }

        var before = Hash(path);
        Assert.Equal(WhyClosed.Unreadable, Assert.Throws<BookClosedException>(() => Open(path)).Why);
        Assert.Equal(before, Hash(path));
    }

    [Fact]
    public async Task A_book_of_the_first_version_stopped_anywhere_on_its_way_to_this_one_is_old_or_new_and_the_next_start_goes_on()
    {
        var path = await OldBook();
        List<string> stops = [];
        // What lies on the disk at each call is what a kill at that moment leaves.
        var watch = new FaultAt { Watch = () => stops.Add(Snapshot(stops.Count)) };
        Open(path, o => o.AddInterceptors(watch)).Dispose();
        Assert.True(stops.Count >= 20, $"{stops.Count} stops");
        Assert.True(File.Exists(BookMigrations.Before(path, FirstTables)));
        var told = AuditTests.UsedBook.Told(path);

        // Every call of the migration itself; the reading afterwards looks alike each time.
        var every = Math.Max(1, stops.Count / (Environment.GetEnvironmentVariable("BAKEHOUSE_LONG") is null ? 20 : 1000));
        foreach (var stop in stops.Where((_, i) => i % every == 0))
        {
            var file = Path.Combine(stop, "book.db");
            Open(file).Dispose();
            Assert.Empty(BookAudit.Examine(file));
            Assert.False(File.Exists(file + ".next"));
            Assert.Equal(Facts(told), Facts(AuditTests.UsedBook.Told(file)));
        }

        TestContext.Current.TestOutputHelper?.WriteLine($"{stops.Count} stops, {stops.Count / every} tried: old or new, never between");
    }

    [Fact]
    public async Task A_migration_after_which_the_audit_finds_a_fault_leaves_the_old_book_in_its_place()
    {
        var path = await OldBook();
        using (var other = new SqliteConnection($"Data Source={path};Pooling=False"))
        {
            other.Open();
            Run(other, "UPDATE plan_head SET Version = Version + 5; PRAGMA journal_mode = DELETE");
        }

        var before = AuditTests.UsedBook.Told(path);
        Assert.Contains("A1", Assert.Throws<BookClosedException>(() => Open(path)).Message, StringComparison.Ordinal);
        Assert.Equal(before, AuditTests.UsedBook.Told(path));
    }

    /// <summary>A book as the first version left it: its tables, and what was written in them.</summary>
    private async Task<string> OldBook()
    {
        var (now, path) = (Path.Combine(folder, "now.db"), Path.Combine(folder, "book.db"));
        using (var book = Open(now))
        {
            await Accepted(book, new WriteShop(BookOnDisk.NewId(), "", "office", BookOnDisk.Shop));
            await Accepted(book, new WriteOrder(BookOnDisk.NewId(), "ines", "counter", BookOnDisk.Order()));
        }

        await using (var context = new BookContext(BookFile.Options(path, pooling: false)))
        {
            await context.GetService<IMigrator>().MigrateAsync(FirstTables, TestContext.Current.CancellationToken);
        }

        using var old = new SqliteConnection($"Data Source={path};Pooling=False;Foreign Keys=False");
        old.Open();
        Run(old, $"ATTACH '{now}' AS now; DELETE FROM plan_head");
        foreach (var table in (string[])["plan_head", "shops", "orders", "wall_steps", "wall_holds", "wall_cleans", "wall_choices", "done", "audit"])
        {
            Run(old, $"INSERT INTO main.{table} SELECT * FROM now.{table}");
        }

        return path;
    }

    private string Snapshot(int number)
    {
        var stop = Path.Combine(folder, $"stop{number}");
        Directory.CreateDirectory(stop);
        foreach (var file in Directory.EnumerateFiles(folder, "book.db*").Where(f => !f.EndsWith(".lock", StringComparison.Ordinal)))
        {
            File.Copy(file, Path.Combine(stop, Path.GetFileName(file)));
        }

        return stop;
    }

    /// <summary>All but the moment at which the migrations ran.</summary>
    private static string Facts(string told) => string.Join('\n', told.Split('\n').Where(l => !l.Contains("_FirstBook|", StringComparison.Ordinal)));

    private static Undone ReadOnly(string path, bool isFile)
    {
        if (Environment.UserName != "root")
        {
            SmallDisk.Run("chmod", isFile ? "400" : "500", path);
            return new Undone(() => SmallDisk.Run("chmod", isFile ? "600" : "700", path));
        }

        // Modes don't stop root; this does.
        if (!SmallDisk.Run("chattr", "+i", path))
        {
            Assert.Skip("This file system can't keep root from writing.");
        }

        return new Undone(() => SmallDisk.Run("chattr", "-i", path));
    }

    private static string Hash(string path)
    {
        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        return Convert.ToHexString(SHA256.HashData(file));
    }

    private static void Run(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
#pragma warning disable CA2100 // Constant text of this file.
        command.CommandText = sql;
#pragma warning restore CA2100
        command.ExecuteNonQuery();
    }

    private sealed class Undone(Action undo) : IDisposable
    {
        public void Dispose() => undo();
    }
}
