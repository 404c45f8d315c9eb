namespace Bakehouse.Testing.Planning;

using Bakehouse.Domain.Planning;

/// <summary>
/// One thing that goes wrong in a week with a plan on the wall, drawn from a seed: what was to begin before is done or running, the
/// rest is free. Six kinds: somebody away, a machine out of use, the step in hand takes longer, something is not set, a pickup is
/// moved, a sponge is baked again.
/// </summary>
public static class RandomSlips
{
    /// <summary>The week and its plan without the orders that the plan makes late: an honest wall to start from.</summary>
    public static (Week Week, Plan Plan) OnTime(Week week, Plan plan)
    {
        var late = Judge.MinutesLate(week, plan).Keys.ToHashSet();
        var steps = week.Steps.Where(s => !late.Contains(s.Order)).Select(s => s.Id).ToHashSet();
        var holds = week.Holds.Where(h => steps.Contains(h.From) && steps.Contains(h.To)).ToList();
        var kept = holds.Select(h => h.Id).ToHashSet();
        return (week with
        {
            Orders = [.. week.Orders.Where(o => !late.Contains(o.Id))],
            Steps = [.. week.Steps.Where(s => steps.Contains(s.Id))],
            Holds = holds,
            Ages = [.. week.Ages.Where(a => steps.Contains(a.From) && steps.Contains(a.To))],
            Clocks = [.. week.Clocks.Where(c => c.Steps.All(steps.Contains) && c.Holds.All(kept.Contains))],
        }, plan with { Steps = [.. plan.Steps.Where(r => steps.Contains(r.Step))], Holds = [.. plan.Holds.Where(r => kept.Contains(r.Hold))] });
    }

    /// <summary>The week after the event, and the event in words.</summary>
    public static (Week Week, string Words) Of(Week week, Plan wall, int seed)
    {
        var random = new Random(seed);
        var minutes = week.Steps.ToDictionary(s => s.Id, s => s.Minutes);
        var starts = wall.Steps.Where(r => minutes[r.Step] > 0).Select(r => r.Start).Order().ToList();
        var now = starts[random.Next(starts.Count / 10, starts.Count * 3 / 4)] + 5;
        var after = Loosened(week, wall, now) with
        {
            Now = now,
            FreeFrom = now,
            Repair = true,
            Reference = wall,
            Fixed = [.. wall.Steps.Where(r => r.Start < now).Select(r => new Fixed(r.Step, r.Start, r.People.Count > 0 ? r.People : null, r.Machine, null, null, r.Start + minutes[r.Step] > now ? "started" : "done"))],
        };
        return random.Next(6) switch
        {
            0 => Away(after, random),
            1 => Down(after, random),
            2 => Longer(after, wall, random),
            3 => NotSet(after, wall, random),
            4 => Moved(after, random),
            _ => Again(after, wall, random),
        };
    }

    /// <summary>What is there already may wait until hands come: its limits are told and stop no plan, as in the app.</summary>
    private static Week Loosened(Week week, Plan wall, int now)
    {
        var begun = wall.Steps.Where(r => r.Start < now).Select(r => r.Step).ToHashSet();
        const int endless = 60 * 1440;
        return week with
        {
            Holds = [.. week.Holds.Select(h => begun.Contains(h.From) && !begun.Contains(h.To) ? h with { In = [.. h.In.Select(i => i with { Most = endless })] } : h)],
            Ages = [.. week.Ages.Select(a => begun.Contains(a.From) ? a with { Hard = false } : a)],
            Clocks = [.. week.Clocks.Select(c => c.Steps.Any(begun.Contains) ? c with { Limit = endless } : c)],
        };
    }

    private static (Week Week, string Words) Away(Week week, Random random)
    {
        var who = Any(week.People, random);
        var gone = new Span(week.Now, week.Now + (60 * random.Next(2, 11)));
        IReadOnlyList<Span> Left(IReadOnlyList<Span> spans) =>
            [.. spans.SelectMany(s => new[] { s with { To = Math.Min(s.To, gone.From) }, s with { From = Math.Max(s.From, gone.To) } }).Where(s => s.From < s.To)];
        // What this person has in hand is finished first.
        var busy = week.Fixed.Where(f => f.Why == "started" && f.People?.Contains(who.Id) == true).ToList();
        gone = gone with { From = busy.Select(f => f.Start!.Value + week.Steps.First(s => s.Id == f.Step).Minutes).Append(gone.From).Max() };
        return (week with { People = [.. week.People.Select(p => p == who ? p with { Shifts = Left(p.Shifts), Extra = Left(p.Extra) } : p)] }, $"{who.Id} is away for {gone.Minutes} min");
    }

    private static (Week Week, string Words) Down(Week week, Random random)
    {
        var machine = Any(week.Machines, random);
        var running = week.Fixed.Where(f => f.Machine == machine.Id).Select(f => f.Start!.Value + week.Steps.First(s => s.Id == f.Step).Minutes).Append(week.Now).Max();
        var down = new Span(running, running + (60 * random.Next(1, 13)));
        return (week with { Machines = [.. week.Machines.Select(m => m == machine ? m with { Down = [.. m.Down, down] } : m)] }, $"{machine.Id} is out for {down.Minutes} min");
    }

