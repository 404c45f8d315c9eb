namespace Bakehouse.Domain.Reminders;

using Bakehouse.Domain.Planning;

/// <summary>What of the plan on the wall is still to be done, with look-ups. Made once for a state of the book.</summary>
internal sealed class OpenPlan
{
    private readonly Dictionary<string, StepRow> rows;
    private readonly Dictionary<string, Step> steps;
    private readonly HashSet<string> done;
    private readonly HashSet<string> assumed;

    /// <param name="now">The moment of looking, if it may be later than the one that the week was compiled at.</param>
    /// <param name="notDone">What somebody said is not done.</param>
    public OpenPlan(Week week, Wall wall, IReadOnlyList<Tick> ticks, Instant? now = null, IReadOnlyDictionary<string, Instant>? notDone = null)
    {
        Week = week;
        var plan = wall.From(week.Epoch);
        steps = week.Steps.Where(s => s.If is not { } taken || (plan.Choices.TryGetValue(taken.Choice, out var option) && option == taken.Option)).ToDictionary(s => s.Id);
        rows = plan.Steps.Where(r => steps.ContainsKey(r.Step)).GroupBy(r => r.Step).ToDictionary(g => g.Key, g => g.First());
        Before = week.Holds.ToLookup(h => h.To);
        After = week.Holds.ToLookup(h => h.From);
        Stores = plan.Holds.GroupBy(h => h.Hold).ToDictionary(g => g.Key, g => g.First().Store);
        done = DoneSteps(ticks);
        assumed = Assume(now ?? Instant.MinValue, notDone ?? new Dictionary<string, Instant>());
        Rows = [.. rows.Values.Where(r => !done.Contains(r.Step)).OrderBy(r => r.Start).ThenBy(r => r.Step, StringComparer.Ordinal)];
    }

    public Week Week { get; }

    /// <summary>Rows of the steps that are neither done nor assumed to be, by start.</summary>
    public IReadOnlyList<StepRow> Rows { get; }

    /// <summary>Rows of the steps that nobody ticked and that are taken as done.</summary>
    public IEnumerable<StepRow> AssumedRows => assumed.Select(s => rows[s]);

    /// <summary>Holds that end at a step.</summary>
    public ILookup<string, Hold> Before { get; }

    /// <summary>Holds that begin after a step.</summary>
    public ILookup<string, Hold> After { get; }

    /// <summary>Where each hold stands, by hold.</summary>
    public IReadOnlyDictionary<string, string> Stores { get; }

    public Step Step(string id) => steps[id];

    /// <summary>The row of a step that is in the plan, done or not; else null.</summary>
    public StepRow? Row(string id) => rows.GetValueOrDefault(id);

    /// <summary>True if nobody ticked it and it is taken as done.</summary>
    public bool IsAssumed(string id) => assumed.Contains(id);

    /// <summary>True if it is ticked, must have come before something that is, or is assumed.</summary>
    public bool IsDone(string id) => done.Contains(id);

    public int End(StepRow row) => row.Start + steps[row.Step].Minutes;

    public Instant At(int minute) => Week.Epoch + Duration.FromMinutes(minute);

    /// <summary>Pans that come out together: one oven, one load, one end. Small pans end first and make a group of their own.</summary>
    public IEnumerable<IReadOnlyList<StepRow>> PansOut() => PansOut(Rows);

    /// <summary>The same among some rows.</summary>
    public IEnumerable<IReadOnlyList<StepRow>> PansOut(IEnumerable<StepRow> rows) => rows
        .Where(r => steps[r.Step].Bake is not null)
        .GroupBy(r => (r.Machine, r.Start, Load: r.Batch ?? r.Step, steps[r.Step].Minutes))
        .Select(g => (IReadOnlyList<StepRow>)[.. g]);

    /// <summary>Who takes a pan out: whoever turns it out afterwards, else whoever mixed it, else nobody is named.</summary>
    public string? WhoTakesOut(string bake) =>
        After[bake].Select(h => Row(h.To)).Concat(Before[bake].Select(h => Row(h.From)))
            .FirstOrDefault(r => r is { People.Count: > 0 })?.People[0];

    /// <summary>
    /// What the week assumes and nobody ticked since, and what has passed since it was compiled. Adds it to what is done.
    /// </summary>
    private HashSet<string> Assume(Instant now, IReadOnlyDictionary<string, Instant> notDone)
    {
        var found = Week.Fixed.Where(f => f.Why == Assumed.Why && f.Step is { } s && rows.ContainsKey(s) && !done.Contains(s)).Select(f => f.Step!).ToHashSet();
        if (now > Week.Epoch)
        {
            // As planned, also what was ticked: whether that was in time is the week's question, asked when it is compiled.
            var ends = done.Concat(found).ToDictionary(s => s, s => rows.TryGetValue(s, out var row) ? row.Start : 0);
            var open = rows.Values.Where(r => !done.Contains(r.Step) && !found.Contains(r.Step));
            found.UnionWith(Assumed.Of(open, Step, Before, ends, notDone.ToDictionary(d => d.Key, d => (int)(d.Value - Week.Epoch).TotalMinutes), (int)(now - Week.Epoch).TotalMinutes).Keys);
        }

        done.UnionWith(found);
        return found;
    }

    /// <summary>What is ticked, what the week knows as done, and what must have come before either.</summary>
    private HashSet<string> DoneSteps(IReadOnlyList<Tick> ticks)
    {
        var found = ticks.Select(t => t.Step).Concat(Week.Fixed.Where(f => f.Why == "done" && f.Step is not null).Select(f => f.Step!)).ToHashSet();
        var open = new Queue<string>(found);
        while (open.TryDequeue(out var step))
        {
            foreach (var earlier in Before[step].Select(h => h.From).Where(found.Add))
            {
                open.Enqueue(earlier);
            }
        }

        return found;
    }
}
