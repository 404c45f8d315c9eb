namespace Bakehouse.Book.Tests.Keeping;

using Bakehouse.Book.Keeping;

/// <summary>A book on a disk of another machine is refused before anything is touched. The table of mounts is planted: lines as in proc_pid_mounts(5).</summary>
public sealed class NetworkShareTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("bakehouse-share-").FullName;

    private string Path => System.IO.Path.Combine(folder, "book.db");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Theory]
    [InlineData("nas:/shared {0} nfs4 rw,relatime,vers=4.2 0 0", "nas:/shared, nfs4, at ")]
    [InlineData("//nas/shared {0} cifs rw,relatime,vers=3.1.1 0 0", "//nas/shared, cifs, at ")]
    [InlineData("me@nas:/home/me {0} fuse.sshfs rw,nosuid,nodev 0 0", "me@nas:/home/me, fuse.sshfs, at ")]
    public void A_book_on_a_share_is_refused_with_its_name_and_what_to_do(string line, string named)
    {
        string[] mounts = ["/dev/sda1 / ext4 rw 0 0", Line(line)];
        var refused = Assert.Throws<BookClosedException>(() => BookFile.Open(Path, mounts: mounts));
        Assert.Equal(WhyClosed.Unfit, refused.Why);
        Assert.Contains(named + folder, refused.Message, StringComparison.Ordinal);
        Assert.Contains("Keep it on a disk of this machine", refused.Message, StringComparison.Ordinal);
        Assert.Empty(Directory.EnumerateFileSystemEntries(folder));
    }

    /// <summary>The nearest mount counts, and of two on one folder the later.</summary>
    [Fact]
    public void A_disk_of_this_machine_is_taken_wherever_shares_are_beside_it()
    {
        string[] mounts = ["nas:/root / nfs rw 0 0", Line("nas:/old {0} nfs rw 0 0"), Line("/dev/sdb1 {0} ext4 rw 0 0"), Line("nas:/inner {0}/photos nfs rw 0 0"), Line("nas:/other {0}-two nfs rw 0 0")];
        BookFile.Open(Path, mounts: mounts).Dispose();
        Assert.True(File.Exists(Path));
    }

    [Fact]
    public void A_link_to_a_share_is_a_share_and_a_blank_in_its_name_is_read()
    {
        var share = Directory.CreateDirectory(System.IO.Path.Combine(folder, "the share")).FullName;
        var link = Directory.CreateSymbolicLink(System.IO.Path.Combine(folder, "books"), share).FullName;
        string[] mounts = ["/dev/sda1 / ext4 rw 0 0", $"nas:/x {share.Replace(" ", @"\040", StringComparison.Ordinal)} nfs rw 0 0"];
        var refused = Assert.Throws<BookClosedException>(() => BookFile.Open(System.IO.Path.Combine(link, "book.db"), mounts: mounts));
        Assert.Contains("nas:/x, nfs, at " + share, refused.Message, StringComparison.Ordinal);
    }

    private string Line(string text) => string.Format(System.Globalization.CultureInfo.InvariantCulture, text, folder);
}
