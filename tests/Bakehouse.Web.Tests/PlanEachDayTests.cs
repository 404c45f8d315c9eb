namespace Bakehouse.Web.Tests;

using Bakehouse.Book.Entries;
using Bakehouse.Domain.FarDates;
using Bakehouse.Web.FarDays;
using Bakehouse.Web.Shell;
using Bakehouse.Web.Tests.Kitchen;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;

/// <summary>In the whole app: a far order gets its plan by itself when its day comes near.</summary>
public sealed class PlanEachDayTests
{
    [Fact]
    public async Task A_far_order_is_planned_on_the_day_on_which_it_comes_near_and_not_before()
    {
        var time = new SteppedTime(KitchenShop.Start);
        await using var app = await KitchenShop.Sample(time);
        var (book, each) = (app.Book, app.Services.GetRequiredService<PlanEachDay>());
        var today = Words.Of(book.State.Shop).Local(KitchenShop.Start).Date;
        var day = today.PlusDays(book.State.Shop!.Settings.PlanDays + 1);
        var like = book.State.Orders[0];
        var far = like with { Id = Guid.NewGuid(), Stage = Domain.Orders.Stage.Booked, Version = 0, Number = 0, Handover = like.Handover with { At = day.Next(IsoDayOfWeek.Saturday).At(new LocalTime(14, 0)) }, Cutting = null };
        var taken = (await book.Enter(new WriteOrder(Guid.NewGuid(), "ines", "counter", far), TestContext.Current.CancellationToken)).Order!;
        Assert.StartsWith("planned from ", Standing.PlannedFrom(book.State, taken, today), StringComparison.Ordinal);

        await each.Look(TestContext.Current.CancellationToken);
        Assert.DoesNotContain(book.State.Week!.Orders, o => o.Id == far.Id.ToString("N"));

        time.MoveTo(PlanReach.PlannedFrom(taken, book.State.Shop).AtStartOfDayInZone(Words.Of(book.State.Shop).Zone).ToInstant() + Duration.FromHours(1));
        await each.Look(TestContext.Current.CancellationToken);
        Assert.Contains(book.State.Week!.Orders, o => o.Id == far.Id.ToString("N"));
        Assert.NotNull(Standing.Of(book.State, taken));
        var head = book.State.Head;
        await each.Look(TestContext.Current.CancellationToken);
        Assert.Equal(head, book.State.Head);
    }
}
