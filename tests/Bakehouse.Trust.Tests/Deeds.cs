namespace Bakehouse.Trust.Tests;

using Bakehouse.Book.Entries;
using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Chores;
using Bakehouse.Domain.Freezer;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Reminders;
using Bakehouse.Domain.Shops;
using Bakehouse.Domain.Slips;
using Bakehouse.Planner.Quick;
using NodaTime;

/// <summary>
/// What people do, each with its weight. A new command of the book gets its line here; <c>DeedsTests</c> fails until it has one.
/// </summary>
internal static class Deeds
{
    private static readonly int[] Sizes = [6, 8, 10];

    /// <summary>Each deed: how often out of the sum of all, which command it makes, and how; null if there is nothing of the kind to do.</summary>
    public static IReadOnlyList<(int Weight, Type Command, Func<SimulatedShop, Screen, Command?> Do)> All { get; } =
    [
        (36, typeof(TickStep), Tick),
        (4, typeof(UndoTick), Undo),
        (2, typeof(CorrectTick), Correct),
        (14, typeof(AnswerRing), Answer),
        (7, typeof(WriteOrder), Take),
        (9, typeof(WriteOrder), Change),
        (4, typeof(MoveStage), Move),
        (2, typeof(LetDayGo), (shop, at) => at.Seen.Orders.FirstOrDefault(o => o.KeptUntil <= shop.Clock.GetCurrentInstant()) is { } over ? new LetDayGo(shop.NewId(), shop.Happens(50) ? "" : at.Person, at.Device, over.Id) : null),
        (8, typeof(KeepDraft), (shop, at) => new KeepDraft(shop.NewId(), at.Person, at.Device, shop.Happens(30) ? null : $"{{\"name\":\"{shop.Between(1, 999)}\"}}")),
        (1, typeof(WriteShop), NewHours),
        (3, typeof(PinStep), Pin),
        (1, typeof(UnpinStep), (shop, at) => at.Seen.Pins.Count == 0 ? null : new UnpinStep(shop.NewId(), at.Person, at.Device, shop.OneOf(at.Seen.Pins).Step)),
        (1, typeof(TakeBackMove), TakeBack),
        (1, typeof(WriteChore), Chores),
        (3, typeof(TellSlip), Slips),
        (2, typeof(TakeBackSlip), (shop, at) => at.Seen.Slips.Count == 0 ? null : new TakeBackSlip(shop.NewId(), at.Person, at.Device, shop.OneOf(at.Seen.Slips).Id)),
        (1, typeof(CountSpares), (shop, at) => new CountSpares(shop.NewId(), at.Person, at.Device, new SpareSponges(shop.OneOf(Sponge.All).Id, shop.OneOf(Sizes), Day(shop).PlusDays(-shop.Between(7, 40)), shop.Between(0, 6)))),
        (1, typeof(WriteRecipes), Recipes),
        (1, typeof(OpenPack), (shop, at) => at.Seen.Cookbook.Ingredients.Count == 0 ? null
            : new OpenPack(shop.NewId(), at.Person, at.Device, shop.OneOf(at.Seen.Cookbook.Ingredients).Id, new Pack($"lot {shop.Between(1, 99)}", shop.Happens(90) ? AllergenFacts.Only("wheat", "milk", "egg") : null))),
        (6, typeof(LookAtRecipes), LookAt),
        (3, typeof(ReadBackAllergies), ReadBack),
        (1, typeof(RenewCalendar), (shop, at) => new RenewCalendar(shop.NewId(), at.Person, at.Device, at.Person, $"{shop.NewId():N}{shop.NewId():N}")),
        (1, typeof(StopCalendar), (shop, at) => new StopCalendar(shop.NewId(), at.Person, at.Device, at.Person)),
        (2, typeof(TakePlan), BetterPlan),
        (1, typeof(PlanNear), (shop, at) => new PlanNear(shop.NewId(), shop.Happens(50) ? "" : at.Person, at.Device)),
        (1, typeof(TrustClock), (shop, at) => new TrustClock(shop.NewId(), at.Person, at.Device)),
        (1, typeof(OpenSample), (shop, at) => new OpenSample(shop.NewId(), at.Person, at.Device)),
    ];

    /// <summary>One deed by its weight.</summary>
    public static Command? Pick(SimulatedShop shop, Screen at) => Pick(All, shop, at);

