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

    private BookFile(string path, BookLock hold, Action<DbContextOptionsBuilder>? also)
    {
        Path = path;
        this.hold = hold;
        contexts = new PooledDbContextFactory<BookContext>(Options(path, also));
    }

    public string Path { get; }

    /// <summary>Opens the book at a path, or makes one. A file of a newer version is refused and stays as it is.</summary>
    /// <param name="also">What else each context gets: a test puts faults there.</param>
    /// <param name="mounts">The system's table of mounts; a test plants one.</param>
    public static BookFile Open(string path, Action<DbContextOptionsBuilder>? also = null, IReadOnlyList<string>? mounts = null)
    {
        var full = System.IO.Path.GetFullPath(path);
        MakeFolder(full);
        if (NetworkShare.Of(full, mounts ?? Mount.Lines) is { } refused)
        {
            throw refused;
        }

        var taken = BookLock.Take(full);
        try
        {
            RefuseOldEngine();
            RefuseReadOnly(full);
            BookMigrations.BringUpToDate(full, also);
            var file = new BookFile(full, taken, also);
            using var context = file.Context();
            context.Database.OpenConnection();
            return file;
        }
        catch (Exception trouble)
        {
            taken.Dispose();
            if (ClosedDisk.Of(full, trouble) is { } closed)
            {
                throw closed;
            }

            throw;
        }
    }

    /// <summary>A context for one operation.</summary>
    public BookContext Context() => contexts.CreateDbContext();

    /// <summary>Closes every idle connection, so that the next operation opens the file anew.</summary>
    public void Reopen()
    {
        using var context = Context();
        SqliteConnection.ClearPool((SqliteConnection)context.Database.GetDbConnection());
    }

    public void Dispose()
    {
        Reopen();
        hold.Dispose();
    }

    internal static DbContextOptions<BookContext> Options(string path, Action<DbContextOptionsBuilder>? also = null, bool pooling = true)
    {
        var options = new DbContextOptionsBuilder<BookContext>()
            .UseSqlite(
                new SqliteConnectionStringBuilder { DataSource = path, ForeignKeys = true, DefaultTimeout = 5, Pooling = pooling }.ToString(),
                s => s.MigrationsAssembly(BookContext.Migrations))
            .AddInterceptors(new Pragmas());
        also?.Invoke(options);
        return options.Options;
    }

    private static void MakeFolder(string path)
    {
        try
        {
            Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            throw ClosedDisk.Of(path, trouble) ?? new BookClosedException($"The folder of the book {path} can't be made: {trouble.Message}", trouble);
        }
    }

    /// <summary>A book that may only be read could not even be opened to read: the write-ahead log must be written.</summary>
    private static void RefuseReadOnly(string path)
    {
        if (File.Exists(path))
        {
            using var mayWrite = new FileStream(path, FileMode.Open, FileAccess.ReadWrite, FileShare.ReadWrite);
        }
    }

    private static void RefuseOldEngine()
    {
        using var memory = new SqliteConnection("Data Source=:memory:");
        memory.Open();
        if (Version.Parse(memory.ServerVersion) < Oldest)
        {
            throw new BookClosedException($"The SQLite library is {memory.ServerVersion}; the book needs {Oldest} or newer.", why: WhyClosed.Unfit);
        }
    }
}
