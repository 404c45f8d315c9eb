namespace Bakehouse.Book.Keeping;

using System.Globalization;
using System.Text;

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
            throw new BookClosedException($"Another Bakehouse ({Holder(path)}) has the book {book} open. Close it first, or open another book.", trouble);
        }

        taken.SetLength(0);
        taken.Write(Encoding.ASCII.GetBytes(Environment.ProcessId.ToString(CultureInfo.InvariantCulture)));
        taken.Flush();
        return new BookLock(taken);
    }

    public void Dispose() => file.Dispose();

    private static string Holder(string path)
    {
        try
        {
            using var read = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
            using var text = new StreamReader(read, Encoding.ASCII);
            return $"process {text.ReadToEnd().Trim()}";
        }
        catch (IOException)
        {
            // Some systems let nobody read a locked file; the refusal stands all the same.
            return "another process";
        }
    }
}
