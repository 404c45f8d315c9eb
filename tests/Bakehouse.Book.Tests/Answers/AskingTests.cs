namespace Bakehouse.Book.Tests.Answers;

using System.Diagnostics;
using Bakehouse.Book.Answers;
using Bakehouse.Book.Entries;
using Bakehouse.Domain.Answers;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using NodaTime;

/// <summary>
/// "Can we?" on a book: a yes is a plan that the Judge passes and that moves nobody, and it holds when the order is then taken. The
/// asks are invented and random with a printed seed.
/// </summary>
public sealed class AskingTests(ITestOutputHelper output)
{
    private static readonly int Asks = Environment.GetEnvironmentVariable("BAKEHOUSE_LONG") is null ? 25 : 500;

    [Fact]
    public async Task Every_yes_and_every_offer_carries_a_plan_that_passes_the_Judge_and_moves_nobody()
    {
        using var disk = await Busy(8);
        var chance = new Random(20261127);
        var (yes, no, offers) = (0, 0, 0);
        for (var i = 0; i < Asks; i++)
        {
            var can = await disk.Asked(Random(chance));
            foreach (var fit in can.Offers.Where(o => o.Kind != OfferKind.Moves).Select(o => o.Fit).Append(can.Earliest).Append(can.Wished).OfType<Fit>().Where(f => f.IsYes))
            {
                Proves(disk, fit);
            }

            (yes, no, offers) = (yes + (can.Wished.IsYes ? 1 : 0), no + (can.Wished.IsYes ? 0 : 1), offers + can.Offers.Count);
            Assert.All(can.Offers, o => Assert.True(o.Fit.IsYes));
            Assert.Equal(can.Offers.Count, can.Offers.Select(o => o.Kind).Distinct().Count());
        }

        output.WriteLine($"seed 20261127: {Asks} asks, {yes} yes, {no} no with {offers} offers");
        Assert.True(yes > 0 && no > 0 && offers > 0);
    }

    [Fact]
    public async Task What_was_said_holds_when_the_order_is_taken_and_asking_writes_nothing()
    {
        using var disk = await Busy(4);
        var head = disk.Book.State.Head;
        var order = BookOnDisk.Order("Asked", day: 24, hour: 14, inches: [8, 6]);
        var can = await disk.Asked(order);
        Assert.Equal(head, disk.Book.State.Head);
        Assert.True(can.Wished.IsYes);

        var answer = await disk.Write(order);
        Assert.Empty(answer.Late);
        var taken = disk.Book.State.Wall!;
        Assert.Equal(Rows(can.Wished.Proof!, order.Id), Rows(taken, order.Id));
    }

    /// <summary>A full Saturday: where one more fits only if another makes way, that is offered, and what was offered is what is written.</summary>
    [Fact]
    public async Task Where_others_can_make_way_it_is_offered_with_what_moves_and_taken_so_nobody_is_late()
    {
        using var disk = await Busy(18);
        output.WriteLine($"{disk.Book.State.Orders.Count} orders");
        var chance = new Random(20261128);
        for (var i = 0; i < 20; i++)
        {
            var order = Random(chance) with { Decoration = Decoration.Rich };
            order = order with { Handover = order.Handover with { At = new LocalDateTime(2026, 10, 17, chance.Next(9, 16), 0) } };
            if ((await disk.Asked(order)).Offers.FirstOrDefault(o => o.Kind == OfferKind.Moves) is not { } offer)
            {
                continue;
            }

            Assert.True(offer is { Steps: > 0, Cakes.Count: > 0, Fit: { IsYes: true, Late: 0 } });
            Assert.Equal(order.Handover.At, offer.Fit.Order.Handover.At);
            var untouched = disk.Book.State.Orders.Where(o => !offer.Cakes.Contains(o.Number)).ToDictionary(o => o.Id, o => Rows(disk.Book.State.Wall!, o.Id));
            var answer = await disk.Enter(new WriteOrder(BookOnDisk.NewId(), "ines", "counter", order, MayMove: true));
            Assert.True(answer.Kind == AnswerKind.Accepted, answer.Message);
            Assert.Empty(answer.Late);
            Assert.All(untouched, u => Assert.Equal(u.Value, Rows(disk.Book.State.Wall!, u.Key)));
            Assert.All(disk.Book.State.Week!.Orders, o => Assert.True(disk.Book.State.Wall!.From(disk.Book.State.Week.Epoch).Steps.First(r => r.Step == o.Out).Start <= o.To));
            output.WriteLine($"seed 20261128, ask {i}: {offer.Steps} steps of {string.Join(", ", offer.Cakes)} move");
            return;
        }

        Assert.Fail("Nobody could make way in twenty asks.");
    }

