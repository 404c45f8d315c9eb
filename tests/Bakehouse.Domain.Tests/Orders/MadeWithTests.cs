namespace Bakehouse.Domain.Tests.Orders;

using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;
using Bakehouse.Testing;

/// <summary>An order that avoids what its own sponge, filling or coat is made with is told before it is taken.</summary>
public sealed class MadeWithTests
{
    [Theory]
    [InlineData("carrot", "raspberry-jam", "nuts", "Carrot and walnut is made with that.")]
    [InlineData("carrot", "raspberry-jam", "Nuts", "Carrot and walnut is made with that.")]
    [InlineData("vanilla", "lemon-curd", "egg", "Lemon curd is made with that.")]
    [InlineData("vanilla", "raspberry-jam", "milk", "Buttercream for the coat is made with that.")]
    public void What_it_is_made_with_and_must_be_kept_from_is_named(string sponge, string filling, string avoid, string says)
    {
        var found = Problems(sponge, filling, avoid).Where(p => p.Where == "Allergies").ToList();
        Assert.Contains(found, p => p.Sentence == says);
        Assert.All(found, p => Assert.Contains("Check the recipe yourself", p.Try, StringComparison.Ordinal));
    }

    [Fact]
    public void What_it_is_not_known_to_be_made_with_stops_nobody() => Assert.Empty(Problems("vanilla", "raspberry-jam", "nuts"));

    [Fact]
    public void Words_that_nobody_judged_stop_it_without_recipes_too()
    {
        var order = Cakes.Good(1, 8) with { Allergies = new AllergyAnswer(AllergyKind.Avoid, ["nuts"], "nuts, and kiwi") };
        Assert.Equal("nuts, and kiwi", Assert.Single(OrderChecks.Problems(order, SampleBakery.Shop, Cakes.Now, owner: true)).Value);
        Assert.Empty(OrderChecks.Problems(order with { Stage = Stage.Kept }, SampleBakery.Shop, Cakes.Now, owner: true));
    }

    private static IReadOnlyList<Problem> Problems(string sponge, string filling, string avoid)
    {
        var order = Cakes.Good(1, 8);
        return OrderChecks.Problems(
            order with
            {
                Tiers = [order.Tiers[0] with { Sponge = sponge, Filling = filling }],
                Allergies = new AllergyAnswer(AllergyKind.Avoid, [avoid], "swells up") { Judged = "swells up" },
            },
            SampleBakery.Shop,
            Cakes.Now,
            owner: true);
    }
}
