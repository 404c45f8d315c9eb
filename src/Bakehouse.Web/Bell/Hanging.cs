namespace Bakehouse.Web.Bell;

using Hangfire;
using Hangfire.AspNetCore;
using Hangfire.InMemory;

/// <summary>Hangs the bell up.</summary>
internal static class Hanging
{
    /// <summary>Set to "off" to do without Hangfire; the bell rings all the same.</summary>
    public const string RopeSetting = "Bell:Rope";

    /// <summary>
    /// The loop, and Hangfire in memory. A job waits for its moment and so holds a worker: hence twelve of them. There is no
    /// dashboard: it would be one more page to guard, and shows nothing that the kitchen does not.
    /// </summary>
    public static void AddBell(this WebApplicationBuilder builder)
    {
        builder.Services.AddSingleton<ClockWatch>();
        builder.Services.AddSingleton<Ears>();
        builder.Services.AddSingleton<Ringer>();
        builder.Services.AddHostedService(services => services.GetRequiredService<Ringer>());
        if (builder.Configuration[RopeSetting] == "off")
        {
            return;
        }

        // Its own for each app: two in one process must not lay jobs in each other's.
        builder.Services.AddSingleton<JobStorage>(_ => new InMemoryStorage());
        builder.Services.AddSingleton<JobActivator>(services => new AspNetCoreJobActivator(services.GetRequiredService<IServiceScopeFactory>()));
        builder.Services.AddHangfire(hangfire => hangfire
            .SetDataCompatibilityLevel(CompatibilityLevel.Version_180)
            .UseSimpleAssemblyNameTypeSerializer()
            .UseRecommendedSerializerSettings());
        builder.Services.AddHangfireServer(server =>
        {
            server.SchedulePollingInterval = TimeSpan.FromSeconds(1);
            server.WorkerCount = 12;
        });
        builder.Services.AddSingleton<BellRope>();
        builder.Services.AddHostedService(services => services.GetRequiredService<BellRope>());
    }
}
