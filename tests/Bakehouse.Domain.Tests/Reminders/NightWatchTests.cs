namespace Bakehouse.Domain.Tests.Reminders;

using Bakehouse.Domain.Reminders;
using Bakehouse.Domain.Shops;
using static SmallPlan;

public sealed class NightWatchTests
{
    private static readonly Instant FridayAtNine = At(21, 0) - Duration.FromDays(1);

    /// <summary>A load is in at 05:00 and 8 in bakes 45 min (published guide of a pan maker): out at 05:45 on Saturday.</summary>
    [Fact]
    public void From_nine_in_the_evening_the_first_ring_of_the_next_morning_is_told_until_the_day_starts()
    {
        var rings = new SmallPlan(Moss()).Row(Key(Moss(), "bake", 0), At(5, 0), machine: "oven1").LastHour(Moss(), At(13, 45)).Rings();
        Assert.Null(NightWatch.First(rings, SampleBakery.Shop, FridayAtNine - Duration.FromSeconds(1)));
        Assert.Equal(At(5, 45), NightWatch.First(rings, SampleBakery.Shop, FridayAtNine)?.Due);
        Assert.Equal(At(5, 45), NightWatch.First(rings, SampleBakery.Shop, At(5, 44))?.Due);
        Assert.Equal(At(13, 45), NightWatch.First(rings, SampleBakery.Shop, At(5, 50))?.Due);
        Assert.Null(NightWatch.First(rings, SampleBakery.Shop, At(6, 0)));
    }

    /// <summary>13:45 is more than twelve hours after midnight: somebody has been there by then.</summary>
    [Fact]
    public void A_ring_in_the_afternoon_needs_no_machine_awake_at_night()
    {
        var rings = new SmallPlan(Moss()).LastHour(Moss(), At(13, 45)).Rings();
        Assert.Null(NightWatch.First(rings, SampleBakery.Shop, FridayAtNine));
    }
}
