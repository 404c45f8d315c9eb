namespace Bakehouse.Web.Bell;

using Bakehouse.Book.Reading;
using Bakehouse.Domain.Reminders;
using Bakehouse.Web.Figures;

/// <summary>
/// Looks once a second, and after each change of the book, at what is due, and tells the screens. Nothing here waits longer than
/// a second, so a sleeping machine or a clock that jumps costs one second. What was due while the app was off is due now, late.
/// </summary>
public sealed class Ringer(IBook book, ClockWatch clock, Ears ears, TimeProvider time, ILogger<Ringer> log, BellFigures? figures = null) : BackgroundService
{
    private static readonly TimeSpan BetweenLooks = TimeSpan.FromSeconds(1);
    private readonly Lock gate = new();
    private BookState? read;
    private IReadOnlyList<Ring> open = [];
    private WhatRings? seen;
    private ClockMove? logged;

    /// <summary>Raised when the screens must be drawn again.</summary>
    public event Action<WhatRings>? Changed;

    /// <summary>What stands now; looked up if nobody has looked yet.</summary>
    public WhatRings State => seen ?? Look();

    /// <summary>Looks now. Looking twice does no harm.</summary>
    public WhatRings Look()
    {
        bool changed;
        WhatRings now;
        lock (gate)
        {
            var state = book.State;
            if (!ReferenceEquals(state, read))
            {
                open = WhatRings.OpenIn(state);
                read = state;
            }

            now = WhatRings.At(clock.Look(), state, open, heard: !ears.Nobody);
            changed = seen is null || !seen.LooksLike(now);
            figures?.Rang(seen?.Ringing ?? [], now.Ringing);
            seen = now;
        }

        if (changed)
        {
            Log(now.Moved);
            Changed?.Invoke(now);
        }

        return now;
    }

    /// <summary>The owner says that the clock is right: rings go by it from here on.</summary>
    public void TrustClock()
    {
        clock.Trust();
        Look();
    }

    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        book.Changed += LookAgain;
        try
        {
            TryToLook();
            using var second = new PeriodicTimer(BetweenLooks, time);
            while (await second.WaitForNextTickAsync(stoppingToken))
            {
                TryToLook();
            }
        }
        catch (OperationCanceledException) when (stoppingToken.IsCancellationRequested)
        {
            // The app closes.
        }
        finally
        {
            book.Changed -= LookAgain;
        }
    }

    private void Log(ClockMove? move)
    {
        if (move is not null && Interlocked.Exchange(ref logged, move) != move)
        {
            log.LogWarning("The clock moved by {By} to {To}, or the machine slept", move.By, move.To);
        }
    }

    private void LookAgain(BookState state) => TryToLook();

    /// <summary>One look that fails must not end the looking: the next comes in a second.</summary>
    private void TryToLook()
    {
        try
        {
            Look();
        }
#pragma warning disable CA1031 // The edge: whatever went wrong is logged, and the bell goes on.
        catch (Exception trouble)
#pragma warning restore CA1031
        {
            log.LogError(trouble, "A look at the rings failed at book state {Head}", book.State.Head);
        }
    }
}
