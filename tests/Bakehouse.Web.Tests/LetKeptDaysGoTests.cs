namespace Bakehouse.Web.Tests;

using Bakehouse.Book.Entries;
using Bakehouse.Domain.Orders;
using Bakehouse.Web.KeptDays;
using Bakehouse.Web.Shell;
using Bakehouse.Web.Tests.Kitchen;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;

/// <summary>In the whole app: a kept day is let go by itself when its hours are over, and not before.</summary>
public sealed class LetKeptDaysGoTests
{
    [Fact]
    public async Task A_kept_day_is_let_go_by_itself()
    {
        var time = new SteppedTime(KitchenShop.Start);
        await using var app = await KitchenShop.Sample(time);
        var (book, each) = (app.Book, app.Services.GetRequiredService<LetKeptDaysGo>());
        var day = Words.Of(book.State.Shop).Local(KitchenShop.Start).Date.PlusDays(10).Next(IsoDayOfWeek.Saturday);
        var like = book.State.Orders[0];
        var order = like with { Id = Guid.NewGuid(), Stage = Stage.Kept, Version = 0, Number = 0, Handover = like.Handover with { At = day.At(new LocalTime(14, 0)) }, Cutting = null };
        var kept = (await book.Enter(new WriteOrder(Guid.NewGuid(), "ines", "counter", order), TestContext.Current.CancellationToken)).Order!;
        await each.Look(TestContext.Current.CancellationToken);
        Assert.Equal(Stage.Kept, Now().Stage);
        time.MoveTo(kept.KeptUntil!.Value);
        await each.Look(TestContext.Current.CancellationToken);
        Assert.Equal(Stage.Quoted, Now().Stage);

        Order Now() => book.State.Orders.Single(o => o.Id == order.Id);
    }
}
