namespace Bakehouse.Domain.Tests.Cakes;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;
using Bakehouse.Testing;

/// <summary>What a cake serves against what was asked. 6 + 8 + 10 in are 12 + 24 + 38 = 74 fingers (the chart that most shops print, common practice, no source).</summary>
public sealed class ServesTests
{
    [Theory]
    [InlineData(60, false, 74, 0)]
    [InlineData(62, true, 62, 0)]
    [InlineData(85, true, 62, 23)]
    [InlineData(85, false, 74, 11)]
    public void A_top_tier_that_is_kept_is_not_cut(int asked, bool kept, int toCut, int missing)
    {
        var serves = Serves.Of(BuildSheet.Of(Cakes.Good()), new Portions(asked, Cut.Coffee), kept);
        Assert.Equal((toCut, missing), (serves.ToCut, serves.Missing));
    }

    /// <summary>By hand: a heart of 8 in covers (1 + π/4) of a square whose side s makes it 8 in wide, s = 8 / √2 / 1.2071: 39.2 in², 13 slices of 3 in².</summary>
    [Fact]
    public void A_heart_for_twenty_is_seven_short_and_the_next_size_is_named()
    {
        var heart = Heart(8);
        Assert.Equal(7, Serves.Of(heart, CakeFigures.Usual)!.Missing);
        var larger = NextSize.For(heart, Length.FromInches(1), CakeFigures.Usual, _ => true)!;
        Assert.Equal(10, larger[0].Special!.Outline!.Wide.Inches);
        Assert.Equal(10, larger[0].Diameter.Inches);
        Assert.Equal(heart.Tiers[0].Id, larger[0].Id);
        Assert.Equal(0, Serves.Of(heart with { Tiers = larger }, CakeFigures.Usual)!.Missing);
        Assert.True(Serves.Of(Heart(9), CakeFigures.Usual)!.Missing > 0);
    }

    [Fact]
    public void A_size_that_the_shop_cannot_have_is_not_named() =>
        Assert.Null(NextSize.For(Heart(8), Length.FromInches(1), CakeFigures.Usual, tiers => tiers[0].Diameter.Inches < 10));

    [Fact]
    public void Nothing_short_is_taken_until_the_customer_was_told_of_just_so_many()
    {
        var heart = Heart(8);
        Assert.Contains(Look(heart), p => p.Where == "How many" && p.Sentence.Contains("7 short", StringComparison.Ordinal));
        Assert.Contains(Look(heart with { ShortTold = 6 }), p => p.Where == "How many");
        Assert.DoesNotContain(Look(heart with { ShortTold = 7 }), p => p.Where == "How many");
        Assert.DoesNotContain(Look(heart with { Stage = Stage.Kept }), p => p.Where == "How many");
    }

    [Fact]
    public void Builds_are_found_among_pans_in_centimetres()
    {
        var best = Reaching.Three(40, Cut.Coffee, keepsTop: true, Length.FromCentimetres(10), CakeFigures.Usual, Reaching.MetricSizes);
        Assert.Equal(3, best.Count);
        Assert.All(best, b => Assert.All(b.Diameters, d => Assert.Contains(d, Reaching.MetricSizes)));
        Assert.All(best, b => Assert.All(b.Diameters.Zip(b.Diameters.Skip(1)), p => Assert.InRange((p.First - p.Second).Centimetres, 5, 10)));
    }

    private static IReadOnlyList<Problem> Look(Order order) => OrderChecks.Problems(order, SampleBakery.Shop, Cakes.Now, owner: true);

    private static Order Heart(int inches) => Cakes.Good(1, inches) with
    {
        Portions = new Portions(20, Cut.Dessert),
        Tiers = [Cakes.Tier(1, 1, inches) with { Special = new TierSpecial { Outline = new Outline(OutlineKind.Heart, Length.FromInches(inches)) } }],
    };
}
