using Bakehouse.Planner.Network;
using CsCheck;

namespace Bakehouse.Planner.Tests.Network;

/// <summary>Nets small enough to try every schedule there is.</summary>
internal static class TinyNets
{
    private const int Horizon = 12;

    /// <summary>Lags from end to start, resources that are always there.</summary>
    public static readonly Gen<Net> Plain = Of(false, false, false);

    /// <summary>Lags of any length at or above 0 between starts, resources with calendars, first starts.</summary>
    public static readonly Gen<Net> Calendars = Of(true, false, true);

    /// <summary>Least and most gaps; many can't be kept.</summary>
    public static readonly Gen<Net> Gaps = Of(true, true, false);

    /// <summary>Least and most gaps, and resources with calendars.</summary>
    public static readonly Gen<Net> Both = Of(true, true, true);

    /// <summary>The earliest end of all schedules there are, by trying each; null if there is none.</summary>
    public static int? Best(Net net)
    {
        var best = int.MaxValue;
        Try(net, new int[net.Activities.Count], 0, ref best);
        return best == int.MaxValue ? null : best;
    }

    private static void Try(Net net, int[] starts, int activity, ref int best)
    {
        if (activity == starts.Length)
        {
            var end = starts.Select((s, a) => s + net.Activities[a].Modes[0].Length).Max();
            best = end < best && !Benchmarks.Published.PlainCheck.Broken(net, starts).Any() ? end : best;
            return;
        }

        for (var start = net.Activities[activity].From; start + net.Activities[activity].Modes[0].Length <= net.Horizon; start++)
        {
            starts[activity] = start;
            if (net.Lags.All(l => Math.Max(l.From, l.To) > activity || starts[l.To] >= starts[l.From] + l.Least + (l.AfterEnd ? net.Activities[l.From].Modes[0].Length : 0)))
            {
                Try(net, starts, activity + 1, ref best);
            }
        }
    }

    private static Gen<Net> Of(bool free, bool gaps, bool calendars) =>
        from count in Gen.Int[2, 4]
        from lengths in Gen.Int[0, 3].Array[count]
        from demands in Gen.Int[0, 3].Array[count * 2]
        from froms in Gen.Int[0, 2].Array[count]
        from pairs in Gen.Select(Gen.Int[0, count - 1], Gen.Int[0, count - 1], Gen.Int[0, 4]).Array[0, 4]
        from away in Gen.Int[0, 3].Array[Horizon]
        select new Net(
            [.. lengths.Select((l, a) => new Activity($"a{a}", [new Mode(l, [demands[2 * a], demands[2 * a + 1]])], free ? froms[a] : 0))],
            [.. pairs.Where(p => p.Item1 != p.Item2).SelectMany(p => Lags(Math.Min(p.Item1, p.Item2), Math.Max(p.Item1, p.Item2), p.Item3, free, gaps))],
            [new Renewable("r", 4), new Renewable("s", 3, calendars ? [.. away.Select(u => u == 0 ? 1 : 3)] : null)],
            Horizon);

    private static IEnumerable<Lag> Lags(int early, int late, int least, bool free, bool gaps)
    {
        yield return free ? new Lag(early, late, least) : new Lag(early, late, least % 2, AfterEnd: true);
        if (gaps && least % 2 == 0)
        {
            yield return new Lag(late, early, -least - (early + late) % 2);
        }
    }
}
