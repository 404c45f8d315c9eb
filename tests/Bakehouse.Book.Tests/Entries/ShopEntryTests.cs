namespace Bakehouse.Book.Tests.Entries;

using Bakehouse.Book.Entries;
using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Shops;
using NodaTime;

public sealed class ShopEntryTests
{
    [Fact]
    public async Task Everything_wrong_with_a_shop_is_told_at_once()
    {
        using var disk = new BookOnDisk(withShop: false);
        var shop = BookOnDisk.Shop with
        {
            Name = " ",
            Zone = "Europe/Camelot",
            People = [BookOnDisk.Shop.People[1] with { Skills = ["juggle"], Shifts = [new Shift(IsoDayOfWeek.Monday, new LocalTime(14, 0), new LocalTime(6, 0))] }, BookOnDisk.Shop.People[1]],
            Ovens = [],
            Shelves = [BookOnDisk.Shop.Shelves[0] with { Clear = Length.FromCentimetres(2) }],
            Turntables = 0,
        };

        var answer = await Set(disk, shop);

        Assert.Equal(AnswerKind.Refused, answer.Kind);
        Assert.Equal(
            ["name", "zone", "people", "people", "Petra", "Petra", "ovens", "Fridge 1 level 1, clear height", "turntables"],
            answer.Problems.Select(p => p.Where));
        Assert.Null(disk.Book.State.Shop);
    }

    [Fact]
    public async Task A_shop_without_people_is_refused()
    {
        using var disk = new BookOnDisk(withShop: false);

        var answer = await Set(disk, BookOnDisk.Shop with { People = [] });

        Assert.Equal("Nobody works here.", answer.Problems.Single().Sentence);
    }

    [Fact]
    public async Task Two_owners_save_at_once_and_the_second_is_told()
    {
        using var disk = new BookOnDisk();
        var read = disk.Book.State.Shop!;

        var first = await Set(disk, read with { Name = "Tolliver Row" }, "ines");
        var second = await Set(disk, read with { Name = "Row of Tolliver" }, "ines");

        Assert.Equal(AnswerKind.Accepted, first.Kind);
        Assert.Equal(AnswerKind.Clash, second.Kind);
        Assert.Equal(("Tolliver Row", 2), (disk.Book.State.Shop!.Name, disk.Book.State.Shop.Version));
    }

    /// <summary>A name under which a cake is sold moves no step, whatever is planned.</summary>
    [Fact]
    public async Task A_house_cake_leaves_the_plan_as_it_hangs()
    {
        using var disk = new BookOnDisk();
        var order = (await disk.Write(BookOnDisk.Order(day: 24))).Order!;
        var wall = disk.Book.State.Wall;
        var shop = disk.Book.State.Shop!;
        var answer = await Set(disk, shop with { HouseCakes = [HouseCake.Of("Garden party", order)] }, "ines");
        Assert.Equal(AnswerKind.Accepted, answer.Kind);
        Assert.Equal(PlanFile.Write(wall!.Plan), PlanFile.Write(disk.Book.State.Wall!.Plan));
        disk.Reopen();
        var kept = Assert.Single(disk.Book.State.Shop!.HouseCakes);
        Assert.Equal(("Garden party", order.Tiers[0].Diameter), (kept.Name, kept.Tiers[0].Diameter));
    }

