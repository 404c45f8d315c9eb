using System.CommandLine;
using System.Text.Json;
using Bakehouse.Domain.Planning;

namespace Bakehouse.Web.Verbs;

/// <summary>
/// <c>check week.json plan.json</c>: one line for each broken rule, then one line of JSON with the levels. Exit 0 if no
/// rule is broken, 1 if one is, 2 if a file can't be read.
/// </summary>
internal static class CheckVerb
{
    public static Command Build()
    {
        var week = new Argument<string>("week") { Description = "The week's file (bakery-week/1)." };
        var plan = new Argument<string>("plan") { Description = "The plan's file (bakery-plan/1)." };
        var verb = new Command("check", "Check a plan against every rule of its week.") { week, plan };
        verb.SetAction(parsed => Run(parsed.GetRequiredValue(week), parsed.GetRequiredValue(plan)));
        return verb;
    }

    private static int Run(string weekPath, string planPath)
    {
        var (week, plan) = (Files.Week(weekPath), Files.Plan(planPath));
        if (week is null || plan is null)
        {
            return Files.Unreadable;
        }

        var verdict = Judge.Examine(week, plan);
        foreach (var breach in verdict.Breaches)
        {
            Console.Out.WriteLine($"{breach.Rule} {breach.Step} {breach.Minute}: {breach.Sentence}");
        }

        Console.Out.WriteLine(Summary(week, verdict));
        return verdict.Feasible ? 0 : 1;
    }

    private static string Summary(Week week, Verdict verdict)
    {
        var l = verdict.Levels;
        return JsonSerializer.Serialize(new Dictionary<string, object>(StringComparer.Ordinal)
        {
            ["week"] = week.Name,
            ["feasible"] = verdict.Feasible,
            ["broken"] = verdict.Breaches.Count,
            ["levels"] = new { L0 = l.Broken, L1 = l.Late, L2 = l.Stale, L3 = l.Overtime, L4 = l.Fresh, L5 = l.Changes, L6 = l.Uneven },
            ["by_rule"] = verdict.Breaches.GroupBy(b => b.Rule, StringComparer.Ordinal).OrderBy(g => g.Key, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.Count(), StringComparer.Ordinal),
        });
    }
}
