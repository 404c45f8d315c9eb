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
    private const int Full = 13;

    /// <summary>The problem, or null if the trouble is another one.</summary>
    public static Problem? Of(Exception trouble)
    {
        for (var inner = trouble; inner is not null; inner = inner.InnerException)
        {
            if (inner is SqliteException { SqliteErrorCode: var code })
            {
                return Of(code);
            }
        }

        return null;
    }

    private static Problem? Of(int code) => code switch
    {
        Busy => new Problem("book", "busy", "Not saved: another program holds the book.", "Try again in a moment; close what copies or scans the file."),
        ReadOnly => new Problem("book", "read-only", "Not saved: the book's disk or file may only be read.", "Let Bakehouse write to its folder, then try again."),
        InputOutput => new Problem("book", "disk fault", "The disk had a fault; perhaps it is saved, perhaps not.", "Send it again: it is written once. Then look at the disk."),
        Full => new Problem("book", "disk full", "Not saved: the disk is full.", "Free some room, then try again."),
        _ => null,
    };
}
