namespace Bakehouse.Domain.Planning;

/// <content>Names that must be known, conditions that must hold together, and holds in a ring.</content>
internal static partial class WeekChecks
{
    private static IEnumerable<Problem> Names(Week week)
    {
        var (people, machines, stores) = (Ids(week.People.Select(p => p.Id)), Ids(week.Machines.Select(m => m.Id)), Ids(week.Stores.Select(s => s.Id)));
        var (steps, holds) = (Ids(week.Steps.Select(s => s.Id)), Ids(week.Holds.Select(h => h.Id)));
        var pinned = week.Fixed.Select((f, n) => (Row: f, Where: $"fixed[{Text(n)}]")).ToList();
        return
        [
            .. Unknown("machine", machines, week.Families.SelectMany(f => f.Limit.Keys.Select(m => ($"families {f.Id}.limit", m)))),
            .. Unknown("tool", Ids(week.Tools.Select(t => t.Id)), week.Steps.SelectMany(s => s.Tools.Select(t => ($"steps {s.Id}.tools", t)))),
            .. Unknown("family", Ids(week.Families.Select(f => f.Id)), week.Steps.Where(s => s.Mix is not null).Select(s => ($"steps {s.Id}.mix.family", s.Mix!.Family))),
            .. Unknown("order", Ids(week.Orders.Select(o => o.Id)), week.Steps.Select(s => ($"steps {s.Id}.order", s.Order))),
            .. Unknown("step", steps, week.Holds.SelectMany(h => new[] { ($"holds {h.Id}.from", h.From), ($"holds {h.Id}.to", h.To) })),
            .. Unknown("store", stores, week.Holds.SelectMany(h => h.In.Select((i, n) => ($"holds {h.Id}.in[{Text(n)}]", i.Store)))),
            .. Unknown("step", steps, week.Clocks.SelectMany(c => c.Steps.Select(s => ($"clocks {c.Id}.steps", s)))),
            .. Unknown("hold", holds, week.Clocks.SelectMany(c => c.Holds.Select(h => ($"clocks {c.Id}.holds", h)))),
            .. Unknown("step", steps, week.Ages.SelectMany(a => new[] { ($"ages {a.Id}.from", a.From), ($"ages {a.Id}.to", a.To) })),
            .. Unknown("step", steps, week.Orders.SelectMany(o => o.Fresh.Select((f, n) => ($"orders {o.Id}.fresh[{Text(n)}]", f.Step)).Prepend(($"orders {o.Id}.out", o.Out)).Prepend(($"orders {o.Id}.ready", o.Ready)))),
            .. Unknown("step", steps, pinned.Where(f => f.Row.Step is not null).Select(f => ($"{f.Where}.step", f.Row.Step!))),
            .. Unknown("hold", holds, pinned.Where(f => f.Row.Hold is not null).Select(f => ($"{f.Where}.hold", f.Row.Hold!))),
            .. Unknown("person", people, pinned.SelectMany(f => (f.Row.People ?? []).Select(p => ($"{f.Where}.people", p)))),
            .. Unknown("machine", machines, pinned.Where(f => f.Row.Machine is not null).Select(f => ($"{f.Where}.machine", f.Row.Machine!))),
            .. Unknown("store", stores, pinned.Where(f => f.Row.Store is not null).Select(f => ($"{f.Where}.store", f.Row.Store!))),
        ];
    }

    private static HashSet<string> Ids(IEnumerable<string> ids) => [.. ids];

    private static IEnumerable<Problem> Unknown(string what, HashSet<string> known, IEnumerable<(string Where, string Name)> named) =>
        named.Where(n => !known.Contains(n.Name))
            .Select(n => new Problem(n.Where, n.Name, $"No {what} has this name.", $"Name a {what} of the week, or add it."));

    private static IEnumerable<Problem> Conditions(Week week)
    {
        var options = week.Choices.SelectMany(c => c.Options.Select(o => new Taken(c.Id, o))).ToHashSet();
        var taken = week.Steps.Select(s => ($"steps {s.Id}.if", s.If)).Concat(week.Holds.Select(h => ($"holds {h.Id}.if", h.If)));
        foreach (var (where, condition) in taken.Where(t => t.Item2 is { } pair && !options.Contains(pair)))
        {
            yield return new Problem(where, $"{condition!.Choice} = {condition.Option}", "No choice has this name and option.", "Name a choice of the week and one of its options.");
        }

        foreach (var choice in week.Choices.Where(c => c.Options.Count == 0))
        {
            yield return new Problem($"choices {choice.Id}.options", "nothing", "There is nothing to choose from.", "Name its options.");
        }

        foreach (var hold in week.Holds.Where(h => h.In.Count == 0))
        {
            yield return new Problem($"holds {hold.Id}.in", "nothing", "It may stand nowhere.", "Name a store.");
        }

        foreach (var order in week.Orders.Where(o => o.From > o.To))
        {
            yield return new Problem($"orders {order.Id}.from", $"{Text(order.From)} to {Text(order.To)}", "The agreed time ends before it begins.", "Turn the two round.");
        }

        foreach (var problem in AbsentEnds(week, options).Concat(Pins(week)))
        {
            yield return problem;
        }
    }

    /// <summary>A hold whose end may be absent must be absent with it. Conditions that are unknown are told elsewhere.</summary>
    private static IEnumerable<Problem> AbsentEnds(Week week, HashSet<Taken> options)
    {
        var conditions = week.Steps.Where(s => s.If is { } known && options.Contains(known)).DistinctBy(s => s.Id).ToDictionary(s => s.Id, s => s.If!);
        return
            from hold in week.Holds
            from end in new[] { hold.From, hold.To }.Distinct()
            where conditions.TryGetValue(end, out var condition) && hold.If != condition
            let wanted = conditions[end]
            select new Problem($"holds {hold.Id}.if", hold.If is { } own ? $"{own.Choice} = {own.Option}" : "nothing", $"Its end {end} exists only with {wanted.Choice} = {wanted.Option}.", "Give the hold the same condition.");
    }

    private static IEnumerable<Problem> Pins(Week week) =>
        from pin in week.Fixed.Select((f, n) => (Row: f, Where: $"fixed[{Text(n)}]"))
        where (pin.Row.Step is null) == (pin.Row.Hold is null)
        select new Problem(pin.Where, pin.Row.Step is null ? "nothing" : $"{pin.Row.Step} and {pin.Row.Hold}", "A pin is on one step or on one hold.", "Name the step or the hold.");

    /// <summary>Holds that run in a ring: a step that would wait for itself.</summary>
    private static IEnumerable<Problem> Rings(Week week)
    {
        var before = week.Steps.Select(s => s.Id).Distinct().ToDictionary(s => s, _ => 0);
        var after = before.Keys.ToDictionary(s => s, _ => new List<string>());
        foreach (var hold in week.Holds.Where(h => before.ContainsKey(h.From) && before.ContainsKey(h.To)))
        {
            before[hold.To]++;
            after[hold.From].Add(hold.To);
        }

        var free = new Queue<string>(before.Where(b => b.Value == 0).Select(b => b.Key));
        var seen = 0;
        while (free.TryDequeue(out var step))
        {
            seen++;
            foreach (var next in after[step].Where(n => --before[n] == 0))
            {
                free.Enqueue(next);
            }
        }

        if (seen < before.Count)
        {
            yield return new Problem("holds", string.Join(", ", before.Where(b => b.Value > 0).Select(b => b.Key).Take(5)), "These steps wait for one another in a ring.", "Turn one of the holds round.");
        }
    }
}
