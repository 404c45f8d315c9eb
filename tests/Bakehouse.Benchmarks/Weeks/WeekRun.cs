using System.Diagnostics;
using Bakehouse.Domain.Planning;
using Bakehouse.Planner.Quick;

namespace Bakehouse.Benchmarks.Weeks;

/// <summary>One week planned once and judged.</summary>
/// <param name="Levels">Null if there is no plan.</param>
/// <param name="Seconds">Elapsed.</param>
/// <param name="Worked">Seconds of the processor, all threads.</param>
/// <param name="Stopped">True if the wall time ended the search, so that another run may end elsewhere.</param>
internal sealed record WeekRun(string Name, Week Week, Levels? Levels, double Seconds, double Worked, bool Stopped)
{
    /// <summary>Minutes after now in which a repair leaves the wall calm.</summary>
    private const int Calm = 120;

    /// <summary>Plans the week, or mends it if it asks for a repair.</summary>
    /// <param name="path">The week's file.</param>
    /// <param name="budget">Places that the planner may try.</param>
    /// <param name="wall">Longest elapsed time.</param>
    public static WeekRun Of(string path, long budget, TimeSpan wall)
    {
        var (week, problems) = WeekFile.Read(File.ReadAllText(path));
        if (week is null)
        {
            throw new InvalidDataException($"{path}: {string.Join(' ', problems)}");
        }

        using var cap = new CancellationTokenSource(wall);
        var planner = new QuickPlanner(budget);
        var (from, worked) = (Stopwatch.GetTimestamp(), ProcessorSeconds());
        var plan = (week.Repair ? planner.Repair(week, week.Now + Calm, cap.Token) : planner.Plan(week, cap.Token)).Plan;
        var (seconds, work) = (Stopwatch.GetElapsedTime(from).TotalSeconds, ProcessorSeconds() - worked);
        return new(Path.GetFileNameWithoutExtension(path), week, plan is null ? null : Judged(week, plan), seconds, work, cap.IsCancellationRequested);
    }

    /// <summary>A plan that breaks a rule keeps its L0; it is shown, never hidden.</summary>
    private static Levels Judged(Week week, Plan plan) => Judge.Examine(week, plan).Levels;

    private static double ProcessorSeconds()
    {
        using var process = Process.GetCurrentProcess();
        return process.TotalProcessorTime.TotalSeconds;
    }
}
