namespace Bakehouse.Book.Keeping;

using System.Globalization;
using Bakehouse.Book.Keeping.Auditing;
using Bakehouse.Book.Tables;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

/// <summary>
/// Brings the tables of a book to this version, or refuses a book of a newer one untouched. Only under the book's lock. A copy is
/// migrated and looked at, then takes the book's name in one step: killed at any moment, the file is the old one or the new one.
/// </summary>
internal static class BookMigrations
{
    /// <summary>Looks read-only first. The migrations' own machinery, slow to start, is asked only if something is to be done.</summary>
    public static void BringUpToDate(string path, Action<DbContextOptionsBuilder>? also)
    {
        var known = Known(path, also);
        var (applied, count) = Applied(path);
        var newer = applied.Where(m => !known.Contains(m)).ToList();
        if (newer.Count > 0 || count > known.Count)
        {
            throw new BookClosedException(
                $"The book {path} was written by a newer Bakehouse ({(newer.Count > 0 ? newer[^1] : $"version {count}")}). Start that one; the book was not touched.",
                why: WhyClosed.Newer);
        }

        if (applied.Count < known.Count)
        {
            Swap(path, applied, also);
        }
    }

    /// <summary>The file of the book as it was before a migration; the program of that time opens it.</summary>
    public static string Before(string path, string migration) => $"{path}.before-{migration}";

    private static HashSet<string> Known(string path, Action<DbContextOptionsBuilder>? also)
    {
        using var context = new BookContext(BookFile.Options(path, also));
        return context.GetService<IMigrationsAssembly>().Migrations.Keys.ToHashSet(StringComparer.Ordinal);
    }

    private static void Swap(string path, List<string> applied, Action<DbContextOptionsBuilder>? also)
    {
        var isThere = File.Exists(path) && new FileInfo(path).Length > 0;
        // What an interrupted try left is worth nothing: the book itself is still the old one.
        var next = path + ".next";
        Array.ForEach(["", "-wal", "-shm", "-journal"], e => File.Delete(next + e));
        if (isThere)
        {
            SetDown(path);
            File.Copy(path, next);
        }

        Migrate(next, also);
        SetDown(next);
        if (BookAudit.Examine(next) is { Count: > 0 } faults)
        {
            throw new BookClosedException(
                $"The book {path} was not brought to this version: the audit finds {faults.Count.ToString(CultureInfo.InvariantCulture)} faults afterwards, first {faults[0]} The book is as it was; start the Bakehouse that you had, or restore a copy.");
        }

        Sync(next);
        if (isThere)
        {
            File.Copy(path, Before(path, applied.Count > 0 ? applied[^1] : "nothing"), overwrite: true);
        }

        File.Move(next, path, overwrite: true);
    }

    private static void Migrate(string next, Action<DbContextOptionsBuilder>? also)
    {
        using var context = new BookContext(BookFile.Options(next, also, pooling: false));
        BreakDeadLock(context);
        context.Database.Migrate();
        // The count of migrations once more, where any tool reads it: https://www.sqlite.org/pragma.html#pragma_user_version
        var count = context.Database.GetAppliedMigrations().Count();
        context.Database.ExecuteSqlRaw(string.Create(CultureInfo.InvariantCulture, $"PRAGMA user_version = {count}"));
    }

    /// <summary>Everything into the one file: a write-ahead log left beside it would be taken for that of the file that gets its name.</summary>
    private static void SetDown(string path)
    {
        using var book = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = path, Pooling = false, DefaultTimeout = 5 }.ToString());
        book.Open();
        using var command = book.CreateCommand();
        command.CommandText = "PRAGMA journal_mode = DELETE";
        if (command.ExecuteScalar() is not "delete")
        {
            throw new BookClosedException($"Another program, no Bakehouse, holds the book {path}. Close what copies, scans or edits the file, then start again.", why: WhyClosed.Held);
        }
    }

    private static void Sync(string path)
    {
        using var file = new FileStream(path, FileMode.Open, FileAccess.ReadWrite);
        file.Flush(flushToDisk: true);
    }

    /// <summary>Names of the migrations that the book has seen, and their count as <c>user_version</c> has it (0 in an early book).</summary>
    private static (List<string> Names, long Count) Applied(string path)
    {
        if (!File.Exists(path) || new FileInfo(path).Length == 0)
        {
            return ([], 0);
        }

        using var book = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = path, Mode = SqliteOpenMode.ReadOnly, Pooling = false, DefaultTimeout = 5 }.ToString());
        book.Open();
        using var command = book.CreateCommand();
        command.CommandText = "PRAGMA user_version";
        var count = (long)command.ExecuteScalar()!;
        command.CommandText = "SELECT count(*) FROM sqlite_master WHERE name = '__EFMigrationsHistory'";
        if ((long)command.ExecuteScalar()! == 0)
        {
            RefuseStranger(command, path);
            return ([], count);
        }

        command.CommandText = "SELECT MigrationId FROM __EFMigrationsHistory ORDER BY MigrationId";
        using var rows = command.ExecuteReader();
        var applied = new List<string>();
        while (rows.Read())
        {
            applied.Add(rows.GetString(0));
        }

        return (applied, count);
    }

    /// <summary>A file without migrations is empty, but for their own lock perhaps; else it belongs to something else.</summary>
    private static void RefuseStranger(SqliteCommand command, string path)
    {
        command.CommandText = "SELECT count(*) FROM sqlite_master WHERE type = 'table' AND name <> '__EFMigrationsLock'";
        if ((long)command.ExecuteScalar()! > 0)
        {
            throw new BookClosedException($"{path} is a database, but no book of Bakehouse. It was not touched; name another file.");
        }
    }

    /// <summary>
    /// A process killed while it migrated left its row in the migrations' own lock, and the next would wait for ever. We hold
    /// the lock file, so nobody else is migrating: the row is dead.
    /// </summary>
    private static void BreakDeadLock(BookContext context)
    {
        context.Database.OpenConnection();
        using var command = context.Database.GetDbConnection().CreateCommand();
        command.CommandText = "SELECT count(*) FROM sqlite_master WHERE name = '__EFMigrationsLock'";
        if ((long)command.ExecuteScalar()! > 0)
        {
            command.CommandText = "DELETE FROM __EFMigrationsLock";
            command.ExecuteNonQuery();
        }
    }
}
