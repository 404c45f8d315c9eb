namespace Bakehouse.Book.Tests.Reading;

using System.Collections.Concurrent;
using Bakehouse.Book.Reading;
using Bakehouse.Book.Tables;
using Bakehouse.Domain.Orders;

public sealed class ChangedTests
{
    [Fact]
    public async Task Every_screen_hears_each_state_in_order_even_if_another_screen_fails()
    {
        using var disk = new BookOnDisk();
        var heard = new ConcurrentQueue<int>();
        var last = new TaskCompletionSource();
        disk.Book.Changed += state =>
        {
            heard.Enqueue(state.Head);
            if (state.Head == 4)
            {
                last.SetResult();
            }

            throw new InvalidOperationException("This screen is broken.");
        };

        for (var i = 0; i < 3; i++)
        {
            await disk.Write(BookOnDisk.Order(stage: Stage.Enquiry));
        }

        await last.Task.WaitAsync(TimeSpan.FromSeconds(10), TestContext.Current.CancellationToken);
        // The shop's own head may still be on its way when this screen begins to listen.
        Assert.Equal([2, 3, 4], heard.Where(h => h > 1));
    }

    [Fact]
    public async Task As_time_passes_the_week_is_compiled_anew_and_nothing_is_written()
    {
        using var disk = new BookOnDisk();
        await disk.Write(BookOnDisk.Order());
        var before = disk.Book.State;
        disk.Clock.AdvanceMinutes(30);

        await disk.Book.Refresh(TestContext.Current.CancellationToken);

        Assert.Equal(before.Head, disk.Book.State.Head);
        Assert.Equal(before.Week!.Now + 30, disk.Book.State.Week!.Now);
    }

    [Fact]
    public async Task What_was_read_again_from_disk_is_what_stood_before_closing()
    {
        using var disk = new BookOnDisk();
        await disk.Write(BookOnDisk.Order(inches: [10, 8, 6]));
        var before = disk.Book.State;

        disk.Reopen();

        Assert.Equal(Told(before), Told(disk.Book.State));
    }

    private static string Told(BookState state) => string.Join('\n', [
        $"{state.Head} {Document.Write(state.Shop!)}",
        .. state.Orders.Select(Document.Write),
        .. state.Wall!.Plan.Steps.OrderBy(s => s.Step, StringComparer.Ordinal).Select(s => $"{s.Step} {s.Start} {string.Join(' ', s.People)} {s.Machine} {s.Batch}"),
        .. state.Wall.Plan.Holds.OrderBy(h => h.Hold, StringComparer.Ordinal).Select(h => $"{h.Hold} {h.Store}"),
        .. state.Wall.Plan.Cleans.Select(c => $"{c.Machine} {c.Start}")]);
}
