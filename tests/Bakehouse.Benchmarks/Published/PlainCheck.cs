using System.Globalization;
using Bakehouse.Planner.Network;

namespace Bakehouse.Benchmarks.Published;

/// <summary>Looks at a schedule from the net's own words, grain by grain; shares nothing with what makes schedules.</summary>
internal static class PlainCheck
{
    /// <summary>Throws, naming what is broken, unless the schedule keeps the net and ends as told.</summary>
    public static void Require(Net net, IReadOnlyList<int> starts, int end)
    {
        var broken = Broken(net, starts).ToList();
        if (starts.Count > 0 && starts.Select((s, a) => s + net.Activities[a].Modes[0].Length).Max() != end)
        {
            broken.Add(string.Create(CultureInfo.InvariantCulture, $"the end is not {end}"));
        }

        if (broken.Count > 0)
        {
            throw new InvalidOperationException("The schedule is none: " + string.Join("; ", broken));
        }
    }

    /// <summary>Everything that a schedule breaks, each activity in its first mode.</summary>
    public static IEnumerable<string> Broken(Net net, IReadOnlyList<int> starts)
    {
        if (starts.Count != net.Activities.Count)
        {
            return [string.Create(CultureInfo.InvariantCulture, $"{starts.Count} starts for {net.Activities.Count} activities")];
        }

        return Early(net, starts).Concat(Lags(net, starts)).Concat(Units(net, starts));
    }

    private static IEnumerable<string> Early(Net net, IReadOnlyList<int> starts) => net.Activities
        .Where((a, n) => starts[n] < a.From || starts[n] + a.Modes[0].Length > net.Horizon)
        .Select(a => $"{a.Name} starts too early or ends after the horizon");

    private static IEnumerable<string> Lags(Net net, IReadOnlyList<int> starts) => net.Lags
        .Where(l => starts[l.To] < starts[l.From] + l.Least + (l.AfterEnd ? net.Activities[l.From].Modes[0].Length : 0))
        .Select(l => string.Create(CultureInfo.InvariantCulture, $"lag of {l.Least} from {l.From} to {l.To}"));

    private static IEnumerable<string> Units(Net net, IReadOnlyList<int> starts)
    {
        for (var r = 0; r < net.Resources.Count; r++)
        {
            var taken = new int[net.Horizon];
            for (var a = 0; a < starts.Count; a++)
            {
                for (var t = starts[a]; t < Math.Min(net.Horizon, starts[a] + net.Activities[a].Modes[0].Length); t++)
                {
                    taken[t] += net.Activities[a].Modes[0].Demand[r];
                }
            }

            var over = -1;
            for (var t = 0; t < net.Horizon && over < 0; t++)
            {
                over = taken[t] > (net.Resources[r].Calendar?[t] ?? net.Resources[r].Capacity) ? t : -1;
            }

            if (over >= 0)
            {
                yield return string.Create(CultureInfo.InvariantCulture, $"{taken[over]} units of {net.Resources[r].Name} at {over}");
            }
        }
    }
}
