namespace Bakehouse.Domain.Reminders;

using Bakehouse.Domain.Planning;

/// <summary>One piece of work of one person: a step, or a whole batch or load that is ticked with one tap.</summary>
/// <param name="Steps">Keys of the steps that it ticks.</param>
/// <param name="Operation">Word of the method; "bake" means that the pans come out.</param>
/// <param name="Machine">Bowl or oven, or null.</param>
/// <param name="With">Ids of the others who do it together.</param>
public sealed record Work(
    IReadOnlyList<string> Steps, string Operation, Instant Start, Instant End, string? Machine, IReadOnlyList<string> With);

/// <summary>What one person still has to do, earliest first.</summary>
public sealed record PersonWork(string Person, IReadOnlyList<Work> Open)
{
    /// <summary>The step at hand: the earliest that is not done, whether it is due yet or not; null if there is none.</summary>
    public Work? AtHand => Open.Count > 0 ? Open[0] : null;
}

/// <summary>The next step for each person, read from the plan and the ticks. A step that is not ticked stays at hand.</summary>
public static class WorkList
{
    /// <summary>One row a person of the week, in the week's order. Pure.</summary>
    public static IReadOnlyList<PersonWork> Of(Week week, Wall wall, IReadOnlyList<Tick> ticks)
    {
        var plan = new OpenPlan(week, wall, ticks);
        var work = Hands(plan).Concat(Ovens(plan)).ToLookup(w => w.Person, w => w.Work);
        return
        [
            .. week.People.Select(p => new PersonWork(p.Id, [.. work[p.Id].OrderBy(w => w.Start).ThenBy(w => w.Steps[0], StringComparer.Ordinal)])),
        ];
    }

    private static IEnumerable<(string Person, Work Work)> Hands(OpenPlan plan) =>
        from g in plan.Rows.Where(r => r.People.Count > 0).GroupBy(r => (r.Start, r.Machine, Batch: r.Batch ?? r.Step))
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
