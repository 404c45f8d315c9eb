using System.Globalization;

namespace Bakehouse.Planner.Network;

/// <summary>Everything that keeps a net from being one.</summary>
internal static class NetChecks
{
    /// <summary>Most units of a resource: four of them are counted in one machine word.</summary>
    public const int MostUnits = 0x7fff;

    public static IEnumerable<string> Of(Net net) => Horizon(net).Concat(Resources(net)).Concat(Activities(net)).Concat(Lags(net));

    private static IEnumerable<string> Horizon(Net net) => net.Horizon > 0 ? [] : [Say($"The horizon {net.Horizon} must be above 0.")];

    private static IEnumerable<string> Resources(Net net)
    {
        foreach (var r in net.Resources)
        {
            if (r.Capacity is < 0 or > MostUnits)
            {
                yield return Say($"Resource {r.Name} has {r.Capacity} units; 0 to {MostUnits} can be counted.");
            }

            if (r.Calendar is { } c && (c.Count != net.Horizon || c.Any(u => u < 0 || u > r.Capacity)))
            {
                yield return Say($"The calendar of resource {r.Name} must say 0 to {r.Capacity} units for each of {net.Horizon} grains.");
            }
        }
    }

    private static IEnumerable<string> Activities(Net net)
    {
        foreach (var a in net.Activities)
        {
            if (a.Modes.Count == 0)
            {
                yield return Say($"Activity {a.Name} has no mode.");
            }

            if (a.From < 0)
            {
                yield return Say($"Activity {a.Name} may start at {a.From}, before 0.");
            }

            foreach (var mode in a.Modes.Where(m => m.Length < 0 || m.Demand.Count != net.Resources.Count || m.Demand.Any(d => d is < 0 or > MostUnits)))
            {
                yield return Say($"A mode of activity {a.Name} takes {mode.Length} grains and {string.Join(' ', mode.Demand)} of {net.Resources.Count} resources: one figure each, from 0 to {MostUnits}.");
            }
        }
    }

    private static IEnumerable<string> Lags(Net net) => net.Lags
        .Where(l => l.From < 0 || l.From >= net.Activities.Count || l.To < 0 || l.To >= net.Activities.Count)
        .Select(l => Say($"The lag from {l.From} to {l.To} names an activity that is not there: 0 to {net.Activities.Count - 1}."));

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
