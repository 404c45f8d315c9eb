namespace Bakehouse.Book.Keeping;

using System.Diagnostics;
using Microsoft.Data.Sqlite;

/// <summary>Says of what the system answers why a book can't be opened: one message with the file, whose it is, and what to do.</summary>
internal static class ClosedDisk
{
    // Result codes of SQLite: https://www.sqlite.org/rescode.html
    private const int Busy = 5;
    private const int Locked = 6;
    private const int ReadOnly = 8;
    private const int Full = 13;
    private const int CannotOpen = 14;

    // Errors of the system: POSIX errno.h as Linux and macOS number them; those of Windows as HRESULT.
    private static readonly int[] NoWriting = [30, unchecked((int)0x80070013)];
    private static readonly int[] NoRoom = [28, unchecked((int)0x80070070)];

    /// <summary>The refusal, or null if the trouble is another one.</summary>
    public static BookClosedException? Of(string book, Exception trouble) => trouble switch
    {
        SqliteException { SqliteErrorCode: Busy or Locked } => new(
            $"Another program, no Bakehouse, holds the book {book}. Close what copies, scans or edits the file, then start again.", trouble, WhyClosed.Held),
        SqliteException { SqliteErrorCode: ReadOnly or CannotOpen } or UnauthorizedAccessException => MayNotWrite(book, trouble),
        IOException when NoWriting.Contains(trouble.HResult) => MayNotWrite(book, trouble),
        SqliteException { SqliteErrorCode: Full } => DiskFull(book, trouble),
        IOException when NoRoom.Contains(trouble.HResult) => DiskFull(book, trouble),
        SqliteException => new($"The book {book} can't be read: {trouble.Message} Check the disk, or restore the last copy.", trouble),
        _ => null,
    };

    private static BookClosedException DiskFull(string book, Exception trouble) =>
        new($"The disk of the book {book} is full. Free some room, then start again.", trouble, WhyClosed.DiskFull);

    private static BookClosedException MayNotWrite(string book, Exception trouble)
    {
        var folder = Path.GetDirectoryName(book)!;
        var mount = MountOf(folder);
        string[] facts =
        [
            .. File.Exists(book) ? [$"the file is {Owner(book)}"] : Array.Empty<string>(),
            .. Directory.Exists(folder) ? [$"the folder is {Owner(folder)}"] : Array.Empty<string>(),
            .. mount is null ? Array.Empty<string>() : [$"the disk {mount} is mounted read-only"],
        ];
        return new BookClosedException(
            $"Bakehouse, run by {Environment.UserName}, may not write the book {book}: {string.Join(", ", facts)}. Let it write to file and folder, or name another place for the book.",
            trouble,
            WhyClosed.ReadOnly);
    }

    /// <summary>Owner and mode as the system's own <c>stat</c> prints them; without it, that nobody knows.</summary>
    private static string Owner(string path)
    {
        try
        {
            var ask = new ProcessStartInfo("stat") { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
            foreach (var word in (string[])["-c", "%U's, mode %A", path])
            {
                ask.ArgumentList.Add(word);
            }

            using var stat = Process.Start(ask)!;
            var said = stat.StandardOutput.ReadToEnd().Trim();
            stat.WaitForExit();
            return said.Length > 0 ? said : "somebody else's";
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return "somebody else's";
        }
    }

    /// <summary>The mount point above a folder if it is read-only, else null.</summary>
    private static string? MountOf(string folder) =>
        Mount.Above(folder, Mount.Lines) is { } mount && mount.Options.Contains("ro") ? mount.Point : null;
}
