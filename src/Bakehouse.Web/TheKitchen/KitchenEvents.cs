namespace Bakehouse.Web.TheKitchen;

using System.Collections.Concurrent;
using System.Net.ServerSentEvents;
using System.Runtime.CompilerServices;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Threading.Channels;
using Bakehouse.Book.Reading;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.Access;
using Bakehouse.Web.Bell;
using Bakehouse.Web.Figures;
using Bakehouse.Web.Shell;
using Bakehouse.Web.TheKitchen.Wrong;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;

/// <summary>
/// What the kitchen's screens hear: at once, and then whenever book, rings or minute change, the event "board" with the board and the
/// ring as HTML in JSON; after 15 s of silence the event "beat". A screen that comes back hears what stands now, so nothing is replayed.
/// </summary>
internal static class KitchenEvents
{
    private static readonly TimeSpan Beat = TimeSpan.FromSeconds(15);

    // Screens that show the same to the same people are drawn once for each look of the bell.
    private static readonly ConditionalWeakTable<WhatRings, ConcurrentDictionary<string, Task<string>>> Drawn = [];

    // The HTML is encoded already where a person's words stand in it; the text is read as JSON and never as script.
    private static readonly JsonSerializerOptions Short = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Maps the stream and the taps.</summary>
    public static void MapKitchen(this WebApplication app)
    {
        app.MapGet("/kitchen/events", Hear);
        app.MapPost("/kitchen/commands", KitchenCommands.Take);
        app.MapPost("/kitchen/hears", KitchenCommands.Hear);
        app.MapWrong();
    }

    /// <summary>The person that a screen is fixed to, or null for everybody.</summary>
    public static string? Person(Shop? shop, string? named) => shop?.PersonOf(named ?? "")?.Id;

    /// <summary>True if whoever sends the request may use the kitchen.</summary>
    public static bool MayUse(HttpContext context, Shop? shop) =>
        shop is not null && Rights.MayOpen("kitchen", shop.PersonOf(WhoAmI.Of(context).Person)?.Role);

    private static IResult Hear(HttpContext context, Ringer ringer, TimeProvider time, BellFigures figures, IHostApplicationLifetime life, ILoggerFactory logs, string? @for)
    {
        if (!MayUse(context, ringer.State.Book.Shop))
        {
            return Results.StatusCode(StatusCodes.Status403Forbidden);
        }

        context.Response.Headers.CacheControl = "no-store";
        var screens = new Screens(context.RequestServices.GetRequiredService<IServiceScopeFactory>(), ringer, logs);
        return TypedResults.ServerSentEvents(Stream(screens, ringer, time, figures, @for, life.ApplicationStopping, context.RequestAborted));
    }

    private static async IAsyncEnumerable<SseItem<string>> Stream(
        Screens screens, Ringer ringer, TimeProvider time, BellFigures figures, string? named, CancellationToken closing, [EnumeratorCancellation] CancellationToken gone)
    {
        using var end = CancellationTokenSource.CreateLinkedTokenSource(closing, gone);
        var changes = Channel.CreateBounded<bool>(new BoundedChannelOptions(1) { FullMode = BoundedChannelFullMode.DropWrite });
        void Note(WhatRings state) => changes.Writer.TryWrite(true);
        ringer.Changed += Note;
        figures.ScreenCame();
        try
        {
            var last = "";
            while (!end.IsCancellationRequested)
            {
                var now = await screens.Draw(named);
                yield return now == last ? new SseItem<string>("", "beat") : new SseItem<string>(now, "board");
                last = now;
                await Wait(changes.Reader, time, end.Token);
            }
        }
        finally
        {
            ringer.Changed -= Note;
            figures.ScreenWent();
        }
    }

    /// <summary>Until something changed, the beat is due, or nobody listens any more.</summary>
    private static async Task Wait(ChannelReader<bool> changes, TimeProvider time, CancellationToken end)
    {
        using var beat = new CancellationTokenSource(Beat, time);
        using var either = CancellationTokenSource.CreateLinkedTokenSource(beat.Token, end);
        try
        {
            await changes.ReadAsync(either.Token);
        }
        catch (OperationCanceledException)
        {
            // The beat, or the end: the caller looks which.
        }
    }

    /// <summary>Draws board, ring and notices as one screen needs them.</summary>
    private sealed class Screens(IServiceScopeFactory scopes, Ringer ringer, ILoggerFactory logs)
    {
        public Task<string> Draw(string? named)
        {
            var state = ringer.State;
            return state.Book.Shop is { } shop
                ? Drawn.GetOrCreateValue(state).GetOrAdd(Person(shop, named) ?? "", person => Draw(state, shop, person.Length > 0 ? person : null))
                : Task.FromResult("{}");
        }

        private async Task<string> Draw(WhatRings state, Shop shop, string? person)
        {
            var view = new KitchenReader(state, shop, person).Read();
            // Others wait for this drawing, too, so it must not lean on the request of the one who began it.
            await using var scope = scopes.CreateAsyncScope();
            await using var renderer = new HtmlRenderer(scope.ServiceProvider, logs);
            var parameters = Parameters("It", view);
            var (board, rings, notices) = await renderer.Dispatcher.InvokeAsync(async () => (
                (await renderer.RenderComponentAsync<Board>(parameters)).ToHtmlString(),
                (await renderer.RenderComponentAsync<RingScreen>(parameters)).ToHtmlString(),
                (await renderer.RenderComponentAsync<NoticeStrips>(Parameters("Of", Notices.Of(state, shop, role: null)))).ToHtmlString()));
            return JsonSerializer.Serialize(new { board, rings, notices, night = view.IsNight }, Short);
        }

        private static ParameterView Parameters(string name, object value) =>
            ParameterView.FromDictionary(new Dictionary<string, object?>(StringComparer.Ordinal) { [name] = value });
    }
}
