namespace Bakehouse.Domain.Tests.Heat;

using System.Diagnostics;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Heat;

/// <summary>
/// What a page or a plan waits for. Figures are set against a fixed loop (one million square roots and divisions, 11.5 ms on the machine that these
/// limits were found on) that runs in turn with the work, so that whatever disturbs the one disturbs the other; the middle of many tries counts.
/// </summary>
public sealed class HeatSpeedTests(ITestOutputHelper output)
{
    private const double LoopMilliseconds = 11.5;

    [Fact]
    public void A_day_of_three_tiers_at_both_ends_and_between_takes_under_fifty_milliseconds() => Takes("24 h of 3 tiers, three bands", 50, 1, 25, _ =>
    {
        var cake = CakeBodies.Stack([WaitsTests.Tier(10, 10), WaitsTests.Tier(8, 10), WaitsTests.Tier(6, 10)], CoatState.Cream, CakeFigures.Usual);
        foreach (var around in new[] { 3.0, 4, 5 })
        {
            Assert.True(Conduction.Run(cake, new HeatStart(18, 21), [new Stay(1440, new Surroundings(around) { Stirred = 3 })]).Minutes[^1] > 1439);
        }
    });

    [Fact]
    public void Three_waits_each_of_forty_cakes_take_under_a_second() => Takes("waits of 40 cakes", 1000, 40, 40, n =>
    {
        var tier = WaitsTests.Tier(6 + (n % 4 * 2), 10 + (n % 3));
        Assert.NotNull(WaitsTests.Shop.Cool(tier, HeatPlace.UsualRoom).Minutes);
        Assert.NotNull(WaitsTests.Shop.FirmToFillIn(tier, HeatPlace.UsualFridge).Minutes);
        Assert.NotNull(WaitsTests.Shop.SetCrumb(tier, HeatPlace.UsualFridge).Minutes);
    });

    [Fact]
    public void When_to_leave_the_fridge_takes_under_a_tenth_of_a_second() => Takes("leaving the fridge, 3 tiers", 100, 1, 15, _ =>
    {
        var noon = Instant.FromUtc(2026, 6, 6, 12, 0);
        var tiers = new[] { 10, 8, 6 }.Select(inches => WaitsTests.Tier(inches, 10)).ToList();
        var question = new LeaveQuestion(tiers, CoatState.Cream, HeatPlace.UsualFridge, HeatPlace.UsualRoom with { Humidity = 50 }, noon, noon + Duration.FromHours(5));
        Assert.Empty(LeaveFridge.Of(question, CakeFigures.Usual).Problems);
    });

    /// <summary>So many times the middle of the tries, against the limit and the loop.</summary>
    private void Takes(string what, double milliseconds, int times, int tries, Action<int> work)
    {
        work(0);
        var (loops, works) = (new List<double>(), new List<double>());
        for (var n = 0; n < tries; n++)
        {
            loops.Add(Timed(Loop));
            works.Add(Timed(() => work(n)));
        }

        var (loop, took) = (Middle(loops), times * Middle(works));
        output.WriteLine(FormattableString.Invariant($"{what}: {took:0.0} ms, the loop {loop:0.0} ms: {took / loop:0.0} to 1, shortest {times * works.Min():0.0} ms"));
        Assert.InRange(took / loop, 0, milliseconds / LoopMilliseconds);
    }

    private static double Middle(List<double> of) => of.Order().ElementAt(of.Count / 2);

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
