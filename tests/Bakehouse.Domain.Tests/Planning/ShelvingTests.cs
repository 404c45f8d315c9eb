namespace Bakehouse.Domain.Tests.Planning;

using Bakehouse.Domain.Cakes.Packing;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using Bakehouse.Testing;
using Bakehouse.Testing.Planning;

/// <summary>What stands on a shelf at once, by its real size: rule S7, the stretches, the sentence and the shelf to pull out.</summary>
public sealed class ShelvingTests
{
    // With their gaps, on working boards: 6, 8 and 10 in are 197.4, 248.2 and 299 mm.
    private static readonly Piece Six = Piece.Round(197.4);
    private static readonly Piece Eight = Piece.Round(248.2);
    private static readonly Piece Ten = Piece.Round(299);

    /// <summary>
    /// A shelf of 50 × 32 cm: a 10 in tier stands there from minute 20 to 200, another tier from 120 to 300. Side by side 29.9 + 19.7 = 49.6 cm go in,
    /// 29.9 + 24.8 = 54.7 do not, nor set off by the 2 cm that the depth allows.
    /// </summary>
    [Fact]
    public void S7_what_stands_on_a_shelf_at_once_can_be_put_down_there()
    {
        Assert.True(Judge.Examine(Week(Six), Plan(100)).Feasible);
        var breach = Assert.Single(Judge.Examine(Week(Eight), Plan(100)).Breaches);
        Assert.Equal(("S7", 120), (breach.Rule, breach.Minute));
        Assert.Contains("first, second do not stand beside each other in f1", breach.Sentence, StringComparison.Ordinal);
        // One after the other they do.
        Assert.True(Judge.Examine(Week(Eight), Plan(180)).Feasible);
    }

    /// <summary>What is done or pinned on both sides is a fact: the plan is not to blame for how it stands.</summary>
    [Fact]
    public void S7_passes_over_what_is_a_fact_already()
    {
        var week = Week(Eight);
        Fixed Fact(string step, int start) => new(step, start, null, null, null, null, "pinned");
        week = week with { Fixed = [Fact("a", 0), Fact("b", 200), Fact("c", 100), Fact("d", 300)] };
        Assert.True(Judge.Examine(week, Plan(100)).Feasible);
        Assert.False(Judge.Examine(week with { Fixed = [.. week.Fixed.Skip(1)] }, Plan(100)).Feasible);
    }

    [Fact]
    public void A_shelf_is_told_stretch_by_stretch()
    {
        var stretches = Shelving.Of(Week(Eight), Plan(100));
        Assert.Equal(
            ["20-120 first", "120-200 first second", "200-300 second"],
            stretches.Select(s => $"{s.Span.From}-{s.Span.To} {string.Join(' ', s.Holds.Select(h => h.Id))}"));
        Assert.Equal([120], Shelving.Crowded(Week(Eight), Plan(100)).Select(s => s.Span.From));
        // Set off by what the depth allows: 27.4 + root(27.4² - 4.6²) = 54.3 cm, so 55.
        Assert.Equal([0, 5, 0], stretches.Select(s => s.MissingCm));
        Assert.Empty(Shelving.Crowded(Week(Six), Plan(100)));
    }

    [Fact]
    public void What_does_not_stand_is_told_with_place_hour_things_and_centimetres()
    {
        var order = Cakes.Good(1, 10, 8) with { Number = 409 };
        var shop = SampleBakery.Shop with { Shelves = [new Shelf("f1", ShelfKind.Fridge, "Fridge 1", 2, Length.FromCentimetres(50), Length.FromCentimetres(32), Length.FromCentimetres(20))] };
        var week = Week(Eight);
        string Key(int tier) => new StepKey(order.Id, order.Tiers[tier].Id, "coat", 1).ToString();
        var stretch = Shelving.Crowded(week, Plan(100))[0];
        stretch = stretch with { Holds = [stretch.Holds[0] with { From = Key(0) }, stretch.Holds[1] with { From = Key(1) }] };
        Assert.Equal(
            "Fridge 1, level 2, Mon 02:00 to Mon 03:20: 409 10 in and 409 8 in do not stand beside each other. 5 cm of width are missing.",
            new ShelfWords(week with { Zone = "UTC" }, shop, [order]).Crowded(stretch));
    }

