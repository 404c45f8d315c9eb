using System.CommandLine;
using Bakehouse.Planner.Solver;

namespace Bakehouse.Web.Verbs;

/// <summary>The process that solves for this program; only the program itself starts it.</summary>
internal static class SolveVerb
{
    public static Command Build()
    {
        var verb = new Command(SolverVerb.Name, "Solve what the program asks.") { Hidden = true };
        verb.SetAction(_ => SolverVerb.Run(Console.In, Console.Out, () => Environment.Exit(SolverVerb.Left)));
        return verb;
    }
}
