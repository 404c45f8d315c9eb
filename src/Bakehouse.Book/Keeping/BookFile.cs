namespace Bakehouse.Book.Keeping;

using Bakehouse.Book.Tables;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;

/// <summary>The file of the book: made, locked, brought to this version. Gives contexts while it is open.</summary>
internal sealed class BookFile : IDisposable
{
    // Below it, a rare fault of the write-ahead log could damage the file (3.7.0 to 3.51.2).
    private static readonly Version Oldest = new(3, 51, 3);

    private readonly PooledDbContextFactory<BookContext> contexts;
    private readonly BookLock hold;

    private BookFile(string path, BookLock hold)
    {
        Path = path;
        this.hold = hold;
        contexts = new PooledDbContextFactory<BookContext>(Options(path));
    }

    public string Path { get; }

    /// <summary>Opens the book at a path, or makes one. A file of a newer version is refused and stays as it is.</summary>
    public static BookFile Open(string path)
    {
        var full = System.IO.Path.GetFullPath(path);
        MakeFolder(full);
        var taken = BookLock.Take(full);
        try
        {
            RefuseOldEngine();
            var file = new BookFile(full, taken);
            file.RefuseNewer();
            file.BringUpToDate();
            return file;
        }
        catch (Exception trouble)
        {
            taken.Dispose();
            if (trouble is SqliteException sqlite)
            {
                throw new BookClosedException($"The book {full} can't be read: {sqlite.Message} Check the disk, or open the last backup.", sqlite);
            }

            throw;
        }
    }

    /// <summary>A context for one operation.</summary>
    public BookContext Context() => contexts.CreateDbContext();

    public void Dispose()
    {
        using (var context = Context())
        {
            SqliteConnection.ClearPool((SqliteConnection)context.Database.GetDbConnection());
        }

        hold.Dispose();
    }

    internal static DbContextOptions<BookContext> Options(string path) => new DbContextOptionsBuilder<BookContext>()
        .UseSqlite(
            new SqliteConnectionStringBuilder { DataSource = path, ForeignKeys = true, DefaultTimeout = 5 }.ToString(),
            s => s.MigrationsAssembly(BookContext.Migrations))
        .AddInterceptors(new Pragmas())
        .Options;

    private static void MakeFolder(string path)
    {
        try
        {
            Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            throw new BookClosedException($"The folder of the book {path} can't be made: {trouble.Message}", trouble);
        }
    }

    private static void RefuseOldEngine()
    {
        using var memory = new SqliteConnection("Data Source=:memory:");
        memory.Open();
        if (Version.Parse(memory.ServerVersion) < Oldest)
        {
            throw new BookClosedException($"The SQLite library is {memory.ServerVersion}; the book needs {Oldest} or newer.");
        }
    }

    /// <summary>Looks read-only, before anything else opens the file.</summary>
    private void RefuseNewer()
    {
        if (!File.Exists(Path) || new FileInfo(Path).Length == 0)
        {
            return;
        }

        using var context = Context();
        var known = context.Database.GetMigrations().ToHashSet(StringComparer.Ordinal);
        using var reader = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = Path, Mode = SqliteOpenMode.ReadOnly, Pooling = false }.ToString());
        reader.Open();
        var newer = Applied(reader).Where(m => !known.Contains(m)).ToList();
        if (newer.Count > 0)
        {
            throw new BookClosedException($"The book {Path} was written by a newer Bakehouse ({newer[^1]}). Start that one; the book was not touched.");
        }
    }

    private static List<string> Applied(SqliteConnection connection)
    {
        using var command = connection.CreateCommand();
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
    private void BringUpToDate()
    {
        using var context = Context();
        context.Database.OpenConnection();
        using (var command = context.Database.GetDbConnection().CreateCommand())
        {
            command.CommandText = "SELECT count(*) FROM sqlite_master WHERE name = '__EFMigrationsLock'";
            if ((long)command.ExecuteScalar()! > 0)
            {
                command.CommandText = "DELETE FROM __EFMigrationsLock";
                command.ExecuteNonQuery();
            }
        }

        if (context.Database.GetPendingMigrations().Any())
        {
            context.Database.Migrate();
        }
    }
}
