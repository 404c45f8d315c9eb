namespace Bakehouse.Domain.Planning;

using Bakehouse.Domain.Methods;

/// <summary>
/// Puts what happened into a week. Law: whatever was ticked, and however late it is, the week has a plan; so a done step asks for no
/// hands and no machine any more, and a wait, an age or a food clock that has run out is told (<see cref="FoodLimits"/>), not made
/// impossible: one spoiled cake must not stop the plan of all others.
/// </summary>
internal sealed partial class WeekFacts
{
    private const int TwoDays = 2 * 1440;

    private readonly Week week;
    private readonly Dictionary<string, Step> steps;
    private readonly Dictionary<string, StepRow> rows;
    private readonly Dictionary<string, (WeekPerson Person, IReadOnlyList<Span> Hours)> people;
    private readonly Dictionary<string, int> done;
    private readonly HashSet<string> assumed;
    private readonly HashSet<string> baked;
    private readonly Dictionary<string, (Step Step, int Start, string Machine)> bowls;
    private readonly List<string> running;
    private readonly Plan? wall;
    private readonly Backlog backlog;

    private WeekFacts(Week week, IReadOnlyList<Tick> ticks, Plan? wall, WeekTime time, ByHand hand)
    {
        (this.week, this.wall) = (week, wall);
        steps = week.Steps.ToDictionary(s => s.Id);
        rows = (wall?.Steps ?? []).ToDictionary(r => r.Step);
        people = week.People.ToDictionary(p => p.Id, p => (p, p.Extra.Aggregate(p.Shifts, SpanLists.Joined)));
        done = DoneEnds(ticks.Where(t => steps.ContainsKey(t.Step)), time);
        assumed = Assume(hand.NotDone.ToDictionary(d => d.Key, d => time.Minute(d.Value)));
        running = Begun((_, end) => end > week.Now);
        baked = Baked();
        running.AddRange(baked);
        running.RemoveAll(IsUncleaned);
        bowls = LastBowls();
        backlog = new Backlog(week, done, rows.ToDictionary(r => r.Key, r => r.Value.Start));
    }

    public static Week Apply(Week week, IReadOnlyList<Tick> ticks, Plan? wall, WeekTime time, ByHand hand) =>
        new WeekFacts(week, ticks, wall, time, hand).Applied(hand.Pins);

    private Week Applied(IReadOnlyList<Pin> pins)
    {
        var holds = week.Holds.Where(Open).ToList();
        var past = done.Keys.Where(s => !baked.Contains(s)).Select(Done).ToList();
        var started = running.Select(r => Row(r, "started")).ToList();
        return week with
        {
            Steps = [.. week.Steps.Select(s => bowls.TryGetValue(s.Id, out var bowl) ? bowl.Step : done.ContainsKey(s.Id) && !baked.Contains(s.Id) ? Past(s) : s)],
            Machines = [.. week.Machines.Select(m => m with { Down = Used(m, [.. past, .. started]) })],
            Holds = [.. holds.Select(Loosened)],
            Clocks = [.. week.Clocks.Select(Loosened)],
            Ages = [.. week.Ages.Select(Loosened)],
            Orders = [.. week.Orders.Select(GoneAsDone)],
            Fixed = [.. past, .. started, .. pins.Where(Holds).Select(p => Row(p.Step, "pinned"))],
            Reference = wall is null ? null : Assumed.Taken(Wanted(holds.Select(h => h.Id).ToHashSet()), past),
        };
    }

    /// <summary>Whatever the shop says of a machine: what was made in it, or is in it, was not in a machine out of use.</summary>
    private IReadOnlyList<Span> Used(Machine machine, IReadOnlyList<Fixed> given) => given.Where(f => f.Machine == machine.Id && f.Start is not null)
        .Aggregate(machine.Down, (down, f) => down.Without(new Span(f.Start!.Value, f.Start.Value + steps[f.Step!].Minutes)));

    private Fixed Row(string step, string why) => new(step, rows[step].Start, rows[step].People, rows[step].Machine, null, null, why);

    /// <summary>A pin holds while the wall has the step there, it is still to come, and what comes before it can be done in time.</summary>
    private bool Holds(Pin pin) => steps.TryGetValue(pin.Step, out var step) && rows.TryGetValue(pin.Step, out var row)
        && !done.ContainsKey(pin.Step) && !running.Contains(pin.Step) && pin.Is(row, week.Epoch)
        && row.Start >= week.FreeFrom && Able(row, step) && !Shut(row, step) && !Tainted(row, step)
        && backlog.Earliest(pin.Step) <= row.Start;

    private bool Shut(StepRow row, Step step) =>
        week.Machines.Any(m => m.Id == row.Machine && m.Down.Any(d => d.Meets(new Span(row.Start, row.Start + step.Minutes))));

    private Fixed Done(string step)
    {
        var why = assumed.Contains(step) ? Assumed.Why : "done";
        return bowls.TryGetValue(step, out var bowl)
            ? new Fixed(step, bowl.Start, [], bowl.Machine, null, null, why)
            : new Fixed(step, done[step] - steps[step].Minutes, [], BowlOf(step), null, null, why);
    }

