namespace Bakehouse.Book.Tests.Entries;

using System.Globalization;
using Bakehouse.Book.Entries;
using Bakehouse.Domain.Reminders;
using Bakehouse.Testing;
using NodaTime;

/// <summary>Eight screens answer one ring at the same moment, 100 times; 5,000 at full size.</summary>
public sealed class RingRacesTests(ITestOutputHelper output)
{
    private static readonly string[] People = ["petra", "dov", "wren", "ines"];

    private static int Races => Seeds.Whole ? 5_000 : 100;

    /// <summary>A tick that is taken back lets the same ring ring again, so one book serves many races.</summary>
    [Fact]
    public async Task Exactly_one_answer_wins_and_the_others_hear_who_it_was_and_when()
    {
        using var disk = new BookOnDisk();
        await disk.Write(BookOnDisk.Order());
        var seed = Seeds.Of();
        output.WriteLine($"seed {seed}, {Races} races");
        var dice = new Random(seed);
        var ring = Rings(disk).First(r => r.Kind == RingKind.OvenOut);
        disk.Clock.Reset(ring.Due);
        for (var race = 1; race <= Races; race++)
        {
            var screens = Enumerable.Range(0, 8).Select(_ => People[dice.Next(4)]).ToList();
            var answers = await Task.WhenAll(screens.Select(who => Task.Run(() => Done(disk, ring, who))));
            var winner = screens[Array.FindIndex(answers, a => a.Kind == AnswerKind.Accepted)];
            Assert.Single(answers, a => a.Kind == AnswerKind.Accepted);
            var name = BookOnDisk.Shop.PersonOf(winner)!.Name;
            var clock = disk.Clock.GetCurrentInstant().InZone(DateTimeZoneProviders.Tzdb["Europe/London"]).ToString("HH:mm", CultureInfo.InvariantCulture);
            Assert.All(answers.Where(a => a.Kind != AnswerKind.Accepted), a => Assert.Equal((AnswerKind.Clash, $"{name} did it at {clock}."), (a.Kind, a.Message)));
            Assert.Equal(ring.Steps.Order(), disk.Book.State.Ticks.Select(t => t.Step).Order());
            Assert.Equal(winner, Assert.Single(disk.Book.State.Answers).Person);
            await TakeBack(disk, ring);
        }
    }

    private static Task<Answer> Done(BookOnDisk disk, Ring ring, string who) =>
        disk.Enter(new AnswerRing(BookOnDisk.NewId(), who, "tablet", ring.Id, RingAnswerKind.Done, ""));

    private static async Task TakeBack(BookOnDisk disk, Ring ring)
    {
        disk.Clock.AdvanceSeconds(1);
        foreach (var step in ring.Steps)
        {
            await disk.Enter(new UndoTick(BookOnDisk.NewId(), "petra", "tablet", step));
        }

        Assert.Contains(Rings(disk), r => r.Id == ring.Id);
    }

    private static IReadOnlyList<Ring> Rings(BookOnDisk disk) => Domain.Reminders.Rings.Of(
        disk.Book.State.Week!, disk.Book.State.Wall!, disk.Book.State.Orders, disk.Book.State.Shop!, disk.Book.State.Ticks, disk.Book.State.Answers);
}
