namespace Bakehouse.Book.Tests.Keeping;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Keeping;
using Bakehouse.Book.Keeping.Copies;
using Bakehouse.Domain.Orders;
using CsCheck;
using Microsoft.Data.Sqlite;
using NodaTime;

/// <summary>Copies of a book in use: whole, one moment each, kept by the calendar, and restored only where nothing is.</summary>
public sealed class CopyTests : IDisposable
{
    private static readonly DateTimeZone London = DateTimeZoneProviders.Tzdb["Europe/London"];
    private static readonly string[] Zones = ["Europe/London", "Australia/Lord_Howe", "America/St_Johns", "UTC"];
    private readonly string folder = Directory.CreateTempSubdirectory("bakehouse-copies-").FullName;
    private readonly BookOnDisk disk = new();

    public void Dispose()
    {
        disk.Dispose();
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public void After_four_hundred_days_of_hourly_copies_those_stay_that_were_counted_by_hand()
    {
        // Newest 14 October 2026, 14:05 in London. Hours: 15 of that day, 24 of the 13th, 9 of the 12th. Days: back to 15 September,
        // of which the last three are among the hours: 27 more. Months: back to November 2025, of which October and September are
        // there already: 10 more.
        var newest = At(2026, 10, 14, 14);
        var kept = KeptCopies.Of(Enumerable.Range(0, 400 * 24).Select(h => newest - Duration.FromHours(h)), London);

        Assert.Equal(48 + 27 + 10, kept.Count);
        Assert.Contains(At(2026, 10, 12, 15), kept);
        Assert.DoesNotContain(At(2026, 10, 12, 14), kept);
        Assert.Contains(At(2026, 9, 15, 23), kept);
        Assert.DoesNotContain(At(2026, 9, 14, 23), kept);
        Assert.Equal(At(2025, 11, 30, 23), kept.Min());
    }

    [Fact]
    public void Taking_copies_away_one_by_one_keeps_what_taking_them_away_at_once_keeps() => Gen.Select(
            Gen.Int[1, 60 * 24 * 9].Array[0, 300], Gen.Int[0, Zones.Length - 1].Select(i => Zones[i]))
        .Sample((gaps, name) =>
        {
            var zone = DateTimeZoneProviders.Tzdb[name];
            var time = Instant.FromUtc(2025, 1, 1, 0, 0);
            IReadOnlySet<Instant> kept = new HashSet<Instant>();
            List<Instant> all = [];
            foreach (var gap in gaps)
            {
                time += Duration.FromMinutes(gap);
                all.Add(time);
                kept = KeptCopies.Of(kept.Append(time), zone);
                Assert.Contains(time, kept);
            }

            Assert.Equal(KeptCopies.Of(all, zone).Order(), kept.Order());
            Assert.True(kept.Count <= KeptCopies.Hours + KeptCopies.Days + KeptCopies.Months);
        }, iter: 100);

    [Fact]
    public async Task Twenty_copies_under_load_are_clean_and_each_is_a_prefix_of_what_was_written()
    {
        var copies = BookCopies.Of(disk.Path, folder);
        using var enough = new CancellationTokenSource();
        var acknowledged = 0;
        var writers = Enumerable.Range(0, 2).Select(w => Task.Run(async () =>
        {
            while (!enough.IsCancellationRequested)
            {
                var answer = await disk.Write(BookOnDisk.Order($"Writer {w}", stage: Stage.Enquiry));
                Assert.Equal(AnswerKind.Accepted, answer.Kind);
                Interlocked.Increment(ref acknowledged);
            }
        })).ToList();
        List<(int Before, string Path)> taken = [];
        for (var i = 0; i < (Environment.GetEnvironmentVariable("BAKEHOUSE_LONG") is null ? 20 : 500); i++)
        {
            var before = Volatile.Read(ref acknowledged);
            var copy = await Task.Run(() => copies.Take(Instant.FromUtc(2026, 10, 14, 7, 0) + Duration.FromSeconds(i)), TestContext.Current.CancellationToken);
            Assert.Empty(copy.Problems);
            File.Copy(copy.Path!, Path.Combine(folder, $"kept{i}"));
            taken.Add((before, Path.Combine(folder, $"kept{i}")));
        }

        await enough.CancelAsync();
        await Task.WhenAll(writers);
        var written = Commands(disk.Path);
        var sizes = taken.Select(t => (t.Before, Commands: Commands(t.Path))).ToList();

        Assert.All(sizes, s => Assert.Equal(written.Take(s.Commands.Count), s.Commands));
        // The first command set the shop up.
        Assert.All(sizes, s => Assert.True(s.Commands.Count >= s.Before + 1));
        TestContext.Current.TestOutputHelper?.WriteLine($"{taken.Count} copies while {written.Count} commands were written, {sizes.Select(s => s.Commands.Count).Distinct().Count()} of different length");
        Assert.True(sizes[^1].Commands.Count > sizes[0].Commands.Count);
    }

    [Fact]
    public async Task A_book_gone_bad_never_pushes_a_good_copy_out()
    {
        await disk.Write(BookOnDisk.Order());
        var copies = BookCopies.Of(disk.Path, folder);
        var good = copies.Take(At(2026, 10, 14, 8));
        Run(disk.Path, "UPDATE plan_head SET Version = Version + 5");

        var bad = copies.Take(At(2026, 10, 14, 8));

        Assert.Null(bad.Path);
        Assert.Contains("A1", bad.Problems.Single().Value, StringComparison.Ordinal);
        Assert.Equal([At(2026, 10, 14, 8)], copies.First.Times());
        Assert.Empty(Book.Keeping.Auditing.BookAudit.Examine(good.Path!));
        Assert.False(File.Exists(copies.First.Part));
        Run(disk.Path, "UPDATE plan_head SET Version = Version - 5");
    }

    [Fact]
    public void A_second_place_that_is_not_there_is_told_and_the_first_copy_stays()
    {
        var pulled = Path.Combine(folder, "usb");
        File.WriteAllText(pulled, "not a folder");
        var taken = BookCopies.Of(disk.Path, Path.Combine(folder, "first"), pulled).Take(At(2026, 10, 14, 8));

        Assert.NotNull(taken.Path);
        Assert.Null(taken.Second);
        Assert.Equal(pulled, taken.Problems.Single().Value);

        var both = BookCopies.Of(disk.Path, Path.Combine(folder, "first"), Path.Combine(folder, "other")).Take(At(2026, 10, 14, 9));
        Assert.Empty(both.Problems);
        Assert.Equal(File.ReadAllBytes(both.Path!), File.ReadAllBytes(both.Second!));
    }

    [Fact]
    public void What_is_kept_no_longer_is_taken_away_and_nothing_else()
    {
        var place = new CopyFolder(folder);
        var times = Enumerable.Range(0, 60 * 24).Select(h => At(2026, 10, 14, 14) - Duration.FromHours(h)).ToList();
        times.ForEach(t => File.WriteAllText(place.FileOf(t), ""));
        File.WriteAllText(Path.Combine(folder, "book-of-recipes.db"), "the owner's own");

        place.Prune(London);

        Assert.Equal(KeptCopies.Of(times, London).Order(), place.Times());
        Assert.True(File.Exists(Path.Combine(folder, "book-of-recipes.db")));
    }

    [Fact]
    public async Task Restored_it_is_the_newest_good_copy_and_never_over_a_book()
    {
        var copies = BookCopies.Of(disk.Path, folder);
        var order = (await disk.Write(BookOnDisk.Order())).Order!;
        copies.Take(At(2026, 10, 14, 8));
        await disk.Write(BookOnDisk.Order("Hale"));
        var newest = copies.Take(At(2026, 10, 14, 9));
        Run(newest.Path!, "UPDATE plan_head SET Version = Version + 5");
        var target = Path.Combine(folder, "new machine", "book.db");
        List<string> told = [];

        var stands = BookRestore.Restore(folder, target, told.Add);

        Assert.Contains(told, l => l.StartsWith("Not this one, 1 faults: A1 ", StringComparison.Ordinal));
        Assert.Contains("The book stands at 08:00 on Wednesday 14 October 2026: 1 orders, 2 changes.", told);
        Assert.Equal(1, stands.Orders);
        using (var restored = OrderBook.Open(target, new Planner.Quick.QuickPlanner(), disk.Clock))
        {
            Assert.Equal(order.Id, restored.State.Orders.Single().Id);
        }

        var refused = Assert.Throws<BookClosedException>(() => BookRestore.Restore(folder, target, told.Add));
        Assert.Contains(target, refused.Message, StringComparison.Ordinal);
        Assert.Contains("no good copy", Assert.Throws<BookClosedException>(() => BookRestore.Restore(Path.Combine(folder, "none"), target + "2", told.Add)).Message, StringComparison.Ordinal);
    }

    private static Instant At(int year, int month, int day, int hour) => new LocalDateTime(year, month, day, hour, 5).InZoneStrictly(London).ToInstant();

    private static List<string> Commands(string path)
    {
        using var book = new SqliteConnection($"Data Source={path};Pooling=False;Mode=ReadOnly");
        book.Open();
        using var query = book.CreateCommand();
        query.CommandText = "SELECT CommandId FROM audit ORDER BY Counter";
        using var rows = query.ExecuteReader();
        var all = new List<string>();
        while (rows.Read())
        {
            all.Add(rows.GetString(0));
        }

        return all;
    }

    private static void Run(string path, string sql)
    {
        using var connection = new SqliteConnection($"Data Source={path};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
#pragma warning disable CA2100 // Constant text of this file.
        command.CommandText = sql;
#pragma warning restore CA2100
        command.ExecuteNonQuery();
    }
}
