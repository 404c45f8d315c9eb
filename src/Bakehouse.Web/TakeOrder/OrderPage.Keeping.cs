namespace Bakehouse.Web.TakeOrder;

using System.Text.Json;
using Bakehouse.Book.Entries;

/// <content>What is typed is kept within two seconds of the first letter, however long somebody types on.</content>
public sealed partial class OrderPage
{
    private static readonly TimeSpan KeepAfter = TimeSpan.FromSeconds(1.2);
    private ITimer? keeping;
    private bool keepsSoon;

    private void KeepSoon()
    {
        keeping ??= Time.CreateTimer(_ => _ = InvokeAsync(Keep), null, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
        if (!keepsSoon)
        {
            keepsSoon = true;
            keeping.Change(KeepAfter, Timeout.InfiniteTimeSpan);
        }
    }

    /// <summary>It is in the book: nothing is left to keep.</summary>
    private void KeepNoMore()
    {
        keeping?.Change(Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
        keepsSoon = false;
    }

    /// <summary>The page goes away: what was typed last is kept at once.</summary>
    private async Task KeepLast()
    {
        if (keeping is not null)
        {
            await keeping.DisposeAsync();
            await Keep();
        }
    }

    private Task Keep()
    {
        keepsSoon = false;
        return Taken is not null ? Task.CompletedTask : WriteDraft(Form.IsBlank ? null : JsonSerializer.Serialize(Form));
    }

    private async Task WriteDraft(string? text) => await Book.Enter(new KeepDraft(Guid.NewGuid(), Here.Person, DraftOf, text));
}
