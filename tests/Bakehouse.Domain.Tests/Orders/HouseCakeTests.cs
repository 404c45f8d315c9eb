namespace Bakehouse.Domain.Tests.Orders;

using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;

/// <summary>What may be sold by name. Our own rules.</summary>
public sealed class HouseCakeTests
{
    private static readonly HouseCake Good = HouseCake.Of(" Garden party ", Testing.Cakes.Good());

    [Fact]
    public void The_sample_bakery_sells_three_and_a_build_keeps_its_name_without_blanks()
    {
        Assert.Equal(3, SampleBakery.Shop.HouseCakes.Count);
        Assert.Empty(ShopChecks.Problems(SampleBakery.Shop));
        Assert.Equal("Garden party", Good.Name);
        Assert.Equal(Testing.Cakes.Good().Tiers.Select(t => t.Diameter), Good.Tiers.Select(t => t.Diameter));
    }

    [Fact]
    public void Everything_wrong_with_them_is_told_at_once()
    {
        var problems = ShopChecks.Problems(SampleBakery.Shop with
        {
            HouseCakes =
            [
                Good, Good with { Name = "garden PARTY" }, Good with { Name = "  " }, Good with { Name = "Nothing", Tiers = [] },
                .. Enumerable.Range(0, 9).Select(i => Good with { Name = $"Cake {i}" }),
            ],
        });
        Assert.All(problems, p => Assert.Equal("house cakes", p.Where));
        Assert.Contains(problems, p => p.Sentence.Contains("13 house cakes", StringComparison.Ordinal));
        Assert.Contains(problems, p => p.Sentence == "A name is missing.");
        Assert.Contains(problems, p => p.Sentence == "Two house cakes are called Garden party.");
        Assert.Contains(problems, p => p.Sentence.StartsWith("Nothing: ", StringComparison.Ordinal));
    }
}
