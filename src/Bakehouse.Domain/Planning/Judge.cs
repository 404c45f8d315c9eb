namespace Bakehouse.Domain.Planning;

/// <summary>
/// Looks at a plan and says which rules it breaks and how good it is, level by level. One method for each rule, named by
/// its id. It shares no code with any planner and runs on every plan before it is shown or stored.
/// </summary>
public static partial class Judge
{
    /// <summary>Every broken rule, each breach once, and the levels.</summary>
    public static Verdict Examine(Week week, Plan plan)
    {
        var names = W0(week, plan).ToList();
        var at = new WeekIndex(week, plan);
        List<Breach> breaches =
        [
            .. names, .. W1(at), .. W2(at), .. W3(at),
            .. H1(at), .. H2(at), .. H3(at), .. H4(at),
            .. T1(at), .. T2(at),
            .. M1(at), .. M2(at), .. M3(at), .. M4(at), .. M5(at), .. M6(at), .. M7(at),
            .. A1(at), .. A2(at), .. A3(at),
            .. S1(at), .. S2(at), .. S3(at), .. S4(at), .. S5(at), .. S6(at), .. S7(at),
            .. K1(at), .. K2(at), .. P1(at), .. X1(at), .. X2(at),
        ];
        return new Verdict(breaches, LevelsOf(at, breaches.Count));
    }

    /// <summary>A name that the week does not know.</summary>
    private static IEnumerable<Breach> W0(Week week, Plan plan)
    {
        var steps = week.Steps.Select(s => s.Id).ToHashSet();
        var holds = week.Holds.Select(h => h.Id).ToHashSet();
        var people = week.People.Select(p => p.Id).ToHashSet();
        var machines = week.Machines.Select(m => m.Id).ToHashSet();
        var stores = week.Stores.Select(s => s.Id).ToHashSet();
        var choices = week.Choices.Select(c => c.Id).ToHashSet();
        return Unknown("step", plan.Steps.Select(r => r.Step), steps)
            .Concat(Unknown("hold", plan.Holds.Select(r => r.Hold), holds))
            .Concat(Unknown("person", plan.Steps.SelectMany(r => r.People).Concat(plan.Cleans.SelectMany(c => c.People)), people))
            .Concat(Unknown("machine", plan.Steps.Select(r => r.Machine).OfType<string>().Concat(plan.Cleans.Select(c => c.Machine)), machines))
            .Concat(Unknown("store", plan.Holds.Select(r => r.Store), stores))
            .Concat(Unknown("choice", plan.Choices.Keys, choices));
    }

    private static IEnumerable<Breach> Unknown(string what, IEnumerable<string> named, HashSet<string> known) =>
        named.Where(n => !known.Contains(n)).Distinct().Select(n => new Breach("W0", $"The week knows no {what} {n}.", n));

    /// <summary>Every present step and hold has one row, others none.</summary>
    private static IEnumerable<Breach> W1(WeekIndex at)
    {
        var steps = at.Plan.Steps.GroupBy(r => r.Step).ToDictionary(g => g.Key, g => g.Count());
        var holds = at.Plan.Holds.GroupBy(r => r.Hold).ToDictionary(g => g.Key, g => g.Count());
        return Rows(at.Week.Steps.Select(s => (s.Id, at.Present(s.If))), steps, "step")
            .Concat(Rows(at.Week.Holds.Select(h => (h.Id, at.Present(h.If))), holds, "hold"));
    }

    private static IEnumerable<Breach> Rows(IEnumerable<(string Id, bool Present)> wanted, Dictionary<string, int> rows, string what)
    {
        foreach (var (id, present) in wanted)
        {
            var count = rows.GetValueOrDefault(id);
            if (count != (present ? 1 : 0))
            {
                yield return new Breach("W1", $"The {what} {id} has {count} rows and needs {(present ? 1 : 0)}.", id);
            }
        }
    }

    /// <summary>Every choice is made.</summary>
    private static IEnumerable<Breach> W2(WeekIndex at) =>
        from choice in at.Week.Choices
        where !at.Plan.Choices.TryGetValue(choice.Id, out var option) || !choice.Options.Contains(option)
        select new Breach("W2", $"The choice {choice.Id} is not made: it is one of {string.Join(", ", choice.Options)}.", choice.Id);

