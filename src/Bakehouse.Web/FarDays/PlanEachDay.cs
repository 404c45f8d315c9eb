namespace Bakehouse.Web.FarDays;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;
using Bakehouse.Web.Shell;
using NodaTime;

/// <summary>
/// Enters <see cref="PlanNear"/> when the day of a far order has come near. Looks once a minute; what found no room is tried again after each
/// change of the book and on each new day, never in a circle.
/// </summary>
public sealed class PlanEachDay(IBook book, IClock clock, TimeProvider time, ILogger<PlanEachDay> log) : BackgroundService
{
    private static readonly TimeSpan BetweenLooks = TimeSpan.FromMinutes(1);
    private (int Head, LocalDate Day) tried;

    /// <summary>Plans what waits for a plan.</summary>
    public async Task Look(CancellationToken cancel = default)
    {
        var (state, now) = (book.State, clock.GetCurrentInstant());
        var today = Words.Of(state.Shop).Local(now).Date;
        if (tried == (state.Head, today) || state.IsAhead(now) || NearEntry.Waiting(state, now).Count == 0)
        {
            return;
        }

        var answer = await book.Enter(new PlanNear(Guid.NewGuid(), "", "by itself"), cancel);
        tried = (book.State.Head, today);
        log.LogInformation("What came near, at head {Head}: {Outcome}", book.State.Head, answer.Kind);
    }

    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        try
        {
            using var minute = new PeriodicTimer(BetweenLooks, time);
            do
            {
                await TryToLook(stoppingToken);
            }
            while (await minute.WaitForNextTickAsync(stoppingToken));
        }
        catch (OperationCanceledException) when (stoppingToken.IsCancellationRequested)
        {
            // The app closes.
        }
    }

    private async Task TryToLook(CancellationToken cancel)
    {
        try
        {
            await Look(cancel);
        }
        catch (OperationCanceledException) when (cancel.IsCancellationRequested)
        {
            throw;
        }
#pragma warning disable CA1031 // The edge: whatever went wrong is logged, and the next look comes in a minute.
        catch (Exception trouble)
#pragma warning restore CA1031
        {
            log.LogError(trouble, "What came near could not be planned");
        }
    }
}
