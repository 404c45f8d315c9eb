namespace Bakehouse.Book.Keeping.Copies;

using System.Security.Cryptography;
using NodaTime;
using NodaTime.Text;

/// <summary>A folder of copies. What bears a copy's name in it is whole: a copy gets its name only when it lies synced on the disk.</summary>
public sealed class CopyFolder(string path)
{
    private const string Unfinished = "copy.part";
    private static readonly InstantPattern Name = InstantPattern.CreateWithInvariantCulture("'book-'uuuu-MM-dd'T'HHmmss'Z.db'");

    /// <summary>The folder.</summary>
    public string Path { get; } = System.IO.Path.GetFullPath(path);

    /// <summary>Where a copy is made before it has its name.</summary>
    public string Part => System.IO.Path.Combine(Path, Unfinished);

    /// <summary>Times of the copies, oldest first; none if the folder isn't there.</summary>
    public IReadOnlyList<Instant> Times() => Directory.Exists(Path)
        ? [.. Directory.EnumerateFiles(Path, "book-*.db").Select(f => Name.Parse(System.IO.Path.GetFileName(f))).Where(p => p.Success).Select(p => p.Value).Order()]
        : [];

    /// <summary>The file of a copy.</summary>
    public string FileOf(Instant time) => System.IO.Path.Combine(Path, Name.Format(time));

    /// <summary>Syncs what was made as <see cref="Part"/> and gives it its name.</summary>
    public string Finish(Instant time)
    {
        using (var file = new FileStream(Part, FileMode.Open, FileAccess.ReadWrite))
        {
            file.Flush(flushToDisk: true);
        }

        File.Move(Part, FileOf(time), overwrite: true);
        return FileOf(time);
    }

    /// <summary>Brings a copy that was made elsewhere, and reads it back before it gets its name.</summary>
    /// <exception cref="IOException">It can't be written, or reads back otherwise.</exception>
    public string Bring(string copy, Instant time)
    {
        Directory.CreateDirectory(Path);
        File.Copy(copy, Part, overwrite: true);
        if (!Hash(copy).SequenceEqual(Hash(Part)))
        {
            throw new IOException($"{Part} does not read back as it was written.");
        }

        return Finish(time);
    }

    /// <summary>Takes away what <see cref="KeptCopies"/> does not keep.</summary>
    public void Prune(DateTimeZone zone)
    {
        var times = Times();
        var kept = KeptCopies.Of(times, zone);
        foreach (var time in times.Where(t => !kept.Contains(t)))
        {
            File.Delete(FileOf(time));
        }
    }

    private static byte[] Hash(string path)
    {
        using var file = File.OpenRead(path);
        return SHA256.HashData(file);
    }
}
