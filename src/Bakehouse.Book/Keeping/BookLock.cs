namespace Bakehouse.Book.Keeping;

using System.Globalization;

/// <summary>One Bakehouse for one book: an open lock file beside it, let go by the system when the process ends, however it ends.</summary>
internal sealed class BookLock : IDisposable
{
    private readonly FileStream file;

    private BookLock(FileStream file) => this.file = file;

    /// <summary>Takes the lock, or says which process has it.</summary>
    public static BookLock Take(string book)
    {
        var path = book + ".lock";
        FileStream taken;
        try
        {
            taken = new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
        }
        catch (IOException trouble)
        {
            throw new BookClosedException($"Another Bakehouse ({Holder(book)}) has the book {book} open. Close it first, or open another book.", trouble);
        }
        catch (UnauthorizedAccessException trouble)
        {
            throw new BookClosedException($"Bakehouse may not write beside the book {book}. Let it write to that folder, or name another.", trouble);
        }

        // The lock file itself can't be read by others while it is held.
        File.WriteAllText(PidOf(book), Environment.ProcessId.ToString(CultureInfo.InvariantCulture));
        return new BookLock(taken);
    }

    public void Dispose() => file.Dispose();

    private static string PidOf(string book) => book + ".pid";

    private static string Holder(string book) =>
        File.Exists(PidOf(book)) ? $"process {File.ReadAllText(PidOf(book)).Trim()}" : "a process that has only just started";
}
