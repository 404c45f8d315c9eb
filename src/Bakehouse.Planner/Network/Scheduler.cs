using Bakehouse.Planner.Quick;

namespace Bakehouse.Planner.Network;

/// <summary>
/// Looks for a schedule of a net that ends as early as may be. The search is counted in schedules and draws from its seed, so the
/// same net, seed and budget give the same answer on any machine, however many searches run at once.
/// </summary>
internal static class Scheduler
{
    /// <summary>Searches.</summary>
    /// <param name="net">What is to be scheduled.</param>
    /// <param name="seed">Of the draws.</param>
    /// <param name="schedules">Most schedules that are generated, justified ones counted, too.</param>
    /// <param name="better">Told of each better schedule as it is found.</param>
    /// <param name="cancel">Ends the search; the best schedule so far is the answer.</param>
    public static Scheduled Run(Net net, uint seed, int schedules, Action<Found>? better = null, CancellationToken cancel = default)
    {
        var chart = new Chart(net, []);
        var (earliest, circle) = LongestPaths.Earliest(chart);
        if (earliest is null)
        {
            return new Scheduled(Ending.Impossible, [], 0, 0, 0, circle);
        }

        var bound = Math.Max(chart.End(earliest), Bounds.Work(chart));
        var budget = new Budget(schedules, better, cancel);
        var proved = bound > chart.Horizon || Search(chart, bound, new Dice(seed), budget);
        var ending = budget.Starts.Length > 0 ? Ending.Found : proved ? Ending.Impossible : Ending.Unknown;
        return new Scheduled(ending, budget.Starts, budget.Best, proved && ending == Ending.Found ? budget.Best : bound, budget.Used, []);
    }

    /// <summary>True if the best found is proved, or that there is none.</summary>
    private static bool Search(Chart chart, int bound, Dice dice, Budget budget)
    {
        if (chart.Listed)
        {
            new Evolution(chart, bound, dice, budget).Run();
            return budget.Best <= bound;
        }

        return LongestPaths.Matrix(chart, chart.Horizon) is not { } paths || new GapSearch(chart, paths, bound, dice, budget).Run();
    }
}

/// <summary>How a search ended.</summary>
internal enum Ending
{
    /// <summary>There is a schedule.</summary>
    Found,

    /// <summary>The budget was used before there was one.</summary>
    Unknown,

    /// <summary>There can be none that ends by the horizon.</summary>
    Impossible,
}

/// <summary>What a search found.</summary>
/// <param name="Starts">By activity; empty if there is no schedule.</param>
/// <param name="End">Grain at which the last activity ends; the greatest number if there is no schedule.</param>
/// <param name="Bound">No schedule ends earlier.</param>
/// <param name="Schedules">Generated.</param>
/// <param name="Circle">Activities whose lags can't be kept together, if that is why there is no schedule.</param>
internal sealed record Scheduled(Ending Ending, int[] Starts, int End, int Bound, int Schedules, int[] Circle);