    /// <summary>One of some deeds by its weight.</summary>
    public static Command? Pick(IReadOnlyList<(int Weight, Type Command, Func<SimulatedShop, Screen, Command?> Do)> some, SimulatedShop shop, Screen at)
    {
        var left = shop.Between(1, some.Sum(d => d.Weight));
        return some.First(d => (left -= d.Weight) <= 0).Do(shop, at);
    }

    /// <summary>A cake of one or two round tiers for one of the next days on which the shop is open.</summary>
    public static Order NewOrder(SimulatedShop shop, Stage stage)
    {
        var bottom = shop.Between(0, Sizes.Length - 1);
        // Now and then cupcakes, alone or beside the cake.
        var (alone, beside) = (shop.Happens(8), shop.Happens(15));
        int[] inches = alone ? [] : shop.Happens(50) && bottom > 0 ? [Sizes[bottom], Sizes[bottom - 1]] : [Sizes[bottom]];
        CakeTier[] cupcakes = alone || beside ? [Cupcakes.Batch(shop.NewId(), shop.Between(6, 36), shop.OneOf(Sponge.All).Id, [new CoatColour("Blush", "#E8CFCB", 1)])] : [];
        return new Order(
            shop.NewId(), 0, 0, stage, new Customer($"Guest {shop.Between(1, 9999)}", "+442079460182"),
            new Handover(Way.Collect, Day(shop) + new LocalTime(shop.Between(11, 15), 0), "", 0), null,
            // Never more than it serves: nobody was told that some are missing.
            new Portions(Math.Min(20, inches.Sum(i => PortionChart.Usual.Of(Length.FromInches(i), Cut.Dessert)) + cupcakes.Sum(c => c.Special!.Cupcakes!.Count)), Cut.Dessert),
            [.. inches.Select(i => new CakeTier(shop.NewId(), Length.FromInches(i), Length.FromCentimetres(10), 3, shop.OneOf(Sponge.All).Id, "raspberry-jam", [new CoatColour("Ivory", "#F7F0E1", 1)])), .. cupcakes],
            Finish.Smooth, Decoration.Simple, AllergyAnswer.NoneTold, "", "");
    }

    private static LocalDate Day(SimulatedShop shop)
    {
        var today = shop.Clock.GetCurrentInstant().InZone(DateTimeZoneProviders.Tzdb["Europe/London"]).Date;
        // Now and then for a day that has no plan yet.
        var first = today.PlusDays(shop.Happens(8) ? shop.Between(22, 30) : shop.Between(2, 6));
        return Enumerable.Range(0, 7).Select(first.PlusDays).First(d => SampleBakery.Shop.HoursOn(d).Count > 0);
    }

    /// <summary>Made anew from the page that the screen shows, perhaps an old one: it fits and is better, or is refused.</summary>
    private static TakePlan? BetterPlan(SimulatedShop shop, Screen at) =>
        at.Seen is { Week: { } week, Wall: not null } && new QuickPlanner(20_000).Plan(Calm.Until(week, week.Now + Calm.Minutes)).Plan is { } plan
            ? new TakePlan(shop.NewId(), at.Person, at.Device, new Wall(week.Epoch, plan), at.Seen.Head)
            : null;

    private static TickStep? Tick(SimulatedShop shop, Screen at)
    {
        if (at.Seen is not { Week: { } week, Wall: { } wall })
        {
            return null;
        }

        var mine = WorkList.Of(week, wall, at.Seen.Ticks, shop.Clock.GetCurrentInstant(), at.Seen.Hand.NotDone).Where(p => p.AtHand is not null).ToList();
        if (mine.Count == 0)
        {
            return null;
        }

        // Mostly what is at hand; now and then something far ahead, by mistake.
        var work = shop.Happens(92) ? mine.MinBy(p => p.AtHand!.Start)!.AtHand!.Works[0] : shop.OneOf(shop.OneOf(mine).Stints).Works[0];
        return new TickStep(shop.NewId(), at.Person, at.Device, work.Steps[0], shop.OneOf(week.People).Id);
    }

    private static UndoTick? Undo(SimulatedShop shop, Screen at) =>
        at.Seen.Ticks.Count == 0 ? null : new UndoTick(shop.NewId(), at.Person, at.Device, shop.OneOf(at.Seen.Ticks).Step);

