using System.Globalization;
using Bakehouse.Domain.Planning;

namespace Bakehouse.Planner.Solver;

/// <summary>A week by numbers. Time is in grains. Made once a week; it holds for every plan of it.</summary>
internal sealed class Numbers
{
    private readonly int[] sort;
    private readonly bool[,] alike;
    private readonly bool[,] taints;
    private readonly HashSet<int> given;

    public Numbers(Week week)
    {
        Week = week;
        Steps = [.. week.Steps];
        Holds = [.. week.Holds];
        StepAt = Numbered(Steps.Select(s => s.Id));
        PersonAt = Numbered(week.People.Select(p => p.Id));
        MachineAt = Numbered(week.Machines.Select(m => m.Id));
        StoreAt = Numbered(week.Stores.Select(s => s.Id));
        Ends = [.. Holds.Select(h => (StepAt[h.From], StepAt[h.To]))];
        Length = [.. Steps.Select(s => s.Minutes / week.Grain)];
        given = [.. week.Fixed.Where(f => f.Step is not null && StepAt.ContainsKey(f.Step)).Select(f => StepAt[f.Step!])];
        GivenHolds = week.Fixed.Where(f => f.Hold is not null).Select(f => f.Hold!).ToHashSet(StringComparer.Ordinal);
        Stretches = [.. week.People.Select(p => Spans.Joined([.. p.Shifts, .. p.Extra], week.Grain))];
        Extra = [.. week.People.Select(p => Spans.Joined(p.Extra, week.Grain))];
        Skilled = [.. Steps.Select(s => s.Skill is { } skill ? Enumerable.Range(0, week.People.Count).Where(p => week.People[p].Skills.Contains(skill)).ToArray() : [])];
        Machines = [.. Enumerable.Range(0, Steps.Length).Select(s => Enumerable.Range(0, week.Machines.Count).Where(m => IsRun(s) && Share(s, m) > 0 && Share(s, m) <= Room(s, m)).ToArray())];
        (sort, var first) = Sorted();
        taints = new bool[first.Count, first.Count];
        alike = new bool[first.Count, first.Count];
        for (var a = 0; a < first.Count; a++)
        {
            for (var b = 0; b < first.Count; b++)
            {
                taints[a, b] = Steps[first[a]].Has.Intersect(Steps[first[b]].Avoid).Any();
                alike[a, b] = Joinable(first[a], first[b]);
            }
        }
    }

    public Week Week { get; }

    public Step[] Steps { get; }

    public Hold[] Holds { get; }

    public IReadOnlyDictionary<string, int> StepAt { get; }

    public IReadOnlyDictionary<string, int> PersonAt { get; }

    public IReadOnlyDictionary<string, int> MachineAt { get; }

    public IReadOnlyDictionary<string, int> StoreAt { get; }

    /// <summary>The steps between which each hold is.</summary>
    public (int From, int To)[] Ends { get; }

    /// <summary>Grains that each step takes.</summary>
    public int[] Length { get; }

    /// <summary>Steps of which something is done, started or pinned.</summary>
    public IReadOnlySet<int> Given => given;

    /// <summary>Holds of which the store is given.</summary>
    public IReadOnlySet<string> GivenHolds { get; }

    /// <summary>Hours of each person, overtime too.</summary>
    public IReadOnlyList<Span>[] Stretches { get; }

    /// <summary>Possible overtime of each person.</summary>
    public IReadOnlyList<Span>[] Extra { get; }

    /// <summary>By step: who may do it.</summary>
    public int[][] Skilled { get; }

    /// <summary>By step: the machines in which it can be done alone.</summary>
    public int[][] Machines { get; }

    public int Grain => Week.Grain;

    public int Horizon => Week.Horizon / Grain;

    /// <summary>First grain at which a step that is not given may start.</summary>
    public int FreeFrom => (Week.FreeFrom + Grain - 1) / Grain;

    public bool IsRun(int s) => Steps[s].Mix is not null || Steps[s].Bake is not null;

    public string Kind(int s) => Steps[s].Mix?.Family ?? Steps[s].Bake!.Heat;

    /// <summary>True if the two may be in one run, as far as kind, hands and allergens go.</summary>
    public bool Alike(int s, int t) => alike[sort[s], sort[t]] && !Harm(s, t);

    /// <summary>True if something in the one must not get into the other.</summary>
    public bool Taints(int one, int other) => taints[sort[one], sort[other]];

    /// <summary>The same, either way.</summary>
    public bool Harm(int s, int t) => Taints(s, t) || Taints(t, s);

    /// <summary>What a step takes of a machine, 0 if it can't be done there.</summary>
    public long Share(int s, int m)
    {
        var machine = Week.Machines[m];
        if (Steps[s].Mix is { } mix)
        {
            return machine.Kind == MachineKind.Bowl && Limit(mix.Family, machine.Id) > 0 ? Math.Max(1, mix.Size) : 0;
        }

        var pans = Steps[s].Bake!.Pans;
        return machine.Kind == MachineKind.Oven && pans.All(p => machine.Fits.GetValueOrDefault(p) > 0) ? Math.Max(1, pans.Sum(p => Whole(machine) / machine.Fits[p])) : 0;
    }

    /// <summary>What a machine holds, in the unit of <see cref="Share"/>.</summary>
    public long Room(int s, int m) => Steps[s].Mix is { } mix ? Limit(mix.Family, Week.Machines[m].Id) : Whole(Week.Machines[m]) * Week.Machines[m].Levels;

    private int Limit(string family, string machine) => Week.Families.First(f => f.Id == family).Limit.GetValueOrDefault(machine);

    /// <summary>Parts of a level: a number that every count of pans divides.</summary>
    private static long Whole(Machine oven) => oven.Fits.Values.Where(f => f > 0).Aggregate(1L, (all, f) => all / Gcd(all, f) * f);

    private static long Gcd(long a, long b) => b == 0 ? a : Gcd(b, a % b);

    /// <summary>Steps of one sort differ in nothing that decides what may be done together; and the first step of each sort.</summary>
    private (int[] Sort, List<int> First) Sorted()
    {
        var known = new Dictionary<string, int>(StringComparer.Ordinal);
        var first = new List<int>();
        var sorts = new int[Steps.Length];
        for (var s = 0; s < Steps.Length; s++)
        {
            var step = Steps[s];
            var words = string.Join('\n', [IsRun(s) ? (step.Mix is null ? "bake " : "mix ") + Kind(s) : "", step.Skill ?? "", step.Count.ToString(CultureInfo.InvariantCulture), .. step.Has, "", .. step.Avoid]);
            if (!known.TryGetValue(words, out sorts[s]))
            {
                known[words] = sorts[s] = first.Count;
                first.Add(s);
            }
        }

        return (sorts, first);
    }

    private bool Joinable(int s, int t) => IsRun(s) && IsRun(t) && (Steps[s].Mix is null) == (Steps[t].Mix is null) && Kind(s) == Kind(t)
        && Steps[s].Skill == Steps[t].Skill && (Steps[s].Skill is null || Steps[s].Count == Steps[t].Count);

    private static Dictionary<string, int> Numbered(IEnumerable<string> names) =>
        names.Select((name, i) => (name, i)).ToDictionary(n => n.name, n => n.i, StringComparer.Ordinal);
}
