namespace Bakehouse.Planner.Network;

/// <summary>
/// Serial generation: one activity after the other, each as early (or as late) as its lags and the resources leave room. Only for
/// charts that are <see cref="Chart.Listed"/>, with lists in which each activity stands after those it has lags from.
/// </summary>
internal sealed class SerialScheme(Chart chart)
{
    private readonly Profile profile = new(chart);

    /// <summary>Each as early as may be, in the order of the list. False if one does not end before the horizon.</summary>
    public bool Forward(ReadOnlySpan<int> list, int[] starts)
    {
        profile.Clear();
        var (at, other, least) = (chart.Before.At, chart.Before.Other, chart.Before.Least);
        foreach (var a in list)
        {
            var from = chart.From[a];
            for (var k = at[a]; k < at[a + 1]; k++)
            {
                from = Math.Max(from, starts[other[k]] + least[k]);
            }

            var start = profile.Earliest(a, from);
            if (start < 0)
            {
                return false;
            }

            starts[a] = start;
            profile.Take(a, start);
        }

        return true;
    }

    /// <summary>
    /// Each as late as may be, ending at or before the deadline, from the end of the list to its beginning. False if one can't start
    /// late enough.
    /// </summary>
    public bool Backward(ReadOnlySpan<int> list, int deadline, int[] starts)
    {
        profile.Clear();
        var (at, other, least) = (chart.After.At, chart.After.Other, chart.After.Least);
        for (var n = list.Length - 1; n >= 0; n--)
        {
            var a = list[n];
            var from = deadline - chart.Length[a];
            for (var k = at[a]; k < at[a + 1]; k++)
            {
                from = Math.Min(from, starts[other[k]] - least[k]);
            }

            var start = profile.Latest(a, from);
            if (start < chart.From[a])
            {
                return false;
            }

            starts[a] = start;
            profile.Take(a, start);
        }

        return true;
    }
}
