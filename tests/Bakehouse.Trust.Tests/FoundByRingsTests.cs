namespace Bakehouse.Trust.Tests;

using Bakehouse.Book.Entries;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Reminders;
using NodaTime;

/// <summary>What the weeks of rings found. The first: what is in the oven burns if its ring falls silent because somebody ticked something else.</summary>
public sealed class FoundByRingsTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void A_pan_whose_time_is_up_rings_on_whatever_is_ticked_and_ordered_elsewhere(int seed)
    {
        using var shop = new SimulatedShop(seed);
        var ring = shop.Bell.Look().Open.First(r => r.Kind == RingKind.OvenOut);
        foreach (var minutes in new[] { 0, 7, 61, 600 })
        {
            shop.PassTo(ring.Due + Duration.FromMinutes(minutes));
            shop.Ask(new TickStep(shop.NewId(), "ines", "phone", SomethingElse(shop, ring), "ines"));
            shop.Ask(new WriteOrder(shop.NewId(), "ines", "phone", Deeds.NewOrder(shop, Domain.Orders.Stage.Booked)));
            Assert.Equal((ring.Due, ring.Steps.Count), shop.Bell.Look().Ringing.Where(r => r.Id == ring.Id).Select(r => (r.Due, r.Steps.Count)).SingleOrDefault());
            Assert.Empty(Rules.Broken(shop.Book.State.Week!, shop.Book.State.Wall!));
        }
    }

    [Fact]
    public void Out_of_the_oven_means_done_and_the_ring_is_gone()
    {
        using var shop = new SimulatedShop(1);
        var ring = shop.Bell.Look().Open.First(r => r.Kind == RingKind.OvenOut);
        shop.PassTo(ring.Due + Duration.FromMinutes(20));
        shop.Ask(new TickStep(shop.NewId(), "ines", "phone", SomethingElse(shop, ring), "ines"));
        Assert.Equal(AnswerKind.Accepted, shop.Ask(new AnswerRing(shop.NewId(), "petra", "tablet", ring.Id, RingAnswerKind.Done, "")).Kind);
        Assert.DoesNotContain(shop.Bell.Look().Open, r => r.Id == ring.Id);
    }

    /// <summary>Found by the weeks of rings: the plan broke a rule, and the order could not be changed.</summary>
    [Fact]
    public async Task The_hour_of_a_cake_may_be_moved_while_it_is_handed_over()
    {
        using var shop = new SimulatedShop(1);
        var order = shop.Book.State.Orders[0];
        shop.PassTo(Row(shop, order, "leavefridge") + Duration.FromMinutes(5));
        shop.Ask(new TickStep(shop.NewId(), "ines", "phone", new StepKey(order.Id, null, "leavefridge", 1).ToString(), "wren"));
        shop.PassTo(Row(shop, order, "handover"));
        await shop.Book.Refresh(TestContext.Current.CancellationToken);
        Assert.Contains(shop.Book.State.Week!.Fixed, f => f.Why == "started" && f.Step!.Contains(".handover.", StringComparison.Ordinal));

        order = shop.Book.State.Orders.Single(o => o.Id == order.Id);
        var moved = order with { Handover = order.Handover with { At = order.Handover.At.PlusMinutes(30) } };
        Assert.Equal(AnswerKind.Accepted, shop.Ask(new WriteOrder(shop.NewId(), "ines", "phone", moved)).Kind);
    }

    private static Instant Row(SimulatedShop shop, Domain.Orders.Order order, string operation) => shop.Book.State.Wall is { } wall
        ? wall.Epoch + Duration.FromMinutes(wall.Plan.Steps.Single(r => r.Step == new StepKey(order.Id, null, operation, 1).ToString()).Start)
        : throw new InvalidOperationException("Nothing is planned.");

    /// <summary>The first step that nobody ticked, of another cake.</summary>
    private static string SomethingElse(SimulatedShop shop, Ring ring)
    {
        var (state, mine) = (shop.Book.State, ring.Steps.Select(s => StepKey.Parse(s)!.Value.Order).ToHashSet());
        return state.Wall!.Plan.Steps.Select(r => r.Step).First(s => !mine.Contains(StepKey.Parse(s)!.Value.Order) && state.Ticks.All(t => t.Step != s));
    }
}
