namespace Bakehouse.Domain.Tests.Reminders;

using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Reminders;
using Bakehouse.Domain.Shops;
using static SmallPlan;

/// <summary>Tiny weeks, each worked out in a comment. What rings and what is silent: common practice, no source.</summary>
public sealed class RingsTests
{
    private static readonly Order Cake = Moss();

    [Fact]
    public void Leaving_the_fridge_rings_at_the_start_of_that_step_and_says_what_where_and_why()
    {
        var ring = new SmallPlan(Cake).LastHour(Cake, At(13, 45)).Ring(RingKind.LeaveFridge);
        Assert.Equal(At(13, 45), ring.Due);
        Assert.Equal(("Take out", "Fridge 1, level 3", "f1l3"), (ring.Verb, ring.Place, ring.PlaceId));
        Assert.Equal(("8 in, vanilla", "405 Moss", "wren"), (ring.What, ring.Order, ring.Person));
        Assert.NotEmpty(ring.Why);
    }

    /// <summary>Taking out lasts 5 min and must end by the handover at 14:00 (the bench needs no least wait): latest start 13:55.</summary>
    [Fact]
    public void Ten_minutes_more_only_while_they_end_within_the_slack()
    {
        var ring = new SmallPlan(Cake).LastHour(Cake, At(13, 45)).Ring(RingKind.LeaveFridge);
        Assert.Equal(At(13, 55), ring.SlackUntil);
        Assert.True(ring.MayWait(At(13, 45)));
        Assert.False(ring.MayWait(At(13, 46)));
        Assert.Null(new SmallPlan(Cake).LastHour(Cake, At(13, 55)).Ring(RingKind.LeaveFridge).SlackUntil);
    }

    /// <summary>Wren has another cake from 13:50, so the latest start is 13:45: what is fixed next is her own work.</summary>
    [Fact]
    public void The_persons_next_work_ends_the_slack()
    {
        var other = Moss(2);
        var plan = new SmallPlan(Cake, other).LastHour(Cake, At(13, 30)).Row(Key(other, "box"), At(13, 50), "wren");
        Assert.Equal(At(13, 45), plan.Ring(RingKind.LeaveFridge).SlackUntil);
    }

    /// <summary>Agreed for 14:00: it rings then and may not wait.</summary>
    [Fact]
    public void Handing_over_rings_at_the_agreed_time()
    {
        var ring = new SmallPlan(Cake).LastHour(Cake, At(13, 45)).Ring(RingKind.Handover);
        Assert.Equal((At(14, 0), (Instant?)null), (ring.Due, ring.SlackUntil));
        Assert.Equal(("Hand over", "Bench"), (ring.Verb, ring.Place));
    }

    /// <summary>6 in bakes 40 min, 8 in and 10 in 45 (published guide of a pan maker): in at 08:00, out at 08:40 and 08:45.</summary>
    [Fact]
    public void A_load_rings_for_the_small_pans_first_and_once_for_pans_that_end_together()
    {
        var cake = Testing.Cakes.Good(1) with { Number = 405 };
        var plan = new SmallPlan(cake) { Now = At(7, 0) };
        for (var tier = 0; tier < 3; tier++)
        {
            plan.Row(Key(cake, "bake", tier), At(8, 0), machine: "oven1", batch: "b1").Row(Key(cake, "turnout", tier), At(8, 55), "petra");
        }

        var rings = plan.Rings();
        Assert.Equal([At(8, 40), At(8, 45)], rings.Select(r => r.Due));
        Assert.Equal(["6 in, vanilla", "8+10 in, vanilla"], rings.Select(r => r.What));
        Assert.Equal([1, 2], rings.Select(r => r.Steps.Count));
        Assert.All(rings, r => Assert.Equal(("Take out", "Oven 1", "petra", null), (r.Verb, r.Place, r.Person, r.SlackUntil)));
    }

    /// <summary>Taken out at 13:50 it stands ready at 14:00; at 13:45 whoever did it may have gone, so 14:00 rings again.</summary>
    [Fact]
    public void Taken_takenand_handed_over_in_one_way_rings_once()
    {
        Assert.Equal([RingKind.LeaveFridge], new SmallPlan(Cake).LastHour(Cake, At(13, 50)).Rings().Select(r => r.Kind));
        Assert.Equal([RingKind.LeaveFridge, RingKind.Handover], new SmallPlan(Cake).LastHour(Cake, At(13, 45)).Rings().Select(r => r.Kind));
        var taken = new SmallPlan(Cake).LastHour(Cake, At(13, 50));
        taken.Ticks.Add(new Tick(Key(Cake, "leavefridge"), At(13, 51), "wren"));
        Assert.Empty(taken.Rings());
    }

