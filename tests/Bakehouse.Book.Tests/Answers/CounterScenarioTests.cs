namespace Bakehouse.Book.Tests.Answers;

using Bakehouse.Book.Entries;
using Bakehouse.Domain.Answers;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;
using NodaTime;
using static NodaTime.IsoDayOfWeek;

/// <summary>
/// What a customer asks, in words, and what somebody who has done it for years answers (common practice, no source; the bakery and its
/// people are invented).
/// </summary>
public sealed class CounterScenarioTests(ITestOutputHelper output)
{
    /// <summary>
    /// Three tiered cakes on one Saturday from a home kitchen: one oven, a fridge of three 50 × 32 cm shelves, one pair of hands and four
    /// hours' help. No shelf takes a stack and eight tiers need four shelves: not all three, and what decides is said with its figures.
    /// </summary>
    [Fact]
    public async Task Three_tiered_cakes_on_one_Saturday_do_not_fit_a_home_kitchen_and_the_rest_is_offered_another_day()
    {
        using var disk = await Open(Home);
        var answers = await AskAndTake(disk, OneSaturday());
        Assert.True(answers[0].Wished.IsYes);
        Assert.All(answers.Where(a => !a.Wished.IsYes), a =>
        {
            Assert.True(a.Decides is { What: Scarce.Cold or Scarce.Hands, From: not null, Minutes: > 0 });
            Assert.True(Assert.Single(a.Offers, o => o.Kind == OfferKind.Time).Fit.Order.Handover.At.Date > a.Wished.Order.Handover.At.Date);
        });
        Assert.Contains(answers, a => !a.Wished.IsYes);
    }

    /// <summary>"Two yes, the third another day": the two that leave room for each other are taken, and the third hears the shelf or the person with the two numbers.</summary>
    [Fact]
    public async Task Two_of_the_three_are_taken_and_the_third_is_told_the_two_numbers_and_another_day()
    {
        using var disk = await Open(Home);
        var asked = OneSaturday();
        var answers = await AskAndTake(disk, [asked[1], asked[2], asked[0]]);
        Assert.Equal([true, true, false], answers.Select(a => a.Wished.IsYes));
        Assert.All(answers.Take(2), a => Assert.NotNull(a.Wished.Proof));
        Assert.Equal(["C", "B"], disk.Book.State.Orders.Select(o => o.Customer.Name));
        var decides = answers[2].Decides!;
        Assert.True(decides is { What: Scarce.Cold or Scarce.Hands, Whose: not null } && decides.From < decides.Until, $"{decides}");
        Assert.InRange(decides.There, 0, decides.Needed - 1);
        Assert.True(Assert.Single(answers[2].Offers, o => o.Kind == OfferKind.Time).Fit.Order.Handover.At.Date > asked[0].Handover.At.Date);
    }

    /// <summary>However they are asked for, and though others may make way: never all three. Where A comes first it takes the room of both.</summary>
    [Fact]
    public async Task In_no_order_of_asking_are_all_three_taken()
    {
        foreach (var order in (int[][])[[0, 1, 2], [0, 2, 1], [1, 0, 2], [1, 2, 0], [2, 0, 1], [2, 1, 0]])
        {
            using var disk = await Open(Home);
            foreach (var asked in order.Select(i => OneSaturday()[i]))
            {
                await disk.Enter(new WriteOrder(BookOnDisk.NewId(), "ines", "counter", asked, MayMove: true));
            }

            output.WriteLine($"{string.Join(", ", order.Select(i => OneSaturday()[i].Customer.Name))}: {string.Join(" and ", disk.Book.State.Orders.Select(o => o.Customer.Name))}");
            Assert.Equal(order[0] == 0 ? 1 : 2, disk.Book.State.Orders.Count);
        }
    }

    /// <summary>With a cool room, a second fridge and eight hours' help at the right hours all three are a yes, each with its plan.</summary>
    [Fact]
    public async Task With_a_cool_room_a_second_fridge_and_help_all_three_are_a_yes()
    {
        Shift[][] eightHours =
        [
            [new Shift(Friday, new(9, 0), new(17, 0))],
            [new Shift(Thursday, new(15, 0), new(19, 0)), new Shift(Friday, new(15, 0), new(19, 0))],
            [new Shift(Friday, new(15, 0), new(19, 0)), new Shift(Saturday, new(7, 0), new(11, 0))],
        ];
        foreach (var hours in eightHours)
        {
            if (await AllThree(hours))
            {
                return;
            }
        }

        Assert.Fail("Not with any of these hours.");
    }

    private async Task<bool> AllThree(IReadOnlyList<Shift> hours)
    {
        output.WriteLine($"help: {string.Join(", ", hours)}");
        var helped = Home with
        {
            People = [.. Home.People, new Person("petra", "Petra", "whisk", Role.Baker, Skills.All, hours, [])],
            Shelves = [.. Home.Shelves, .. Cold("f2", ShelfKind.Fridge, "Fridge 2", 3, 60, 60, 30), .. Cold("c1", ShelfKind.CoolRoom, "Cool room", 1, 120, 60, 60)],
        };
        using var disk = await Open(helped);
        var answers = await AskAndTake(disk, OneSaturday());
        Assert.All(answers.Where(a => a.Wished.IsYes), a => Assert.NotNull(a.Wished.Proof));
        return disk.Book.State.Orders.Count == 3;
    }

