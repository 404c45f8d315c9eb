namespace Bakehouse.Domain.Tests.Methods;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Cakes.Packing;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using Bakehouse.Testing;

public sealed class MethodTests
{
    /// <summary>The sample bakery with a deck for the widest tiers.</summary>
    private static readonly Shop WithDeckOven = SampleBakery.Shop with
    {
        Ovens = [.. SampleBakery.Shop.Ovens, new Oven("big", "Deck", OvenKind.Deck, 2, Length.FromCentimetres(80), Length.FromCentimetres(60))],
    };

    /// <summary>Rows of the practice table; source of each: common practice, no source.</summary>
    [Theory]
    [InlineData("bake", "turnout", "rack", 10)] // rest in the pan: 10 min
    [InlineData("wrap", "fill", "freezer", 30)] // firming wrapped layers, freezer: 30 min
    [InlineData("wrap", "fill", "fridge", 60)] // firming wrapped layers, fridge: 60 min
    [InlineData("crumb", "coat", "fridge", 30)] // crumb coat set, fridge: 30 min
    [InlineData("coat", "stack", "fridge", 120)] // firm before stacking: at least 120 min
    public void The_waits_are_those_of_common_practice(string from, string to, string kind, int least) =>
        Assert.Equal(least, Method.Waits.Single(w => w.From == from && w.To == to).In.Single(i => i.Kind == kind).Least);

    /// <summary>
    /// Outside of a round tier against 8 in by 10 cm: 6 in 0.69, 9 in 1.17, 10 in 1.36, 12 in 1.75, 14 in 2.19. Source: pi r2 + 2 pi r h
    /// over 962 cm2, computed apart from the project.
    /// </summary>
    [Theory]
    [InlineData(6, 0.69)]
    [InlineData(8, 1.00)]
    [InlineData(9, 1.17)]
    [InlineData(10, 1.36)]
    [InlineData(12, 1.75)]
    [InlineData(14, 2.19)]
    public void The_outside_grows_as_the_geometry_says(int inches, double factor) =>
        Assert.Equal(factor, Method.Outside(Cakes.Tier(1, 1, inches)), 0.01);

    /// <summary>
    /// Hands-on minutes by build before wash-up, simple decor, each cake by itself: 1 tier 8 in 173, 2 tiers 6+9 264, 3 tiers 6+8+10 417, 5 tiers
    /// 751. Source: a walk through common-practice minutes, step by step, done apart from the project. That walk also pulls hardware
    /// (10 min an order), covers boards (15 a tier) and takes eggs and butter out (3), which are no steps of the plan yet; we add
    /// the counter's 8 min. Each sitting is rounded up to 5 min and two people count twice where two lower a heavy part, so a fifth either way.
    /// </summary>
    [Theory]
    [InlineData(173, 8)]
    [InlineData(264, 9, 6)]
    [InlineData(417, 10, 8, 6)]
    [InlineData(751, 14, 12, 10, 8, 6)]
    public void Hands_on_minutes_are_of_the_size_that_bakers_know(int walked, params int[] sizes)
    {
        var steps = CakeSteps.Of(Cakes.Good(1, sizes), WithDeckOven).Steps;
        var hands = steps.Where(s => s.Skill is not null).Sum(s => s.Minutes * s.Count);
        var same = walked - 10 - (15 * sizes.Length) - 3 + 8;
        Assert.InRange(hands, same * 0.8, same * 1.2);
    }

    /// <summary>
    /// Minutes in the oven against a pan maker's published guide for butter cake at 177 degrees: pans of 2 in 6: 35-40, 8: 37-42, 10: 40-45, 12: 40-45, 14:
    /// 50-55, 16: 55-60; of 3 in 8: 55-60, 10: 65-75, 12: 60-85. Ours is the upper figure.
    /// </summary>
    [Theory]
    [InlineData(6, 5, 35, 40)]
    [InlineData(8, 5, 37, 42)]
    [InlineData(10, 5, 40, 45)]
    [InlineData(12, 5, 40, 45)]
    [InlineData(14, 5, 50, 55)]
    [InlineData(16, 5, 55, 60)]
    [InlineData(8, 7.5, 55, 60)]
    [InlineData(10, 7.5, 65, 75)]
    [InlineData(12, 7.5, 60, 85)]
    public void A_pan_bakes_as_long_as_the_guide_says(int inches, double depth, int from, int to)
    {
        var minutes = Sponge.Of("vanilla")!.BakeMinutes(inches, Length.FromCentimetres((decimal)depth));
        Assert.InRange(minutes, from, to);
        Assert.Equal(to, minutes);
    }

    /// <summary>Cooling on a rack until no longer warm, layers 4 to 5 cm: 120 min typical, 2 to 3 h at 5 cm, 1 to 1.6 h at 2.5 cm (common practice, no source).</summary>
    [Theory]
    [InlineData(5, 120, 180)]
    [InlineData(4, 120, 180)]
    [InlineData(2.5, 60, 96)]
    public void Layers_cool_by_their_thickness(double centimetres, int from, int to) =>
        Assert.InRange(Method.CoolMinutes(Length.FromCentimetres((decimal)centimetres)), from, to);

    /// <summary>The bottom tier is built on its drum, 4 in wider than it, from the first layer; others on a larger working board (common practice, no source).</summary>
    [Fact]
    public void The_bottom_tier_takes_its_drum_on_the_shelf_and_the_others_a_working_board()
    {
        var order = Cakes.Good();
        var holds = CakeSteps.Of(order, SampleBakery.Shop).Holds;
        Hold Settling(int tier) => holds.Single(h => h.From == new StepKey(order.Id, order.Tiers[tier].Id, "fill", 1).ToString() && h.To == new StepKey(order.Id, order.Tiers[tier].Id, "crumb", 1).ToString());
        Assert.True(SampleBakery.Shop.Settings.OnDrum);
        Assert.Equal(Piece.Round((double)(Length.FromInches(14) + Length.FromCentimetres(2)).Millimetres), Settling(0).Piece);
        Assert.Equal(Piece.Round((double)(Length.FromInches(8) + Length.FromCentimetres(4.5m)).Millimetres), Settling(1).Piece);
    }