    [Fact]
    public async Task Caps_and_the_last_hour_are_kept_and_obeyed_and_the_owner_alone_goes_beyond()
    {
        using var disk = new BookOnDisk();
        await Set(disk, disk.Book.State.Shop! with { Settings = new ShopSettings(LastHands: new LocalTime(17, 30), Caps: [new DayCap(IsoDayOfWeek.Saturday, 1)]) }, "ines");
        disk.Reopen();

        Assert.Equal(AnswerKind.Accepted, (await disk.Write(BookOnDisk.Order("Hale", 17, 14, inches: [8, 6]), "wren")).Kind);
        var third = BookOnDisk.Order("Moss", 17, 15, inches: [8, 6]);
        var told = await disk.Write(third with { BeyondCapAgreed = true }, "wren");
        var taken = await disk.Write(third with { BeyondCapAgreed = true });

        Assert.Equal("1 tiered cake leaves that day already (401); your cap for a Saturday is 1.", Assert.Single(told.Problems).Sentence);
        Assert.Equal((AnswerKind.Accepted, true), (taken.Kind, disk.Book.State.Orders.Single(o => o.Number == 402).BeyondCapAgreed));
        Assert.Equal(AnswerKind.Accepted, (await disk.Write(BookOnDisk.Order("Brandt", 17, 15), "wren")).Kind);
        var (week, wall) = (disk.Book.State.Week!, disk.Book.State.Wall!);
        var minutes = week.Steps.ToDictionary(s => s.Id, s => s.Minutes);
        Assert.All(wall.Plan.Steps.Where(r => r.People.Count > 0), r => Assert.True(
            (wall.Epoch + Duration.FromMinutes(r.Start + minutes[r.Step])).InZone(DateTimeZoneProviders.Tzdb["Europe/London"]).TimeOfDay <= new LocalTime(17, 30)));
    }

    /// <summary>Whoever avoids it, or a pack that has it, would be forgotten; what was only read not to have it lets it go, and recipes can still be written. Our own rule.</summary>
    [Fact]
    public async Task What_a_pack_or_a_customer_still_names_stays_on_the_owners_list()
    {
        using var disk = new BookOnDisk();
        var kiwi = AllergenRules.Usual with { Others = [new Allergen("kiwi", "kiwi", "kiwi")] };
        await Set(disk, disk.Book.State.Shop! with { Allergens = kiwi }, "ines");
        await disk.Enter(BookOnDisk.Recipes());
        var facts = disk.Book.State.Cookbook.Ingredient("sugar")!.InUse!.Facts!;
        await disk.Enter(new OpenPack(BookOnDisk.NewId(), "ines", "counter", "sugar", new Pack("b", facts with { Has = ["kiwi"] })));
        var refused = await Set(disk, disk.Book.State.Shop! with { Allergens = AllergenRules.Usual }, "ines");
        Assert.Equal((AnswerKind.Refused, "other allergens", "It is still named: Sugar, granulated."), (refused.Kind, refused.Problems.Single().Where, refused.Problems.Single().Sentence));

        // The pack is named by its mark: another of them takes its place, read not to have it.
        await disk.Enter(new OpenPack(BookOnDisk.NewId(), "ines", "counter", "sugar", new Pack("b", facts with { HasNot = [.. facts.HasNot, "kiwi"] })));
        Assert.Equal(AnswerKind.Accepted, (await Set(disk, disk.Book.State.Shop! with { Allergens = AllergenRules.Usual }, "ines")).Kind);
        Assert.Equal(AnswerKind.Accepted, (await disk.Enter(new WriteRecipes(BookOnDisk.NewId(), "ines", "counter", [], [disk.Book.State.Cookbook.Recipe("vanilla")! with { Notes = "As before" }], "A note"))).Kind);
    }

