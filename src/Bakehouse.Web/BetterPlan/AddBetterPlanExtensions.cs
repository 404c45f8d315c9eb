namespace Bakehouse.Web.BetterPlan;

using Bakehouse.Planner.Solver;

/// <summary>Puts the search for a better plan among the things that the app is built of.</summary>
internal static class AddBetterPlanExtensions
{
    /// <summary>Nobody waits for it, and the machine has other work.</summary>
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(30);

    /// <summary>Units of the solver: more than it can use in that time.</summary>
    private const double Units = 600;

    /// <summary>"off" looks only when somebody asks: for a machine that has little time.</summary>
    public const string EachDaySetting = "BetterPlan:EachDay";

    /// <summary>One search for the whole app, in a process of its own, and the look once a day.</summary>
    public static void AddBetterPlan(this WebApplicationBuilder builder)
    {
        builder.Services.AddSingleton<Improving>((week, plan, cancel) => SolverProcess.OfThisProgram().Improve(week, plan, Units, Longest, cancel: cancel));
        builder.Services.AddSingleton<PlanSearch>();
        if (builder.Configuration[EachDaySetting] != "off")
        {
            builder.Services.AddHostedService<LookOnceADay>();
        }
    }
}
