namespace Bakehouse.Web.Tests;

using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Web.SetUpShop;
using Bakehouse.Web.Shell;
using Bakehouse.Web.TakeOrder;
using NodaTime;

/// <summary>What is typed and what is written out. Weekdays of 2026 are those of the Gregorian calendar (ISO 8601: 14 October 2026 is a Wednesday).</summary>
public sealed class ReadingTests
{
    private static readonly LocalDate Today = new(2026, 10, 14);
    private static readonly Instant Morning = Instant.FromUtc(2026, 10, 14, 6, 30);

    [Theory]
    [InlineData("fri", "2026-10-16")]
    [InlineData("wed", "2026-10-21")]
    [InlineData("24", "2026-10-24")]
    [InlineData("3", "2026-11-03")]
    [InlineData("24/10", "2026-10-24")]
    [InlineData("24.10.2027", "2027-10-24")]
    [InlineData("1/2", "2027-02-01")]
    [InlineData("sat 24 oct", "2026-10-24")]
    [InlineData("Saturday 24 October", "2026-10-24")]
    [InlineData("2026-12-01", "2026-12-01")]
    [InlineData("+3", "2026-10-17")]
    [InlineData("tomorrow", "2026-10-15")]
    public void A_day_is_read_as_it_is_said(string said, string day) =>
        Assert.Equal(day, Days.Read(said, Today).Day?.ToString("uuuu-MM-dd", null));

    [Theory]
    [InlineData("")]
    [InlineData("31/2")]
    [InlineData("fri 24 oct")]
    [InlineData("99")]
    [InlineData("soon")]
    public void A_day_that_can_not_be_says_why(string said)
    {
        var (day, why) = Days.Read(said, Today);
        Assert.Null(day);
        Assert.NotEmpty(why);
    }

    [Theory]
    [InlineData("14", 14, 0)]
    [InlineData("14.30", 14, 30)]
    [InlineData("2 pm", 14, 0)]
    [InlineData("12am", 0, 0)]
    [InlineData("1430", 14, 30)]
    public void An_hour_is_read_as_it_is_said(string said, int hour, int minute) =>
        Assert.Equal(new LocalTime(hour, minute), Hours.Read(said));

    [Theory]
    [InlineData("25")]
    [InlineData("14:75")]
    [InlineData("13pm")]
    public void An_hour_that_can_not_be_is_none(string said) => Assert.Null(Hours.Read(said));

    [Theory]
    [InlineData("2", 14)]
    [InlineData("6", 18)]
    [InlineData("7", 7)]
    [InlineData("2 am", 2)]
    [InlineData("02:00", 2)]
    [InlineData("14", 14)]
    public void A_handover_at_a_bare_small_hour_is_in_the_afternoon(string said, int hour) => Assert.Equal(new LocalTime(hour, 0), Hours.OfHandover(said));

    [Fact]
    public void Dates_have_weekdays_and_masses_a_thin_space()
    {
        var words = Words.Of(BookInHand.Sample());
        Assert.Equal("Sat 24 Oct, 14:00", words.DayAndTime(new(2026, 10, 24, 14, 0)));
        Assert.Equal("Saturday 24 October, two in the afternoon", words.Spoken(new(2026, 10, 24, 14, 0), new(2026, 1, 1)));
        Assert.Equal("Saturday 24 October 2026, two in the afternoon", words.Spoken(new(2026, 10, 24, 14, 0), new(2025, 12, 31)));
        Assert.Equal("In 10 days", Words.InDays(Today, new(2026, 10, 24)));
        Assert.Equal("1 h 10", Words.Minutes(70));
        Assert.Equal("2 days", Words.Minutes(2880));
        Assert.Equal(["59 min", "23 h 59", "1 day", "1 day 20 h", "2 days 1 h"], new long[] { 59, 1439, 1440, 2655, 2940 }.Select(Words.Late));
        Assert.Equal("5\u2009880 g", words.MassOf(Mass.FromGrams(5880)));
        Assert.Equal("10.6 kg", words.MassOf(Mass.FromKilograms(10.6m)));
        Assert.Equal("10 in", words.Size(Length.FromMillimetres(254)));
    }

    [Fact]
    public void A_form_names_every_problem_at_once()
    {
        var form = new OrderForm { Day = "31/2", Hour = "99", Count = "many", Phone = "12", Tiers = [new TierForm { Diameter = "wide", Colours = [new ColourForm { Share = "90" }] }] };
        var (order, problems) = new FormReader(BookInHand.Sample(), Morning, owner: false).Read(form, Stage.Booked);
        Assert.Null(order);
        Assert.Equal(["day", "hour", "count", "tier-1", "phone", "name", "allergies"], problems.Select(p => p.Where));
    }

    [Fact]
    public void Shares_that_are_not_100_are_named()
    {
        var form = new OrderForm
        {
            Day = "sat", Hour = "14", Count = "60", Name = "Amara", Allergies = AllergyKind.NoneTold,
            Tiers = [new TierForm { Diameter = "6", Height = "10,5", Colours = [new ColourForm { Share = "60" }, new ColourForm { Share = "30" }] }],
        };
        var problem = Assert.Single(new FormReader(BookInHand.Sample(), Morning, owner: false).Read(form, Stage.Booked).Problems);
        Assert.Contains("90 %", problem.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Weekly_hours_are_read_and_written_alike()
    {
        const string line = "Mon-Fri 06:00-14:00, Sat 07:00-13:00";
        Assert.Equal(line, WeeklyHours.Write(WeeklyHours.Read(line).Rows));
        Assert.Equal("Mon 9 to 5", WeeklyHours.Read("Mon 9 to 5").Unread);
    }
}
