namespace Bakehouse.Planner.Network;

/// <summary>Ends that no schedule can beat, beside the longest path.</summary>
internal static class Bounds
{
    /// <summary>When a resource has given as many units as all activities take of it.</summary>
    public static int Work(Chart chart)
    {
        var bound = 0;
        for (var r = 0; r < chart.Net.Resources.Count; r++)
        {
            var left = Enumerable.Range(0, chart.Count).Sum(a => (long)chart.Demand(a, r) * chart.Length[a]);
            var grain = 0;
            for (; left > 0 && grain < chart.Horizon; grain++)
            {
                left -= chart.Net.Resources[r].Calendar is { } c ? c[grain] : chart.Net.Resources[r].Capacity;
            }

            bound = Math.Max(bound, grain);
        }

        return bound;
    }
}
