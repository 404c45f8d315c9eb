namespace Bakehouse.Web.KeptDays;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;
using Bakehouse.Web.Shell;
using NodaTime;

/// <summary>Enters <see cref="LetDayGo"/> once the hours are over for which a day was kept, so that its places are free for others.</summary>
public sealed class LetKeptDaysGo(IBook book, IClock clock, TimeProvider time, ILogger<LetKeptDaysGo> log) : EachMinute(time, log)
{
    /// <summary>Lets go what is over.</summary>
    public async Task Look(CancellationToken cancel = default)
    {
        var now = clock.GetCurrentInstant();
        foreach (var order in book.State.IsAhead(now) ? [] : book.State.Orders.Where(o => o.KeptUntil <= now).ToList())
        {
            var answer = await book.Enter(new LetDayGo(Guid.NewGuid(), "", "by itself", order.Id), cancel);
            log.LogInformation("The kept day of {Id}: {Outcome}", order.Id, answer.Kind);
        }
    }

    /// <inheritdoc/>
    protected override Task LookOnce(CancellationToken cancel) => Look(cancel);
}
