namespace Bakehouse.Book.Keeping;

/// <summary>
/// Room beside the book that nobody uses. When the disk is full it is given up, so that what people enter is still taken while
/// somebody frees more.
/// </summary>
/// <param name="book">Path of the book.</param>
internal sealed class Reserve(string book)
{
    /// <summary>Bytes that are kept: 64 MB, some thousand entries.</summary>
    public const long Size = 64L << 20;

    // On a disk with less the reserve itself would be what fills it.
    private const long LeastFree = 2L << 30;

    /// <summary>Where it lies.</summary>
    public string Path { get; } = book + ".reserve";

    /// <summary>Takes the room, if it is not taken yet and the disk has plenty. True if it is there now.</summary>
    public bool Keep()
    {
        if (File.Exists(Path))
        {
            return true;
        }

        try
        {
            if (new DriveInfo(System.IO.Path.GetDirectoryName(Path)!).AvailableFreeSpace < LeastFree)
            {
                return false;
            }

            // Allocated, not only as long: a file with a hole in it would keep no room.
            using var file = new FileStream(Path, new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write, PreallocationSize = Size });
            file.SetLength(Size);
            return true;
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    /// <summary>Frees the room. True if there was any.</summary>
    public bool GiveUp()
    {
        try
        {
            var there = File.Exists(Path);
            File.Delete(Path);
            return there;
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }
}
