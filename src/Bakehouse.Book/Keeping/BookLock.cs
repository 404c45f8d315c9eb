namespace Bakehouse.Book.Keeping;

using System.Globalization;

/// <summary>One Bakehouse for one book: an open lock file beside it, let go by the system when the process ends, however it ends.</summary>
internal sealed class BookLock : IDisposable
{
    private readonly FileStream file;

    private BookLock(FileStream file) => this.file = file;

    /// <summary>Takes the lock, or says which process on which machine has it, or why none can be taken.</summary>
    public static BookLock Take(string book)
    {
        FileStream taken;
        try
        {
            taken = new FileStream(book + ".lock", FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            throw ClosedDisk.Of(book, trouble) ?? new BookClosedException($"Another Bakehouse ({Holder(book)}) has the book {book} open. Close it first, or open another book.", trouble, WhyClosed.OpenElsewhere);
        }

        try
        {
            // The lock file itself can't be read by others while it is held.
            File.WriteAllText(PidOf(book), string.Create(CultureInfo.InvariantCulture, $"{Environment.ProcessId} on {Environment.MachineName}"));
            return new BookLock(taken);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            taken.Dispose();
            throw ClosedDisk.Of(book, trouble) ?? new BookClosedException($"Nothing can be written beside the book {book}: {trouble.Message}", trouble);
        }
    }

    public void Dispose() => file.Dispose();

    private static string PidOf(string book) => book + ".pid";

    private static string Holder(string book) =>
        File.Exists(PidOf(book)) ? $"process {File.ReadAllText(PidOf(book)).Trim()}" : "a process that has only just started";
}
