using System.CommandLine;
using Bakehouse.Benchmarks.Plots;
using Bakehouse.Benchmarks.Published;
using Bakehouse.Benchmarks.Weeks;
using Bakehouse.Planner.Solver;

namespace Bakehouse.Benchmarks;

/// <summary>Measures the planner on folders of problems.</summary>
internal static class Program
{
    private static Task<int> Main(string[] args) =>
        new RootCommand("Measure the planner on a folder of problems. Results are CSV with the machine, the budget and the date in each row.")
        {
            WeeksCommand.Build(),
            PsplibCommand.Build(),
            PsplibMaxCommand.Build(),
            PlotCommand.Build(),
            Solve(),
        }.Parse(args).InvokeAsync();

    private static Command Solve()
    {
        var verb = new Command(SolverVerb.Name, "Solve what the program asks.") { Hidden = true };
        verb.SetAction(_ => SolverVerb.Run(Console.In, Console.Out, () => Environment.Exit(SolverVerb.Left)));
        return verb;
    }
}
