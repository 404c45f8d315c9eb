namespace Bakehouse.Web.Shell;

using System.Globalization;
using Bakehouse.Book;
using Bakehouse.Domain.Planning;
using Bakehouse.Planner.Quick;
using Microsoft.Extensions.DependencyInjection.Extensions;
using MudBlazor.Services;
using NodaTime;

/// <summary>What the pages stand on: time, the book, security headers, render modes.</summary>
internal static class Hosting
{
#pragma warning disable RS0030 // Here the app meets the clock of the machine.
    /// <summary>The clock of the machine, for what runs without the pages.</summary>
    public static IClock MachineClock => SystemClock.Instance;

    /// <summary>The only place that names the system's clock; a test puts its own in its stead.</summary>
    public static void AddTime(this IServiceCollection services)
    {
        services.TryAddSingleton(MachineClock);
        services.TryAddSingleton(TimeProvider.System);
    }
#pragma warning restore RS0030

    /// <summary>Where the book lies: the setting Book:Path, else BAKEHOUSE_BOOK, else book/bakehouse.db beside the app.</summary>
    public static string BookPath(this WebApplicationBuilder builder) =>
        builder.Configuration["Book:Path"]
        ?? Environment.GetEnvironmentVariable("BAKEHOUSE_BOOK")
        ?? Path.Combine(builder.Environment.ContentRootPath, "book", "bakehouse.db");

    /// <summary>The order book and the planner that it asks; opened when the door opens.</summary>
    public static void OpenBook(this WebApplicationBuilder builder)
    {
        builder.Services.TryAddSingleton<IPlanner>(new QuickPlanner());
        builder.Services.AddBook(builder.BookPath());
    }

    /// <summary>Pages rendered on the server; each is interactive unless it says that it is not.</summary>
    public static void AddPages(this IServiceCollection services)
    {
        // Without a language the process would write dates the American way round; pages name the shop's own culture.
        CultureInfo.DefaultThreadCurrentCulture = CultureInfo.GetCultureInfo("en-GB");
        services.AddRazorComponents().AddInteractiveServerComponents(o =>
        {
            o.DisconnectedCircuitRetentionPeriod = TimeSpan.FromMinutes(10);
            o.DisconnectedCircuitMaxRetained = 50;
        });
        services.AddMudServices();
    }

    /// <summary>Nothing is loaded from elsewhere, nobody may frame the pages, unknown paths say so in our words.</summary>
    public static void UseGuards(this WebApplication app)
    {
        app.UseExceptionHandler("/trouble", createScopeForErrors: true);
        app.UseStatusCodePagesWithReExecute("/not-found");
        app.UseSecurityHeaders(policies => policies
            .AddDefaultSecurityHeaders()
            .AddContentSecurityPolicy(csp =>
            {
                csp.AddDefaultSrc().Self();
                csp.AddScriptSrc().Self();
                csp.AddStyleSrc().Self().UnsafeInline();
                csp.AddImgSrc().Self().Data();
                csp.AddConnectSrc().Self();
                csp.AddFrameAncestors().None();
                csp.AddObjectSrc().None();
                csp.AddBaseUri().Self();
                csp.AddFormAction().Self();
            }));
        app.UseAntiforgery();
    }

    /// <summary>All pages.</summary>
    public static void MapPages(this WebApplication app) =>
        app.MapRazorComponents<App>().AddInteractiveServerRenderMode(o => o.ContentSecurityFrameAncestorsPolicy = null);
}
