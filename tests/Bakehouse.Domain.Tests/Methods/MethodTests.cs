namespace Bakehouse.Domain.Tests.Methods;

using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using Bakehouse.Testing;

public sealed class MethodTests
{
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
    /// Hands-on minutes by build before wash-up and for simple decor: 1 tier 8 in 173, 2 tiers 6+9 264, 3 tiers 6+8+10 417, 5 tiers 751. Source:
    /// a walk through common-practice minutes, stand-alone, computed apart. Ours leave out pulling hardware, board covering
    /// and photo (35 of 173 min on the smallest cake, so at least 60 %), and round each sitting up to 5 min (at most a tenth more).
    /// </summary>
    [Theory]
    [InlineData(173, 8)]
    [InlineData(264, 9, 6)]
    [InlineData(417, 10, 8, 6)]
    [InlineData(751, 14, 12, 10, 8, 6)]
    public void Hands_on_minutes_are_of_the_size_that_bakers_know(int walked, params int[] sizes)
    {
        var hands = CakeSteps.Of(Cakes.Good(1, sizes), SampleBakery.Shop with { Ovens = [.. SampleBakery.Shop.Ovens, new Oven("big", "Deck", OvenKind.Deck, 2, Domain.Measures.Length.FromCentimetres(80), Domain.Measures.Length.FromCentimetres(60))] })
            .Steps.Where(s => s.Skill is not null).Sum(s => s.Minutes * s.Count);
        Assert.InRange(hands, walked * 0.6, walked * 1.1);
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

    /// <summary>Largest first: common practice, no source.</summary>
    [Fact]
    public void The_largest_tier_is_filled_first()
    {
        var order = Cakes.Good();
        var week = Week.From([order with { Number = 1, Version = 1 }], SampleBakery.Shop, [], null, Cakes.Now);
        string Fill(int i) => new StepKey(order.Id, order.Tiers[i].Id, "fill", 1).ToString();
        Assert.Contains(week.Holds, h => h.From == Fill(0) && h.To == Fill(1));
        Assert.Contains(week.Holds, h => h.From == Fill(1) && h.To == Fill(2));
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
