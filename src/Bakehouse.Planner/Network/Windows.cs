namespace Bakehouse.Planner.Network;

/// <summary>
/// Between which grains each activity can start, whatever else is done: by lags, by first starts and by calendars, each activity alone
/// on the resources in whichever mode is soonest. No schedule of the net leaves them.
/// </summary>
/// <param name="Earliest">By activity.</param>
/// <param name="Latest">By activity, if all is to end by the horizon.</param>
internal sealed record Windows(int[] Earliest, int[] Latest)
{
    /// <summary>The windows, or null if no schedule ends by the horizon.</summary>
    public static Windows? Of(Net net)
    {
        var chart = new Chart(net, [.. net.Activities.Select(Shortest)]);
        var units = net.Resources.Select(r => (int[])[.. r.Calendar ?? Enumerable.Repeat(r.Capacity, net.Horizon)]).ToArray();
        var from = (int[])chart.From.Clone();
        for (var changed = true; changed;)
        {
            if (LongestPaths.Earliest(chart, from).Starts is not { } starts)
            {
                return null;
            }

            changed = false;
            for (var a = 0; a < chart.Count; a++)
            {
                if (FirstFit(net.Activities[a], starts[a], units, net.Horizon) is not { } fit)
                {
                    return null;
                }

                changed |= fit > starts[a];
                from[a] = fit;
            }
        }

        return new Windows(from, LongestPaths.Latest(chart, net.Horizon));
    }

    private static int Shortest(Activity activity) => activity.Modes.Select((m, n) => (m.Length, n)).Min().n;

    private static int? FirstFit(Activity activity, int from, int[][] units, int horizon)
    {
        int? first = null;
        foreach (var mode in activity.Modes)
        {
            var last = (first ?? horizon + 1) - 1;
            for (var start = from; start <= Math.Min(last, horizon - mode.Length);)
            {
                var lacking = LastShort(mode, start, units);
                if (lacking < 0)
                {
                    first = start;
                    break;
                }

                start = lacking + 1;
            }
        }

        return first;
    }

    /// <summary>Last grain of the stretch at which a resource has too little for this mode alone; -1 if there is none.</summary>
    private static int LastShort(Mode mode, int start, int[][] units)
    {
        var last = -1;
        for (var r = 0; r < units.Length; r++)
        {
            var (need, calendar) = (mode.Demand[r], units[r]);
            for (var t = start + mode.Length - 1; need > 0 && t >= start && t > last; t--)
            {
                last = calendar[t] < need ? t : last;
            }
        }

        return last;
    }
}
