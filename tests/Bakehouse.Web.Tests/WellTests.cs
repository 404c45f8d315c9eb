namespace Bakehouse.Web.Tests;

using System.Net;
using Bakehouse.Book.Keeping.Copies;
using Bakehouse.Web.Copies;
using Bakehouse.Web.IsAllWell;
using Bakehouse.Web.Shell;
using Bakehouse.Web.Tests.Kitchen;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;

/// <summary>"Is all well?" in the whole app: what it says is so, and who may ask.</summary>
public sealed class WellTests
{
    [Fact]
    public async Task It_tells_of_copies_as_they_are_made_and_grow_old()
    {
        var time = new SteppedTime(KitchenShop.Start);
        await using var app = await KitchenShop.Sample(time);
        Assert.Equal(MarkKind.Tight, Line(app, "Second place").Mark);

        app.Services.GetRequiredService<CopyEachHour>().Look();
        Assert.Equal(MarkKind.InTime, Line(app, "Copies").Mark);
        Assert.Contains(app.Services.GetRequiredService<BookCopies>().First.Path, Line(app, "Copies").Says, StringComparison.Ordinal);

        var copies = app.Services.GetRequiredService<BookCopies>().First;
        var (newest, old) = (copies.Times()[^1], copies.Times()[^1] - Duration.FromHours(26));
        File.Move(copies.FileOf(newest), copies.FileOf(old));
        Assert.Equal(MarkKind.Late, Line(app, "Copies").Mark);
        Assert.NotNull(Line(app, "Copies").Do);
    }

    [Fact]
    public async Task A_late_ring_and_a_silent_kitchen_are_told_with_what_to_do()
    {
        var time = new SteppedTime(KitchenShop.Start);
        await using var app = await KitchenShop.Sample(time);
        Assert.Equal(MarkKind.InTime, Line(app, "Reminders").Mark);
        Assert.Equal(MarkKind.Tight, Line(app, "Sound").Mark);

        time.MoveTo(app.Next().Due + Duration.FromMinutes(5));
        app.Ringer.Look();

        Assert.Equal(MarkKind.Late, Line(app, "Reminders").Mark);
        Assert.Contains("kitchen", Line(app, "Reminders").Do, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task A_watcher_on_this_machine_hears_yes_and_one_elsewhere_hears_nothing()
    {
        await using var app = await KitchenShop.Sample(new SteppedTime(KitchenShop.Start));
        app.Ringer.Look();
        foreach (var path in (string[])["/alive", "/ready"])
        {
            var here = await app.At("").GetAsync(path, TestContext.Current.CancellationToken);
            Assert.Equal(HttpStatusCode.OK, here.StatusCode);
            var elsewhere = await app.Server.SendAsync(
                c =>
                {
                    c.Request.Path = path;
                    c.Connection.RemoteIpAddress = IPAddress.Parse("192.0.2.7");
                },
                TestContext.Current.CancellationToken);
            Assert.Equal(StatusCodes.Status404NotFound, elsewhere.Response.StatusCode);
        }
    }

    [Fact]
    public async Task A_clock_behind_the_book_is_not_ready()
    {
        var time = new SteppedTime(KitchenShop.Start);
        await using var app = await KitchenShop.Sample(time);
        time.Jump(Duration.FromHours(-1));
        app.Ringer.Look();
        var reader = app.Services.GetRequiredService<WellReader>();
        Assert.False(reader.IsReady);
        Assert.Equal(MarkKind.Late, Line(app, "The clock").Mark);
    }

    private static WellLine Line(KitchenShop app, string about) =>
        app.Services.GetRequiredService<WellReader>().Lines(app.Book.State.Shop!).Single(l => l.About == about);
}
