namespace Bakehouse.Planner.Tests;

using System.Diagnostics;
using Bakehouse.Domain.Chains;
using Bakehouse.Domain.FoodClocks;
using Bakehouse.Domain.Heat;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using Bakehouse.Domain.Slips;
using Bakehouse.Planner.Quick;
using NodaTime;

/// <summary>The sample week with waits by heat: every pickup is kept, and every tier sent through the plan is cold enough when the next work comes.</summary>
public sealed class ColdChainTests(ITestOutputHelper output)
{
    private static readonly Instant Opened = Instant.FromUtc(2026, 10, 15, 9, 40);
    private static readonly OpenedSample Sample = OpenedSample.At(Opened, new QuickPlanner(), TestContext.Current.CancellationToken);

    [Fact]
    public void Waits_by_heat_keep_every_pickup_of_the_sample_week_that_the_table_kept()
    {
        var table = Plan(Sample.Shop with { Cold = null });
        var heat = Plan(Sample.Shop);
        var before = table.Week.Holds.ToDictionary(h => h.Id, h => h.In.Select(i => i.Least).ToList());
        var changed = heat.Week.Holds.Count(h => !h.In.Select(i => i.Least).SequenceEqual(before[h.Id]));
        output.WriteLine($"{changed} of {heat.Week.Holds.Count} waits differ; late {table.Late} and {heat.Late} min");
        Assert.True(changed > 20, $"Only {changed} waits come from heat.");
        Assert.Equal(0, table.Late);
        Assert.Equal(0, heat.Late);
    }

    [Fact]
    public void A_kitchen_that_is_hotter_and_a_fridge_that_is_warmer_wait_longer()
    {
        var tier = Sample.Orders.SelectMany(o => o.Stack).First(t => !t.IsFalse);
        var baked = Domain.Measures.Length.FromCentimetres(5);
        var shelf = Sample.Shop.Shelves.First(s => s.Kind == ShelfKind.Fridge);
        int Wait(ColdChain cold, string from, string to, Shelf? on) => HeatedWaits.Minutes(Sample.Shop with { Cold = cold }, tier, baked, from, to, on)!.Value;
        var usual = ColdChain.Usual("GB");
        Assert.True(Wait(usual with { Kitchen = 26 }, "turnout", "wrap", null) > Wait(usual, "turnout", "wrap", null));
        Assert.True(Wait(usual with { Units = [new(shelf.Unit, 7)] }, "wrap", "fill", shelf) > Wait(usual, "wrap", "fill", shelf));
        Assert.True(Wait(usual with { Units = [new(shelf.Unit, 4, HasFan: true)] }, "wrap", "fill", shelf) < Wait(usual, "wrap", "fill", shelf));
        // At 7.9 degrees a coat never gets to 8 in an honest time: the method's own minutes count, and the shop is told.
        Assert.Null(HeatedWaits.Minutes(Sample.Shop with { Cold = usual with { Units = [new(shelf.Unit, 7.9)] } }, tier, baked, "coat", "stack", shelf));
    }

    [Fact]
    public void Every_tier_of_the_plan_is_followed_and_none_comes_too_warm()
    {
        var watch = Stopwatch.StartNew();
        var chains = Sample.Orders.Where(o => Stages.IsPlanned(o.Stage)).SelectMany(o => CakeChain.Of(o, Sample.Shop, Sample.Wall, Opened).Select(c => (Order: o, Chain: c))).ToList();
        output.WriteLine($"{chains.Count} tiers, {watch.ElapsedMilliseconds} ms");
        Assert.True(chains.Count > 15);
        Assert.All(chains, c =>
        {
            Assert.True(c.Chain.Stays.Zip(c.Chain.Stays.Skip(1)).All(p => p.First.To == p.Second.From), $"{c.Order.Number} is in one place at a time.");
            Assert.Equal("handover or deliver", StepKey.Parse(c.Chain.Stays[^1].Step)!.Value.Operation is "handover" or "deliver" ? "handover or deliver" : c.Chain.Stays[^1].Step);
            Assert.All(c.Chain.Points, p => Assert.InRange(p.Core, -19, 91));
            Assert.Empty(c.Chain.Breaches.Select(b => b.Sentence));
        });
    }

    /// <summary>A tier that is filled an hour after the oven: the chain says so, in degrees.</summary>
    [Fact]
    public void What_is_filled_warm_is_said_with_its_degrees()
    {
        var order = Sample.Orders.First(o => Stages.IsPlanned(o.Stage) && CakeChain.Of(o, Sample.Shop, Sample.Wall, Opened).Count > 0);
        var tier = order.Stack[0].Id;
        int At(string operation) => Sample.Wall.Plan.Steps.Where(r => StepKey.Parse(r.Step) is { } k && k.Order == order.Id && k.Tier == tier && k.Operation == operation).Max(r => r.Start);
        var hurried = Sample.Wall.Plan with
        {
            Steps = [.. Sample.Wall.Plan.Steps.Select(r => StepKey.Parse(r.Step) is { } k && k.Order == order.Id && k.Tier == tier && k.Operation is "wrap" or "fill"
                ? r with { Start = At("turnout") + (k.Operation == "wrap" ? 20 : 40) } : r)],
        };
        var chain = CakeChain.Of(order, Sample.Shop, new Wall(Sample.Wall.Epoch, hurried), Opened).First(c => c.Tier.Id == tier);
        Assert.Contains(chain.Breaches, b => b.Sentence.EndsWith("in the middle when it is wrapped: 30 or less is right.", StringComparison.Ordinal));
        Assert.Contains(chain.Breaches, b => b.Sentence.EndsWith("in the middle when it is filled: 15 or less is right.", StringComparison.Ordinal));
    }

