namespace Bakehouse.Book.Tests.Keeping;

using System.Diagnostics;
using System.Globalization;
using Bakehouse.Book.Keeping.Auditing;
using Microsoft.Data.Sqlite;

/// <summary>
/// The writer is killed (kill -9) at a random moment after its first acknowledged command, again and again on the same book.
/// Judged by plain SQL against the witness file, by nothing of the book's own code.
/// </summary>
public sealed class KillTests(ITestOutputHelper output)
{
    private const int Kills = 50;

    [Fact]
    public async Task After_fifty_kills_nothing_acknowledged_is_missing_or_doubled()
    {
        // Two books side by side: most of the time goes into starting processes.
        await Task.WhenAll(KillAgainAndAgain(1000, Kills / 2), KillAgainAndAgain(2000, Kills / 2));
    }

    private async Task KillAgainAndAgain(int firstSeed, int kills)
    {
        using var disk = new BookOnDisk(withShop: false);
        disk.Book.Dispose();
        var witness = disk.Path + ".witness";
        await File.WriteAllTextAsync(witness, "", TestContext.Current.CancellationToken);
        var acknowledged = 0;
        for (var seed = firstSeed; seed < firstSeed + kills; seed++)
        {
            await WriteAndKill(disk.Path, witness, seed);
            acknowledged = Judge(disk.Path, await File.ReadAllLinesAsync(witness, TestContext.Current.CancellationToken), seed);
        }

        Assert.Empty(BookAudit.Examine(disk.Path));
        output.WriteLine($"seeds {firstSeed} to {firstSeed + kills - 1}: {kills} kills, {acknowledged} acknowledged commands, none missing, none doubled");
        Assert.True(acknowledged >= kills);
        disk.Reopen();
    }

    private static async Task WriteAndKill(string book, string witness, int seed)
    {
        var cancel = TestContext.Current.CancellationToken;
        var before = new FileInfo(witness).Length;
        var start = new ProcessStartInfo(Environment.ProcessPath!) { RedirectStandardError = true, UseShellExecute = false };
        foreach (var argument in new[] { Writer.Verb, book, witness, seed.ToString(CultureInfo.InvariantCulture) })
        {
            start.ArgumentList.Add(argument);
        }

        start.Environment["DOTNET_TieredPGO"] = "0"; // it lives for a second: measuring itself would only cost
        using var writer = Process.Start(start)!;
        var patience = Stopwatch.StartNew();
        while (new FileInfo(witness).Length == before)
        {
            Assert.False(writer.HasExited, writer.HasExited ? $"seed {seed}: {await writer.StandardError.ReadToEndAsync(cancel)}" : "");
            Assert.True(patience.Elapsed < TimeSpan.FromMinutes(3), $"seed {seed}: nothing acknowledged in three minutes");
            await Task.Delay(2, cancel);
        }

        await Task.Delay(new Random(seed).Next(0, 121), cancel);
        Assert.False(writer.HasExited, $"seed {seed}: ended by itself");
        writer.Kill();
        await writer.WaitForExitAsync(cancel);
    }

    private static int Judge(string path, string[] witness, int seed)
    {
        using var book = new SqliteConnection($"Data Source={path};Pooling=False");
        book.Open();
        Assert.Equal("ok", Value(book, "PRAGMA integrity_check"));
        foreach (var word in witness.Select(l => l.Split(' ')))
        {
            var (command, subject) = (word[1], word[2]);
            Assert.True(1L.Equals(Value(book, $"SELECT count(*) FROM done WHERE Id = '{command}'")), $"seed {seed}: {string.Join(' ', word)} has no answer");
            var there = Value(book, word[0] switch
            {
                "shop" => $"SELECT count(*) FROM shops WHERE Version = {subject}",
                "tick" => $"SELECT count(*) FROM ticks WHERE Step = '{subject}'",
                _ => $"SELECT count(*) FROM orders WHERE Id = '{subject}' AND Version = 1 AND Number = {word[3]}",
            });
            Assert.True(1L.Equals(there), $"seed {seed}: {string.Join(' ', word)} is there {there} times");
        }

        Assert.Equal(0L, Value(book, "SELECT count(*) FROM (SELECT Number FROM orders GROUP BY Number HAVING count(DISTINCT Id) > 1)"));
        Assert.Equal(Value(book, "SELECT count(*) FROM done"), Value(book, "SELECT count(*) FROM audit"));
        // Nothing half: a command writes its facts and moves the head in the same transaction, or does neither.
        Assert.Equal(Value(book, "SELECT count(*) FROM done"), Value(book, "SELECT Version FROM plan_head"));
        Assert.Equal(
            Value(book, "SELECT count(*) FROM done"),
            Value(book, "SELECT (SELECT count(*) FROM ticks) + (SELECT count(DISTINCT Id) FROM orders) + (SELECT count(*) FROM shops)"));
        return witness.Length;
    }

    private static object? Value(SqliteConnection book, string sql)
    {
        using var command = book.CreateCommand();
#pragma warning disable CA2100 // Ids of our own making.
        command.CommandText = sql;
#pragma warning restore CA2100
        return command.ExecuteScalar();
    }
}
