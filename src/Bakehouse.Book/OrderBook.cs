namespace Bakehouse.Book;

using System.Diagnostics.Metrics;
using Bakehouse.Book.Entries;
using Bakehouse.Book.Figures;
using Bakehouse.Book.Keeping;
using Bakehouse.Book.Reading;
using Bakehouse.Book.Tables;
using Bakehouse.Domain;
using Bakehouse.Domain.Planning;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Logging.Abstractions;
using NodaTime;

/// <summary>
/// The order book on disk. Commands are entered one after another; each is decided on what stands, then written in one
/// transaction that first moves the head on. An answer is given only after COMMIT has returned.
/// </summary>
public sealed partial class OrderBook : IBook, IDisposable
{
    private readonly BookFile file;
    private readonly IPlanner planner;
    private readonly IClock clock;
    private readonly ILogger log;
    private readonly BookFigures figures;
    private readonly StateReader reader;
    private readonly Ledger ledger;
    private readonly Announcer announcer;
    private readonly Reserve reserve;
    private readonly SemaphoreSlim turn = new(1);
    private int closed;
    private int diskFaults;
    private bool behind;
    private readonly TickMoves moved = new();

    private OrderBook(BookFile file, IPlanner planner, IClock clock, ILogger log, IMeterFactory? meters)
    {
        this.file = file;
        figures = BookFigures.Of(meters);
        this.planner = new TimedPlanner(planner, figures);
        this.clock = clock;
        this.log = log;
        reader = new StateReader(file);
        ledger = new Ledger(file);
        reserve = new Reserve(file.Path);
        announcer = new Announcer(state => Changed?.Invoke(state), log);
        State = reader.Read(clock.GetCurrentInstant());
    }

    /// <inheritdoc/>
    public event Action<BookState>? Changed;

    /// <inheritdoc/>
    public BookState State { get; private set; }

    /// <summary>Opens the book at a path, or makes a new one.</summary>
    /// <exception cref="BookClosedException">It is open elsewhere, from a newer version, or can't be read.</exception>
    public static OrderBook Open(string path, IPlanner planner, IClock clock, ILogger<OrderBook>? log = null, IMeterFactory? meters = null) =>
        Open(path, planner, clock, log, null, meters);

    /// <summary>Keeps some room on the disk for the day on which it is full; on a disk with little room none, which is told in the log.</summary>
    public void KeepReserve()
    {
        if (!reserve.Keep())
        {
            log.LogWarning("No reserve is kept: the disk has too little room");
        }
    }

    /// <summary>The same; a test puts faults into the contexts.</summary>
    internal static OrderBook Open(string path, IPlanner planner, IClock clock, ILogger<OrderBook>? log, Action<DbContextOptionsBuilder>? also, IMeterFactory? meters = null)
    {
        var opened = BookFile.Open(path, also);
        try
        {
            return new OrderBook(opened, planner, clock, log ?? NullLogger<OrderBook>.Instance, meters);
        }
        catch
        {
            opened.Dispose();
            throw;
        }
    }

    /// <inheritdoc/>
    public async Task<Answer> Enter(Command command, CancellationToken cancel = default)
    {
        await turn.WaitAsync(cancel);
        try
        {
            return await Task.Run(() => EnterOrSay(command), CancellationToken.None);
        }
        finally
        {
            turn.Release();
        }
    }

    /// <inheritdoc/>
    public Task<Foreseen> Foresee(Command command, CancellationToken cancel = default)
    {
        var (state, now) = (State, clock.GetCurrentInstant());
        return Task.Run(
            () =>
            {
                var outcome = Entry.Decide(command, new Desk(state, planner, now, file) { Moved = moved.Rows });
                return new Foreseen(outcome.Answer, state.Head, outcome.Change is { } change ? change.Wall : state.Wall, outcome.Repair);
            },
            cancel);
    }

    /// <inheritdoc/>
    public Task<IReadOnlyList<OrderVersion>> History(Guid order, CancellationToken cancel = default) => Read<IReadOnlyList<OrderVersion>>(
        book => [.. book.Orders.AsNoTracking().Where(r => r.Id == order).OrderBy(r => r.Version).AsEnumerable().Select(r => new OrderVersion(r.Order(), r.Person, r.Device, r.Written))],
        cancel);

    /// <inheritdoc/>
    public Task<IReadOnlyList<CakeLine>> Log(Guid order, CancellationToken cancel = default) => Read(book => CakeLog.Of(book, order), cancel);

    /// <inheritdoc/>
    public Task<IReadOnlyList<RecipeVersion>> RecipeHistory(string recipe, CancellationToken cancel = default) => Read(book => RecipeLog.Of(book, recipe), cancel);

    /// <inheritdoc/>
    public Task<string?> Draft(string device, CancellationToken cancel = default) =>
        Read(book => book.Drafts.AsNoTracking().FirstOrDefault(d => d.Device == device)?.Text, cancel);

    /// <inheritdoc/>
    public Task<IReadOnlyList<OrderFound>> Find(string question, CancellationToken cancel = default) =>
        Read(book => OrderSearch.Find(book, question), cancel);

    /// <inheritdoc/>
    public async Task Refresh(CancellationToken cancel = default)
    {
        await turn.WaitAsync(cancel);
        try
        {
            var now = clock.GetCurrentInstant();
            State = behind ? await Task.Run(() => reader.Read(now), CancellationToken.None) : StateReader.At(State, now);
            behind = false;
            announcer.Tell(State);
        }
        finally
        {
            turn.Release();
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        if (Interlocked.Exchange(ref closed, 1) == 1)
        {
            return;
        }

        // Whoever is writing finishes first.
        turn.Wait();
        announcer.Dispose();
        file.Dispose();
        turn.Dispose();
    }

    private Task<T> Read<T>(Func<BookContext, T> read, CancellationToken cancel) => Task.Run(
        () =>
        {
            using var book = file.Context();
            return read(book);
        },
        cancel);

    /// <summary>What was written stands, whether it can be read at this moment or not; if not, the next command reads first.</summary>
    private void ReadAgain(Instant now)
    {
        try
        {
            State = reader.Read(now);
            behind = false;
            announcer.Tell(State);
        }
        catch (Exception trouble) when (DiskTrouble.Of(trouble) is not null)
        {
            log.LogError(trouble, "The book could not be read after head {Head}", State.Head);
            behind = true;
        }
    }

    private Answer EnterWithRetry(Command command)
    {
        const int tries = 5;
        for (var attempt = 1; ; attempt++)
        {
            try
            {
                return EnterOnce(command);
            }
            catch (LostRaceException) when (attempt < tries)
            {
                State = reader.Read(clock.GetCurrentInstant());
            }
        }
    }

    private Answer EnterOnce(Command command)
    {
        if (behind)
        {
            State = reader.Read(clock.GetCurrentInstant());
            behind = false;
            announcer.Tell(State);
        }

        if (ledger.AnswerTo(command) is { } answered)
        {
            return answered;
        }

        var now = clock.GetCurrentInstant();
        var before = State;
        var outcome = Entry.Decide(command, new Desk(before, planner, now, file) { Moved = moved.Rows });
        ledger.Write(command, outcome, before, now);
        figures.Decided(command, outcome.Answer.Kind);
        log.LogInformation("Command {Command} {Id} on {Subject}: {Outcome}", command.GetType().Name, command.Id, outcome.Subject, outcome.Answer.Kind);
        if (outcome.Change is { MovesHead: true })
        {
            ReadAgain(now);
            moved.Remember(before, State);
        }

        return outcome.Answer;
    }
}
