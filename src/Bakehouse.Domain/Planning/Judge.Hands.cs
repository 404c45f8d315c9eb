namespace Bakehouse.Domain.Planning;

/// <content>Hands and tools.</content>
public static partial class Judge
{
    /// <summary>As many different people as asked.</summary>
    private static IEnumerable<Breach> H1(WeekIndex at) =>
        from w in at.Working
        let asked = w.Step.Skill is null ? 0 : w.Step.Count
        let there = w.Row.People.Distinct().Count()
        where there != asked
        select new Breach("H1", $"{w.Step.Id} has {there} people and needs {asked}.", w.Step.Id, w.Row.Start);

    /// <summary>Each has the skill.</summary>
    private static IEnumerable<Breach> H2(WeekIndex at) =>
        from w in at.Working
        where w.Step.Skill is not null
        from person in w.Row.People.Distinct()
        where at.People.TryGetValue(person, out var p) && !p.Skills.Contains(w.Step.Skill)
        select new Breach("H2", $"{at.People[person].Name} can't {w.Step.Skill}, which {w.Step.Id} needs.", w.Step.Id, w.Row.Start);

    /// <summary>A step lies in one stretch of work; no break or closing cuts it.</summary>
    private static IEnumerable<Breach> H3(WeekIndex at)
    {
        var stretches = at.Week.People.ToDictionary(p => p.Id, p => Union(p.Shifts.Concat(p.Extra)));
        return
            from w in at.Working
            from person in w.Row.People.Distinct()
            where stretches.TryGetValue(person, out var work) && !InOne(work, new Span(w.Row.Start, w.Row.Start + w.Step.Minutes))
            select new Breach("H3", $"{at.People[person].Name} does not work through all of {w.Step.Id}.", w.Step.Id, w.Row.Start);
    }

    /// <summary>One person, one thing at a time; a batch and a clean-down are one thing.</summary>
    private static IEnumerable<Breach> H4(WeekIndex at)
    {
        var busy = new Dictionary<string, List<(Span Span, string What)>>();
        foreach (var (person, span, what) in Hands(at))
        {
            (busy.TryGetValue(person, out var list) ? list : busy[person] = []).Add((span, what));
        }

        return busy.SelectMany(b => Overlaps(b.Value)
            .Select(o => new Breach("H4", $"{Name(at, b.Key)} is at {o.First} and at {o.Second} at once.", o.Second, o.Minute)));
    }

    /// <summary>Each stretch of somebody's hands: steps alone, batches once, clean-downs.</summary>
    private static IEnumerable<(string Person, Span Span, string What)> Hands(WeekIndex at)
    {
        foreach (var (step, row) in at.Working.Where(w => w.Step.Mix is null && w.Step.Bake is null))
        {
            foreach (var person in row.People.Distinct())
            {
                yield return (person, new Span(row.Start, row.Start + step.Minutes), step.Id);
            }
        }

        foreach (var batch in at.Batches)
        {
            foreach (var person in batch.Rows.SelectMany(r => r.People).Distinct())
            {
                yield return (person, batch.Span, batch.Name);
            }
        }

        foreach (var clean in at.Plan.Cleans)
        {
            foreach (var person in clean.People.Distinct())
            {
                yield return (person, CleanSpan(at, clean), $"the clean-down of {clean.Machine}");
            }
        }
    }

    private static Span CleanSpan(WeekIndex at, CleanRow clean) =>
        new(clean.Start, clean.Start + (at.Machines.GetValueOrDefault(clean.Machine)?.Clean?.Minutes ?? 0));

    private static string Name(WeekIndex at, string person) => at.People.GetValueOrDefault(person)?.Name ?? person;

    /// <summary>Each thing that begins before an earlier one is over, with the earlier one that lasts longest.</summary>
    private static IEnumerable<(string First, string Second, int Minute)> Overlaps(List<(Span Span, string What)> list)
    {
        (Span Span, string What)? longest = null;
        foreach (var next in list.Where(l => l.Span.Minutes > 0).OrderBy(l => l.Span.From).ThenBy(l => l.Span.To))
        {
            if (longest is { } before && next.Span.From < before.Span.To)
            {
                yield return (before.What, next.What, next.Span.From);
            }

            longest = longest is { } last && last.Span.To >= next.Span.To ? last : next;
        }
    }

    /// <summary>Spans joined where they touch or overlap.</summary>
    private static List<Span> Union(IEnumerable<Span> spans)
    {
        var joined = new List<Span>();
        foreach (var span in spans.OrderBy(s => s.From))
        {
            if (joined.Count > 0 && span.From <= joined[^1].To)
            {
                joined[^1] = new Span(joined[^1].From, Math.Max(joined[^1].To, span.To));
            }
            else
            {
                joined.Add(span);
            }
        }

        return joined;
    }

    private static bool InOne(List<Span> stretches, Span span) => stretches.Exists(s => s.Covers(span));

    /// <summary>Not more pieces of a tool than there are.</summary>
    private static IEnumerable<Breach> T1(WeekIndex at) =>
        from tool in at.Week.Tools
        let uses = UsesOf(at, tool.Id).Select(u => (u.Span, Weight: 1, u.What))
        from over in Crowded(uses, tool.Count)
        select new Breach("T1", $"{over.Load} of {tool.Id} are needed at once and there are {tool.Count}.", over.What, over.Minute);

    /// <summary>A tool out of use is not used.</summary>
    private static IEnumerable<Breach> T2(WeekIndex at) =>
        from tool in at.Week.Tools
        where tool.Down.Count > 0
        from use in UsesOf(at, tool.Id)
        where tool.Down.Any(d => d.Meets(use.Span))
        select new Breach("T2", $"{tool.Id} is out of use while {use.What} needs it.", use.What, use.Span.From);

    private static IEnumerable<(Span Span, string What)> UsesOf(WeekIndex at, string tool) =>
        from w in at.Working
        where w.Step.Tools.Contains(tool)
        select (new Span(w.Row.Start, w.Row.Start + w.Step.Minutes), w.Step.Id);

    /// <summary>Each stretch of time in which the weights sum to more than the limit, once, where it begins.</summary>
    private static IEnumerable<(int Minute, int Load, string What)> Crowded(IEnumerable<(Span Span, int Weight, string What)> uses, int limit)
    {
        var events = uses.Where(u => u.Span.Minutes > 0)
            .SelectMany(u => new[] { (Minute: u.Span.From, Change: u.Weight, u.What), (Minute: u.Span.To, Change: -u.Weight, u.What) })
            .OrderBy(e => e.Minute).ThenBy(e => e.Change);
        var load = 0;
        var over = false;
        foreach (var (minute, change, what) in events)
        {
            load += change;
            if (load > limit && !over)
            {
                yield return (minute, load, what);
            }

            over = load > limit;
        }
    }
}
