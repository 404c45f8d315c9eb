namespace Bakehouse.Domain.Planning;

using Bakehouse.Domain.Methods;

/// <content>Waits, ages and food clocks that what happened has run out.</content>
internal sealed partial class WeekFacts
{
    /// <summary>
    /// The thing is there, whatever the limit said. What was done earlier than planned may wait so much longer, and what waits must
    /// find hands; what waits for something that is not made yet, waits as long as that takes. What the wall promises already may stay:
    /// a plan that could stand when it was hung up must not break by being read again.
    /// </summary>
    private Hold Loosened(Hold hold)
    {
        if (!done.TryGetValue(hold.From, out var end))
        {
            return hold;
        }

        // A mix ticked while the next one was in its bowl already is moved before that: its wait is counted from there.
        end = bowls.TryGetValue(hold.From, out var bowl) ? bowl.Start + bowl.Step.Minutes : end;
        // Without a row nobody knows how early it was done (a cake that came back from its handover): it may wait to the end.
        var early = rows.TryGetValue(hold.From, out var row) ? Math.Max(0, row.Start + steps[hold.From].Minutes - end) : Math.Max(0, week.Horizon - end);
        var begins = backlog.Earliest(hold.To);
        var found = WeekTime.Up(backlog.Through(hold.To, begins) - end);
        var stands = rows.TryGetValue(hold.To, out var next) ? WeekTime.Up(next.Start - end) : 0;
        return hold with
        {
            In = [.. hold.In.Select(i => i with { Most = backlog.WaitsForOthers(hold.To) && end + i.Most < begins + TwoDays ? Places.Endless : Math.Max(i.Most + early, Math.Max(found, stands)) })],
        };
    }

    /// <summary>
    /// A use-by is hard until its filling is in the cake. From then on it stays hard while two days are to spare; with less, it becomes a
    /// wish that outranks overtime, so that the plan hurries and there is one.
    /// </summary>
    private Age Loosened(Age age) =>
        age.Hard && done.TryGetValue(age.From, out var end) && end + age.Most < backlog.Earliest(age.To) + TwoDays ? age with { Hard = false } : age;

    /// <summary>
    /// The time that a done step and a past wait took is taken off the clock for good. If what is left can't be kept (or hardly:
    /// half an hour), the clock is told and no longer planned by.
    /// </summary>
    private FoodClock Loosened(FoodClock clock)
    {
        var cold = FoodLimits.Cold(week.Stores);
        var inside = week.Holds.Where(h => clock.Holds.Contains(h.Id)).ToList();
        var gone = inside.Where(h => done.ContainsKey(h.From) && done.ContainsKey(h.To)).Sum(h => FoodLimits.WarmMinutes(h, done[h.To] - steps[h.To].Minutes - done[h.From], cold));
        var standing = inside.Where(h => done.ContainsKey(h.From) && Open(h) && FoodLimits.AlwaysWarm(h, cold)).Select(h => backlog.Earliest(h.To) - done[h.From]).DefaultIfEmpty().Max();
        var left = Math.Max(0, clock.Limit - gone);
        var needed = clock.Steps.Sum(s => steps[s].Minutes) + Math.Max(0, standing) + 30;
        return clock with { Holds = [.. inside.Where(Open).Select(h => h.Id)], Limit = needed <= left || !clock.Steps.Any(done.ContainsKey) ? left : needed + TwoDays };
    }

    /// <summary>A cake that has gone has gone, and one that is going is going, also if the agreed hour is later by now.</summary>
    private WeekOrder GoneAsDone(WeekOrder order) =>
        done.TryGetValue(order.Out, out var end) ? order with { From = Math.Min(order.From, end - steps[order.Out].Minutes) }
        : running.Contains(order.Out) ? order with { From = Math.Min(order.From, rows[order.Out].Start) }
        : order;
}
