using Bakehouse.Domain.Planning;

namespace Bakehouse.Planner.Solver;

/// <summary>The plan from which the search goes on, by the numbers of its week. Made once for each plan that is improved.</summary>
internal sealed class Ground
{
    /// <param name="numbers">The week.</param>
    /// <param name="plan">A plan of it.</param>
    public Ground(Numbers numbers, Plan plan)
    {
        (Numbers, Plan) = (numbers, plan);
        Rows = new StepRow?[Steps.Length];
        foreach (var row in plan.Steps)
        {
            Rows[Numbers.StepAt[row.Step]] = row;
        }

        var standing = plan.Holds.ToDictionary(h => h.Hold, h => h.Store);
        Standing = [.. Holds.Select(h => standing.TryGetValue(h.Id, out var store) ? numbers.StoreAt[store] : -1)];
        Batches = MakeBatches();
        Levels = Judge.Examine(Week, plan).Levels;
    }

    /// <summary>What holds for every plan of the week.</summary>
    public Numbers Numbers { get; }

    public Plan Plan { get; }

    /// <summary>The Judge's levels of the plan.</summary>
    public Levels Levels { get; }

    /// <summary>The plan's row of each step, null where the plan has none.</summary>
    public StepRow?[] Rows { get; }

    /// <summary>The store of each hold, -1 where the plan has none.</summary>
    public int[] Standing { get; }

    /// <summary>The plan's bowlfuls and oven loads.</summary>
    public IReadOnlyList<Load> Batches { get; }

    public Week Week => Numbers.Week;

    public int Grain => Numbers.Grain;

    public int Horizon => Numbers.Horizon;

    public Step[] Steps => Numbers.Steps;

    public Hold[] Holds => Numbers.Holds;

    /// <summary>Grains that each step takes.</summary>
    public int[] Length => Numbers.Length;

    public int Start(int step) => Rows[step]!.Start / Grain;

    public int End(int step) => Start(step) + Length[step];

    /// <summary>Grains from the end of one to the start of the other in the plan.</summary>
    public int Between(int from, int to) => Rows[from] is null || Rows[to] is null ? int.MinValue : Start(to) - End(from);

    /// <summary>Minutes that an order is late in the plan.</summary>
    public long Late(WeekOrder order)
    {
        var goes = Numbers.StepAt[order.Out];
        return Rows[goes] is null ? 0 : Math.Max(0, ((order.EdgeIsEnd ? End(goes) : Start(goes)) * Grain) - order.To);
    }

    private List<Load> MakeBatches() =>
    [
        .. Enumerable.Range(0, Steps.Length).Where(s => Rows[s] is not null && Numbers.IsRun(s) && Rows[s]!.Machine is not null)
            .GroupBy(s => Rows[s]!.Batch is { Length: > 0 } label ? (Rows[s]!.Machine!, label, -1) : (Rows[s]!.Machine!, "", s))
            .Select(g => new Load([.. g], Numbers.MachineAt[g.Key.Item1], Start(g.First()), g.Max(End))),
    ];
}

/// <summary>A bowlful or an oven load of the plan.</summary>
internal sealed record Load(IReadOnlyList<int> Members, int Machine, int From, int To);
