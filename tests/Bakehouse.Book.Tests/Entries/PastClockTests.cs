namespace Bakehouse.Book.Tests.Entries;

using Bakehouse.Book.Entries;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using NodaTime;

/// <summary>
/// Curd by the rules of the United Kingdom: one period of less than four hours out of the cold (Food Safety and Hygiene (England) Regulations 2013,
/// schedule 4).
/// </summary>
public sealed class PastClockTests
{
    [Theory]
    [InlineData(3, AnswerKind.Accepted)]
    [InlineData(5, AnswerKind.Refused)]
    public async Task What_stood_out_too_long_is_not_handed_over(int hours, AnswerKind expected)
    {
        using var disk = await Curd(ColdChain.Usual("GB"));
        await UpTo(disk, "handover");
        disk.Clock.Reset(disk.Clock.GetCurrentInstant() + Duration.FromHours(hours));

        var answer = await Tick(disk, Row(disk, "handover"));

        Assert.Equal(expected, answer.Kind);
        if (expected == AnswerKind.Refused)
        {
            Assert.StartsWith("Discard it: 5 h", answer.Message, StringComparison.Ordinal);
            Assert.Contains("By UK 8 °C. Local rules and licensed practice decide.", answer.Message, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task What_never_left_the_cold_is_handed_over_once_its_taking_out_is_taken_back()
    {
        using var disk = await Curd(ColdChain.Usual("GB"));
        await UpTo(disk, "handover");
        disk.Clock.Reset(disk.Clock.GetCurrentInstant() + Duration.FromHours(5));
        var handover = Row(disk, "handover").Step;
        Assert.Equal(AnswerKind.Refused, (await Tick(disk, handover)).Kind);

        var takenOut = disk.Book.State.Ticks.Single(t => StepKey.Parse(t.Step)!.Value.Operation == "leavefridge").Step;
        Assert.Equal(AnswerKind.Accepted, (await disk.Enter(new UndoTick(BookOnDisk.NewId(), "ines", "tablet", takenOut))).Kind);
        Assert.Equal(AnswerKind.Accepted, (await Tick(disk, takenOut)).Kind);
        Assert.Equal(AnswerKind.Accepted, (await Tick(disk, handover)).Kind);
    }

    /// <summary>A shop that never said how warm its places are goes on as before.</summary>
    [Fact]
    public async Task Without_anything_said_nothing_stops_it()
    {
        using var disk = await Curd(null);
        await UpTo(disk, "handover");
        disk.Clock.Reset(disk.Clock.GetCurrentInstant() + Duration.FromHours(5));
        Assert.Equal(AnswerKind.Accepted, (await Tick(disk, Row(disk, "handover"))).Kind);
    }

    private static async Task<BookOnDisk> Curd(ColdChain? cold)
    {
        var disk = new BookOnDisk();
        var written = await disk.Enter(new WriteShop(BookOnDisk.NewId(), "ines", "office", disk.Book.State.Shop! with { Cold = cold }));
        Assert.Equal((AnswerKind.Accepted, ""), (written.Kind, written.Message));
        var order = BookOnDisk.Order();
        Assert.Equal(AnswerKind.Accepted, (await disk.Write(order with { Tiers = [order.Tiers[0] with { Filling = "lemon-curd" }] })).Kind);
        return disk;
    }

    private static async Task UpTo(BookOnDisk disk, string operation)
    {
        foreach (var row in disk.Book.State.Wall!.Plan.Steps.OrderBy(s => s.Start).TakeWhile(r => StepKey.Parse(r.Step)!.Value.Operation != operation).ToList())
        {
            var end = disk.Book.State.Wall!.Epoch + Duration.FromMinutes(row.Start + disk.Book.State.Week!.Steps.First(s => s.Id == row.Step).Minutes);
            disk.Clock.Reset(Instant.Max(disk.Clock.GetCurrentInstant(), end));
            var answer = await Tick(disk, row);
            Assert.Equal((AnswerKind.Accepted, ""), (answer.Kind, answer.Message));
        }
    }

    private static StepRow Row(BookOnDisk disk, string operation) => disk.Book.State.Wall!.Plan.Steps.Single(r => StepKey.Parse(r.Step)!.Value.Operation == operation);

    private static Task<Answer> Tick(BookOnDisk disk, StepRow row) => Tick(disk, row.Step);

    private static Task<Answer> Tick(BookOnDisk disk, string step) => disk.Enter(new TickStep(BookOnDisk.NewId(), "petra", "tablet", step, "petra"));
}
