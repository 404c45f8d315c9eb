namespace Bakehouse.Web.Tests.TheWeek;

using Bakehouse.Book.Reading;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using Bakehouse.Planner.Quick;
using Bakehouse.Testing.Planning;
using NodaTime;

/// <summary>Books with a plan, for the drawing: the sample bakery, the public weeks, and one cake worked out by hand.</summary>
internal static class WeeksInHand
{
    /// <summary>Thursday 15 October 2026, 10:42 in London (summer time).</summary>
    public static Instant Thursday { get; } = Instant.FromUtc(2026, 10, 15, 9, 42);

    /// <summary>Midnight of Thursday 15 October 2026 in London.</summary>
    public static Instant Midnight { get; } = Instant.FromUtc(2026, 10, 14, 23, 0);

    private static readonly Guid Cake = new(0x409, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0);
    private static readonly Guid Tier = new(0x409, 1, 0, 0, 0, 0, 0, 0, 0, 0, 0);

    /// <summary>Id of the cake worked out by hand, as the plan writes it.</summary>
    public static string CakeId => Cake.ToString("N");

    /// <summary>The sample bakery as opened at that instant.</summary>
    public static BookState Sample(Instant now)
    {
        var opened = OpenedSample.At(now, new QuickPlanner());
        return new BookState(1, opened.Shop, opened.Orders, opened.Ticks, Week.From(opened.Orders, opened.Shop, opened.Ticks, opened.Wall, now), opened.Wall, []);
    }

    /// <summary>A public week with a plan for it.</summary>
    public static BookState Public(string week, string plan)
    {
        var read = WeekFiles.Week(week);
        return new BookState(1, SampleBakery.Shop with { Zone = read.Zone }, [], [], read, new Wall(read.Epoch, WeekFiles.Plan(plan)), []);
    }

    /// <summary>Key of a step of the cake worked out by hand.</summary>
    public static string Key(string operation) => new StepKey(Cake, operation is "bake" or "coat" ? Tier : null, operation, 1).ToString();

    /// <summary>
    /// Order 409, one 8 in tier, for Thursday 14:00, buffer 30 min. Bake 8:00 to 9:00, rack to 11:00, coat 11:00 to 11:30 by Dov,
    /// fridge (2 places of 10) to the box, which ends at <paramref name="boxed"/> minutes after midnight and takes 20; handed over
    /// at the later of 14:00 and then.
    /// </summary>
    public static BookState ByHand(int boxed, string name = "Lindqvist", params IReadOnlyList<string> ticked)
    {
        const int at = 14 * 60;
        var tier = new CakeTier(Tier, Length.FromInches(8), Length.FromCentimetres(10), 4, "vanilla", "buttercream", [new CoatColour("Ivory", "#F7F0E1", 1)]);
        var order = new Order(
            Cake, 409, 1, Stage.Booked, new Customer(name, ""), new Handover(Way.Collect, new LocalDateTime(2026, 10, 15, 14, 0), "", 0), null,
            new Portions(20, Cut.Dessert), [tier], Finish.Smooth, Decoration.Simple, AllergyAnswer.NoneTold, "", "");
        var week = new Week(
            "by hand", Midnight, "Europe/London", 5, 2880, 0, 0,
            [new WeekPerson("dov", "Dov", ["coat", "box", "counter"], [new Span(540, 1020)], [], true)],
            [], [new Machine("oven1", MachineKind.Oven, 5, 15, [], null, 2, new Dictionary<int, int> { [8] = 2 })], [], [],
            [new Store("rack", "rack", false, 30, 10, []), new Store("f1l1", "fridge", true, 30, 10, [])],
            [],
            [Step("bake", 60, null), Step("coat", 30, "coat"), Step("box", 20, "box"), Step("handover", 10, "counter")],
            [
                new Hold("a", Key("bake"), Key("coat"), 1, 0, [new Standing("rack", 90, 300)], null),
                new Hold("b", Key("coat"), Key("box"), 2, 0, [new Standing("f1l1", 60, 2880)], null),
            ],
            [], [],
            [new WeekOrder(CakeId, "409 Lindqvist", Key("box"), Key("handover"), false, at - 15, at, 1, 30, [])],
            []);
        var plan = new Plan(
            "by hand", new Dictionary<string, string>(),
            [
                new StepRow(Key("bake"), 480, [], "oven1", null), new StepRow(Key("coat"), 660, ["dov"], null, null),
                new StepRow(Key("box"), boxed - 20, ["dov"], null, null), new StepRow(Key("handover"), Math.Max(at, boxed), ["dov"], null, null),
            ],
            [new HoldRow("a", "rack"), new HoldRow("b", "f1l1")],
            []);
        return new BookState(
            1, SampleBakery.Shop, [order], [.. ticked.Select(t => new Tick(Key(t), Thursday, "dov"))], week, new Wall(Midnight, plan), []);
    }

    private static Step Step(string operation, int minutes, string? skill) =>
        new(Key(operation), CakeId, "", operation, minutes, skill, 1, [], null, operation == "bake" ? new Bake("177", [8]) : null, [], [], null);
}
