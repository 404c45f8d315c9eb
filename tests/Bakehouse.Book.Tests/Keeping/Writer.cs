namespace Bakehouse.Book.Tests.Keeping;

using Bakehouse.Book.Entries;
using Bakehouse.Domain.Orders;
using Bakehouse.Planner.Quick;
using NodaTime;
using NodaTime.Testing;

/// <summary>Writes orders and ticks into a book until it is killed; each answer that it was given goes, synced, into the witness file.</summary>
internal static class Writer
{
    public const string Verb = "write-until-killed";

    public static async Task<int> Run(string path, string witness, int seed)
    {
        var random = new Random(seed);
        var clock = new FakeClock(Instant.FromUtc(2026, 10, 14, 7, 0), Duration.FromSeconds(1));
        using var book = OrderBook.Open(path, new QuickPlanner(), clock);
        await using var file = new FileStream(witness, FileMode.Append, FileAccess.Write, FileShare.ReadWrite);
        while (true)
        {
            var command = Next(book, random);
            var answer = await book.Enter(command);
            if (answer.Kind != AnswerKind.Accepted)
            {
                await Console.Error.WriteLineAsync($"{command} was answered {answer.Kind}: {answer.Message} {string.Join(' ', answer.Problems)}");
                return 1;
            }

            file.Write(System.Text.Encoding.UTF8.GetBytes(Line(command, answer) + "\n"));
            file.Flush(flushToDisk: true);
        }
    }

    private static Command Next(OrderBook book, Random random)
    {
        if (book.State.Shop is null)
        {
            return new WriteShop(BookOnDisk.NewId(), "", "office", BookOnDisk.Shop);
        }

        var ticked = book.State.Ticks.Select(t => t.Step).ToHashSet(StringComparer.Ordinal);
        var step = book.State.Wall?.Plan.Steps.Where(s => !ticked.Contains(s.Step)).MinBy(s => s.Start)?.Step;
        return random.Next(4) switch
        {
            0 => Write(BookOnDisk.Order("Enquiry", day: 17, stage: Stage.Enquiry)),
            _ when step is null => Write(BookOnDisk.Order("Booked", day: random.Next(20, 25), hour: random.Next(9, 16))),
            _ => new TickStep(BookOnDisk.NewId(), "petra", "tablet", step, "petra"),
        };
    }

    private static WriteOrder Write(Order order) => new(BookOnDisk.NewId(), "ines", "counter", order);

    private static string Line(Command command, Answer answer) => command switch
    {
        WriteShop => $"shop {command.Id:N} 1",
        TickStep tick => $"tick {tick.Id:N} {tick.Step}",
        _ => $"order {command.Id:N} {answer.Order!.Id:N} {answer.Order.Number}",
    };
}
