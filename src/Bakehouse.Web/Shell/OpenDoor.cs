namespace Bakehouse.Web.Shell;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Keeping;
using Bakehouse.Book.Reading;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;

/// <summary>Where Bakehouse listens, and the one line that says so.</summary>
internal static class OpenDoor
{
    /// <summary>Opens the sample bakery without a question; a used book is refused.</summary>
    public const string SampleFlag = "--sample";

    private const string Default = "http://127.0.0.1:5080";

    /// <summary>The host's own reader of arguments wants a value after each flag: ours has none.</summary>
    public static string[] WithoutFlags(string[] args) => [.. args.Where(a => a != SampleFlag)];

    /// <summary>This machine only, unless <c>--urls</c> or ASPNETCORE_URLS says otherwise.</summary>
    public static void ListenOnThisMachineOnly(this WebApplicationBuilder builder)
    {
        if (string.IsNullOrEmpty(builder.Configuration["urls"]))
        {
            builder.WebHost.UseUrls(Default);
        }
    }

    /// <summary>Warnings and worse; the door's own line is printed by itself.</summary>
    public static void LogQuietly(this WebApplicationBuilder builder)
    {
        if (builder.Configuration["Logging:LogLevel:Default"] is null)
        {
            builder.Logging.SetMinimumLevel(LogLevel.Warning);

            // On one machine the keys of the cookies lie in the home folder of whoever runs it; nothing to say at each first start.
            builder.Logging.AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error);
        }
    }

    /// <summary>Without this, a run from source outside Development serves every style sheet empty.</summary>
    public static void UseAssetsAlways(this WebApplicationBuilder builder) => builder.WebHost.UseStaticWebAssets();

    /// <summary>Answers "ok" as long as the process lives.</summary>
    public static void MapHealth(this WebApplication app) => app.MapGet("/healthz", () => "ok");

    /// <summary>Opens the book, fills the sample if asked, starts, prints the address, waits. 0 when closed in order, 2 when the sample was asked for and the book is used, else why the book is closed (<see cref="WhyClosed"/>, 3 to 9).</summary>
    public static async Task<int> OpenTheDoor(this WebApplication app, string[] args)
    {
        IBook book;
        try
        {
            book = app.Services.GetRequiredService<IBook>();
        }
        catch (BookClosedException closed)
        {
            await Console.Error.WriteLineAsync(closed.Message);
            return (int)closed.Why;
        }

        if (args.Contains(SampleFlag))
        {
            if (book.State.Shop is { } used)
            {
                await Console.Error.WriteLineAsync($"This book is in use by {used.Name}. Start without {SampleFlag}, or name an empty book in BAKEHOUSE_BOOK.");
                return 2;
            }

            var answer = await book.Enter(new OpenSample(Guid.NewGuid(), "", "start"));
            if (answer.Kind != AnswerKind.Accepted)
            {
                await Console.Error.WriteLineAsync(answer.Message.Length > 0 ? answer.Message : string.Join(' ', answer.Problems));
                return 2;
            }
        }

        await app.StartAsync();
        var address = app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()?.Addresses.FirstOrDefault();
        Console.WriteLine($"Bakehouse is open at {address ?? Default}");
        await app.WaitForShutdownAsync();
        return 0;
    }
}