    /// <summary>
    /// A full week: where the cake could be had sooner if others made way, that comes after what was offered before it. Nobody's promise falls, the
    /// Judge passes the plan, and it is what is written.
    /// </summary>
    [Fact]
    public async Task Where_making_way_brings_it_forward_that_is_offered_last_and_holds_when_it_is_taken()
    {
        using var disk = await Busy(18);
        var chance = new Random(20261129);
        (Order Order, Offer Offer)? taken = null;
        List<long> took = [];
        for (var i = 0; i < 12; i++)
        {
            var order = Random(chance) with { Decoration = Decoration.Rich };
            order = order with { Handover = order.Handover with { At = new LocalDateTime(2026, 10, chance.Next(15, 18), chance.Next(9, 16), 0) } };
            var whole = await disk.Asked(order);
            var clock = Stopwatch.StartNew();
            var last = (await disk.Book.AskLast(whole, TestContext.Current.CancellationToken))!;
            took.Add(clock.ElapsedMilliseconds);
            Assert.Equal(whole.Offers, last.Offers.Take(whole.Offers.Count));
            if (last.Offers.Count > whole.Offers.Count)
            {
                var offer = Assert.Single(last.Offers.Skip(whole.Offers.Count));
                Assert.True(offer is { Kind: OfferKind.Moves, Steps: > 0, Cakes.Count: > 0, Fit: { IsYes: true, Late: 0 } });
                Assert.True(last.Earliest is not { } first || offer.Fit.Order.Handover.At < first.Order.Handover.At);
                Passes(disk, offer.Fit);
                taken ??= (offer.Fit.Order, offer);
            }
        }

        output.WriteLine($"seed 20261129, {disk.Book.State.Orders.Count} orders: the last look took {string.Join(", ", took)} ms; first: {taken?.Offer.Steps} steps of {string.Join(", ", taken?.Offer.Cakes ?? [])} at {taken?.Order.Handover.At}");
        Assert.NotNull(taken);
        var answer = await disk.Enter(new WriteOrder(BookOnDisk.NewId(), "ines", "counter", taken.Value.Order, MayMove: true));
        Assert.True(answer.Kind == AnswerKind.Accepted, answer.Message);
        Assert.Empty(answer.Late);
    }

    /// <summary>What an offer is asked more or less than the wish: the same cake the same, fewer tiers less.</summary>
    [Fact]
    public async Task Each_offer_says_what_is_asked_for_it_more_or_less_once_there_are_prices()
    {
        using var disk = new BookOnDisk(withShop: false);
        disk.Clock.Reset(Instant.FromUtc(2026, 10, 13, 10, 30));
        Assert.Equal(AnswerKind.Accepted, (await disk.Enter(new OpenSample(BookOnDisk.NewId(), "", "counter"))).Kind);
        var can = await disk.Asked(BookOnDisk.Order("Asked", day: 15, hour: 9, inches: [10, 8, 6]) with { Decoration = Decoration.Rich });
        output.WriteLine(string.Join("; ", can.Offers.Select(o => $"{o.Kind} {o.Fit.Order.SizeInInches} {o.Fit.Order.Handover.At}: {o.Dearer}")));
        Assert.Equal(0, Assert.Single(can.Offers, o => o.Kind == OfferKind.Time).Dearer);
        Assert.All(can.Offers.Where(o => o.Kind is OfferKind.Build or OfferKind.Finish), o => Assert.True(o.Dearer < 0));

        await disk.Enter(new WriteShop(BookOnDisk.NewId(), "ines", "office", disk.Book.State.Shop! with { Prices = null }));
        Assert.All((await disk.Asked(BookOnDisk.Order("Asked", day: 15, hour: 9, inches: [10, 8, 6]))).Offers, o => Assert.Null(o.Dearer));
    }

    /// <summary>By trying every half hour: none before the earliest fits.</summary>
    [Fact]
    public async Task No_half_hour_before_the_earliest_fits()
    {
        using var disk = await Busy(5);
        var order = BookOnDisk.Order("Soon", day: 24, hour: 14, inches: [10, 8]);
        var earliest = (await disk.Asked(order)).Earliest!.Order.Handover.At;
        var zone = DateTimeZoneProviders.Tzdb[BookOnDisk.Shop.Zone];
        var soonest = disk.Clock.GetCurrentInstant().InZone(zone).LocalDateTime;
        for (var at = soonest.Date.AtMidnight(); at < earliest; at = at.PlusMinutes(30))
        {
            Assert.False((await disk.Book.Ask(order with { Handover = order.Handover with { At = at } }, TestContext.Current.CancellationToken))!.Wished.IsYes, $"{at}");
        }
    }

