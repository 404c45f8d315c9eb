namespace Bakehouse.Testing;

using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using NodaTime;

/// <summary>A step that calls.</summary>
/// <param name="Step">Its key.</param>
/// <param name="Due">When it must ring if nobody says anything.</param>
/// <param name="Ring">The name that answers go by: "LeaveFridge:...", "Handover:...", "OvenOut:..."; pans of a load have the first one's.</param>
public sealed record DueStep(string Step, Instant Due, string Ring);

/// <summary>
/// Which steps must be ringing, read from the rows on the wall alone: fridge exits and handovers from their start, bakes from their end,
/// not ticked and with nothing ticked that comes after; a handover whose cake leaves the fridge up to 10 min before rings with that.
/// Written apart from the code that rings.
/// </summary>
public static class DueSteps
{
    /// <summary>Those of them whose time has come.</summary>
    public static IReadOnlyList<string> Of(Week? week, Wall? wall, IReadOnlyList<Order> orders, IReadOnlyList<Tick> ticks, Instant now) =>
    [
        .. All(week, wall, orders.Where(o => Stages.IsPlanned(o.Stage)).Select(o => o.Id.ToString("N")).ToHashSet(), ticks.Select(t => t.Step))
            .Where(s => s.Due <= now).Select(s => s.Step),
    ];

    /// <summary>All that are open; none while nothing is planned.</summary>
    /// <param name="week">Tells the minutes of a step, what comes before it, and what is done because something later is.</param>
    /// <param name="planned">Ids of the planned orders, as they stand in keys.</param>
    /// <param name="ticked">Steps with a tick that stands.</param>
    public static IReadOnlyList<DueStep> All(Week? week, Wall? wall, IReadOnlySet<string> planned, IEnumerable<string> ticked)
    {
        if (week is null || wall is null)
        {
            return [];
        }

        var steps = week.Steps.ToDictionary(s => s.Id);
        var rows = wall.Plan.Steps.Where(r => steps.TryGetValue(r.Step, out var step) && planned.Contains(step.Order)).ToDictionary(r => r.Step);
        var done = Done(week, ticked);
        var open = rows.Values.Where(r => !done.Contains(r.Step)).ToLookup(r => steps[r.Step].Name);
        return
        [
            .. open["leavefridge"].Select(r => new DueStep(r.Step, At(r.Start), $"LeaveFridge:{r.Step}")),
            .. open["handover"].Concat(open["deliver"]).Where(r => !RingsWithTheFridge(r.Step)).Select(r => new DueStep(r.Step, At(r.Start), $"Handover:{r.Step}")),
            .. open["bake"].GroupBy(r => (r.Machine, r.Batch ?? r.Step, End: r.Start + steps[r.Step].Minutes, r.Start))
                .SelectMany(pans => pans.Select(r => new DueStep(r.Step, At(pans.Key.End), $"OvenOut:{pans.Select(p => p.Step).Min(StringComparer.Ordinal)}"))),
        ];

        Instant At(int minute) => wall.Epoch + Duration.FromMinutes(minute);

        bool RingsWithTheFridge(string step)
        {
            var name = steps[step].Name;
            return rows.TryGetValue(step.Replace($".{name}.", ".leavefridge.", StringComparison.Ordinal), out var leave)
                && rows[step].Start - leave.Start is >= 0 and <= 10
                && (name == "handover" || leave.People.Take(1).SequenceEqual(rows[step].People.Take(1)));
        }
    }

    private static HashSet<string> Done(Week week, IEnumerable<string> ticked)
    {
        var done = ticked.Concat(week.Fixed.Where(f => f.Why == "done" && f.Step is not null).Select(f => f.Step!)).ToHashSet();
        for (var before = -1; before < done.Count;)
        {
            before = done.Count;
            done.UnionWith(week.Holds.Where(h => done.Contains(h.To)).Select(h => h.From));
        }

        return done;
    }
}
