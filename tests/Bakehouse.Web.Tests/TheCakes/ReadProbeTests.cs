namespace Bakehouse.Web.Tests.TheCakes;

using Bakehouse.Domain.Chains;
using Bakehouse.Domain.Heat;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using Bakehouse.Planner.Quick;
using Bakehouse.Web.Shell;
using Bakehouse.Web.TheCakes;
using NodaTime;

/// <summary>A probe pushed into a cake of the sample bakery.</summary>
public sealed class ReadProbeTests
{
    private static readonly Instant Opened = Instant.FromUtc(2026, 10, 15, 9, 40);
    private static readonly OpenedSample Sample = OpenedSample.At(Opened, new QuickPlanner(), TestContext.Current.CancellationToken);
    private static readonly Words Words = Words.Of(Sample.Shop);
    private static readonly Order Cake = Sample.Orders.First(o => o.Number == 405);
    private static readonly IReadOnlyList<TierChain> Chains = CakeChain.Of(Cake, Sample.Shop, Sample.Wall, Opened);

    [Fact]
    public void A_tier_that_is_warmer_than_thought_makes_the_waits_longer()
    {
        var (reading, problems) = Read(Words.Time(Words.Local(Evening - Duration.FromHours(3)).TimeOfDay), "16", Evening);
        Assert.Empty(problems);
        var learned = ReadProbe.Learn(Sample.Shop, reading!);
        Assert.Empty(learned.Problems);
        Assert.True(learned.Before[0] < 16, $"{learned.Before[0]} °C was expected.");
        Assert.InRange(learned.After[0], learned.Before[0], 16);
        var shop = ReadProbe.With(Sample.Shop, reading!, learned);
        Assert.Empty(ShopChecks.Problems(shop));
        var tier = Chains[0].Tier;
        double Stacks(Shop of) => new Waits(Domain.Cakes.CakeFigures.Of(of), of.Cold!.CakeTimes).FirmToTravel(tier, of.Cold.PlaceOf(of.Shelves[0])).Minutes!.Typical;
        Assert.True(Stacks(shop) > Stacks(Sample.Shop), $"{Stacks(shop)} and {Stacks(Sample.Shop)} min; {shop.Cold!.Units[0].Times} and {shop.Cold.CakeTimes} times; {learned.Before[0]} to {learned.After[0]}");
        // The second reading argues together with the first, from what is usual.
        Assert.Equal(2, ReadProbe.Learn(shop, reading!).Before.Count);
    }

    [Theory]
    [InlineData("", "9", "Nobody said since when")]
    [InlineData("13:00", "warm", "can't be read")]
    [InlineData("13:00", "57", "Say if you mean Fahrenheit")]
    public void Nonsense_is_refused_with_how(string came, string celsius, string says)
    {
        var (reading, problems) = Read(came, celsius, Evening);
        var all = reading is null ? problems : ReadProbe.Learn(Sample.Shop, reading).Problems;
        Assert.Contains(all, p => $"{p.Sentence} {p.Try}".Contains(says, StringComparison.Ordinal));
    }

    [Fact]
    public void A_reading_from_before_it_was_baked_is_refused()
    {
        var before = Chains[0].Stays[0].From - Duration.FromHours(3);
        var (reading, problems) = Read(Words.Time(Words.Local(before - Duration.FromHours(1)).TimeOfDay), "9", before);
        Assert.Null(reading);
        Assert.Contains("came out of its pan", Assert.Single(problems).Sentence, StringComparison.Ordinal);
    }

    private static Instant Evening => Chains[0].Stays[^1].From;

    private static (KeptReading? Reading, IReadOnlyList<Domain.Problem> Problems) Read(string came, string celsius, Instant now) =>
        ReadProbe.Of(Cake, Sample.Shop, Chains, (0, CoatState.Cream, "Fridge 1", came, celsius), Words, now);
}
