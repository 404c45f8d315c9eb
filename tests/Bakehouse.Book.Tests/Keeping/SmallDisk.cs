namespace Bakehouse.Book.Tests.Keeping;

using System.Diagnostics;
using System.Globalization;

/// <summary>A disk of a few megabytes in memory. Only root may mount one; without, the test is skipped and says why.</summary>
internal sealed class SmallDisk : IDisposable
{
    private SmallDisk(string path) => Path = path;

    public string Path { get; }

    private string Filler => System.IO.Path.Combine(Path, "filler");

    public static SmallDisk OrSkip(int megabytes)
    {
        var path = Directory.CreateTempSubdirectory("bakehouse-small-").FullName;
        if (!Run("mount", "-t", "tmpfs", "-o", string.Create(CultureInfo.InvariantCulture, $"size={megabytes}m"), "tmpfs", path))
        {
            Directory.Delete(path);
            Assert.Skip("Only root may mount a small disk, and not in every container.");
        }

        return new SmallDisk(path);
    }

    public void MakeReadOnly() => Assert.True(Run("mount", "-o", "remount,ro", Path));

    /// <summary>Writes until nothing more fits.</summary>
    public void Fill()
    {
        using var file = new FileStream(Filler, FileMode.Append, FileAccess.Write, FileShare.None, bufferSize: 0);
        for (var size = 65536; size > 0; size /= 16)
        {
            try
            {
                while (true)
                {
                    file.Write(new byte[size]);
                }
            }
            catch (IOException)
            {
                // Full for pieces of that size.
            }
        }
    }

    public void Free() => File.Delete(Filler);

    public void Dispose()
    {
        Run("umount", Path);
        Directory.Delete(Path, recursive: true);
    }

    /// <summary>True if the command ended well.</summary>
    public static bool Run(string command, params string[] words)
    {
        try
        {
            var start = new ProcessStartInfo(command) { RedirectStandardError = true, RedirectStandardOutput = true, UseShellExecute = false };
            Array.ForEach(words, start.ArgumentList.Add);
            using var process = Process.Start(start)!;
            process.WaitForExit();
            return process.ExitCode == 0;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return false;
        }
    }
}
