namespace Bakehouse.Web.Tests.Killed;

using System.Globalization;
using System.Text.RegularExpressions;
using Bakehouse.Book;
using Bakehouse.Book.Entries;
using Bakehouse.Book.Keeping.Auditing;
using Bakehouse.Book.Reading;
using Bakehouse.Domain.Reminders;
using Bakehouse.Planner.Quick;
using Bakehouse.Testing;
using Bakehouse.Web.Shell;
using Bakehouse.Web.Tests.Verbs;
using Microsoft.Data.Sqlite;
using NodaTime;
using NodaTime.Testing;

/// <summary>
/// The whole app, killed (SIGKILL) at a random moment while four screens tick and answer, again and again on the same book; 5 times,
/// 200 at full size. Judged by plain SQL and by the verb <c>audit</c>, and by what the next start shows.
/// </summary>
public sealed partial class KilledAppTests(ITestOutputHelper output) : IDisposable
{
    private const int KillsABook = 20;
    private readonly string folder = Directory.CreateTempSubdirectory("bakehouse-killed-").FullName;

    private static int Kills => Seeds.Whole ? 200 : 5;

    private static Instant Now => Hosting.MachineClock.GetCurrentInstant();

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task Killed_under_four_screens_it_keeps_every_yes_once_and_shows_late_what_fell_due()
    {
        var seed = Seeds.Of();
        var (dice, yes, unheard, no, late) = (new Random(seed), 0, 0, 0, 0);
        for (var done = 0; done < Kills; done += KillsABook)
        {
            var path = await OldBook(done);
            var hands = new Hands(dice);
            for (var kill = 0; kill < Math.Min(KillsABook, Kills - done); kill++)
            {
                late += await KillOnce(path, hands, dice);
                unheard += hands.Unheard.Count;
                Judge(path, hands);
            }

            await using var app = await AppProcess.Start(path);
            await hands.SendAgain(app);
            await app.Kill();
            Judge(path, hands);
            Assert.Equal((0, $"{BookAudit.Rules.Count} rules, 0 faults\n", ""), await VerbTests.Run("audit", path));
            (yes, no) = (yes + hands.Yes.Count, no + hands.No);
        }

        output.WriteLine($"seed {seed}: {Kills} kills; {yes} taps answered yes, {no} no, {unheard} not answered and sent again; {late} rings shown late at a start");
        Assert.True(yes >= Kills, $"{yes} taps were answered yes.");
        Assert.True(late > 0, "Nothing was late at any start.");
    }

    /// <summary>A book of the sample bakery into which nobody has looked for two days.</summary>
    private async Task<string> OldBook(int number)
    {
        var path = Path.Combine(folder, number.ToString(CultureInfo.InvariantCulture), "book.db");
        using var book = OrderBook.Open(path, new QuickPlanner(), new FakeClock(Now - Duration.FromHours(50)));
        Assert.Equal(AnswerKind.Accepted, (await book.Enter(new OpenSample(Guid.NewGuid(), "", "test"), TestContext.Current.CancellationToken)).Kind);
        return path;
    }

    /// <summary>Starts the app, looks at what it shows, lets four screens work, kills it. Answers how many rings were shown late.</summary>
    private static async Task<int> KillOnce(string path, Hands hands, Random dice)
    {
        var book = Read(path);
        await using var app = await AppProcess.Start(path);
        var late = await ShowsLate(app, book);
        await hands.SendAgain(app);
        var ticked = book.Ticks.Select(t => t.Step).ToHashSet(StringComparer.Ordinal);
        var open = book.Wall!.Plan.Steps.Where(s => !ticked.Contains(s.Step)).OrderBy(s => s.Start).ThenBy(s => s.Step, StringComparer.Ordinal).Select(s => s.Step);
        var first = new TaskCompletionSource();
        var work = hands.Work(app, [.. open], [.. Ringing(book).Select(r => r.Id)], () => first.TrySetResult());
        await first.Task.WaitAsync(TimeSpan.FromSeconds(60), TestContext.Current.CancellationToken);
        await Task.Delay(dice.Next(0, 801), TestContext.Current.CancellationToken);
        await app.Kill();
        await work;
        return late;
    }

    private static BookState Read(string path)
    {
        using var book = OrderBook.Open(path, new QuickPlanner(), new FakeClock(Now));
        return book.State;
    }

    private static IReadOnlyList<Ring> Ringing(BookState book) =>
        [.. Rings.Of(book.Week!, book.Wall!, book.Orders, book.Shop!, book.Ticks, book.Answers).Where(r => r.Due <= book.ReadAt)];

    /// <summary>
    /// What was due by the rows on the wall is among the rings of the book, and the first dozen of those, as many as a screen shows,
    /// stand on the screen, each as late if it was due a minute ago.
    /// </summary>
    private static async Task<int> ShowsLate(AppProcess app, BookState book)
    {
        var rings = Ringing(book);
        var given = book.Answers.Where(a => a.Kind != RingAnswerKind.Done).Select(a => a.Ring[(a.Ring.IndexOf(':', StringComparison.Ordinal) + 1)..]).ToHashSet(StringComparer.Ordinal);
        Assert.Empty(DueSteps.Of(book.Week, book.Wall, book.Orders, book.Ticks, book.ReadAt).Except(given).Except(rings.SelectMany(r => r.Steps)));

        using var screen = app.At("petra");
        var page = await screen.GetStringAsync("/kitchen", TestContext.Current.CancellationToken);
        var first = rings.Take(TheKitchen.RingView.Most).ToList();
        Assert.Subset(Named(page, Ids()), first.Select(r => r.Id).ToHashSet());
        var late = first.Where(r => r.Due <= book.ReadAt - Ring.LateAfter).Select(r => r.Id).ToHashSet();
        Assert.Subset(Named(page, Lates()), late);
        return late.Count;
    }

    private static HashSet<string> Named(string page, Regex where) => [.. where.Match(page).Groups[1].Value.Split(' ', StringSplitOptions.RemoveEmptyEntries)];

    /// <summary>Every yes is in the book once, and nothing beyond what may be there of taps that heard nothing.</summary>
    private static void Judge(string path, Hands hands)
    {
        using var book = new SqliteConnection($"Data Source={path};Pooling=False");
        book.Open();
        Assert.All(hands.Yes.Keys, id => Assert.Equal(1L, Count(book, $"done WHERE Id = '{id:N}'")));
        var (known, perhaps) = (hands.Yes.Values.ToLookup(t => (t.IsTick, t.On)), hands.Unheard.Values.ToLookup(t => (t.IsTick, t.On)));
        foreach (var taps in known)
        {
            var there = Count(book, taps.Key.IsTick ? $"ticks WHERE Undone IS NULL AND Step = '{taps.Key.On}'" : $"ring_answers WHERE Ring = '{taps.Key.On}'");
            Assert.InRange(there, taps.Count(), taps.Count() + perhaps[taps.Key].Count());
        }

        Assert.Equal(Count(book, "done"), Count(book, "audit"));
        Assert.Empty(BookAudit.Examine(path));
    }

    private static long Count(SqliteConnection book, string where)
    {
        using var command = book.CreateCommand();
#pragma warning disable CA2100 // Ids of our own making.
        command.CommandText = $"SELECT count(*) FROM {where}";
#pragma warning restore CA2100
        return (long)command.ExecuteScalar()!;
    }

    [GeneratedRegex("data-ids=\"([^\"]*)\"")]
    private static partial Regex Ids();

    [GeneratedRegex("data-lates=\"([^\"]*)\"")]
    private static partial Regex Lates();
}
