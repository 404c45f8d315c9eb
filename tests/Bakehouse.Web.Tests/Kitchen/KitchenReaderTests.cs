namespace Bakehouse.Web.Tests.Kitchen;

using Bakehouse.Book.Reading;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using Bakehouse.Testing;
using Bakehouse.Web.Bell;
using Bakehouse.Web.TheKitchen;
using NodaTime;

/// <summary>What stands on the kitchen's screen, by the hour, on Saturday 24 October 2026 in London.</summary>
public sealed class KitchenReaderTests
{
    private static readonly LocalDate Saturday = new(2026, 10, 24);

    private static readonly Order Cake = Cakes.Good(1, 8) with
    {
        Number = 407,
        Version = 1,
        Customer = new Customer("Hale", ""),
        Handover = new Handover(Way.Collect, Saturday + new LocalTime(14, 0), "", 0),
        Allergies = new AllergyAnswer(AllergyKind.Avoid, ["nuts"], "swells up"), Statement = new Statement("wren", Instant.MinValue, "petra", Instant.MinValue),
    };

    private readonly List<Tick> ticks = [];
    private readonly List<(string Step, Instant Start, string Who)> also = [];

    /// <summary>Dov coats from 08:00, 20 min, Petra boxes at 10:30, Wren takes out at 13:45 and hands over at 14:00.</summary>
    [Fact]
    public void The_step_at_hand_says_how_long_it_has_and_what_with()
    {
        var dov = Band(At(8, 5), "dov");
        Assert.Equal(("now, 15 min left", "Final coat 8 in", true), (dov.When, dov.Big, dov.IsDue));
        Assert.Matches("^407 Hale\\. Ivory 0\\.[0-9]+ L$", dov.Second);
        Assert.Equal("Avoid nuts", dov.Avoid);
        Assert.Null(dov.Lift);
        Assert.Equal("now, 15 min over", Band(At(8, 35), "dov").When);
        var early = Band(At(7, 30), "dov");
        Assert.Equal(("at 08:00, in 30 min", false), (early.When, early.IsDue));
    }

    [Fact]
    public void Who_has_nothing_now_hears_until_when()
    {
        var wren = Band(At(8, 5), "wren");
        Assert.Equal(("Nothing for Wren until 13:45", true), (wren.Big, wren.IsQuiet));
        Assert.Equal("13:45 Take out 8 in, 407 Hale. For Sat 24 Oct, 14:00", wren.Second);
        Assert.Equal("Nothing for Ines", Band(At(8, 5), "ines").Big);
    }

    /// <summary>A baker who begins early ticks early; boxing and handing over are not offered before their hour.</summary>
    [Fact]
    public void Hours_ahead_a_coat_can_be_ticked_a_box_and_a_handover_can_not()
    {
        Assert.Equal([Key("coat", 0)], Band(At(6, 30), "dov").Steps);
        Assert.Equal(("Nothing for Petra until 10:30", 0), (Band(At(8, 5), "petra").Big, Band(At(8, 5), "petra").Steps.Count));
        Assert.Empty(Band(At(8, 5), "wren").Steps);
        Assert.Equal([Key("box")], Band(At(10, 0), "petra").Steps);
    }

    [Fact]
    public void Who_is_through_has_the_day_done()
    {
        ticks.Add(new Tick(Key("coat", 0), At(8, 15), "dov"));
        var dov = Band(At(8, 20), "dov");
        Assert.Equal("Day done, Dov", dov.Big);
        Assert.Empty(dov.Steps);
        Assert.Null(dov.Strip);
    }

    [Fact]
    public void What_was_ticked_just_now_can_be_taken_back_for_ten_seconds()
    {
        ticks.Add(new Tick(Key("coat", 0), At(8, 15), "dov"));
        var strip = Band(At(8, 15) + Duration.FromSeconds(9), "dov").Strip;
        Assert.Equal("Final coat 8 in, done 08:15, Dov.", strip?.Text);
        Assert.Null(Band(At(8, 15) + Duration.FromSeconds(10), "dov").Strip);
    }

    /// <summary>Creams and the filling with them are one tap: what takes it back takes back all of it.</summary>
    [Fact]
    public void Undo_takes_back_all_that_one_tap_ticked()
    {
        string[] tapped = [Key("buttercream"), Key("colour"), Key("fill", 0)];
        ticks.AddRange(tapped.Select(s => new Tick(s, At(8, 15), "dov")));
        ticks.Add(new Tick(Key("crumb", 0), At(8, 14) + Duration.FromSeconds(55), "dov"));
        Assert.Equal(tapped.Order(), Band(At(8, 15) + Duration.FromSeconds(1), "dov").Strip!.Steps.Order());
    }

    [Fact]
    public void Two_bands_fit_and_the_others_follow()
    {
        var view = View(At(8, 5));
        Assert.Equal(["Petra", "Dov"], view.Bands.Select(b => b.Person.Name));
        Assert.Equal(["13:45 Wren Take out 8 in", "14:00 Wren Hand over 8 in"], view.Then.Select(t => $"{t.Time} {t.Name} {t.Words}"));
    }

