using System.Globalization;
using Bakehouse.Planner.Network;

namespace Bakehouse.Benchmarks.Published;

/// <summary>
/// Reads the text format of the sets with least and most gaps (ProGen/max: Kolisch, Schwindt and Sprecher 1999; Franck, Neumann and
/// Schwindt 2001): gaps between starts, below 0 for a most gap; activities 0 and n + 1 have no length.
/// </summary>
internal static class GapsFile
{
    /// <summary>The net, or null and everything that is wrong.</summary>
    public static (Net? Net, IReadOnlyList<string> Wrong) Read(string text)
    {
        var file = new Figures(text);
        var head = file.Numbers(0);
        if (!file.Enough(0, head, 2, "the count of activities and of resources") || head[0] < 1 || head[1] < 0)
        {
            file.Note(0, "the count of activities and of resources should stand here.");
            return (null, file.Wrong);
        }

        var (count, resources) = (head[0] + 2, head[1]);
        var lags = Enumerable.Range(0, count).SelectMany(a => Lags(file, a, count)).ToList();
        var modes = Enumerable.Range(0, count).Select(a => Mode(file, a, count, resources)).ToList();
        var last = 1 + 2 * count;
        var units = file.Numbers(last);
        file.Enough(last, units, resources, "the units of each resource");
        if (file.Wrong.Count > 0)
        {
            return (null, file.Wrong);
        }

        Activity[] activities = [.. modes.Select((m, n) => new Activity(n.ToString(CultureInfo.InvariantCulture), [m!]))];
        Renewable[] all = [.. units.Take(resources).Select((u, n) => new Renewable(string.Create(CultureInfo.InvariantCulture, $"R{n + 1}"), u))];
        return (new Net(activities, lags, all, Horizon(modes, lags)), []);
    }

    private static IEnumerable<Lag> Lags(Figures file, int activity, int count)
    {
        var line = 1 + activity;
        var row = file.Numbers(line);
        if (!file.Enough(line, row, 3, "an activity with its modes and followers"))
        {
            yield break;
        }

        if (row[2] < 0 || row.Length != 3 + 2 * row[2])
        {
            file.Note(line, string.Create(CultureInfo.InvariantCulture, $"{row.Length - 3} numbers stand where {row[2]} followers and as many gaps are named."));
            yield break;
        }

        if (row[0] != activity || row[1] != 1)
        {
            file.Note(line, string.Create(CultureInfo.InvariantCulture, $"activity {row[0]} with {row[1]} modes stands where activity {activity} with one mode is due."));
        }

        for (var n = 0; n < row[2]; n++)
        {
            var follower = row[3 + n];
            if (follower < 0 || follower >= count)
            {
                file.Note(line, string.Create(CultureInfo.InvariantCulture, $"follower {follower} is none of {count} activities."));
            }

            yield return new Lag(activity, follower, row[3 + row[2] + n]);
        }
    }

    private static Mode? Mode(Figures file, int activity, int count, int resources)
    {
        var line = 1 + count + activity;
        var row = file.Numbers(line);
        if (!file.Enough(line, row, 3 + resources, "an activity with its length and demands"))
        {
            return null;
        }

        if (row[0] != activity || row.Skip(2).Any(v => v < 0))
        {
            file.Note(line, string.Create(CultureInfo.InvariantCulture, $"activity {activity} with nothing below 0 is due."));
        }

        return new Mode(row[2], row[3..(3 + resources)]);
    }

    /// <summary>If there is a schedule, there is one in which nothing waits longer than its length or the longest of its gaps.</summary>
    private static int Horizon(List<Mode?> modes, List<Lag> lags)
    {
        var longest = lags.GroupBy(l => l.From).ToDictionary(g => g.Key, g => g.Max(l => l.Least));
        return 1 + modes.Select((m, a) => Math.Max(m!.Length, longest.GetValueOrDefault(a))).Sum();
    }
}
