namespace Bakehouse.Web.Tests;

using System.Collections.Concurrent;
using System.Diagnostics.Metrics;
using System.Text;
using Bakehouse.Book.Entries;
using Bakehouse.Book.Figures;
using Bakehouse.Testing;
using Bakehouse.Web.Figures;
using Bakehouse.Web.Tests.Kitchen;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using OpenTelemetry.Metrics;

/// <summary>What is counted for whoever listens, and that nothing leaves the app unless an address is set.</summary>
public sealed class FiguresTests
{
    [Fact]
    public async Task Commands_plans_rings_and_screens_are_counted_by_kind_and_outcome()
    {
        var time = new SteppedTime(KitchenShop.Start);
        await using var app = await KitchenShop.Sample(time);
        using var heard = new Heard(app.Services.GetRequiredService<IMeterFactory>());
        var screen = app.At("petra");

        var taken = new WriteOrder(Guid.NewGuid(), "ines", "till", Cakes.Good(77, 8));
        await app.Book.Enter(taken, TestContext.Current.CancellationToken);
        await app.Book.Enter(taken, TestContext.Current.CancellationToken); // sent again: it was decided once
        await app.Book.Enter(new WriteOrder(Guid.NewGuid(), "ines", "till", Cakes.Good(78) with { Tiers = [] }), TestContext.Current.CancellationToken);
        await using (var kitchen = await Screen.Open(screen))
        {
            await kitchen.Board();
            Assert.Equal(1, heard.Sum("bakehouse.screens"));
        }

        time.MoveTo(app.Next().Due);
        var ringing = app.Ringer.Look().Ringing;
        app.Ringer.Look();
        await KitchenShop.Answer(screen, ringing[0].Id);
        await KitchenShop.Answer(screen, ringing[0].Id);

        Assert.Equal(1, heard.Sum("bakehouse.commands", "WriteOrder", "Accepted"));
        Assert.Equal(1, heard.Sum("bakehouse.commands", "WriteOrder", "Refused"));
        Assert.Equal(1, heard.Sum("bakehouse.rings.answered", "Done"));
        Assert.True(heard.Sum("bakehouse.rings.due", ringing[0].Kind.ToString()) >= 1);
        Assert.Equal(ringing.Count, heard.Sum("bakehouse.rings.due"));
        Assert.True(heard.Sum("bakehouse.plan.duration", "insert") > 0);
        await Until(() => heard.Sum("bakehouse.screens") == 0);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Counts_are_told_to_a_collector_only_if_its_address_is_set(bool set)
    {
        var bodies = new ConcurrentQueue<string>();
        await using var collector = await Collector(bodies);
        var address = collector.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.Single();
        await using var app = await KitchenShop.Sample(new SteppedTime(KitchenShop.Start), also: b => b.UseSetting(Telling.Setting, set ? $"{address}/v1/metrics" : ""));
        await app.Book.Enter(new WriteOrder(Guid.NewGuid(), "ines", "till", Cakes.Good(77, 8)), TestContext.Current.CancellationToken);

        var teller = app.Services.GetService<MeterProvider>();
        Assert.Equal(set, teller is not null);
        Assert.Equal(set, teller?.ForceFlush() ?? false);
        Assert.Equal(set, bodies.Any(b => b.Contains("bakehouse.commands", StringComparison.Ordinal) && b.Contains("WriteOrder", StringComparison.Ordinal)));
        Assert.DoesNotContain(bodies, b => b.Contains("Okafor", StringComparison.Ordinal));
    }

    private static async Task<WebApplication> Collector(ConcurrentQueue<string> bodies)
    {
        var builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.UseUrls("http://127.0.0.1:0");
        var collector = builder.Build();
        collector.MapPost("/v1/metrics", async (HttpRequest request) =>
        {
            using var body = new MemoryStream();
            await request.Body.CopyToAsync(body);
            bodies.Enqueue(Encoding.Latin1.GetString(body.ToArray()));
            return Results.Ok();
        });
        await collector.StartAsync(TestContext.Current.CancellationToken);
        return collector;
    }

    private static async Task Until(Func<bool> wanted)
    {
        for (var tries = 0; !wanted() && tries < 200; tries++)
        {
            await Task.Delay(50, TestContext.Current.CancellationToken);
        }

        Assert.True(wanted());
    }

    /// <summary>All that one app counts.</summary>
    private sealed class Heard : IDisposable
    {
        private readonly MeterListener listener = new();
        private readonly ConcurrentQueue<(string Name, double By, IReadOnlyList<string?> Tags)> all = new();

        public Heard(IMeterFactory app)
        {
            listener.InstrumentPublished = (instrument, l) =>
            {
                if (instrument.Meter.Name == BookFigures.MeterName && ReferenceEquals(instrument.Meter.Scope, app))
                {
                    l.EnableMeasurementEvents(instrument);
                }
            };
            listener.SetMeasurementEventCallback<long>((instrument, by, tags, _) => Note(instrument, by, tags));
            listener.SetMeasurementEventCallback<double>((instrument, by, tags, _) => Note(instrument, by, tags));
            listener.Start();
        }

        public double Sum(string name, params string[] tags) => all.Where(m => m.Name == name && tags.All(m.Tags.Contains)).Sum(m => m.By);

        public void Dispose() => listener.Dispose();

        private void Note(Instrument instrument, double by, ReadOnlySpan<KeyValuePair<string, object?>> tags) =>
            all.Enqueue((instrument.Name, by, [.. tags.ToArray().Select(t => t.Value?.ToString())]));
    }
}