    /// <summary>A coat of several colours: the crumb coat sets first all the same (common practice, no source: not optional).</summary>
    [Fact]
    public void Several_colours_do_not_shorten_the_setting_of_the_crumb_coat()
    {
        var order = Cakes.Good(1, 8);
        order = order with { Tiers = [order.Tiers[0] with { Colours = [new CoatColour("Ivory", "#F7F0E1", 0.5m), new CoatColour("Sage", "#D5DDC8", 0.5m)] }] };
        var hold = CakeSteps.Of(order, SampleBakery.Shop).Holds.Single(h => h.To == new StepKey(order.Id, order.Tiers[0].Id, "coat", 1).ToString());
        Assert.All(hold.In, i => Assert.True(i.Least >= (i.Store.StartsWith('f') ? 30 : 15), i.Store));
    }

    /// <summary>Two people lower a part from 8 kg and carry a cake from 10 kg (common practice, no source).</summary>
    [Fact]
    public void A_heavy_cake_is_lowered_and_boxed_by_two()
    {
        int Hands(string operation, params int[] sizes) => CakeSteps.Of(Cakes.Good(1, sizes), WithDeckOven).Steps.Single(s => s.Name == operation).Count;
        Assert.Equal(1, Hands("box", 8));
        Assert.Equal(2, Hands("box", 14, 12, 10, 8, 6));
        Assert.Equal(1, Hands("stack", 9, 6));
    }

    /// <summary>A cake that is brought: loading, the road and a quarter, setting up by tiers (common practice, no source).</summary>
    [Fact]
    public void A_delivery_takes_loading_the_road_and_setting_up()
    {
        var order = Cakes.Good() with { Handover = new Handover(Way.Deliver, Cakes.Good().Handover.At, "Orchard Hall", 20) };
        var steps = CakeSteps.Of(order, SampleBakery.Shop).Steps;
        Assert.Equal(15 + 25 + 40, steps.Single(s => s.Name == "deliver").Minutes);
        Assert.Equal(25, steps.Single(s => s.Name == "return").Minutes);
    }

    /// <summary>Amounts in the kitchen are those of the build sheet, so that the cake's page and the bowl never differ.</summary>
    [Fact]
    public void The_bowls_hold_what_the_build_sheet_says()
    {
        var order = Cakes.Good(1, 10, 8, 6) with { Finish = Finish.Textured };
        var sheet = BuildSheet.Of(order);
        var steps = CakeSteps.Of(order, SampleBakery.Shop).Steps;
        Assert.Equal(sheet.Batter.Millilitres * 0.95, steps.Where(s => s.Name == "mix").Sum(s => s.Mix!.Size), 5.0 * sheet.Tiers.Sum(t => t.Pans.Count));
        Assert.Equal(sheet.Icing.Millilitres, steps.Where(s => s.Name == "buttercream").Sum(s => s.Mix!.Size), 10.0 * steps.Count(s => s.Name == "buttercream"));
    }

    [Theory]
    [InlineData("fill")]
    [InlineData("crumb")]
    public void Largest_first_is_a_habit_of_order_and_no_wait(string operation)
    {
        var order = Cakes.Good();
        string At(int i) => new StepKey(order.Id, order.Tiers[i].Id, operation, 1).ToString();
        var holds = CakeSteps.Of(order, SampleBakery.Shop).Holds;
        Assert.All([(0, 1), (1, 2)], p => Assert.True(Places.IsWhenever(holds.Single(h => h.From == At(p.Item1) && h.To == At(p.Item2)))));
    }

    [Theory]
    [InlineData(8)]
    [InlineData(9, 6)]
    [InlineData(10, 8, 6)]
    [InlineData(12, 10, 8, 6)]
    public void A_cake_is_one_chain_from_the_bowl_to_the_customer(params int[] sizes)
    {
        var cake = CakeSteps.Of(Cakes.Good(1, sizes), SampleBakery.Shop);
        var starts = cake.Holds.Select(h => h.To).ToHashSet();
        var ends = cake.Holds.Select(h => h.From).ToHashSet();
        Assert.All(cake.Steps.Where(s => !starts.Contains(s.Id)), s => Assert.NotNull(s.Mix));
        Assert.Equal([cake.Out], cake.Steps.Select(s => s.Id).Where(s => !ends.Contains(s)));
    }

    /// <summary>
    /// 20:00 to 06:00 in London is 11 h elapsed over the night to 25 October 2026 and 9 h over the night to 29 March 2026. Source: the
    /// clock changes of Europe/London in the tz database.
    /// </summary>
    [Theory]
    [InlineData(2026, 10, 24, 11)]
    [InlineData(2026, 3, 28, 9)]
    [InlineData(2026, 6, 6, 10)]
    public void A_night_with_a_clock_change_is_counted_in_elapsed_hours(int year, int month, int day, int hours)
    {
        var time = WeekTime.Of(DateTimeZoneProviders.Tzdb["Europe/London"], Instant.FromUtc(year, month, day - 3, 9, 0), 21);
        var evening = new LocalDate(year, month, day) + new LocalTime(20, 0);
        Assert.Equal(hours * 60, time.Minute(evening.PlusHours(10)) - time.Minute(evening));
    }
}
