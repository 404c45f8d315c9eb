using System.CommandLine;
using System.Diagnostics;
using System.Globalization;
using Bakehouse.Benchmarks.Measured;
using Bakehouse.Planner.Network;

namespace Bakehouse.Benchmarks.Published;

/// <summary><c>psplib j30|j60 FOLDER</c>: gap above the optimum (j30) or the critical path (j60) by the schedules generated.</summary>
internal static class PsplibCommand
{
    private static readonly int[] Marks = [1, 10, 100, 1000, 5000, 50000];

    public static Command Build()
    {
        var set = new Argument<string>("set") { Description = "j30 or j60." };
        set.AcceptOnlyFromAmong("j30", "j60");
        var folder = new Argument<string>("folder") { Description = "Folder with the folder of the set's .sm files, and tables with ugent_*.csv." };
        var budget = new Option<int>("--budget") { Description = "Schedules an instance.", DefaultValueFactory = _ => 5000 };
        var seed = new Option<uint>("--seed") { DefaultValueFactory = _ => 1 };
        var threads = new Option<int>("--threads") { Description = "Instances at once; the results are the same.", DefaultValueFactory = _ => 1 };
        var to = new Option<string?>("--out") { Description = "Where to write the results." };
        var command = new Command("psplib", "Schedule each instance of a published single-mode set.") { set, folder, budget, seed, threads, to };
        command.SetAction(p =>
        {
            var name = p.GetRequiredValue(set);
            return Run(name, p.GetRequiredValue(folder), p.GetValue(budget), p.GetValue(seed), p.GetValue(threads), p.GetValue(to) ?? Path.Combine(ResultFolder.Path, name + ".csv"));
        });
        return command;
    }

    private static int Run(string set, string folder, int budget, uint seed, int threads, string to)
    {
        var nets = ProjectSet.Read(Path.Combine(folder, set), ".sm", SingleModeFile.Read);
        var known = Known.Ghent(Path.Combine(folder, "tables", set == "j30" ? "ugent_J30.csv" : "ugent_J60_1.csv"));
        var marks = Marks.Where(m => m <= budget).ToArray();
        Once(nets[0], seed, 1000, marks);
        var from = Stopwatch.GetTimestamp();
        var runs = nets.AsParallel().AsOrdered().WithDegreeOfParallelism(threads).Select(n => Once(n, seed, budget, marks)).ToList();
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{runs.Count} instances in {Stopwatch.GetElapsedTime(from).TotalSeconds:0.0} s"));
        using var file = new ResultFile(to, ["set", "instance", "seed", "budget", "critical_path", "best_known", "schedules", "seconds", .. marks.Select(m => string.Create(CultureInfo.InvariantCulture, $"n{m}"))]);
        foreach (var run in runs)
        {
            file.Row([set, run.Name, seed, budget, run.Path, known[run.Name].Best, run.Schedules, run.Seconds.ToString("0.0000", CultureInfo.InvariantCulture), .. run.Ends.Cast<object?>()]);
        }

        for (var m = 0; m < marks.Length; m++)
        {
            var column = m;
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{marks[m],6} schedules: {runs.Average(r => 100.0 * r.Ends[column] / r.Path - 100):0.000} % above the critical path, {runs.Average(r => 100.0 * r.Ends[column] / known[r.Name].Best!.Value - 100):0.000} % above the best known, {runs.Count(r => r.Ends[column] <= known[r.Name].Best)} at it or below"));
        }

        return 0;
    }

    private static ProjectRun Once((string Name, Net Net) project, uint seed, int budget, int[] marks)
    {
        var ends = new int[marks.Length];
        void Told(Found found)
        {
            for (var m = 0; m < marks.Length; m++)
            {
                ends[m] = found.Schedules <= marks[m] || ends[m] == 0 ? found.End : ends[m];
            }
        }

        var from = Stopwatch.GetTimestamp();
        var scheduled = Scheduler.Run(project.Net, seed, budget, Told);
        var seconds = Stopwatch.GetElapsedTime(from).TotalSeconds;
        PlainCheck.Require(project.Net, scheduled.Starts, scheduled.End);
        return new(project.Name, CriticalPath(project.Net), ends, scheduled.Schedules, seconds);
    }

    private static int CriticalPath(Net net)
    {
        var chart = new Chart(net, []);
        return chart.End(LongestPaths.Earliest(chart).Starts);
    }

    private sealed record ProjectRun(string Name, int Path, int[] Ends, int Schedules, double Seconds);
}
