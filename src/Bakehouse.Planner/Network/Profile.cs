namespace Bakehouse.Planner.Network;

/// <summary>What is left of the resources at each grain while a schedule is built.</summary>
internal sealed class Profile
{
    private readonly Chart chart;
    private readonly Needs needs;
    private readonly ulong[][] free;
    private int touched;

    public Profile(Chart chart)
    {
        (this.chart, needs) = (chart, chart.Needs);
        free = [.. needs.Free.Select(f => (ulong[])f.Clone())];
    }

    /// <summary>Gives everything back.</summary>
    public void Clear()
    {
        for (var w = 0; w < free.Length; w++)
        {
            Array.Copy(needs.Free[w], free[w], touched);
        }

        touched = 0;
    }

    /// <summary>First start at or after <paramref name="from"/> at which the activity fits; -1 if none ends at or before the horizon.</summary>
    public int Earliest(int activity, int from)
    {
        var (length, words) = (chart.Length[activity], needs.Taking[activity]);
        if (words.Length == 0)
        {
            return from + length <= chart.Horizon ? from : -1;
        }

        if (words.Length == 1)
        {
            return Earliest(free[words[0]], needs.Of[words[0]][activity], length, from);
        }

        for (var run = 0; from + length <= chart.Horizon; from += run + 1)
        {
            for (run = length - 1; run >= 0 && Fits(activity, words, from + run); run--)
            {
            }

            if (run < 0)
            {
                return from;
            }
        }

        return -1;
    }

    /// <summary>Last start at or before <paramref name="from"/> at which the activity fits; -1 if there is none.</summary>
    public int Latest(int activity, int from)
    {
        var (length, words) = (chart.Length[activity], needs.Taking[activity]);
        if (words.Length == 0 || from < 0)
        {
            return Math.Max(from, -1);
        }

        if (words.Length == 1)
        {
            return Latest(free[words[0]], needs.Of[words[0]][activity], length, from);
        }

        for (var run = 0; from >= 0; from += run - length)
        {
            for (run = 0; run < length && Fits(activity, words, from + run); run++)
            {
            }

            if (run == length)
            {
                return from;
            }
        }

        return -1;
    }

    /// <summary>True if the activity fits at this start.</summary>
    public bool FitsAt(int activity, int start) => start + chart.Length[activity] <= chart.Horizon && Earliest(activity, start) == start;

    public void Take(int activity, int start)
    {
        var end = start + chart.Length[activity];
        touched = Math.Max(touched, end);
        foreach (var w in needs.Taking[activity])
        {
            var need = needs.Of[w][activity];
            foreach (ref var left in free[w].AsSpan(start, end - start))
            {
                left -= need;
            }
        }
    }

    public void Give(int activity, int start)
    {
        foreach (var w in needs.Taking[activity])
        {
            var need = needs.Of[w][activity];
            foreach (ref var left in free[w].AsSpan(start, chart.Length[activity]))
            {
                left += need;
            }
        }
    }

    private bool Fits(int activity, int[] words, int grain)
    {
        foreach (var w in words)
        {
            if (((free[w][grain] - needs.Of[w][activity]) & Needs.Guard) != Needs.Guard)
            {
                return false;
            }
        }

        return true;
    }

    private static int Earliest(ulong[] free, ulong need, int length, int from)
    {
        var run = 0;
        for (var t = from; t < free.Length; t++)
        {
            run = ((free[t] - need) & Needs.Guard) == Needs.Guard ? run + 1 : 0;
            if (run == length)
            {
                return t - length + 1;
            }
        }

        return -1;
    }

    private static int Latest(ulong[] free, ulong need, int length, int from)
    {
        var run = 0;
        for (var t = from + length - 1; t >= 0; t--)
        {
            run = ((free[t] - need) & Needs.Guard) == Needs.Guard ? run + 1 : 0;
            if (run == length)
            {
                return t;
            }
        }

        return -1;
    }
}
