namespace Bakehouse.Web.Tests.Kitchen;

using System.Net.Http.Json;
using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;
using Bakehouse.Domain.Reminders;
using Bakehouse.Web.Bell;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;
using Microsoft.Extensions.Time.Testing;
using NodaTime;

/// <summary>The whole app in memory on a book of its own, with the sample bakery, and a clock that the test holds.</summary>
/// <param name="time">Both the clock and the timers of the app.</param>
/// <param name="also">What else a test puts into the app.</param>
internal sealed class KitchenShop(TimeProvider time, string folder, bool rope = false, Action<IWebHostBuilder>? also = null) : WebApplicationFactory<Program>
{
    /// <summary>Wednesday 14 October 2026, 07:30 in London.</summary>
    public static Instant Start { get; } = Instant.FromUtc(2026, 10, 14, 6, 30);

    public IBook Book => Services.GetRequiredService<IBook>();

    public Ringer Ringer => Services.GetRequiredService<Ringer>();

    /// <summary>A folder for a book; a test that starts the app again uses it twice.</summary>
    public static string Folder() => Directory.CreateTempSubdirectory("bakehouse-kitchen-").FullName;

    /// <summary>The app with the sample bakery opened.</summary>
    public static async Task<KitchenShop> Sample(TimeProvider time, string? folder = null, bool rope = false, Action<IWebHostBuilder>? also = null)
    {
        var shop = new KitchenShop(time, folder ?? Folder(), rope, also);
        var answer = await shop.Book.Enter(new OpenSample(Guid.NewGuid(), "", "test"), TestContext.Current.CancellationToken);
        Assert.Equal(AnswerKind.Accepted, answer.Kind);
        shop.Ringer.Look();
        return shop;
    }

    /// <summary>A screen at which that person stands; "" for nobody.</summary>
    public HttpClient At(string person)
    {
        var client = CreateClient(new WebApplicationFactoryClientOptions { HandleCookies = false, AllowAutoRedirect = false });
        client.DefaultRequestHeaders.Add("Cookie", $"bakehouse-person={person}; bakehouse-device=test");
        client.DefaultRequestHeaders.Add("X-Bakehouse", "kitchen");
        return client;
    }

    /// <summary>The first ring that is still to come, of a kind if one is named.</summary>
    public Ring Next(RingKind? kind = null) => Ringer.State.Open.First(r => (kind ?? r.Kind) == r.Kind && r.At(Ringer.State.Now) == RingState.Waiting);

    public static Task<HttpResponseMessage> Answer(HttpClient screen, string ring, string kind = "Done", string? reason = null, Guid? id = null) =>
        screen.PostAsJsonAsync("/kitchen/commands", new { id = id ?? Guid.NewGuid(), @do = "answer", ring, kind, reason }, TestContext.Current.CancellationToken);

    public static Task<HttpResponseMessage> Tick(HttpClient screen, IEnumerable<string> steps, string by, Guid? id = null) =>
        screen.PostAsJsonAsync("/kitchen/commands", new { id = id ?? Guid.NewGuid(), @do = "tick", steps, by }, TestContext.Current.CancellationToken);

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseSetting("Book:Path", Path.Combine(folder, "book.db"));
        builder.UseSetting("BetterPlan:EachDay", "off");
        builder.UseSetting("Bell:Rope", rope ? "on" : "off");
        builder.ConfigureTestServices(services =>
        {
            services.Replace(ServiceDescriptor.Singleton(time));
            services.Replace(ServiceDescriptor.Singleton((IClock)time));
        });
        also?.Invoke(builder);
    }
}

/// <summary>A clock that moves only when the test moves it, and its timers with it.</summary>
internal sealed class SteppedTime(Instant start) : FakeTimeProvider(start.ToDateTimeOffset()), IClock
{
    private TimeSpan set;

    public Instant GetCurrentInstant() => Instant.FromDateTimeOffset(GetUtcNow());

    /// <summary>Time passes until the clock shows that.</summary>
    public void MoveTo(Instant instant) => SetUtcNow(instant.ToDateTimeOffset() - set);

    /// <summary>Somebody sets the clock: no time passes.</summary>
    public void Jump(Duration by) => set += by.ToTimeSpan();

    public override DateTimeOffset GetUtcNow() => base.GetUtcNow() + set;

    /// <summary>Ticks of 100 ns that have passed; setting the clock does not count.</summary>
    public override long GetTimestamp() => base.GetTimestamp() - set.Ticks;
}
