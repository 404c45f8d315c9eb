namespace Bakehouse.Book.Tests.Keeping;

using Bakehouse.Book.Entries;
using Microsoft.EntityFrameworkCore;
using NodaTime;
using NodaTime.Testing;

/// <summary>A book at any path, with a clock that stands still.</summary>
internal static class BookAt
{
    public static OrderBook Open(string path, Action<DbContextOptionsBuilder>? also = null) =>
        OrderBook.Open(path, new Planner.Quick.QuickPlanner(), new FakeClock(Instant.FromUtc(2026, 10, 14, 7, 0)), null, also);

    public static Task<Answer> Enter(OrderBook book, Command command) => book.Enter(command, TestContext.Current.CancellationToken);

    public static async Task<Answer> Accepted(OrderBook book, Command command)
    {
        var answer = await Enter(book, command);
        Assert.True(answer.Kind == AnswerKind.Accepted, $"{command.GetType().Name}: {answer.Message} {string.Join(' ', answer.Problems)}");
        return answer;
    }
}
