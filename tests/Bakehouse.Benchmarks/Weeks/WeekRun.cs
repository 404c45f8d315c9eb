using System.Diagnostics;
using Bakehouse.Domain.Planning;
using Bakehouse.Planner;
using Bakehouse.Planner.Solver;

namespace Bakehouse.Benchmarks.Weeks;

/// <summary>One week planned once and judged.</summary>
/// <param name="Levels">Null if there is no plan.</param>
/// <param name="Seconds">Elapsed.</param>
/// <param name="Worked">Seconds of the processor, all threads, without the solving process.</param>
/// <param name="Ended">What ended the search: proved, budget, or time, so that another run may end elsewhere.</param>
internal sealed record WeekRun(string Name, Week Week, Levels? Levels, double Seconds, double Worked, string Ended)
{
    /// <summary>Plans the week, or mends it if it asks for a repair.</summary>
    /// <param name="path">The week's file.</param>
    /// <param name="budget">Places that the quick engine may try.</param>
    /// <param name="units">Units of the solver.</param>
    /// <param name="wall">Longest elapsed time.</param>
    public static WeekRun Of(string path, long budget, double units, TimeSpan wall)
    {
        var (week, problems) = WeekFile.Read(File.ReadAllText(path));
        if (week is null)
        {
            throw new InvalidDataException($"{path}: {string.Join(' ', problems)}");
        }

        var planner = new ThoroughPlanner(SolverProcess.OfThisProgram(), budget);
        var (from, worked) = (Stopwatch.GetTimestamp(), ProcessorSeconds());
        var found = planner.Plan(week, units, wall).GetAwaiter().GetResult();
        var (seconds, work) = (Stopwatch.GetElapsedTime(from).TotalSeconds, ProcessorSeconds() - worked);
        if (found.Trouble is { } trouble)
        {
            Console.Error.WriteLine($"{path}: {trouble}");
        }

        var plan = found.Outcome.Plan;
        return new(Path.GetFileNameWithoutExtension(path), week, plan is null ? null : Judged(week, plan), seconds, work, found.Proved ? "proved" : found.Stopped ? "time" : "budget");
    }

    /// <summary>A plan that breaks a rule keeps its L0; it is shown, never hidden.</summary>
    private static Levels Judged(Week week, Plan plan) => Judge.Examine(week, plan).Levels;

    private static double ProcessorSeconds()
    {
        using var process = Process.GetCurrentProcess();
        return process.TotalProcessorTime.TotalSeconds;
    }
}
