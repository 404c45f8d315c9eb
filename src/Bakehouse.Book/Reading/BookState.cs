namespace Bakehouse.Book.Reading;

using Bakehouse.Domain;
using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Answers;
using Bakehouse.Domain.Chores;
using Bakehouse.Domain.FarDates;
using Bakehouse.Domain.Freezer;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Reminders;
using Bakehouse.Domain.Shops;
using Bakehouse.Domain.Slips;
using NodaTime;

/// <summary>
/// What stands in the book now, read once after each accepted command and shared by every page. Immutable.
/// </summary>
/// <param name="Head">Counts accepted changes; screens compare it.</param>
/// <param name="Shop">Null in an empty book.</param>
/// <param name="Orders">Newest version of every order, by handover.</param>
/// <param name="Ticks">Ticks of the planned orders that stand (undone ones are left out).</param>
/// <param name="Week">The week compiled from the above when it was read, or null in an empty book.</param>
/// <param name="Wall">The plan on the wall, or null if nothing is planned.</param>
/// <param name="Answers">Answers to rings of the planned orders, newest last.</param>
public sealed record BookState(
    int Head,
    Shop? Shop,
    IReadOnlyList<Order> Orders,
    IReadOnlyList<Tick> Ticks,
    Week? Week,
    Wall? Wall,
    IReadOnlyList<RingAnswer> Answers)
{
    /// <summary>How much the clocks of two machines may differ.</summary>
    private static readonly Duration ClocksDiffer = Duration.FromMinutes(2);

    /// <summary>When the newest accepted fact was written, by the clock of then.</summary>
    public Instant Newest { get; init; } = Instant.MinValue;

    /// <summary>When this was read, by the clock of then.</summary>
    public Instant ReadAt { get; init; } = Instant.MinValue;

    /// <summary>Open addresses of calendars, one a person at most.</summary>
    public IReadOnlyList<CalendarAddress> Calendars { get; init; } = [];

    /// <summary>Pins that stand, one a step at most.</summary>
    public IReadOnlyList<Pin> Pins { get; init; } = [];

    /// <summary>Newest version of every chore that was not dropped.</summary>
    public IReadOnlyList<Chore> Chores { get; init; } = [];

    /// <summary>When somebody last said of a step of the planned orders that it is not done, by step; ticked since or not.</summary>
    public IReadOnlyDictionary<string, Instant> NotDone { get; init; } = new Dictionary<string, Instant>();

    /// <summary>What went wrong in the last sixty days and was not taken back.</summary>
    public IReadOnlyList<Slip> Slips { get; init; } = [];

    /// <summary>Sponges in the freezer that belong to no cake, as counted, less what was taken since; oldest first.</summary>
    public IReadOnlyList<SpareSponges> Freezer { get; init; } = [];

    /// <summary>Recipes and ingredients as they stand; the empty one if none were written.</summary>
    public Cookbook Cookbook { get; init; } = Cookbook.Empty;

    /// <summary>Older cookbooks from which planned orders are made, by version.</summary>
    public IReadOnlyDictionary<int, Cookbook> Cookbooks { get; init; } = new Dictionary<int, Cookbook>();

    /// <summary>The recipes of an order, its locked packs in use; what stands for an order that is not planned.</summary>
    public Cookbook CookbookOf(Order order)
    {
        if (order.MadeFrom is not { } from)
        {
            return Stages.IsPlanned(order.Stage) ? Cookbook.Empty : Cookbook;
        }

        var book = from.Cookbook == Cookbook.Version ? Cookbook : Cookbooks.GetValueOrDefault(from.Cookbook) ?? Cookbook.Empty;
        return book.Using(from.Packs);
    }

    /// <summary>What stops the next making step of an order; empty if work may go on.</summary>
    public IReadOnlyList<Problem> StopsOf(Order order) => Shop is { } shop ? BeforeWork.Stops(order, CookbookOf(order), Cookbook, shop) : [];

    /// <summary>What the planner plans around.</summary>
    public ByHand Hand => new(Pins, Chores) { NotDone = NotDone, Slips = Slips, RecipesOf = CookbookOf };

    /// <summary>Orders that should have a plan by now and hang on no wall, by handover: their day has come near, or they found no room.</summary>
    public IReadOnlyList<Order> WithoutPlan(Instant now)
    {
        if (Shop is not { } shop)
        {
            return [];
        }

        var today = now.InZone(DateTimeZoneProviders.Tzdb[shop.Zone]).Date;
        var hung = Wall?.Plan.Steps.Select(r => r.Step[..32]).ToHashSet(StringComparer.Ordinal) ?? [];
        return [.. Orders.Where(o => PlanReach.IsIn(o, shop, today, Ticks) && !hung.Contains(o.Id.ToString("N"))).OrderBy(o => o.Handover.At).ThenBy(o => o.Number)];
    }

    /// <summary>True if the book holds facts of more than 2 min later than this: then the clock is wrong, or was.</summary>
    public bool IsAhead(Instant now) => Newest != Instant.MinValue && Newest - now > ClocksDiffer;
}

