using Bakehouse.Planner.Quick;

namespace Bakehouse.Planner.Network;

/// <summary>
/// Keeps a crowd of justified schedules and crosses the orders of their starts (after Valls, Ballestin and Quintanilla 2008). For
/// charts that are <see cref="Chart.Listed"/>. Every schedule that is generated, justified ones too, is counted on the budget.
/// </summary>
internal sealed class Evolution
{
    private readonly Chart chart;
    private readonly Dice dice;
    private readonly Budget budget;
    private readonly Sampling sampling;
    private readonly SerialScheme scheme;
    private readonly Justification justification;
    private readonly Sorting sorting;
    private readonly int[][] keys;
    private readonly int bound;
    private readonly List<Breed> crowd = [];
    private readonly bool[] placed;

    public Evolution(Chart chart, int bound, Dice dice, Budget budget)
    {
        (this.chart, this.dice, this.budget, this.bound) = (chart, dice, budget, bound);
        (sampling, scheme, justification, sorting) = (new(chart, dice), new(chart), new(chart), new(chart));
        var latest = LongestPaths.Latest(chart, bound);
        keys = [[.. latest.Select((l, a) => l + chart.Length[a])], latest];
        placed = new bool[chart.Count];
    }

    /// <summary>Until the budget is used or an end at the bound is found.</summary>
    public void Run()
    {
        var size = Size(budget.Total);
        while (budget.Left && budget.Best > bound)
        {
            Found(size);
            for (var idle = 0; budget.Left && budget.Best > bound && idle < 6 * size;)
            {
                idle = Cross() ? 0 : idle + 1;
            }

            crowd.Sort((a, b) => a.End.CompareTo(b.End));
            crowd.RemoveRange(Math.Min(crowd.Count, 1), Math.Max(0, crowd.Count - 1));
        }
    }

    private static int Size(int schedules) => Math.Clamp((int)Math.Sqrt(schedules) / 2, 8, 150);

    private void Found(int size)
    {
        for (var n = 0; crowd.Count < size && (n < 3 * size || crowd.Count == 0) && budget.Left && budget.Best > bound; n++)
        {
            var starts = new int[chart.Count];
            if (Sample(n, starts))
            {
                Keep(starts, size);
            }
        }
    }

    private bool Sample(int n, int[] starts)
    {
        budget.Count();
        if (n % 2 == 0)
        {
            return sampling.Parallel(keys[n / 2 % 2], starts);
        }

        var list = new int[chart.Count];
        sampling.List(keys[n / 2 % 2], list);
        return scheme.Forward(list, starts);
    }

    private bool Keep(int[] starts, int size)
    {
        budget.Tell(starts, chart.End(starts));
        var end = justification.Justify(starts);
        budget.Count(Justification.Passes);
        budget.Tell(starts, end);
        var list = new int[chart.Count];
        sorting.ByStart(starts, list);
        var breed = new Breed(starts, list, end);
        if (crowd.Exists(b => b.End == end && b.Starts.AsSpan().SequenceEqual(starts)))
        {
            return false;
        }

        if (crowd.Count < size)
        {
            crowd.Add(breed);
            return true;
        }

        var worst = 0;
        for (var n = 1; n < crowd.Count; n++)
        {
            worst = crowd[n].End > crowd[worst].End ? n : worst;
        }

        if (crowd[worst].End < end)
        {
            return false;
        }

        var better = crowd[worst].End > end;
        crowd[worst] = breed;
        return better;
    }

    private bool Cross()
    {
        var (mother, father) = (Pick(), Pick());
        var list = new int[chart.Count];
        var (a, b) = (dice.Below(chart.Count + 1), dice.Below(chart.Count + 1));
        Mix(mother.List, father.List, Math.Min(a, b), Math.Max(a, b), list);
        Shake(list);
        var starts = new int[chart.Count];
        budget.Count();
        return scheme.Forward(list, starts) && Keep(starts, crowd.Count);
    }

    private Breed Pick()
    {
        var (one, other) = (crowd[dice.Below(crowd.Count)], crowd[dice.Below(crowd.Count)]);
        return one.End <= other.End ? one : other;
    }

    /// <summary>Mother's up to a, then as many as to b in father's order, the rest in mother's.</summary>
    private void Mix(int[] mother, int[] father, int a, int b, int[] list)
    {
        Array.Clear(placed);
        var n = 0;
        n = Fill(mother, n, a, list);
        n = Fill(father, n, b, list);
        Fill(mother, n, list.Length, list);
    }

    private int Fill(int[] from, int n, int to, int[] list)
    {
        for (var k = 0; n < to; k++)
        {
            if (!placed[from[k]])
            {
                placed[from[k]] = true;
                list[n++] = from[k];
            }
        }

        return n;
    }

    /// <summary>Neighbours in the list change places now and then, where no lag lies between them.</summary>
    private void Shake(int[] list)
    {
        for (var n = 1; n < list.Length; n++)
        {
            if (dice.Below(20) == 0 && !Leads(list[n - 1], list[n]))
            {
                (list[n - 1], list[n]) = (list[n], list[n - 1]);
            }
        }
    }

    private bool Leads(int one, int other) => Array.IndexOf(chart.Before.Other, one, chart.Before.At[other], chart.Before.At[other + 1] - chart.Before.At[other]) >= 0;

    private sealed record Breed(int[] Starts, int[] List, int End);
}
