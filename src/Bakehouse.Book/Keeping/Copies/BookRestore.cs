namespace Bakehouse.Book.Keeping.Copies;

using System.Globalization;
using Bakehouse.Book.Keeping.Auditing;

/// <summary>Puts a copy where there is no book yet. Never writes over a book: who wants that moves the old one away first.</summary>
public static class BookRestore
{
    /// <summary>
    /// Restores the newest copy of a folder in which the audit finds no fault, or one copy that is named. What it does is told line by
    /// line.
    /// </summary>
    /// <param name="from">A copy's file, or a folder of copies.</param>
    /// <param name="book">Where the book shall be; the folder is made.</param>
    /// <returns>Where the restored book stands.</returns>
    /// <exception cref="BookClosedException">There is a book already, or no good copy; nothing was written.</exception>
    public static BookStands Restore(string from, string book, Action<string> tell)
    {
        var target = Path.GetFullPath(book);
        if (((string[])["", "-wal", "-shm"]).Select(e => new FileInfo(target + e)).FirstOrDefault(f => f.Exists && f.Length > 0) is { } used)
        {
            throw new BookClosedException($"{used.FullName} is there already; a copy is never restored over a book. Move it away, or name another place.");
        }

        var copy = Candidates(from).FirstOrDefault(c => IsGood(c, tell))
            ?? throw new BookClosedException($"There is no good copy in {from}. Name the folder or the file of another copy.");
        Put(copy, target);
        tell($"Restored: {target}");
        var stands = BookStands.Of(target);
        tell(stands.ToString());
        tell("What was entered after that is not in it: go through your papers and enter it again.");
        return stands;
    }

    private static IEnumerable<string> Candidates(string from)
    {
        if (File.Exists(from))
        {
            return [Path.GetFullPath(from)];
        }

        var folder = new CopyFolder(from);
        return folder.Times().Reverse().Select(folder.FileOf);
    }

    private static bool IsGood(string copy, Action<string> tell)
    {
        tell($"Looking at {copy}");
        try
        {
            var faults = BookAudit.Examine(copy);
            tell(faults.Count == 0
                ? "The audit finds no fault."
                : string.Create(CultureInfo.InvariantCulture, $"Not this one, {faults.Count} faults: {faults[0]}"));
            return faults.Count == 0;
        }
        catch (BookClosedException unreadable)
        {
            tell($"Not this one: {unreadable.Message}");
            return false;
        }
    }

    private static void Put(string copy, string target)
    {
        var part = target + ".part";
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(copy, part, overwrite: true);
            using (var file = new FileStream(part, FileMode.Open, FileAccess.ReadWrite))
            {
                file.Flush(flushToDisk: true);
            }

            File.Move(part, target, overwrite: true);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            throw new BookClosedException($"The copy can't be put at {target}: {trouble.Message}", trouble);
        }
    }
}
