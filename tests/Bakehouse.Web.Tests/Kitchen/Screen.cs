namespace Bakehouse.Web.Tests.Kitchen;

using System.Diagnostics;
using System.Text.Json;

/// <summary>A kitchen screen that listens to the app's events.</summary>
internal sealed class Screen : IAsyncDisposable
{
    private readonly HttpResponseMessage response;
    private readonly StreamReader lines;

    private Screen(HttpResponseMessage response, StreamReader lines)
    {
        this.response = response;
        this.lines = lines;
    }

    public string? ContentType => response.Content.Headers.ContentType?.MediaType;

    public static async Task<Screen> Open(HttpClient client, string who = "all")
    {
        var cancel = TestContext.Current.CancellationToken;
        var opened = await client.GetAsync($"/kitchen/events?for={who}", HttpCompletionOption.ResponseHeadersRead, cancel);
        opened.EnsureSuccessStatusCode();
        return new Screen(opened, new StreamReader(await opened.Content.ReadAsStreamAsync(cancel)));
    }

    /// <summary>The next event as it stands on the wire: its lines without the empty one that ends it.</summary>
    public async Task<IReadOnlyList<string>> Next()
    {
        var read = new List<string>();
        while (await lines.ReadLineAsync(TestContext.Current.CancellationToken) is { } line && (line.Length > 0 || read.Count == 0))
        {
            read.Add(line);
        }

        return read;
    }

    /// <summary>The next board and rings as HTML.</summary>
    public async Task<(string Board, string Rings)> Board()
    {
        while (true)
        {
            if (await Next() is ["event: board", var data])
            {
                var json = JsonDocument.Parse(data["data: ".Length..]).RootElement;
                return (json.GetProperty("board").GetString()!, json.GetProperty("rings").GetString()!);
            }
        }
    }

    /// <summary>Reads until a screen looks as wanted, and says after how long. Throws after 20 s.</summary>
    public async Task<(string Board, string Rings, TimeSpan After)> Until(Func<string, string, bool> wanted)
    {
        var clock = Stopwatch.StartNew();
        while (true)
        {
            var (board, rings) = await Board().WaitAsync(TimeSpan.FromSeconds(20), TestContext.Current.CancellationToken);
            if (wanted(board, rings))
            {
                return (board, rings, clock.Elapsed);
            }
        }
    }

    public ValueTask DisposeAsync()
    {
        lines.Dispose();
        response.Dispose();
        return ValueTask.CompletedTask;
    }
}