    /// <summary>
    /// Adds to what is done what nobody ticked and its planned time has passed, if today's shop could do it so. A row without hands was
    /// written when it was assumed already.
    /// </summary>
    private HashSet<string> Assume(Dictionary<string, int> denied)
    {
        var open = rows.Values.Where(r => steps.TryGetValue(r.Step, out var s) && !done.ContainsKey(r.Step) && (r.People.Count == 0 || Able(r, s)));
        var found = Assumed.Of(open, id => steps[id], week.Holds.ToLookup(h => h.To), done, denied, week.Now);
        foreach (var (step, end) in found)
        {
            // Before the week began is long ago, whenever it was: no step of a plan lies before minute 0.
            done[step] = Math.Max(steps[step].Minutes, end);
        }

        return [.. found.Keys];
    }

    /// <summary>
    /// True if the thing still stands there, or will. Between two done steps it doesn't; and a mere habit of order (largest first)
    /// that somebody did the other way round binds nobody any more.
    /// </summary>
    private bool Open(Hold hold) => !done.ContainsKey(hold.To) || baked.Contains(hold.To);

    /// <summary>
    /// When each done step ended: as ticked; or, for one that must have come before a done one and was not ticked, as planned, at the
    /// latest when the next began.
    /// </summary>
    private Dictionary<string, int> DoneEnds(IEnumerable<Tick> ticks, WeekTime time)
    {
        var ends = ticks.GroupBy(t => t.Step).ToDictionary(g => g.Key, g => Math.Max(steps[g.Key].Minutes, time.Minute(g.Last().Done) / WeekTime.Grain * WeekTime.Grain));
        var before = week.Holds.Where(h => !Places.IsWhenever(h)).ToLookup(h => h.To, h => h.From);
        var open = new Queue<string>(ends.Keys);
        while (open.TryDequeue(out var step))
        {
            foreach (var earlier in before[step].Where(e => !ends.ContainsKey(e)))
            {
                var least = steps[earlier].Minutes;
                var began = Math.Max(least, ends[step] - steps[step].Minutes);
                ends[earlier] = rows.TryGetValue(earlier, out var row) ? Math.Clamp(row.Start + least, least, began) : began;
                open.Enqueue(earlier);
            }
        }

        return ends;
    }

    /// <summary>
    /// Bakes that nobody ticked and whose time is up: what is in the oven stays there and is baked, whatever is ticked elsewhere meanwhile. So it
    /// keeps its row, goes on ringing until somebody says that it is out, and what follows is planned. Adds them to what is done.
    /// </summary>
    private HashSet<string> Baked()
    {
        var found = Begun((step, end) => step.Bake is not null && end <= week.Now);
        foreach (var step in found)
        {
            done[step] = rows[step].Start + steps[step].Minutes;
        }

        return [.. found];
    }

    /// <summary>
    /// Steps whose time on the wall has come and that could begin then: what comes before was done in time, and the people and the
    /// machine are still those of the shop.
    /// </summary>
    /// <param name="wanted">Which of them, by the minute at which they end.</param>
    private List<string> Begun(Func<Step, int, bool> wanted)
    {
        var before = week.Holds.ToLookup(h => h.To);
        return
        [
            .. rows.Values
                .Where(r => steps.TryGetValue(r.Step, out var s) && !done.ContainsKey(r.Step) && r.Start <= week.Now && wanted(s, r.Start + s.Minutes) && Able(r, s))
                .Where(r => before[r.Step].All(h => done.TryGetValue(h.From, out var end) && r.Start - end >= h.In.Min(i => i.Least)))
                .Select(r => r.Step),
        ];
    }

    private bool Able(StepRow row, Step step)
    {
        var time = new Span(row.Start, row.Start + step.Minutes);
        var hands = row.People.Count == (step.Skill is null ? 0 : step.Count)
            && row.People.All(p => people.TryGetValue(p, out var who) && who.Person.Skills.Contains(step.Skill!) && who.Hours.Any(s => s.Covers(time)));
        return hands && (row.Machine is null || week.Machines.Any(m => m.Id == row.Machine && Takes(m, step)));
    }

    private bool Takes(Machine machine, Step step) => step.Mix is { } mix
        ? week.Families.First(f => f.Id == mix.Family).Limit.GetValueOrDefault(machine.Id) >= mix.Size
        : step.Bake is null || step.Bake.Pans.All(p => machine.Fits.GetValueOrDefault(p) > 0);

    private static Step Past(Step step) => step with { Skill = null, Tools = [], Mix = null, Bake = null, Has = [], Avoid = [] };

    /// <summary>The wall limited to what is still wanted.</summary>
    private Plan Wanted(HashSet<string> holds) => wall! with
    {
        Week = week.Name,
        Steps = [.. wall.Steps.Where(r => steps.ContainsKey(r.Step))],
        Holds = [.. wall.Holds.Where(r => holds.Contains(r.Hold))],
    };
}
