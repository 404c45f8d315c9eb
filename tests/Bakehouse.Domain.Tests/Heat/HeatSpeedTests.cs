namespace Bakehouse.Domain.Tests.Heat;

using System.Diagnostics;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Heat;

/// <summary>
/// What a page or a plan waits for. Figures are set against a fixed loop in the same run (one million square roots and divisions, 11.5 ms on
/// the machine that these limits were found on), run so often that it is disturbed for as long as the work; of several tries the shortest counts.
/// </summary>
public sealed class HeatSpeedTests(ITestOutputHelper output)
{
    [Fact]
    public void A_day_of_three_tiers_at_both_ends_and_between_takes_under_fifty_milliseconds() => Takes("24 h of 3 tiers, three bands", 50, 20, () =>
    {
        var cake = CakeBodies.Stack([WaitsTests.Tier(10, 10), WaitsTests.Tier(8, 10), WaitsTests.Tier(6, 10)], CoatState.Cream, CakeFigures.Usual);
        foreach (var around in new[] { 3.0, 4, 5 })
        {
            Assert.True(Conduction.Run(cake, new HeatStart(18, 21), [new Stay(1440, new Surroundings(around) { Stirred = 3 })]).Minutes[^1] > 1439);
        }
    });

    [Fact]
    public void The_waits_of_forty_cakes_take_under_a_second() => Takes("waits of 40 cakes", 1000, 2, () =>
    {
        for (var n = 0; n < 40; n++)
        {
            var tier = WaitsTests.Tier(6 + (n % 4 * 2), 10 + (n % 3));
            Assert.NotNull(WaitsTests.Shop.Cool(tier, HeatPlace.UsualRoom).Minutes);
            Assert.NotNull(WaitsTests.Shop.FirmToFillIn(tier, HeatPlace.UsualFridge).Minutes);
            Assert.NotNull(WaitsTests.Shop.SetCrumb(tier, HeatPlace.UsualFridge).Minutes);
        }
    });

    [Fact]
    public void When_to_leave_the_fridge_takes_under_a_tenth_of_a_second() => Takes("leaving the fridge, 3 tiers", 100, 10, () =>
    {
        var noon = Instant.FromUtc(2026, 6, 6, 12, 0);
        Assert.Empty(LeaveFridge.Of(
            new LeaveQuestion([WaitsTests.Tier(10, 10), WaitsTests.Tier(8, 10), WaitsTests.Tier(6, 10)], CoatState.Cream, HeatPlace.UsualFridge, HeatPlace.UsualRoom with { Humidity = 50 }, noon, noon + Duration.FromHours(5)), CakeFigures.Usual).Problems);
    });

    private void Takes(string what, double milliseconds, int most, Action work)
    {
        const double LoopMilliseconds = 11.5;
        var (loop, took, loops) = (double.MaxValue, double.MaxValue, (int)(milliseconds / 25));
        for (var tries = 0; tries < most; tries++)
        {
            loop = Math.Min(loop, Timed(() => Enumerable.Range(0, loops).ToList().ForEach(_ => Loop())) / loops);
            took = Math.Min(took, Timed(work));
        }

        output.WriteLine(FormattableString.Invariant($"{what}: {took:0.0} ms, the loop {loop:0.0} ms: {took / loop:0.0} to 1"));
        Assert.InRange(took / loop, 0, milliseconds / LoopMilliseconds);
    }

    private static double Timed(Action work)
    {
        var began = Stopwatch.GetTimestamp();
        work();
        return Stopwatch.GetElapsedTime(began).TotalMilliseconds;
    }

    private static void Loop()
    {
        var sum = 0.0;
        for (var i = 1; i <= 1_000_000; i++)
        {
            sum += Math.Sqrt(i + sum) / i;
        }

        Assert.True(sum > 0);
    }
}
