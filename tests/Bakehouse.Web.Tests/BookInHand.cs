namespace Bakehouse.Web.Tests;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;
using Bakehouse.Domain.Answers;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using NodaTime;

/// <summary>A book in memory with an invented shop, for pages under test: it takes every order and knows a clash.</summary>
public sealed class BookInHand : IBook
{
    private readonly List<OrderVersion> written = [];
    private readonly Dictionary<string, string> drafts = new(StringComparer.Ordinal);

    public event Action<BookState>? Changed;

    /// <summary>Pages that listen for a change.</summary>
    public int Listeners => Changed?.GetInvocationList().Length ?? 0;

    /// <summary>The log of any cake.</summary>
    public IReadOnlyList<CakeLine> Lines { get; set; } = [];

    /// <summary>Every command that was entered.</summary>
    public IList<Command> Heard { get; } = [];

    /// <summary>The answer to the next order, or null to take it.</summary>
    public Answer? Next { get; set; }

    public BookState State { get; set; } = new(1, Sample(), [], [], null, null, []);

    public static Answer Accepted(Order? order = null) => new(AnswerKind.Accepted, "", [], order, new Dictionary<string, int>());

    public static Shop Sample() => new(
        1, "Tolliver Row Cakes", "Europe/London",
        [.. Enumerable.Range(2, 5).Select(d => new OpeningHours((IsoDayOfWeek)d, new(7, 0), new(18, 0)))],
        [],
        [
            Named("ines", "Ines", "star", Role.Owner), Named("petra", "Petra", "whisk", Role.Baker), Named("dov", "Dov", "rose", Role.Decorator),
            Named("wren", "Wren", "bell", Role.Counter), Named("sal", "Sal", "key", Role.Driver),
        ],
        [new Oven("o1", "Oven 1", OvenKind.Fan, 3, Length.FromCentimetres(46), Length.FromCentimetres(33))],
        [new Bowl("b1", "Bowl 1", 10, Mass.FromKilograms(4), 5000)],
        [new Shelf("f1", ShelfKind.Fridge, "Fridge 1", 1, Length.FromCentimetres(55), Length.FromCentimetres(60), Length.FromCentimetres(30))],
        15, 2, 2, new ShopSettings(), IsSample: true);

    public Task<Answer> Enter(Command command, CancellationToken cancel = default)
    {
        Heard.Add(command);
        return Task.FromResult(command switch
        {
            KeepDraft d => Keep(d),
            WriteOrder w => Next ?? Write(w.Order, w.Person),
            MoveStage m => Write(State.Orders.Single(o => o.Id == m.Order) with { Stage = m.To }, m.Person),
            WriteShop s => Set(s.Shop),
            _ => Accepted(),
        });
    }

    /// <summary>What is said to "can we?": yes with an hour to spare, unless told.</summary>
    public Func<Order, CanWe> Asked { get; set; } = order => new CanWe(Yes(order), 1);

    /// <summary>A fit with an hour to spare.</summary>
    public static Fit Yes(Order order) => new(order, Instant.FromUtc(2026, 10, 14, 8, 0), 60, new Dictionary<string, int>(), new Wall(default, new Plan("", new Dictionary<string, string>(), [], [], [])), []);

    /// <summary>So often too many others ask first.</summary>
    public int Crowded { get; set; }

    public Task<CanWe?> Ask(Order order, CancellationToken cancel = default) => Task.FromResult(Crowded-- > 0 ? null : Asked(order));

    /// <summary>What is found in the end, unless it is what was found before.</summary>
    public Func<CanWe, CanWe>? AskedLast { get; set; }

    public Task<CanWe?> AskLast(CanWe whole, CancellationToken cancel = default) => Task.FromResult<CanWe?>(AskedLast?.Invoke(whole) ?? whole);

    public Task<CanWe?> AskFurther(CanWe first, CancellationToken cancel = default) => Task.FromResult<CanWe?>(Asked(first.Wished.Order) with { IsWhole = true });