    /// <summary>Décor from 10:10, once the coat is firm, nobody ticked it; boxing at 10:30 asks in one line.</summary>
    [Fact]
    public void Before_a_step_that_may_not_be_guessed_one_question_is_asked()
    {
        ticks.Add(new Tick(Key("coat", 0), At(7, 0), "dov"));
        also.Add((Key("decorate"), At(10, 10), "dov"));
        Assert.Null(Band(At(10, 15), "dov").Doubt);
        Assert.Equal(("Décor 8 in", Key("decorate")), (Band(At(10, 27), "petra").Doubt?.Words, Assert.Single(Band(At(10, 27), "petra").Doubt!.Steps)));
        ticks.Add(new Tick(Key("decorate"), At(10, 20), "dov"));
        Assert.Null(Band(At(10, 27), "petra").Doubt);
    }

    [Fact]
    public void One_persons_screen_shows_the_rest_of_the_day_by_blocks()
    {
        also.Add((Key("decorate"), At(9, 30), "wren"));
        Assert.Equal([" Box 13:45 Take out 8 in, 14:00 Hand over 8 in"], View(At(9, 0), "wren").Then.Select(t => $"{t.Time} {t.Name} {t.Words}"));
    }

    [Fact]
    public void A_ring_says_who_when_what_where_and_draws_the_fridge()
    {
        ticks.AddRange([new Tick(Key("coat", 0), At(8, 15), "dov"), new Tick(Key("box"), At(10, 50), "petra")]);
        var ring = Assert.Single(View(At(13, 45)).Rings);
        Assert.Equal(("Wren", "13:45", "Sat 24 Oct", null), (ring.Name, ring.Time, ring.Day, ring.Late));
        Assert.Equal(("Take out", "Fridge 1, level 3", "8 in, vanilla", "407 Hale", "out at 14:00", "until 13:55"), (ring.Verb, ring.Place, ring.What, ring.Order, ring.Out, ring.Until));
        Assert.Equal([1, 2, 3, 4], ring.Fridge!.Levels.Select(l => l.Number));
        var level = Assert.Single(ring.Fridge.Levels, l => l.IsIt);
        var thing = Assert.Single(level.Things);
        Assert.Equal((3, 20.32m), (level.Number, Assert.Single(thing.Tiers).Width));
        // A box of 8 + 4 in and 4 cm stands alone in the corner: its middle is half of it from the left and from the front.
        Assert.Equal((17.24m, 17.24m, true), (thing.Middle, thing.Front, thing.IsIt));
        Assert.Equal("due 13:45, 12 min ago", View(At(13, 57)).Rings[0].Late);
        Assert.Null(View(At(13, 57)).Rings[0].Until);
    }

    /// <summary>10 kg is the shop's own limit for carrying alone; five tiers of buttercream cake weigh far more.</summary>
    [Fact]
    public void A_heavy_cake_says_so_where_it_is_lifted()
    {
        var five = Cakes.Good(2, 14, 12, 10, 8, 6);
        Assert.Matches("^[0-9]{2}\\.[0-9] kg: two people lift$", DangerWords.Lift("box", five, SampleBakery.Shop));
        Assert.Null(DangerWords.Lift("mix", five, SampleBakery.Shop));
        Assert.Null(DangerWords.Lift("box", Cake, SampleBakery.Shop));
    }

    private static Instant At(int hour, int minute) => (Saturday + new LocalTime(hour, minute)).InZoneStrictly(DateTimeZoneProviders.Tzdb["Europe/London"]).ToInstant();

    private static string Key(string operation, int tier = -1) => new StepKey(Cake.Id, tier < 0 ? null : Cake.Tiers[tier].Id, operation, 1).ToString();

    private BandView Band(Instant now, string person) => Assert.Single(View(now, person).Bands);

    private KitchenView View(Instant now, string? person = null)
    {
        var week = Week.From([Cake], SampleBakery.Shop, ticks, null, now);
        StepRow Row(string step, Instant start, string who) => new(step, (int)(start - week.Epoch).TotalMinutes, [who], null, null);
        var plan = new Plan(
            "day",
            new Dictionary<string, string>(StringComparer.Ordinal),
            [Row(Key("coat", 0), At(8, 0), "dov"), Row(Key("box"), At(10, 30), "petra"), Row(Key("leavefridge"), At(13, 45), "wren"), Row(Key("handover"), At(14, 0), "wren"), .. also.Select(r => Row(r.Step, r.Start, r.Who))],
            [new HoldRow($"{Key("box")}>{Key("leavefridge")}", "f1l3"), new HoldRow($"{Key("leavefridge")}>{Key("handover")}", "bench")],
            []);
        var book = new BookState(1, SampleBakery.Shop, [Cake], ticks, week, new Wall(week.Epoch, plan), []);
        return new KitchenReader(WhatRings.At(now, book, WhatRings.OpenIn(book)), SampleBakery.Shop, person).Read();
    }
}