/// <summary>A secret address under which somebody's rings may be read by a calendar.</summary>
/// <param name="Person">Whose rings.</param>
/// <param name="Secret">SHA-256 of the secret, hexadecimal in capitals.</param>
/// <param name="Made">Since when.</param>
public sealed record CalendarAddress(string Person, string Secret, Instant Made);

/// <summary>The order book as the pages see it.</summary>
public interface IBook
{
    /// <summary>What stands now.</summary>
    BookState State { get; }

    /// <summary>Raised after each accepted change, off the caller's thread; carries the new state.</summary>
    event Action<BookState>? Changed;

    /// <summary>Enters a command: rights, checks, one transaction; the same answer when sent twice.</summary>
    Task<Entries.Answer> Enter(Entries.Command command, CancellationToken cancel = default);

    /// <summary>What the book would say to a command now, and the plan that would hang then; nothing is written.</summary>
    Task<Foreseen> Foresee(Entries.Command command, CancellationToken cancel = default);

    /// <summary>
    /// "Can we?" for an order as far as it is known (name, telephone and allergies may be missing): the wished time alone, with the plan
    /// that proves it. Nothing is written. Null if too many ask at once: ask again in a moment.
    /// </summary>
    Task<CanWe?> Ask(Order order, CancellationToken cancel = default);

    /// <summary>The rest of an answer: the earliest time, what decides, what else could be. Null if too many ask at once.</summary>
    Task<CanWe?> AskFurther(CanWe first, CancellationToken cancel = default);

    /// <summary>
    /// The last of an answer, which may take a moment: for a wish that fails the earliest time at which others make way and every promise is kept,
    /// as one more offer at the end. Null if too many ask at once.
    /// </summary>
    Task<CanWe?> AskLast(CanWe whole, CancellationToken cancel = default);

    /// <summary>How one day stands for an order as far as it is known; null if too many ask at once.</summary>
    /// <param name="hour">The hour that was wished; null if any of the day will do.</param>
    Task<DayAnswer?> AskDay(LocalDate day, Order order, LocalTime? hour, CancellationToken cancel = default);

    /// <summary>Every version of an order, oldest first, with who wrote it and when.</summary>
    Task<IReadOnlyList<OrderVersion>> History(Guid order, CancellationToken cancel = default);

    /// <summary>What was said about the steps of an order, oldest first: ticks, those taken back or corrected, answers to rings.</summary>
    Task<IReadOnlyList<CakeLine>> Log(Guid order, CancellationToken cancel = default);

    /// <summary>Every version of a recipe, newest first; empty if there is no such recipe.</summary>
    Task<IReadOnlyList<RecipeVersion>> RecipeHistory(string recipe, CancellationToken cancel = default);

    /// <summary>The draft kept for this device, or null.</summary>
    Task<string?> Draft(string device, CancellationToken cancel = default);

    /// <summary>
    /// Orders of any stage whose newest version has all the words: of the name (accents don't matter), phone digits, number, day
    /// ("2026-11-28", "28 november", "saturday"). Latest handover first, at most 50.
    /// </summary>
    Task<IReadOnlyList<OrderFound>> Find(string question, CancellationToken cancel = default);

    /// <summary>Compiles the week anew as of now, with nothing written: time alone has passed. Raises <see cref="Changed"/>.</summary>
    Task Refresh(CancellationToken cancel = default);
}

/// <summary>What a command would do.</summary>
/// <param name="Answer">What the book would say.</param>
/// <param name="Head">The head that it was looked at on; with another the answer may differ.</param>
/// <param name="Wall">The plan on the wall then, or as it is if it would not be accepted.</param>
/// <param name="Repair">What it moves, turns red and makes to be told, for what went wrong; else null.</param>
public sealed record Foreseen(Entries.Answer Answer, int Head, Wall? Wall, Repaired? Repair = null);

/// <summary>One version of an order as it was written.</summary>
public sealed record OrderVersion(Order Order, string Person, string Device, Instant Written);
