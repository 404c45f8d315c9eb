namespace Bakehouse.Domain.Tests.Reminders;

using Bakehouse.Domain.Reminders;
using static SmallPlan;

/// <summary>Who is called when nobody answers, to the second. The times: common practice, no source.</summary>
public sealed class CallsTests
{
    private static readonly Ring Fridge = new SmallPlan(Moss()).LastHour(Moss(), At(13, 45)).Ring(RingKind.LeaveFridge);

    [Theory]
    [InlineData(RingKind.LeaveFridge, 2)]
    [InlineData(RingKind.Handover, 2)]
    [InlineData(RingKind.FoodLimit, 2)]
    [InlineData(RingKind.OvenOut, 5)]
    public void The_owner_is_called_after_minutes_and_again_each_ten_three_times_in_all(RingKind kind, int minutes)
    {
        var ring = Fridge with { Kind = kind };
        var first = ring.Due + Duration.FromMinutes(minutes);
        var second = Duration.FromSeconds(1);
        Assert.Equal([0, 1], Counts(ring, first - second, first));
        Assert.Equal([1, 2], Counts(ring, first + Calls.Again - second, first + Calls.Again));
        Assert.Equal([2, 3], Counts(ring, first + (2 * Calls.Again) - second, first + (2 * Calls.Again)));
        Assert.Equal([3, 3], Counts(ring, first + (3 * Calls.Again), first + Duration.FromDays(3)));
        Assert.Equal([0, 0], Counts(ring, ring.Due - Duration.FromDays(1), ring.Due));
    }

    /// <summary>"Later" gives the ring another due, so its calls begin anew; an answer for good leaves no ring to call for.</summary>
    [Fact]
    public void An_answer_ends_the_calls()
    {
        var plan = new SmallPlan(Moss()).LastHour(Moss(), At(13, 30));
        var ring = plan.Ring(RingKind.LeaveFridge);
        Assert.Equal(1, Calls.Of(ring, At(13, 33)));
        plan.Answers.Add(new RingAnswer(ring.Id, RingAnswerKind.Later, "", "wren", At(13, 33), At(13, 43)));
        Assert.Equal([0, 0, 1], Counts(plan.Ring(RingKind.LeaveFridge), At(13, 33), At(13, 44), At(13, 45)));
        plan.Answers.Add(new RingAnswer(ring.Id, RingAnswerKind.Cannot, "Not there", "wren", At(13, 46), null));
        Assert.DoesNotContain(plan.Rings(), r => r.Id == ring.Id);
    }

    private static int[] Counts(Ring ring, params Instant[] at) => [.. at.Select(a => Calls.Of(ring, a))];
}