    /// <summary>"Two-tier for 40 on Friday at two?", on Tuesday at half past eleven among the cakes of an ordinary week.</summary>
    [Fact]
    public async Task A_two_tier_for_forty_on_Friday_at_two_is_a_yes_with_half_an_hour_to_spare()
    {
        using var disk = new BookOnDisk(withShop: false);
        disk.Clock.Reset(Instant.FromUtc(2026, 10, 13, 10, 30));
        Assert.Equal(AnswerKind.Accepted, (await disk.Enter(new OpenSample(BookOnDisk.NewId(), "", "counter"))).Kind);
        var order = BookOnDisk.Order("Asked", day: 16, hour: 14, inches: [10, 6]) with { Portions = new Portions(40, Cut.Dessert) };
        Assert.Equal(40, BuildSheet.Of(order).Portions(Cut.Dessert));
        var can = await disk.Asked(order);
        output.WriteLine(Said(can));
        Assert.True(can.Wished.IsYes, Said(can));
        Assert.InRange(can.Wished.Spare, 30, 24 * 60);
        Assert.True(can.Earliest!.Order.Handover.At <= order.Handover.At);
    }

    private static Shop Home { get; } = BookOnDisk.Shop with
    {
        People =
        [
            new Person("ines", "Ines", "star", Role.Owner, Skills.All, [.. new[] { Monday, Tuesday, Wednesday, Thursday, Friday }.Select(d => new Shift(d, new(9, 0), new(15, 0))), new Shift(Saturday, new(7, 0), new(15, 30))], []),
            new Person("wren", "Wren", "bell", Role.Counter, [Skills.Counter, Skills.Box, Skills.Clean], [new Shift(Friday, new(9, 0), new(13, 0))], []),
        ],
        Ovens = [new Oven("oven1", "Oven", OvenKind.Fan, 2, Length.FromCentimetres(44), Length.FromCentimetres(36))],
        Bowls = [new Bowl("bowl7", "7 L bowl", 7, Mass.FromKilograms(2), 2600)],
        Shelves = [.. Cold("f1", ShelfKind.Fridge, "Fridge", 3, 50, 32, 20), .. Cold("z1", ShelfKind.Freezer, "Freezer", 1, 50, 40, 20)],
        RackPlaces = 6,
        BenchPlaces = 1,
        Turntables = 1,
        Settings = BookOnDisk.Shop.Settings with { OnDrum = false },
    };

    private static IEnumerable<Shelf> Cold(string id, ShelfKind kind, string unit, int levels, int width, int depth, int clear) => Enumerable.Range(1, levels)
        .Select(l => new Shelf($"{id}l{l}", kind, unit, l, Length.FromCentimetres(width), Length.FromCentimetres(depth), Length.FromCentimetres(clear)));

    private static IReadOnlyList<Order> OneSaturday() =>
    [
        BookOnDisk.Order("A", day: 17, hour: 10, inches: [10, 8, 6]),
        Lemon(BookOnDisk.Order("C", day: 17, hour: 12, inches: [10, 8, 6])),
        BookOnDisk.Order("B", day: 17, hour: 15, inches: [9, 6]),
    ];

    private static Order Lemon(Order order) => order with { Tiers = [.. order.Tiers.Select(t => t with { Filling = "lemon-curd" })] };

    private static async Task<BookOnDisk> Open(Shop shop)
    {
        var disk = new BookOnDisk(withShop: false);
        disk.Clock.Reset(Instant.FromUtc(2026, 10, 12, 8, 0));
        Assert.Equal(AnswerKind.Accepted, (await disk.Enter(new WriteShop(BookOnDisk.NewId(), "", "office", shop))).Kind);
        return disk;
    }

    /// <summary>Asks for each, and takes it if the answer is yes.</summary>
    private async Task<List<CanWe>> AskAndTake(BookOnDisk disk, IReadOnlyList<Order> orders)
    {
        List<CanWe> answers = [];
        foreach (var order in orders)
        {
            answers.Add(await disk.Asked(order));
            output.WriteLine(Said(answers[^1]));
            if (answers[^1].Wished.IsYes || answers[^1].Offers.Any(o => o.Kind == OfferKind.Moves))
            {
                Assert.Empty((await disk.Enter(new WriteOrder(BookOnDisk.NewId(), "ines", "counter", order, MayMove: true))).Late);
            }
        }

        return answers;
    }

    private static string Said(CanWe can) =>
        $"{can.Wished.Order.Customer.Name}: {(can.Wished.IsYes ? "yes" : "no")}, spare {can.Wished.Spare}, late {can.Wished.Late}, {can.Decides}; {string.Join("; ", can.Wished.Reasons.Select(r => r.Sentence))}"
        + $" earliest {can.Earliest?.Order.Handover.At}; {string.Join("; ", can.Offers.Select(o => $"{o.Kind} {o.Fit.Order.Handover.At} {o.Fit.Order.SizeInInches}"))}";
}
