namespace Bakehouse.Domain.Tests.Heat;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Heat;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;

/// <summary>When a cake leaves the fridge, what dew does to it, and what warm cake does to a fridge.</summary>
public sealed class LeaveFridgeTests
{
    private static readonly Instant Noon = Instant.FromUtc(2026, 6, 6, 12, 0);
    private static readonly HeatPlace Room = HeatPlace.UsualRoom with { Humidity = 50 };

    private static LeaveQuestion Asked(CoatState coat, int cutAfterMinutes) =>
        new([WaitsTests.Tier(8, 10)], coat, HeatPlace.UsualFridge, Room, Noon, Noon + Duration.FromMinutes(cutAfterMinutes));

    private static LeaveAnswer Answer(LeaveQuestion question) => LeaveFridge.Of(question, CakeFigures.Usual);

    [Fact]
    public void It_is_handed_over_cold_and_the_customer_told_when_to_take_it_out()
    {
        var answer = Answer(Asked(CoatState.Cream, 480));
        Assert.Equal(Noon, answer.Out);
        var before = (Noon + Duration.FromMinutes(480) - answer.CustomerTakesOut!.Value).TotalMinutes;
        Assert.Equal(answer.GoodAfter!.Typical, before, 0.51);
        Assert.InRange(answer.AtCutting.Mean, 16, 17);
        Assert.Contains(answer.Why, w => w.StartsWith("It is handed over cold. Tell whoever takes it: into a fridge, and out 3 h", StringComparison.Ordinal));
    }

    [Fact]
    public void Cut_soon_after_it_leaves_before()
    {
        var answer = Answer(Asked(CoatState.Cream, 60));
        Assert.Equal(Noon + Duration.FromMinutes(60 - Math.Round(answer.GoodAfter!.Typical)), answer.Out);
        Assert.Null(answer.CustomerTakesOut);
    }

    [Fact]
    public void A_paste_coat_is_dry_by_pickup()
    {
        var answer = Answer(Asked(CoatState.Paste, 600));
        Assert.True(answer.Wetting!.IsWet);
        Assert.Equal(Noon - Duration.FromMinutes(answer.Wetting.DryAfter!.Value.High), answer.Out);
    }

    [Theory]
    [InlineData(CoatState.Cream)]
    [InlineData(CoatState.Paste)]
    public void Never_past_the_food_clock(CoatState coat)
    {
        foreach (var cut in new[] { 0, 30, 90, 200, 600 })
        {
            var answer = Answer(Asked(coat, cut) with { MostOut = 90 });
            var stood = Noon + Duration.FromMinutes(cut) - (answer.CustomerTakesOut ?? answer.Out);
            Assert.True(stood <= Duration.FromMinutes(90), $"{coat}, {cut}: {stood}");
            Assert.DoesNotContain(answer.Why, w => w.Contains("safe", StringComparison.OrdinalIgnoreCase));
            Assert.Equal("Local rules and licensed practice decide.", answer.Why[^1]);
        }
    }

    [Fact]
    public void A_coat_of_butter_in_a_heat_wave_comes_out_late_and_is_cut_colder()
    {
        var answer = Answer(Asked(CoatState.Cream, 480) with { Room = Room with { Celsius = 30 } });
        Assert.Equal(60, (Noon + Duration.FromMinutes(480) - answer.CustomerTakesOut!.Value).TotalMinutes, 0.6);
        Assert.Contains(answer.Why, w => w == "A coat of butter stands 1 h in that warmth: it is cut colder.");
    }

    [Theory]
    [InlineData(OutlineKind.Square)]
    [InlineData(OutlineKind.Heart)]
    [InlineData(OutlineKind.Hexagon)]
    public void A_cake_of_another_outline_has_an_answer_by_its_largest_tier(OutlineKind kind)
    {
        var wide = WaitsTests.Tier(10, 10) with { Special = new TierSpecial { Outline = new Outline(kind, Length.FromInches(10)) } };
        var answer = Answer(Asked(CoatState.Cream, 900) with { Tiers = [wide, WaitsTests.Tier(6, 10)] });
        Assert.Empty(answer.Problems);
        Assert.InRange(answer.GoodAfter!.Typical, 150, 400);
    }

    [Fact]
    public void A_question_that_makes_no_sense_is_told_all_at_once()
    {
        var answer = Answer(Asked(CoatState.Cream, -30) with { Room = Room with { Celsius = 70, Humidity = 101 }, MostOut = 0 });
        Assert.Equal(["kitchen", "kitchen, humidity", "cutting", "food clock"], answer.Problems.Select(p => p.Where));
        Assert.Equal("Say if you mean Fahrenheit: 70 °F are 21.1 °C.", answer.Problems[0].Try);
    }

    [Theory]
    [InlineData(18, 40, 4.2)]
    [InlineData(20, 50, 9.3)]
    [InlineData(22, 60, 13.9)]
    [InlineData(24, 80, 20.3)]
    [InlineData(28, 70, 22.0)]
    public void The_dew_point_of_the_psychrometric_tables(double celsius, double humidity, double dew) => Assert.Equal(dew, DewPoint.Of(celsius, humidity), 0.06);

    [Fact]
    public void In_dry_air_nothing_gets_wet_and_without_a_figure_nothing_is_said()
    {
        Assert.False(Answer(Asked(CoatState.Cream, 60) with { Room = Room with { Humidity = 20 } }).Wetting!.IsWet);
        Assert.Null(Answer(Asked(CoatState.Cream, 60) with { Room = Room with { Humidity = null } }).Wetting);
        Assert.Throws<ArgumentOutOfRangeException>(() => DewPoint.Of(20, 101));
    }

    [Fact]
    public void Two_kilograms_of_room_warm_cake_are_the_most_beside_perishables()
    {
        var tier = CakeBodies.Tier(WaitsTests.Tier(8, 10), CoatState.Cream, CakeFigures.Usual);
        var one = WarmLoad.Of([(tier, 21)], HeatPlace.UsualFridge);
        Assert.Equal(2, one.MostKilograms, 0.2);
        Assert.True(WarmLoad.Of([(tier, 21), (tier, 21)], HeatPlace.UsualFridge).IsTooMuch);
        Assert.True(WarmLoad.Of([(tier, 60)], HeatPlace.UsualFridge).MostKilograms < one.MostKilograms);
        Assert.False(WarmLoad.Of([(tier, 4)], HeatPlace.UsualFridge).IsTooMuch);
        Assert.Throws<ArgumentOutOfRangeException>(() => WarmLoad.Of([(tier, 21)], Room));
    }
}
