namespace Bakehouse.Domain.Tests.Methods;

using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;
using Bakehouse.Testing;
using CsCheck;

/// <summary>The law of steps: an edit keeps the keys, so that a tick is never lost.</summary>
public sealed class StepKeyTests
{
    private static readonly Gen<Func<Order, Order>> Edit = Gen.OneOf(
        Gen.Int[0, 2].Select(Gen.Int[4, 12], (i, inches) => (Func<Order, Order>)(o => Change(o, i, t => t with { Diameter = Length.FromInches(inches) }))),
        Gen.Int[0, 2].Select(Gen.Int[6, 15], (i, cm) => (Func<Order, Order>)(o => Change(o, i, t => t with { Height = Length.FromCentimetres(cm) }))),
        Gen.Int[0, 2].Select(i => (Func<Order, Order>)(o => Change(o, i, t => t with { Colours = [new CoatColour("Red", "#B5514B", 1)] }))),
        Gen.Int[1, 20].Select(days => (Func<Order, Order>)(o => o with { Handover = o.Handover with { At = o.Handover.At.PlusDays(days) } })),
        Gen.Const((Func<Order, Order>)(o => o with { Tiers = [.. o.Tiers.Reverse()] })),
        Gen.String[0, 20].Select(text => (Func<Order, Order>)(o => o with { Inscription = text })));

    [Fact]
    public void Ten_thousand_edits_of_size_colour_date_and_order_keep_the_keys_of_every_hands_on_operation()
    {
        var first = Cakes.Good();
        var kept = Kinds(first);
        Edit.Array[1, 6].Sample(edits => kept.SetEquals(Kinds(edits.Aggregate(first, (o, edit) => edit(o)))), iter: 10_000, seed: "0000KeepKeys1");
    }

    [Fact]
    public void A_key_written_and_read_is_the_same()
    {
        foreach (var step in CakeSteps.Of(Cakes.Good(), SampleBakery.Shop).Steps)
        {
            Assert.Equal(step.Id, StepKey.Parse(step.Id)!.Value.ToString());
        }
    }

    [Theory]
    [InlineData("")]
    [InlineData("a.b.c.d")]
    [InlineData("00000001000000070102030405060708.cake.box.-1")]
    public void A_text_that_is_no_key_is_none(string text) => Assert.Null(StepKey.Parse(text));

    // The keys with ordinal 1: bigger tiers may need more loads, which only adds keys with higher ordinals.
    private static HashSet<string> Kinds(Order order) =>
        [.. CakeSteps.Of(order, SampleBakery.Shop).Steps.Select(s => s.Id).Where(id => id.EndsWith(".1", StringComparison.Ordinal))];

    private static Order Change(Order order, int index, Func<CakeTier, CakeTier> change) =>
        order with { Tiers = [.. order.Tiers.Select((t, i) => i == index ? change(t) : t)] };
}
