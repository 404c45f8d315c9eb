using System.CommandLine;
using System.Globalization;
using Bakehouse.Benchmarks.Measured;
using Bakehouse.Planner.Network;
using Bakehouse.Testing;

namespace Bakehouse.Benchmarks.Published;

/// <summary><c>psplib j30|j60 FOLDER</c>: gap above the optimum (j30) or the critical path (j60) by the schedules generated.</summary>
internal static class PsplibCommand
{
    /// <summary>Budgets that are usual in print, and one below. Each is a search of its own.</summary>
    private static readonly int[] Usual = [100, 1000, 5000, 50000];

    private const int SpeedAt = 1000;

    public static Command Build()
    {
        var set = new Argument<string>("set") { Description = "j30 or j60." };
        set.AcceptOnlyFromAmong("j30", "j60");
        var folder = new Argument<string>("folder") { Description = "Folder with the folder of the set's .sm files, and tables with ugent_*.csv." };
        var budgets = new Option<int[]>("--budgets") { Description = "Schedules an instance.", AllowMultipleArgumentsPerToken = true, DefaultValueFactory = _ => Usual };
        var seed = new Option<uint>("--seed") { DefaultValueFactory = _ => 1 };
        var threads = new Option<int>("--threads") { Description = "Instances at once; the schedules are the same.", DefaultValueFactory = _ => 1 };
        var to = new Option<string?>("--out") { Description = "Where to write the results." };
        var command = new Command("psplib", "Schedule each instance of a published single-mode set.") { set, folder, budgets, seed, threads, to };
        command.SetAction(p =>
        {
            var name = p.GetRequiredValue(set);
            return Run(name, p.GetRequiredValue(folder), p.GetRequiredValue(budgets), p.GetValue(seed), p.GetValue(threads), p.GetValue(to) ?? Path.Combine(ResultFolder.Path, name + ".csv"));
        });
        return command;
    }

    private static int Run(string set, string folder, int[] budgets, uint seed, int threads, string to)
    {
        var nets = ProjectSet.Read(Path.Combine(folder, set), ".sm", SingleModeFile.Read);
        var known = Known.Ghent(Path.Combine(folder, "tables", set == "j30" ? "ugent_J30.csv" : "ugent_J60_1.csv"));
        Once(nets[0], seed, [20000]); // The first run compiles the program.
        var loop = Yardstick.MillionSteps();
        var runs = nets.AsParallel().AsOrdered().WithDegreeOfParallelism(threads).Select(n => Once(n, seed, budgets)).ToList();
        loop = Math.Max(loop, Yardstick.MillionSteps());
        using var file = new ResultFile(to, ["set", "instance", "seed", "million_loop_steps_a_second", "critical_path", "best_known", .. budgets.SelectMany(b => new[] { "end", "schedules", "worked_s" }, (b, of) => string.Create(CultureInfo.InvariantCulture, $"{of}_{b}"))]);
        foreach (var run in runs)
        {
            file.Row([set, run.Name, seed, loop.ToString("0", CultureInfo.InvariantCulture), run.Path, known[run.Name].Best, .. run.Searches.SelectMany(s => new object?[] { s.End, s.Schedules, s.Seconds.ToString("0.0000", CultureInfo.InvariantCulture) })]);
        }

        for (var b = 0; b < budgets.Length; b++)
        {
            Tell(budgets[b], [.. runs.Select(r => (r.Path, Best: known[r.Name].Best!.Value, Search: r.Searches[b]))], loop);
        }

        return 0;
    }

    private static void Tell(int budget, List<(int Path, int Best, Search Search)> runs, double loop)
    {
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{budget,6} schedules: {runs.Average(r => 100.0 * r.Search.End / r.Path - 100):0.000} % above the critical path, {runs.Average(r => 100.0 * r.Search.End / r.Best - 100):0.000} % above the best known, {runs.Count(r => r.Search.End <= r.Best)} at it or below"));
        var open = runs.Where(r => r.Search.End > r.Path && r.Search.Schedules >= SpeedAt).ToList();
        if (budget == SpeedAt && open.Count > 0)
        {
            var speed = open.Sum(r => r.Search.Schedules) / open.Sum(r => r.Search.Seconds);
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"       on {open.Count} still open after them: {1e3 * SpeedAt / speed:0.00} ms for 1,000 schedules, {speed:0} schedules a second; in the time of one, a fixed loop makes {1e6 * loop / speed:0} steps"));
        }
    }

    private static ProjectRun Once((string Name, Net Net) project, uint seed, int[] budgets)
    {
        var searches = budgets.Select(b =>
        {
            var work = ThreadTime.Start();
            var scheduled = Scheduler.Run(project.Net, seed, b);
            var seconds = work.Seconds;
            PlainCheck.Require(project.Net, scheduled.Starts, scheduled.End);
            return new Search(scheduled.End, scheduled.Schedules, seconds);
        }).ToList();
        var chart = new Chart(project.Net, []);
        return new(project.Name, chart.End(LongestPaths.Earliest(chart).Starts), searches);
    }

    private sealed record Search(int End, int Schedules, double Seconds);

    private sealed record ProjectRun(string Name, int Path, List<Search> Searches);
}
