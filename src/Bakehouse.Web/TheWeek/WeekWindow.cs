namespace Bakehouse.Web.TheWeek;

using Bakehouse.Web.Shell;
using NodaTime;

/// <summary>Which days are drawn: four open days, at first from the open day before today.</summary>
/// <param name="Open">Sorted. A closed day on which somebody works counts as open: no work is folded away.</param>
/// <param name="Starts">First hour drawn: the shop's, or earlier if work begins earlier.</param>
/// <param name="Ends">Last hour drawn: the shop's, or later if work ends later.</param>
public sealed record WeekWindow(IReadOnlyList<LocalDate> Open, int Starts, int Ends)
{
    /// <summary>Days drawn at once.</summary>
    public const int Days = 4;

    private const int Reach = 60;

    /// <summary>First day.</summary>
    public LocalDate First => Open[0];

    /// <summary>Last day.</summary>
    public LocalDate Last => Open[^1];

    /// <summary>The window that many windows later than the usual one (negative: earlier).</summary>
    public static WeekWindow Of(PlanFacts facts, int later = 0)
    {
        var zone = Words.Of(facts.Shop).Zone;
        var today = facts.Now.InZone(zone).Date;
        var worked = facts.Work.SelectMany(s => new[] { s.From.InZone(zone).Date, s.To.InZone(zone).Date }).ToHashSet();
        bool IsOpen(LocalDate day) => facts.Shop.HoursOn(day).Count > 0 || worked.Contains(day) || day == today;

        var first = Step(today, -1, 1, IsOpen);
        first = later < 0 ? Step(first, -1, -later * Days, IsOpen) : Step(first, 1, later * Days, IsOpen);
        var days = new List<LocalDate> { first };
        while (days.Count < Days)
        {
            days.Add(Step(days[^1], 1, 1, IsOpen));
        }

        var hours = facts.Work.Where(s => days.Contains(s.From.InZone(zone).Date)).ToList();
        var settings = facts.Shop.Settings;
        return new WeekWindow(
            days,
            hours.Select(s => s.From.InZone(zone).Hour).Append(settings.DayStarts).Min(),
            hours.Select(s => EndHour(s, zone)).Append(settings.DayEnds).Max());
    }

    private static int EndHour(StepFacts step, DateTimeZone zone)
    {
        var (from, to) = (step.From.InZone(zone), step.To.InZone(zone));
        return to.Date > from.Date ? 24 : to.Minute > 0 ? to.Hour + 1 : to.Hour;
    }

    /// <summary>So many open days on from a day; a shop that never opens counts every day.</summary>
    private static LocalDate Step(LocalDate day, int direction, int count, Func<LocalDate, bool> isOpen)
    {
        for (var i = 0; i < count; i++)
        {
            var start = day;
            do
            {
                day = day.PlusDays(direction);
            }
            while (!isOpen(day) && Math.Abs(Period.DaysBetween(start, day)) < Reach);

            if (!isOpen(day))
            {
                day = start.PlusDays(direction);
            }
        }

        return day;
    }
}