    /// <summary>The shop that is shut, the hour that has passed, the notice that is too short: the rule is said and the next time offered.</summary>
    [Theory]
    [InlineData(18, 14, "shut")]
    [InlineData(14, 9, "notice")]
    [InlineData(13, 9, "passed")]
    public async Task What_the_shop_does_not_do_is_said_with_the_next_time_that_it_does(int day, int hour, string said)
    {
        using var disk = new BookOnDisk();
        var can = await disk.Asked(BookOnDisk.Order(day: day, hour: hour));
        Assert.False(can.Wished.IsYes);
        Assert.Contains(said, string.Join(' ', can.Wished.Reasons.Select(r => r.Sentence + r.Try)), StringComparison.OrdinalIgnoreCase);
        Assert.True(Assert.Single(can.Offers, o => o.Kind == OfferKind.Time).Fit.IsYes);
    }

    /// <summary>One pair of hands and a wish that hands alone forbid: more hands decide. Our own rule.</summary>
    [Fact]
    public async Task With_one_pair_of_hands_and_a_full_day_hands_decide()
    {
        using var disk = new BookOnDisk(withShop: false);
        var alone = BookOnDisk.Shop.People.First(p => p.Role == Role.Owner) with { Skills = Skills.All };
        await disk.Enter(new WriteShop(BookOnDisk.NewId(), "", "office", BookOnDisk.Shop with { People = [alone] }));
        for (var i = 0; i < 5; i++)
        {
            await disk.Write(BookOnDisk.Order($"Full {i}", day: 17, hour: 10 + i, inches: [10, 8]) with { Decoration = Decoration.Rich });
        }

        var can = await disk.Asked(BookOnDisk.Order("One more", day: 17, hour: 12, inches: [10, 8, 6]) with { Decoration = Decoration.Rich });
        Assert.False(can.Wished.IsYes);
        output.WriteLine($"{can.Wished.Late} min late; {can.Decides}; {string.Join("; ", can.Offers.Select(o => $"{o.Kind} {o.Fit.Order.Handover.At}"))}");
        Assert.Equal(Scarce.Hands, can.Decides!.What);
        Assert.True(can.Decides.Minutes > 0 && can.Decides.From < can.Decides.Until);
        Assert.Equal(alone.Id, can.Decides.Whose);
        Assert.InRange(can.Decides.There, 0, can.Decides.Needed - 1);
    }

    /// <summary>One shelf for all: the shelf, the hours, the centimetres that would be needed and those that are there (its own width). Our own rule.</summary>
    [Fact]
    public async Task With_one_shelf_the_cold_decides_and_is_said_in_centimetres()
    {
        using var disk = new BookOnDisk(withShop: false);
        var shelf = BookOnDisk.Shop.Shelves.First(s => s.Kind == ShelfKind.Fridge) with { Width = Length.FromCentimetres(46), Depth = Length.FromCentimetres(46), Clear = Length.FromCentimetres(40) };
        await disk.Enter(new WriteShop(BookOnDisk.NewId(), "", "office", BookOnDisk.Shop with { Shelves = [shelf] }));
        CanWe? can = null;
        for (var i = 0; i < 8 && can is null or { Wished.IsYes: true }; i++)
        {
            var order = BookOnDisk.Order($"Cold {i}", day: 17, hour: 10, inches: [10]);
            can = await disk.Asked(order);
            Assert.True(!can.Wished.IsYes || (await disk.Write(order)).Late.Count == 0);
        }

        output.WriteLine($"{disk.Book.State.Orders.Count} taken, then {can!.Wished.Late} min late; {can.Decides}");
        Assert.True(can.Decides is { What: Scarce.Cold, There: 46 });
        Assert.Equal(shelf.Id, can.Decides!.Whose);
        Assert.True(can.Decides.Needed > 46 && can.Decides.From < can.Decides.Until);
    }

    /// <summary>Four may work and eight wait: the twelfth is let in, the thirteenth and all after it are sent away at once, and who comes later is let in again.</summary>
    [Theory]
    [InlineData(12, 0)]
    [InlineData(13, 1)]
    [InlineData(120, 108)]
    public async Task Beyond_those_who_work_and_those_who_wait_nobody_is_let_in(int asks, int sentAway)
    {
        var gate = new Gate(4, 8);
        using var done = new ManualResetEventSlim();
        var cancel = TestContext.Current.CancellationToken;
        var all = Enumerable.Range(0, asks).Select(i => gate.Through(() => { done.Wait(cancel); return $"{i}"; }, cancel)).ToList();
        Assert.Equal(sentAway, all.Count(a => a.IsCompleted));
        done.Set();
        Assert.Equal(sentAway, (await Task.WhenAll(all)).Count(a => a is null));
        Assert.Equal("later", await gate.Through(() => "later", cancel));
    }

