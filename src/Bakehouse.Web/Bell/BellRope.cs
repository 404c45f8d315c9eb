namespace Bakehouse.Web.Bell;

using System.Collections.Concurrent;
using Bakehouse.Domain.Reminders;
using Hangfire;
using NodaTime;

/// <summary>
/// Hangfire as a bell-rope: a job three seconds ahead of each due says "look now" at the exact moment, and a sweep each minute
/// lays the jobs of the next two days. Jobs hold no data; if all of them are lost, the loop of <see cref="Ringer"/> still rings.
/// </summary>
public sealed class BellRope(IBackgroundJobClient jobs, IRecurringJobManager recurring, Ringer ringer, IClock clock, TimeProvider time, ILogger<BellRope> log) : IHostedService
{
    private static readonly Duration Ahead = Duration.FromSeconds(3);
    private static readonly Duration Reach = Duration.FromHours(48);
    private static readonly Duration LongestWait = Duration.FromSeconds(5);
    private readonly ConcurrentDictionary<(string Ring, Instant Due), byte> laid = new();

    /// <inheritdoc/>
    public Task StartAsync(CancellationToken cancellationToken)
    {
        recurring.AddOrUpdate<BellRope>("sweep", rope => rope.Sweep(), Cron.Minutely());
        ringer.Changed += LayAgain;
        return Task.CompletedTask;
    }

    /// <inheritdoc/>
    public Task StopAsync(CancellationToken cancellationToken)
    {
        ringer.Changed -= LayAgain;
        return Task.CompletedTask;
    }

    /// <summary>Looks, and lays a job for each ring of the next two days that has none yet.</summary>
    [AutomaticRetry(Attempts = 0)]
    public void Sweep() => Lay(ringer.Look());

    /// <summary>Waits for the moment, at most 5 s, and looks. Too early, too late or twice does no harm.</summary>
    /// <param name="due">Milliseconds since 1970, UTC.</param>
    [AutomaticRetry(Attempts = 0)]
    public async Task Pull(long due)
    {
        var wait = Instant.FromUnixTimeMilliseconds(due) - clock.GetCurrentInstant();
        if (wait > Duration.Zero)
        {
            await Task.Delay(Duration.Min(wait, LongestWait).ToTimeSpan(), time);
        }

        ringer.Look();
    }

    private void LayAgain(WhatRings state) => Lay(state);

    private void Lay(WhatRings state)
    {
        foreach (var old in laid.Keys.Where(k => k.Due < state.Now))
        {
            laid.TryRemove(old, out _);
        }

        foreach (var ring in state.Open.Where(r => r.Due > state.Now && r.Due - state.Now <= Reach && laid.TryAdd((r.Id, r.Due), 0)))
        {
            Lay(ring, state.Now);
        }
    }

    /// <summary>A rope that tore must not take the bell along: it is told in the log, and laid again at the next change.</summary>
    private void Lay(Ring ring, Instant now)
    {
        try
        {
            var early = Duration.Max(Duration.Zero, ring.Due - now - Ahead);
            var due = ring.Due.ToUnixTimeMilliseconds();
            jobs.Schedule<BellRope>(rope => rope.Pull(due), early.ToTimeSpan());
        }
        catch (BackgroundJobClientException trouble)
        {
            laid.TryRemove((ring.Id, ring.Due), out _);
            log.LogError(trouble, "No job could be laid for {Ring}; the loop rings it", ring.Id);
        }
    }
}
