namespace Bakehouse.Planner.Network;

/// <summary>Lists of activities by a time of each, by counting; those of one time keep the chart's order, so that lags are respected.</summary>
internal sealed class Sorting(Chart chart)
{
    private readonly int[] counts = new int[chart.Horizon + 2];

    /// <summary>By start.</summary>
    public void ByStart(int[] starts, int[] list) => Fill(starts, null, list);

    /// <summary>By end. Respects lags only if the chart is <see cref="Chart.EndToStart"/>.</summary>
    public void ByEnd(int[] starts, int[] list) => Fill(starts, chart.Length, list);

    private void Fill(int[] starts, int[]? lengths, int[] list)
    {
        var last = 0;
        for (var a = 0; a < starts.Length; a++)
        {
            var time = starts[a] + (lengths is null ? 0 : lengths[a]);
            counts[time + 1]++;
            last = Math.Max(last, time);
        }

        for (var t = 0; t <= last; t++)
        {
            counts[t + 1] += counts[t];
        }

        foreach (var a in chart.Order)
        {
            var time = starts[a] + (lengths is null ? 0 : lengths[a]);
            list[counts[time]++] = a;
        }

        Array.Clear(counts, 0, last + 2);
    }
}