    /// <summary>However many ask at once, nobody waits for ever and the others still get their answer.</summary>
    [Fact]
    public async Task Of_too_many_at_once_some_must_ask_again_and_the_others_are_answered()
    {
        using var disk = await Busy(3);
        var answers = await Task.WhenAll(Enumerable.Range(0, 60).Select(_ => disk.Book.Ask(BookOnDisk.Order(day: 24), TestContext.Current.CancellationToken)));
        Assert.True(answers.Count(a => a is { Wished.IsYes: true }) >= 9);
        Assert.Contains(answers, a => a is null);
        Assert.All(answers, a => Assert.True(a is null or { Wished.IsYes: true }));
        Assert.True((await disk.Book.Ask(BookOnDisk.Order(day: 24), TestContext.Current.CancellationToken))!.Wished.IsYes);
    }

    private static async Task<BookOnDisk> Busy(int cakes)
    {
        var disk = new BookOnDisk();
        int[] days = [16, 17, 17, 20, 21];
        for (var i = 0; i < cakes; i++)
        {
            var order = BookOnDisk.Order($"Busy {i}", day: days[i % days.Length], hour: 10 + (i / days.Length * 2), inches: i % 2 == 0 ? [10, 8] : [8]);
            if ((await disk.Book.Ask(order, TestContext.Current.CancellationToken))!.Wished.IsYes)
            {
                Assert.Empty((await disk.Write(order)).Late);
            }
        }

        return disk;
    }

    private static Order Random(Random chance)
    {
        int[][] builds = [[8], [10], [8, 6], [10, 8, 6]];
        int[] days = [15, 16, 17, 20, 21, 22, 23, 24];
        return BookOnDisk.Order("Ask", days[chance.Next(days.Length)], chance.Next(10, 17), inches: builds[chance.Next(builds.Length)]) with
        {
            Decoration = (Decoration)chance.Next(3),
            Finish = (Finish)chance.Next(3),
        };
    }

    /// <summary>A name put right moves nothing, so the answer is the plan as it hangs; a day moved is asked anew. What has gone is not asked for.</summary>
    [Fact]
    public async Task Of_an_order_that_stands_only_what_its_plan_depends_on_is_asked_anew()
    {
        using var disk = await Busy(5);
        var state = disk.Book.State;
        var order = state.Orders[1];
        var named = (await disk.Book.Ask(order with { Customer = order.Customer with { Name = "Mosse" } }, TestContext.Current.CancellationToken))!.Wished;
        Assert.True(named.IsYes);
        Assert.All(state.Orders, o => Assert.Equal(Rows(state.Wall!, o.Id), Rows(named.Proof!, o.Id)));

        var moved = (await disk.Book.Ask(order with { Handover = order.Handover with { At = order.Handover.At.PlusDays(5) } }, TestContext.Current.CancellationToken))!.Wished;
        Assert.NotEqual(Rows(state.Wall!, order.Id), Rows(moved.Proof!, order.Id));
        Assert.All(state.Orders.Where(o => o.Id != order.Id), o => Assert.Equal(Rows(state.Wall!, o.Id), Rows(moved.Proof!, o.Id)));
    }

    private static void Proves(BookOnDisk disk, Fit fit)
    {
        var state = disk.Book.State;
        Passes(disk, fit);
        Assert.All(state.Orders, o => Assert.Equal(Rows(state.Wall!, o.Id), Rows(fit.Proof!, o.Id)));
    }

    private static void Passes(BookOnDisk disk, Fit fit)
    {
        var state = disk.Book.State;
        var week = Week.From([.. state.Orders, fit.Order], state.Shop!, state.Ticks, state.Wall, disk.Clock.GetCurrentInstant(), state.Hand);
        var broken = Judge.Examine(week, fit.Proof!.From(week.Epoch)).Breaches;
        Assert.True(broken.Count == 0, $"{fit.Order.SizeInInches} at {fit.Order.Handover.At}: {string.Join("; ", broken.Take(3))}");
    }

    private static List<string> Rows(Wall wall, Guid order) =>
    [
        .. wall.Plan.Steps.Where(s => s.Step.StartsWith(order.ToString("N"), StringComparison.Ordinal))
            .Select(s => $"{s.Step} {wall.Epoch + Duration.FromMinutes(s.Start)} {string.Join('+', s.People)} {s.Machine}").Order(StringComparer.Ordinal),
    ];
}
