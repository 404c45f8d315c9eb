using Bakehouse.Domain.Planning;

namespace Bakehouse.Planner.Network;

/// <summary>
/// A bakery week as a net: an activity for each step and for each hold, gaps as lags, people, tools, machines and stores as resources
/// with calendars, and who does it, on what and where it stands as modes. It asks less than the week: a hold takes its place for its
/// least time only, clocks, batches, turn times and allergens are left out. So its windows and bounds hold for every plan; what it asks
/// of people and machines at once holds only where no steps share a bowl or a load.
/// </summary>
internal sealed class WeekNet
{
    private readonly Week week;
    private readonly IReadOnlyDictionary<string, string>? choices;
    private readonly Dictionary<string, int> resources = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> steps = new(StringComparer.Ordinal);
    private readonly ILookup<string, Fixed> fixedSteps;
    private readonly ILookup<string, Fixed> fixedHolds;
    private readonly int grains;

    /// <param name="week">What is compiled.</param>
    /// <param name="choices">Options taken; without them, only what is there whatever is taken.</param>
    public WeekNet(Week week, IReadOnlyDictionary<string, string>? choices = null)
    {
        (this.week, this.choices, grains) = (week, choices, week.Horizon / week.Grain);
        fixedSteps = week.Fixed.Where(f => f.Step is not null).ToLookup(f => f.Step!, StringComparer.Ordinal);
        fixedHolds = week.Fixed.Where(f => f.Hold is not null).ToLookup(f => f.Hold!, StringComparer.Ordinal);
        Renewable[] all = [.. People(), .. Pieces(), .. Runs(), .. Places()];
        var (activities, lags) = (new List<Activity>(), new List<Lag>());
        foreach (var step in week.Steps.Where(s => Present(s.If)))
        {
            steps[step.Id] = activities.Count;
            activities.Add(new Activity(step.Id, [.. Modes(step)], From(step)));
        }

        foreach (var hold in week.Holds.Where(h => Present(h.If) && steps.ContainsKey(h.From) && steps.ContainsKey(h.To)))
        {
            lags.AddRange(Lags(hold, activities.Count, activities));
            activities.Add(new Activity(hold.Id, [.. Stands(hold).Select(o => Mode(Up(o.Least), [(Store(o.Store), hold.Places)]))]));
        }

        lags.AddRange(week.Ages.Where(a => a.Hard && steps.ContainsKey(a.From) && steps.ContainsKey(a.To))
            .Select(a => new Lag(steps[a.To], steps[a.From], -(a.Most / week.Grain) - Length(activities[steps[a.From]]))));
        Net = new Net(activities, lags, all, grains);
    }

    public Net Net { get; }

    /// <summary>Activity of each step that is present.</summary>
    public IReadOnlyDictionary<string, int> Steps => steps;

    /// <summary>First minute at which each order can be handed over or delivered, whatever else is planned; null if some step can't be done at all.</summary>
    public static IReadOnlyDictionary<string, int>? Moments(Week week)
    {
        var net = new WeekNet(week);
        return Windows.Of(net.Net) is not { } windows ? null : week.Orders.Where(o => net.steps.ContainsKey(o.Out)).ToDictionary(
            o => o.Id,
            o => week.Grain * (windows.Earliest[net.steps[o.Out]] + (o.EdgeIsEnd ? Length(net.Net.Activities[net.steps[o.Out]]) : 0)),
            StringComparer.Ordinal);
    }

    private static int Length(Activity activity) => activity.Modes.Min(m => m.Length);

    private static string Store(string id) => "store " + id;

    private bool Present(Taken? taken) => taken is null || (choices is not null && choices.TryGetValue(taken.Choice, out var option) && option == taken.Option);

    private int Up(int minutes) => (minutes + week.Grain - 1) / week.Grain;

    /// <summary>What people did stands where it is; a promised moment is never before its agreed time.</summary>
    private int From(Step step)
    {
        if (fixedSteps[step.Id].FirstOrDefault(f => f.Start is not null) is { Start: { } start })
        {
            return start / week.Grain;
        }

        var promised = week.Orders.Where(o => o.Out == step.Id).Select(o => o.From - (o.EdgeIsEnd ? step.Minutes : 0));
        return Up(Math.Max(0, promised.Append(week.FreeFrom).Max()));
    }

