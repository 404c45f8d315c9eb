namespace Bakehouse.Book.Keeping;

/// <summary>
/// A book may not lie on a disk of another machine: its write-ahead log is shared through the memory of one host, so over a network two
/// programs could write at once and damage it (https://www.sqlite.org/wal.html, "Disadvantages", 2).
/// </summary>
internal static class NetworkShare
{
    // As Linux names them in its table: filesystems(5) for nfs and smb, the kernel's documentation (Documentation/filesystems) for the
    // others; "fuse." and a program's name: mount.fuse3(8).
    private static readonly HashSet<string> Kinds = new(StringComparer.Ordinal)
    {
        "nfs", "nfs4", "cifs", "smb3", "smbfs", "ncpfs", "afs", "coda", "ceph", "lustre", "fuse.sshfs", "fuse.glusterfs", "fuse.rclone",
    };

    /// <summary>The refusal, or null for a disk of this machine.</summary>
    /// <param name="book">Full path of the book; its folder is there.</param>
    /// <param name="mounts">Lines of the system's table of mounts; empty where it has none.</param>
    public static BookClosedException? Of(string book, IReadOnlyList<string> mounts)
    {
        var folder = Real(Path.GetDirectoryName(book)!);
        var share = mounts.Count > 0
            ? Mount.Above(folder, mounts) is { } mount && Kinds.Contains(mount.Kind) ? $"{mount.Device}, {mount.Kind}, at {mount.Point}" : null
            : IsShare(folder) ? folder : null;
        return share is null ? null : new BookClosedException(
            $"The book {book} lies on a network share ({share}). There it can be damaged when two machines write. Keep it on a disk of this machine; copies may go to the share.",
            why: WhyClosed.Unfit);
    }

    /// <summary>Windows and macOS say themselves what a disk is. A name that begins with two strokes is another machine's on Windows.</summary>
    private static bool IsShare(string folder) => OperatingSystem.IsWindows()
        ? folder.StartsWith(@"\\", StringComparison.Ordinal) || new DriveInfo(Path.GetPathRoot(folder)!).DriveType == DriveType.Network
        : new DriveInfo(folder).DriveType == DriveType.Network;

    /// <summary>The folder with every link in its name followed.</summary>
    private static string Real(string folder)
    {
        if (Path.GetDirectoryName(folder) is not { } above)
        {
            return folder;
        }

        var here = Path.Combine(Real(above), Path.GetFileName(folder));
        return Directory.ResolveLinkTarget(here, returnFinalTarget: true) is { } target ? Real(target.FullName) : here;
    }
}
