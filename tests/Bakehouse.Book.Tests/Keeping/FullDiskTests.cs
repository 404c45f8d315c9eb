namespace Bakehouse.Book.Tests.Keeping;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Keeping;
using Bakehouse.Book.Keeping.Auditing;
using Bakehouse.Domain.Orders;
using static Bakehouse.Book.Tests.Keeping.BookAt;

/// <summary>A disk without room: each command is told or taken from the reserve, and nothing is lost.</summary>
public sealed class FullDiskTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("bakehouse-full-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task On_a_full_disk_each_kind_of_command_is_told_and_sent_again_it_is_written_once()
    {
        using var small = SmallDisk.OrSkip(3);
        using var book = Open(Path.Combine(small.Path, "book.db"));
        await Accepted(book, new WriteShop(BookOnDisk.NewId(), "", "office", BookOnDisk.Shop));
        await Accepted(book, new WriteOrder(BookOnDisk.NewId(), "ines", "counter", BookOnDisk.Order("Moss", day: 24)));
        foreach (var make in Commands(book))
        {
            var command = make();
            small.Fill();
            // What room the log has kept for itself is used up by drafts.
            while ((await Enter(book, new KeepDraft(BookOnDisk.NewId(), "ines", "scratch", new string('x', 20_000)))).Kind == AnswerKind.Accepted)
            {
            }

            var told = await Enter(book, command);
            Assert.True(told.Kind == AnswerKind.Refused, command.GetType().Name);
            Assert.Equal("Not saved: the disk is full.", told.Message);
            Assert.Contains("kept on this screen", told.Problems.Single().Try, StringComparison.Ordinal);

            small.Free();
            await Accepted(book, command);
            await Accepted(book, new KeepDraft(BookOnDisk.NewId(), "ines", "scratch", null));
        }

        book.Dispose();
        Assert.Empty(BookAudit.Examine(Path.Combine(small.Path, "book.db")));
    }

    /// <summary>The reserve of this test is a small one, put there by hand: the disk is small, too.</summary>
    [Fact]
    public async Task With_a_reserve_a_full_disk_still_takes_what_is_entered_and_the_reserve_is_gone()
    {
        using var small = SmallDisk.OrSkip(4);
        var path = Path.Combine(small.Path, "book.db");
        using var book = Open(path);
        await Accepted(book, new WriteShop(BookOnDisk.NewId(), "", "office", BookOnDisk.Shop));
        await File.WriteAllBytesAsync(path + ".reserve", new byte[1 << 20], TestContext.Current.CancellationToken);
        small.Fill();
        for (var i = 0; i < 20; i++)
        {
            await Accepted(book, new KeepDraft(BookOnDisk.NewId(), "ines", "scratch", new string('x', 20_000)));
        }

        Assert.False(File.Exists(path + ".reserve"));
    }

    [Fact]
    public void The_reserve_takes_real_room_where_there_is_plenty_and_none_where_there_is_little()
    {
        var reserve = new Reserve(Path.Combine(folder, "book.db"));
        Assert.True(reserve.Keep());
        Assert.Equal(Reserve.Size, new FileInfo(reserve.Path).Length);
        Assert.True(SmallDisk.Run("sh", "-c", $"test $(stat -c %b '{reserve.Path}') -ge {Reserve.Size / 512}"), "The file has a hole.");
        Assert.True(reserve.GiveUp());
        Assert.False(reserve.GiveUp());

        using var small = SmallDisk.OrSkip(3);
        Assert.False(new Reserve(Path.Combine(small.Path, "book.db")).Keep());
    }

    private static IEnumerable<Func<Command>> Commands(OrderBook book)
    {
        string First() => book.State.Wall!.Plan.Steps.OrderBy(s => s.Start).ThenBy(s => s.Step, StringComparer.Ordinal).First().Step;
        yield return () => new WriteShop(BookOnDisk.NewId(), "ines", "office", book.State.Shop!);
        yield return () => new WriteOrder(BookOnDisk.NewId(), "ines", "counter", BookOnDisk.Order("Hale", day: 23));
        yield return () => new WriteOrder(BookOnDisk.NewId(), "ines", "counter", BookOnDisk.Order("Enquiry", stage: Stage.Enquiry));
        yield return () => new TickStep(BookOnDisk.NewId(), "petra", "tablet", First(), "petra");
        yield return () => new UndoTick(BookOnDisk.NewId(), "petra", "tablet", First());
        yield return () => new KeepDraft(BookOnDisk.NewId(), "ines", "counter", new string('y', 20_000));
        yield return () => new RenewCalendar(BookOnDisk.NewId(), "petra", "tablet", "petra", new string('A', 64));
        yield return () => new MoveStage(BookOnDisk.NewId(), "ines", "counter", book.State.Orders[0].Id, book.State.Orders[0].Version, Stage.Cancelled);
    }
}
