namespace Bakehouse.Book;

using Bakehouse.Book.Answers;
using Bakehouse.Book.Entries;
using Bakehouse.Domain.Answers;
using Bakehouse.Domain.Orders;
using NodaTime;

/// <summary>"Can we?": reads what stands, works on a thread of its own, writes nothing.</summary>
public sealed partial class OrderBook
{
    // Asked at every counter at once, pages and the plan itself must still be quick: one processor is left to them. A first answer, for
    // which a customer waits, never stands behind what is looked for further.
    private const int MostWaiting = 8;
    private static readonly int AtOnce = Math.Clamp(Environment.ProcessorCount - 1, 1, 4);
    private readonly Gate first = new(AtOnce, MostWaiting);
    private readonly Gate further = new(AtOnce, MostWaiting);

    // What takes longest keeps nobody else waiting who asks for less.
    private readonly Gate last = new(1, MostWaiting);

    /// <inheritdoc/>
    public Task<CanWe?> Ask(Order order, CancellationToken cancel = default) => Asked(first, a => a.First(order), cancel);

    /// <inheritdoc/>
    public Task<CanWe?> AskFurther(CanWe first, CancellationToken cancel = default) => Asked(further, a => a.Whole(first), cancel);

    /// <inheritdoc/>
    public Task<CanWe?> AskLast(CanWe whole, CancellationToken cancel = default) => Asked(last, a => a.Last(whole), cancel);

    /// <inheritdoc/>
    public Task<DayAnswer?> AskDay(LocalDate day, Order order, LocalTime? hour, CancellationToken cancel = default) => Asked(further, a => a.On(day, order, hour), cancel);

    private Task<T?> Asked<T>(Gate gate, Func<Asking, T> ask, CancellationToken cancel)
        where T : class
    {
        var (state, now) = (State, clock.GetCurrentInstant());
        return gate.Through(() => ask(new Asking(new Desk(state, planner, now, file), cancel)), cancel);
    }
}
