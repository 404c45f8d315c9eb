namespace Bakehouse.Book.Keeping;

using Bakehouse.Domain;
using Microsoft.Data.Sqlite;

/// <summary>What the disk says, in words for the person at the screen. What was typed stays there.</summary>
internal static class DiskTrouble
{
    // Result codes of SQLite: https://www.sqlite.org/rescode.html
    private const int Busy = 5;
    private const int ReadOnly = 8;
    private const int InputOutput = 10;
    private const int Corrupt = 11;
    private const int Full = 13;
    private const int CannotOpen = 14;
    private const int NoDatabase = 26;

    /// <summary>Said once a second fault of the disk was seen: what it takes from now on can't be relied on.</summary>
    public static Problem NoMore { get; } = new(
        "book", "disk fault", "Not saved: the disk had two faults, nothing more is written.", "Your entry is kept on this screen. Close Bakehouse, look at the disk, start it again.");

    /// <summary>After a fault the book was asked, and it does not have it.</summary>
    public static Problem NotThere { get; } = new(
        "book", "disk fault", "Not saved: the disk had a fault.", "Your entry is kept on this screen. Send it again, then look at the disk.");

    /// <summary>True if nobody can say by the fault alone whether it was written: a commit that failed may stand after the next open.</summary>
    public static bool IsUnknown(Exception trouble) => CodeOf(trouble) == InputOutput;

    /// <summary>True if there was no room for it.</summary>
    public static bool IsFull(Exception trouble) => CodeOf(trouble) == Full;

    /// <summary>The problem, or null if the trouble is another one.</summary>
    public static Problem? Of(Exception trouble) => CodeOf(trouble) is { } code ? Of(code) : null;

    private static int? CodeOf(Exception trouble)
    {
        for (var inner = trouble; inner is not null; inner = inner.InnerException)
        {
            if (inner is SqliteException { SqliteErrorCode: var code })
            {
                return code;
            }
        }

        return null;
    }

    private static Problem? Of(int code) => code switch
    {
        Busy => new Problem("book", "busy", "Not saved: another program holds the book.", "Your entry is kept on this screen. Try again in a moment; close what copies or scans the file."),
        ReadOnly => new Problem("book", "read-only", "Not saved: the book's disk or file may only be read.", "Your entry is kept on this screen. Let Bakehouse write to its folder, then try again."),
        InputOutput => new Problem("book", "disk fault", "The disk had a fault; perhaps it is saved, perhaps not.", "Send it again: it is written once. Then look at the disk."),
        Full => new Problem("book", "disk full", "Not saved: the disk is full.", "Your entry is kept on this screen. Free some room, then send it again."),
        CannotOpen => new Problem("book", "closed", "Not saved: the book's file can't be opened.", "Your entry is kept on this screen. Look at the disk, then send it again."),
        Corrupt or NoDatabase => new Problem("book", "damaged", "Not saved: the book's file is damaged.", "Your entry is kept on this screen. Close Bakehouse and restore the last copy."),
        _ => null,
    };
}
