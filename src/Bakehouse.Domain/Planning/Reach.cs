namespace Bakehouse.Domain.Planning;

/// <summary>
/// Where one step may be put by hand, whatever else makes way: only what is done, started or pinned, people's hours, closures, the
/// method's waits and the promise stand in its way. Outside of it every plan breaks a rule or makes the cake later; inside, a planner
/// says whether the others find room.
/// </summary>
public sealed class Reach
{
    private readonly Week week;
    private readonly Step step;
    private readonly ReachWindow window;
    private readonly Dictionary<string, IReadOnlyList<Span>> hours;
    private readonly List<(StepRow Row, Step Step)> given;

    private Reach(Week week, Plan plan, Step step)
    {
        (this.week, this.step) = (week, step);
        window = new ReachWindow(week, plan, step.Id, new ReachHands(week));
        hours = week.People.ToDictionary(p => p.Id, ReachHands.Stretches);
        var steps = week.Steps.ToDictionary(s => s.Id);
        given =
        [
            .. week.Fixed.Where(f => f is { Step: not null, Start: not null } && f.Step != step.Id)
                .Select(f => (new StepRow(f.Step!, f.Start!.Value, f.People ?? [], f.Machine, null), steps[f.Step!])),
        ];
    }

    /// <summary>First start by everything but people and machines, and why not earlier.</summary>
    public (int Minute, Stop Why) Earliest => window.Earliest(step.Id);

    /// <summary>Last start by everything but people and machines, and why not later.</summary>
    public (int Minute, Stop Why) Latest => window.Latest(step.Id);

    /// <summary>
    /// Of a step of that plan; null if the week or the plan does not have it, or it is done or running: then it stays.
    /// </summary>
    public static Reach? Of(Week week, Plan plan, string step) =>
        week.Steps.FirstOrDefault(s => s.Id == step) is { } found && plan.Steps.Any(r => r.Step == step) && !week.Fixed.Any(f => f.Step == step && f.Why != "pinned")
            ? new Reach(week, plan, found)
            : null;

    /// <summary>Why those people on that machine can't begin it at that minute, or null if they can.</summary>
    public Stop? WhyNot(int start, IReadOnlyList<string> people, string? machine)
    {
        if (start < Earliest.Minute)
        {
            return Earliest.Why;
        }

        if (start > Latest.Minute)
        {
            return Latest.Why;
        }

        var time = new Span(start, start + step.Minutes);
        return people.Select(p => Away(p, time) ?? Busy(p, time)).FirstOrDefault(s => s is not null)
            ?? (machine is null ? null : Closed(machine, week.Machines.First(m => m.Id == machine).Down, time) ?? Taken(machine, time))
            ?? step.Tools.Select(t => OfTool(week.Tools.First(w => w.Id == t), time)).FirstOrDefault(s => s is not null);
    }

    /// <summary>Starts that those people and that machine allow: from the first to the last of each run of grains, both included.</summary>
    public IReadOnlyList<Span> Starts(IReadOnlyList<string> people, string? machine)
    {
        var runs = new List<Span>();
        for (var start = WeekTime.Up(Math.Max(0, Earliest.Minute)); start <= Latest.Minute; start += week.Grain)
        {
            if (WhyNot(start, people, machine) is not null)
            {
                continue;
            }

            if (runs.Count > 0 && runs[^1].To == start - week.Grain)
            {
                runs[^1] = runs[^1] with { To = start };
            }
            else
            {
                runs.Add(new Span(start, start));
            }
        }

        return runs;
    }

    /// <summary>Who could do it: every set of people with the skill, as many as it needs. One empty set if it needs no hands.</summary>
    public IReadOnlyList<IReadOnlyList<string>> Crews()
    {
        var able = step.Skill is null ? [] : week.People.Where(p => p.Skills.Contains(step.Skill)).Select(p => p.Id).ToList();
        return Sets(able, step.Skill is null ? 0 : step.Count);
    }

    /// <summary>Ovens or bowls that take it; one null if it needs none.</summary>
    public IReadOnlyList<string?> Machines() => step switch
    {
        { Mix: { } mix } => [.. week.Machines.Where(m => week.Families.First(f => f.Id == mix.Family).Limit.GetValueOrDefault(m.Id) >= mix.Size).Select(m => m.Id)],
        { Bake: { } bake } => [.. week.Machines.Where(m => m.Kind == MachineKind.Oven && bake.Pans.All(p => m.Fits.GetValueOrDefault(p) > 0)).Select(m => m.Id)],
        _ => [null],
    };

    private static IReadOnlyList<IReadOnlyList<string>> Sets(IReadOnlyList<string> able, int count) => count == 0
        ? [[]]
        : [.. able.SelectMany((first, i) => Sets([.. able.Skip(i + 1)], count - 1).Select(rest => (IReadOnlyList<string>)[first, .. rest]))];

    /// <summary>The first gap in somebody's hours that meets that time.</summary>
    private Stop? Away(string person, Span time)
    {
        var at = hours[person];
        if (at.Any(h => h.Covers(time)))
        {
            return null;
        }

        var inside = at.FirstOrDefault(h => h.From <= time.From && time.From < h.To);
        var from = inside.Minutes > 0 ? inside.To : at.Where(h => h.To <= time.From).Select(h => h.To).DefaultIfEmpty(0).Max();
        var to = at.Where(h => h.From >= from).Select(h => h.From).DefaultIfEmpty(week.Horizon).Min();
        return new Stop(StopKind.Away, from, person, From: from, To: to);
    }

    private Stop? Busy(string person, Span time)
    {
        var other = given.FirstOrDefault(g => g.Row.People.Contains(person) && Of(g).Meets(time));
        return other.Row is null ? null : new Stop(StopKind.Busy, Of(other).From, person, Step: other.Step.Id, From: Of(other).From, To: Of(other).To);
    }

    private static Stop? Closed(string place, IReadOnlyList<Span> down, Span time) => down.Any(d => d.Meets(time)) && down.First(d => d.Meets(time)) is var shut
        ? new Stop(StopKind.Shut, shut.From, Place: place, From: shut.From, To: shut.To)
        : null;

    private Stop? Taken(string machine, Span time)
    {
        var other = given.FirstOrDefault(g => g.Row.Machine == machine && Of(g).Meets(time) && !Shares(g));
        return other.Row is null ? null : new Stop(StopKind.Taken, Of(other).From, Place: machine, Step: other.Step.Id, From: Of(other).From, To: Of(other).To);

        // What begins with it may go in with it: whether it fits, the planner says.
        bool Shares((StepRow Row, Step Step) g) => g.Row.Start == time.From && g.Step.Bake?.Heat == step.Bake?.Heat && g.Step.Mix?.Family == step.Mix?.Family;
    }

    private Stop? OfTool(Tool tool, Span time)
    {
        if (Closed(tool.Id, tool.Down, time) is { } shut)
        {
            return shut;
        }

        var others = given.Where(g => g.Step.Tools.Contains(tool.Id) && Of(g).Meets(time)).ToList();
        bool Full(int minute) => others.Count(x => Of(x).From <= minute && minute < Of(x).To) >= tool.Count;
        var full = others.Where(o => Full(Math.Max(time.From, Of(o).From))).ToList();
        return full.Count == 0 ? null : new Stop(StopKind.Taken, Of(full[0]).From, Place: tool.Id, Step: full[0].Step.Id, From: Of(full[0]).From, To: Of(full[0]).To);
    }

    private static Span Of((StepRow Row, Step Step) given) => new(given.Row.Start, given.Row.Start + given.Step.Minutes);
}
