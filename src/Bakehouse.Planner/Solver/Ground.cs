using Bakehouse.Domain.Planning;

namespace Bakehouse.Planner.Solver;

/// <summary>
/// A week by numbers, with the plan from which the search goes on. Time is in grains. Made once for each plan that is improved.
/// </summary>
internal sealed class Ground
{
    public Ground(Week week, Plan plan)
    {
        (Week, Plan) = (week, plan);
        Steps = [.. week.Steps];
        Holds = [.. week.Holds];
        StepAt = Numbered(Steps.Select(s => s.Id));
        PersonAt = Numbered(week.People.Select(p => p.Id));
        MachineAt = Numbered(week.Machines.Select(m => m.Id));
        StoreAt = Numbered(week.Stores.Select(s => s.Id));
        Length = [.. Steps.Select(s => s.Minutes / week.Grain)];
        Rows = new StepRow?[Steps.Length];
        foreach (var row in plan.Steps)
        {
            Rows[StepAt[row.Step]] = row;
        }

        var standing = plan.Holds.ToDictionary(h => h.Hold, h => h.Store);
        Standing = [.. Holds.Select(h => standing.TryGetValue(h.Id, out var store) ? StoreAt[store] : -1)];
        given = [.. week.Fixed.Where(f => f.Step is not null && StepAt.ContainsKey(f.Step)).Select(f => StepAt[f.Step!])];
        GivenHolds = week.Fixed.Where(f => f.Hold is not null).Select(f => f.Hold!).ToHashSet(StringComparer.Ordinal);
        Stretches = [.. week.People.Select(p => Spans.Joined([.. p.Shifts, .. p.Extra], week.Grain))];
        Extra = [.. week.People.Select(p => Spans.Joined(p.Extra, week.Grain))];
        Batches = MakeBatches();
        Levels = Judge.Examine(week, plan).Levels;
    }

    public Week Week { get; }

    public Plan Plan { get; }

    /// <summary>The Judge's levels of the plan.</summary>
    public Levels Levels { get; }

    public Step[] Steps { get; }

    public Hold[] Holds { get; }

    public IReadOnlyDictionary<string, int> StepAt { get; }

    public IReadOnlyDictionary<string, int> PersonAt { get; }

    public IReadOnlyDictionary<string, int> MachineAt { get; }

    public IReadOnlyDictionary<string, int> StoreAt { get; }

    /// <summary>Grains that each step takes.</summary>
    public int[] Length { get; }

    /// <summary>The plan's row of each step, null where the plan has none.</summary>
    public StepRow?[] Rows { get; }

    /// <summary>The store of each hold, -1 where the plan has none.</summary>
    public int[] Standing { get; }

    /// <summary>Steps of which something is done, started or pinned.</summary>
    public IReadOnlySet<int> Given => given;

    /// <summary>Holds of which the store is given.</summary>
    public IReadOnlySet<string> GivenHolds { get; }

    /// <summary>Hours of each person, overtime too.</summary>
    public IReadOnlyList<Span>[] Stretches { get; }

    /// <summary>Possible overtime of each person.</summary>
    public IReadOnlyList<Span>[] Extra { get; }

    /// <summary>The plan's bowlfuls and oven loads.</summary>
    public IReadOnlyList<Load> Batches { get; }

    private readonly HashSet<int> given;

    public int Grain => Week.Grain;

    public int Horizon => Week.Horizon / Grain;

    /// <summary>First grain at which a step that is not given may start.</summary>
    public int FreeFrom => (Week.FreeFrom + Grain - 1) / Grain;

    public int Start(int step) => Rows[step]!.Start / Grain;

    public int End(int step) => Start(step) + Length[step];

    public string Kind(int step) => Steps[step].Mix?.Family ?? Steps[step].Bake!.Heat;

    public bool IsRun(int step) => Steps[step].Mix is not null || Steps[step].Bake is not null;

    private static Dictionary<string, int> Numbered(IEnumerable<string> names) =>
        names.Select((name, i) => (name, i)).ToDictionary(n => n.name, n => n.i, StringComparer.Ordinal);

    private List<Load> MakeBatches() =>
    [
        .. Enumerable.Range(0, Steps.Length).Where(s => Rows[s] is not null && IsRun(s) && Rows[s]!.Machine is not null)
            .GroupBy(s => Rows[s]!.Batch is { Length: > 0 } label ? (Rows[s]!.Machine!, label, -1) : (Rows[s]!.Machine!, "", s))
            .Select(g => new Load([.. g], MachineAt[g.Key.Item1], Start(g.First()), g.Max(End))),
    ];
}

/// <summary>A bowlful or an oven load of the plan.</summary>
internal sealed record Load(IReadOnlyList<int> Members, int Machine, int From, int To);
