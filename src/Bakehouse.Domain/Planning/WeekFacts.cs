namespace Bakehouse.Domain.Planning;

/// <summary>
/// Puts what happened into a week. Law: whatever was ticked, the week has a plan; so a done step asks for no hands and no
/// machine any more, and a wait that has already run too long is told, not made impossible.
/// </summary>
internal static class WeekFacts
{
    private const int NearlyOver = 120;
    private const int TwoDays = 2 * 1440;

    public static Week Apply(Week week, IReadOnlyList<Tick> ticks, Plan? wall, WeekTime time)
    {
        var steps = week.Steps.Select(s => s.Id).ToHashSet();
        var done = DoneEnds(week, ticks.Where(t => steps.Contains(t.Step)).ToList(), wall, time);
        var running = Running(week, done, wall);
        var rows = (wall?.Steps ?? []).ToDictionary(r => r.Step);
        var planned = rows.Values.Where(r => steps.Contains(r.Step)).ToDictionary(r => r.Step, r => r.Start + Minutes(week, r.Step));
        var bowls = LastBowls(week, done, running, rows);
        return week with
        {
            Steps = [.. week.Steps.Select(s => bowls.TryGetValue(s.Id, out var bowl) ? bowl.Step : done.ContainsKey(s.Id) ? Past(s) : s)],
            Holds = [.. week.Holds.Where(h => !(done.ContainsKey(h.From) && done.ContainsKey(h.To))).Select(h => Loosened(h, done, planned, week.FreeFrom))],
            Clocks = [.. week.Clocks.Select(c => c with { Holds = [.. c.Holds.Where(h => !Gone(week, h, done))] })],
            Fixed =
            [
                .. done.Select(d => bowls.TryGetValue(d.Key, out var bowl)
                    ? new Fixed(d.Key, bowl.Start, [], bowl.Machine, null, null, "done")
                    : new Fixed(d.Key, d.Value - Minutes(week, d.Key), [], null, null, null, "done")),
                .. running.Select(r => new Fixed(r, rows[r].Start, rows[r].People, rows[r].Machine, null, null, "started")),
            ],
            Reference = wall is null ? null : Wanted(week, wall, done),
        };
    }

    /// <summary>When each done step ended: as ticked, or for one that must have come before, at the latest when the next began.</summary>
    private static Dictionary<string, int> DoneEnds(Week week, List<Tick> ticks, Plan? wall, WeekTime time)
    {
        var minutes = week.Steps.ToDictionary(s => s.Id, s => s.Minutes);
        var ends = ticks.GroupBy(t => t.Step).ToDictionary(g => g.Key, g => Math.Max(minutes[g.Key], time.Minute(g.Last().Done) / WeekTime.Grain * WeekTime.Grain));
        var before = week.Holds.ToLookup(h => h.To, h => h.From);
        var planned = (wall?.Steps ?? []).ToDictionary(r => r.Step, r => r.Start);
        var open = new Queue<string>(ends.Keys);
        while (open.TryDequeue(out var step))
        {
            foreach (var earlier in before[step].Where(e => !ends.ContainsKey(e)))
            {
                var began = Math.Max(minutes[earlier], ends[step] - minutes[step]);
                ends[earlier] = planned.TryGetValue(earlier, out var start) ? Math.Clamp(start + minutes[earlier], minutes[earlier], began) : began;
                open.Enqueue(earlier);
            }
        }

        return ends;
    }

    /// <summary>Steps that the wall has running now and that could begin then: everything before them was done in time.</summary>
    private static List<string> Running(Week week, Dictionary<string, int> done, Plan? wall)
    {
        var steps = week.Steps.ToDictionary(s => s.Id);
        var before = week.Holds.ToLookup(h => h.To);
        return
        [
            .. (wall?.Steps ?? [])
                .Where(r => steps.TryGetValue(r.Step, out var s) && !done.ContainsKey(r.Step) && r.Start <= week.Now && r.Start + s.Minutes > week.Now)
                .Where(r => before[r.Step].All(h => done.TryGetValue(h.From, out var end) && r.Start - end >= h.In.Min(i => i.Least)))
                .Select(r => r.Step),
        ];
    }