    private static (Week Week, string Words) Longer(Week week, Plan wall, Random random)
    {
        var running = week.Fixed.Where(f => f.Why == "started" && week.Steps.First(s => s.Id == f.Step) is { Skill: not null, Mix: null }).Select(f => f.Step!).ToList();
        var step = running.Count > 0 ? running[random.Next(running.Count)] : Next(week, wall, 1, random);
        var more = 5 * random.Next(2, 13);
        return (week with { Steps = [.. week.Steps.Select(s => s.Id == step ? s with { Minutes = s.Minutes + more } : s)], People = [.. week.People.Select(p => Stays(p, week, step, more))] }, $"{step} takes {more} min more");
    }

    /// <summary>Whoever has it in hand stays until it is done.</summary>
    private static WeekPerson Stays(WeekPerson person, Week week, string step, int more)
    {
        if (week.Fixed.FirstOrDefault(f => f.Step == step) is not { } given || given.People?.Contains(person.Id) != true)
        {
            return person;
        }

        var end = given.Start!.Value + week.Steps.First(s => s.Id == step).Minutes;
        var extra = person.Extra.ToList();
        for (var at = end; at < end + more; at += week.Grain)
        {
            var grain = new Span(at, at + week.Grain);
            if (!person.Shifts.Concat(extra).Any(s => s.Meets(grain)))
            {
                extra.Add(grain);
            }
        }

        return person with { Extra = [.. extra.OrderBy(s => s.From)] };
    }

    private static (Week Week, string Words) NotSet(Week week, Plan wall, Random random)
    {
        var step = Next(week, wall, 12, random);
        var holds = week.Holds.Where(h => h.To == step && h.In.Any(i => i.Least > 0)).ToList();
        var more = 15 * random.Next(2, 9);
        return (week with { Holds = [.. week.Holds.Select(h => holds.Contains(h) ? h with { In = [.. h.In.Select(i => new Standing(i.Store, i.Least + more, i.Most + more))] } : h)] }, $"before {step} it waits {more} min more");
    }

    private static (Week Week, string Words) Moved(Week week, Random random)
    {
        var open = week.Orders.Where(o => week.Fixed.All(f => f.Step != o.Out) && o.From > week.Now + 360).ToList();
        if (open.Count == 0)
        {
            return Down(week, random);
        }

        var order = open[random.Next(open.Count)];
        var by = 30 * (random.Next(2) == 0 ? random.Next(1, 5) : -random.Next(1, 7));
        return (week with { Orders = [.. week.Orders.Select(o => o == order ? o with { From = o.From + by, To = o.To + by } : o)] }, $"{order.Id} is fetched {by} min later");
    }

    private static (Week Week, string Words) Again(Week week, Plan wall, Random random)
    {
        var starts = wall.Steps.ToDictionary(r => r.Step, r => r.Start);
        var baked = week.Fixed.Select(f => week.Steps.First(s => s.Id == f.Step)).Where(s => s.Bake is not null && week.Fixed.All(f => f.Step != Fill(week, s.Id))).ToList();
        if (baked.Count == 0)
        {
            return NotSet(week, wall, random);
        }

        var bake = baked[random.Next(baked.Count)].Id;
        var chain = Chain(week, bake);
        var gone = chain.Where(s => week.Fixed.All(f => f.Step != s)).ToHashSet();
        string New(string id) => chain.Contains(id) ? id + "~2" : id;
        return (week with
        {
            Steps = [.. week.Steps.Where(s => !gone.Contains(s.Id)), .. week.Steps.Where(s => chain.Contains(s.Id)).Select(s => s with { Id = New(s.Id) })],
            Holds = [.. week.Holds.Where(h => !chain.Contains(h.From) || (chain.Contains(h.To) && !gone.Contains(h.To))), .. week.Holds.Where(h => chain.Contains(h.From)).Select(h => h with { Id = h.Id + "~2", From = New(h.From), To = New(h.To) })],
            Ages = [.. week.Ages.Select(a => chain.Contains(a.From) ? a with { From = New(a.From) } : a)],
            Reference = wall with { Steps = [.. wall.Steps.Where(r => !gone.Contains(r.Step))], Holds = [.. wall.Holds.Where(r => week.Holds.Any(h => h.Id == r.Hold && (!chain.Contains(h.From) || (chain.Contains(h.To) && !gone.Contains(h.To)))))] },
        }, $"{bake} is baked again");
    }

    private static HashSet<string> Chain(Week week, string bake)
    {
        var chain = week.Holds.Where(h => h.To == bake).Select(h => h.From).Append(bake).ToHashSet();
        for (var at = bake; After(week, at) is { } next && week.Steps.First(s => s.Id == next).Name is not "fill"; at = next)
        {
            chain.Add(next);
        }

        return chain;
    }

    private static string? Fill(Week week, string bake)
    {
        var at = bake;
        while (After(week, at) is { } next && week.Steps.First(s => s.Id == at).Name is not "fill")
        {
            at = next;
        }

        return at;
    }

    private static string? After(Week week, string step) => week.Holds.FirstOrDefault(h => h.From == step)?.To;

    /// <summary>One of the next so many hands-on steps.</summary>
    private static string Next(Week week, Plan wall, int many, Random random)
    {
        var names = week.Steps.ToDictionary(s => s.Id);
        var next = wall.Steps.Where(r => r.Start >= week.Now && names[r.Step] is { Skill: not null, Mix: null }).OrderBy(r => r.Start).Take(many).ToList();
        return next[random.Next(next.Count)].Step;
    }

    private static T Any<T>(IReadOnlyList<T> list, Random random) => list[random.Next(list.Count)];
}