    /// <summary>A customer stands at the counter and is seen; whoever drives may be elsewhere.</summary>
    [Theory]
    [InlineData("wren", 1)]
    [InlineData("sal", 2)]
    public void A_delivery_rings_once_only_for_the_hands_that_take_it_out(string drives, int rings)
    {
        var cake = Cake with { Handover = new Handover(Way.Deliver, Saturday + new LocalTime(14, 30), "3 Mill Lane", 20) };
        var plan = new SmallPlan(cake).LastHour(cake, At(13, 50)).Row(Key(cake, "deliver"), At(14, 0), drives);
        Assert.Equal(rings, plan.Rings().Count);
    }

    /// <summary>
    /// Cream cheese, boxed cold: filling, boxing, taking out, 10 min on the bench and handing over count, and what is left of the shop's
    /// 240 min begins to run at 14:00. How long a step takes is read from the week; the sum is made here.
    /// </summary>
    [Fact]
    public void A_cake_that_is_still_here_when_its_time_takenof_the_cold_ends_asks_for_the_owner()
    {
        var cake = Moss() with { Tiers = [Moss().Tiers[0] with { Filling = "cream-cheese" }] };
        var plan = Filled(cake, At(9, 0));
        var minutes = plan.Week.Steps.ToDictionary(s => s.Name, s => s.Minutes);
        var used = minutes["fill"] + minutes["box"] + minutes["leavefridge"] + minutes["handover"] + (15 - minutes["leavefridge"]);
        var ring = plan.Ring(RingKind.FoodLimit);
        Assert.Equal(At(14, 0) + Duration.FromMinutes(240 - used), ring.Due);
        Assert.Equal(("Ask the owner", "Bench", 0), (ring.Verb, ring.Place, ring.Steps.Count));
        Assert.StartsWith("Cream cheese has been out of the cold for 240 min", ring.Why, StringComparison.Ordinal);
        Assert.Equal(ring.Due, plan.Ring(RingKind.Handover).FoodEnds);
        plan.Answers.Add(Answer(ring, RingAnswerKind.Done, ring.Due));
        Assert.DoesNotContain(plan.Rings(), r => r.Kind == RingKind.FoodLimit);
    }

