namespace Bakehouse.Domain.Planning;

/// <summary>What can be wrong with a week whose fields could all be read: names, spans, grains, ends of holds.</summary>
internal static class WeekChecks
{
    public static IEnumerable<Problem> Of(Week week) =>
        Numbers(week)
            .Concat(Doubles(week))
            .Concat(SpansOf(week))
            .Concat(StepNames(week))
            .Concat(HoldNames(week))
            .Concat(OrderNames(week))
            .Concat(Rings(week));

    private static IEnumerable<Problem> Numbers(Week week)
    {
        if (week.Grain <= 0)
        {
            yield return new Problem("tick", Text(week.Grain), "The grain is at least 1 minute.", "Use 5.");
            yield break;
        }

        var minutes = week.Steps.Select(s => ($"steps {s.Id}.minutes", s.Minutes, 1))
            .Concat(week.Holds.SelectMany(h => h.In.SelectMany(i => new[] { ($"holds {h.Id} in {i.Store} least", i.Least, 0), ($"holds {h.Id} in {i.Store} most", i.Most, i.Least) })))
            .Concat(week.Clocks.Select(c => ($"clocks {c.Id}.limit", c.Limit, 0)))
            .Concat(week.Ages.Select(a => ($"ages {a.Id}.most", a.Most, 0)))
            .Append(("horizon", week.Horizon, 1));
        foreach (var (where, value, least) in minutes)
        {
            if (value < least)
            {
                yield return new Problem(where, Text(value), $"This is below {least} minutes.", $"Give at least {least}.");
            }
            else if (value % week.Grain != 0)
            {
                yield return new Problem(where, Text(value), $"This is no multiple of {week.Grain} minutes.", $"Round it to {Text((value + week.Grain - 1) / week.Grain * week.Grain)}.");
            }
        }

        var counts = week.Tools.Select(t => ($"tools {t.Id}.count", t.Count))
            .Concat(week.Stores.Select(s => ($"stores {s.Id}.places", s.Places)))
            .Concat(week.Holds.Select(h => ($"holds {h.Id}.places", h.Places)))
            .Concat(week.Steps.Where(s => s.Skill is not null).Select(s => ($"steps {s.Id}.count", s.Count - 1)));
        foreach (var (where, value) in counts.Where(c => c.Item2 < 0))
        {
            yield return new Problem(where, Text(value), "This is below what it may be.", "Give a number of pieces.");
        }
    }

    private static IEnumerable<Problem> Doubles(Week week) =>
        Twice("people", week.People.Select(p => p.Id))
            .Concat(Twice("tools", week.Tools.Select(t => t.Id)))
            .Concat(Twice("machines", week.Machines.Select(m => m.Id)))
            .Concat(Twice("families", week.Families.Select(f => f.Id)))
            .Concat(Twice("stores", week.Stores.Select(s => s.Id)))
            .Concat(Twice("choices", week.Choices.Select(c => c.Id)))
            .Concat(Twice("steps", week.Steps.Select(s => s.Id)))
            .Concat(Twice("holds", week.Holds.Select(h => h.Id)))
            .Concat(Twice("orders", week.Orders.Select(o => o.Id)));

    private static IEnumerable<Problem> Twice(string list, IEnumerable<string> ids) =>
        ids.GroupBy(i => i).Where(g => g.Count() > 1 || g.Key.Length == 0)
            .Select(g => new Problem(list, g.Key, $"The id stands {g.Count()} times in {list}.", "Give each its own id."));

    private static IEnumerable<Problem> SpansOf(Week week)
    {
        var all = week.People.SelectMany(p => new[] { ($"people {p.Id}.shifts", p.Shifts), ($"people {p.Id}.extra", p.Extra) })
            .Concat(week.Tools.Select(t => ($"tools {t.Id}.down", t.Down)))
            .Concat(week.Machines.Select(m => ($"machines {m.Id}.down", m.Down)))
            .Concat(week.Stores.Select(s => ($"stores {s.Id}.down", s.Down)));
        foreach (var (where, spans) in all)
        {
            foreach (var span in spans.Where(s => s.From >= s.To))
            {
                yield return new Problem(where, $"[{span.From}, {span.To}]", "A span ends after it begins.", "Turn the two round, or leave it out.");
            }

            for (var i = 1; i < spans.Count; i++)
            {
                if (spans[i].From < spans[i - 1].To)
                {
                    yield return new Problem(where, $"[{spans[i].From}, {spans[i].To}]", $"It begins before the one before it ends ({spans[i - 1].To}).", "Sort the spans and keep them apart.");
                }
            }
        }
    }

