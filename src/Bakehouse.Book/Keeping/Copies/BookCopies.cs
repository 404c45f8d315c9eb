namespace Bakehouse.Book.Keeping.Copies;

using Bakehouse.Book.Keeping.Auditing;
using Bakehouse.Domain;
using Microsoft.Data.Sqlite;
using NodaTime;

/// <summary>What became of taking a copy.</summary>
/// <param name="At">When it was taken.</param>
/// <param name="Path">The good copy, or null if there is none: those that were there stay.</param>
/// <param name="Second">The same copy in the second place, or null.</param>
/// <param name="Problems">Why there is none, or none in the second place.</param>
public sealed record CopyTaken(Instant At, string? Path, string? Second, IReadOnlyList<Problem> Problems);

/// <summary>
/// Takes copies of a book that is in use. A copy is one moment of the book; it counts only when the audit finds no fault in it,
/// so a book that has gone bad never pushes a good copy out.
/// </summary>
/// <param name="book">The book's file.</param>
/// <param name="first">Where copies lie.</param>
/// <param name="second">Another disk, or null if the owner named none.</param>
public sealed class BookCopies(string book, CopyFolder first, CopyFolder? second)
{
    /// <summary>The book's file.</summary>
    public string Book => book;

    /// <summary>Where copies lie.</summary>
    public CopyFolder First => first;

    /// <summary>The other disk, or null.</summary>
    public CopyFolder? Second => second;

    /// <summary>The copies of a book: the folder "copies" beside it unless told.</summary>
    public static BookCopies Of(string book, string? folder = null, string? secondFolder = null) => new(
        System.IO.Path.GetFullPath(book),
        new CopyFolder(folder ?? System.IO.Path.Combine(System.IO.Path.GetDirectoryName(System.IO.Path.GetFullPath(book))!, "copies")),
        secondFolder is null ? null : new CopyFolder(secondFolder));

    /// <summary>When the newest good copy was taken, or null if there is none.</summary>
    public Instant? Newest => first.Times() is { Count: > 0 } times ? times[^1] : null;

    /// <summary>Takes one copy and takes away those that are kept no longer.</summary>
    public CopyTaken Take(Instant now)
    {
        try
        {
            Directory.CreateDirectory(first.Path);
            // One at a time, also among processes; the system lets go of it however a process ends.
            using var only = new FileStream(System.IO.Path.Combine(first.Path, "copy.lock"), FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
            return TakeAlone(now);
        }
        catch (Exception trouble) when (trouble is SqliteException or IOException or UnauthorizedAccessException or BookClosedException)
        {
            return new CopyTaken(now, null, null, [new Problem("copy", first.Path, $"No copy was taken: {trouble.Message}", "Look at the disk and its room; the copies that were there are untouched.")]);
        }
    }

    private CopyTaken TakeAlone(Instant now)
    {
        File.Delete(first.Part);
        CopyInto(first.Part);
        if (BookAudit.Examine(first.Part) is { Count: > 0 } faults)
        {
            File.Delete(first.Part);
            return new CopyTaken(now, null, null, [.. faults.Select(f => new Problem("book", f.Rule.Id, $"The copy was thrown away, the audit finds a fault in it: {f}", "Keep the copies that are there, and ask for help before you go on."))]);
        }

        var zone = BookStands.Of(first.Part).Zone;
        var copy = first.Finish(now);
        first.Prune(zone);
        return second is null ? new CopyTaken(now, copy, null, []) : Brought(now, copy, second, zone);
    }

    private static CopyTaken Brought(Instant now, string copy, CopyFolder second, DateTimeZone zone)
    {
        try
        {
            var there = second.Bring(copy, now);
            second.Prune(zone);
            return new CopyTaken(now, copy, there, []);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            return new CopyTaken(now, copy, null, [new Problem("second place", second.Path, $"The copy is not in the second place: {trouble.Message}", "Plug that disk in, or name another.")]);
        }
    }

    /// <summary>One moment of the book into a new file, while others write (https://www.sqlite.org/lang_vacuum.html#vacuuminto).</summary>
    private void CopyInto(string part)
    {
        using var from = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = book, Mode = SqliteOpenMode.ReadOnly, Pooling = false, DefaultTimeout = 60 }.ToString());
        from.Open();
        using var into = from.CreateCommand();
        into.CommandText = "VACUUM INTO $part";
        into.Parameters.AddWithValue("$part", part);
        into.ExecuteNonQuery();
    }
}
