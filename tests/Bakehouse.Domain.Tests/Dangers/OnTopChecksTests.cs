namespace Bakehouse.Domain.Tests.Dangers;

using Bakehouse.Domain.Dangers;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;
using Bakehouse.Testing;

/// <summary>The barrier rule: species asked, unknown is no contact, poisonous needs a barrier, eaten only if grown for it (common practice; extension leaflets for the last).</summary>
public sealed class OnTopChecksTests
{
    [Fact]
    public void Fresh_flowers_without_a_name_are_not_taken_and_the_day_can_be_kept()
    {
        var order = With(new FreshFlowers([], "Tansy Lane"));
        Assert.Contains("nobody has said which", Assert.Single(OnTopChecks.Problems(order)).Sentence, StringComparison.Ordinal);
        Assert.Empty(OnTopChecks.Problems(order with { Stage = Stage.Kept }));
        Assert.Empty(OnTopChecks.Problems(order with { Stage = Stage.Enquiry }));
        Assert.Contains(OrderChecks.Problems(order, SampleBakery.Shop, Cakes.Now, owner: true), p => p.Where == "On top");
    }

    [Theory]
    [InlineData("freesia", FlowerPut.Touches, false, false)]
    [InlineData("freesia", FlowerPut.Pick, false, false)]
    [InlineData("freesia", FlowerPut.NotSaid, false, false)]
    [InlineData("freesia", FlowerPut.Beside, false, true)]
    [InlineData("freesia", FlowerPut.LeftOff, false, true)]
    [InlineData("foxglove", FlowerPut.Touches, true, false)]
    [InlineData("foxglove", FlowerPut.NotSaid, false, false)]
    [InlineData("foxglove", FlowerPut.Pick, false, true)]
    [InlineData("foxglove", FlowerPut.Tape, false, true)]
    [InlineData("foxglove", FlowerPut.Disc, false, true)]
    [InlineData("foxglove", FlowerPut.LeftOff, false, true)]
    [InlineData("gypsophila", FlowerPut.Touches, true, false)]
    [InlineData("gypsophila", FlowerPut.Pick, false, true)]
    [InlineData("rose", FlowerPut.Touches, false, false)]
    [InlineData("rose", FlowerPut.Touches, true, true)]
    [InlineData("rose", FlowerPut.Pick, false, true)]
    [InlineData("rose", FlowerPut.NotSaid, true, false)]
    public void The_barrier_rule(string species, FlowerPut put, bool grown, bool goes) =>
        Assert.Equal(goes, !OnTopChecks.Problems(With(new FreshFlowers([new OrderedFlower(species, put, grown)], "Tansy Lane"))).Any());

    [Fact]
    public void Whoever_brings_them_is_named_unless_none_goes_on()
    {
        Assert.Contains("who brings", Assert.Single(OnTopChecks.Problems(With(new FreshFlowers([new OrderedFlower("rose", FlowerPut.Pick)], " ")))).Sentence, StringComparison.Ordinal);
        Assert.Empty(OnTopChecks.Problems(With(new FreshFlowers([new OrderedFlower("foxglove", FlowerPut.LeftOff)], ""))));
    }

    /// <summary>US Food and Drug Administration, advice on non-edible decorative products; CDC, MMWR 70(43), 2021: 22.1 mg of copper in a gram of icing, six children ill.</summary>
    [Fact]
    public void A_dust_that_is_no_food_is_stopped_with_what_happened()
    {
        var problem = Assert.Single(OnTopChecks.Problems(Topped(new OrderedTopping("craft-glitter"))));
        Assert.Equal("Glitter or dust not sold as food", problem.Value);
        Assert.Contains("22.1 mg", problem.Sentence, StringComparison.Ordinal);
        Assert.Contains("Food and Drug Administration", problem.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Sticks_are_stopped_only_where_small_children_eat()
    {
        var sticks = Topped(new OrderedTopping("cocktail-sticks", 6));
        Assert.Empty(OnTopChecks.Problems(sticks));
        Assert.Single(OnTopChecks.Problems(sticks with { Eaters = new Eaters(true, false) }));
    }

    [Fact]
    public void What_must_come_off_is_said_and_what_is_eaten_is_not()
    {
        var order = Topped(new OrderedTopping("topper"), new OrderedTopping("flags", 4), new OrderedTopping("sugar-pearls"));
        order = order with
        {
            OnTop = order.OnTop! with
            {
                Flowers = new FreshFlowers(
                    [
                        new OrderedFlower("white roses", FlowerPut.Pick, Stems: 5), new OrderedFlower("rose", FlowerPut.Touches, GrownToEat: true, Stems: 9),
                        new OrderedFlower("foxglove", FlowerPut.LeftOff), new OrderedFlower("freesia", FlowerPut.Beside), new OrderedFlower("ivy", FlowerPut.Disc),
                    ],
                    "Tansy Lane"),
            },
        };
        Assert.Equal(["5 stems of rose", "1 stem of ivy", "acrylic or wooden topper", "flags on picks (4)"], TakeOff.Of(order));
        Assert.Empty(TakeOff.Of(Cakes.Good()));
    }

    [Fact]
    public void Everything_wrong_is_named_at_once_at_any_stage()
    {
        var order = With(new FreshFlowers([new OrderedFlower(new string('x', 300), FlowerPut.Pick, Stems: 0), .. Enumerable.Repeat(new OrderedFlower("rose", FlowerPut.Pick), 20)], new string('y', 300)))
            with { Stage = Stage.Enquiry };
        order = order with { OnTop = order.OnTop! with { Toppings = [new OrderedTopping("gravel"), new OrderedTopping("ribbon", 501), new OrderedTopping("ribbon")] } };
        var problems = OnTopChecks.Problems(order).ToList();
        Assert.Equal(7, problems.Count);
        Assert.All(problems, p => Assert.NotEmpty(p.Try));
        Assert.Contains(problems, p => p.Value == "gravel");
        Assert.All(problems, p => Assert.InRange(p.Value.Length, 1, 80));
    }

    [Fact]
    public void No_sentence_of_ours_promises_anything() => Assert.All(
        FlowerList.All.Select(f => f.Source).Concat(Topping.All.Select(t => t.Why)).Append(Flower.Caution).Append(Topping.Caution),
        text => Assert.DoesNotMatch(@"\b(safe|free from|harmless)\b", text));

    internal static Order With(FreshFlowers flowers) => Cakes.Good() with { OnTop = new OnTop(flowers, []) };

    internal static Order Topped(params IReadOnlyList<OrderedTopping> toppings) => Cakes.Good() with { OnTop = new OnTop(null, toppings) };
}
