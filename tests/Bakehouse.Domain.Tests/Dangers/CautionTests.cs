namespace Bakehouse.Domain.Tests.Dangers;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Dangers;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Shops;
using Bakehouse.Testing;

public sealed class CautionTests
{
    private static readonly Order Flowered = Cakes.Good() with
    {
        OnTop = new OnTop(
            new FreshFlowers([new OrderedFlower("foxglove", FlowerPut.Pick, Stems: 5), new OrderedFlower("ivy", FlowerPut.Disc, Stems: 2)], "Tansy Lane"),
            [new OrderedTopping("wired-sugar-flowers", 3), new OrderedTopping("glitter-sold-as-food")]),
        Eaters = new Eaters(SmallChildren: true, Vulnerable: false),
    };

    /// <summary>6 dowels in the 10 in tier, 5 in the 8 in, one board under each upper tier, one rod (common practice, no source); 5 + 3 picks, 3 wires, 2 discs as ordered.</summary>
    [Fact]
    public void What_is_hidden_is_counted_once()
    {
        var parts = HiddenParts.Of(Flowered, BuildSheet.Of(Flowered));
        Assert.Equal("11 dowels, 2 boards, 1 rod, 8 picks, 3 wires, 2 discs", parts.ToString());
        Assert.Equal(27, parts.Total);
        Assert.Equal(0, HiddenParts.Of(Cakes.Good(1, 8), BuildSheet.Of(Cakes.Good(1, 8))).Total);
    }

    [Theory]
    [InlineData("stack")]
    [InlineData("box")]
    [InlineData("handover")]
    [InlineData("deliver")]
    public void The_same_count_stands_on_each_card(string step)
    {
        var hidden = Assert.Single(All(Flowered), c => c.First == "Hidden inside:");
        Assert.Contains(step, hidden.Steps);
        Assert.Contains("27 parts in all: count them in, and tell whoever cuts it the same count.", hidden.Says, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("stack")]
    [InlineData("decorate")]
    [InlineData("box")]
    [InlineData("handover")]
    public void What_must_come_off_stands_on_each_card(string step) =>
        Assert.Contains(All(Flowered), c => c.First == "Take off before cutting:" && c.Says == "5 stems of foxglove, 2 stems of ivy, sugar flowers on wire (3)." && c.Steps.Contains(step));

    [Fact]
    public void The_flower_its_barrier_its_source_and_who_brings_it_stand_on_the_decorators_card()
    {
        var foxglove = Assert.Single(All(Flowered), c => c.First == "Foxglove:");
        Assert.Contains("decorate", foxglove.Steps);
        Assert.Equal(("listed as poisonous, each stem in a pick, none in cake. From Tansy Lane.", "Colorado State University Extension 7.237, table 1"), (foxglove.Says, foxglove.Source));
        Assert.Contains(All(Flowered), c => c.Says == Flower.Caution);
        Assert.Contains(All(Flowered), c => c.Says == Topping.Caution);
    }

    [Fact]
    public void Who_eats_stands_where_egg_and_alcohol_go_in_and_where_it_is_told()
    {
        var children = Assert.Single(All(Flowered), c => c.First == "Children under 5 eat this.");
        Assert.Contains("A small child can choke on: flower picks.", children.Says, StringComparison.Ordinal);
        Assert.All(["filling", "decorate", "box", "handover"], s => Assert.Contains(s, children.Steps));
    }

    [Fact]
    public void A_plain_cake_says_only_what_is_hidden_in_it() => Assert.Equal(["Hidden inside:"], All(Cakes.Good()).Select(c => c.First));

    /// <summary>Whoever stacks, boxes and hands over is told which tier is foam.</summary>
    [Fact]
    public void A_tier_of_foam_is_told_until_the_cake_is_handed_over()
    {
        var order = Cakes.Good();
        Assert.DoesNotContain(All(order), c => c.First == "Foam, no cake:");
        var foam = Assert.Single(All(order with { Tiers = [.. order.Tiers.Take(2), order.Tiers[2] with { Special = new TierSpecial { IsFalse = true } }] }), c => c.First == "Foam, no cake:");
        Assert.StartsWith("the 6 in tier.", foam.Says, StringComparison.Ordinal);
        Assert.Superset(new HashSet<string> { "stack", "box", "handover" }, foam.Steps.ToHashSet());
    }

    /// <summary>What no recipe lists can come from the kitchen: said at the bowl (clean-down) and at handover (tell the customer); a dislike is only noted.</summary>
    [Fact]
    public void What_the_kitchen_uses_is_told_from_the_bowl_to_the_handover()
    {
        var order = Cakes.Good() with { Allergies = new AllergyAnswer(AllergyKind.Avoid, ["nuts"], "") };
        var nuts = Assert.Single(All(order), c => c.First == "Avoid nuts:");
        Assert.Contains("What is used in this kitchen can still get in.", nuts.Says, StringComparison.Ordinal);
        Assert.Contains("Tell the customer what is used in this kitchen.", nuts.Says, StringComparison.Ordinal);
        Assert.Superset(new HashSet<string> { "mix", "fill", "coat", "stack", "box", "handover" }, nuts.Steps.ToHashSet());
        Assert.DoesNotContain("free from", nuts.Says, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain(All(order with { Allergies = order.Allergies with { Told = CustomersWord.Dislike } }), c => c.First == "Avoid nuts:");
    }

    private static IReadOnlyList<Caution> All(Order order) => Caution.Of(order, BuildSheet.Of(order), SampleBakery.Shop, Starter.Sample);
}
