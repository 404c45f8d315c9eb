namespace Bakehouse.Book.Answers;

/// <summary>Lets so many work at once; others wait, and whoever comes beyond the most is sent away.</summary>
/// <param name="atOnce">How many work at once, 1 and up.</param>
/// <param name="waiting">How many may wait until one of those is done.</param>
#pragma warning disable CA1001 // Somebody may still be inside when the book closes; without a wait handle there is nothing to free.
internal sealed class Gate(int atOnce, int waiting)
#pragma warning restore CA1001
{
    private readonly SemaphoreSlim open = new(atOnce);
    private int inside;

    /// <summary>Works on a thread of its own; null if too many are there already.</summary>
    public async Task<T?> Through<T>(Func<T> work, CancellationToken cancel)
        where T : class
    {
        try
        {
            if (Interlocked.Increment(ref inside) > atOnce + waiting)
            {
                return null;
            }

            await open.WaitAsync(cancel);
            try
            {
                return await Task.Run(work, cancel);
            }
            finally
            {
                open.Release();
            }
        }
        finally
        {
            Interlocked.Decrement(ref inside);
        }
    }
}