    /// <summary>Of 40 mm of cake in 3 layers, 2 fillings of 20 mm leave nothing: the order is named and the shop stays as it was. Our own rule.</summary>
    [Fact]
    public async Task Its_own_figures_are_kept_the_plan_follows_and_what_could_not_be_built_is_named()
    {
        using var disk = new BookOnDisk();
        var order = (await disk.Write(BookOnDisk.Order(day: 24))).Order!;
        int Batter() => disk.Book.State.Week!.Steps.Where(s => s.Name == "mix").Sum(s => s.Mix!.Size);
        var before = Batter();
        var figures = new ShopFigures { Fill = 0.6m, Crumb = Length.FromMillimetres(1.5m), TwoLowerFrom = Mass.FromKilograms(2.5m), Dessert = "Dessert, party" };
        Assert.Equal(AnswerKind.Accepted, (await Set(disk, disk.Book.State.Shop! with { Figures = figures }, "ines")).Kind);
        disk.Reopen();
        Assert.Equal(figures, disk.Book.State.Shop!.Figures);
        Assert.InRange(Batter(), before * 1.19, before * 1.21);
        Assert.True(Judge.Examine(disk.Book.State.Week!, disk.Book.State.Wall!.From(disk.Book.State.Week!.Epoch)).Feasible);

        var thin = order with { Portions = order.Portions with { Count = 8 }, Tiers = [.. disk.Book.State.Orders[0].Tiers.Select(t => t with { Height = Length.FromCentimetres(4) })] };
        Assert.Equal(AnswerKind.Accepted, (await disk.Write(thin)).Kind);
        var refused = await Set(disk, disk.Book.State.Shop with { Figures = figures with { Filling = Length.FromMillimetres(20) } }, "ines");
        Assert.Equal((AnswerKind.Refused, "filling", $"order {order.Number}"), (refused.Kind, refused.Problems[0].Where, refused.Problems[0].Value));
        Assert.Equal(figures, disk.Book.State.Shop!.Figures);
    }

    [Fact]
    public async Task A_changed_shift_moves_the_plan_with_it()
    {
        using var disk = new BookOnDisk();
        await disk.Write(BookOnDisk.Order(day: 24));
        var read = disk.Book.State.Shop!;
        // Petra, the only other baker, is away: Ines, the owner, bakes now.
        var away = read with { People = [.. read.People.Select(p => p.Id == "petra" ? p with { Shifts = [], Overtime = [] } : p)] };

        var answer = await Set(disk, away, "ines");

        Assert.Equal(AnswerKind.Accepted, answer.Kind);
        Assert.DoesNotContain(disk.Book.State.Wall!.Plan.Steps, s => s.People.Contains("petra"));
        Assert.True(Judge.Examine(disk.Book.State.Week!, disk.Book.State.Wall.From(disk.Book.State.Week!.Epoch)).Feasible);
    }

    [Fact]
    public async Task The_sample_opens_in_an_empty_book_only()
    {
        using var disk = new BookOnDisk(withShop: false);

        var opened = await disk.Enter(new OpenSample(BookOnDisk.NewId(), "", "start"));
        var again = await disk.Enter(new OpenSample(BookOnDisk.NewId(), "ines", "start"));

        Assert.Equal(AnswerKind.Accepted, opened.Kind);
        Assert.Equal(AnswerKind.Refused, again.Kind);
        var state = disk.Book.State;
        Assert.True(state.Shop!.IsSample);
        Assert.NotEmpty(state.Orders);
        Assert.NotNull(state.Wall);
        var next = await disk.Write(BookOnDisk.Order(day: 24));
        Assert.Equal(AnswerKind.Accepted, next.Kind);
    }

    [Fact]
    public async Task A_draft_survives_closing_the_book_and_is_seen_on_its_own_screen_only()
    {
        using var disk = new BookOnDisk();
        await disk.Enter(new KeepDraft(BookOnDisk.NewId(), "wren", "counter", "Mo"));
        await disk.Enter(new KeepDraft(BookOnDisk.NewId(), "wren", "counter", "Moss, \u2603 \U0001F382"));
        disk.Reopen();

        Assert.Equal("Moss, \u2603 \U0001F382", await disk.Book.Draft("counter", TestContext.Current.CancellationToken));
        Assert.Null(await disk.Book.Draft("office", TestContext.Current.CancellationToken));

        await disk.Enter(new KeepDraft(BookOnDisk.NewId(), "wren", "counter", null));
        Assert.Null(await disk.Book.Draft("counter", TestContext.Current.CancellationToken));
    }

    private static Task<Answer> Set(BookOnDisk disk, Shop shop, string person = "") =>
        disk.Enter(new WriteShop(BookOnDisk.NewId(), person, "office", shop));
}