    [Fact]
    public void The_shelf_to_pull_out_is_the_one_that_gives_least_too_much_and_only_where_the_owner_allows_it()
    {
        var shop = SampleBakery.Shop;
        Assert.Null(PulledShelf.For(shop, ShelfKind.Fridge, Ten, 36));
        var asked = PulledShelf.For(shop, ShelfKind.Fridge, Ten, 36, allowed: false)!;
        Assert.Equal(("f1l3", "f1l2"), (asked.Out.Id, asked.Below.Id));

        shop = shop with { Shelves = [.. shop.Shelves.Select(s => s.Id is "f2l2" or "f2l4" ? s with { PullsOut = true } : s)] };
        var pulled = PulledShelf.For(shop, ShelfKind.Fridge, Ten, 36)!;
        Assert.Equal("Pull out level 4 of Fridge 2: level 3 then has 40 cm of height.", pulled.Sentence);
        Assert.Equal(("f2l2", "f2l1"), (PulledShelf.For(shop, ShelfKind.Fridge, Ten, 60)!.Out.Id, PulledShelf.For(shop, ShelfKind.Fridge, Ten, 60)!.Below.Id));
        Assert.Null(PulledShelf.For(shop, ShelfKind.Fridge, Ten, 71));
        Assert.Null(PulledShelf.For(shop, ShelfKind.Fridge, Piece.Round(580), 36));
    }

    [Fact]
    public void A_tier_too_tall_hears_which_shelf_to_pull_out()
    {
        Shelf Level(int level, bool pulls) => new($"f{level}", ShelfKind.Fridge, "Fridge 1", level, Length.FromCentimetres(55), Length.FromCentimetres(60), Length.FromCentimetres(12), pulls);
        string Try(bool pulls) => Assert.Single(
            OrderChecks.Problems(Cakes.Good(1, 8), SampleBakery.Shop with { Shelves = [Level(1, false), Level(2, pulls)] }, Cakes.Now, owner: false)).Try;
        Assert.StartsWith("Pull out level 2 of Fridge 1: level 1 then has 24 cm of height.", Try(true), StringComparison.Ordinal);
        Assert.StartsWith("If level 2 of Fridge 1 can be pulled out, say so under Shop.", Try(false), StringComparison.Ordinal);
    }

    [Fact]
    public void Sizes_are_written_into_a_weeks_file_and_read_again()
    {
        var week = Week(Eight);
        week = week with { Orders = [new WeekOrder("o", "o", "a", "b", false, 0, 100, 1, 0, [])], Machines = [new Machine("oven", MachineKind.Oven, 5, 15, [], null, 2, new Dictionary<int, int> { [8] = 2 }) { Deck = new Floor(590, 390) }], Holds = [.. week.Holds, week.Holds[0] with { Id = "box", Piece = Piece.Square(400) }] };
        var (again, problems) = WeekFile.Read(WeekFile.Write(week));
        Assert.Empty(problems);
        Assert.Equal(week.Holds.Select(h => h.Piece), again!.Holds.Select(h => h.Piece));
        Assert.Equal((week.Stores[0].Floor, week.Machines[0].Deck), (again.Stores[0].Floor, again.Machines[0].Deck));
        var (_, wrong) = WeekFile.Read(WeekFile.Write(week with { Stores = [week.Stores[0] with { Floor = new Floor(0, 390) }] }));
        Assert.Contains("up to 20000", Assert.Single(wrong).Sentence, StringComparison.Ordinal);
    }

    /// <summary>On 60 × 40 cm a 10 in and a 6 in pan share a level; two of 10 in leave no room for one of 6 in (by counts of 6 and 2 a level: 2/2 + 1/6).</summary>
    [Fact]
    public void Deck_pans_are_judged_by_their_real_size()
    {
        var week = new WeekBuilder().Step("bake", 45, null).Build();
        Week Load(params int[] pans) => week with
        {
            Machines = [new Machine("oven", MachineKind.Oven, 5, 15, [], null, 1, new Dictionary<int, int> { [6] = 6, [10] = 2 }) { Deck = new Floor(590, 390) }],
            Steps = [week.Steps[0] with { Bake = new Bake("177", pans) }],
        };
        var plan = new PlanBuilder().Step("bake", 0, "", "oven").Build();
        Assert.True(Judge.Examine(Load(10, 6), plan).Feasible);
        Assert.Equal("M4", Assert.Single(Judge.Examine(Load(10, 10, 6), plan).Breaches).Rule);
    }

    private static Week Week(Piece second)
    {
        var week = new WeekBuilder().Store("f1", 20, true).Step("a", 20, null).Step("b", 20, null).Step("c", 20, null).Step("d", 20, null)
            .Hold("first", "a", "b", stores: [new Standing("f1", 0, 500)]).Hold("second", "c", "d", stores: [new Standing("f1", 0, 500)]).Build();
        return week with
        {
            Stores = [.. week.Stores.Select(s => s with { Floor = new Floor(500, 320) })],
            Holds = [.. week.Holds.Select(h => h with { Piece = h.Id == "first" ? Ten : second })],
        };
    }

    private static Plan Plan(int second) => new PlanBuilder().Step("a", 0).Step("b", 200).Step("c", second).Step("d", 300).Hold("first", "f1").Hold("second", "f1").Build();
}
