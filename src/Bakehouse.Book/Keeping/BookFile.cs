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
            using var context = file.Context();
            BookMigrations.BringUpToDate(context, full);
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
}
