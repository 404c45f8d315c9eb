namespace Bakehouse.Book.Tests.Entries;

using Bakehouse.Book.Entries;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Planner.Quick;
using NodaTime.Testing;

/// <summary>A cake that finds no room any more is named and stops no other.</summary>
public sealed class StuckCakeTests
{
    [Fact]
    public async Task The_others_are_planned_ticked_and_taken_while_one_is_in_no_plan_and_it_comes_back_when_there_is_room()
    {
        var planner = new NoRoomFor();
        using var disk = new BookOnDisk(planner: planner);
        var stuck = (await disk.Write(BookOnDisk.Order("Moss"))).Order!;
        var other = (await disk.Write(BookOnDisk.Order("Hale"))).Order!;
        planner.Order = stuck.Id;

        var tick = await disk.Enter(new TickStep(BookOnDisk.NewId(), "petra", "tablet", First(disk, other), "petra"));
        Assert.Equal(AnswerKind.Accepted, tick.Kind);
        Assert.Contains("Moss has no room. Take it off the week.", tick.Message, StringComparison.Ordinal);
        Assert.Equal([other.Id], OnTheWall(disk));

        var third = await disk.Write(BookOnDisk.Order("Okafor"));
        Assert.Equal(AnswerKind.Accepted, third.Kind);
        Assert.Equal(new HashSet<Guid> { other.Id, third.Order!.Id }, OnTheWall(disk).ToHashSet());
        Assert.All(disk.Book.State.Orders, o => Assert.Equal(o.Id == other.Id ? Stage.InWork : Stage.Booked, o.Stage));

        planner.Order = null;
        await disk.Enter(new TickStep(BookOnDisk.NewId(), "petra", "tablet", First(disk, third.Order), "petra"));
        Assert.Contains(stuck.Id, OnTheWall(disk));
    }

    [Fact]
    public async Task A_changed_shop_says_which_cake_finds_no_room_in_it()
    {
        var planner = new NoRoomFor();
        using var disk = new BookOnDisk(planner: planner);
        planner.Order = (await disk.Write(BookOnDisk.Order("Moss"))).Order!.Id;
        await disk.Write(BookOnDisk.Order("Hale"));

        var answer = await disk.Enter(new WriteShop(BookOnDisk.NewId(), "ines", "office", disk.Book.State.Shop! with { Name = "Tolliver Row" }));

        Assert.Equal((AnswerKind.Accepted, "Moss has no room. Take it off the week."), (answer.Kind, answer.Message));
        Assert.DoesNotContain(planner.Order.Value, OnTheWall(disk));
    }

    [Fact]
    public async Task An_order_that_finds_no_room_itself_is_refused_with_the_reason()
    {
        var planner = new NoRoomFor();
        using var disk = new BookOnDisk(planner: planner);
        var order = BookOnDisk.Order("Moss");
        planner.Order = order.Id;
        var answer = await disk.Write(order);
        Assert.Equal(AnswerKind.Refused, answer.Kind);
        Assert.Contains(answer.Problems, p => p.Sentence == "Moss has no room.");
        Assert.Null(disk.Book.State.Wall);
    }

    private static string First(BookOnDisk disk, Order order) =>
        disk.Book.State.Wall!.Plan.Steps.Where(s => StepKey.Parse(s.Step)!.Value.Order == order.Id).MinBy(s => s.Start)!.Step;

    private static IReadOnlyList<Guid> OnTheWall(BookOnDisk disk) =>
        [.. disk.Book.State.Wall!.Plan.Steps.Select(s => StepKey.Parse(s.Step)!.Value.Order).Distinct()];

    /// <summary>The usual planner, for which one order never fits.</summary>
    private sealed class NoRoomFor : IPlanner
    {
        private readonly QuickPlanner usual = new();

        public Guid? Order { get; set; }

        public PlanOutcome Plan(Week week, CancellationToken cancel = default) => None(week) ?? usual.Plan(week, cancel);

        public PlanOutcome Insert(Week week, CancellationToken cancel = default) => None(week) ?? usual.Insert(week, cancel);

        public PlanOutcome Push(Week week, CancellationToken cancel = default) => None(week) ?? usual.Push(week, cancel);

        public PlanOutcome Repair(Week week, int calmUntil, CancellationToken cancel = default) => None(week) ?? usual.Repair(week, calmUntil, cancel);

        private PlanOutcome? None(Week week) => week.Orders.FirstOrDefault(o => Guid.Parse(o.Id) == Order) is { } found
            ? new PlanOutcome(null, new Dictionary<string, int>(), [new Reason($"{found.Name.Split(' ')[^1]} has no room.", "Take it off the week.", found.Id)])
            : null;
    }
}