    private static Step Past(Step step) => step with { Skill = null, Tools = [], Mix = null, Bake = null, Has = [], Avoid = [] };

    /// <summary>
    /// The last mix done in each bowl stays in it, with the allergens of every mix before it: a bowl that met nuts is still to be
    /// cleaned for whoever must be kept from them, also when a past clean-down was only planned.
    /// </summary>
    private static Dictionary<string, (Step Step, int Start, string Machine)> LastBowls(
        Week week, Dictionary<string, int> done, List<string> running, Dictionary<string, StepRow> rows)
    {
        var began = running.Where(r => rows[r].Machine is not null).ToLookup(r => rows[r].Machine!, r => rows[r].Start);
        var last = new Dictionary<string, (Step, int, string)>();
        var mixes = week.Steps.Where(s => s.Mix is not null && done.ContainsKey(s.Id) && rows.TryGetValue(s.Id, out var r) && r.Machine is not null);
        foreach (var bowl in mixes.GroupBy(s => rows[s.Id].Machine!))
        {
            var machine = week.Machines.FirstOrDefault(m => m.Id == bowl.Key);
            var step = bowl.MaxBy(s => done[s.Id])!;
            if (machine is null || week.Families.First(f => f.Id == step.Mix!.Family).Limit.GetValueOrDefault(bowl.Key) < step.Mix!.Size)
            {
                continue;
            }

            var latest = began[bowl.Key].Append(done[step.Id] + machine.TurnOther).Min() - machine.TurnOther - step.Minutes;
            var has = bowl.SelectMany(s => s.Has).Distinct().ToList();
            last[step.Id] = (step with { Skill = null, Tools = [], Has = has, Avoid = [] }, Math.Max(0, Math.Min(latest, done[step.Id] - step.Minutes)), bowl.Key);
        }

        return last;
    }

    /// <summary>
    /// The thing is there, whatever the limit said. What was done earlier than planned may wait so much longer; what has
    /// waited too long already, or nearly, gets two days to be worked on.
    /// </summary>
    private static Hold Loosened(Hold hold, Dictionary<string, int> done, Dictionary<string, int> planned, int free)
    {
        if (!done.TryGetValue(hold.From, out var end))
        {
            return hold;
        }

        var early = planned.TryGetValue(hold.From, out var wanted) ? Math.Max(0, wanted - end) : WeekTime.Up(free);
        var waited = WeekTime.Up(Math.Max(0, free - end));
        return hold with { In = [.. hold.In.Select(i => i with { Most = Math.Max(i.Most + early, waited + NearlyOver > i.Most ? waited + TwoDays : 0) })] };
    }

    private static bool Gone(Week week, string hold, Dictionary<string, int> done) =>
        week.Holds.FirstOrDefault(h => h.Id == hold) is not { } h || (done.ContainsKey(h.From) && done.ContainsKey(h.To));

    private static int Minutes(Week week, string step) => week.Steps.First(s => s.Id == step).Minutes;

    /// <summary>The wall limited to what is still wanted.</summary>
    private static Plan Wanted(Week week, Plan wall, Dictionary<string, int> done)
    {
        var steps = week.Steps.Select(s => s.Id).ToHashSet();
        var holds = week.Holds.Where(h => !(done.ContainsKey(h.From) && done.ContainsKey(h.To))).Select(h => h.Id).ToHashSet();
        return wall with
        {
            Week = week.Name,
            Steps = [.. wall.Steps.Where(r => steps.Contains(r.Step))],
            Holds = [.. wall.Holds.Where(r => holds.Contains(r.Hold))],
        };
    }
}