    /// <summary>How a day stands: as the shop is open, unless told.</summary>
    public Func<LocalDate, Order, LocalTime?, DayAnswer?>? AskedDay { get; set; }

    public Task<DayAnswer?> AskDay(LocalDate day, Order order, LocalTime? hour, CancellationToken cancel = default) => Task.FromResult(AskedDay is { } told
        ? told(day, order, hour)
        : State.Shop!.HoursOn(day).Count == 0 ? new DayAnswer(day, DayStands.Shut, null) : new DayAnswer(day, DayStands.Yes, day + (hour ?? new LocalTime(17, 30))));

    /// <summary>What a command would do; nothing, unless told.</summary>
    public Func<Command, Foreseen>? Future { get; set; }

    public Task<Foreseen> Foresee(Command command, CancellationToken cancel = default) =>
        Task.FromResult(Future?.Invoke(command) ?? new Foreseen(Accepted(), State.Head, State.Wall));

    public Task<IReadOnlyList<OrderVersion>> History(Guid order, CancellationToken cancel = default) =>
        Task.FromResult<IReadOnlyList<OrderVersion>>([.. written.Where(v => v.Order.Id == order)]);

    public Task<IReadOnlyList<CakeLine>> Log(Guid order, CancellationToken cancel = default) => Task.FromResult(Lines);

    /// <summary>What is known of older recipes.</summary>
    public IReadOnlyList<RecipeVersion> Recipes { get; set; } = [];

    public Task<IReadOnlyList<RecipeVersion>> RecipeHistory(string recipe, CancellationToken cancel = default) => Task.FromResult<IReadOnlyList<RecipeVersion>>([.. Recipes.Where(r => r.Recipe.Id == recipe)]);

    public Task<string?> Draft(string device, CancellationToken cancel = default) => Task.FromResult(drafts.GetValueOrDefault(device));

    public Task<IReadOnlyList<OrderFound>> Find(string question, CancellationToken cancel = default) =>
        Task.FromResult<IReadOnlyList<OrderFound>>([.. State.Orders
            .Where(o => o.Customer.Name.Contains(question, StringComparison.OrdinalIgnoreCase))
            .Select(o => new OrderFound(o.Id, o.Number, o.Stage, o.Customer.Name, o.Customer.Phone, o.Handover.At, o.SizeInInches))]);

    public Task Refresh(CancellationToken cancel = default)
    {
        Changed?.Invoke(State);
        return Task.CompletedTask;
    }

    /// <summary>Something changed: this stands now.</summary>
    public void Say(BookState state)
    {
        State = state;
        Changed?.Invoke(State);
    }

    /// <summary>Writes an order as it is.</summary>
    public Answer Write(Order order, string person)
    {
        var there = State.Orders.FirstOrDefault(o => o.Id == order.Id);
        if (there is not null && there.Version != order.Version)
        {
            return new Answer(AnswerKind.Clash, "", [], there, new Dictionary<string, int>());
        }

        var kept = order with { Version = order.Version + 1, Number = there?.Number ?? 401 + State.Orders.Count };
        written.Add(new OrderVersion(kept, person, "test", Instant.FromUtc(2026, 10, 14, 8, 0)));
        State = State with { Head = State.Head + 1, Orders = [.. State.Orders.Where(o => o.Id != order.Id).Append(kept).OrderBy(o => o.Handover.At)] };
        Changed?.Invoke(State);
        return Accepted(kept);
    }

    private static Person Named(string id, string name, string picture, Role role) => new(id, name, picture, role, Skills.All, [], []);

    private Answer Set(Shop shop)
    {
        State = State with { Shop = shop with { Version = shop.Version + 1 } };
        Changed?.Invoke(State);
        return Accepted();
    }

    private Answer Keep(KeepDraft draft)
    {
        drafts.Remove(draft.Device);
        if (draft.Text is not null)
        {
            drafts[draft.Device] = draft.Text;
        }

        return Accepted();
    }
}