    /// <summary>UK, from the plan: cold but for the 15 minutes before it is handed over; with a power cut of six hours two of them count (shut for four).</summary>
    [Fact]
    public void The_clock_follows_the_plan_the_power_cut_and_the_late_customer()
    {
        var order = Sample.Orders.First(o => Stages.IsPlanned(o.Stage) && o.Stack.Any(t => t.Filling == "lemon-curd"));
        var clock = CakeChain.Clock(order, Sample.Shop, Sample.Wall, [], Opened)!;
        Assert.Equal("uk", clock.Rules.Id);
        Assert.InRange(clock.AtHandover.Used.TotalMinutes, 0, 60);
        Assert.NotEqual(ClockVerdict.Discard, clock.AtHandover.Verdict);

        var late = clock.HandedOver + Duration.FromHours(5);
        var waited = CakeChain.Clock(order, Sample.Shop, Sample.Wall, [], late)!;
        Assert.Equal(ClockVerdict.Discard, waited.Now.Verdict);
        Assert.EndsWith(FoodRules.Caution, waited.Now.Sentence);

        var cold = CakeChain.Of(order, Sample.Shop, Sample.Wall, Opened).First(c => c.Tier.Filling == "lemon-curd").Stays.First(s => s.Place.IsCold && s.Minutes > 420 && StepKey.Parse(s.Step)!.Value.Operation is not ("wrap" or "fill"));
        var cut = new Slip(Guid.NewGuid(), SlipKind.Out, [cold.Store], cold.From, "ines", cold.From, cold.From + Duration.FromHours(6));
        Assert.Equal(120, CakeChain.Clock(order, Sample.Shop, Sample.Wall, [cut], Opened)!.Spells.Where(s => s.Kind == SpellKind.Outage).Sum(s => (s.To - s.From).TotalMinutes));
    }

    /// <summary>Layers that cracked come out of a later oven under other keys, spares out of the freezer: the clock counts from the fill all the same.</summary>
    [Fact]
    public void What_was_baked_again_is_on_the_clock_like_any_other()
    {
        var order = Sample.Orders.First(o => Stages.IsPlanned(o.Stage) && o.Stack.Any(t => t.Filling == "lemon-curd"));
        var tier = order.Stack.First(t => t.Filling == "lemon-curd").Id;
        var again = Sample.Wall.Plan with
        {
            Steps = [.. Sample.Wall.Plan.Steps.Select(r => StepKey.Parse(r.Step) is { Operation: "mix" or "bake" or "turnout" or "wrap" } k && k.Tier == tier ? r with { Step = Slip.Again(k).ToString() } : r)],
        };
        var wall = new Wall(Sample.Wall.Epoch, again);
        var (before, clock) = (CakeChain.Clock(order, Sample.Shop, Sample.Wall, [], Opened)!, CakeChain.Clock(order, Sample.Shop, wall, [], Opened)!);
        Assert.Equal(before.Spells, clock.Spells);
        var chain = CakeChain.Of(order, Sample.Shop, wall, Opened).First(c => c.Tier.Id == tier);
        Assert.Equal("fill", StepKey.Parse(chain.Stays[0].Step)!.Value.Operation);
        Assert.All(chain.Points, p => Assert.InRange(p.Core, -19, 22));
    }

    [Fact]
    public void Whoever_takes_it_is_told_when_to_take_it_out()
    {
        var order = Sample.Orders.First(o => Stages.IsPlanned(o.Stage) && o.Stack.Count > 1);
        var zone = DateTimeZoneProviders.Tzdb[Sample.Shop.Zone];
        var handed = order.Handover.At.InZoneStrictly(zone).ToInstant();
        var answer = CakeChain.Leaving(order, Sample.Shop, handed, handed + Duration.FromHours(6), CakeChain.Clock(order, Sample.Shop, Sample.Wall, [], Opened))!;
        Assert.Empty(answer.Problems);
        Assert.Equal(handed, answer.Out);
        Assert.InRange((handed + Duration.FromHours(6) - answer.CustomerTakesOut!.Value).TotalMinutes, 30, 360);
    }

    private static (Week Week, int Late) Plan(Domain.Shops.Shop shop)
    {
        var orders = SampleOrders.From(new LocalDate(2026, 10, 15), shop);
        var morning = Instant.FromUtc(2026, 10, 8, 5, 0);
        var week = Week.From(orders, shop, [], null, morning);
        var outcome = new QuickPlanner().Insert(week, TestContext.Current.CancellationToken);
        var verdict = Judge.Examine(week, outcome.Plan!);
        Assert.Empty(verdict.Breaches);
        return (week, (int)verdict.Levels.Late);
    }
}
