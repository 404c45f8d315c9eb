namespace Bakehouse.Domain.Tests.Heat;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Heat;

/// <summary>Readings correct a place and the cakes; readings that make no sense are refused.</summary>
public sealed class CalibrationTests
{
    private static readonly Instant Nine = Instant.FromUtc(2026, 6, 4, 9, 0);
    private static readonly HeatPlace Fridge = HeatPlace.UsualFridge;
    private static readonly HeatBody Tier = CakeBodies.Tier(WaitsTests.Tier(8, 10), CoatState.Cream, CakeFigures.Usual);

    private static double Truth(double place, double cake, double hours) => Conduction.Run(
        Tier.With(m => m.IsEaten ? m.Conducting(cake) : m), new HeatStart(18, 21),
        [new Stay(hours * 60, new Surroundings(4) { Stirred = 3, Times = place })]).At(hours * 60, HeatSpot.Core);

    private static ProbeReading Reading(double hours, double celsius) => new(Tier, new HeatStart(18, 21), Nine, Nine + Duration.FromMinutes((long)(hours * 60)), celsius);

    [Theory]
    [InlineData(0.7, 1)]
    [InlineData(1.5, 1)]
    [InlineData(1, 0.85)]
    [InlineData(1.3, 1.1)]
    public void Many_readings_of_a_probe_correct_what_is_expected_also_at_times_that_were_not_read(double place, double cake)
    {
        double[] hours = [1, 2, 4, 6, 8];
        var found = Calibration.Of([.. hours.Select(h => Reading(h, Truth(place, cake, h)) with { Off = 0.2 })], Fridge);
        Assert.All(hours.Select((h, i) => (Truth(place, cake, h), found.After[i])), p => Assert.Equal(p.Item1, p.Item2, 0.15));
        Assert.True(Math.Abs(found.After[2] - Truth(place, cake, 4)) < Math.Abs(found.Before[2] - Truth(place, cake, 4)) / 4);
        Assert.All([3.0, 10], h => Assert.Equal(Truth(place, cake, h), Truth(found.PlaceTimes, found.CakeTimes, h), 0.2));
        // Which of the two is off is hard to tell from the core alone; what they do together is not.
        Assert.Equal(place * cake >= 1, found.PlaceTimes * found.CakeTimes >= 1);
    }

    [Fact]
    public void One_reading_moves_the_answer_towards_it_and_not_beyond()
    {
        var found = Calibration.Of([Reading(3, 15.5)], Fridge);
        Assert.True(Math.Abs(found.After[0] - 15.5) < Math.Abs(found.Before[0] - 15.5));
        Assert.InRange(found.After[0], found.Before[0], 15.5);
        Assert.InRange(found.PlaceTimes, 0.6, 1);
    }

    [Fact]
    public void Still_cold_in_the_middle_says_less_than_a_probe()
    {
        var (start, read) = (HeatStart.Even(4), Nine + Duration.FromHours(5));
        var warm = Fridge with { Kind = HeatPlaceKind.Room, Celsius = 21, Name = "kitchen" };
        var felt = Calibration.Of([ProbeReading.StillCold(Tier, start, Nine, read)], warm);
        var probed = Calibration.Of([new ProbeReading(Tier, start, Nine, read, 10)], warm);
        Assert.True(felt.PlaceTimes < 1 && probed.PlaceTimes < felt.PlaceTimes);
        Assert.True(felt.After[0] < felt.Before[0]);
    }

    [Fact]
    public void What_was_learned_changes_the_waits()
    {
        var (usual, slow) = (WaitsTests.Shop.FirmToStack(WaitsTests.Tier(8, 10), Fridge), WaitsTests.Shop.FirmToStack(WaitsTests.Tier(8, 10), Fridge with { Times = 0.8 }));
        Assert.True(slow.Minutes!.Typical > usual.Minutes!.Typical);
        Assert.True((WaitsTests.Shop with { CakeTimes = 0.8 }).Cool(WaitsTests.Tier(8, 10), HeatPlace.UsualRoom).Minutes!.Typical > WaitsTests.Shop.Cool(WaitsTests.Tier(8, 10), HeatPlace.UsualRoom).Minutes!.Typical);
    }

    [Fact]
    public void Nonsense_is_refused_with_how_to_read_anew()
    {
        var found = Calibration.Of([Reading(-1, 10), Reading(3, 50), Reading(3, double.NaN)], Fridge);
        Assert.Equal((1, 1), (found.PlaceTimes, found.CakeTimes));
        Assert.Equal(["reading 1", "reading 1, hours", "reading 2", "reading 3"], found.Problems.Select(p => p.Where));
        Assert.Equal("The cake was read before it was baked or came there.", found.Problems[0].Sentence);
        Assert.Equal("Say if you mean Fahrenheit: 50 °F are 10 °C.", found.Problems[2].Try);
        Assert.Equal("Nothing was read.", Assert.Single(Calibration.Of([], Fridge).Problems).Sentence);
    }

    [Fact]
    public void Readings_that_would_need_a_place_of_three_times_the_usual_are_refused()
    {
        double[] hours = [1, 2, 3];
        var found = Calibration.Of([.. hours.Select(h => Reading(h, 5) with { Off = 0.1 })], Fridge);
        Assert.Equal((1, 1), (found.PlaceTimes, found.CakeTimes));
        Assert.Equal("Look at the times, and read again with the probe in the middle.", Assert.Single(found.Problems).Try);
    }
}
