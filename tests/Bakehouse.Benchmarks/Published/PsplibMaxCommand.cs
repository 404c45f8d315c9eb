using System.CommandLine;
using System.Diagnostics;
using System.Globalization;
using Bakehouse.Benchmarks.Measured;
using Bakehouse.Planner.Network;

namespace Bakehouse.Benchmarks.Published;

/// <summary><c>psplibmax j10|j20|ubo50|ubo100 FOLDER</c>: which instances with least and most gaps get a schedule, how soon, how good.</summary>
internal static class PsplibMaxCommand
{
    private static readonly Dictionary<string, string> Tables = new(StringComparer.Ordinal)
    {
        ["j10"] = "kobe_optimum_sm_j10.csv", ["j20"] = "kobe_optimum_sm_j20.csv", ["ubo50"] = "kobe_optimum_testset_ubo50.csv", ["ubo100"] = "kobe_optimum_testset_ubo100.csv",
    };

    public static Command Build()
    {
        var set = new Argument<string>("set") { Description = string.Join(" or ", Tables.Keys) };
        set.AcceptOnlyFromAmong([.. Tables.Keys]);
        var folder = new Argument<string>("folder") { Description = "Folder with the folder of the set's .sch files, and tables with the best ends known." };
        var budget = new Option<int>("--budget") { Description = "Schedules an instance.", DefaultValueFactory = _ => 5000 };
        var seed = new Option<uint>("--seed") { DefaultValueFactory = _ => 1 };
        var to = new Option<string?>("--out") { Description = "Where to write the results." };
        var command = new Command("psplibmax", "Schedule each instance of a published set with least and most gaps.") { set, folder, budget, seed, to };
        command.SetAction(p =>
        {
            var name = p.GetRequiredValue(set);
            return Run(name, p.GetRequiredValue(folder), p.GetValue(budget), p.GetValue(seed), p.GetValue(to) ?? Path.Combine(ResultFolder.Path, "max_" + name + ".csv"));
        });
        return command;
    }

    private static int Run(string set, string folder, int budget, uint seed, string to)
    {
        var nets = ProjectSet.Read(Path.Combine(folder, set), ".sch", GapsFile.Read);
        var known = Known.Optimum(Path.Combine(folder, "tables", Tables[set]));
        Once(nets[0], known[nets[0].Name], seed, budget);
        var runs = nets.Select(n => Once(n, known[n.Name], seed, budget)).ToList();
        using var file = new ResultFile(to, ["set", "instance", "seed", "budget", "best_known", "ending", "end", "bound", "schedules", "first_s", "seconds"]);
        foreach (var r in runs)
        {
            file.Row([set, r.Name, seed, budget, r.Known.Unsolvable ? "none" : r.Known.Best, r.Found.Ending, r.Found.Ending == Ending.Found ? r.Found.End : null, r.Found.Bound, r.Found.Schedules, Seconds(r.First), Seconds(r.Whole)]);
        }

        Console.Write(Told(runs));
        return 0;
    }

    private static string Told(List<GapRun> runs)
    {
        var (found, with) = (runs.Where(r => r.Found.Ending == Ending.Found).ToList(), runs.Where(r => !r.Known.Unsolvable).ToList());
        return string.Create(CultureInfo.InvariantCulture, $"""
            {runs.Count} instances, {with.Count} with a schedule: {found.Count(r => !r.Known.Unsolvable)} found, first after {found.Max(r => r.First):0.000} s at most; mean {found.Where(r => r.Known.Best > 0).Average(r => 100.0 * r.Found.End / r.Known.Best!.Value - 100):0.000} % above the best known, {found.Count(r => r.Found.End <= r.Known.Best)} at it or below, {found.Count(r => r.Found.Bound == r.Found.End)} proved
            {runs.Count - with.Count} without a schedule: {found.Count(r => r.Known.Unsolvable)} given one, {runs.Count(r => r.Known.Unsolvable && r.Found.Ending == Ending.Impossible)} proved to have none
            all in {runs.Sum(r => r.Whole):0.0} s, the longest {runs.Max(r => r.Whole):0.00} s

            """);
    }

    private static GapRun Once((string Name, Net Net) project, Known known, uint seed, int budget)
    {
        var from = Stopwatch.GetTimestamp();
        double? first = null;
        var found = Scheduler.Run(project.Net, seed, budget, _ => first ??= Stopwatch.GetElapsedTime(from).TotalSeconds);
        var whole = Stopwatch.GetElapsedTime(from).TotalSeconds;
        if (found.Ending == Ending.Found)
        {
            PlainCheck.Require(project.Net, found.Starts, found.End);
        }

        return new(project.Name, known, found, first, whole);
    }

    private static string? Seconds(double? seconds) => seconds?.ToString("0.0000", CultureInfo.InvariantCulture);

    private sealed record GapRun(string Name, Known Known, Scheduled Found, double? First, double Whole);
}
