using System.Globalization;
using Bakehouse.Domain.Planning;
using Bakehouse.Planner.Quick;
using Google.OrTools.Sat;

namespace Bakehouse.Planner.Solver;

/// <summary>
/// Makes a plan better by exact answers: the whole of a small week level by level, or window after window of a large one. The work is
/// counted in the solver's own units, so the same week, plan and seed give the same better plans.
/// </summary>
/// <param name="week">The week.</param>
/// <param name="start">A plan that breaks no rule but by facts.</param>
/// <param name="seed">Seed of the windows and of the solver.</param>
internal sealed class Search(Week week, Plan start, uint seed)
{
    /// <summary>Most steps that are solved at once.</summary>
    private const int MostAtOnce = 70;

    /// <summary>Units of one window, some tenths of a second; and what its model takes before the search begins, for all and for each step.</summary>
    private const double WindowUnits = 0.03;
    private const double BuildingUnits = 0.002;
    private const double StepUnits = 0.0001;

    /// <summary>Steps of the first window of a level, and of the smallest.</summary>
    private const double FirstSize = 40;
    private const double LeastSize = 12;

    /// <summary>Tried on the public weeks: without linear relaxations a proof comes sooner and a window gains more; a window is not worth long preparations.</summary>
    private const string AtOnce = "linearization_level:0";
    private const string Quickly = AtOnce + " symmetry_level:0 cp_model_probing_level:0";

    private static readonly int[] PlanOrder = [0, 1, 2, 3, 4, 5];
    private static readonly int[] RepairOrder = [0, 4, 1, 2, 3, 5];

    private readonly Dice dice = new(seed);
    private readonly HashSet<string> facts = [.. Judge.Examine(week, start).Breaches.Select(Told)];
    private Ground at = new(new Numbers(week), start);
    private readonly double[] sizes = [FirstSize, FirstSize, FirstSize, FirstSize, FirstSize, FirstSize];

    private int[] Order => week.Repair ? RepairOrder : PlanOrder;

    /// <summary>The best plan so far.</summary>
    public Plan Best => at.Plan;

    /// <summary>Its levels.</summary>
    public Levels Levels => at.Levels;

    /// <summary>True once it is proved that no plan is better.</summary>
    public bool Proved { get; private set; }

    /// <summary>True if nothing is left to do.</summary>
    public bool Done => Proved || new Windows(at, dice).Movable == 0 || at.Levels is { Late: 0, Stale: 0, Overtime: 0, Fresh: 0, Changes: 0, Uneven: 0 };

    /// <summary>True if the week is small enough to be solved at once.</summary>
    public bool Small => new Windows(at, dice).Movable <= MostAtOnce;

    /// <summary>Window after window until so many units are used, or cancelled.</summary>
    public void Run(double units, CancellationToken cancel = default)
    {
        for (var left = units; left > 0 && !Done && !cancel.IsCancellationRequested;)
        {
            left -= Window(Math.Min(left, WindowUnits));
        }
    }

    /// <summary>Goes on from another's plan.</summary>
    public void Follow(Search other) => at = other.at;

    /// <summary>All steps at once, level by level, for at most so many units. Returns the units used.</summary>
    public double Exactly(double units, Action better)
    {
        var used = 0.0;
        var proved = true;
        var model = new WeekModel(at, new Windows(at, dice).Whole());
        foreach (var level in Order)
        {
            if (!model.Seek(level))
            {
                model.Hold(level);
                continue;
            }

            using var solver = Solver(units - used, AtOnce);
            var status = solver.Solve(model.Model);
            used += solver.Response!.DeterministicTime;
            proved &= status == CpSolverStatus.Optimal;
            if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible) || used >= units)
            {
                Offer(status is CpSolverStatus.Optimal or CpSolverStatus.Feasible ? model.Read(solver) : Best, better);
                return used;
            }

            model.HoldAt(level, solver);
            proved &= Offer(model.Read(solver), better);
        }

        Proved = proved;
        return used;
    }

    /// <summary>Looks for what is better at one level in one window. Returns the units used.</summary>
    private double Window(double units)
    {
        var target = Target();
        var free = new Windows(at, dice).Pick((int)sizes[target], target);
        var building = BuildingUnits + (StepUnits * free.Count(f => f));
        var model = new WeekModel(at, free, Order.TakeWhile(l => l != target).Append(target));
        if (!model.Better(Order, target))
        {
            return building / 4;
        }

        using var solver = Solver(units, Quickly);
        var status = solver.Solve(model.Model);
        if (status is CpSolverStatus.Optimal or CpSolverStatus.Feasible)
        {
            Offer(model.Read(solver), () => { });
        }

        sizes[target] = status is CpSolverStatus.Optimal or CpSolverStatus.Infeasible ? Math.Min(sizes[target] * 1.05, at.Steps.Length) : Math.Max(LeastSize, sizes[target] * 0.93);
        return solver.Response!.DeterministicTime + building;
    }

    /// <summary>Mostly the first level at which something is to be gained, now and then one after it.</summary>
    private int Target()
    {
        long[] all = [at.Levels.Late, at.Levels.Stale, at.Levels.Overtime, at.Levels.Fresh, at.Levels.Changes, at.Levels.Uneven];
        int[] open = [.. Order.Where(l => all[l] > 0)];
        return open[Array.FindIndex(open, l => l == open[^1] || dice.Below(5) > 0)];
    }

    /// <summary>The Judge has the last word: what he refuses, or finds no better, is dropped. False if he refuses.</summary>
    private bool Offer(Plan plan, Action better)
    {
        var found = Tidy(plan);
        var verdict = Judge.Examine(week, found);
        var stands = verdict.Breaches.All(b => facts.Contains(Told(b)));
        if (stands && verdict.Levels.CompareTo(at.Levels, week.Repair) < 0)
        {
            at = new Ground(at.Numbers, found);
            better();
        }

        return stands;
    }

    private static string Told(Breach breach) => breach.Rule + " " + breach.Step;

    /// <summary>Without clean-downs that nobody needs any more.</summary>
    private Plan Tidy(Plan plan)
    {
        var broken = Judge.Examine(week, plan).Breaches.Count;
        foreach (var clean in plan.Cleans.Where(c => c.Start >= week.FreeFrom).ToList())
        {
            var without = plan with { Cleans = [.. plan.Cleans.Where(c => c != clean)] };
            plan = Judge.Examine(week, without).Breaches.Count <= broken ? without : plan;
        }

        return plan;
    }

    private CpSolver Solver(double units, string how) => new()
    {
        StringParameters = string.Create(CultureInfo.InvariantCulture, $"{how} num_workers:1 random_seed:{seed % 10_000} max_deterministic_time:{units}"),
    };
}