    private static CorrectTick? Correct(SimulatedShop shop, Screen at) =>
        at.Seen.Ticks.Count == 0 || shop.OneOf(at.Seen.Ticks) is not { } tick ? null
            : new CorrectTick(shop.NewId(), at.Person, at.Device, tick.Step, shop.OneOf(at.Seen.Shop!.People).Id, tick.Done - Duration.FromMinutes(shop.Between(0, 20)), "It was so");

    private static AnswerRing? Answer(SimulatedShop shop, Screen at)
    {
        var ringing = shop.Bell.Look().Ringing;
        return ringing.Count == 0 ? null : new AnswerRing(
            shop.NewId(), at.Person, at.Device, shop.OneOf(ringing).Id, shop.OneOf([RingAnswerKind.Done, RingAnswerKind.Done, RingAnswerKind.Later, RingAnswerKind.Cannot]), "too soft");
    }

    private static WriteOrder? Take(SimulatedShop shop, Screen at) => at.Seen.Orders.Count(o => Stages.IsPlanned(o.Stage)) > 5 ? null
        : new WriteOrder(shop.NewId(), at.Person, at.Device, NewOrder(shop, shop.OneOf([Stage.Booked, Stage.Booked, Stage.Kept, Stage.Enquiry])), MayMove: shop.Happens(30));

    /// <summary>The first recipes, later a little more of something in one of them.</summary>
    private static WriteRecipes Recipes(SimulatedShop shop, Screen at)
    {
        var book = at.Seen.Cookbook;
        if (book.Version == 0)
        {
            return new WriteRecipes(shop.NewId(), at.Person, at.Device, [.. Starter.Sample.Ingredients.Select(i => i with { Version = 0 })], [.. Starter.Sample.Recipes.Select(r => r with { Version = 0 })], "The first ones");
        }

        var recipe = shop.OneOf(book.Recipes);
        return new WriteRecipes(shop.NewId(), at.Person, at.Device, [], [recipe with { Lines = [.. recipe.Lines, RecipeLine.Grams(shop.OneOf(book.Ingredients).Id, shop.Happens(10) ? 0 : shop.Between(1, 50))] }], "Tried it");
    }

    private static LookAtRecipes? LookAt(SimulatedShop shop, Screen at)
    {
        var planned = at.Seen.Orders.Where(o => Stages.IsPlanned(o.Stage)).OrderByDescending(o => at.Seen.StopsOf(o).Count).ToList();
        return planned.Count == 0 ? null : new LookAtRecipes(shop.NewId(), at.Person, at.Device, planned[0].Id, planned[0].Version, shop.Happens(60), []);
    }

    private static ReadBackAllergies? ReadBack(SimulatedShop shop, Screen at)
    {
        var told = at.Seen.Orders.Where(o => o.Statement is { ReadBack: null }).ToList();
        return told.Count == 0 || shop.OneOf(told) is not { } order ? null : new ReadBackAllergies(shop.NewId(), at.Person, at.Device, order.Id, order.Version);
    }

    private static WriteOrder? Change(SimulatedShop shop, Screen at)
    {
        if (at.Seen.Orders.Count == 0)
        {
            return null;
        }

        var order = shop.OneOf(at.Seen.Orders);
        return new WriteOrder(shop.NewId(), at.Person, at.Device, shop.Between(1, 4) switch
        {
            1 => order with { Inscription = $"Number {shop.Between(1, 999)}" },
            2 => order with { Allergies = shop.Happens(50) ? AllergyAnswer.NoneTold : new AllergyAnswer(AllergyKind.Avoid, ["nuts"], "") },
            3 => order with { Handover = order.Handover with { At = order.Handover.At.PlusMinutes(30) } },
            _ => order with { Tiers = [.. order.Tiers.Select(t => t with { Colours = [new CoatColour("Blush", "#E8CFCB", 1)] })] },
        });
    }

    private static MoveStage? Move(SimulatedShop shop, Screen at)
    {
        var all = at.Seen.Orders.Where(o => Stages.After(o.Stage).Count > 0).ToList();
        return all.Count == 0 || shop.OneOf(all) is not { } order ? null
            : new MoveStage(shop.NewId(), at.Person, at.Device, order.Id, order.Version, shop.OneOf([.. Stages.After(order.Stage)]));
    }

