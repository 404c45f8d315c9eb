namespace Bakehouse.Book.Tests.Answers;

using Bakehouse.Domain.Answers;
using Bakehouse.Domain.Orders;
using NodaTime;

/// <summary>Each of the twelve days at the counter says what asking for that day says. The book is invented.</summary>
public sealed class DayTests(ITestOutputHelper output)
{
    private static readonly LocalDate First = new(2026, 10, 14);
    private static readonly Order Rich = BookOnDisk.Order("Asked", day: 24, hour: 14, inches: [10, 8, 6]) with { Decoration = Decoration.Rich };

    [Fact]
    public async Task A_day_says_what_asking_every_half_hour_of_it_says()
    {
        using var disk = await Full();
        var seen = new HashSet<DayStands>();
        foreach (var day in Enumerable.Range(0, 8).Select(First.PlusDays))
        {
            var said = (await disk.Book.AskDay(day, Rich, new LocalTime(14, 0), TestContext.Current.CancellationToken))!;
            seen.Add(said.Stands);
            var fits = await Fitting(disk, day);
            output.WriteLine($"{day}: {said.Stands} {said.At}; fits at {string.Join(' ', fits.Select(f => f.TimeOfDay))}");
            Assert.Equal(day, said.Day);
            Assert.Equal(BookOnDisk.Shop.HoursOn(day).Count == 0, said.Stands == DayStands.Shut);
            Assert.Equal(fits.Contains(day.At(new LocalTime(14, 0))), said.Stands == DayStands.Yes);
            Assert.Equal(fits.Count > 0, said.At is not null);
            Assert.True(said.At is not { } at || fits.Contains(at));
        }

        Assert.All([DayStands.Shut, DayStands.Yes, DayStands.No], s => Assert.Contains(s, seen));
    }

    [Fact]
    public async Task Where_only_another_hour_fits_that_one_is_named_and_with_no_hour_wished_the_last_is_asked_for()
    {
        using var disk = new BookOnDisk();
        var soon = (await disk.Asked(Rich)).Earliest!.Order.Handover.At;
        var early = (await disk.Book.AskDay(soon.Date, Rich, soon.TimeOfDay.PlusMinutes(-30), TestContext.Current.CancellationToken))!;
        Assert.Equal((DayStands.OtherHour, (LocalDateTime?)soon), (early.Stands, early.At));

        var any = (await disk.Book.AskDay(soon.Date.PlusDays(1), Rich, null, TestContext.Current.CancellationToken))!;
        Assert.Equal(DayStands.Yes, any.Stands);
        Assert.Equal(BookOnDisk.Shop.HoursOn(any.Day).Max(h => h.To), any.At!.Value.TimeOfDay);
    }

    private static async Task<List<LocalDateTime>> Fitting(BookOnDisk disk, LocalDate day)
    {
        List<LocalDateTime> fits = [];
        foreach (var at in Enumerable.Range(0, 48).Select(n => day.At(LocalTime.Midnight.PlusMinutes(30 * n))))
        {
            if ((await disk.Book.Ask(Rich with { Handover = Rich.Handover with { At = at } }, TestContext.Current.CancellationToken))!.Wished.IsYes)
            {
                fits.Add(at);
            }
        }

        return fits;
    }

    private static async Task<BookOnDisk> Full()
    {
        var disk = new BookOnDisk();
        foreach (var (day, hour) in new[] { (16, 11), (16, 15), (17, 10), (17, 12), (17, 14), (20, 12) })
        {
            await disk.Write(BookOnDisk.Order($"Full {day} {hour}", day, hour, inches: [10, 8]) with { Decoration = Decoration.Medium });
        }

        return disk;
    }
}
