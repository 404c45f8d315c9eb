namespace Bakehouse.Book.Tests.Entries;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Keeping;
using Bakehouse.Book.Tables;
using Microsoft.EntityFrameworkCore;

/// <summary>Secret addresses of calendars: one a person, renewed and stopped by that person or the owner.</summary>
public sealed class CalendarEntryTests
{
    private static readonly string First = new('A', 64);
    private static readonly string Second = new('B', 64);

    [Fact]
    public async Task A_new_address_ends_the_one_before_and_stopping_ends_it_too()
    {
        using var disk = new BookOnDisk();
        await Renew(disk, "petra", "petra", First);
        await Renew(disk, "dov", "dov", new string('c', 64));
        await Renew(disk, "petra", "petra", Second);
        Assert.Equal([("dov", new string('C', 64)), ("petra", Second)], disk.Book.State.Calendars.Select(c => (c.Person, c.Secret)));
        disk.Reopen();
        Assert.Equal(2, disk.Book.State.Calendars.Count);
        Assert.Equal(AnswerKind.Accepted, (await disk.Enter(new StopCalendar(BookOnDisk.NewId(), "petra", "phone", "petra"))).Kind);
        Assert.Equal(["dov"], disk.Book.State.Calendars.Select(c => c.Person));
    }

    [Fact]
    public async Task The_owner_may_for_everybody_and_everybody_for_themselves_only()
    {
        using var disk = new BookOnDisk();
        Assert.Equal(AnswerKind.Accepted, (await Renew(disk, "ines", "sal", First)).Kind);
        Assert.Equal(AnswerKind.NotAllowed, (await Renew(disk, "petra", "sal", Second)).Kind);
        Assert.Equal(AnswerKind.NotAllowed, (await disk.Enter(new StopCalendar(BookOnDisk.NewId(), "petra", "phone", "sal"))).Kind);
        Assert.Equal(AnswerKind.Refused, (await Renew(disk, "ines", "nobody", Second)).Kind);
        Assert.Equal(First, Assert.Single(disk.Book.State.Calendars).Secret);
        Assert.Equal(AnswerKind.Accepted, (await disk.Enter(new StopCalendar(BookOnDisk.NewId(), "ines", "office", "sal"))).Kind);
        Assert.Empty(disk.Book.State.Calendars);
    }

    [Fact]
    public async Task Each_change_has_its_line_in_the_audit_and_the_plan_stays()
    {
        using var disk = new BookOnDisk();
        await disk.Write(BookOnDisk.Order());
        var wall = disk.Book.State.Wall;
        await Renew(disk, "ines", "petra", First);
        await disk.Enter(new StopCalendar(BookOnDisk.NewId(), "ines", "office", "petra"));
        using var book = new BookContext(BookFile.Options(disk.Path));
        var lines = book.Audit.AsNoTracking().OrderBy(a => a.Counter).AsEnumerable().TakeLast(2).Select(a => (a.Command, a.Person, a.Subject, a.Outcome));
        Assert.Equal([("RenewCalendar", "ines", "petra", "Accepted"), ("StopCalendar", "ines", "petra", "Accepted")], lines);
        Assert.Equal(wall!.Plan.Steps.Select(s => s.Start), disk.Book.State.Wall!.Plan.Steps.Select(s => s.Start));
    }

    private static Task<Answer> Renew(BookOnDisk disk, string person, string of, string secret) =>
        disk.Enter(new RenewCalendar(BookOnDisk.NewId(), person, "phone", of, secret));
}
