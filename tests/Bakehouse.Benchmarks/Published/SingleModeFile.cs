using System.Globalization;
using Bakehouse.Planner.Network;

namespace Bakehouse.Benchmarks.Published;

/// <summary>
/// Reads the single-mode text format of PSPLIB (Kolisch and Sprecher 1997, EJOR 96, 205-216): precedence from end to start,
/// renewable resources of constant capacity, first and last activity of no length.
/// </summary>
internal static class SingleModeFile
{
    /// <summary>The net, or null and everything that is wrong.</summary>
    public static (Net? Net, IReadOnlyList<string> Wrong) Read(string text)
    {
        var file = new Figures(text);
        var jobs = Told(file, "jobs ");
        var resources = Told(file, "- renewable");
        var lags = Precedence(file, jobs);
        var modes = Requests(file, jobs, resources);
        var units = Availabilities(file, resources);
        if (file.Wrong.Count > 0)
        {
            return (null, file.Wrong);
        }

        Activity[] activities = [.. modes.Select((m, n) => new Activity((n + 1).ToString(CultureInfo.InvariantCulture), [m]))];
        Renewable[] all = [.. units.Select((u, n) => new Renewable(string.Create(CultureInfo.InvariantCulture, $"R{n + 1}"), u))];
        return (new Net(activities, lags, all, Math.Max(1, modes.Sum(m => m.Length))), []);
    }

    private static int Told(Figures file, string beginning)
    {
        var line = file.Find(beginning);
        if (line < 0)
        {
            return 0;
        }

        var words = file.Line(line)[(file.Line(line).IndexOf(':', StringComparison.Ordinal) + 1)..].Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (words.Length > 0 && int.TryParse(words[0], NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number > 0)
        {
            return number;
        }

        file.Note(line, "a number above 0 should stand after the colon.");
        return 0;
    }

    private static List<Lag> Precedence(Figures file, int jobs)
    {
        var lags = new List<Lag>();
        var head = file.Find("PRECEDENCE RELATIONS");
        for (var job = 1; head >= 0 && job <= jobs; job++)
        {
            var (line, row) = (head + 1 + job, file.Numbers(head + 1 + job));
            if (!file.Enough(line, row, 3, "an activity with its modes and followers"))
            {
                continue;
            }

            if (row.Length != 3 + row[2])
            {
                file.Note(line, string.Create(CultureInfo.InvariantCulture, $"{row.Length - 3} followers stand where {row[2]} are named."));
            }

            if (row[0] != job || row[1] != 1)
            {
                file.Note(line, string.Create(CultureInfo.InvariantCulture, $"activity {row[0]} with {row[1]} modes stands where activity {job} with one mode is due."));
            }

            foreach (var follower in row.Skip(3))
            {
                if (follower < 1 || follower > jobs)
                {
                    file.Note(line, string.Create(CultureInfo.InvariantCulture, $"follower {follower} is none of {jobs} activities."));
                }

                lags.Add(new Lag(job - 1, follower - 1, 0, AfterEnd: true));
            }
        }

        return lags;
    }

    private static List<Mode> Requests(Figures file, int jobs, int resources)
    {
        var modes = new List<Mode>();
        var head = file.Find("REQUESTS/DURATIONS");
        for (var job = 1; head >= 0 && job <= jobs; job++)
        {
            var (line, row) = (head + 2 + job, file.Numbers(head + 2 + job));
            if (!file.Enough(line, row, 3 + resources, "an activity with its length and demands"))
            {
                continue;
            }

            if (row[0] != job || row.Skip(2).Any(v => v < 0))
            {
                file.Note(line, string.Create(CultureInfo.InvariantCulture, $"activity {job} with nothing below 0 is due."));
            }

            modes.Add(new Mode(row[2], row[3..(3 + resources)]));
        }

        return modes;
    }

    private static int[] Availabilities(Figures file, int resources)
    {
        var head = file.Find("RESOURCEAVAILABILITIES");
        var row = head < 0 ? [] : file.Numbers(head + 2);
        return head >= 0 && file.Enough(head + 2, row, resources, "the units of each resource") ? row[..resources] : [];
    }
}
