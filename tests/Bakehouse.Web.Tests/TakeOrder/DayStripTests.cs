namespace Bakehouse.Web.Tests.TakeOrder;

using AngleSharp.Dom;
using Bakehouse.Domain.Answers;
using Bakehouse.Web.TakeOrder;
using Bunit;
using NodaTime;

/// <summary>Twelve days with a mark each: from a number on, before any day was said. Tuesday 13 October 2026, 11:30; shut Sundays and Mondays.</summary>
public sealed class DayStripTests : CounterContext
{
    private static readonly LocalDate Today = new(2026, 10, 13);

    [Fact]
    public void Before_anything_is_known_the_days_stand_there_without_a_mark()
    {
        var page = Open();
        Assert.Equal(12, page.FindAll(".day").Count);
        Assert.Equal("Tue 13 Oct", Label(page.Find(".day")));
        Assert.Empty(page.FindAll(".day .mark"));
        Assert.Equal(["Sun 18 Oct shut", "Mon 19 Oct shut"], page.FindAll(".day:disabled").Select(Label));
    }

    [Fact]
    public void With_a_number_alone_each_day_gets_its_mark_and_a_tap_is_day_and_hour()
    {
        Book.AskedDay = (day, _, _) => day.Day switch
        {
            13 => new DayAnswer(day, DayStands.No, null),
            15 => new DayAnswer(day, DayStands.OtherHour, day.At(new LocalTime(16, 30))),
            _ => new DayAnswer(day, DayStands.Yes, day.At(new LocalTime(18, 0))),
        };
        var page = Open();
        Type(page, "count", "40");
        Marked(page);
        Assert.Equal(
            ["Tue 13 Oct, no", "Wed 14 Oct, yes", "Thu 15 Oct, yes at 16:30", "Fri 16 Oct, yes", "Sat 17 Oct, yes", "Tue 20 Oct, yes", "Wed 21 Oct, yes", "Thu 22 Oct, yes", "Fri 23 Oct, yes", "Sat 24 Oct, yes"],
            page.FindAll(".day:enabled").Select(Label));

        page.FindAll(".day").Single(d => Label(d).StartsWith("Thu 15", StringComparison.Ordinal)).Click();
        Assert.Equal("Thu 15 Oct", page.Find("#day").GetAttribute("value"));
        Assert.Equal("16:30", page.Find("#hour").GetAttribute("value"));
        Assert.Equal("Thu 15 Oct, yes at 16:30", Label(Assert.Single(page.FindAll(".day[aria-pressed=true]"))));
    }

    /// <summary>A name changes no mark, another build all of them; a day beyond the twelve moves them along.</summary>
    [Fact]
    public void Only_other_work_is_asked_anew()
    {
        var asked = new List<LocalDate>();
        Book.AskedDay = (day, _, hour) =>
        {
            asked.Add(day);
            return new DayAnswer(day, DayStands.Yes, day.At(hour ?? new LocalTime(18, 0)));
        };
        var page = Open();
        Type(page, "count", "40");
        Marked(page);
        Assert.Equal(Enumerable.Range(0, 12).Select(Today.PlusDays), asked);

        Type(page, "name", "Quill");
        Marked(page);
        Assert.Equal(12, asked.Count);

        Type(page, "day", "30 oct");
        Marked(page);
        Assert.Equal(Enumerable.Range(12, 11).Select(Today.PlusDays), asked.Skip(12)); // the 24th is known already

        Tap(page, "6+8+10");
        Marked(page);
        Assert.Equal(35, asked.Count);
    }

    [Fact]
    public void Sent_away_because_too_many_ask_it_asks_again_after_a_moment()
    {
        var tries = 0;
        Book.AskedDay = (day, _, _) => tries++ == 0 ? null : new DayAnswer(day, DayStands.Yes, day.At(new LocalTime(18, 0)));
        var page = Open();
        Type(page, "count", "40");
        Time.Advance(TimeSpan.FromSeconds(1));
        page.WaitForState(() => tries == 1);
        Assert.Contains(page.FindAll(".day"), d => Label(d).EndsWith("not known yet", StringComparison.Ordinal));
        Marked(page);
        Assert.Equal(13, tries);
    }

    private static string Label(IElement day) => string.Join(' ', day.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private void Marked(IRenderedComponent<OrderPage> page)
    {
        Time.Advance(TimeSpan.FromSeconds(1));
        page.WaitForState(() => page.FindAll(".day:enabled").All(d => d.QuerySelector(".mark") is not null) && !page.Markup.Contains("not known yet", StringComparison.Ordinal));
    }
}
