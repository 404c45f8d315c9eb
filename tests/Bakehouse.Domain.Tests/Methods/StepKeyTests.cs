namespace Bakehouse.Domain.Tests.Methods;

using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
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

    private static readonly Gen<Func<Order, Order>> Structure = Gen.OneOf(
        Gen.Int[0, 2].Select(i => (Func<Order, Order>)(o => o.Tiers.Count < 2 ? o : o with { Tiers = [.. o.Tiers.Where((_, t) => t != i % o.Tiers.Count)] })),
        Gen.Int[20, 29].Select(i => (Func<Order, Order>)(o => o.Tiers.Any(t => t.Id == Cakes.Tier(1, i, 6).Id) ? o : o with { Tiers = [.. o.Tiers, Cakes.Tier(1, i, 6)] })),
        Gen.Bool.Select(naked => (Func<Order, Order>)(o => o with { Finish = naked ? Finish.SemiNaked : Finish.Smooth })),
        Gen.Int[0, 2].Select(i => (Func<Order, Order>)(o => o with { Stage = i == 0 ? Stage.Cancelled : Stage.Booked })));

    [Fact]
    public void Ten_thousand_edits_of_size_colour_date_and_order_keep_the_keys_of_every_hands_on_operation()
    {
        var first = Cakes.Good();
        var kept = Kinds(first);
        Edit.Array[1, 6].Sample(edits => kept.SetEquals(Kinds(edits.Aggregate(first, (o, edit) => edit(o)))), iter: 10_000, seed: "0000KeepKeys1");
    }

    /// <summary>
    /// Every tick is accounted for exactly once: its step is still wanted, or what it made is spare stock, or the cake has gone out. Also when tiers
    /// are taken away, added, or the order is called off.
    /// </summary>
    [Fact]
    public void Ten_thousand_edits_that_also_take_tiers_away_lose_no_tick()
    {
        var first = Cakes.Good() with { Number = 401, Version = 1 };
        var steps = CakeSteps.Of(first, SampleBakery.Shop).Steps.Select(s => s.Id).ToList();
        Gen.Select(Gen.OneOf(Edit, Structure).Array[1, 6], Gen.Int[0, steps.Count], Gen.Int[0, 1_000_000]).Sample(
            (edits, count, turn) =>
            {
                var ticks = Enumerable.Range(0, count).Select(i => new Tick(steps[(i + turn) % steps.Count], Cakes.Now, "petra")).ToList();
                var order = edits.Aggregate(first, (o, edit) => edit(o));
                var wanted = Stages.IsPlanned(order.Stage) ? CakeSteps.Of(order, SampleBakery.Shop).Steps.Select(s => s.Id).ToHashSet() : [];
                var spare = MadeParts.Of([order], SampleBakery.Shop, ticks).SelectMany(p => p.Ticks).Select(t => t.Step).ToList();
                return spare.Distinct().Count() == spare.Count
                    && ticks.All(t => wanted.Contains(t.Step) != spare.Contains(t.Step));
            },
            iter: 10_000,
            seed: "0000KeepTick1");
    }

    [Fact]
    public void A_tier_that_was_coated_and_taken_away_is_a_made_part()
    {
        var order = Cakes.Good() with { Number = 401, Version = 1 };
        var top = order.Tiers[2].Id;
        string[] did = ["coat", "mix", "crumb", "bake", "fill", "wrap", "turnout"];
        var ticks = did.Select(o => new Tick(new StepKey(order.Id, top, o, 1).ToString(), Cakes.Now, "petra")).ToList();
        Assert.Empty(MadeParts.Of([order], SampleBakery.Shop, ticks));

        var part = Assert.Single(MadeParts.Of([order with { Tiers = [order.Tiers[0], order.Tiers[1]] }], SampleBakery.Shop, ticks));

        Assert.Equal((top, "coat", 7), (part.Tier, part.Operation, part.Ticks.Count));
        Assert.Empty(MadeParts.Of([order with { Stage = Stage.HandedOver }], SampleBakery.Shop, ticks));
        Assert.Single(MadeParts.Of([order with { Stage = Stage.Cancelled }], SampleBakery.Shop, ticks));
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
