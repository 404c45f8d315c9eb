namespace Bakehouse.Book.Keeping;

using System.Globalization;
using System.Text.RegularExpressions;

/// <summary>A disk as the system has hung it into the tree of folders.</summary>
/// <param name="Device">What is mounted: "/dev/sda1", "nas:/shared".</param>
/// <param name="Point">The folder at which it hangs.</param>
/// <param name="Kind">Kind of file system: "ext4", "nfs4".</param>
/// <param name="Options">"rw", "ro" and others.</param>
internal sealed partial record Mount(string Device, string Point, string Kind, IReadOnlyList<string> Options)
{
    private const string Table = "/proc/self/mounts";

    /// <summary>The lines of this machine; none where the system has no such table (only Linux has).</summary>
    public static IReadOnlyList<string> Lines => File.Exists(Table) ? File.ReadAllLines(Table) : [];

    /// <summary>
    /// The mount that a folder lies on, read from lines of device, point, kind and options; blanks in names stand as octal numbers. Of two on
    /// one point the later covers the earlier. https://man7.org/linux/man-pages/man5/proc_pid_mounts.5.html, fstab(5)
    /// </summary>
    public static Mount? Above(string folder, IReadOnlyList<string> lines) => lines
        .Select(l => l.Split(' '))
        .Where(w => w.Length > 3)
        .Select(w => new Mount(Plain(w[0]), Plain(w[1]), w[2], w[3].Split(',')))
        .Where(m => (folder.TrimEnd('/') + "/").StartsWith(m.Point.TrimEnd('/') + "/", StringComparison.Ordinal))
        .OrderBy(m => m.Point.Length)
        .LastOrDefault();

    private static string Plain(string name) =>
        Octal().Replace(name, m => ((char)Convert.ToInt32(m.Groups["code"].Value, 8)).ToString(CultureInfo.InvariantCulture));

    [GeneratedRegex(@"\\(?<code>[0-7]{3})", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Octal();
}
