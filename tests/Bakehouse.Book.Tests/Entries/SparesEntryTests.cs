namespace Bakehouse.Book.Tests.Entries;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;
using Bakehouse.Domain.Freezer;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Slips;
using NodaTime;

/// <summary>Spare sponges are counted, taken by what cracks, given back with it, and never for a cake that must avoid something.</summary>
public sealed class SparesEntryTests
{
    private static readonly SpareSponges Old = new("vanilla", 8, new LocalDate(2026, 10, 1), 2);
    private static readonly SpareSponges Fresh = new("vanilla", 8, new LocalDate(2026, 10, 9), 5);

    [Fact]
    public async Task A_count_stands_until_the_next_and_survives_the_night()
    {
        using var disk = new BookOnDisk();
        await Count(disk, Fresh);
        await Count(disk, Old);
        await Count(disk, new SpareSponges("lemon", 6, Old.Frozen, 3));
        Assert.Equal([Old, new SpareSponges("lemon", 6, Old.Frozen, 3), Fresh], disk.Book.State.Freezer.OrderBy(s => s.Frozen).ThenByDescending(s => s.Sponge, StringComparer.Ordinal));
        await Count(disk, new SpareSponges("lemon", 6, Old.Frozen, 0));
        disk.Reopen();
        Assert.Equal([Old, Fresh], disk.Book.State.Freezer);
        var wrong = await disk.Enter(new CountSpares(BookOnDisk.NewId(), "petra", "tablet", new SpareSponges("marble", 99, new LocalDate(2027, 1, 1), -1)));
        Assert.Equal((AnswerKind.Refused, 4), (wrong.Kind, wrong.Problems.Count));
    }

    [Fact]
    public async Task What_cracked_takes_the_oldest_of_its_kind_and_gives_them_back_with_the_slip()
    {
        using var disk = new BookOnDisk();
        await disk.Write(BookOnDisk.Order());
        await Count(disk, Fresh);
        await Count(disk, Old);
        await Count(disk, Old with { Pan = 6, Count = 9 });
        var bake = await SlipEntryTests.Baked(disk);
        // Three layers of 3.3 cm, each in a pan of its own, in one load.
        const int lost = 3;
        disk.Clock.AdvanceMinutes(1);

        var told = disk.Tell(SlipKind.Cracked, bake, spare: true);
        var foreseen = await disk.Book.Foresee(told, TestContext.Current.CancellationToken);
        Assert.Equal((AnswerKind.Accepted, 7), (foreseen.Answer.Kind, EightInch(disk)));
        Assert.Equal(AnswerKind.Accepted, (await disk.Enter(told)).Kind);
        disk.Reopen();
        Assert.Equal([Old, Fresh with { Count = lost - 2 }], Assert.Single(disk.Book.State.Slips).Took!);
        Assert.Equal((7 - lost, 9), (EightInch(disk), disk.Book.State.Freezer.Single(s => s.Pan == 6).Count));

        // After sixty days no plan looks at that slip any more; what it took is gone all the same.
        disk.Clock.AdvanceDays(61);
        disk.Reopen();
        Assert.Empty(disk.Book.State.Slips);
        Assert.Equal(7 - lost, EightInch(disk));

        Assert.Equal(AnswerKind.Accepted, (await disk.Enter(new TakeBackSlip(BookOnDisk.NewId(), "ines", "counter", told.Id))).Kind);
        Assert.Equal(7, EightInch(disk));
        var log = await disk.Book.Log(disk.Book.State.Orders.Single().Id, TestContext.Current.CancellationToken);
        Assert.Equal([(CakeDeed.Spared, "ines", bake), (CakeDeed.ToldBack, "ines", bake)], log.Where(l => l.Deed is CakeDeed.Spared or CakeDeed.ToldBack).Select(l => (l.Deed, l.Person, l.Step)));
    }

    [Fact]
    public async Task Without_a_count_a_spare_is_taken_on_the_word_of_whoever_found_it()
    {
        using var disk = new BookOnDisk();
        await disk.Write(BookOnDisk.Order());
        var bake = await SlipEntryTests.Baked(disk);
        Assert.Equal(AnswerKind.Accepted, (await disk.Enter(disk.Tell(SlipKind.Cracked, bake, spare: true))).Kind);
        Assert.Null(Assert.Single(disk.Book.State.Slips).Took);
    }

    [Fact]
    public async Task A_cake_that_must_avoid_something_gets_no_spare_whoever_asks()
    {
        using var disk = new BookOnDisk();
        await disk.Write(BookOnDisk.Avoiding(BookOnDisk.Order(), "nuts"));
        await Count(disk, Fresh);
        var bake = SlipEntryTests.Row(disk, "bake").Step;
        var answer = await disk.Enter(disk.Tell(SlipKind.Cracked, bake, person: "ines", spare: true));
        Assert.Equal(AnswerKind.Refused, answer.Kind);
        Assert.Contains("what spare sponges contain is not in the book", answer.Message, StringComparison.Ordinal);
        Assert.Equal([Fresh], disk.Book.State.Freezer);
        Assert.Equal(AnswerKind.Accepted, (await disk.Enter(disk.Tell(SlipKind.Cracked, bake))).Kind);
    }

    /// <summary>Told by mistake: the load is on the wall as it was, done or not.</summary>
    [Fact]
    public async Task Taken_back_every_begun_load_of_the_morning_is_where_it_was()
    {
        using var disk = new BookOnDisk(withShop: false);
        disk.Clock.Reset(Instant.FromUtc(2026, 10, 15, 9, 40));
        await disk.Enter(new OpenSample(BookOnDisk.NewId(), "", "counter"));
        var now = disk.Clock.GetCurrentInstant();
        var wall = disk.Book.State.Wall!;
        var bakes = wall.Plan.Steps.Where(r => r.Step.Contains(".bake.", StringComparison.Ordinal) && wall.Epoch + Duration.FromMinutes(r.Start) <= now).Select(r => r.Step).ToList();
        var told = 0;
        foreach (var bake in bakes)
        {
            var before = Rows(disk);
            var tell = disk.Tell(SlipKind.Cracked, bake, spare: true);
            if ((await disk.Enter(tell)).Kind == AnswerKind.Accepted)
            {
                told++;
                Assert.Equal(AnswerKind.Accepted, (await disk.Enter(new TakeBackSlip(BookOnDisk.NewId(), "ines", "counter", tell.Id))).Kind);
                Assert.Equal(before, Rows(disk));
            }
        }

        Assert.True(told > 0, "No load could be told.");
    }

    /// <summary>When each step begins; who and where only of what is still to come, since what is done asks for neither.</summary>
    private static List<string> Rows(BookOnDisk disk)
    {
        var (wall, now) = (disk.Book.State.Wall!, disk.Clock.GetCurrentInstant());
        return [.. wall.Plan.Steps.Select(r => (Row: r, At: wall.Epoch + Duration.FromMinutes(r.Start)))
            .Select(x => $"{x.Row.Step} {x.At} {(x.At >= now ? $"{string.Join('+', x.Row.People)} {x.Row.Machine}" : "")}").Order(StringComparer.Ordinal)];
    }

    private static int EightInch(BookOnDisk disk) => disk.Book.State.Freezer.Where(s => s.Pan == 8).Sum(s => s.Count);

    private static async Task Count(BookOnDisk disk, SpareSponges spares) =>
        Assert.Equal(AnswerKind.Accepted, (await disk.Enter(new CountSpares(BookOnDisk.NewId(), "petra", "tablet", spares))).Kind);
}
