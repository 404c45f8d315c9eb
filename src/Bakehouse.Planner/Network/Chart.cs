namespace Bakehouse.Planner.Network;

/// <summary>
/// A net in which each activity has its mode, as plain arrays: what the schemes read. Lags are kept twice, by the later and by the
/// earlier activity; resources are packed four to a machine word.
/// </summary>
internal sealed class Chart
{
    private readonly Mode[] chosen;

    /// <param name="modes">By activity; empty for the first of each.</param>
    /// <param name="net">What is charted.</param>
    public Chart(Net net, ReadOnlySpan<int> modes)
    {
        Net = net;
        Count = net.Activities.Count;
        Horizon = net.Horizon;
        chosen = new Mode[Count];
        for (var a = 0; a < Count; a++)
        {
            chosen[a] = net.Activities[a].Modes[modes.IsEmpty ? 0 : modes[a]];
        }

        Length = [.. chosen.Select(m => m.Length)];
        From = [.. net.Activities.Select(a => a.From)];
        var lags = net.Lags.Select(l => l with { Least = l.AfterEnd ? l.Least + Length[l.From] : l.Least, AfterEnd = false }).ToArray();
        Before = new Sides(Count, lags, l => l.To, l => l.From);
        After = new Sides(Count, lags, l => l.From, l => l.To);
        Needs = new Needs(net, chosen);
        Order = Topological();
        Listed = Order.Length == Count && Array.TrueForAll(lags, l => l.Least >= 0);
        EndToStart = Array.TrueForAll(lags, l => l.Least >= Length[l.From]);
        Steady = net.Resources.All(r => r.Calendar is null);
    }

    public Net Net { get; }

    public int Count { get; }

    public int Horizon { get; }

    /// <summary>Grains by activity.</summary>
    public int[] Length { get; }

    /// <summary>First start by activity.</summary>
    public int[] From { get; }

    /// <summary>Lags by their later activity: others that come before.</summary>
    public Sides Before { get; }

    /// <summary>Lags by their earlier activity: others that come after.</summary>
    public Sides After { get; }

    public Needs Needs { get; }

    /// <summary>Activities so that each stands after those it has lags from; shorter if lags run in a circle.</summary>
    public int[] Order { get; }

    /// <summary>True if no lag is below 0 and none run in a circle: whatever starts earlier can be placed first.</summary>
    public bool Listed { get; }

    /// <summary>True if each lag reaches past the end of its earlier activity.</summary>
    public bool EndToStart { get; }

    /// <summary>True if no resource has a calendar.</summary>
    public bool Steady { get; }

    /// <summary>Units that an activity takes of a resource.</summary>
    public int Demand(int activity, int resource) => chosen[activity].Demand[resource];

    /// <summary>End of the last activity.</summary>
    public int End(ReadOnlySpan<int> starts)
    {
        var end = 0;
        for (var a = 0; a < starts.Length; a++)
        {
            end = Math.Max(end, starts[a] + Length[a]);
        }

        return end;
    }

    private int[] Topological()
    {
        var open = new int[Count];
        for (var a = 0; a < Count; a++)
        {
            open[a] = Before.At[a + 1] - Before.At[a];
        }

        var order = new List<int>(Enumerable.Range(0, Count).Where(a => open[a] == 0));
        for (var next = 0; next < order.Count; next++)
        {
            for (var k = After.At[order[next]]; k < After.At[order[next] + 1]; k++)
            {
                if (--open[After.Other[k]] == 0)
                {
                    order.Add(After.Other[k]);
                }
            }
        }

        return [.. order];
    }
}

/// <summary>Lags of each activity on one side: those of a stand from At[a] to At[a + 1].</summary>
internal sealed class Sides
{
    public Sides(int count, Lag[] lags, Func<Lag, int> own, Func<Lag, int> other)
    {
        var sorted = lags.OrderBy(own).ThenBy(other).ToArray();
        At = new int[count + 1];
        foreach (var lag in sorted)
        {
            At[own(lag) + 1]++;
        }

        for (var a = 0; a < count; a++)
        {
            At[a + 1] += At[a];
        }

        Other = [.. sorted.Select(other)];
        Least = [.. sorted.Select(l => l.Least)];
    }

    public int[] At { get; }

    public int[] Other { get; }

    public int[] Least { get; }
}
