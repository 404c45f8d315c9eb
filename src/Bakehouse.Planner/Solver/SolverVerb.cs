using System.Text.Json;
using Bakehouse.Domain.Planning;

namespace Bakehouse.Planner.Solver;

/// <summary>
/// What the process does that solves: it reads one line with a week and a plan, and writes a line for each better plan. It is a process of
/// its own because the solver's library can end the process that it is in.
/// </summary>
public static class SolverVerb
{
    /// <summary>The argument that starts it; it stands in no help, since only the program itself asks for it.</summary>
    public const string Name = "solve";

    /// <summary>What the process ends with if the program that asked has gone.</summary>
    public const int Left = 3;

    private const int Unreadable = 2;

    /// <summary>Reads, solves and writes; 0 when done, 2 if the line can't be read.</summary>
    /// <param name="left">Called once the input ends: whoever asked keeps it open, so nobody listens any more.</param>
    public static int Run(TextReader input, TextWriter output, Action left)
    {
        if (JsonSerializer.Deserialize<SolverAsked>(input.ReadLine() ?? "null") is not { } asked
            || WeekFile.Read(asked.Week).Week is not { } week || PlanFile.Read(asked.Plan).Plan is not { } plan)
        {
            return Unreadable;
        }

        new Thread(() => Listen(input, left)) { IsBackground = true }.Start();

        void Say(SolverTold told)
        {
            output.WriteLine(JsonSerializer.Serialize(told));
            output.Flush();
        }

        var pair = new Pair(week, plan, asked.Seed, p => Say(new SolverTold(PlanFile.Write(p), false, false)));
        var proved = pair.Run(asked.Units);
        Say(new SolverTold(PlanFile.Write(pair.Best), true, proved));
        return 0;
    }

    /// <summary>A program that is killed can't end its processes: they hear it by their input.</summary>
    private static void Listen(TextReader input, Action left)
    {
        input.ReadToEnd();
        left();
    }
}

/// <summary>The line that the solving process reads: a week and a plan as their files, the seed, and how long to search.</summary>
internal sealed record SolverAsked(string Week, string Plan, uint Seed, double Units);

/// <summary>A line that it writes: a better plan as its file; the last one stands for all equals before it and says whether nothing better can be.</summary>
internal sealed record SolverTold(string Plan, bool Last, bool Proved);
