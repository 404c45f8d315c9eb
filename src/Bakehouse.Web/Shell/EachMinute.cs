namespace Bakehouse.Web.Shell;

/// <summary>
/// Looks at start and once a minute, so that a sleeping machine or a clock that jumps costs a minute. One look that fails is told in the log, and
/// the next comes all the same.
/// </summary>
public abstract class EachMinute(TimeProvider time, ILogger log) : BackgroundService
{
    private static readonly TimeSpan BetweenLooks = TimeSpan.FromMinutes(1);

    /// <summary>Looks. Looking twice does no harm.</summary>
    protected abstract Task LookOnce(CancellationToken cancel);

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
            await LookOnce(cancel);
        }
        catch (OperationCanceledException) when (cancel.IsCancellationRequested)
        {
            throw;
        }
#pragma warning disable CA1031 // The edge: whatever went wrong is logged, and the next look comes in a minute.
        catch (Exception trouble)
#pragma warning restore CA1031
        {
            log.LogError(trouble, "A look failed");
        }
    }
}