    /// <summary>Starts are whole grains inside the week.</summary>
    private static IEnumerable<Breach> W3(WeekIndex at) =>
        from w in at.Working
        where !InsideWeek(at.Week, w.Row.Start, w.Step.Minutes)
        select new Breach("W3", $"{w.Step.Id} starts at minute {w.Row.Start}: not a whole {at.Week.Grain} minutes inside the week.", w.Step.Id, w.Row.Start);

    private static bool InsideWeek(Week week, int start, int minutes) =>
        start >= 0 && start % week.Grain == 0 && start <= week.Horizon - minutes;

    /// <summary>Nobody is served before the agreed time.</summary>
    private static IEnumerable<Breach> P1(WeekIndex at) =>
        from order in at.Week.Orders
        where at.Runs(order.Out)
        let moment = Moment(at, order)
        where moment < order.From
        select new Breach("P1", $"{order.Name} goes out at minute {moment}, before the agreed {order.From}.", order.Id, moment);

    /// <summary>What is done, started or pinned stays: each given field that differs is a breach.</summary>
    private static IEnumerable<Breach> X1(WeekIndex at) =>
        from given in at.Week.Fixed
        from field in given.Step is { } step ? Moved(given, at.Rows.GetValueOrDefault(step)) : Moved(given, at.HoldRows.GetValueOrDefault(given.Hold ?? ""))
        select new Breach("X1", $"{given.Step ?? given.Hold} is {given.Why} and its {field} was changed.", given.Step ?? given.Hold, given.Start);

    private static IEnumerable<string> Moved(Fixed given, StepRow? row)
    {
        if (given.Start is { } start && row?.Start != start)
        {
            yield return "start";
        }

        if (given.People is { } people && (row is null || !row.People.ToHashSet().SetEquals(people)))
        {
            yield return "people";
        }

        if (given.Machine is { } machine && row?.Machine != machine)
        {
            yield return "machine";
        }
    }

    private static IEnumerable<string> Moved(Fixed given, HoldRow? row)
    {
        if (given.Store is { } store && row?.Store != store)
        {
            yield return "place";
        }
    }

    /// <summary>Nothing new in the past or the frozen stretch.</summary>
    private static IEnumerable<Breach> X2(WeekIndex at)
    {
        var given = at.Week.Fixed.Where(f => f.Step is not null).Select(f => f.Step!).ToHashSet();
        var standing = (at.Week.Reference?.Cleans ?? []).Select(c => (c.Machine, c.Start)).ToHashSet();
        var steps = at.Working
            .Where(w => w.Row.Start < at.Week.FreeFrom && !given.Contains(w.Step.Id))
            .Select(w => new Breach("X2", $"{w.Step.Id} starts at minute {w.Row.Start}, before {at.Week.FreeFrom}.", w.Step.Id, w.Row.Start));
        var cleans = at.Plan.Cleans
            .Where(c => c.Start < at.Week.FreeFrom && !standing.Contains((c.Machine, c.Start)))
            .Select(c => new Breach("X2", $"A clean-down of {c.Machine} starts at minute {c.Start}, before {at.Week.FreeFrom}.", c.Machine, c.Start));
        return steps.Concat(cleans);
    }

    /// <summary>X3: every row of a given plan is kept. Asked of an insertion, which moves nobody.</summary>
    public static IReadOnlyList<Breach> KeepsEveryRow(Plan standing, Plan plan)
    {
        var steps = plan.Steps.GroupBy(r => r.Step).ToDictionary(g => g.Key, g => g.First());
        var holds = plan.Holds.GroupBy(r => r.Hold).ToDictionary(g => g.Key, g => g.First());
        var moved = standing.Steps
            .Where(r => !steps.TryGetValue(r.Step, out var now) || now.Start != r.Start || now.Machine != r.Machine || !now.People.ToHashSet().SetEquals(r.People))
            .Select(r => new Breach("X3", $"{r.Step} was moved.", r.Step, r.Start));
        var elsewhere = standing.Holds
            .Where(r => !holds.TryGetValue(r.Hold, out var now) || now.Store != r.Store)
            .Select(r => new Breach("X3", $"{r.Hold} was moved.", r.Hold));
        return [.. moved, .. elsewhere];
    }
}