    private static IEnumerable<Problem> StepNames(Week week)
    {
        var tools = week.Tools.Select(t => t.Id).ToHashSet();
        var families = week.Families.Select(f => f.Id).ToHashSet();
        var orders = week.Orders.Select(o => o.Id).ToHashSet();
        var machines = week.Machines.Select(m => m.Id).ToHashSet();
        foreach (var family in week.Families)
        {
            foreach (var machine in family.Limit.Keys.Where(m => !machines.Contains(m)))
            {
                yield return Unknown($"families {family.Id}.limit", machine, "machine");
            }
        }

        foreach (var step in week.Steps)
        {
            foreach (var tool in step.Tools.Where(t => !tools.Contains(t)))
            {
                yield return Unknown($"steps {step.Id}.tools", tool, "tool");
            }

            if (step.Mix is { } mix && !families.Contains(mix.Family))
            {
                yield return Unknown($"steps {step.Id}.mix", mix.Family, "family");
            }

            if (!orders.Contains(step.Order))
            {
                yield return Unknown($"steps {step.Id}.order", step.Order, "order");
            }

            if (TakenUnknown(week, step.If))
            {
                yield return Unknown($"steps {step.Id}.if", $"{step.If!.Choice} = {step.If.Option}", "choice and option");
            }
        }
    }

    private static IEnumerable<Problem> HoldNames(Week week)
    {
        var steps = week.Steps.Select(s => s.Id).ToHashSet();
        var stores = week.Stores.Select(s => s.Id).ToHashSet();
        foreach (var hold in week.Holds)
        {
            foreach (var end in new[] { hold.From, hold.To }.Where(e => !steps.Contains(e)))
            {
                yield return Unknown($"holds {hold.Id}", end, "step");
            }

            foreach (var standing in hold.In.Where(i => !stores.Contains(i.Store)))
            {
                yield return Unknown($"holds {hold.Id}.in", standing.Store, "store");
            }

            if (hold.In.Count == 0)
            {
                yield return new Problem($"holds {hold.Id}.in", "nothing", "It may stand nowhere.", "Name a store.");
            }

            if (TakenUnknown(week, hold.If))
            {
                yield return Unknown($"holds {hold.Id}.if", $"{hold.If!.Choice} = {hold.If.Option}", "choice and option");
            }
        }

        foreach (var (where, name) in week.Clocks.SelectMany(c => c.Steps.Select(s => ($"clocks {c.Id}.steps", s)))
            .Concat(week.Ages.SelectMany(a => new[] { ($"ages {a.Id}.from", a.From), ($"ages {a.Id}.to", a.To) }))
            .Where(n => !steps.Contains(n.Item2)))
        {
            yield return Unknown(where, name, "step");
        }
    }

    private static IEnumerable<Problem> OrderNames(Week week)
    {
        var steps = week.Steps.Select(s => s.Id).ToHashSet();
        foreach (var order in week.Orders)
        {
            foreach (var step in order.Fresh.Select(f => f.Step).Append(order.Ready).Append(order.Out).Where(s => !steps.Contains(s)))
            {
                yield return Unknown($"orders {order.Id}", step, "step");
            }

            if (order.From > order.To)
            {
                yield return new Problem($"orders {order.Id}", $"{order.From} to {order.To}", "The agreed time ends before it begins.", "Turn the two round.");
            }
        }
    }

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

    private static bool TakenUnknown(Week week, Taken? taken) =>
        taken is not null && !week.Choices.Any(c => c.Id == taken.Choice && c.Options.Contains(taken.Option));

    private static Problem Unknown(string where, string name, string what) =>
        new(where, name, $"No {what} has this name.", $"Name a {what} of the week, or add it.");

    private static string Text(int value) => value.ToString(System.Globalization.CultureInfo.InvariantCulture);
}
