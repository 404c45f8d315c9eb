namespace Bakehouse.Web.Tests.Killed;

using System.Diagnostics;

/// <summary>The whole app as a process of its own, as a baker starts it, on a port that the system gives.</summary>
internal sealed class AppProcess : IAsyncDisposable
{
    private const string Opened = "Bakehouse is open at ";
    private readonly Process process;
    private readonly Uri address;

    private AppProcess(Process process, Uri address) => (this.process, this.address) = (process, address);

    /// <summary>Starts the app on a book and waits until it says that it is open; throws with what it said if it ends instead.</summary>
    public static async Task<AppProcess> Start(string book)
    {
        var cancel = TestContext.Current.CancellationToken;
        var start = new ProcessStartInfo("dotnet")
        {
            WorkingDirectory = Path.GetDirectoryName(book)!, UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true,
        };
        foreach (var word in (string[])[Path.Combine(AppContext.BaseDirectory, "Bakehouse.Web.dll"), "--urls", "http://127.0.0.1:0"])
        {
            start.ArgumentList.Add(word);
        }

        start.Environment["BAKEHOUSE_BOOK"] = book;
        start.Environment["ASPNETCORE_ENVIRONMENT"] = "Production";
        start.Environment["DOTNET_TieredPGO"] = "0"; // it lives for seconds: measuring itself would only cost
        var app = Process.Start(start)!;
        var wrong = app.StandardError.ReadToEndAsync(cancel);
        while (await app.StandardOutput.ReadLineAsync(cancel).AsTask().WaitAsync(TimeSpan.FromSeconds(60), cancel) is { } line)
        {
            if (line.StartsWith(Opened, StringComparison.Ordinal))
            {
                return new AppProcess(app, new Uri(line[Opened.Length..]));
            }
        }

        Assert.Fail($"The app ended before it was open: {await wrong}");
        return null!;
    }

    /// <summary>A kitchen screen at which that person stands.</summary>
    public HttpClient At(string person, string device = "test")
    {
        var screen = new HttpClient(new HttpClientHandler { UseCookies = false }) { BaseAddress = address };
        screen.DefaultRequestHeaders.Add("Cookie", $"bakehouse-person={person}; bakehouse-device={device}");
        screen.DefaultRequestHeaders.Add("X-Bakehouse", "kitchen");
        return screen;
    }

    /// <summary>SIGKILL: the process hears nothing of it and tidies nothing.</summary>
    public async Task Kill()
    {
        Assert.False(process.HasExited, "The app ended by itself.");
        process.Kill();
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
    }

    public async ValueTask DisposeAsync()
    {
        if (!process.HasExited)
        {
            await Kill();
        }

        process.Dispose();
    }
}
