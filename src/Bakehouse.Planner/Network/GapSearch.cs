using Bakehouse.Planner.Quick;

namespace Bakehouse.Planner.Network;

/// <summary>
/// For nets with most gaps: setting orders with more and more nodes, and between two such searches sampling with unscheduling, each time
/// for an end before the best one.
/// </summary>
internal sealed class GapSearch
{
    private const int FirstNodes = 60;
    private const int MostNodes = 1 << 20;
    private const int Samples = 20;

    private readonly Chart chart;
    private readonly Dice dice;
    private readonly Budget budget;
    private readonly int bound;
    private readonly Ordering? ordering;
    private readonly Unscheduling unscheduling;
    private readonly int[][] keys;

    /// <param name="chart">What is scheduled.</param>
    /// <param name="paths">Longest paths with the horizon as deadline.</param>
    /// <param name="bound">No schedule ends earlier.</param>
    /// <param name="dice">What decides.</param>
    /// <param name="budget">How long, and the best.</param>
    public GapSearch(Chart chart, int[] paths, int bound, Dice dice, Budget budget)
    {
        (this.chart, this.dice, this.budget, this.bound) = (chart, dice, budget, bound);
        ordering = chart.Steady ? new Ordering(chart, bound, dice, budget) : null;
        unscheduling = new Unscheduling(chart, paths, dice);
        var latest = LongestPaths.Latest(chart, bound);
        keys = [latest, [.. latest.Select((l, a) => l + chart.Length[a])], [.. latest.Select((l, a) => l + paths[chart.Count * (chart.Count + 1) + a])]];
    }

    /// <summary>Until the budget is used or nothing is left to search.</summary>
    /// <returns>True if the best so far is proved, or that there is none.</returns>
    public bool Run()
    {
        for (var nodes = FirstNodes; budget.Left && budget.Best > bound; nodes = Math.Min(2 * nodes, MostNodes))
        {
            if (ordering?.Search(nodes) == true)
            {
                return true;
            }

            for (var n = 0; n < Samples && budget.Left && budget.Best > bound; n++)
            {
                Sample(keys[dice.Below(keys.Length)]);
            }
        }

        return budget.Best <= bound;
    }

    private void Sample(int[] urgency)
    {
        var starts = new int[chart.Count];
        budget.Count();
        if (unscheduling.Build(Math.Min(chart.Horizon, budget.Best - 1), urgency, starts))
        {
            budget.Tell(starts, chart.End(starts));
        }
    }
}
