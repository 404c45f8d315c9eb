namespace Bakehouse.Book.Entries;

using System.Globalization;
using Bakehouse.Domain;
using Bakehouse.Domain.Planning;

/// <summary>
/// Hangs up a plan that was found beside the work. It must still fit what stands in the book, be better than the wall, make no cake later
/// and leave the next two hours alone; whatever made it is not trusted.
/// </summary>
internal static class TakePlanEntry
{
    private const string Subject = "plan";
    private const string Again = "Look for a better plan again.";

    public static Outcome Decide(TakePlan command, Desk desk)
    {
        if (desk.State is not { Week: not null, Wall: { } wall })
        {
            return Refused("Nothing is planned.", "Take an order first.");
        }

        if (command.Head != desk.State.Head)
        {
            return Outcome.Clash(Subject, "The book was changed since this plan was looked at. Look at it again.", null);
        }

        var week = Week.From(desk.State.Orders, desk.Shop, desk.State.Ticks, wall, desk.Now, desk.State.Hand);
        var calm = Calm.Until(week, week.Now + Calm.Minutes);
        var plan = command.Plan.From(week.Epoch) with { Week = week.Name };
        return Problem(calm, week.Reference!, plan, desk) ?? Outcome.Accepted(
            Subject, new Change(new Wall(week.Epoch, plan), _ => { }), late: Judge.MinutesLate(week, plan));
    }

    private static Outcome? Problem(Week week, Plan stands, Plan plan, Desk desk)
    {
        var (before, after) = (Judge.Examine(week, stands), Judge.Examine(week, plan));
        var facts = before.Breaches.Select(b => (b.Rule, b.Step)).ToHashSet();
        if (after.Breaches.Any(b => !facts.Contains((b.Rule, b.Step))))
        {
            return Refused("That plan does not fit any more: the work has gone on.", Again);
        }

        var late = Judge.MinutesLate(week, stands);
        var later = Judge.MinutesLate(week, plan).Where(l => l.Value > late.GetValueOrDefault(l.Key)).Select(l => l.Key).ToHashSet(StringComparer.Ordinal);
        if (later.Count > 0)
        {
            var numbers = desk.State.Orders.Where(o => later.Contains(o.Id.ToString("N"))).Select(o => o.Number.ToString(CultureInfo.InvariantCulture));
            return Refused($"It would make order {string.Join(", ", numbers)} later than it is.", Again);
        }

        return after.Levels.CompareTo(before.Levels) >= 0 ? Refused("It is no better than the plan on the wall.", "Leave the plan as it is.") : null;
    }

    private static Outcome Refused(string sentence, string attempt) => Outcome.Refused(Subject, new Problem("plan", "", sentence, attempt));
}