    /// <summary>Filled on Wednesday at 09:00: three days are over on Saturday at the end of that step's minute, before the clock runs out.</summary>
    [Fact]
    public void A_use_by_rings_on_its_day()
    {
        var cake = Moss() with { Tiers = [Moss().Tiers[0] with { Filling = "cream-cheese" }] };
        var filled = At(9, 0) - Duration.FromDays(3);
        var plan = Filled(cake, filled);
        var ring = plan.Ring(RingKind.FoodLimit);
        Assert.Equal(filled + Duration.FromMinutes(plan.Week.Steps.Single(s => s.Name == "fill").Minutes) + Duration.FromDays(3), ring.Due);
        Assert.StartsWith("Cream cheese has come to its use-by.", ring.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cake_withtakena_food_limit_never_asks_for_the_owner() =>
        Assert.DoesNotContain(Filled(Cake, At(9, 0)).Rings(), r => r.Kind == RingKind.FoodLimit || r.FoodEnds is not null);

    [Fact]
    public void A_ring_waits_then_rings_then_is_late_by_a_minute()
    {
        var ring = new SmallPlan(Cake).LastHour(Cake, At(13, 45)).Ring(RingKind.LeaveFridge);
        Assert.Equal(RingState.Waiting, ring.At(At(13, 45) - Duration.FromSeconds(1)));
        Assert.Equal(RingState.Ringing, ring.At(At(13, 45)));
        Assert.Equal(RingState.Ringing, ring.At(At(13, 45) + Duration.FromSeconds(59)));
        Assert.Equal(RingState.Late, ring.At(At(13, 46)));
    }

    [Fact]
    public void A_tick_ends_the_ring_and_so_does_a_tick_of_what_comes_after()
    {
        var plan = new SmallPlan(Cake).LastHour(Cake, At(13, 45));
        plan.Ticks.Add(new Tick(Key(Cake, "leavefridge"), At(13, 46), "wren"));
        Assert.Equal([RingKind.Handover], plan.Rings().Select(r => r.Kind));
        var later = new SmallPlan(Cake).LastHour(Cake, At(13, 45));
        later.Ticks.Add(new Tick(Key(Cake, "handover"), At(14, 3), "wren"));
        Assert.Empty(later.Rings());
    }

    [Fact]
    public void Done_that_was_taken_back_rings_again()
    {
        var plan = new SmallPlan(Cake).LastHour(Cake, At(13, 45));
        plan.Answers.Add(Answer(plan.Ring(RingKind.LeaveFridge), RingAnswerKind.Done, At(13, 46)));
        Assert.Equal(At(13, 45), plan.Ring(RingKind.LeaveFridge).Due);
    }

    [Fact]
    public void Later_moves_the_due_but_never_beyond_the_slack()
    {
        var plan = new SmallPlan(Cake).LastHour(Cake, At(13, 30));
        plan.Answers.Add(Answer(plan.Ring(RingKind.LeaveFridge), RingAnswerKind.Later, At(13, 31), At(13, 41)));
        Assert.Equal(At(13, 41), plan.Ring(RingKind.LeaveFridge).Due);
        plan.Answers.Add(Answer(plan.Ring(RingKind.LeaveFridge), RingAnswerKind.Later, At(13, 50), At(14, 0)));
        Assert.Equal(At(13, 55), plan.Ring(RingKind.LeaveFridge).Due);
    }

    /// <summary>The id stays when the plan moves; "can't" was said of the old time only, "later" too.</summary>
    [Fact]
    public void A_plan_that_moved_withdraws_the_old_ring_and_keeps_its_name()
    {
        var plan = new SmallPlan(Cake).LastHour(Cake, At(13, 30));
        var old = plan.Ring(RingKind.LeaveFridge);
        plan.Answers.Add(Answer(old, RingAnswerKind.Cannot, At(13, 31)));
        Assert.DoesNotContain(plan.Rings(), r => r.Kind == RingKind.LeaveFridge);
        plan.Row(Key(Cake, "leavefridge"), At(13, 50), "wren");
        var moved = plan.Ring(RingKind.LeaveFridge);
        Assert.Equal((old.Id, At(13, 50)), (moved.Id, moved.Due));
        Assert.Equal(RingState.Waiting, moved.At(At(13, 31)));
    }

    [Fact]
    public void A_cancelled_order_does_not_ring()
    {
        var wall = new SmallPlan(Cake).LastHour(Cake, At(13, 45)).Wall;
        var cancelled = new SmallPlan(Cake with { Stage = Stage.Cancelled });
        Assert.Empty(Rings.Of(cancelled.Week, wall, cancelled.Orders, SampleBakery.Shop, [], []));
    }

    /// <summary>
    /// Clock-change nights in London (tz database): on 25 October 2026 01:30 comes twice, 00:30 and 01:30 UTC, and the first rings; on
    /// 29 March 2026 it does not come, and it rings at 02:00 summer time, 01:00 UTC.
    /// </summary>
    [Theory]
    [InlineData(2026, 10, 25, "2026-10-25T00:30:00Z", "01:30")]
    [InlineData(2026, 3, 29, "2026-03-29T01:00:00Z", "02:00")]
    public void On_a_clock_change_night_half_past_one_rings_once(int year, int month, int day, string instant, string wallTime)
    {
        var local = new LocalDate(year, month, day) + new LocalTime(1, 30);
        var cake = Moss() with { Handover = new Handover(Way.Collect, local, "", 0) };
        var now = local.Date.PlusDays(-1).AtMidnight().InUtc().ToInstant();
        var plan = new SmallPlan(cake) { Now = now };
        var promised = plan.Week.Epoch + Duration.FromMinutes(plan.Week.Orders[0].To);
        plan.Row(Key(cake, "handover"), promised, "wren");
        var ring = Assert.Single(plan.Rings());
        Assert.Equal(instant, ring.Due.ToString("g", System.Globalization.CultureInfo.InvariantCulture));
        Assert.Equal(wallTime, ring.Due.InZone(London).ToString("HH:mm", System.Globalization.CultureInfo.InvariantCulture));
    }

    private static SmallPlan Filled(Order cake, Instant at) => new SmallPlan(cake) { Now = at - Duration.FromHours(1) }
        .LastHour(cake, At(13, 45)).Row(Key(cake, "fill", 0), at, "petra");

    private static RingAnswer Answer(Ring ring, RingAnswerKind kind, Instant at, Instant? until = null) =>
        new(ring.Id, kind, kind == RingAnswerKind.Cannot ? "Not there" : "", "wren", at, until);
}
