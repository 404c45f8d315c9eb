namespace Bakehouse.Browser.Tests;

using NodaTime;

/// <summary>The running app with the sample bakery open, on Thursday 15 October 2026 at 10:40 in London: the middle of a morning.</summary>
public sealed class OpenShop : IAsyncLifetime
{
    /// <summary>The app.</summary>
    public RunningShop Shop { get; } = new();

    public async ValueTask InitializeAsync()
    {
        await Shop.InitializeAsync();
        Shop.Clock.MoveTo(Instant.FromUtc(2026, 10, 15, 9, 40));
        var first = await Shop.Screen(1280, 800);
        await first.OpenTheSample();
        await first.Context.CloseAsync();
    }

    public ValueTask DisposeAsync() => Shop.DisposeAsync();
}
