namespace Bakehouse.Book.Tests.Entries;

using Bakehouse.Book.Entries;
using Bakehouse.Domain.Chores;
using Bakehouse.Domain.Planning;
using NodaTime;

/// <summary>Work that is no order: written by version, and the plan makes way for it at once.</summary>
public sealed class ChoreEntryTests
{
    [Fact]
    public async Task The_plan_makes_way_at_once_and_comes_back_when_it_is_taken_away()
    {
        using var disk = new BookOnDisk();
        await disk.Write(BookOnDisk.Order(inches: [10, 8, 6]));
        var petra = disk.Book.State.Wall!.Plan.Steps.First(r => r.People.Contains("petra"));
        var at = (disk.Book.State.Wall.Epoch + Duration.FromMinutes(petra.Start)).InZone(DateTimeZoneProviders.Tzdb["Europe/London"]);
        var chore = BookOnDisk.Chore() with { First = at.Date, From = at.TimeOfDay, To = at.TimeOfDay.PlusMinutes(60), Days = [], Machines = [] };

        var foreseen = await disk.Book.Foresee(new WriteChore(BookOnDisk.NewId(), "ines", "counter", chore), TestContext.Current.CancellationToken);
        Assert.Empty(disk.Book.State.Chores);
        var answer = await disk.Enter(new WriteChore(BookOnDisk.NewId(), "ines", "counter", chore));

        Assert.Equal(AnswerKind.Accepted, answer.Kind);
        Assert.Equal(
            foreseen.Wall!.Plan.Steps.Select(r => (r.Step, r.Start, string.Join('+', r.People))).Order(),
            disk.Book.State.Wall!.Plan.Steps.Select(r => (r.Step, r.Start, string.Join('+', r.People))).Order());
        Assert.Equal(1, Assert.Single(disk.Book.State.Chores).Version);
        Assert.DoesNotContain(disk.Book.State.Wall!.Plan.Steps, r => r.People.Contains("petra") && r.Start >= petra.Start && r.Start < petra.Start + 60);
        Assert.Empty(Judge.Examine(disk.Book.State.Week!, disk.Book.State.Wall.From(disk.Book.State.Week!.Epoch)).Breaches);

        await disk.Enter(new WriteChore(BookOnDisk.NewId(), "ines", "counter", chore with { Version = 1, Dropped = true }));
        Assert.Empty(disk.Book.State.Chores);
        disk.Reopen();
        Assert.Empty(disk.Book.State.Chores);
    }

    [Fact]
    public async Task Of_two_who_change_it_the_second_hears_a_clash()
    {
        using var disk = new BookOnDisk();
        var chore = BookOnDisk.Chore();
        await disk.Enter(new WriteChore(BookOnDisk.NewId(), "ines", "counter", chore));

        Assert.Equal(AnswerKind.Accepted, (await disk.Enter(new WriteChore(BookOnDisk.NewId(), "ines", "counter", chore with { Version = 1, Name = "Scones" }))).Kind);
        var second = await disk.Enter(new WriteChore(BookOnDisk.NewId(), "ines", "office", chore with { Version = 1, Name = "Rolls" }));

        Assert.Equal((AnswerKind.Clash, "Scones was changed meanwhile: it stands at version 2."), (second.Kind, second.Message));
        Assert.Equal("Scones", Assert.Single(disk.Book.State.Chores).Name);
    }

    [Fact]
    public async Task One_message_names_every_problem()
    {
        using var disk = new BookOnDisk();
        var bad = BookOnDisk.Chore() with { Name = " ", From = new LocalTime(9, 0), To = new LocalTime(8, 0), Last = new LocalDate(2026, 10, 1), People = ["nobody"], Machines = ["oven9"], Shelves = ["f9"] };

        var answer = await disk.Enter(new WriteChore(BookOnDisk.NewId(), "ines", "counter", bad));

        Assert.Equal(AnswerKind.Refused, answer.Kind);
        Assert.Equal(["last day", "name", "ovens and bowls", "people", "shelves", "to"], answer.Problems.Select(p => p.Where).Order());
        Assert.All(answer.Problems, p => Assert.NotEmpty(p.Try));
        var empty = await disk.Enter(new WriteChore(BookOnDisk.NewId(), "ines", "counter", BookOnDisk.Chore() with { People = [], Machines = [] }));
        Assert.Equal("It takes nobody and nothing, so it changes no plan.", empty.Message);
    }

    [Fact]
    public async Task A_pin_that_a_chore_falls_on_gives_way_and_it_is_said()
    {
        using var disk = new BookOnDisk();
        await disk.Write(BookOnDisk.Order(inches: [8, 6]));
        var row = disk.Book.State.Wall!.Plan.Steps.First(r => r.People is ["petra"]);
        await disk.Enter(disk.Pin(row.Step));
        var at = (disk.Book.State.Wall!.Epoch + Duration.FromMinutes(row.Start)).InZone(DateTimeZoneProviders.Tzdb["Europe/London"]);

        var answer = await disk.Enter(new WriteChore(BookOnDisk.NewId(), "ines", "counter", BookOnDisk.Chore() with
        {
            First = at.Date, From = at.TimeOfDay, To = at.TimeOfDay.PlusMinutes(90), Days = [], Machines = [],
        }));

        Assert.Equal(AnswerKind.Accepted, answer.Kind);
        Assert.Contains("could not stay pinned at", answer.Message, StringComparison.Ordinal);
        Assert.DoesNotContain(disk.Book.State.Week!.Fixed, f => f.Why == "pinned");
        Assert.Single(disk.Book.State.Pins);
    }
}