    private IEnumerable<Mode> Modes(Step step)
    {
        if (fixedSteps[step.Id].Any(f => f.Start is not null))
        {
            return [Mode(Up(step.Minutes), [])];
        }

        var tools = step.Tools.Select(t => ("tool " + t, 1)).ToList();
        return from hands in Hands(step)
               from machine in Machines(step)
               select Mode(Up(step.Minutes), [.. tools, .. hands.Select(p => ("person " + p, 1)), .. machine]);
    }

    /// <summary>Every set of so many people who have the skill; a pinned set alone.</summary>
    private IEnumerable<string[]> Hands(Step step)
    {
        if (step.Skill is null)
        {
            return [[]];
        }

        return fixedSteps[step.Id].FirstOrDefault(f => f.People is not null) is { People: { } pinned }
            ? [[.. pinned]]
            : Sets([.. week.People.Where(p => p.Skills.Contains(step.Skill)).Select(p => p.Id)], step.Count);
    }

    private static IEnumerable<string[]> Sets(string[] people, int count) => count == 0
        ? [[]]
        : people.SelectMany((p, n) => Sets(people[(n + 1)..], count - 1), (p, rest) => (string[])[p, .. rest]);

    private IEnumerable<(string, int)[]> Machines(Step step)
    {
        var able = week.Machines.Where(m => step.Mix is { } mix
            ? m.Kind == MachineKind.Bowl && week.Families.Any(f => f.Id == mix.Family && f.Limit.GetValueOrDefault(m.Id) >= mix.Size)
            : step.Bake is { } bake && m.Kind == MachineKind.Oven && bake.Pans.All(p => m.Fits.GetValueOrDefault(p) > 0));
        var pinned = fixedSteps[step.Id].Select(f => f.Machine).FirstOrDefault(m => m is not null);
        return step.Mix is null && step.Bake is null ? [[]] : able.Where(m => pinned is null || m.Id == pinned).Select(m => new[] { ("machine " + m.Id, 1) });
    }

    private IEnumerable<Standing> Stands(Hold hold)
    {
        var pinned = fixedHolds[hold.Id].Select(f => f.Store).FirstOrDefault(s => s is not null);
        return hold.In.Where(o => (pinned is null || o.Store == pinned) && (o.Least == 0 || pinned is not null || week.Stores.Any(s => s.Id == o.Store && hold.Height <= s.Clear)));
    }

    private IEnumerable<Lag> Lags(Hold hold, int activity, List<Activity> activities)
    {
        var (from, to) = (steps[hold.From], steps[hold.To]);
        yield return new Lag(from, activity, 0, AfterEnd: true);
        yield return new Lag(activity, from, -Length(activities[from]));
        yield return new Lag(activity, to, 0, AfterEnd: true);
        yield return new Lag(to, activity, -(Stands(hold).Select(o => o.Most).DefaultIfEmpty().Max() / week.Grain));
    }

    private Mode Mode(int length, IReadOnlyList<(string Resource, int Units)> takes)
    {
        var demand = new int[resources.Count];
        foreach (var (resource, units) in takes.Where(_ => length > 0))
        {
            demand[resources[resource]] += units;
        }

        return new Mode(length, demand);
    }

    private List<Renewable> People() => [.. week.People.Select(p => Resource("person " + p.Id, 0, p.Shifts.Concat(p.Extra).Select(s => (Up(s.From), s.To / week.Grain)), 1))];

    private List<Renewable> Pieces() => [.. week.Tools.Select(t => Resource("tool " + t.Id, t.Count, Out(t.Down), 0))];

    private List<Renewable> Runs() => [.. week.Machines.Select(m => Resource("machine " + m.Id, 1, Out(m.Down), 0))];

    private List<Renewable> Places() => [.. week.Stores.Select(s => Resource(Store(s.Id), s.Places, Out(s.Down), 0))];

    /// <summary>Every grain that such a span touches.</summary>
    private IEnumerable<(int From, int To)> Out(IReadOnlyList<Domain.Planning.Span> down) => down.Select(d => (d.From / week.Grain, Up(d.To)));

    private Renewable Resource(string name, int units, IEnumerable<(int From, int To)> other, int then)
    {
        resources[name] = resources.Count;
        var calendar = new int[grains];
        Array.Fill(calendar, units);
        foreach (var (from, to) in other)
        {
            var first = Math.Clamp(from, 0, grains);
            Array.Fill(calendar, then, first, Math.Max(0, Math.Min(to, grains) - first));
        }

        return new Renewable(name, Math.Max(units, then), calendar);
    }
}
