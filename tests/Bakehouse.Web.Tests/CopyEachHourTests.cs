namespace Bakehouse.Web.Tests;

using Bakehouse.Book.Keeping.Copies;
using Bakehouse.Web.Copies;
using Bakehouse.Web.Tests.Kitchen;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;

/// <summary>The hourly copy in the whole app, on a clock that the test moves.</summary>
public sealed class CopyEachHourTests
{
    [Fact]
    public async Task A_copy_is_taken_an_hour_after_the_newest_also_after_a_restart_and_a_failed_one_is_tried_again_in_ten_minutes()
    {
        var time = new SteppedTime(KitchenShop.Start);
        var folder = KitchenShop.Folder();
        await using (var app = await KitchenShop.Sample(time, folder))
        {
            Assert.Equal(1, Looked(app, time, Duration.Zero));
            Assert.Equal(1, Looked(app, time, Duration.FromMinutes(59)));
            Assert.Equal(2, Looked(app, time, Duration.FromMinutes(1)));
        }

        await using var again = new KitchenShop(time, folder);
        Assert.Equal(2, Looked(again, time, Duration.FromMinutes(30)));
        Assert.Equal(3, Looked(again, time, Duration.FromMinutes(30)));

        var copies = again.Services.GetRequiredService<BookCopies>().First;
        using (new FileStream(Path.Combine(copies.Path, "copy.lock"), FileMode.Open, FileAccess.ReadWrite, FileShare.None))
        {
            Assert.Equal(3, Looked(again, time, Duration.FromHours(1)));
            Assert.Null(again.Services.GetRequiredService<CopyEachHour>().Last!.Path);
        }

        Assert.Equal(3, Looked(again, time, Duration.FromMinutes(9)));
        Assert.Equal(4, Looked(again, time, Duration.FromMinutes(1)));
    }

    private static int Looked(KitchenShop app, SteppedTime time, Duration later)
    {
        var hourly = app.Services.GetRequiredService<CopyEachHour>();
        time.MoveTo(time.GetCurrentInstant() + later);
        hourly.Look();
        return app.Services.GetRequiredService<BookCopies>().First.Times().Count;
    }
}
