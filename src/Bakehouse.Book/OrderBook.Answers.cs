namespace Bakehouse.Book;

using Bakehouse.Book.Answers;
using Bakehouse.Book.Entries;
using Bakehouse.Domain.Answers;
using Bakehouse.Domain.Orders;
using NodaTime;

/// <summary>"Can we?": reads what stands, works on a thread of its own, writes nothing.</summary>
public sealed partial class OrderBook
{
    // Asked at every counter at once, pages and the plan itself must still be quick: one processor is left to them, so many wait, the next is
    // sent away.
    private static readonly int MostAsked = Math.Clamp(Environment.ProcessorCount - 1, 1, 4);
    private static readonly int MostWaiting = 12 - MostAsked;
    private readonly SemaphoreSlim asked = new(MostAsked);
    private int asking;

    /// <inheritdoc/>
    public Task<CanWe?> Ask(Order order, CancellationToken cancel = default) => Asked(a => a.First(order), cancel);

    /// <inheritdoc/>
    public Task<CanWe?> AskFurther(CanWe first, CancellationToken cancel = default) => Asked(a => a.Whole(first), cancel);

    /// <inheritdoc/>
    public Task<DayAnswer?> AskDay(LocalDate day, Order order, LocalTime? hour, CancellationToken cancel = default) => Asked(a => a.On(day, order, hour), cancel);

    private async Task<T?> Asked<T>(Func<Asking, T> ask, CancellationToken cancel)
        where T : class
    {
        var (state, now) = (State, clock.GetCurrentInstant());
        try
        {
            if (Interlocked.Increment(ref asking) > MostAsked + MostWaiting)
            {
                return null;
            }

            await asked.WaitAsync(cancel);
            try
            {
                return await Task.Run(() => ask(new Asking(new Desk(state, planner, now, file), cancel)), cancel);
            }
            finally
            {
                asked.Release();
            }
        }
        finally
        {
            Interlocked.Decrement(ref asking);
        }
    }
}
