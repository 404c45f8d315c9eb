namespace Bakehouse.Book.Keeping;

using Bakehouse.Book.Tables;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

/// <summary>Brings the tables of a book to this version, or refuses a book of a newer one untouched. Only under the book's lock.</summary>
internal static class BookMigrations
{
    /// <summary>Looks read-only first. The migrations' own machinery, slow to start, is asked only if something is to be done.</summary>
    public static void BringUpToDate(BookContext context, string path)
    {
        var known = context.GetService<IMigrationsAssembly>().Migrations.Keys.ToHashSet(StringComparer.Ordinal);
        var applied = Applied(path);
        var newer = applied.Where(m => !known.Contains(m)).ToList();
        if (newer.Count > 0)
        {
            throw new BookClosedException($"The book {path} was written by a newer Bakehouse ({newer[^1]}). Start that one; the book was not touched.");
        }

        if (applied.Count < known.Count)
        {
            BreakDeadLock(context);
            context.Database.Migrate();
        }
    }

    private static List<string> Applied(string path)
    {
        if (!File.Exists(path) || new FileInfo(path).Length == 0)
        {
            return [];
        }

        using var book = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = path, Mode = SqliteOpenMode.ReadOnly, Pooling = false }.ToString());
        book.Open();
        using var command = book.CreateCommand();
        command.CommandText = "SELECT count(*) FROM sqlite_master WHERE name = '__EFMigrationsHistory'";
        if ((long)command.ExecuteScalar()! == 0)
        {
            return [];
        }

        command.CommandText = "SELECT MigrationId FROM __EFMigrationsHistory ORDER BY MigrationId";
        using var rows = command.ExecuteReader();
        var applied = new List<string>();
        while (rows.Read())
        {
            applied.Add(rows.GetString(0));
        }

        return applied;
    }

    /// <summary>
    /// A process killed while it migrated leaves its row in the migrations' own lock, and the next would wait for ever. We hold
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
