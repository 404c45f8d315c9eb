namespace Bakehouse.Book.Tests.Keeping;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Keeping.Auditing;
using Bakehouse.Domain.Orders;
using Microsoft.Data.Sqlite;

/// <summary>
/// The plug is pulled: of the write-ahead log only a beginning reached the disk. Each acknowledged command was synced before its
/// answer, so the log up to there is the least that can be left.
/// </summary>
public sealed class PlugTests(ITestOutputHelper output)
{
    [Fact]
    public async Task Cut_around_every_commit_no_acknowledged_command_is_missing_and_none_is_half()
    {
        using var disk = new BookOnDisk();
        disk.Reopen();
        var log = disk.Path + "-wal";
        var commits = Environment.GetEnvironmentVariable("BAKEHOUSE_LONG") is null ? 15 : 75;
        var first = Answered(disk.Path);
        var before = await File.ReadAllBytesAsync(disk.Path, TestContext.Current.CancellationToken);
        List<long> ends = [];
        for (var i = 0; i < commits; i++)
        {
            var answer = await disk.Write(BookOnDisk.Order($"Order {i}", stage: Stage.Enquiry));
            Assert.Equal(AnswerKind.Accepted, answer.Kind);
            ends.Add(new FileInfo(log).Length);
        }

        // Nothing was folded into the book meanwhile: what stands is the old file and the log.
        Assert.Equal(before, await File.ReadAllBytesAsync(disk.Path, TestContext.Current.CancellationToken));
        Assert.Equal(ends.Distinct(), ends);
        var written = await Read(log);
        for (var i = 0; i < commits; i++)
        {
            var end = (int)ends[i];
            Assert.Equal(first + i + 1, Left(before, written.AsSpan(0, end)));
            Assert.Equal(first + i, Left(before, written.AsSpan(0, end - 1)));
            Assert.Equal(first + i + 1, Left(before, written.AsSpan(0, Math.Min(end + 2000, written.Length))));
            var torn = written.AsSpan(0, end).ToArray();
            torn.AsSpan(end - 512).Clear();
            Assert.Equal(first + i, Left(before, torn));
        }

        output.WriteLine($"{commits * 4} cuts around {commits} commits: all open, none missing, none half");
    }

    private static async Task<byte[]> Read(string path)
    {
        await using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        var bytes = new byte[file.Length];
        await file.ReadExactlyAsync(bytes, TestContext.Current.CancellationToken);
        return bytes;
    }

    /// <summary>How many commands are answered in what is left; the audit finds no fault in it.</summary>
    private static long Left(byte[] book, ReadOnlySpan<byte> log)
    {
        var folder = Directory.CreateTempSubdirectory("bakehouse-plug-").FullName;
        var path = Path.Combine(folder, "book.db");
        File.WriteAllBytes(path, book);
        File.WriteAllBytes(path + "-wal", log);
        var left = Answered(path);
        Assert.Empty(BookAudit.Examine(path));
        Directory.Delete(folder, recursive: true);
        return left;
    }

    private static long Answered(string path)
    {
        using var connection = new SqliteConnection($"Data Source={path};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = "SELECT count(*) FROM done";
        return (long)command.ExecuteScalar()!;
    }
}
