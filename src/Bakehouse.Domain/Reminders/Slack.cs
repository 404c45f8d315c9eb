namespace Bakehouse.Domain.Reminders;

using Bakehouse.Domain.Planning;

/// <summary>How far one step may move later while everything else of the plan stands.</summary>
internal static class Slack
{
    /// <summary>
    /// The latest start of the step before the next fixed thing: what follows it, how long the thing may wait where it is, a use-by,
    /// the person's next work or the end of the shift, the promise. Null if it can't move.
    /// </summary>
    public static Instant? Until(OpenPlan plan, StepRow row)
    {
        var latest = Ends(plan, row).DefaultIfEmpty(row.Start).Min();
        return latest > row.Start ? plan.At(latest) : null;
    }

    private static IEnumerable<int> Ends(OpenPlan plan, StepRow row)
    {
        var minutes = plan.Step(row.Step).Minutes;
        return Waits(plan, row, minutes)
            .Concat(row.People.SelectMany(p => Hands(plan, row, p, minutes)))
            .Concat(Promises(plan, row, minutes));
    }

    private static IEnumerable<int> Waits(OpenPlan plan, StepRow row, int minutes)
    {
        foreach (var hold in plan.After[row.Step])
        {
            if (plan.Row(hold.To) is { } next && StandingOf(plan, hold) is { } standing)
            {
                yield return next.Start - standing.Least - minutes;
            }
        }

        foreach (var hold in plan.Before[row.Step])
        {
            if (plan.Row(hold.From) is { } last && StandingOf(plan, hold) is { } standing)
            {
                yield return plan.End(last) + standing.Most;
            }
        }
    }

    private static IEnumerable<int> Hands(OpenPlan plan, StepRow row, string person, int minutes)
    {
        if (plan.Rows.FirstOrDefault(r => r.Start >= row.Start && r.Step != row.Step && r.People.Contains(person)) is { } next)
        {
            yield return next.Start - minutes;
        }

        var spans = plan.Week.People.FirstOrDefault(p => p.Id == person)?.Shifts ?? [];
        foreach (var span in spans.Where(s => s.From <= row.Start && row.Start < s.To))
        {
            yield return span.To - minutes;
        }
    }

    private static IEnumerable<int> Promises(OpenPlan plan, StepRow row, int minutes)
    {
        foreach (var order in plan.Week.Orders.Where(o => o.Out == row.Step))
        {
            yield return order.EdgeIsEnd ? order.To - minutes : order.To;
        }

        foreach (var age in plan.Week.Ages.Where(a => a.Hard && a.To == row.Step))
        {
            if (plan.Row(age.From) is { } from)
            {
                yield return plan.End(from) + age.Most;
            }
        }
    }

    private static Standing? StandingOf(OpenPlan plan, Hold hold) =>
        plan.Stores.TryGetValue(hold.Id, out var store) ? hold.In.FirstOrDefault(i => i.Store == store) : null;
}
