namespace Bakehouse.Book.Tests;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Keeping.Auditing;
using Bakehouse.Domain.Answers;
using Bakehouse.Domain.Chores;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Shops;
using Bakehouse.Domain.Slips;
using Bakehouse.Planner.Quick;
using Microsoft.EntityFrameworkCore;
using NodaTime;
using NodaTime.Testing;

/// <summary>A book in a folder of its own, with a clock that stands still; it can be closed and opened again.</summary>
internal sealed class BookOnDisk : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("bakehouse-book-").FullName;

    private readonly IPlanner planner;

    private readonly Action<DbContextOptionsBuilder>? also;

    public BookOnDisk(bool withShop = true, IPlanner? planner = null, Action<DbContextOptionsBuilder>? also = null)
    {
        this.also = also;
        this.planner = planner ?? new QuickPlanner();
        Book = Open();
        if (withShop)
        {
            SetUp();
        }
    }

    /// <summary>A Wednesday morning.</summary>
    public FakeClock Clock { get; } = new(Instant.FromUtc(2026, 10, 14, 7, 0));

    public OrderBook Book { get; private set; }

    public string Path => System.IO.Path.Combine(folder, "deep", "book.db");

    public static Guid NewId() => Guid.NewGuid();

    /// <summary>The sample's shop, as somebody would type it in.</summary>
    public static Shop Shop { get; } = SampleBakery.Shop with { Version = 0, IsSample = false };

    public OrderBook Open() => OrderBook.Open(Path, planner, Clock, null, also);

    public void Reopen()
    {
        Book.Dispose();
        Book = Open();
    }

    public async Task<Answer> Enter(Command command) => await Book.Enter(command, TestContext.Current.CancellationToken);

    /// <summary>The whole answer to "can we?".</summary>
    public async Task<CanWe> Asked(Order order)
    {
        var first = await Book.Ask(order, TestContext.Current.CancellationToken);
        return (await Book.AskFurther(first!, TestContext.Current.CancellationToken))!;
    }

    /// <summary>The same with what takes a moment.</summary>
    public async Task<CanWe> AskedToTheEnd(Order order) => (await Book.AskLast(await Asked(order), TestContext.Current.CancellationToken))!;

    public Task<Answer> Write(Order order, string person = "ines") => Enter(new WriteOrder(NewId(), person, "counter", order));

    /// <summary>An order for a day of the third week of October 2026, one round tier of vanilla unless told.</summary>
    public static Order Order(string name = "Moss", int day = 17, int hour = 14, Stage stage = Stage.Booked, params int[] inches) => new(
        NewId(),
        0,
        0,
        stage,
        new Customer(name, "+442079460182"),
        new Handover(Way.Collect, new LocalDateTime(2026, 10, day, hour, 0), "", 0),
        null,
        new Portions(Math.Min(20, (inches.Length == 0 ? [8] : inches).Sum(i => PortionChart.Usual.Of(Length.FromInches(i), Cut.Dessert))), Cut.Dessert),
        [.. (inches.Length == 0 ? [8] : inches).Select(i => new CakeTier(
            NewId(), Length.FromInches(i), Length.FromCentimetres(10), 3, "vanilla", "raspberry-jam", [new CoatColour("Ivory", "#F7F0E1", 1)]))],
        Finish.Smooth,
        Decoration.Simple,
        AllergyAnswer.NoneTold,
        "",
        "");

    /// <summary>Pins a step where the wall has it, or elsewhere.</summary>
    public PinStep Pin(string step, Guid? id = null, string person = "ines", int later = 0, IReadOnlyList<string>? people = null)
    {
        var wall = Book.State.Wall!;
        var row = wall.Plan.Steps.Single(r => r.Step == step);
        return new PinStep(id ?? NewId(), person, "counter", step, wall.Epoch + Duration.FromMinutes(row.Start + later), people ?? row.People, row.Machine, Book.State.Head);
    }

    /// <summary>Counter bake of Petra and the first oven, Tuesdays to Saturdays from six to half past seven.</summary>
    public static Chore Chore() => new(
        NewId(), 0, ChoreKind.CounterBake, "Counter bake", new LocalDate(2026, 10, 14), new LocalTime(6, 0), new LocalTime(7, 30),
        [IsoDayOfWeek.Tuesday, IsoDayOfWeek.Wednesday, IsoDayOfWeek.Thursday, IsoDayOfWeek.Friday, IsoDayOfWeek.Saturday], null, ["petra"], ["oven1"], []);

    /// <summary>Our own recipes, every pack read, into a book that has none.</summary>
    public static WriteRecipes Recipes(Guid? id = null) => new(
        id ?? NewId(), "ines", "counter", [.. Starter.Sample.Ingredients.Select(i => i with { Version = 0 })], [.. Starter.Sample.Recipes.Select(r => r with { Version = 0 })], "The first recipes");

    /// <summary>The same order with something to avoid.</summary>
    public static Order Avoiding(Order order, params string[] avoid) => order with { Allergies = new AllergyAnswer(AllergyKind.Avoid, avoid, "swells up") { Judged = "swells up" } };

    /// <summary>Told by the owner at the counter; times in hours from now.</summary>
    public TellSlip Tell(SlipKind kind, string about, double? until = null, Guid? id = null, string person = "ines", bool spare = false)
    {
        var (now, command) = (Clock.GetCurrentInstant(), id ?? NewId());
        return new TellSlip(command, person, "counter", new Slip(
            command, kind, [about], now, person, kind is SlipKind.Out or SlipKind.Away ? now : null, until is { } hours ? now + Duration.FromMinutes((long)(hours * 60)) : null, spare));
    }

    /// <summary>
    /// A cake is taken, its baking moved an hour later by hand and let go again: the plan as it was made, and the worse one with overtime that
    /// hangs now.
    /// </summary>
    public async Task<(Wall Better, Wall Worse, Guid Order)> PlanMadeWorse()
    {
        var order = (await Write(Order())).Order!;
        var better = Book.State.Wall!;
        var bake = better.Plan.Steps.Select(r => r.Step).First(s => s.StartsWith(order.Id.ToString("N"), StringComparison.Ordinal) && s.Contains(".bake.", StringComparison.Ordinal));
        var answer = await Enter(Pin(bake, later: 60));
        Assert.True(answer.Kind == AnswerKind.Accepted, answer.Message + string.Join(' ', answer.Problems.Select(p => p.Sentence)));
        Assert.Equal(AnswerKind.Accepted, (await Enter(new UnpinStep(NewId(), "ines", "counter", bake))).Kind);
        return (better, Book.State.Wall!, order.Id);
    }

    /// <summary>A day two weeks on is kept, and the hours pass for which it is. Returns the order's id.</summary>
    public async Task<Guid> KeptDayIsOver()
    {
        var order = Order("Kept", stage: Stage.Kept);
        var day = Clock.GetCurrentInstant().InUtc().Date.PlusDays(14).Next(IsoDayOfWeek.Saturday);
        Assert.Equal(AnswerKind.Accepted, (await Write(order with { Handover = order.Handover with { At = day.At(new LocalTime(14, 0)) } })).Kind);
        Clock.AdvanceHours(Book.State.Shop!.Settings.KeepHours);
        return order.Id;
    }

    /// <summary>An order is taken for a day beyond the planned ones; then the days pass until it is within them. Returns its id.</summary>
    public async Task<Guid> FarOrderComesNear()
    {
        var today = Clock.GetCurrentInstant().InUtc().Date;
        var order = Order("Far");
        var day = today.PlusDays(Book.State.Shop!.Settings.PlanDays + 1);
        day = day.DayOfWeek is IsoDayOfWeek.Sunday or IsoDayOfWeek.Monday ? day.PlusDays(2) : day;
        order = order with { Handover = order.Handover with { At = day.At(new LocalTime(14, 0)) } };
        Assert.Equal(AnswerKind.Accepted, (await Write(order)).Kind);
        Clock.AdvanceDays(Period.DaysBetween(today, day) - Book.State.Shop.Settings.PlanDays);
        return order.Id;
    }

    public void Dispose()
    {
        Book.Dispose();
        // Whatever a test wrote, the audit finds no fault in it.
        var faults = BookAudit.Examine(Path);
        Directory.Delete(folder, recursive: true);
        Assert.Empty(faults);
    }

    private void SetUp()
    {
        var answer = Book.Enter(new WriteShop(NewId(), "", "counter", Shop)).GetAwaiter().GetResult();
        Assert.Equal(AnswerKind.Accepted, answer.Kind);
    }
}
