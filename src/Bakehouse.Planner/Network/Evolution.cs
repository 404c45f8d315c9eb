using Bakehouse.Planner.Quick;

namespace Bakehouse.Planner.Network;

/// <summary>
/// Keeps a crowd of justified schedules and crosses the orders of their starts (after Valls, Ballestin and Quintanilla 2008). For
/// charts that are <see cref="Chart.Listed"/>. Every schedule that is generated, justified ones too, is counted on the budget.
/// </summary>
internal sealed class Evolution
{
    /// <summary>So many children for each of the crowd without a better one, and a new crowd is sampled around the best.</summary>
    private const int Patience = 6;

    private readonly Chart chart;
    private readonly Dice dice;
    private readonly Budget budget;
    private readonly Sampling sampling;
    private readonly Crossing crossing;
    private readonly SerialScheme scheme;
    private readonly Justification justification;
    private readonly Sorting sorting;
    private readonly int[][] keys;
    private readonly int bound;
    private readonly int size;
    private readonly List<Breed> crowd = [];

    public Evolution(Chart chart, int bound, Dice dice, Budget budget)
    {
        (this.chart, this.dice, this.budget, this.bound, size) = (chart, dice, budget, bound, Size(budget.Total));
        (sampling, crossing, scheme) = (new(chart, dice), new(chart, dice), new(chart));
        (justification, sorting) = (new(chart), new(chart));
        var latest = LongestPaths.Latest(chart, bound);
        keys = [[.. latest.Select((l, a) => l + chart.Length[a])], latest];
    }

    private bool Going => budget.Left && budget.Best > bound;

    /// <summary>Until the budget is used or an end at the bound is found.</summary>
    public void Run()
    {
        while (Going)
        {
            Sample();
            for (var idle = 0; Going && idle < Patience * size;)
            {
                idle = Cross() ? 0 : idle + 1;
            }

            var best = crowd.MinBy(b => b.End);
            crowd.Clear();
            crowd.AddRange(best is null ? [] : [best]);
        }
    }

    /// <summary>Tried on published nets of 30 and 60 activities: a smaller crowd becomes all alike, a greater one learns too slowly.</summary>
    private static int Size(int schedules) => Math.Clamp((int)(1.1 * Math.Sqrt(schedules)), 35, 112);

    /// <summary>Fills the crowd. A small net may not have so many schedules.</summary>
    private void Sample()
    {
        for (var n = 0; Going && crowd.Count < size && (n < 3 * size || crowd.Count == 0); n++)
        {
            var starts = new int[chart.Count];
            budget.Count();
            if (Sample(n % 2 == 0, keys[n / 2 % 2], starts))
            {
                Keep(starts, size);
            }
        }
    }

    private bool Sample(bool parallel, int[] urgency, int[] starts)
    {
        if (parallel)
        {
            return sampling.Parallel(urgency, starts);
        }

        var list = new int[chart.Count];
        sampling.List(urgency, list);
        return scheme.Forward(list, starts);
    }

    /// <summary>True if the child made the crowd better.</summary>
    private bool Cross()
    {
        var (list, starts) = (new int[chart.Count], new int[chart.Count]);
        crossing.Cross(Pick().List, Pick().List, list);
        budget.Count();
        return scheme.Forward(list, starts) && Keep(starts, crowd.Count);
    }

    private Breed Pick()
    {
        var (one, other) = (crowd[dice.Below(crowd.Count)], crowd[dice.Below(crowd.Count)]);
        return one.End <= other.End ? one : other;
    }

    /// <summary>Justifies and takes in, in place of the worst if the crowd is full. True if a worse one went.</summary>
    private bool Keep(int[] starts, int most)
    {
        budget.Tell(starts, chart.End(starts));
        var end = justification.Justify(starts);
        budget.Count(Justification.Passes);
        budget.Tell(starts, end);
        if (crowd.Exists(b => b.End == end && b.Starts.AsSpan().SequenceEqual(starts)))
        {
            return false;
        }

        var list = new int[chart.Count];
        sorting.ByStart(starts, list);
        if (crowd.Count < most)
        {
            crowd.Add(new Breed(starts, list, end));
            return true;
        }

        var worst = Worst();
        var known = crowd[worst].End;
        if (end <= known)
        {
            crowd[worst] = new Breed(starts, list, end);
        }

        return end < known;
    }

    private int Worst()
    {
        var worst = 0;
        for (var n = 1; n < crowd.Count; n++)
        {
            worst = crowd[n].End > crowd[worst].End ? n : worst;
        }

        return worst;
    }

    private sealed record Breed(int[] Starts, int[] List, int End);
}
