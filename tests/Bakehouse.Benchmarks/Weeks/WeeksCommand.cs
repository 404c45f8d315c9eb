using System.CommandLine;
using System.Globalization;
using Bakehouse.Benchmarks.Measured;
using Bakehouse.Domain.Planning;
using Bakehouse.Planner.Quick;

namespace Bakehouse.Benchmarks.Weeks;

/// <summary><c>weeks FOLDER</c>: plans every bakery week of a folder and sets the Judge's levels beside two plain planners.</summary>
internal static class WeeksCommand
{
    private static readonly string[] Columns =
    [
        "week", "orders", "steps", "budget", "units", "wall_s", "seconds", "worked_s", "ended",
        .. Levels(""), .. Levels("rule_"), .. Levels("solver_"), "against_rule", "against_solver",
    ];

    public static Command Build()
    {
        var folder = new Argument<string>("folder") { Description = "Folder of week files (bakery-week/1)." };
        var only = new Option<string[]>("--only") { Description = "Weeks whose names begin so, e.g. small busy-050.", AllowMultipleArgumentsPerToken = true };
        var wall = new Option<double>("--wall") { Description = "Longest time a week, in seconds.", DefaultValueFactory = _ => 5 };
        var budget = new Option<long>("--budget") { Description = "Places that the quick engine may try; half of it in a small week, a fortieth in a tiny one, three times in a large one.", DefaultValueFactory = _ => 4 * QuickPlanner.UsualBudget };
        var units = new Option<double>("--units") { Description = "Units of the solver, some seconds of two processors each.", DefaultValueFactory = _ => 100 };
        var to = new Option<string>("--out") { Description = "Where to write the results.", DefaultValueFactory = _ => Path.Combine(ResultFolder.Path, "weeks.csv") };
        var command = new Command("weeks", "Plan each bakery week of a folder, judge it, and compare it with two plain planners.") { folder, only, wall, budget, units, to };
        command.SetAction(p => Run(Weeks(p.GetRequiredValue(folder), p.GetValue(only) ?? []), p.GetValue(budget), p.GetValue(units), TimeSpan.FromSeconds(p.GetValue(wall)), p.GetRequiredValue(to)));
        return command;
    }

    private static IEnumerable<string> Levels(string of) => Enumerable.Range(0, 7).Select(n => $"{of}L{n.ToString(CultureInfo.InvariantCulture)}");

    private static List<string> Weeks(string folder, string[] only) =>
        [.. Directory.EnumerateFiles(folder, "*.json")
            .Where(f => only.Length == 0 || only.Any(o => Path.GetFileName(f).StartsWith(o, StringComparison.Ordinal)))
            .Order(StringComparer.Ordinal)];

    private static int Run(List<string> weeks, long budget, double units, TimeSpan wall, string to)
    {
        if (weeks.Count == 0)
        {
            Console.Error.WriteLine("The folder holds no such week.");
            return 2;
        }

        var peers = Peers.Read();
        var tally = new Tally();
        WeekRun.Of(weeks[0], 1000, 0.1, wall); // The first run compiles the program.
        using var file = new ResultFile(to, Columns);
        foreach (var run in weeks.Select(w => WeekRun.Of(w, budget, units, wall)))
        {
            var peer = peers.GetValueOrDefault(run.Name) ?? new Peers(null, null);
            tally.Count(run, peer);
            file.Row(Row(run, peer, budget, units, wall));
            Console.WriteLine($"{run.Name}: {Told(run.Levels)} | rule {Told(peer.Rule)} | solver {Told(peer.Solver)} | {run.Seconds:0.00} s({run.Ended})");
        }

        Console.Write(tally);
        return 0;
    }

    private static IEnumerable<object?> Row(WeekRun run, Peers peer, long budget, double units, TimeSpan wall) =>
    [
        run.Name, run.Week.Orders.Count, run.Week.Steps.Count, budget, units, wall.TotalSeconds, run.Seconds.ToString("0.000", CultureInfo.InvariantCulture),
        run.Worked.ToString("0.000", CultureInfo.InvariantCulture), run.Ended,
        .. Cells(run.Levels), .. Cells(peer.Rule), .. Cells(peer.Solver),
        Comparison.Words(run.Levels, peer.Rule, run.Week.Repair), Comparison.Words(run.Levels, peer.Solver, run.Week.Repair),
    ];

    private static IEnumerable<object?> Cells(Levels? levels) => levels is { } l ? Comparison.Cells(l).Cast<object?>() : Enumerable.Repeat<object?>(null, 7);

    private static string Told(Levels? levels) => levels is { } l ? string.Join('/', Comparison.Cells(l)) : "no plan";
}
