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

/// <summary>A batter with walnuts at 8:00, the bowl cleaned down by Wren from 8:30, and at 9:00 a batter that must be kept from nuts.</summary>
public sealed class CleanDownTests
{
    private static readonly LocalDate Friday = new(2026, 10, 23);

    private static readonly Order Nutty = Cake(1, "carrot", AllergyAnswer.NoneTold);

    private static readonly Order Kept = Cake(2, "vanilla", new AllergyAnswer(AllergyKind.Avoid, ["nuts"], "swells up")) with { Statement = new Statement("wren", Instant.MinValue, "petra", Instant.MinValue) };

    [Fact]
    public void The_step_behind_a_clean_down_says_what_went_into_its_bowl()
    {
        var band = View(At(8, 45), "petra").Bands.Single();
        Assert.Equal("Clean 20 L bowl down wet first: nuts went into it. Avoid nuts", band.Avoid);
        Assert.Contains("Clean 20 L bowl down wet first: nuts went into it", Card(Mix(Kept), At(8, 45)).Stops);
        Assert.DoesNotContain(Card(Mix(Nutty), At(8, 45)).Stops, s => s.Contains("down wet", StringComparison.Ordinal));
    }

    [Fact]
    public void Without_a_clean_down_in_the_plan_the_card_asks_for_a_washed_bowl_all_the_same()
    {
        var buttercream = new StepKey(Kept.Id, null, "buttercream", 1).ToString();
        Assert.Contains("Begin with bowl and tools washed wet, whatever was in them", Card(buttercream, At(8, 45)).Stops);
        Assert.DoesNotContain(Card(new StepKey(Nutty.Id, null, "buttercream", 1).ToString(), At(8, 45)).Stops, s => s.Contains("washed wet", StringComparison.Ordinal));
    }

    [Fact]
    public void A_clean_down_stands_on_the_list_until_its_time_is_over()
    {
        Assert.Contains(View(At(8, 15)).Then, t => (t.Lead, t.Words) == ("08:30 Wren", "Clean 20 L bowl down wet"));
        Assert.Contains(View(At(8, 15), "wren").Then, t => (t.Name, t.Words) == ("Clean", "08:30 Clean 20 L bowl down wet"));
        Assert.DoesNotContain(View(At(8, 15), "petra").Then, t => t.Name == "Clean");
        Assert.DoesNotContain(View(At(9, 5)).Then, t => t.Words.Contains("down wet", StringComparison.Ordinal));
    }

    private static Order Cake(int number, string sponge, AllergyAnswer allergies) => Cakes.Good(number, 8) is var cake ? cake with
    {
        Number = 406 + number, Version = 1, Allergies = allergies, Handover = new Handover(Way.Collect, Friday.PlusDays(1) + new LocalTime(14, 0), "", 0),
        Tiers = [cake.Tiers[0] with { Sponge = sponge }],
    } : cake;

    private static Instant At(int hour, int minute) => (Friday + new LocalTime(hour, minute)).InZoneStrictly(DateTimeZoneProviders.Tzdb["Europe/London"]).ToInstant();

    private static string Mix(Order order) => new StepKey(order.Id, order.Tiers[0].Id, "mix", 1).ToString();

    private static WhatRings State(Instant now)
    {
        Tick[] ticks = [new(Mix(Nutty), At(8, 10), "petra")];
        var bare = Week.From([Nutty, Kept], SampleBakery.Shop, [], null, now);
        StepRow Row(Order order, Instant start) => new(Mix(order), (int)(start - bare.Epoch).TotalMinutes, ["petra"], "bowl20", null);
        var wall = new Wall(bare.Epoch, new Plan("day", new Dictionary<string, string>(StringComparer.Ordinal), [Row(Nutty, At(8, 0)), Row(Kept, At(9, 0))], [], [new CleanRow("bowl20", (int)(At(8, 30) - bare.Epoch).TotalMinutes, ["wren"])]));
        var book = new BookState(1, SampleBakery.Shop, [Nutty, Kept], ticks, Week.From([Nutty, Kept], SampleBakery.Shop, ticks, wall, now), wall, []);
        return WhatRings.At(now, book, WhatRings.OpenIn(book));
    }

    private static KitchenView View(Instant now, string? person = null) => new KitchenReader(State(now), SampleBakery.Shop, person).Read();

    private static CardView Card(string step, Instant now) => new CardReader(State(now), SampleBakery.Shop).Read(step)!;
}
