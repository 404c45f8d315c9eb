namespace Bakehouse.Domain.Tests.Methods;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;
using Bakehouse.Testing;

/// <summary>A tier of foam, and tiers on pillars: what is made, and what is asked for them.</summary>
public sealed class FalseTierTests
{
    private static readonly Order Good = Cakes.Good();

    /// <summary>The middle one of three is foam: it is coated and stacked, and takes no bowl, no oven, no filling.</summary>
    [Fact]
    public void Foam_is_coated_and_nothing_else()
    {
        var order = With(1, new TierSpecial { IsFalse = true });
        var steps = CakeSteps.Of(order, SampleBakery.Shop);
        var foam = order.Tiers[1].Id.ToString("N");
        Assert.Equal(["crumb", "coat"], steps.Steps.Where(s => s.Tier == foam).Select(s => s.Name));
        Assert.Equal(["bake", "bake"], steps.Steps.Where(s => s.Name == "bake").Select(s => s.Name).Take(2));
        Assert.DoesNotContain(steps.Steps, s => s.Bake?.Pans.Contains(8) == true);
        Assert.Contains(steps.Steps, s => s.Name == "stack");
        // Nothing hangs in the air: whatever a wait names is a step.
        var ids = steps.Steps.Select(s => s.Id).ToHashSet();
        Assert.All(steps.Holds, h => Assert.True(ids.Contains(h.From) && ids.Contains(h.To), h.Id));
        Assert.All(steps.Ages, a => Assert.True(ids.Contains(a.From) && ids.Contains(a.To), a.Id));
        Assert.All(steps.Fresh, f => Assert.Contains(f.Step, ids));
    }

    /// <summary>Without the 8 in tier 12 and 28 dessert slices are left (the printed chart).</summary>
    [Fact]
    public void Nobody_eats_it() => Assert.Equal(40, BuildSheet.Of(With(1, new TierSpecial { IsFalse = true })).Dessert);

    /// <summary>A square of 18 in of foam is no matter of the oven; on its drum it needs a shelf as any tier.</summary>
    [Fact]
    public void Foam_asks_for_no_oven()
    {
        var square = new TierSpecial { Outline = new Outline(OutlineKind.Square, Length.FromInches(18)) };
        var wide = Good.Tiers[0] with { Diameter = Length.FromInches(18), Special = square };
        Assert.Contains(Problems(wide), p => p.Sentence.Contains("oven", StringComparison.Ordinal));
        Assert.DoesNotContain(Problems(wide with { Special = square with { IsFalse = true } }), p => p.Sentence.Contains("oven", StringComparison.Ordinal));
    }

    [Fact]
    public void Pillars_beyond_thirty_centimetres_are_named()
    {
        Assert.DoesNotContain(OrderChecks.OfTiers(With(1, new TierSpecial { Separator = Length.FromCentimetres(6) }), SampleBakery.Shop), p => p.Sentence.Contains("illars", StringComparison.Ordinal));
        Assert.Contains(OrderChecks.OfTiers(With(1, new TierSpecial { Separator = Length.FromCentimetres(31) }), SampleBakery.Shop), p => p.Sentence.Contains("at most 30 cm", StringComparison.Ordinal));
    }

    private static IReadOnlyList<Problem> Problems(CakeTier bottom) => OrderChecks.OfTiers(Good with { Tiers = [bottom] }, SampleBakery.Shop);

    private static Order With(int tier, TierSpecial special) => Good with { Tiers = [.. Good.Tiers.Select((t, i) => i == tier ? t with { Special = special } : t)] };
}
