namespace Bakehouse.Web.Copies;

using Bakehouse.Book.Keeping.Copies;
using Bakehouse.Book.Reading;
using NodaTime;

/// <summary>
/// Takes a copy of the book an hour after the newest, also when the app was off meanwhile; one that failed is tried again in ten
/// minutes. Looks once a minute, so a sleeping machine or a clock that jumps costs a minute.
/// </summary>
public sealed class CopyEachHour(BookCopies copies, IBook book, IClock clock, TimeProvider time, ILogger<CopyEachHour> log) : BackgroundService
{
    private static readonly TimeSpan BetweenLooks = TimeSpan.FromMinutes(1);
    private static readonly Duration Between = Duration.FromHours(1);
    private static readonly Duration AgainAfter = Duration.FromMinutes(10);
    private readonly Lock gate = new();
    private CopyTaken? last;

    /// <summary>The last try since the app started, or null if there was none yet.</summary>
    public CopyTaken? Last => last;

    /// <summary>Takes a copy if one is due.</summary>
    public void Look()
    {
        lock (gate)
        {
            var now = clock.GetCurrentInstant();
            if (book.State.Shop is null || !IsDue(now))
            {
                return;
            }

            last = copies.Take(now);
            foreach (var problem in last.Problems)
            {
                log.LogError("Copy of {Time}: {Problem}", now, problem);
            }
        }
    }

    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        try
        {
            using var minute = new PeriodicTimer(BetweenLooks, time);
            do
            {
                // Off this thread: a big book takes seconds.
                await Task.Run(TryToLook, CancellationToken.None);
            }
            while (await minute.WaitForNextTickAsync(stoppingToken));
        }
        catch (OperationCanceledException) when (stoppingToken.IsCancellationRequested)
        {
            // The app closes.
        }
    }

    private bool IsDue(Instant now) => last is { } tried
        ? now < tried.At || now - tried.At >= (tried.Path is null ? AgainAfter : Between)
        : copies.Newest is not { } newest || now < newest || now - newest >= Between;

    private void TryToLook()
    {
        try
        {
            Look();
        }
#pragma warning disable CA1031 // The edge: whatever went wrong is logged, and the next look comes in a minute.
        catch (Exception trouble)
#pragma warning restore CA1031
        {
            log.LogError(trouble, "A copy could not be taken");
        }
    }
}