    /// <summary>A step of the wall, at its place or up to three hours away, mostly with its own people.</summary>
    private static PinStep? Pin(SimulatedShop shop, Screen at)
    {
        if (at.Seen.Wall is not { Plan.Steps.Count: > 0 } wall)
        {
            return null;
        }

        var row = shop.OneOf(wall.Plan.Steps);
        var away = shop.Happens(40) ? 0 : shop.Between(-36, 36) * 5;
        var people = row.People.Count == 1 && shop.Happens(20) ? [shop.OneOf(at.Seen.Shop!.People).Id] : row.People;
        return at.Moved = new PinStep(shop.NewId(), at.Person, at.Device, row.Step, wall.Epoch + Duration.FromMinutes(row.Start + away), people, row.Machine, at.Seen.Head);
    }

    /// <summary>The newest move that was made on this screen.</summary>
    private static TakeBackMove? TakeBack(SimulatedShop shop, Screen at) =>
        at.Moved is { } last ? new TakeBackMove(shop.NewId(), at.Person, at.Device, last.Id) : null;

    /// <summary>A new chore of an hour, or one taken away; few at a time, so that cakes find room.</summary>
    private static WriteChore Chores(SimulatedShop shop, Screen at)
    {
        if (at.Seen.Chores.Count > 1)
        {
            return new WriteChore(shop.NewId(), at.Person, at.Device, shop.OneOf(at.Seen.Chores) with { Dropped = true });
        }

        var from = new LocalTime(shop.Between(6, 16), 0);
        return new WriteChore(shop.NewId(), at.Person, at.Device, new Chore(
            shop.NewId(), 0, ChoreKind.Cleaning, "Clean", Day(shop), from, from.PlusHours(1), shop.Happens(50) ? [] : [IsoDayOfWeek.Tuesday, IsoDayOfWeek.Friday], null,
            [shop.OneOf(at.Seen.Shop!.People).Id], [], shop.Happens(30) ? [shop.OneOf(at.Seen.Shop.Shelves).Id] : []));
    }

    /// <summary>Something of each kind goes wrong, with what is on the wall now; few at a time, so that cakes find room.</summary>
    private static TellSlip? Slips(SimulatedShop shop, Screen at)
    {
        if (at.Seen.Slips.Count(s => s.Until > shop.Clock.GetCurrentInstant()) > 1 || at.Seen is not { Week: { } week, Wall.Plan.Steps: { Count: > 0 } rows })
        {
            return null;
        }

        var (now, kind) = (shop.Clock.GetCurrentInstant(), shop.OneOf(Enum.GetValues<SlipKind>()));
        var bakes = rows.Where(r => StepKey.Parse(r.Step)?.Operation == "bake").ToList();
        var about = kind switch
        {
            SlipKind.Cracked when bakes.Count > 0 => shop.OneOf(bakes).Step,
            SlipKind.Out => shop.OneOf<string>([.. week.Machines.Select(m => m.Id).Where(m => m != "stove"), .. at.Seen.Shop!.Shelves.Select(s => s.Id)]),
            SlipKind.Away => shop.OneOf(week.People).Id,
            SlipKind.RanOut => shop.OneOf(week.Families).Id,
            SlipKind.Pickup when week.Orders.Count > 0 => shop.OneOf(week.Orders).Id,
            _ => shop.OneOf(rows).Step,
        };
        var until = kind == SlipKind.Pickup && at.Seen.Orders.FirstOrDefault(o => o.Id.ToString("N") == about) is { } order
            ? order.Handover.At.InZoneLeniently(DateTimeZoneProviders.Tzdb["Europe/London"]).ToInstant() + Duration.FromMinutes(30 * shop.Between(-4, 4))
            : now + Duration.FromMinutes(shop.Between(10, 240));
        return new TellSlip(shop.NewId(), at.Person, at.Device, new Slip(Guid.Empty, kind, [about], now, at.Person, now - Duration.FromMinutes(5), until, shop.Happens(30)));
    }

    private static WriteShop NewHours(SimulatedShop shop, Screen at)
    {
        var now = at.Seen.Shop!;
        return new WriteShop(shop.NewId(), at.Person, at.Device, now with
        {
            Name = $"Shop {shop.Between(1, 99)}",
            Settings = now.Settings with { LastHands = shop.Happens(50) ? new LocalTime(shop.Between(18, 20), 0) : null, Caps = shop.Happens(50) ? [new DayCap(IsoDayOfWeek.Saturday, shop.Between(0, 2))] : null },
        });
    }
}
