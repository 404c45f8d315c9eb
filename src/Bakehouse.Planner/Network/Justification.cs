namespace Bakehouse.Planner.Network;

/// <summary>
/// Double justification (Valls, Ballestin and Quintanilla 2005): every activity as late as may be without moving the end, the last
/// ones first, then every activity as early as may be. With lags from end to start the schedule never gets longer.
/// </summary>
internal sealed class Justification(Chart chart)
{
    private readonly SerialScheme scheme = new(chart);
    private readonly Sorting sorting = new(chart);
    private readonly int[] list = new int[chart.Count];
    private readonly int[] late = new int[chart.Count];
    private readonly int[] early = new int[chart.Count];

    /// <summary>Generated schedules of one call.</summary>
    public const int Passes = 2;

    /// <summary>Justifies in place; leaves the schedule alone where it would get longer.</summary>
    /// <returns>Its end.</returns>
    public int Justify(int[] starts)
    {
        var end = chart.End(starts);
        if (chart.EndToStart)
        {
            sorting.ByEnd(starts, list);
        }
        else
        {
            sorting.ByStart(starts, list);
        }

        if (!scheme.Backward(list, end, late))
        {
            return end;
        }

        sorting.ByStart(late, list);
        if (!scheme.Forward(list, early) || chart.End(early) is var now && now > end)
        {
            return end;
        }

        early.CopyTo(starts, 0);
        return now;
    }
}
