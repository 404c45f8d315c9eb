namespace Bakehouse.Domain.Reminders;

using Bakehouse.Domain.Planning;

/// <summary>One piece of work of one person: a step, or a whole batch or load that is ticked with one tap.</summary>
/// <param name="Steps">Keys of the steps that it ticks.</param>
/// <param name="Operation">Word of the method; "bake" means that the pans come out.</param>
/// <param name="Machine">Bowl or oven, or null.</param>
/// <param name="With">Ids of the others who do it together.</param>
public sealed record Work(
    IReadOnlyList<string> Steps, string Operation, Instant Start, Instant End, string? Machine, IReadOnlyList<string> With)
{
    /// <summary>True if nobody ticked it and it is taken as done (<see cref="Planning.Assumed"/>).</summary>
    public bool IsAssumed { get; init; }

    /// <summary>True if a wait, an oven or a customer says when it begins: then its hour is worth reading.</summary>
    public bool IsTimed { get; init; }

    /// <summary>What nobody ticked of all that comes before it: only asked where this step may not be guessed, else empty.</summary>
    public IReadOnlyList<string> Doubts { get; init; } = [];
}

/// <summary>What one person still has to do, earliest first.</summary>
/// <param name="Open">What is not done, neither ticked nor assumed.</param>
/// <param name="Stints">The same as it is tapped, with what is only assumed in the stint that is at hand.</param>
public sealed record PersonWork(string Person, IReadOnlyList<Work> Open, IReadOnlyList<Stint> Stints)
{
    /// <summary>The stint at hand: the earliest that is not done, whether it is due yet or not; null if there is none.</summary>
    public Stint? AtHand => Stints.Count > 0 ? Stints[0] : null;

    /// <summary>The rest of a day as a shop thinks of it: at most one block of each kind, in the order of their beginnings.</summary>
    /// <param name="today">True for the stints of the day.</param>
    public IReadOnlyList<Block> Blocks(Func<Stint, bool> today) =>
        [.. Stints.Where(today).GroupBy(s => s.Kind).Select(g => new Block(g.Key, [.. g]))];
}

/// <summary>What each person has to do next, read from the plan and the ticks. A step that may not be guessed stays at hand until it is ticked.</summary>
public static class WorkList
{
    /// <summary>One row a person of the week, in the week's order. Pure.</summary>
    /// <param name="now">The moment of looking; the week may have been compiled earlier.</param>
    /// <param name="notDone">What somebody said is not done, and when.</param>
    public static IReadOnlyList<PersonWork> Of(
        Week week, Wall wall, IReadOnlyList<Tick> ticks, Instant now, IReadOnlyDictionary<string, Instant>? notDone = null)
    {
        var plan = new OpenPlan(week, wall, ticks, now, notDone);
        var stints = new Stints(plan, now);
        var open = Hands(plan, plan.Rows).Concat(Ovens(plan)).ToLookup(w => w.Person, w => w.Work);
        var assumed = Hands(plan, plan.AssumedRows).ToLookup(w => w.Person, w => w.Work with { IsAssumed = true });
        return
        [
            .. week.People.Select(p => new PersonWork(p.Id, [.. InOrder(open[p.Id])], stints.Of(InOrder(open[p.Id].Concat(assumed[p.Id]))))),
        ];
    }

    private static IEnumerable<Work> InOrder(IEnumerable<Work> work) => work.OrderBy(w => w.Start).ThenBy(w => w.Steps[0], StringComparer.Ordinal);

    private static IEnumerable<(string Person, Work Work)> Hands(OpenPlan plan, IEnumerable<StepRow> rows) =>
        from g in rows.Where(r => r.People.Count > 0).GroupBy(r => (r.Start, r.Machine, Batch: r.Batch ?? r.Step))
        let first = g.First()
        from person in first.People
        select (person, new Work(
            [.. g.Select(r => r.Step)],
            plan.Step(first.Step).Name,
            plan.At(first.Start),
            plan.At(g.Max(plan.End)),
            first.Machine,
            [.. first.People.Where(p => p != person)]));

    private static IEnumerable<(string Person, Work Work)> Ovens(OpenPlan plan)
    {
        foreach (var pans in plan.PansOut())
        {
            if (plan.WhoTakesOut(pans[0].Step) is { } person)
            {
                var end = plan.At(plan.End(pans[0]));
                yield return (person, new Work([.. pans.Select(p => p.Step)], "bake", end, end, pans[0].Machine, []));
            }
        }
    }
}
