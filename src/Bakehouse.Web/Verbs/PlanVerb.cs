using System.CommandLine;
using Bakehouse.Domain.Planning;
using Bakehouse.Planner;
using Bakehouse.Planner.Solver;

namespace Bakehouse.Web.Verbs;

/// <summary><c>plan week.json [--out plan.json]</c>: exit 0 with a plan, 1 if no plan can do it, 2 if the file can't be read.</summary>
internal static class PlanVerb
{
    /// <summary>Whoever asks by the command line can wait longer than a page.</summary>
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(5);

    /// <summary>Units of the solver: more than it can use in that time.</summary>
    private const double Units = 100;

    public static Command Build()
    {
        var week = new Argument<string>("week") { Description = "The week's file (bakery-week/1)." };
        var outTo = new Option<string?>("--out") { Description = "Where to write the plan; without it, the plan is printed." };
        var verb = new Command("plan", "Plan a week.") { week, outTo };
        verb.SetAction((parsed, cancel) => Run(parsed.GetRequiredValue(week), parsed.GetValue(outTo), cancel));
        return verb;
    }

    private static async Task<int> Run(string path, string? outTo, CancellationToken cancel)
    {
        if (Files.Week(path) is not { } week)
        {
            return Files.Unreadable;
        }

        var found = await new ThoroughPlanner(SolverProcess.OfThisProgram()).Plan(week, Units, Longest, cancel);
        var outcome = found.Outcome;
        if (found.Trouble is { } trouble)
        {
            Console.Error.WriteLine($"The search for a better plan was cut short: {trouble}");
        }

        if (found.Stopped)
        {
            Console.Error.WriteLine($"The search was stopped after {Longest.TotalSeconds} seconds: on a quieter machine the plan may be better.");
        }

        foreach (var reason in outcome.Reasons)
        {
            Console.Error.WriteLine($"{reason.Order}: {reason.Sentence} {reason.Try}");
        }

        if (outcome.Plan is not { } plan)
        {
            return 1;
        }

        foreach (var (order, minutes) in outcome.Late.OrderBy(l => l.Key, StringComparer.Ordinal))
        {
            Console.Error.WriteLine($"{order} is {minutes} minutes late.");
        }

        return Files.Deliver(PlanFile.Write(plan), outTo);
    }
}
