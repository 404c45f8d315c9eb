namespace Bakehouse.Browser.Tests;

using Bakehouse.Domain.Planning;
using Bakehouse.Planner.Solver;
using Bakehouse.Testing;
using Bakehouse.Web.BetterPlan;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;
using Microsoft.Playwright;
using NodaTime;
using IClock = NodaTime.IClock;

/// <summary>
/// The whole app on a port of its own with an empty book, a clock that can be moved, and a real browser. (Named by a type of the
/// app: the browser package has a Program, too.)
/// </summary>
public sealed class RunningShop : WebApplicationFactory<Web.Access.Who>, IAsyncLifetime
{
    private readonly string folder = Directory.CreateTempSubdirectory("bakehouse-browser-").FullName;
    private IPlaywright? playwright;
    private IBrowser? browser;

    /// <summary>Wednesday 14 October 2026, 07:30 in London.</summary>
    public static Instant Start { get; } = Instant.FromUtc(2026, 10, 14, 6, 30);

    /// <summary>This machine alone.</summary>
    public const string Host = "127.0.0.1";

    /// <summary>The app's clock.</summary>
    public MovableTime Clock { get; } = new(Start);

    /// <summary>Where the app listens.</summary>
    public string Address => ClientOptions.BaseAddress.ToString().TrimEnd('/');

    /// <summary>What the search for a better plan finds; the plan given, unless told.</summary>
    public Improving Finds { get; set; } = (week, plan, _) => Task.FromResult(new Improved(plan, Judge.Examine(week, plan).Levels, false, null));

    /// <summary>A new screen of that size, as another device with its own cookies.</summary>
    public async Task<IPage> Screen(int width, int height, bool touch = false)
    {
        var context = await browser!.NewContextAsync(new()
        {
            ViewportSize = new() { Width = width, Height = height },
            HasTouch = touch,
            BaseURL = Address,
            Locale = "en-GB",
            TimezoneId = "Europe/London",
        });
        var page = await context.NewPageAsync();
        page.SetDefaultTimeout(15_000);
        return page;
    }

    public async ValueTask InitializeAsync()
    {
        // A busy machine may take longer than the five seconds of the library; how fast the app is, is measured elsewhere.
        Assertions.SetDefaultExpectTimeout(20_000);
        UseKestrel(0);
        StartServer();
        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = Chromium(),
            Args = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
        });
    }

    public override async ValueTask DisposeAsync()
    {
        if (browser is not null)
        {
            await browser.CloseAsync();
        }

        playwright?.Dispose();
        await base.DisposeAsync();
        Directory.Delete(folder, recursive: true);
    }

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseSetting("Book:Path", Path.Combine(folder, "book.db"));
        builder.UseSetting("BetterPlan:EachDay", "off");
        builder.ConfigureTestServices(services =>
        {
            services.Replace(ServiceDescriptor.Singleton<TimeProvider>(Clock));
            services.Replace(ServiceDescriptor.Singleton<IClock>(Clock));
            services.Replace(ServiceDescriptor.Singleton<Improving>((week, plan, cancel) => Finds(week, plan, cancel)));
        });
    }

    /// <summary>The shell without windows first: it does the same for a fraction of the processor time.</summary>
    private static string Chromium()
    {
        var named = Environment.GetEnvironmentVariable("BAKEHOUSE_CHROMIUM");
        if (!string.IsNullOrEmpty(named))
        {
            return named;
        }

        var folders = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator);
        return new[] { "chromium-headless-shell", "chromium" }.SelectMany(name => folders.Select(f => Path.Combine(f, name))).FirstOrDefault(File.Exists)
            ?? throw new InvalidOperationException("No chromium on the PATH: apt-get install chromium-headless-shell, or name one in BAKEHOUSE_CHROMIUM.");
    }
}
