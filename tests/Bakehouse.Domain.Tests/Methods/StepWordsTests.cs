namespace Bakehouse.Domain.Tests.Methods;

using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;
using Bakehouse.Testing;

public sealed class StepWordsTests
{
    [Theory]
    [InlineData("coat", "Final coat 8 in", 8)]
    [InlineData("crumb", "Crumb coat 12 in", 12)]
    [InlineData("fill", "Fill 6+10 in", 10, 6)]
    [InlineData("handover", "Hand over 6+8+10", 10, 8, 6)]
    [InlineData("buttercream", "Whip cream", 14, 12, 10, 8, 6)]
    [InlineData("leavefridge", "Take out 5 tiers", 14, 12, 10, 8, 6)]
    public void The_big_line_is_verb_and_size(string operation, string words, params int[] sizes) =>
        Assert.Equal(words, StepWords.Big(operation, Tiers(sizes), SampleBakery.Shop));

    /// <summary>The longest line that is read from two metres: every operation on every usual build, in both units.</summary>
    [Fact]
    public void The_big_line_never_grows_too_long()
    {
        int[][] builds = [[6], [8], [12], [14, 10], [10, 8, 6], [14, 12, 10, 8, 6]];
        Shop[] shops = [SampleBakery.Shop, SampleBakery.Shop with { Settings = new ShopSettings(Inches: false) }];
        foreach (var (operation, build, shop) in Method.Operations.SelectMany(o => builds.SelectMany(b => shops.Select(s => (o, b, s)))))
        {
            Assert.InRange(StepWords.Big(operation.Id, Tiers(build), shop).Length, 1, StepWords.Longest);
        }
    }

    [Fact]
    public void The_second_line_says_what_with()
    {
        var order = Cakes.Good(1, 8) with { Inscription = "HAPPY BIRTHDAY NOA" };
        var steps = CakeSteps.Of(order, SampleBakery.Shop).Steps.ToLookup(s => s.Name);
        Assert.StartsWith("Vanilla ", Detail("mix"), StringComparison.Ordinal);
        Assert.EndsWith(" g", Detail("mix"), StringComparison.Ordinal);
        Assert.Equal("Raspberry jam", Detail("fill"));
        Assert.Equal("Ivory", Detail("coat"));
        Assert.Equal("“HAPPY BIRTHDAY NOA”", Detail("decorate"));

        string Detail(string operation) => StepWords.Detail([steps[operation].First()], order.Tiers, order);
    }

    private static IReadOnlyList<CakeTier> Tiers(int[] sizes) => Cakes.Good(1, sizes).Tiers;
}
