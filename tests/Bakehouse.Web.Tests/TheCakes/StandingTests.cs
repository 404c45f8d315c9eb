namespace Bakehouse.Web.Tests.TheCakes;

using Bakehouse.Domain.Planning;
using Bakehouse.Testing;
using Bakehouse.Web.Shell;
using Bakehouse.Web.Tests.Kitchen;
using NodaTime;
using Standing = Bakehouse.Web.Shell.Standing;

/// <summary>Time alone makes a cake late: what should be done by now and is not. Our own rules.</summary>
public sealed class StandingTests
{
    [Fact]
    public async Task Not_ready_at_its_hour_it_is_late_ready_it_waits_and_fetched_it_is_neither()
    {
        await using var app = await KitchenShop.Sample(new MovableTime(KitchenShop.Start));
        var week = app.Book.State.Week!;
        var rows = app.Book.State.Wall!.From(week.Epoch).Steps;
        var promise = week.Orders.First(o => !o.EdgeIsEnd && o.To > week.Now + 60);
        var hour = week.Epoch + Duration.FromMinutes(promise.To);
        Standing At(Instant now, params string[] done) => Standing.Of(
            week with { Fixed = [.. week.Fixed, .. done.Select(s => new Fixed(s, null, null, null, null, null, "done"))] }, promise, rows, now)!;

        Assert.Equal(MarkKind.InTime, At(app.Ringer.State.Now).Mark);
        var late = At(hour + Duration.FromMinutes(25));
        Assert.Equal((MarkKind.Late, 25, "25 min late"), (late.Mark, late.Late, late.Word));
        var waiting = At(hour + Duration.FromMinutes(25), promise.Ready);
        Assert.Equal((MarkKind.Tight, 0, "ready, not fetched for 25 min"), (waiting.Mark, waiting.Late, waiting.Word));
        var fetched = At(hour + Duration.FromMinutes(25), promise.Ready, promise.Out);
        Assert.Equal((0, 0), (fetched.Late, fetched.Waits));
    }

    [Fact]
    public async Task A_delivery_that_has_not_left_is_late_by_what_the_way_still_takes()
    {
        await using var app = await KitchenShop.Sample(new MovableTime(KitchenShop.Start));
        var week = app.Book.State.Week!;
        var promise = week.Orders.First(o => o.EdgeIsEnd);
        var way = week.Steps.First(s => s.Id == promise.Out).Minutes;
        var ready = week with { Fixed = [.. week.Fixed, new Fixed(promise.Ready, null, null, null, null, null, "done")] };
        var standing = Standing.Of(ready, promise, app.Book.State.Wall!.From(week.Epoch).Steps, week.Epoch + Duration.FromMinutes(promise.To - way + 10))!;
        Assert.Equal((MarkKind.Late, 10), (standing.Mark, standing.Late));
    }
}
